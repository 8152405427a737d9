### 设置：每家店只问一次的事。机器起草，需要懂中文的人检查。
### reviewed: no

setup = 设置
setup-place = 第{ $n }题，共{ $all }题
setup-back = 返回
setup-stop = 停下，以后继续
setup-done = 完成
setup-take = 确定
setup-take-off = 去掉
setup-go-on = 继续
setup-resumed = 从上次停下的地方继续。什么都没丢。
setup-left-aside = 店的文件后来被改过。还没保存的回答不用了。
setup-not-kept = 这个回答没能写下来（{ $why }）。屏幕开着的时候还在。
setup-not-answered = 还没回答
setup-left = { $n ->
   *[other] 还有{ $n }个问题。
}
setup-ask-overview = 这是所有的回答。按一项就能改。
setup-write = 没错，保存
setup-written = 设置已保存。
setup-leave = 到机器列表
setup-wrong = { $n ->
   *[other] 要先改正{ $n }处。什么都没保存。
}
setup-changed-meanwhile = 这段时间有人改了 site.toml。没有覆盖它。请在这里停下，从那个文件重新开始。
setup-checking = 正在检查本店自己的机器种类，请稍等。

setup-about-language = 设置的语言
setup-about-practice = 真实或练习
setup-about-name = 店名
setup-about-time-zone = 时区
setup-about-opens = 开门
setup-about-closes = 关门
setup-about-closed-days = 休息日
setup-about-limits = 限值
setup-about-machines = 机器
setup-about-thermometer = 温度计
setup-about-sink = 水槽
setup-about-product = 消毒剂
setup-about-chlorine = 有效氯
setup-about-packet = 每包
setup-about-strength = 浓度
setup-about-rinse = 冲洗
setup-about-languages = 员工的语言
setup-about-people = 人员
setup-about-pin = 密码
setup-about-sound = 声音
setup-about-isolation = 切断电源
setup-about-label-rinse = 冲洗

setup-ask-language = 你想用哪种语言回答？
setup-note-language = 机器列表也用这种语言开始。以后每个人有自己的语言。
setup-ask-practice = 这是真实的店，还是用来练习？
setup-real = 真实的店
setup-real-is = 确认的内容就是真实工作的记录。
setup-practice-is = 每次作业都标为练习，不是真实工作的记录。
setup-ask-name = 店叫什么名字？
setup-ask-time-zone = 店在哪个时区？
setup-note-time-zone = 对的那个显示现在的时间。
setup-ask-city = 哪个城市时间相同？
setup-note-city = 选显示现在时间的最近的城市。
setup-ask-city-letter = 城市名以哪个字母开头？
setup-zone-now = 现在 { $time }
setup-zone-america = 美洲
setup-zone-europe = 欧洲
setup-zone-asia = 亚洲
setup-zone-africa = 非洲
setup-zone-australia = 澳大利亚
setup-zone-pacific = 太平洋
setup-zone-atlantic = 大西洋
setup-zone-indian = 印度洋
setup-ask-opens = 店几点开门？
setup-note-opens = 四位数字，上午 9 点 30 分是 0930。
setup-ask-closes = 店几点关门？
setup-note-closes = 四位数字，晚上 9 点 30 分是 2130。
setup-no-time = { $text } 不是时间。写四位数字，例如 0930 或 2130。
setup-ask-closed-days = 店哪些天不开门？
setup-note-closed-days = 按一天就能改。休息日没有要做的事。
setup-is-closed = 休息
setup-is-open = 开门
setup-add-day = 每年的某一天
setup-no-day-closed = 每天开门
setup-never-open = 每周至少要有一天开门。
setup-ask-month = 休息日在几月？
setup-ask-day = { $month }几号？
setup-no-day = { $month }没有{ $text }号。
setup-date = { $month }{ $day }日
setup-weekday = { $day ->
    [monday] 星期一
    [tuesday] 星期二
    [wednesday] 星期三
    [thursday] 星期四
    [friday] 星期五
    [saturday] 星期六
   *[sunday] 星期日
}
setup-month = { $month ->
    [m1] 1月
    [m2] 2月
    [m3] 3月
    [m4] 4月
    [m5] 5月
    [m6] 6月
    [m7] 7月
    [m8] 8月
    [m9] 9月
    [m10] 10月
    [m11] 11月
   *[m12] 12月
}

setup-ask-limits = 读数按哪套限值判断？
setup-note-limits = 问检查这家店的主管部门。当地规定优先。
setup-limit-mix-temperature = 料浆温度
setup-limit-sanitizer-strength = 消毒液浓度
setup-limit-sanitizer-temperature = 消毒液温度
setup-limit-contact-time = 接触时间
setup-limit-wash-temperature = 洗涤水
setup-limit-hand-wash-time = 洗手
setup-limit-line = { $what }：{ $bounds }
setup-limit-silent = 没有规定：{ $names }
setup-limit-unwalkable = 用它有{ $n }个规程不能做，共{ $all }个
setup-least = 至少{ $least }
setup-most = 最多{ $most }
setup-bounds = { $least }到{ $most }

setup-ask-machines = 有哪些机器？
setup-note-machines = 按一台就能改，也可以再加。
setup-add-machine = 加一台机器
setup-ask-kind = 是哪种机器？
setup-note-kind = 看料浆怎样从料斗下来。这些种类是虚构的；以机器自己的说明书为准。
setup-kind-is = { $hoppers ->
   *[other] { $hoppers }个料斗
}，{ $parts }个零件
setup-kind-own = 本店自己的：{ $kind }
setup-kind-spoilt = 改正之前不能使用；kiosk check会全部说明。{ $why }
setup-kind-gone = { $who }：它的机器种类{ $kind }不在这里。请更换种类，或去掉这台机器。
setup-ask-machine-name = 店里怎么叫这台机器？
setup-note-machine-name = 不要让人认错，例如按放的位置叫。
setup-ask-option = { $who }：{ $option }
setup-ask-machine = { $who }：要改什么？
setup-change-name = 名字
setup-change-kind = 机器种类
setup-change-language = 语言
setup-change-role = 职责
setup-take-off-machine = 它的作业留在记录里。
setup-amounts = 用量和时间
setup-ask-amounts = { $who }：这些用量和时间对吗？
setup-note-amounts = 这是虚构种类的数值。每一项都要对照机器说明书和标签，按一项就能改。
setup-amounts-right = 都对
setup-ask-amount = { $what }：多少？
setup-option-isolation-plug = 插头
setup-option-isolation-plug-is = 机器有插头。员工拔下插头，放在看得见的地方。
setup-option-isolation-lock = 上锁
setup-option-isolation-lock-is = 机器直接接线。员工拉开开关，挂上自己的锁。
setup-setting-hand-wash-time = 洗手
setup-setting-flush-volume = 冲洗的水
setup-setting-cleaner-volume = 清洗液
setup-setting-circulate-time = 清洗液作用
setup-setting-soak-volume = 浸泡的水
setup-setting-soak-time = 浸泡零件
setup-setting-sanitizer-volume = 消毒液
setup-setting-contact-time = 消毒液作用
setup-setting-prime-volume = 先放掉的料浆
setup-setting-freeze-down-time = 冷冻

setup-ask-thermometer = 温度计用什么单位？
setup-option-thermometer-celsius = 摄氏度
setup-option-thermometer-celsius-is = 冷的料浆大约是 4。
setup-option-thermometer-fahrenheit = 华氏度
setup-option-thermometer-fahrenheit-is = 冷的料浆大约是 40。
setup-ask-sink = 水槽有几格？
setup-option-sink-three = 三格
setup-option-sink-three-is = 洗、冲、消毒各有一格。
setup-option-sink-two = 两格
setup-option-sink-two-is = 在倒空的洗涤槽里用流水冲零件。

setup-ask-product = 标签上消毒剂叫什么？
setup-note-product = 本机计算同样大小的小包氯粉或氯片的用量。现在把产品拿在手里：下面的回答都从标签上读。
setup-ask-chlorine = 有效氯是百分之多少？
setup-note-chlorine = 从标签上读，上面可能写着有效氯。不要猜，也不要用别的产品的数字。
setup-no-percent = { $text } 不是百分数。写标签上的数字，大于 0，不超过 100。
setup-ask-packet = 一包有多少克？
setup-note-packet = 从标签上读。如果是片剂，就是一片的重量。
setup-no-grams = 不可能是 { $text } 克。写大于 0、不超过 1000 的数。
setup-ask-strength = 溶液要多浓？
setup-note-strength = 单位是 ppm。从标签上读：接触食品的表面、不用再冲洗的浓度。
setup-strength-off = 选的限值要求{ $bounds }（{ $clause }）。再看一遍标签。
setup-ask-dose = 员工会听到这句话。和标签上的用法一致吗？
setup-ask-no-dose = 用这些数字算不出用量。再看一遍标签。
setup-dose-right = 和标签一致
setup-figures-again = 重新输入数字
setup-ask-rinse = 标签要求消毒后冲洗吗？
setup-note-rinse = 从标签上读。
setup-option-label-rinse-no = 不冲洗
setup-option-label-rinse-no-is = 零件从消毒液里取出后沥干。
setup-option-label-rinse-yes = 冲洗
setup-option-label-rinse-yes-is = 零件用干净的饮用水冲洗。

setup-ask-languages = 员工说哪些语言？
setup-note-languages = 按一种语言，加上或去掉。
setup-texts-checked = 已由懂这种语言的人检查
setup-texts-drafted = 机器起草，还没有懂这种语言的人检查过
setup-by-voice = 可以说，也可以按
setup-by-touch = 只能按：这里没有语音模型
setup-no-language = 至少选一种语言。
setup-language-spoken = 名单上有人说这种语言。先改那个人。
setup-ask-people = 谁在机器上工作？
setup-note-people = 按名字就能改，也可以加人。主管看记录，并陪着学员。
setup-add-person = 加一个人
setup-ask-person-name = 这个人叫什么名字？
setup-note-person-name = 名字显示在屏幕和报告上。记录本身不存名字。
setup-ask-person-language = { $who }说哪种语言？
setup-ask-person-role = { $who }可以做什么？
setup-ask-person = { $who }：要改什么？
setup-role-worker = 独自做所有规程。
setup-role-trainee = 头几次有主管在旁边。
setup-role-supervisor = 做规程，看记录，签字，陪着学员。
setup-take-off-person = 这个人的作业留着。记录旁边保存的内容这样删除：kiosk people erase { $person }
setup-no-supervisor = 没有主管：没有人能看记录或签字。加一个主管，或再按一次完成。
setup-trainee-alone = 有学员，却没有主管陪着。加一个主管，或把这个职责给别人。

setup-note-keyboard = 用键盘输入，或先按一组字母，再按那个字母。汉字等其他文字要用键盘。
setup-key-space = 空格
setup-key-capital = 大写
setup-key-small = 小写
setup-key-others = 其他字母
setup-to-the-keys = 到按键
setup-nothing-typed = 还什么都没输入。

setup-ask-pin = { $who }要有密码才能看记录、陪着别人。{ $who }现在在这里吗？
setup-pin-now = 在，现在设
setup-pin-later = 以后
setup-pin-later-is = 用：kiosk setup
setup-pin-is = 给某人设密码
setup-sound-is = 试扬声器和麦克风
setup-sound-begin = 本机先说一句话，再听你说。站在你工作的地方，机器照常开着。
setup-sound-start = 试一试
setup-sound-skip = 跳过
setup-sound-on = 继续
setup-sound-again = 再试一次
setup-sound-speaking = 请听。
setup-sound-sentence = 这里是作业指导机。我说每一步，然后等你。
setup-sound-spoken = 这句话听清楚了吗？
setup-sound-yes = 听清了
setup-sound-no = 没听清
setup-sound-voice-good = 扬声器够响。
setup-sound-voice-bad = 把扬声器调大，或换一个。说的话屏幕上都有。
setup-sound-no-voice = 这里不能播报（{ $why }）。要说的话屏幕上都有。
setup-sound-listening = 正在试麦克风。
setup-sound-heard = 结果是这样。
setup-sound-silent = 安静一会儿。
setup-sound-say-yes = 现在说：{ $phrase }
setup-sound-understood = 听懂了。
setup-sound-not-heard = 没有听懂。听到的是：“{ $text }”。
setup-sound-nothing = 什么都没听到。
setup-sound-ended = 麦克风没有声音了。还插着吗？
setup-sound-no-ear = 本机听不懂这种语言（{ $text }）。
setup-sound-no-microphone = 这里什么都听不到（{ $why }）。作业用触摸和按键进行。

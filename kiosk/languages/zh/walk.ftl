### 本机的中文用语。机器起草，需要懂中文的人检查。
### reviewed: no

language-name = 中文

## 单位，用文字写出，看和说都一样。
unit-litres = { $n }升
unit-millilitres = { $n }毫升
unit-gallons = { $n }加仑
unit-quarts = { $n }夸脱
unit-fluid-ounces = { $n }液量盎司
unit-grams = { $n }克
unit-seconds = { $n }秒
unit-minutes = { $n }分钟
unit-hours = { $n }小时
unit-celsius = { $n }摄氏度
unit-fahrenheit = { $n }华氏度
unit-milligrams-per-litre = { $n }毫克每升
unit-ph = 酸碱度{ $n }
unit-none = { $n }

## 要说的话。同一个意思的几种说法用斜线分开，屏幕显示第一种。
# 对和不对没有一个字相同，听漏一个字也不会弄反。
say-next = 下一步 / 完成了
say-yes = 对的 / 对啊
say-no = 不是 / 没有
say-repeat = 再说一遍 / 请重复
say-back = 退回去 / 返回前面
say-problem = 有问题 / 出问题了
say-pause = 休息一下 / 等一会儿
say-continue = 继续 / 接着做
say-hand-over = 换人接手 / 交给别人
say-out-of-service = 停用机器
say-end = 到此为止 / 结束工作
say-good = 状态良好 / 零件完好
say-replaced = 换了新的 / 已经更换
say-none-left = 备件用完了 / 缺少备件
say-language = 其他语言
say-never-mind = 不用了
say-number = 第{ $number }个

## 警示词，按 ANSI Z535。
signal-danger = 危险
signal-warning = 警告
signal-caution = 小心
signal-notice = 注意

## 提问。
first-again = 先把这一项再确认一次。
say-phrase = 确实如此，就说：{ $phrase }。
heard-phrase = 我听到：{ $phrase }。对吗？请答“对的”或“不是”。
heard-number = 我听到{ $number }。对吗？请答“对的”或“不是”。
is-that-so = 对吗？请答“对的”或“不是”。
good-or-replaced = 零件好不好？还是已经换了？
try-again = 处理好，再说“下一步”重试。
time-up = 时间到了。说“下一步”继续。
witness-needed = 这一项要由第二个人用密码确认。
count-off = 你数到{ $number }。零件表上是{ $expected }。找出少的零件。
reading-off-least = { $number }，太低了。必须是{ $least }或更高。
reading-off-most = { $number }，太高了。必须是{ $most }或更低。
reading-off-least-most = { $number }，超出限值。必须在{ $least }和{ $most }之间。
passes-ran-out = 已经做了第{ $number }遍，还是不行。
what-is-wrong = 出了什么问题？
then-continue = 做完了就说“继续”。
stop-here = 机器不能再做下去。停用机器，或换人接手。
held-pause = 已暂停。说“继续”接着做。可能变了的，会再问一次。
held-restart = 本机重新启动过。说“继续”。可能变了的，会再问一次。
held-no-way-in = 从这里不能安全地做下去。结束本次作业，告诉主管。
end-asked = 现在结束本次作业吗？还没做完。请答“对的”或“不是”。
complete = 规程做完了。谢谢。
aborted = 本次作业提前结束。请告诉下一个人：
out-of-service = 机器已停用。请告诉下一个人：

who-takes-over = 谁来接手？
which-language = 用哪种语言？
press-instead = 我听不准你说的话。请在屏幕上按。

## 为什么没有做。
refused-not-now = 现在不能这样做。
refused-hold-first = 这是安全确认。把整句话说出来，或按住它的按钮不放。
refused-time-left = 还不行。还要{ $time }。
refused-number-first = 先给出数字。
refused-absurd = 这个数字不可能。必须在{ $least }和{ $most }之间。
refused-whole-number = 请给整数。
refused-look-first = 先看零件。然后说：状态良好，换了新的，或备件用完了。
refused-reason-first = 先说出了什么问题。
refused-no-such-reason = 这里没有这个原因。
refused-must-stop = 机器不能再做下去。请停用机器。
refused-no-way-in = 从这里没有安全的办法做下去。结束本次作业。
refused-confirm-this-first = 先确认这一项。
refused-first-step = 这是第一步。
refused-same-person = 必须是另一个人。

## 屏幕
standing-in-service = 使用中
standing-being-taken-apart = 正在拆
standing-apart-and-drying = 已拆开，晾着
standing-being-put-together = 正在装
standing-held = 停住，出了问题
standing-left-unfinished = 没做完就放下
standing-out-of-service = 已停用

which-machine = 哪台机器？
which-procedure = 你要做什么？
who-walks = 谁来做？
due = 该做：{ $procedure }
nothing-due = 没有该做的。
not-due = 不是平常的下一项
unfinished = 没做完，按下继续：{ $procedure }，{ $worker }
no-procedure = 没有可以在它上面做的规程。
some-faulty = 它有规程现在不能做。
day-or-night = 亮色或暗色
what-is-faulty = 哪里有错
faults-found = { $n ->
   *[other] 有{ $n }处错，规程不能做。
}
all-machines = 全部机器
more = 更多
practice = 练习
place = 第{ $place }步，共{ $last }步
time-left = 还要大约{ $n }分钟
time-left-spread = 还要大约{ $n }分钟（{ $least }到{ $most }）
held = 停住
drafted = 机器起草，懂中文的人还没检查过

keep-pressed = 按住不放
kept-too-short = 太短：按住不放，或再按一次
kept-enough = 可以放手了
type-number = 输入数字
enter-number = 确定
rub-out = 删除
number-missing = 先输入数字，再按确定。
try-to-begin = 再试一次

ear-hears = 我在听
ear-deaf = 我在说话，所以不听
ear-off = 我听不见：{ $why }
ear-opening = 正在打开语音识别
ear-none = 本机没有语音识别
voice-on = 播报已开
voice-off = 我说不了话：{ $why }
voice-opening = 正在打开播报
voice-none = 本机没有播报
heard = 听到“{ $text }”
heard-nothing = 这不是我认识的话
heard-not-allowed = “{ $text }”现在不能说
heard-too-short = 太短了
heard-doubtful = “{ $text }”？我不确定，再说一遍

text-changed = 本次作业开始后，规程的文字改过了。不能接着做。结束本次作业，重新开始。
cannot-take-up = 本次作业不能接着做。{ $why }

recorded = 记录了什么
took = 用了{ $time }。
confirmed-by-voice = { $n ->
   *[other] 用声音确认{ $n }次
}
confirmed-by-touch = { $n ->
   *[other] 用触摸确认{ $n }次
}
confirmed-by-key = { $n ->
   *[other] 用按键确认{ $n }次
}
readings = 读数
reading-taken = { $what }：{ $number }
limit-least = 限值：{ $least }或更高
limit-most = 限值：{ $most }或更低
limit-least-most = 限值：{ $least }到{ $most }
limit-none = 没有限值
deviations = 偏差
no-deviations = 没有偏差。
deviation-reading = { $what }：{ $number }，超出限值。
deviation-count = { $what }：数到{ $number }，零件表上是{ $expected }。
deviation-passes = 做了{ $number }遍还不行：{ $what }
deviation-verify = 试验没通过：{ $what }
deviation-none-left = 没有备件：{ $what }
deviation-problem = 问题：{ $what }
left-unsafe = 请告诉下一个人
journal-head = 日志 { $hash }

## 张贴单
sheet-kind = 张贴单，本机不能用时照它做
sheet-text = 版本{ $version }，文本{ $digest }
sheet-practice = 练习：虚构的店。不要照这张纸工作。
sheet-drafted = 这些文字由机器起草。懂中文的人还没检查过。
sheet-no-lockout = 这张纸不能代替断电上锁。它拦不住机器，也拦不住你。
sheet-in-order = 每一步都按这个顺序做。做完打勾。
sheet-stop-at-holds = 到安全确认要停下。确认并试过才继续。
sheet-after-break = 休息或换人后，还必须属实的安全确认都要重新确认。再洗一次手。
sheet-machine = 机器
sheet-name = 姓名
sheet-date = 日期
sheet-begun = 开始
sheet-ended = 结束
sheet-signature = 签名
sheet-supervisor = 主管
sheet-second-person = 第二个人
sheet-done = 完成
sheet-step = 步骤
sheet-write-down = 写下
safety-hold = 安全确认
sheet-say-aloud = 确实如此，就大声说：{ $phrase }。
sheet-try-out = 试一试
sheet-it-is-so = 属实
sheet-least = 必须是{ $least }或更高。
sheet-most = 必须是{ $most }或更低。
sheet-least-most = 必须是{ $least }到{ $most }。
sheet-no-limit = 没有限值；写下来。
sheet-limit-source = 限值：{ $source }
sheet-if-off = 如果不对
sheet-wait = 时间：{ $time }或更长。
sheet-passes = 遍数：至少{ $least }，最多{ $most }。
sheet-pass = 遍
sheet-parts-list = 零件表：{ $part }，{ $expected }。
sheet-counted = 数到
sheet-look-at = 查看：{ $part }
sheet-good = 完好
sheet-replaced = 已更换
sheet-none-left = 没有备件
sheet-problems = 出了问题时
sheet-stops-service = 停用机器。
sheet-end-of-work = 工作结束
sheet-left-at = 没做完？停在第几步
sheet-told-to = 已告诉下一个人

picture-established = 开始有效
picture-relied-on = 要靠它
picture-ended = 失效
picture-by-hold = 经安全确认
picture-danger = 存在时有危险
picture-other = 其他条件
picture-not-in-force = 要靠它，却没有生效
picture-page = 第{ $page }页，共{ $pages }页

## 在步骤旁边计算。
say-reckon = 帮我计算
say-ask-again = 重新回答
say-back-to-the-step = 回到步骤
which-reckoning = 要算什么？
reckoned = 都算好了。
not-one-of = “{ $given }”不在可选的答案里。
not-a-number = “{ $given }”不是数字。请写数字，例如 12.5。
not-believable = 不可能：必须在{ $least }和{ $most }之间。
not-whole = “{ $given }”必须是整数。
cannot-work-out = 这个算不出来。
say-other-reckonings = 别的项目
say-hours = { $n ->
    [2] 两小时
   *[other] { $number }小时
}
say-minutes = { $n ->
    [2] 两分钟
   *[other] { $number }分钟
}
say-days = { $n ->
    [2] 两天
   *[other] { $number }天
}
say-gallons = { $n ->
    [2] 两加仑
   *[other] { $number }加仑
}
say-quarts = { $n ->
    [2] 两夸脱
   *[other] { $number }夸脱
}
say-tubes = { $n ->
    [2] 两支
   *[other] { $number }支
}
say-colonies = { $n ->
    [2] 两个菌落
   *[other] { $number }个菌落
}
say-results = { $n ->
    [2] 两个结果
   *[other] { $number }个结果
}
say-ph = { $n ->
   *[other] 酸碱度{ $number }
}
# 日期的说法：年、月、日、星期。
day-said = { $year }年{ $month ->
    [jan] 1月
    [feb] 2月
    [mar] 3月
    [apr] 4月
    [may] 5月
    [jun] 6月
    [jul] 7月
    [aug] 8月
    [sep] 9月
    [oct] 10月
    [nov] 11月
   *[dec] 12月
}{ $day }日{ $weekday ->
    [mon] 星期一
    [tue] 星期二
    [wed] 星期三
    [thu] 星期四
    [fri] 星期五
    [sat] 星期六
   *[sun] 星期日
}

# 为什么算不出来。
cannot-label-bad-percent = 不可能是{ $percent }%；写标签上的百分数，大于 0，不超过 100。
cannot-label-share-not-percent = 固体产品只有{ $percent }%太少；如果标签上的比例是{ $percent }，就写{ $mend }%。
cannot-label-bad-gravity = 比重不可能是{ $gravity }；写标签上的，例如 1.08。
cannot-label-too-strong = 没有按商业标法达{ $percent }%的氯溶液；写每升的有效氯克数除以 10。
cannot-label-bad-dilution = 标签上的稀释，产品和浓度都必须大于零。
cannot-label-bad-packet = 一包的克数必须大于零。
cannot-dose-bad-strength = 配不出{ $wanted }的浓度；要大于零。
cannot-dose-bad-water = 放不了{ $water }水；写大于零的数。
cannot-dose-bad-count = 量不出{ $count }份；写大于零的数。
cannot-dose-wanted-over-cap = { $wanted }高于上限{ $cap }；要{ $cap }或更低。
cannot-dose-over-cap = { $water }水里放{ $count }份是{ $strength }，高于上限{ $cap }；至少用{ $least_water }水，或用小一点的份或包。
cannot-dose-too-weak = 产品本身只有{ $strongest }，配不出{ $wanted }；用更浓的产品。
cannot-dose-wrong-measure = 这种产品不能这样量；换一种量法。
cannot-dose-over-full = { $count }份比{ $water }还多；用小一点的份。
cannot-solution-bad-strength = 浓度不可能是{ $strength }；重看试纸。
cannot-solution-bad-ph = 酸碱度不可能是{ $ph }；它在 0 和 14 之间，重看试纸。
cannot-solution-bad-hardness = 硬度不可能是{ $hardness }；重测水。
cannot-solution-bad-temperature = { $temperature }不可能是溶液的温度；用摄氏或华氏，重看。
cannot-solution-other-label = 标签是别的消毒剂的，不是这种溶液；用对的标签。
cannot-share-bad-ph = 酸碱度不可能是{ $ph }；它在 0 和 14 之间，重看试纸。
cannot-share-no-number = { $temperature }不可能是温度；重看。
cannot-share-too-cold = { $temperature }低于{ $least }摄氏度，那里的平衡没有数据。
cannot-share-too-warm = { $temperature }高于{ $most }摄氏度，那里的平衡没有数据；让它凉一凉。
cannot-growth-outside-range = 模型只适用于{ $least }到{ $most }摄氏度，{ $celsius }不行；不要用模型。
cannot-growth-not-finite = { $value }不是数字；写量到的数。
cannot-growth-negative = { $value }小于零；写零或更大的数。
cannot-growth-not-positive = { $value }必须大于零。
cannot-growth-no-room = 细菌的最大数 10^{ $most } 必须大于开始时的 10^{ $start }。
cannot-growth-absurd-count = 10^{ $value } 个细菌数不出来；指数在 -3 和 12 之间。
cannot-growth-no-growth-there = 模型在{ $celsius }时不生长；只能从更热的试验换算。
cannot-growth-gap = 有{ $hours }没有读数；跨过它相加没有意义，所以不要算进去。
cannot-growth-too-few = 要两个或更多时间的计数才有速率；过后再数。
cannot-log-no-readings = 记录里没有读数；量一次，写下来。
cannot-log-bad-instant = 时间 { $at } 不是秒数；写下读数的时间。
cannot-log-bad-unit = “{ $unit }”不是温度单位；用 °C 或 °F。
cannot-log-absurd = { $temperature }不可能是料浆的温度；检查探头，重看。
cannot-log-bad-gap = 两次读数之间最长间隔{ $gap }必须大于零。
cannot-log-ends-first = 所看的时间，结束（{ $until }）在开始（{ $since }）之前；对调一下。
cannot-log-before-start = 所看的时间（{ $now }）在{ $start }之前；检查时钟。
cannot-log-no-points = 没有写测量点；写出每个必须热的点。
cannot-log-empty-point = 有一个测量点没有读数；读一下，或修好探头。
cannot-log-bad-time = 不可能保持{ $seconds }；写零或更大的数。
cannot-log-bad-fat = 脂肪不可能是{ $percent }%；写 0 到 100 的数。
cannot-log-bad-z = z 值{ $z }、参考{ $reference }不合理；z 在 1 和 50 之间，参考在 -50 和 150 之间。
cannot-log-bad-pairs = 要两组时间不同的数据，时间都大于零。
cannot-log-gap = 有{ $seconds }没有读数，最多只能隔{ $gap }；给一段没有这个间隔的记录。
cannot-date-unknown-zone = 这里没有时区“{ $zone }”；用 Europe/Berlin 这样的名字，并看看时区数据（tzdata）装了没有。
cannot-date-has-zone = { $local } 已经带时区；写墙上时钟显示的时间。
cannot-date-twice = { $local } 那天夜里在 { $zone } 出现两次：{ $first } 和 { $second }；说明是哪一个。
cannot-date-skipped = { $local } 在 { $zone } 没有出现过：时钟拨快了；可能是 { $first } 或 { $second }，说明是哪一个。
cannot-date-ends-first = { $end }在{ $begin }之前；对调一下，或改正错的那个。
cannot-date-bad-freeze = { $frozen }冷冻，和{ $before }前后不合；改正日期。
cannot-date-still-frozen = { $frozen }又冷冻，却没有解冻；写下什么时候解冻。
cannot-date-frozen-unopened = 有冷冻的时间，却没有打开的日期；写下来。
cannot-date-absurd-year = { $day }不可能是用料浆的日子；改正年份。
cannot-date-no-packages = 没有料浆的记录；写下冷柜里有什么。
cannot-date-bad-instant = { $at } 不是时间；写从 1970 年起的秒数。
cannot-plate-bad-dilution = 稀释度 { $dilution }：1:100 写成 0.01，不稀释写成 1。
cannot-plate-bad-volume = 体积 { $volume }：写加到平板上的毫升数，大于 0。
cannot-plate-bad-spread = 蔓延 { $spread }：写占平板的比例，例如 0.25。
cannot-plate-bad-colonies = { $colonies } 个菌落：写 0 或更大的数。
cannot-plate-no-area = 每平方厘米超过 100 个菌落的平板，要写它的平方厘米面积。
cannot-plate-no-plate = 没有平板：至少写一个。
cannot-plate-no-count = 做了标记的平板没有计数。
cannot-tubes-bad-amount = 一支管里 { $amount }：写样品的克数，大于 0。
cannot-tubes-bad-tubes = { $tubes } 支管：写有几支管加了这个量，1 或更多。
cannot-tubes-bad-positive = { $tubes } 支管中 { $positive } 支阳性：写 0 到 { $tubes }。
cannot-tubes-no-tubes = 没有管：至少写一个稀释度。
cannot-tubes-one-tube = 只有一支管得不出数：至少写两支。
cannot-plan-no-sample = n = { $n }：方案至少要一个样品。
cannot-plan-bad-c = c = { $c }：写 0 到 n，这里是 { $n }。
cannot-plan-bad-m = m = { $m }：写 0 或更大的数。
cannot-plan-bad-top = M = { $top }：M 必须大于 m = { $m }；二级方案没有 M。
cannot-plan-other-number = 方案要 { $n } 个样品，却有 { $given } 个：写同一批的 { $n } 个结果。
cannot-result-number-missing = 这种结果必须有数字。
cannot-result-number-too-many = 这种结果不能有数字。
cannot-result-bad-number = { $value } 不是计数；写 0 或更大的数。
cannot-result-no-result = “{ $text }”不是结果；写成 1200、< 10、> 1100 或 spreaders。
cannot-limit-several-limits = { $title }对{ $product }的{ $test }有 { $count } 个限值：只留一个。
cannot-limit-no-limit = { $title }对{ $product }没有{ $test }的限值。
cannot-limit-other-unit = { $title }的限值按每{ $limit_per }，这个结果按每{ $per }。
cannot-limit-no-authority = 没有叫“{ $called }”的主管部门；有的是 { $known }。
cannot-limit-no-plan = 没有叫“{ $called }”的抽样方案；有的是 { $known }。

reckon-dose = 消毒液：放多少
call-dose = 放多少
ask-dose-unit = 水用升、加仑还是夸脱？
ask-dose-water = 有多少水？
ask-dose-wanted = 要多浓？毫克每升，就是试纸上的 ppm。
pick-in-litres = 用升
pick-in-gallons = 按加仑
pick-in-quarts = 夸脱算
dose-put = { $water }水里放{ $count }包。得到{ $strength }。
dose-put-one = { $water }水里放一包。得到{ $strength }。
dose-rounded = 正好是{ $exact }包。按整包，浓{ $gained }。
dose-exact = 正好，没有取整。
dose-grams = 按重量正好是{ $grams }。
dose-in-range = 在{ $least }到{ $most }之内。用试纸测。
dose-below-range = 太弱：必须在{ $least }和{ $most }之间。
dose-above-range = 太强：必须在{ $least }和{ $most }之间。
dose-no-range = 本店的限值没有它的范围。照标签做。
dose-wanted-over-cap = { $wanted }高于免冲洗的上限{ $cap }。要这么多或更少。
dose-over-cap = 需要整包：{ $count }。{ $water }水里得到{ $strength }，高于上限{ $cap }。用{ $needed }水或更多。

reckon-strength = 消毒液：够不够强
call-strength = 够不够强
ask-strength-strip = 试纸显示多少？毫克每升，就是 ppm。
ask-strength-acidity = 溶液的酸碱度是多少？
ask-strength-temperature = 溶液有多热？
strength-passes = 够强。让它留{ $time }或更长。
strength-passes-at-once = 够强。没有规定时间。
strength-label-first = 产品标签要求更高时，照标签做。
strength-any-ph = 酸碱度没有量：只算法规对{ $most }以内任何酸碱度都列出的。
pick-not-measured = 没人量过
strength-no-row = 不合格：法规没有列出这样的溶液。
strength-over-cap = 太强，不冲洗就不能用。
strength-off-label = 不合格：产品标签不允许。
strength-no-contact-time = 不合格：没有写要留多久。
strength-no-table = 本店的限值“{ $profile }”没有列出消毒溶液，所以都不能合格。问主管。
strength-to-mend = 改正办法：
strength-or = 或者：
strength-test-again = 然后再测。
strength-ask = 问主管。
need-stronger = 配到{ $value }或更强。
need-weaker = 加水到{ $value }或更低。
need-warmer = 加热到{ $value }或更高。
need-lower-ph = 把酸碱度降到{ $value }或更低。
need-softer-water = 用硬度{ $value }或更低的水。
need-measure-strength = 量浓度。
need-measure-ph = 量酸碱度。
need-measure-ph-up-to = 量酸碱度。必须是{ $value }或更低。
need-measure-temperature = 量温度。
need-measure-hardness = 量水的硬度。
need-read-label = 填产品标签上写的。

reckon-free-chlorine = 消毒液：为什么要看酸碱度
call-free-chlorine = 酸和氯
ask-free-chlorine-kind = 是漂白液，还是粉或药片？
ask-free-chlorine-strip = 试纸显示多少？毫克每升，就是 ppm。
ask-free-chlorine-acidity = 溶液的酸碱度是多少？
ask-free-chlorine-temperature = 溶液有多热？
pick-bleach = 漂白液
pick-powder = 粉或药片
free-chlorine-share = { $ph }时，游离氯有{ $percent }%是杀菌快的那种：{ $free }中的{ $acid }。
free-chlorine-at-most = 粉会结合一部分氯，所以比这少。
free-chlorine-extrapolated = 水比公式适用的更热。
free-chlorine-explains = 这只说明为什么要量酸碱度。合格不合格都不看它。

reckon-cold = 料浆：是不是一直冷
call-cold = 是否一直冷
ask-cold-hours = 上次量料浆并且够冷，是几小时前？没人知道就答七十二小时。
ask-cold-now = 料浆现在多少度？
ask-cold-power = 从那时起停过电吗？
ask-cold-plan = 有没有料浆不冷藏存放的书面规程？容器上写了废弃时间吗？
ask-cold-watched = 从那时起每小时都量过，没有超过 21 摄氏度（70 华氏度）吗？
pick-stayed-on = 一直有电
pick-was-out = 停过电
pick-not-known = 谁也说不准
pick-plan-there = 两样都有
pick-plan-missing = 缺了东西
pick-watched = 每小时都量
pick-not-watched = 没那么勤
cold-kept = 两次读数料浆都冷，现在{ $now }，电一直有。可以出售。
cold-unwatched = 料浆现在冷，{ $now }。但有{ $time }没人量：那段时间不知道，不能算冷。
cold-watch-it = 主管决定之前不要出售。从现在起每四小时量一次。
cold-left = 还可以出售{ $left }。之后倒掉。
cold-clock-runs = 时间一直在走，料浆再变冷也一样。
cold-throw-away = 这料浆不要出售。倒掉。
cold-unknown-is-warm = 没人看着的时间按热算。
cold-ground-no-procedure = 手边没有书面规程。
cold-ground-start-not-cold = 没有东西证明开始时够冷。
cold-ground-unmarked = 容器上没有写废弃时间。
cold-ground-marked-too-late = 写的废弃时间比规定的晚。
cold-ground-time-is-up = 不冷藏的时间到了。
cold-ground-too-warm = 有过比规定更热的时候。
cold-ground-not-watched = 缺读数，所以没人知道有多热。

reckon-growth = 料浆：细菌长多快
call-growth = 细菌生长
ask-growth-temperature = 料浆多少度？
ask-growth-hours = 多少小时？
growth-listeria = { $temperature }放{ $time }，李斯特菌可能变成{ $times }倍。对数是{ $log }。
growth-spoilers = 让牛奶变质的细菌可能变成{ $times }倍。对数是{ $log }。
growth-explains = 这只说明规定为什么严。料浆合格不合格看规定，不看这个。

reckon-use-by = 料浆：最后一天
call-use-by = 最后一天
ask-use-by-state = 袋子打开了，还是没拆封？
ask-use-by-opened = 几天前打开的？今天是零。
ask-use-by-frozen = 打开后冷冻过几个整天？放进和取出的那天不算。
ask-use-by-printed = 上面印了厂家的使用期限吗？
ask-use-by-when = 那一天还没到，还是已经过了？今天算没到。
ask-use-by-date = 离那一天有几天？今天是零。
pick-opened = 已经打开
pick-sealed = 没拆封
pick-nobody-wrote = 开了没写日期
pick-date-printed = 印了日期
pick-no-date = 上面空白
pick-still-to-come = 还没到
pick-already-over = 已经过期
use-by-last-day = 最后一天是{ $day }。连今天还有{ $left }天。
use-by-then-away = 过了那天就倒掉。
use-by-kept-cold = 只对保存在{ $most }或更冷的料浆有效。
use-by-throw-away = 这袋不要用。倒掉。
use-by-frozen-too-long = { $opened }天前打开，不可能冷冻了{ $frozen }个整天。重新给天数。
bar-too-warm = 放得太热，或没人知道多热。
bar-undated = 没人写下什么时候打开，或能放到哪天。
bar-wrongly-dated = 日期不可能对。
bar-frozen = 冻着。先解冻。
bar-days-are-up = 打开的天数已满。
bar-makers-date-passed = 厂家的使用期限已过。
bar-mark-passed = 标签上的最后一天已过。

reckon-pour-next = 料浆：下一袋倒哪个
call-pour-next = 倒哪一袋
ask-pour-next-state = 第{ $place }袋：打开了，还是没拆封？
ask-pour-next-opened = 第{ $place }袋：几天前打开的？今天是零。
ask-pour-next-printed = 第{ $place }袋：上面印了厂家的使用期限吗？
ask-pour-next-when = 第{ $place }袋：那一天还没到，还是已经过了？今天算没到。
ask-pour-next-date = 第{ $place }袋：离那一天有几天？今天是零。
ask-pour-next-another = 第{ $place }袋记下了。还有一袋吗？
pick-another = 还有一袋
pick-no-more = 就这些了
pour-first = 先倒第{ $bag }袋。最后一天是{ $day }。
pour-then = 再倒第{ $bag }袋。最后一天是{ $day }。
pour-not = 第{ $bag }袋不要用。
pour-none = 这些袋都不能倒。

reckon-heat-treatment = 加热处理：能不能出料
call-heat-treatment = 加热处理
ask-heat-treatment-coldest = 保持高温时，料浆最冷的点是多少度？
ask-heat-treatment-minutes = 保持了多少分钟？
ask-heat-treatment-ended = 几小时前结束的？
ask-heat-treatment-strip = 上次拆开、清洗、消毒机器是几天前？
heat-allowed = 机器可以出料。不再做什么的话，{ $left }后锁住。
heat-locked = 出料已锁住。
heat-only-this-pair = 只算列出的这一组：每个点{ $hot }，不间断{ $time }。
heat-lapse-no-heat = 没有加热处理的记录。
heat-lapse-heat-failed = 加热处理没通过：最冷的点{ $coldest }，{ $minutes }。
heat-lapse-heat-overdue = 上次加热处理结束已超过一天。现在做一次。
heat-lapse-no-strip = 没有整机拆洗的记录。
heat-lapse-strip-overdue = 机器超过{ $days }天没有拆开。拆开，清洗，消毒。

reckon-plate-count = 实验室：平板计数
call-plate-count = 平板计数
ask-plate-count-rule = 按哪个规则：FDA 还是 ISO？
ask-plate-count-exponent = 平板{ $place }：是第几个十倍稀释？一百分之一是第二，不稀释是第零。
ask-plate-count-kind = 平板{ $place }：数得出来吗？
ask-plate-count-colonies = 平板{ $place }：上面有多少菌落？
ask-plate-count-more = 平板{ $place }记下了。还有一个平板吗？
pick-fda-rule = 美国规则
pick-iso-rule = 国际标准
pick-counted = 我数过了
pick-too-full = 太多数不清
pick-overgrown = 蔓延生长
pick-spoiled-plate = 实验室事故
pick-another-plate = 还有一个
plate-exact = 每克{ $amount }菌落形成单位。
plate-estimated = 每克{ $amount }菌落形成单位，估计值。
plate-less-than = 每克少于{ $amount }菌落形成单位。
plate-more-than = 每克多于{ $amount }菌落形成单位。
plate-spreaders = 没有计数，因为每个平板的蔓延生长盖得太多。重新接种样品。
plate-laboratory-accident = 没有计数，因为没有一个平板能用。重新接种样品。
plate-why-out-of-range = 不在{ $least }到{ $most }个菌落之间的平板没有算。
plate-why-other-dilution = 头两个连续稀释度以外的平板没有算。
plate-why-spreader = 蔓延生长超过四分之一的平板没有算。
plate-why-accident = 出事故的平板没有算。
plate-why-all-low = 每个平板都少于{ $least }个菌落。
plate-why-no-colonies = 没有一个平板有菌落。
plate-why-all-high = 每个平板都多于{ $most }个菌落。
plate-why-none-in-range = 没有一个平板有{ $least }到{ $most }个菌落。
plate-why-no-number = 最满的平板数不出来。
plate-why-present = 有菌落，但太少，估计不了。

reckon-mpn = 实验室：最可能数
call-mpn = 三支试管
ask-mpn-tenth = 三支加十分之一克的管，几支阳性？
ask-mpn-hundredth = 三支加百分之一克的管，几支阳性？
ask-mpn-thousandth = 三支加千分之一克的管，几支阳性？
mpn-exact = 最可能数是每克{ $amount }。
mpn-less-than = 最可能数少于每克{ $amount }。
mpn-more-than = 最可能数多于每克{ $amount }。
mpn-limits = 百分之九十五的把握，在{ $low }和{ $high }之间。
mpn-limit-below = 百分之九十五的把握，是{ $low }或更多。
mpn-improbable = 这些管极不可能是这样。可能有错，重测。

reckon-lot = 实验室：一批的样品
call-lot = 一批样品
ask-lot-plan = 哪个抽样方案？
ask-lot-count = 样品{ $place }：每克多少菌落形成单位？
ask-lot-found = 样品{ $place }：检出了吗？
pick-eu-ice-cream-enterobacteriaceae = 肠道细菌
pick-eu-listeria-shelf-life = 店里的李斯特菌
pick-eu-listeria-at-producer = 出厂前查李斯特
pick-eu-ice-cream-salmonella = 冰淇淋沙门氏菌
pick-found = 检出了
pick-not-found = 里面没有
lot-satisfactory = 这批满意。
lot-acceptable = 这批可以接受。查看卫生。
lot-unsatisfactory = 这批不满意。叫主管。
lot-unknown = 样品定不下来。重测。
lot-above = 高于{ $limit }的样品：{ $of }个中{ $above }个。最多可以{ $may }个。
lot-above-top = 高于{ $limit }的样品：{ $above }个。一个都不可以。
lot-presence = { $of }个样品中{ $found }个检出。一个都不可以。
ask-lot-bound = 样品{ $place }：报告说少于多少？

reckon-authority = 实验室：主管部门怎么做
call-authority = 主管部门
ask-authority-who = 用谁的限值？
ask-authority-test = 哪项检验？
ask-authority-product = 样品是什么？
ask-authority-results = 最近有几个不同日子的结果？最多五个。
ask-authority-result = 结果{ $place }，从最早的起：多少菌落形成单位？
pick-usda = 农业部
pick-iowa = 艾奥瓦
pick-maryland = 马里兰
pick-north-carolina = 北卡罗来纳
pick-kansas = 堪萨斯
pick-connecticut = 康涅狄格
pick-houston = 休斯敦
pick-california-frozen-yogurt = 加利福尼亚
pick-grade-a-milk = 牛奶条例
pick-total-count = 菌落总数
pick-coliform = 大肠菌群
pick-enterobacteriaceae = 肠道细菌
pick-listeria-monocytogenes = 李斯特菌
pick-salmonella = 沙门氏菌
pick-yeast = 酵母
pick-mold = 霉菌
pick-plain = 原味冰淇淋
pick-bulky = 果仁或巧克力
pick-sherbet = 果汁雪糕
pick-frozen-yogurt = 冷冻酸奶
pick-mix = 冷冻前的料浆
pick-milk = 牛奶
authority-clear = 合格：最近{ $of }个结果中{ $over }个超限。
authority-notice = 通知：最近{ $of }个结果中{ $over }个超限。通知后 3 到 21 天之间再取样。
authority-action = 处置：最近{ $of }个结果中{ $over }个超限。主管部门可以停止销售。
authority-each-clear = 最近的结果在限值内。
authority-each-action = 处置：最近的结果超限，一个都不可以。
authority-average-kept = 最近四个结果的对数平均在限值内。
authority-average-over = 处置：最近四个结果的对数平均超限。
authority-limit-g = 限值是每克{ $limit }。
authority-limit-ml = 限值是每毫升{ $limit }。
authority-cleared-by = 要连续多少个取样日合格才解除：{ $days }。
authority-rule-not-stated = 这个主管部门没有写连续结果的规则。按最近四个中两个、五个中三个判断。
ask-authority-bound = 结果{ $place }：报告说少于多少？
authority-unknown = 不明：最近{ $of }个结果中{ $over }个肯定超限，其他的也可能。
authority-each-unknown = 不明：最近的结果可能超限。
authority-average-unknown = 不明：最近四个结果的对数平均可能超限。
authority-may-be-action = 也许已经要处置。

reckon-trend = 实验室：提前预警
call-trend = 提前预警
ask-trend-test = 哪项检验？
ask-trend-limit = 限值是每克多少菌落形成单位？
ask-trend-results = 有几个结果？至少八个。
ask-trend-result = 结果{ $place }，从最早的起：多少菌落形成单位？
trend-too-few-results = 结果太少，看不出趋势。
trend-steady = 结果平稳。
trend-shift = 移动平均过了它的控制限。
trend-rise = 结果随时间上升。
trend-early = 还没有结果超过{ $limit }：现在就查看这个缸的清洗。
trend-over = 已经有结果超过{ $limit }。
trend-no-chart = 不同的计数太少，做不了控制图。
trend-even-days = 结果按相同的时间间隔算。
trend-needs-scipy = 趋势要用 scipy 库，这里没有装。用这条命令装：pip install "brushdown[laboratory]"。
ask-trend-bound = 结果{ $place }：报告说少于多少？
pick-below-detection = 低于检出限
results-left-open = 可能超过{ $limit }的结果，因为报告只说少于一个更大的数：{ $count }个。请用更低的稀释度检验。

## 工作中的数字
typed-nothing = 什么都没有输入。请输入数字。
typed-no-number = “{ $text }”不是数字。用数字输入，例如 38.5。
typed-fraction = “{ $text }”里有分数或上标数字。输入小数，例如 0.5。
typed-two-readings = “{ $text }”可以是 { $first }，也可以是 { $second }。输入 { $first } 或 { $second }。
typed-mixed = “{ $text }”里不止一个数字。算成一个数字和一个单位。
typed-no-unit = “{ $text }”没有单位。加上其中一个：{ $units }。
typed-unknown-unit = 这里没有单位“{ $unit }”。用其中一个：{ $units }。
typed-ounce = “{ $unit }”是重量，这里要体积。液量盎司请输入 fl oz。
typed-negative = { $number }小于零。输入{ $least }到{ $most }的数。
typed-out-of-range = { $number }不可能。必须在{ $least }和{ $most }之间。
typed-no-time = “{ $text }”不是钟点。写成 21:30。
typed-no-such-time = 没有“{ $text }”这个钟点。最晚是 23:59，带 am 或 pm 时是 12:59。
typed-twelve = “{ $text }”可以是半夜，也可以是中午。输入 { $first } 或 { $second }。
typed-half-of-day = “{ $text }”可以是上午，也可以是晚上。输入 { $first } 或 { $second }。

## 按键说话
ear-press-to-talk = 我不在听：先按{ $key }，再说话
ear-pressed = 我在听；按{ $key }停止

refused-press-for-hold = 你自己的说法不能用来回答安全确认。请在屏幕上按。

## 语音测试
voice-test-begin = 大约要两分钟。穿上工作时穿的，站在工作的地方，让机器开着。
voice-test-speak = 1. 像平时对本机那样说{ $seconds }秒。现在开始。
voice-test-level = 你的声音：比满刻度低{ $rms } dB，最高低{ $peak } dB。
voice-test-silent = 2. 安静{ $seconds }秒。现在开始。
voice-test-noise = { $n ->
    [0] 环境：{ $rms } dB。噪声没有被当成说话。
   *[other] 环境：{ $rms } dB。噪声有{ $n }次被当成说话。
}
voice-test-say = 3. 显示一句就说一句。
voice-test-right = 听懂了
voice-test-wrong = 当成了“{ $text }”
voice-test-rejected = 没听懂
voice-test-nothing = 什么都没听到
voice-test-count = 说了{ $said }句，听懂{ $right }句，没听懂{ $rejected }句，当成别的{ $wrong }句。
voice-test-above = 你的声音比环境响{ $decibels } dB。
voice-test-no-ear = { $why }
voice-test-good = 这个地方可以用声音工作。
voice-test-bad = 这个地方不能用声音工作。

spot-nothing-heard = 没有听到说话。看看麦克风对不对、开了没有、音量够不够大。
spot-no-ear = 本机没有这种语言的语音识别。用触摸工作，加一个语音模型，或教它你自己的说法：kiosk voice teach。
spot-too-loud = 麦克风音量太大：最响的声音被削掉了。调小。
spot-too-faint = 你的声音太弱。把耳麦移近嘴，或调大麦克风。
spot-nearer = 把耳麦移近嘴：离嘴边两指最好。
spot-other-place = 这里很吵。换个地方，或工作时关掉机器和音乐。
spot-push-to-talk = 如果一直这么吵，用按键说话：在 site.toml 的 [hearing] 下写 push_to_talk = true。
spot-wrong-heard = 有一句被当成了别的。说“对的”之前，先看屏幕上听到了什么。
spot-own-words = 不是噪声的原因。用平常的声音说，不要放慢；或教本机你自己的说法：kiosk voice teach。
spot-touch = 在那之前用触摸工作：每一步都可以在屏幕上做。

## 自己的说法
teach-begin = 在安静的地方教本机你自己的说法。每句说三次。保存的是它的声音特征，是数字，没有录音。
teach-word = “{ $word }”你怎么说：
teach-too-short = 太短了。再说一次。
teach-too-long = 太长了。说短一点。
teach-too-loud = 太响，被削掉了。麦克风拿远一点。
teach-too-faint = 太弱了。麦克风拿近一点。
teach-too-noisy = 这里太吵。到安静的地方教。
teach-unlike = 和前面说得不一样。每次用同样的说法。
teach-like-another = 听起来像你的另一句。换一个说法。
teach-nothing-heard = 什么都没听到。
teach-given-up = “{ $word }”没有教成，所以什么都没有保存。换长一点的说法，或安静一点的地方，重新开始。
teach-tried = 你的{ $said }个样本中，有{ $right }个能靠其他样本听懂。
teach-kept = 你的说法保存在 { $file }。它们关系到个人：不再需要时用 --forget 删除。
teach-holds = 安全确认不能用它们回答：在那里要说整句话，或者按。
teach-forgotten = { $worker }自己的说法已删除。
teach-nothing-kept = 没有保存{ $worker }自己的说法。

## 偏差
found-problem-open = { $named ->
    [yes] 问题，{ $time }没有解决：{ $reason }。在：{ $what }
   *[other] 没有说原因的问题，{ $time }没有解决。在：{ $what }
}
found-problem = { $became ->
    [put-right] { $named ->
        [yes] 问题：{ $reason }。员工说已处理好，接着做了。在：{ $what }
       *[other] 没有说原因的问题。员工接着做了。在：{ $what }
    }
    [out-of-service] { $named ->
        [yes] 问题：{ $reason }。机器已停用。在：{ $what }
       *[other] 没有说原因的问题。机器已停用。在：{ $what }
    }
   *[other] { $named ->
        [yes] 问题：{ $reason }。本次作业已结束。在：{ $what }
       *[other] 没有说原因的问题。本次作业已结束。在：{ $what }
    }
}
found-out-of-service = 机器已停用。在：{ $what }
found-ended-early = 本次作业提前结束。在：{ $what }
found-unfinished = { $time }没有动静，本次作业也没有结束。在：{ $what }
found-no-way-in = 没有安全的办法做下去。在：{ $what }
found-hold-touched-after-doubt = 说的话不确定（“{ $heard }”），之后改为按下安全确认：{ $what }
found-hold-read-back-refused = “{ $heard }”被当成了那句话，员工说不是：{ $what }
found-try-out-failed = 试验显示并非如此：{ $what }
found-wait-short = { $clock ->
    [wall] 按墙上的钟，{ $needed }只过了{ $waited }。钟调过吗？{ $what }
   *[other] { $needed }只过了{ $waited }：{ $what }
}
found-wait-cut = { $needed }过了{ $waited }就中断：{ $what }
found-reading-off = { $told ->
    [yes] { $what }：{ $number }，超出限值（{ $limit }）。应做：{ $corrective } 之后读到{ $then }。
   *[other] { $what }：{ $number }，超出限值（{ $limit }）。没有写纠正措施。之后读到{ $then }。
}
found-reading-left-off = { $told ->
    [yes] { $what }：{ $number }，超出限值（{ $limit }），之后的读数也没有达到。应做：{ $corrective }
   *[other] { $what }：{ $number }，超出限值（{ $limit }），之后的读数也没有达到。没有写纠正措施。
}
found-count-off = { $told ->
    [yes] { $what }：数到{ $number }（{ $limit }）。应做：{ $corrective } 之后数到{ $then }。
   *[other] { $what }：数到{ $number }（{ $limit }）。之后数到{ $then }。
}
found-count-left-off = { $told ->
    [yes] { $what }：数到{ $number }（{ $limit }），没有改正。应做：{ $corrective }
   *[other] { $what }：数到{ $number }（{ $limit }），没有改正。
}
found-passes-ran-out = 第{ $number }遍之后还是不行：{ $what }
found-too-fast = { $time }就确认了，而这要{ $least }或更长：{ $what }
found-none-in-stock = 没有备件：{ $what }
found-shorter-than-usual = 本次作业用了{ $time }。之前{ $number }次的中间值是{ $usual }。
found-longer-than-usual = 本次作业用了{ $time }。之前{ $number }次的中间值是{ $usual }。
found-restarted = { $power ->
    [cut] 电脑重新启动过；本次作业停了{ $time }。在：{ $what }
   *[other] 本机重新启动过；本次作业停了{ $time }。在：{ $what }
}
found-back-step = 从“{ $what }”退回到“{ $to }”。
found-touch-only = { $number }步全部用触摸确认，而这台机器旁可以用语音。
found-text-unknown = { $procedure }版本{ $version }（{ $digest }）的文本不在这里了。快慢、时间和零件不能全部判断。
found-session-early = { $machine }，{ $day }：{ $duty ->
    [close] 晚间工作
    [open] 早间工作
   *[other] { $title }
}{ $at }就做完了，比应做的时间（{ $begins }到{ $until }）早得多。
found-session-late = { $machine }，{ $day }：{ $duty ->
    [close] 晚间工作
    [open] 早间工作
    [check] 营业中检查
   *[other] { $title }
}{ $at }才做完。应做的时间是{ $begins }到{ $until }。
found-session-not-finished = { $machine }，{ $day }：{ $duty ->
    [close] 晚间工作
    [open] 早间工作
    [check] 营业中检查
   *[other] { $title }
}开始了没做完；最后动手是{ $at }。应做的时间是{ $begins }到{ $until }。
found-session-never-started = { $machine }，{ $day }：{ $duty ->
    [close] 晚间工作
    [open] 早间工作
    [check] 营业中检查
   *[other] { $title }
}没有开始。应做的时间是{ $begins }到{ $until }。
found-overdue = { $machine }：{ $duty ->
    [sample] 实验室样品
   *[other] { $title }
}应在{ $day }前做，没有记录。
due-close = 晚间工作：{ $machine }
due-open = 早间工作：{ $machine }
due-check = 营业中检查：{ $machine }
due-sample = 实验室样品：{ $machine }
due-other = { $title }：{ $machine }

### 纸上的报告。机器起草，需要懂中文的人检查。
### reviewed: no

report-title-day = 一天的报告
report-title-month = 一个月的报告
report-title-folder = 给检查员的文件
report-practice = 练习：虚构的店或排练。这不是真实工作的记录。
report-drafted = 这份报告的文字由机器起草。懂中文的人还没检查过。

## 关于一次作业或几天
report-session = 作业
report-shop = 店
report-machine = 机器
report-procedure = 规程
report-text = 所做的文本
report-version = 版本{ $version }，摘要{ $digest }
report-workers = 员工
report-begun = 开始
report-last-event = 最后一件事
report-how-ended = 怎样结束
report-ended = { $how ->
    [complete] 做完
    [ended-early] 提前结束
    [out-of-service] 结束，机器停用
   *[open] 没有结束
}
report-length = 时长
report-minutes = { $minutes }分钟
report-usual-length = 平时时长
report-usual = { $minutes }分钟：之前{ $count }次作业的中间值
report-usual-none = 没有之前的作业可比
report-confirmed-steps = 已确认的步骤
report-signed = 签认
report-signed-not = 没有主管签认。
report-signed-off = { $person }签认，{ $at }
report-signed-back = { $person }发回，{ $at }
report-left-unsafe = 结束时要告诉下一个人：{ $what }。
report-text-unknown = 规程已没有当时所做的文本。它的句子、步骤种类和所需时间不能显示。
report-days = 营业日
report-days-mean = 开始的作业
report-days-begun = { $first }到{ $until }；营业日在打烊和开门的正中间换日
report-sessions = 作业
report-sessions-complete = 做到最后的作业
report-sessions-signed = 签认的作业
report-sessions-sent-back = 发回的作业
report-due = 该做的
report-due-in-time = 按时做完
report-due-missed = 没做
report-readings = 读数
report-readings-off = 超出限值的读数
report-deviations = 偏差
report-steps = 步骤
report-beside = 步骤之外
report-signing = 签认
report-laboratory = 实验室结果
report-parts = 零件
report-people = 人员
report-procedures = 规程
report-figures = 图

## 表头
report-column-rows = 行
report-column-time = 时间
report-column-day = 日期
report-column-step = 步骤
report-column-answer = 回答和限值
report-column-how = 怎样回答
report-column-who = 谁
report-column-what = 什么
report-column-told = 记录了什么
report-column-at-step = 在步骤
report-column-weight = 轻重
report-column-deviation = 偏差
report-column-why-seen = 为什么该看
report-column-source = 规则来源
report-column-session = 作业
report-column-count = 数目
report-column-machine = 机器
report-column-measured = 量了什么
report-column-value = 数值
report-column-limit = 限值和来源
report-column-kept = 达到
report-column-least = 最低
report-column-middle = 中间
report-column-most = 最高
report-column-off = 超出限值
report-column-remark = 备注
report-column-barrel = 机器和出口
report-column-product = 产品
report-column-analysis = 检验
report-column-result = 结果
report-column-laboratory = 实验室
report-column-because = 为什么
report-column-standing = 状态
report-column-trend = 趋势
report-column-due = 该做
report-column-its-time = 应做时间
report-column-became = 后来怎样
report-column-begun = 开始
report-column-work = 机器和工作
report-column-length = 分钟（平时）
report-column-ended = 结束
report-column-deviations = 偏差
report-column-signed = 签认
report-column-part = 零件
report-column-found = 查到
report-column-procedures = 规程
report-column-procedure = 规程
report-column-version = 版本
report-column-known = 知道什么
report-column-kind = 机器种类
report-column-signs = 可疑之处
report-column-digest = 文本的摘要（SHA-256）

## 表格
report-none = 没有
report-steps-caption = 每次停在一步，按顺序
report-steps-none = 没有进入任何步骤
report-beside-caption = 中断、问题、换人、退回，以及算了什么
report-signings-caption = 主管怎么说
report-deviations-caption = 偏差，最重的在前；一个不漏
report-deviations-none = 没有查到
report-rules-caption = 每条规则查到几次
report-readings-caption = 量了什么
report-readings-none = 什么都没有量
report-spread-caption = 量了什么，按机器
report-results-caption = 这些天取样的结果
report-results-none = 没有录入
report-struck-caption = 已划掉、不再算的录入
report-standing-caption = { $day }的状态
report-due-caption = 该做的全部
report-due-caption-off = 没有按时做的
report-sessions-caption = 作业，按开始的顺序
report-sessions-none = 没有作业
report-parts-caption = 更换、磨损或数错的零件
report-wear-caption = { $day }的易损件
report-shelf-caption = { $day }的备件
report-traces = 不好的结果可能从哪里来
report-traces-more = 只追查最后几个；还有{ $n }个没有追查。
report-trace-caption = { $day }，{ $what }：{ $amount }。查看范围：{ $first }到{ $last }。最可疑的在前
report-people-caption = 谁参加了
report-procedures-caption = 所做的文本

## 回答
report-on-list = 零件表：{ $expected }
report-remark-erased = 这条备注的文字已清除
report-hold-confirmed = 已确认
report-done = 完成
report-passes = { $number }遍
report-waited = 等了{ $waited }，要{ $needed }
report-left = { $how ->
    [went-back] 没有回答：退回
    [held] 没有回答：停住
    [handed-over] 没有回答：换人
    [session-ended] 没有回答：作业结束
   *[still-there] 还没有回答
}
report-finding = { $finding ->
    [good] 完好
    [replaced] 已更换
    [none-left] 磨损，没有备件
   *[other] { $other }
}
report-counted = 数到{ $counted }，零件表上是{ $expected }
report-said = { $said ->
    [phrase] 那句话
    [read-back-agreed] 反问答对的
    [read-back-refused] 反问答不是
    [try-out-failed] 试验没通过
    [number] 数字
    [out-of-limit] 超出限值
    [pass] 做了一遍
    [pass-judged] 判断了一遍
    [passes-ran-out] 遍数用完
    [tried-again] 又试一次
    [time-up] 时间到
   *[confirmed] 已确认
}
report-channel = { $channel ->
    [touch] 触摸
    [key] 按键
    [kiosk] 本机
   *[voice] 声音
}
report-heard = 声音“{ $heard }”，识别 { $ear }
report-heard-sure = 声音“{ $heard }”（{ $sure }），识别 { $ear }
report-asked-again = 重问：{ $count }
report-witnessed = 第二个人：{ $person }
report-limit-none = 没有限值
report-kept-yes = 达到
report-kept-no = 没有达到！
report-kept-unknown = 不能判断
report-kept-without = 不判断

## 步骤之外
report-stood-still = 停住
report-break = { $because ->
    [pause] 暂停
    [problem] 问题
    [restart] 本机重启
   *[no-way-in] 没有安全的路
}，到{ $until }
report-problem = 问题
report-no-reason = 没有说原因
report-became = { $became ->
    [put-right] 说已处理好
    [ended-early] 作业结束
    [out-of-service] 机器停用
   *[open] 没有解决
}
report-hand-over = 换人
report-back = 退回一步
report-worked-out = 计算
report-stand = { $stand ->
    [not-yet-due] 还没到时间
    [due] 现在该做
    [done] 按时做完
    [done-early] 做得太早
    [done-late] 做晚了
    [begun-not-finished] 开始了没做完
    [out-of-service] 机器停用
    [not-opened] 当天没用机器
   *[missed] 没做！
}

## 实验室
report-head = { $head ->
    [left] 左出口
    [right] 右出口
    [twist] 双拼出口
    [single] 单出口
   *[other] 出口 { $head }
}
report-authority = 按{ $title }判断，{ $law }。来源：{ $source }（{ $tag }）。
report-authority-none = 这份报告没有指定主管部门，所以不显示限值和状态。
report-state = { $state ->
    [clear] 合格。
    [notice] 通知！
    [action] 处置！
    [unknown] 不明：有结果只是界限。
   *[no-results] 没有结果。
}
report-over-of = 超限：最近{ $of_four }个中{ $four }个，最近{ $of_five }个中{ $five }个。
report-resample = 再取样：{ $first }到{ $last }。
report-owed = 六个月内还差的取样日：{ $days }。
report-average = 最近四个结果的对数平均：{ $low }或更高。
report-left-out = 没有算{ $result }：{ $why }。
report-trend-none = 看不出趋势。

## 签名，以及这一切的依据
report-meaning = { $what ->
    [signed-off] 看过，认可
   *[sent-back] 发回，要做些什么
}
report-signature-means = 签名的意思。“签认”：写明的主管在写明的时间看过那次作业的记录，并认可它。“发回”：主管要求对它做些什么。这不表示主管看到了工作，也不表示机器安全。每个签名旁都有姓名、时间和意思（21 CFR 11.50 的三项）。本店用密码时，签名经本人密码给出；它不是合格电子签名。
report-sign-name = 姓名（工整书写）
report-sign-signature = 签名
report-sign-date = 日期和时间
report-rests-on = 这份报告的依据
report-limits-are = 限值照当时有效并记入日志的，每个都写明条款和来源。凡有不同，以机器说明书、产品标签和当地法规为准。
report-deviations-are = 偏差是书面规则在记录中查到的；每条规则旁写明来源。写“通行做法，没有来源”的，没有已知的公开来源。偏差是去看一看的理由，不是有错的证明。
report-rows-are = “{ $column }”一栏写的是本机日志的行。这里的每个数值和数目都由这些行得出，也可以再算一遍。整次作业写第一行和最后一行。
report-verify = 怎样核对日志
report-kiosk = 终端
report-head-row = 日志的最后一行
report-head-hash = 那一行的哈希值（SHA-256）
report-head-time = 那一行的时间（UTC）
report-made = 这份报告做于
report-verify-how = 要一份 journal.db 文件的副本。每行的哈希值覆盖这一行和前一行的哈希值。从第一行算到上面写的那一行；最后一个必须和这里印的相同。{ $page } 页有一个短程序可以算，不需要我们的任何东西；“kiosk log verify”也一样。
report-verify-not = 哈希值相同，表示这些行就是做这份报告的行。不表示员工对本机说的是真话。
report-caution = 本机只指导和记录。它不能代替断电上锁、机器说明书、产品标签、当地法规或有资质人员的做法。
report-hashes-agree = 做这份报告时，第{ $first }到{ $last }行的哈希值重新算过。都相符。
report-hashes-differ = 第 { $row } 行缺少，或写下之后被改过！不要相信这份报告；请核对日志。
report-unread = 这个版本的本机读不了、所以这里没有的作业：{ $sessions }。

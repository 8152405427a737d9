### 主管的复核。机器起草，需要懂中文的人检查。
### reviewed: no

review = 复核
review-back = 返回
review-other-ways = 其他页
review-where-to = 去哪里？
review-place = { $first }到{ $last }
review-nothing-here = 这里什么都没有。
review-reading = 正在读日志。
review-reading-place = 正在读日志：{ $of }次作业中的{ $done }次。第一次要很久；以后只读新的。
review-cannot-read = 复核打不开。{ $why }
review-cannot-look = 这一页不能显示。{ $why }
review-only = 只看部分作业
review-laboratory = 实验室
review-dates = 日期
review-parts = 零件
review-picture = 图
review-pictures = 图
review-people = 人员
review-sessions = 作业
review-unsigned = 未签
review-which-sessions = 哪些作业？
review-eyes = { $n ->
    [0] 没有要先看的。作业，新的在前：
   *[other] 有{ $n }件事要你先看。
}
review-newest-first = 作业，新的在前：

# 一次作业的一行。
review-deviations = { $n ->
    [0] 没有偏差
   *[other] { $n }个偏差
}
review-length = { $time }
review-length-usual = { $time }，平时{ $usual }（{ $number }次的中间值）
review-is-not-signed = 未签
review-is-signed-off = 已签认
review-is-sent-back = 已发回
review-ended-open = 没有结束
review-ended-complete = 做完
review-ended-ended-early = 提前结束
review-ended-out-of-service = 机器已停用

# 一次作业的经过和时间线。
review-from-to = { $begun }到{ $ended }
review-text-here = 规程版本{ $version }，文本{ $digest }
review-text-gone = 规程版本{ $version }，文本{ $digest }：这个文本不在这里了，所以没有句子。
review-was-signed-off = { $by }已签认，{ $at }。
review-was-sent-back = { $by }已发回，{ $at }。
review-remark-erased = （这条备注的文字已清除。）
review-timeline = 时间线
review-journal-rows = 日志第{ $first }到{ $last }行
review-asked-in = 用{ $language }问：“{ $text }”
review-waited = 等了{ $waited }，要{ $needed }
review-witness = 第二个人：{ $who }
review-asked-again = { $n ->
   *[other] 问题重复了{ $n }次。
}
review-limit-parts = 零件表：{ $number }
review-passes = { $n ->
   *[other] { $n }遍
}
review-sure = { $percent }%把握
review-not-taken = 之前的“{ $heard }”没有采用
review-ear = 识别：{ $ear }
review-after = { $time }后
review-by-voice = 用声音
review-by-touch = 用触摸
review-by-key = 用按键
review-by-kiosk = 由本机
review-said-phrase = 说了那句话
review-said-read-back-agreed = 反问答对的
review-said-read-back-refused = 反问答不是
review-said-try-out-failed = 试验没通过
review-said-number = 给了数字
review-said-out-of-limit = 不对
review-said-pass = 做了一遍
review-said-pass-judged = 判断了一遍
review-said-passes-ran-out = 遍数用完
review-said-tried-again = 又试一次
review-said-time-up = 时间到
review-said-confirmed = 已确认
review-clear-yes = 行了
review-clear-no = 还不行
review-left-confirmed = 已确认。
review-left-went-back = 退回了一步。
review-left-held = 本次作业在这里停住。
review-left-handed-over = 在这里换人。
review-left-session-ended = 本次作业在这里结束。
review-left-still-there = 本次作业还停在这里。
review-break-pause = 暂停。
review-break-problem = 停住：报告了问题。
review-break-restart = 本机重新启动。
review-break-no-way-in = 停住：没有安全的办法做下去。
review-power-cut = 电脑重新启动过。
review-until = 到{ $at }。
review-problem = 问题：{ $what }（{ $became }）
review-no-reason = 没有说原因
review-became-open = 没有解决
review-became-put-right = 员工说已处理好
review-became-ended-early = 本次作业已结束
review-became-out-of-service = 机器已停用
review-handed-over = 由{ $before }换成{ $after }
review-worked-out = 计算：{ $what }

# 主管的话。
review-sign-off = 签认
review-send-back = 发回
review-what-remark = 签认。写什么备注？
review-what-to-do = 发回。要做什么？
review-remark-right = 看过，没有要做的
review-remark-talked = 和员工谈过
review-remark-machine = 看过机器
review-back-again = 再清洗机器
review-back-talk = 请员工来找我
review-back-sample = 取样
review-back-part = 更换零件
review-write = 自己写
review-take-it = 就用这个
review-nothing-written = 先写点什么。
review-not-ended = 本次作业没有结束。可以发回，不能签认。
review-not-written = 日志写不进去，所以什么都没有记录。{ $why }

# 实验室。
review-no-results = 还没有实验室结果。
review-no-result-judged = 没有可以判断的结果。
review-results = 结果，新的在前
review-left-out = 没有判断，这个主管部门没有它的限值：{ $result }
review-resample = 在{ $first }到{ $last }再取样。
review-samples-owed = { $n ->
   *[other] 六个月内还差{ $n }个取样日。
}
review-over = 超过限值
review-may-be-over = 可能超过限值
review-per-g = 每克
review-per-ml = 每毫升
review-head-left = 左出口
review-head-right = 右出口
review-head-twist = 双拼出口
review-head-single = 单出口
review-amount-exact = { $amount }
review-amount-estimated = 约{ $amount }
review-amount-less-than = 少于{ $amount }
review-amount-more-than = 多于{ $amount }
review-amount-spreaders = 蔓延生长
review-amount-laboratory-accident = 实验室事故
review-enter-result = 录入结果
review-other-authority = 其他主管部门
review-trace = 查找原因
review-nothing-to-trace = 这个缸没有超限的结果。
review-trace-lead = 是线索，不是证明：顺序来自没有公开来源的权重。看一看，问一问，再取一次样。
review-trace-looked = 查看范围：{ $begun }到{ $ended }。
review-no-session = 没有作业
review-no-sign = 没有可疑之处。
clue-short-contact = 接触时间太短
clue-weak-sanitizer = 消毒液太弱
clue-warm-mix = 料浆太热
clue-worn-part = 零件磨损
clue-missed-close = 晚间工作没做
clue-late-close = 晚间工作做晚了
clue-ended-early = 提前结束
clue-new-worker = 新员工
clue-doubtful-hold = 安全确认可疑

review-ask-machine = 取样的是哪台机器？
review-ask-barrel = 取样的是哪个出口？
review-ask-day = 哪天取的样？写成 2026-11-25。
review-ask-product = 样品是什么？
review-ask-analysis = 哪项检验？
review-ask-amount = 报告上写什么？写成 1200、< 10、> 1100、est. 900 或 spreaders。
review-ask-per = 按每克，还是每毫升？
review-ask-laboratory = 哪个实验室？
review-ask-sample = 实验室给样品的编号是什么？
review-no-sample-number = 没有编号
review-wrong-day = 这不是今天或今天以前的日子。写成 2026-11-25。
review-wrong-amount = 这可以有两种读法，或读不出来。不要写千位分隔，例如 1200。
review-wrong-laboratory = 名字太长。缩短它。
review-wrong-sample = 编号太长。缩短它。
review-is-that-right = 这样对吗？
review-enter-it = 对，录入
review-again = 不对，重来
review-this-result = 这个结果
review-entered = 结果已写进日志。
review-known-already = 日志里已经有这个结果。没有录入。
review-known-otherwise = 日志里这个样品是另一个数字。写实验室自己的编号，或用这条命令划掉错的：kiosk lab strike。

# 日期、零件和人员。
review-overdue = 逾期
review-due = 现在该做
review-to-come = 以后要做
review-done = 最近几天做完的
review-by = 到{ $at }
review-sampled-session = 最近{ $day }在作业中取样；结果还没有录入
review-sampled-result = 最近取样{ $day }：从录入的结果得知
review-sampled-both = 最近{ $day }在作业中取样；结果已录入
review-sampled-never = 还没有取过样
review-stand-not-yet-due = 还没到时间
review-stand-due = 该做
review-stand-done = 做完
review-stand-done-early = 做得太早
review-stand-done-late = 做晚了
review-stand-begun-not-finished = 开始了没做完
review-stand-missed = 没做
review-stand-out-of-service = 机器已停用
review-stand-not-opened = 当天没用机器
review-check-rule = 只有当天在这台机器上做过工作、且机器没有停用时，营业中检查才算没做。
review-role-worker = 员工
review-role-trainee = 学员
review-role-supervisor = 主管
review-not-here-any-more = 不在名单上了
review-no-walk = 还没有做过
review-walked = { $n ->
    [1] { $title }：1次，{ $last }
   *[other] { $title }：{ $n }次，第一次{ $first }，最近{ $last }
}
review-first-walks = 头几次，有主管陪着

# 图。
review-days = { $n ->
   *[other] 最近{ $n }天
}
review-other-days = 其他时间

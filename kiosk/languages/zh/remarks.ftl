### 对问题的语音留言。机器起草，需要懂中文的人检查。
### reviewed: no

## 要说的话。
say-remark = 我要留言
say-remark-keep = 就留这个
say-remark-again = 重新录音

## 录音时。
remark-speak-now = 现在说：出了什么问题？
remark-ends = 你不说话就自动结束，最长{ $most }。
remark-done = 说完了
remark-waits = 准备录音
remark-records = 正在录音
remark-level = 音量
remark-ear-closed = 我在录音，所以你现在说的都不是命令。

## 录音后。
remark-keep = 保留这条{ $time }的留言吗？
remark-full = 一条留言最长{ $most }，所以到这里结束。
remark-no-speech = 里面没有找到说话。
remark-empty = 什么都没有录到。
remark-microphone-gone = 麦克风没有声音了。
remark-kept = 你{ $time }的留言已保留。
remark-not-kept = 你的留言没能保留。{ $why }

## 复核时。
remark-left = { $who }的语音留言，{ $time }
remark-hash = 声音的 SHA-256：{ $hash }
remark-erased-by = 声音已在{ $at }清除；由{ $by }要求。
remark-erased-by-time = 声音已在{ $at }清除，因为留言在这里不再保存。
remark-play = 播放留言
remark-stop = 停止播放
remark-which = 哪条留言？
remark-playing = 正在播放{ $who }的留言，{ $time }。
remark-cannot-play = 不能播放。{ $why }
remark-is-missing = 本机的数据文件夹里没有这个哈希值的声音。
remark-is-altered = 数据文件夹里的声音不是录的那个：哈希值不同。
remark-is-unreadable = 数据文件夹里的声音读不出来。
remark-no-player = 本机没有能播放它的程序。

## kiosk people
remark-sounds-erased = { $n ->
   *[other] { $n }条语音留言
}的声音也清除了；日志保留哈希值。

## 报告。
report-spoken-remark = 语音留言
report-spoken-told = { $who }，{ $time }；声音的 SHA-256：{ $hash }
report-spoken-erased-by = 声音已在{ $at }清除，由{ $by }要求
report-spoken-erased-by-time = 声音已在{ $at }清除，留言不再保存

## 墙上的那张纸。
quick-remark = 有问题时：用自己的话说。主管之后可以听。

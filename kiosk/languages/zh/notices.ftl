### 语音、听觉和日志的问题，以及工作中的可疑之处。机器翻译的草稿。
### reviewed: no

## 扬声器和语音。
sound-no-library = 没有声音库：请安装 libasound2 或 libpulse0
speaker-none = 没有声音设备（{ $reason }）
speaker-not-started = 声音设备没有启动（{ $reason }）
speaker-takes-nothing = 声音设备 { $seconds } 秒内没有接收声音
speaker-no-way = 无法播放声音：请安装带有 'aplay' 的 alsa-utils
speaker-no-player = 'aplay' 无法启动：{ $reason }
speaker-failed = 声音设备出错（{ $reason }）
speaker-stopped = 扬声器不再接收声音
prompt-unreadable = 无法读取 { $file } 里的语音：{ $reason }
prompts-not-kept = 语音文件夹 { $folder } 不能用（{ $reason }）；请设为可写
prompt-not-kept = 语音无法保存到 { $folder }：{ $reason }；请腾出空间
speech-no-voice = 没有语言 '{ $language }' 的语音；现有：{ $known }
speech-no-letter = 文字 { $text } 是空的：没有可念的字或数字
speech-too-long = 文字 { $text }... 有 { $length } 个字符；请分开，一次最多念 { $most } 个
speech-ended-twice = 语音程序在这段文字上两次退出：{ $reason }
speech-no-answer = 语音程序 { $seconds } 秒内没有回应，已结束
speech-not-started = 语音程序无法启动：{ $reason }
speech-install-again = { $reason }；请重新安装软件包
speech-failed = 语音程序出错：{ $reason }

## 麦克风和听觉。
microphone-no-library = 这里没有安装声音库 miniaudio
microphone-none = 没有麦克风（{ $reason }）
microphone-no-answer = 声音系统 { $seconds } 秒内没有回应
microphone-ended = 声音断了：麦克风还插着吗？
ear-stopped = 语音识别停止了：{ $reason }
ear-failed-once = { $ear } 在一句话上出错：{ $reason }
ear-not-whole = { $more ->
    [0] { $place } 里的 { $model } 不完整：缺少 { $missing }。修复方法：{ $mend }
   *[other] { $place } 里的 { $model } 不完整：缺少 { $missing } 等，另有 { $more } 个。修复方法：{ $mend }
}
ear-mend-remove = 删除该文件夹，然后 { $mend }
ear-needs-package = { $model } 需要的软件包不在（{ $package }）。修复方法：{ $mend }
ear-not-loaded = 无法载入 { $model }（{ $reason }）。修复方法：{ $mend }
ear-none-listed = models.toml 里没有 '{ $language }' 的语音模型
ear-none-installed = 没有安装 '{ $language }' 的语音模型。修复方法：{ $mend }
ear-mend-or = { $one } 或 { $other }
notice-and = { $one }；{ $other }
own-words-unreadable = 无法读取 { $file } 里的自用词（{ $reason }）；请用 '{ $command }' 重新教

## 日志。
not-recorded = 日志无法写入，什么都没有记录，什么都没有推进。
see-the-screen = 屏幕上有处理方法。
journal-full = 磁盘已满：{ $file }。腾出空间，再试一次。
journal-two-kiosks = 两个终端同时在 { $folder } 里工作。关掉一台，再试一次。
journal-moved = { $file } 或 { $log } 在打开时被移走。放回原处，再试一次。
journal-swallowed = { $file }：写入的内容不在。叫主管：要用备份继续。
journal-read-only = 不能写入 { $file }：{ $reason }。叫主管：要设为可写。
journal-busy = 别的程序占用着 { $file }。关掉它，再试一次。
journal-damaged = { $file } 已损坏：{ $reason }。叫主管：要用备份继续。
journal-failed = { $file }：{ $reason }。叫主管，再试一次。
row-unknown = 无法读取种类为 '{ $kind }' 的一行：{ $reason }
session-without-beginning = 作业 { $session } 在日志里没有开头
result-unreadable = 无法读取结果 { $result }：{ $reason }
file-failed = { $file }：{ $reason }

## 密码。
pins-unusable = { $file } 不能用：{ $why }。修复方法：设为可读，或移走它，再用 'kiosk people pin ID' 重新设密码。
pins-damaged = '{ $person }' 的条目已损坏
pins-no-list = 它不是哈希列表
pins-not-written = { $file } 无法写入：{ $reason }

## 工作中的可疑之处。
sign-waited = 只等了 { $waited }，应等 { $needed }
sign-filled = 读试纸后 { $after } 就开始接触：来不及全部灌满浸湿（{ $least }）
sign-weak = 试纸读数 { $value }，最低 { $least }
sign-weak-mended = 试纸读数 { $value }，最低 { $least }；{ $after } 后 { $then }
sign-weak-too-soon = 试纸读数 { $value }，最低 { $least }；{ $after } 后 { $then }：来不及重新配（{ $needed }）
sign-warm = 料浆 { $value }
sign-warm-cooled = 料浆 { $value }，{ $after } 后 { $then }
sign-warm-too-soon = 料浆 { $value }，{ $after } 后 { $then }：料斗不会冷得这么快（{ $needed }）
sign-worn = { $part }：{ $days } 天前发现磨损，没有库存，之后没有更换
sign-new = 新员工的第 { $nth } 次工作（{ $who }）
sign-late = 晚间工作在打烊 { $hours } 后才开始
sign-early = { $ended ->
    [ended-early] 提前结束
    [out-of-service] 机器已停用
   *[open] 没有结束
}；最后一步：{ $step }
sign-doubts = 回答不确定的安全确认：{ $holds }
sign-missed = 这台机器当时可以出料，但这一晚没有晚间工作的记录（或没有使用本机）

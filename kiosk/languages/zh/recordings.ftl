### 用员工自己的声音录制提示。机器起草，需要懂中文的人检查。
### reviewed: no

recording-begin = 要录{ $count }句话。请照着写的内容，像对同事说话一样大声读出每一句。安静两秒后录音结束。用这种语言工作的人都会听到您的声音。
recording-ready = 回车：录音。s：跳过。q：停止。
recording-speak = 请现在说。
recording-level = 比满刻度低{ $decibels }分贝，{ $seconds }秒
recording-flaw-silent = 没有听到声音。请看麦克风是否选对、是否打开、音量是否调高。
recording-flaw-quiet = 声音太小。请靠近一些，或调高麦克风。
recording-flaw-clipped = 声音太大，最响的部分被切掉了。请离远一些，或调低麦克风。
recording-flaw-begins-cut = 开头被切掉了。请等到“请现在说”再开始。
recording-flaw-ends-cut = 结尾被切掉了。说话时不要停太久，说完保持安静。
recording-flaw-noisy = 这里很吵。安静一些的地方更好。
recording-flaw-short = 对这句话来说太短了。整句都读了吗？
recording-flaw-long = 对这句话来说太长了。只读了这一句吗？
recording-keep = 回车：保留。a：重录。s：跳过。q：停止。
recording-not-kept = 这样不能保留。回车：重录。s：跳过。q：停止。
recording-not-played = 这里不能回放。{ $why }
recording-no-sound = 没有声音进来了。麦克风还插着吗？
recording-done = 已保留：{ $kept }。还要录：{ $left }。
recording-all-there = 每一句都已录好。要重新录，请加上 --again。
recording-recorded = 已录
recording-missing = 缺少
recording-stale = 不再使用
recording-standing = 已录：{ $recorded }。缺少：{ $missing }。不再使用：{ $stale }。
recording-erased = 已删除{ $n }句录音。
recording-folder = 不能保存、读取或删除{ $folder }里的录音（{ $reason }）。请让该文件夹可写，并腾出空间。

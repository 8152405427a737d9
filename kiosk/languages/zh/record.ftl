### 作为证据的日志。机器起草，需要懂中文的人检查。
### reviewed: no

record-disagrees = 记录和本机签过的不一致。告诉主管；什么都不要删。
record-unsigned = 记录现在不能签名。照样全部写下。告诉主管。
record-second-place = 存放记录检查点的第二个地方不在。把存储棒插回去。照样全部写下。

### 平板上的本机：配对屏幕、观看、接管。机器起草，需要懂中文的人检查。
### reviewed: no

pairing-code = 要配对另一块屏幕：代码 { $code }。
pairing-closed = 代码错了太多次：重新启动本机之前，不能配对屏幕。
pairing-ask = 输入本机首页上的代码。
pairing-wrong = 这不是首页上的代码。再看一下：现在可能换了。
pairing-wait = 代码错了太多次。等{ $seconds }秒，再输入首页上的代码。
pairing-give = 配对
pairing-rub-out = 删除
screen-lost = 和本机没有连接。已确认的都保留着。正在重试。
screen-watches = 你在观看。另一块屏幕在用本机。
screen-hidden = 正在输入密码，或在看要密码的内容。只在另一块屏幕上显示。
screen-take-over = 接管
screen-keyboard = 键盘
screen-not-taken = 屏幕没能接管：{ $why }

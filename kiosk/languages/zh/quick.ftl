### 能说什么的一张纸。机器起草，需要懂中文的人检查。
### reviewed: no

quick-title = 对本机说什么
quick-no-lockout = 本机只指导和记录。它不能代替断电上锁；机器说明书和产品标签为准。
quick-say-it = 说出来，或者按
quick-next = 这一步做完了，继续。要做更多的步骤，屏幕上有要说的话。
quick-repeat = 再听一遍问题。
quick-back = 退回一步。
quick-problem = 停下：说出了什么问题，听该怎么做。
quick-pause = 离开一会儿。安全确认之后会再问。
quick-continue = 休息或处理问题之后接着做。
quick-hand-over = 换别人接着做。安全确认会再问。
quick-reckon = 让本机算用量、时间、日期或数目。
quick-language = 换一种语言接着做。
quick-help = 听这一步能说什么。
quick-end = 提前结束工作。本机会说下一个人必须知道的事。
quick-whole = 把话说完整，等本机说完再说。
quick-hold = 到安全确认：先做，再说它自己的那句话，回答反问，然后试一试。
quick-number = 照屏幕上的说数字，读回来对，就答“对的”。
quick-loud = 太吵，或两次没听懂？按按钮。所有的都可以按。
quick-touch = 湿手套：按一下就抬手。安全确认的按钮要按住，直到显示可以放手。

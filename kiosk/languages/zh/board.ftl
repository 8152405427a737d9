### 看板：谁站在这里，什么事什么时候要做。机器草稿。
### reviewed: no

board-greeting = { $part ->
    [morning] { $who }，早上好
    [day] { $who }，下午好
   *[evening] { $who }，晚上好
}
sign-in = 选自己
sign-in-who = 谁在这里？
sign-out = 我走了
sign-out-or-other = 离开或换人
board-due-from = { $what }：{ $at } 开始
board-due-by = { $what }：{ $at } 之前
board-in = { $time }后
board-left = 还剩{ $time }
board-overdue = ! 从 { $at } 起逾期：{ $what }
board-never = { $what }：半年内没有记录
help-board-more = 选了自己以后，按下的工作就用你的名字和语言开始；要求密码的地方照样会问密码。十分钟没有触摸，就不再算有人在。每台机器上写着什么事从什么时候开始，或要在什么时候之前做。

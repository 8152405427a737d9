### 谁可以做什么，还有密码。机器起草，需要懂中文的人检查。
### reviewed: no

## 要说的话。
say-witness = 第二个人来了

## 密码的屏幕。
pin-ask = { $who }，输入你的密码。
pin-invented = （虚构的店：密码 { $pin }）
pin-new = { $who }，输入新密码：4 到 12 位数字。
pin-again = 把同样的数字再输一遍。
pin-is-set = { $who }有了新密码。
pin-for-begin = 用来开始
pin-for-take-over = 用来接手
pin-for-witness = 作为第二个人
pin-for-stand-by = 陪着学员
pin-for-sign = 用来签名
pin-for-review = 用来看记录
pin-for-set-pin = 用来设密码
which-supervisor = 哪位主管？
no-supervisor = 本店名单上没有能做这件事的主管。
who-witnesses = 第二个人是谁？
whose-pin = 谁的密码？
who-vouches = 谁来担保？
pin-by-old-one = 用旧密码
pin-by-supervisor = 由主管担保

## 首页。
to-practise = 练习
to-set-pin = 设密码
practise-or-pin = 你要做什么？
practice-is = 标为练习，和真实工作分开
practice-board = 练习：真正做的工作不记在这里。
back-to-work = 回到工作
with-a-supervisor = 有主管陪着

## 为什么没有做。
refused-pin-first = 先要你的密码。
refused-supervisor-first = 必须有主管陪着，并先输入主管的密码。
refused-not-on-list = 不在本店名单上。
refused-not-your-walk = 这个人不做这项规程。
refused-trainee-no-witness = 学员不能当第二个人。
refused-own-work = 谁也不给自己的工作签名。要由另一位主管查看。
refused-supervisors-only = 只有主管可以这样做。
refused-pin-wrong = 密码不对。再试一次。
refused-pin-wait = 错了太多次。下次要等{ $time }。
refused-pin-closed = 错了太多次，这个密码已关闭。要由主管设新密码。
refused-no-pin-set = { $person }还没有密码。主管可以在首页设，或用命令“kiosk people pin { $person }”。
refused-pins-unreadable = 现在不能核对密码。{ $reason }
refused-pin-not-written = 写不进去，所以什么都没有做。{ $reason }
refused-pin-length = 密码要{ $least }到{ $most }位数字。
refused-pin-easy = 这个密码太容易猜到。换别的数字。
refused-pin-differs = 两次输入不一样。再输一次新密码。

## kiosk people
people-nobody = { $person }不在本店名单上。名单上有：{ $known }。
people-ask-pin = { $who }（{ $person }）的新密码，不显示：
people-ask-again = 再输一次：
people-pin-set = { $who }（{ $person }）有了新密码。
people-pin-yes = 有密码
people-pin-no = 没有密码
people-role-worker = 员工
people-role-trainee = 学员
people-role-supervisor = 主管
people-walks-all = 所有规程都做
people-walks = 做{ $procedures }
people-erased = 已清除{ $person }的：姓名、密码、自己的说法，以及{ $n ->
   *[other] { $n }条备注
}的文字。日志保留编号，并写明这一点。
people-kept-over = 保存期满，已清除：{ $names ->
   *[other] { $names }个姓名
}，{ $remarks ->
   *[other] { $remarks }条备注
}。
people-nothing-over = 没有超过本店规定保存期的。

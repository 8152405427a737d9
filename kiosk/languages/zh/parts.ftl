### 易损件和备件。机器起草，需要懂中文的人检查。
### reviewed: no

parts-worn = { $day }起已磨损，没有备件。
parts-due = { $day }前要换。
parts-overdue = 逾期：应在{ $day }前更换。
parts-replaced = { $days ->
    [0] 今天{ $day }由{ $by }更换。
   *[other] { $day }由{ $by }更换，{ $days }天前。
}
parts-replacements = { $n ->
   *[other] 记录了{ $n }次更换。
}
parts-never-replaced = 没有更换记录；第一次查看是{ $day }。
parts-likely = 下次更换预计在{ $low }到{ $high }（十次中八次）；中间是{ $middle }。
parts-likely-open = 下次更换预计从{ $low }起（十次中九次）；中间是{ $middle }。
parts-likely-hardly = 下次更换预计从{ $low }起（十次中九次）；十年内大概不会。
parts-likely-later = 预计十年内不用更换。
parts-too-little = 更换记录太少，预计不了。
parts-none-found = { $day }有员工在那里没有找到备件。
parts-short = { $n ->
   *[other] 用掉的比存放的多{ $n }件。重新数。
}
parts-shelf-unknown = 备件没有数过。
parts-shelf = { $pieces ->
   *[other] 备件：{ $pieces }件
}；更换一次用{ $takes }件。{ $n ->
    [0] 不够换一次
   *[other] 够换{ $n }次
}。
parts-counted-on = 上次数是{ $day }；之后按录入的算。
parts-never-counted = 没有数过：只有收到的。
parts-runs-out = 更换时备件不够，预计在{ $low }到{ $high }（十次中八次）；中间是{ $middle }。
parts-runs-out-open = 更换时备件不够，预计从{ $low }起（十次中九次）；中间是{ $middle }。
parts-runs-out-hardly = 更换时备件不够，预计从{ $low }起（十次中九次）；十年内大概不会。
parts-runs-out-later = 够用十年。
parts-how-foretold = 预计是按员工到现在的更换，把同类机器合在一起算的。这不是限值：日程和机器说明书为准。
parts-on-machines = 机器里的
parts-on-shelf = 备件
parts-none-seen = 还没有查看过易损件。
parts-received = { $count ->
   *[other] 收到：{ $part }，{ $count }件。
}
parts-counted = { $count ->
   *[other] 数到：{ $part }，{ $count }件。
}

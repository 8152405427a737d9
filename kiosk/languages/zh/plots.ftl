### 图：标题、坐标轴和图例。机器起草，需要懂中文的人检查。
### reviewed: no

plot-number = { $n }
plot-month = { $month ->
    [1] 1月
    [2] 2月
    [3] 3月
    [4] 4月
    [5] 5月
    [6] 6月
    [7] 7月
    [8] 8月
    [9] 9月
    [10] 10月
    [11] 11月
   *[12] 12月
}
plot-month-day = { $month ->
    [1] 1月
    [2] 2月
    [3] 3月
    [4] 4月
    [5] 5月
    [6] 6月
    [7] 7月
    [8] 8月
    [9] 9月
    [10] 10月
    [11] 11月
   *[12] 12月
}{ $day }日
plot-today = 今天
plot-reach = { $days ->
    [1] 每天的最低到最高
   *[other] 每{ $days }天的最低到最高
}
plot-middle = 其中的中间值

## 作业
plot-length = 用了多长时间：{ $what }
plot-length-told = { $n ->
   *[other] { $n }次作业
}，{ $first }到{ $last }。中间时长{ $middle }，最短{ $least }，最长{ $most }。
plot-axis-minutes = 分钟
plot-session-complete = 做完
plot-session-open = 还没结束
plot-session-ended = 提前结束
plot-session-told = { $moment }：{ $time }，{ $worker }
plot-usual = 平时：之前各次的中间值
plot-deviations = 偏差：{ $what }
plot-deviations-told = { $n ->
   *[other] { $n }次作业
}中有{ $found }个偏差，{ $first }到{ $last }。
plot-found-in = { $sessions ->
   *[other] { $sessions }次作业
}中{ $found }个
plot-axis-per-session = 每次作业的偏差
plot-deviations-bar = { $days ->
    [1] 每天的平均
   *[other] 每{ $days }天的平均
}

## 读数
plot-readings = { $quantity }：{ $what }
plot-quantity = { $quantity ->
    [mix-temperature] 料浆温度
    [sanitizer-strength] 消毒液浓度
    [sanitizer-temperature] 消毒液温度
    [wash-temperature] 洗涤水温度
    [discarded-product] 倒掉的产品
   *[other] { $other }
}
plot-readings-told = { $n ->
   *[other] { $n }个读数
}，{ $first }到{ $last }，从{ $least }到{ $most }。超出限值：{ $off }。
plot-other-unit = 用其他单位、没有画出的读数：{ $n }。
plot-kept = 在限值内
plot-without-limit = 读数
plot-off = 超出限值
plot-should-lie = 必须在的范围

## 实验室结果
plot-results = 实验室，{ $analysis }：{ $what }
plot-head = { $head ->
    [left] 左出口
    [right] 右出口
    [twist] 双拼出口
    [single] 单出口
   *[other] 出口 { $head }
}
plot-axis-count = { $per ->
    [mL] 每毫升菌落形成单位；每条线是下一条的十倍
   *[g] 每克菌落形成单位；每条线是下一条的十倍
}
plot-result-counted = 计数
plot-result-estimated = 估计
plot-result-less = 少于
plot-result-more = 多于
plot-result-over = 超过限值
plot-result-limit = 限值：每{ $per } { $n }（{ $products }）
plot-average = 移动平均
plot-control = 它的控制限
plot-results-told = { $n ->
   *[other] { $n }个结果
}，{ $first }到{ $last }。超限：{ $over }。
plot-results-without = 没有数字、没有画出的结果：{ $n }。

## 谁在什么时候做晚间工作
plot-closings = 谁在什么时候做晚间工作
plot-closings-told = { $n ->
   *[other] { $n }次机器的晚间工作
}，{ $first }到{ $last }。做晚了：{ $late }。没做完：{ $missed }。
plot-late = 晚了
plot-nobody = 没有人
plot-closed = 做完：次数，颜色越深越多
plot-closed-late = 有一次或几次做晚了，或没做

## 零件
plot-parts = 易损件
plot-parts-told = { $n ->
   *[other] { $n }种零件
}，从{ $first }起。更换：{ $replaced }。逾期：{ $overdue }。磨损而没有备件：{ $worn }。
plot-part-in-use = 使用中，一个接一个
plot-part-likely = 预计的下次更换（十次中八次）
plot-part-replaced = 已更换
plot-part-worn = 磨损，没有备件
plot-part-due = 按日程该换

### Hình: tên, trục và chú giải.
### reviewed: no

plot-number = { $n }
plot-month = { $month ->
    [1] thg 1
    [2] thg 2
    [3] thg 3
    [4] thg 4
    [5] thg 5
    [6] thg 6
    [7] thg 7
    [8] thg 8
    [9] thg 9
    [10] thg 10
    [11] thg 11
   *[12] thg 12
}
plot-month-day = { $day }/{ $month ->
    [1] 1
    [2] 2
    [3] 3
    [4] 4
    [5] 5
    [6] 6
    [7] 7
    [8] 8
    [9] 9
    [10] 10
    [11] 11
   *[12] 12
}
plot-today = hôm nay
plot-reach = { $days ->
    [1] thấp nhất đến cao nhất của mỗi ngày
   *[other] thấp nhất đến cao nhất của { $days } ngày
}
plot-middle = giá trị giữa của chúng

## Phiên
plot-length = Việc mất bao lâu: { $what }
plot-length-told = { $n } phiên từ { $first } đến { $last }. Độ dài giữa là { $middle }, ngắn nhất { $least }, dài nhất { $most }.
plot-axis-minutes = phút
plot-session-complete = đã xong
plot-session-open = chưa kết thúc
plot-session-ended = kết thúc trước khi xong
plot-session-told = { $moment }: { $time }, { $worker }
plot-usual = thường lệ: giá trị giữa của các phiên trước
plot-deviations = Sai lệch: { $what }
plot-deviations-told = { $found } sai lệch trong { $n } phiên từ { $first } đến { $last }.
plot-found-in = { $found } trong { $sessions } phiên
plot-axis-per-session = sai lệch mỗi phiên
plot-deviations-bar = { $days ->
    [1] trung bình của mỗi ngày
   *[other] trung bình của { $days } ngày
}

## Số đo
plot-readings = { $quantity }: { $what }
plot-quantity = { $quantity ->
    [mix-temperature] nhiệt độ kem nền
    [sanitizer-strength] nồng độ nước khử trùng
    [sanitizer-temperature] nhiệt độ nước khử trùng
    [wash-temperature] nhiệt độ nước rửa
    [discarded-product] sản phẩm đổ bỏ
   *[other] { $other }
}
plot-readings-told = { $n } số đo từ { $first } đến { $last }, từ { $least } đến { $most }. Ngoài giới hạn: { $off }.
plot-other-unit = Số đo theo đơn vị khác, không vẽ: { $n }.
plot-kept = trong giới hạn
plot-without-limit = số đo
plot-off = ngoài giới hạn
plot-should-lie = khoảng phải nằm trong

## Kết quả phòng thí nghiệm
plot-results = Phòng thí nghiệm, { $analysis }: { $what }
plot-head = { $head ->
    [left] vòi trái
    [right] vòi phải
    [twist] vòi giữa
    [single] vòi đơn
   *[other] vòi { $head }
}
plot-axis-count = { $per ->
    [mL] đơn vị khuẩn lạc trong một mi li lít; mỗi vạch gấp mười lần vạch dưới
   *[g] đơn vị khuẩn lạc trong một gam; mỗi vạch gấp mười lần vạch dưới
}
plot-result-counted = đếm được
plot-result-estimated = ước tính
plot-result-less = ít hơn
plot-result-more = nhiều hơn
plot-result-over = vượt giới hạn
plot-result-limit = giới hạn: { $n } trong một { $per } ({ $products })
plot-average = trung bình trượt
plot-control = giới hạn kiểm soát của nó
plot-results-told = { $n } kết quả từ { $first } đến { $last }. Vượt giới hạn: { $over }.
plot-results-without = Kết quả không có số, không vẽ: { $n }.

## Ai tháo rửa lúc nào
plot-closings = Ai tháo rửa lúc nào
plot-closings-told = { $n } buổi tối của các máy từ { $first } đến { $last }. Xong trễ: { $late }. Không làm xong: { $missed }.
plot-late = trễ
plot-nobody = không ai
plot-closed = đã tháo rửa: càng đậm càng nhiều lần
plot-closed-late = một lần trễ hoặc hơn, hoặc chưa làm

## Linh kiện
plot-parts = Linh kiện hao mòn
plot-parts-told = { $n } linh kiện từ { $first }. Số lần thay: { $replaced }. Quá hạn: { $overdue }. Mòn mà kho không có: { $worn }.
plot-part-in-use = đang dùng, cái này sau cái kia
plot-part-likely = khoảng chờ lần thay tới (8 trên 10)
plot-part-replaced = đã thay
plot-part-worn = mòn, kho không có
plot-part-due = đến hạn theo lịch

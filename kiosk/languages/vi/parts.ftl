### Linh kiện hao mòn và linh kiện thay. Bản nháp do máy dịch.
### reviewed: no

parts-worn = Mòn từ { $day }, trong kho không có cái thay.
parts-due = Đến hạn ngày { $day }.
parts-overdue = Quá hạn: đến hạn từ ngày { $day }.
parts-replaced = { $days ->
    [0] { $by } đã thay hôm nay, { $day }.
   *[other] { $by } đã thay { $day }, { $days } ngày trước.
}
parts-replacements = Đã ghi { $n } lần thay.
parts-never-replaced = Chưa ghi lần thay nào; xem lần đầu { $day }.
parts-likely = Lần thay tới từ { $low } đến { $high } (8 trên 10); giá trị giữa là { $middle }.
parts-likely-open = Lần thay tới từ { $low } trở đi (9 trên 10); giá trị giữa là { $middle }.
parts-likely-hardly = Lần thay tới từ { $low } trở đi (9 trên 10); khó có trong mười năm.
parts-likely-later = Trong mười năm không cần chờ lần thay nào.
parts-too-little = Quá ít lần thay được ghi để biết sắp tới thế nào.
parts-none-found = Ngày { $day } một người làm không thấy cái nào ở đó.
parts-short = Đã dùng nhiều hơn số có sẵn { $n } cái. Hãy đếm lại.
parts-shelf-unknown = Kệ chưa được đếm lần nào.
parts-shelf = Trên kệ: { $pieces } cái; mỗi lần thay mất { $takes }. Đủ cho { $n ->
    [0] 0 lần thay
   *[other] { $n } lần thay
}.
parts-counted-on = Đếm lần cuối { $day }; từ đó theo những gì được nhập.
parts-never-counted = Chưa đếm lần nào: chỉ có số đã nhận.
parts-runs-out = Sẽ có lần thay thiếu linh kiện từ { $low } đến { $high } (8 trên 10); giá trị giữa là { $middle }.
parts-runs-out-open = Sẽ có lần thay thiếu linh kiện từ { $low } trở đi (9 trên 10); giá trị giữa là { $middle }.
parts-runs-out-hardly = Sẽ có lần thay thiếu linh kiện từ { $low } trở đi (9 trên 10); khó có trong mười năm.
parts-runs-out-later = Đủ cho mười năm.
parts-how-foretold = Dự đoán theo những gì người làm đã thay từ trước, trên mọi máy cùng loại. Đó không phải giới hạn: lịch và sách hướng dẫn máy được ưu tiên.
parts-on-machines = Trong các máy
parts-on-shelf = Trên kệ
parts-none-seen = Chưa xem linh kiện hao mòn nào.
parts-received = Đã nhận: { $count } cái, { $part }.
parts-counted = Đã đếm: { $count } cái, { $part }.

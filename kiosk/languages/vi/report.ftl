### Báo cáo trên giấy.
### reviewed: no

report-title-day = Báo cáo một ngày
report-title-month = Báo cáo một tháng
report-title-folder = Hồ sơ cho thanh tra
report-practice = Tập làm: cửa hàng được bịa ra hoặc buổi tập. Đây không phải hồ sơ của việc thật.
report-drafted = Lời của báo cáo này do máy dịch. Chưa có người bản ngữ xem lại.

## Những gì được kể về một phiên hoặc một số ngày
report-session = Phiên
report-shop = Cửa hàng
report-machine = Máy
report-procedure = Quy trình
report-text = Văn bản đã làm theo
report-version = phiên bản { $version }, mã { $digest }
report-workers = Người làm
report-begun = Bắt đầu
report-last-event = Sự kiện cuối
report-how-ended = Kết thúc thế nào
report-ended = { $how ->
    [complete] đã xong
    [ended-early] kết thúc trước khi xong
    [out-of-service] kết thúc, máy ngừng dùng
   *[open] chưa kết thúc
}
report-length = Độ dài
report-minutes = { $minutes } phút
report-usual-length = Độ dài thường lệ
report-usual = { $minutes } phút: giá trị giữa của { $count } phiên trước
report-usual-none = chưa có phiên trước để so sánh
report-confirmed-steps = Bước đã xác nhận
report-signed = Chữ ký
report-signed-not = Chưa có quản lý ký.
report-signed-off = { $person } đã ký duyệt, { $at }
report-signed-back = { $person } đã trả lại, { $at }
report-left-unsafe = Lúc kết thúc phải báo cho người tiếp theo: { $what }.
report-text-unknown = Quy trình không còn văn bản đã làm theo. Không hiện được câu, loại bước và thời gian cần của nó.
report-days = Ngày làm việc
report-days-mean = Các phiên bắt đầu
report-days-begun = từ { $first } đến { $until }; ngày làm việc đổi vào giữa giờ đóng cửa và giờ mở cửa
report-sessions = Phiên
report-sessions-complete = Phiên làm đến cuối
report-sessions-signed = Phiên đã ký duyệt
report-sessions-sent-back = Phiên bị trả lại
report-due = Những gì đến hạn
report-due-in-time = Làm đúng giờ
report-due-missed = Bỏ lỡ
report-readings = Số đo
report-readings-off = Số đo ngoài giới hạn
report-deviations = Sai lệch
report-steps = Các bước
report-beside = Bên cạnh các bước
report-signing = Ký
report-laboratory = Kết quả phòng thí nghiệm
report-parts = Linh kiện
report-people = Con người
report-procedures = Quy trình
report-figures = Hình

## Cột
report-column-rows = Dòng
report-column-time = Giờ
report-column-day = Ngày
report-column-step = Bước
report-column-answer = Trả lời và giới hạn
report-column-how = Trả lời bằng cách nào
report-column-who = Ai
report-column-what = Việc gì
report-column-told = Đã ghi gì
report-column-at-step = Ở bước
report-column-weight = Mức độ
report-column-deviation = Sai lệch
report-column-why-seen = Vì sao nên xem
report-column-source = Nguồn của quy tắc
report-column-session = Phiên
report-column-count = Số lần
report-column-machine = Máy
report-column-measured = Đã đo
report-column-value = Giá trị
report-column-limit = Giới hạn và nguồn
report-column-kept = Đạt
report-column-least = Thấp nhất
report-column-middle = Giữa
report-column-most = Cao nhất
report-column-off = Ngoài giới hạn
report-column-remark = Ghi chú
report-column-barrel = Máy và vòi
report-column-product = Sản phẩm
report-column-analysis = Xét nghiệm
report-column-result = Kết quả
report-column-laboratory = Phòng thí nghiệm
report-column-because = Vì sao
report-column-standing = Tình trạng
report-column-trend = Xu hướng
report-column-due = Đến hạn
report-column-its-time = Giờ của nó
report-column-became = Kết cục
report-column-begun = Bắt đầu
report-column-work = Máy và việc
report-column-length = Phút (thường lệ)
report-column-ended = Kết thúc
report-column-deviations = Sai lệch
report-column-signed = Chữ ký
report-column-part = Linh kiện
report-column-found = Đã thấy
report-column-procedures = Quy trình
report-column-procedure = Quy trình
report-column-version = Phiên bản
report-column-known = Những gì đã biết
report-column-kind = Loại máy
report-column-signs = Dấu hiệu bất thường
report-column-digest = Mã băm của văn bản (SHA-256)

## Bảng
report-none = không có
report-steps-caption = Mọi lần ở lại một bước, theo thứ tự
report-steps-none = chưa vào bước nào
report-beside-caption = Gián đoạn, sự cố, đổi người, lùi bước, và những gì đã tính
report-signings-caption = Quản lý nói gì về việc đó
report-deviations-caption = Sai lệch, nặng nhất trước; không bỏ sót cái nào
report-deviations-none = không thấy sai lệch
report-rules-caption = Mỗi quy tắc tìm thấy bao nhiêu lần
report-readings-caption = Những gì đã đo
report-readings-none = không đo gì
report-spread-caption = Những gì đã đo, theo máy
report-results-caption = Kết quả của các mẫu lấy trong những ngày này
report-results-none = chưa nhập kết quả nào
report-struck-caption = Các mục đã gạch bỏ, không còn tính
report-standing-caption = Tình trạng ngày { $day }
report-due-caption = Mọi việc đến hạn
report-due-caption-off = Những việc không làm đúng giờ
report-sessions-caption = Các phiên, theo thứ tự bắt đầu
report-sessions-none = không có phiên
report-parts-caption = Linh kiện đã thay, mòn, hoặc đếm sai
report-wear-caption = Linh kiện hao mòn vào ngày { $day }
report-shelf-caption = Linh kiện thay vào ngày { $day }
report-traces = Điều gì có thể đã dẫn đến kết quả xấu
report-traces-more = Chỉ truy tìm những kết quả cuối; còn { $n } kết quả nữa thì không.
report-trace-caption = { $day }, { $what }: { $amount }. Đã xem: { $first } đến { $last }. Đáng ngờ nhất trước
report-people-caption = Ai đã tham gia
report-procedures-caption = Các văn bản đã làm theo

## Trả lời
report-on-list = bảng linh kiện: { $expected }
report-remark-erased = lời của ghi chú này đã bị xóa
report-hold-confirmed = đã xác nhận
report-done = xong
report-passes = { $number } lượt
report-waited = đã đợi { $waited }, cần { $needed }
report-left = { $how ->
    [went-back] chưa trả lời: lùi lại
    [held] chưa trả lời: dừng lại
    [handed-over] chưa trả lời: đổi người
    [session-ended] chưa trả lời: phiên kết thúc
   *[still-there] chưa trả lời
}
report-finding = { $finding ->
    [good] tốt
    [replaced] đã thay
    [none-left] mòn, kho không còn
   *[other] { $other }
}
report-counted = đếm được { $counted }, bảng linh kiện ghi { $expected }
report-said = { $said ->
    [phrase] câu xác nhận
    [read-back-agreed] đọc lại, đồng ý
    [read-back-refused] đọc lại, từ chối
    [try-out-failed] thử không đạt
    [number] con số
    [out-of-limit] ngoài giới hạn
    [pass] xong một lượt
    [pass-judged] đã xét lượt
    [passes-ran-out] hết lượt
    [tried-again] thử lại
    [time-up] hết giờ
   *[confirmed] đã xác nhận
}
report-channel = { $channel ->
    [touch] chạm
    [key] phím
    [kiosk] do máy hướng dẫn
   *[voice] lời nói
}
report-heard = lời “{ $heard }”, bộ nghe { $ear }
report-heard-sure = lời “{ $heard }” ({ $sure }), bộ nghe { $ear }
report-asked-again = hỏi lại: { $count }
report-witnessed = người chứng kiến: { $person }
report-limit-none = không có giới hạn
report-kept-yes = đạt
report-kept-no = KHÔNG ĐẠT
report-kept-unknown = không biết được
report-kept-without = không xét

## Bên cạnh các bước
report-stood-still = Đứng yên
report-break = { $because ->
    [pause] tạm dừng
    [problem] sự cố
    [restart] máy hướng dẫn khởi động lại
   *[no-way-in] không có lối an toàn
}, đến { $until }
report-problem = Sự cố
report-no-reason = không nêu lý do
report-became = { $became ->
    [put-right] được nói là đã xử lý xong
    [ended-early] phiên kết thúc
    [out-of-service] máy ngừng dùng
   *[open] chưa giải quyết
}
report-hand-over = Đổi người
report-back = Lùi bước
report-worked-out = Đã tính
report-stand = { $stand ->
    [not-yet-due] chưa đến hạn
    [due] đến hạn bây giờ
    [done] làm đúng giờ
    [done-early] làm quá sớm
    [done-late] làm trễ
    [begun-not-finished] bắt đầu mà chưa xong
    [out-of-service] máy ngừng dùng
    [not-opened] hôm đó không dùng máy
   *[missed] BỎ LỠ
}

## Phòng thí nghiệm
report-head = { $head ->
    [left] vòi trái
    [right] vòi phải
    [twist] vòi giữa
    [single] vòi đơn
   *[other] vòi { $head }
}
report-authority = Xét theo { $title }, { $law }. Nguồn: { $source } ({ $tag }).
report-authority-none = Không nêu cơ quan nào cho báo cáo này, nên không hiện giới hạn và tình trạng.
report-state = { $state ->
    [clear] Bình thường.
    [notice] THÔNG BÁO.
    [action] XỬ LÝ.
    [unknown] Chưa rõ: một kết quả chỉ là mức chặn.
   *[no-results] Không có kết quả.
}
report-over-of = Vượt giới hạn: { $four } trong { $of_four } kết quả gần nhất, { $five } trong { $of_five } kết quả gần nhất.
report-resample = Mẫu thêm: từ { $first } đến { $last }.
report-owed = Số ngày lấy mẫu còn thiếu trong sáu tháng: { $days }.
report-average = Trung bình logarit của bốn kết quả cuối: từ { $low } trở lên.
report-left-out = Không tính { $result }: { $why }.
report-trend-none = Không thấy được xu hướng.

## Chữ ký, và báo cáo này dựa trên gì
report-meaning = { $what ->
    [signed-off] đã xem và chấp nhận
   *[sent-back] trả lại, phải làm thêm việc
}
report-signature-means = Ý nghĩa của chữ ký. “Ký duyệt”: quản lý được nêu tên đã xem hồ sơ của phiên đó, vào lúc đó, và chấp nhận. “Trả lại”: quản lý muốn có việc được làm thêm. Điều này không có nghĩa là quản lý đã thấy công việc, hay máy an toàn. Tên, thời gian và ý nghĩa đứng cạnh mỗi chữ ký (ba phần của 21 CFR 11.50). Chữ ký được cho bằng mã PIN của người đó nếu nơi này có mã PIN; đó không phải chữ ký điện tử đủ điều kiện.
report-sign-name = Tên viết in hoa
report-sign-signature = Chữ ký
report-sign-date = Ngày và giờ
report-rests-on = Báo cáo này dựa trên gì
report-limits-are = Giới hạn được ghi như đang có hiệu lực và đã vào nhật ký lúc đó, mỗi giới hạn có điều khoản và nguồn. Sách hướng dẫn máy, nhãn sản phẩm và quy định địa phương được ưu tiên mỗi khi khác.
report-deviations-are = Sai lệch là những gì các quy tắc viết sẵn tìm thấy trong hồ sơ; nguồn của mỗi quy tắc đứng bên cạnh. Chỗ ghi “common practice, no source” (thông lệ, không có nguồn) là không biết nguồn công bố nào. Sai lệch là lý do để xem, không phải bằng chứng có lỗi.
report-rows-are = Cột “{ $column }” nêu các dòng trong nhật ký của máy hướng dẫn. Mọi giá trị và số đếm ở đây được làm từ những dòng đó, và có thể làm lại từ chúng. Với cả một phiên thì nêu dòng đầu và dòng cuối.
report-verify = Cách kiểm tra nhật ký
report-kiosk = Máy hướng dẫn
report-head-row = Dòng cuối của nhật ký
report-head-hash = Mã băm của dòng đó (SHA-256)
report-head-time = Giờ của dòng đó (UTC)
report-made = Báo cáo này được làm
report-verify-how = Hãy xin một bản sao của tệp journal.db. Mã băm của mỗi dòng bao gồm dòng đó và mã băm của dòng trước. Tính mã băm từ dòng đầu đến dòng nêu trên; mã cuối phải là mã in ở đây. Trang { $page } có một chương trình ngắn để làm việc đó, không cần gì của chúng tôi; lệnh “kiosk log verify” làm việc tương tự.
report-verify-not = Mã băm giống nhau cho thấy các dòng chính là những dòng đã làm ra báo cáo này. Chúng không cho thấy điều người làm nói với máy hướng dẫn là thật.
report-caution = Máy hướng dẫn chỉ dẫn và ghi lại. Nó không thay cho việc khóa nguồn điện, sách hướng dẫn máy, nhãn sản phẩm, quy định địa phương, hay người có chuyên môn được cấp phép.
report-hashes-agree = Mã băm của các dòng { $first } đến { $last } đã được tính lại khi làm báo cáo này. Chúng khớp.
report-hashes-differ = DÒNG { $row } BỊ THIẾU HOẶC ĐÃ BỊ SỬA sau khi được ghi. Đừng dựa vào báo cáo này; hãy kiểm tra nhật ký.
report-unread = Các phiên mà phiên bản này của máy hướng dẫn không đọc được, và thiếu ở đây: { $sessions }.

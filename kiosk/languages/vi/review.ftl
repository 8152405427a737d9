### reviewed: no
## Quản lý xem lại hồ sơ
review = xem lại
review-back = quay lại
review-other-ways = trang khác
review-where-to = Đi đâu?
review-place = { $first } đến { $last }
review-nothing-here = Ở đây không có gì.
review-reading = Đang đọc nhật ký.
review-reading-place = Đang đọc nhật ký: { $done } trên { $of } phiên. Lần đầu mất nhiều thời gian; sau đó chỉ đọc cái mới.
review-cannot-read = Không mở được phần xem lại. { $why }
review-cannot-look = Không hiện được trang này. { $why }
review-only = chỉ một số phiên
review-laboratory = xét nghiệm
review-dates = lịch
review-parts = linh kiện
review-picture = hình
review-pictures = các hình
review-people = con người
review-sessions = các phiên
review-unsigned = chưa ký
review-which-sessions = Phiên nào?
review-eyes = { $n ->
    [0] Không có gì cần bạn xem trước. Các phiên, mới nhất trước:
   *[other] Có { $n } việc cần bạn xem trước.
}
review-newest-first = Các phiên, mới nhất trước:

# Một phiên trong một dòng.
review-deviations = { $n ->
    [0] không có sai lệch
   *[other] { $n } sai lệch
}
review-length = { $time }
review-length-usual = { $time }, thường lệ { $usual } (giá trị giữa của { $number })
review-is-not-signed = chưa ký
review-is-signed-off = đã ký duyệt
review-is-sent-back = đã trả lại
review-ended-open = chưa kết thúc
review-ended-complete = đã xong
review-ended-ended-early = kết thúc sớm
review-ended-out-of-service = máy ngừng dùng

# Diễn biến và mốc thời gian của một phiên.
review-from-to = Từ { $begun } đến { $ended }
review-text-here = Quy trình phiên bản { $version }, văn bản { $digest }
review-text-gone = Quy trình phiên bản { $version }, văn bản { $digest }: văn bản này không còn ở đây, nên thiếu các câu.
review-was-signed-off = { $by } đã ký duyệt, { $at }.
review-was-sent-back = { $by } đã trả lại, { $at }.
review-remark-erased = (Lời của ghi chú này đã bị xóa.)
review-timeline = Mốc thời gian
review-journal-rows = Dòng nhật ký { $first } đến { $last }
review-asked-in = Hỏi bằng { $language }: “{ $text }”
review-waited = Đã đợi { $waited }, cần { $needed }
review-witness = Người chứng kiến: { $who }
review-asked-again = Câu hỏi được nhắc lại { $n } lần.
review-limit-parts = bảng linh kiện: { $number }
review-passes = { $n } lượt
review-sure = chắc { $percent } phần trăm
review-not-taken = sau khi “{ $heard }” không được nhận
review-ear = bộ nghe: { $ear }
review-after = sau { $time }
review-by-voice = bằng lời
review-by-touch = bằng chạm
review-by-key = bằng phím
review-by-kiosk = do máy hướng dẫn
review-said-phrase = đã nói câu xác nhận
review-said-read-back-agreed = đọc lại, đồng ý
review-said-read-back-refused = đọc lại, từ chối
review-said-try-out-failed = thử không đạt
review-said-number = đã cho con số
review-said-out-of-limit = chưa đạt
review-said-pass = xong một lượt
review-said-pass-judged = đã xét lượt
review-said-passes-ran-out = hết lượt
review-said-tried-again = thử lại
review-said-time-up = hết giờ
review-said-confirmed = đã xác nhận
review-clear-yes = đã đạt
review-clear-no = chưa đạt
review-left-confirmed = Đã xác nhận.
review-left-went-back = Lùi một bước.
review-left-held = Phiên dừng lại ở đây.
review-left-handed-over = Đổi người ở đây.
review-left-session-ended = Phiên kết thúc ở đây.
review-left-still-there = Phiên vẫn còn ở đây.
review-break-pause = Tạm dừng.
review-break-problem = Dừng lại: có người báo sự cố.
review-break-restart = Máy hướng dẫn chạy lại.
review-break-no-way-in = Dừng lại: không có lối an toàn để đi tiếp.
review-power-cut = Máy tính đã khởi động lại.
review-until = Đến { $at }.
review-problem = Sự cố: { $what } ({ $became })
review-no-reason = không nêu lý do
review-became-open = chưa giải quyết
review-became-put-right = người làm nói đã xử lý xong
review-became-ended-early = phiên đã kết thúc
review-became-out-of-service = máy đã ngừng dùng
review-handed-over = Đổi người từ { $before } sang { $after }
review-worked-out = Đã tính: { $what }

# Ý kiến của quản lý.
review-sign-off = ký duyệt
review-send-back = trả lại
review-what-remark = Ký duyệt. Với ghi chú nào?
review-what-to-do = Trả lại. Phải làm gì?
review-remark-right = đã xem, không phải làm gì
review-remark-talked = đã nói chuyện với người làm
review-remark-machine = đã xem máy
review-back-again = rửa máy lại
review-back-talk = người làm đến gặp tôi
review-back-sample = lấy mẫu
review-back-part = thay linh kiện
review-write = tự viết
review-take-it = lấy câu này
review-nothing-written = Hãy viết gì đó trước.
review-not-ended = Phiên này chưa kết thúc. Có thể trả lại, nhưng không ký duyệt được.
review-not-written = Không ghi được nhật ký, nên chưa có gì được ghi. { $why }

# Phòng thí nghiệm.
review-no-results = Chưa có kết quả phòng thí nghiệm nào.
review-no-result-judged = Không xét được kết quả nào.
review-results = Kết quả, mới nhất trước
review-left-out = Không xét, cơ quan này không có giới hạn cho nó: { $result }
review-resample = Lấy mẫu lại từ { $first } đến { $last }.
review-samples-owed = Trong sáu tháng còn thiếu { $n } ngày lấy mẫu.
review-over = vượt giới hạn
review-may-be-over = có thể vượt giới hạn
review-per-g = trong một gam
review-per-ml = trong một mi li lít
review-head-left = vòi trái
review-head-right = vòi phải
review-head-twist = vòi giữa
review-head-single = vòi đơn
review-amount-exact = { $amount }
review-amount-estimated = khoảng { $amount }
review-amount-less-than = ít hơn { $amount }
review-amount-more-than = nhiều hơn { $amount }
review-amount-spreaders = khuẩn mọc lan
review-amount-laboratory-accident = hỏng ở phòng thí nghiệm
review-enter-result = nhập kết quả
review-other-authority = cơ quan khác
review-trace = điều gì dẫn đến nó
review-nothing-to-trace = Không kết quả nào của xi lanh này vượt giới hạn.
review-trace-lead = Đây là hướng tìm, không phải bằng chứng: thứ tự dựa vào trọng số không có nguồn công bố. Hãy xem, hỏi, và lấy thêm mẫu.
review-trace-looked = Đã xem: { $begun } đến { $ended }.
review-no-session = không có phiên
review-no-sign = Không có gì cho thấy điều bất thường.
clue-short-contact = tiếp xúc quá ngắn
clue-weak-sanitizer = nước khử trùng loãng
clue-warm-mix = kem nền ấm
clue-worn-part = linh kiện mòn
clue-missed-close = bỏ lỡ việc buổi tối
clue-late-close = việc buổi tối trễ
clue-ended-early = kết thúc sớm
clue-new-worker = người làm mới
clue-doubtful-hold = điểm dừng an toàn đáng ngờ

review-ask-machine = Mẫu lấy từ máy nào?
review-ask-barrel = Mẫu lấy từ vòi nào?
review-ask-day = Mẫu lấy ngày nào? Viết như 2026-11-25.
review-ask-product = Mẫu là của sản phẩm nào?
review-ask-analysis = Xét nghiệm nào?
review-ask-amount = Phiếu ghi bao nhiêu? Viết như 1200, < 10, > 1100, est. 900 (ước tính) hoặc spreaders (mọc lan).
review-ask-per = Trong một gam, hay trong một mi li lít?
review-ask-laboratory = Phòng thí nghiệm nào?
review-ask-sample = Phòng thí nghiệm cho mẫu số nào?
review-no-sample-number = không có số
review-wrong-day = Đó không phải ngày nào cho đến hôm nay. Viết như 2026-11-25.
review-wrong-amount = Có thể đọc theo hai cách, hoặc không đọc được. Viết không có dấu hàng nghìn, như 1200.
review-wrong-laboratory = Tên đó quá dài. Hãy viết ngắn lại.
review-wrong-sample = Số đó quá dài. Hãy viết ngắn lại.
review-is-that-right = Như vậy đúng chưa?
review-enter-it = đúng, nhập vào
review-again = chưa, làm lại
review-this-result = kết quả này
review-entered = Kết quả đã vào nhật ký.
review-known-already = Kết quả này đã có trong nhật ký. Không nhập gì.
review-known-otherwise = Nhật ký có con số khác cho mẫu này. Hãy cho số riêng của phòng thí nghiệm, hoặc gạch bỏ mục sai bằng lệnh: kiosk lab strike.

# Lịch, linh kiện và con người.
review-overdue = Quá hạn
review-due = Đến hạn bây giờ
review-to-come = Sắp tới
review-done = Đã làm trong những ngày qua
review-by = đến { $at }
review-sampled-session = lấy lần cuối { $day } trong một phiên; chưa nhập kết quả
review-sampled-result = lấy mẫu lần cuối { $day }: biết qua kết quả đã nhập
review-sampled-both = lấy lần cuối { $day } trong một phiên; đã nhập kết quả
review-sampled-never = chưa lấy mẫu lần nào
review-stand-not-yet-due = chưa đến hạn
review-stand-due = đến hạn
review-stand-done = đã làm
review-stand-done-early = làm quá sớm
review-stand-done-late = làm trễ
review-stand-begun-not-finished = bắt đầu mà chưa xong
review-stand-missed = bỏ lỡ
review-stand-out-of-service = máy ngừng dùng
review-stand-not-opened = hôm đó không dùng máy
review-check-rule = Kiểm tra trong ngày chỉ tính là bỏ lỡ khi hôm đó có làm việc trên máy và máy không ngừng dùng.
review-role-worker = người làm
review-role-trainee = người học việc
review-role-supervisor = quản lý
review-not-here-any-more = không còn trong danh sách
review-no-walk = chưa làm quy trình nào
review-walked = { $n ->
    [1] { $title }: một lần, { $last }
   *[other] { $title }: { $n } lần, đầu tiên { $first }, cuối cùng { $last }
}
review-first-walks = những lần đầu, có quản lý bên cạnh

# Hình.
review-days = { $n } ngày qua
review-other-days = thời gian khác

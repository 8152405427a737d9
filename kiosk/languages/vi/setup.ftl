### Cài đặt: những điều hỏi một lần cho mỗi cửa hàng. Bản nháp do máy dịch; chưa có người bản ngữ xem lại.
### reviewed: no

setup = Cài đặt
setup-place = { $n } trên { $all }
setup-back = quay lại
setup-stop = dừng, lát làm tiếp
setup-done = xong
setup-take = nhận
setup-take-off = bỏ ra
setup-go-on = làm tiếp
setup-resumed = Bạn làm tiếp từ chỗ đã dừng. Không mất gì cả.
setup-left-aside = Tệp của cửa hàng đã được sửa từ đó. Các câu trả lời chưa ghi được bỏ qua.
setup-not-kept = Không ghi được câu trả lời ({ $why }). Câu trả lời còn giữ khi màn hình này còn mở.
setup-not-answered = chưa trả lời
setup-left = { $n ->
   *[other] Còn { $n } câu hỏi.
}
setup-ask-overview = Đây là các câu trả lời. Nhấn vào để sửa.
setup-write = đúng rồi, ghi lại
setup-written = Đã ghi cài đặt của cửa hàng.
setup-leave = đến các máy
setup-wrong = { $n ->
   *[other] Phải sửa { $n } điều trước. Chưa ghi gì cả.
}
setup-changed-meanwhile = Có người khác vừa sửa site.toml. Không có gì bị ghi đè. Dừng ở đây và bắt đầu lại từ tệp đó.
setup-checking = Đang kiểm tra các loại máy của riêng cửa hàng này. Xin chờ một lát.

setup-about-language = Ngôn ngữ cài đặt
setup-about-practice = Thật hay tập làm
setup-about-name = Tên cửa hàng
setup-about-time-zone = Múi giờ
setup-about-opens = Giờ mở
setup-about-closes = Giờ đóng
setup-about-closed-days = Ngày nghỉ
setup-about-limits = Giới hạn
setup-about-machines = Máy
setup-about-thermometer = Nhiệt kế
setup-about-sink = Bồn rửa
setup-about-product = Chất khử trùng
setup-about-chlorine = Clo hữu dụng
setup-about-packet = Gói
setup-about-strength = Nồng độ
setup-about-rinse = Tráng
setup-about-languages = Ngôn ngữ của nhóm
setup-about-people = Người
setup-about-pin = Mã PIN
setup-about-sound = Âm thanh
setup-about-isolation = Ngắt nguồn điện
setup-about-label-rinse = Tráng

setup-ask-language = Bạn muốn trả lời bằng ngôn ngữ nào?
setup-note-language = Màn hình các máy cũng bắt đầu bằng ngôn ngữ này. Sau đó mỗi người có ngôn ngữ riêng.
setup-ask-practice = Đây là cửa hàng thật hay để tập làm?
setup-real = cửa hàng thật
setup-real-is = Điều được xác nhận là sổ ghi của việc làm thật.
setup-practice-is = Mỗi lần làm đều được đánh dấu là tập làm. Đó không phải sổ ghi của việc làm thật.
setup-ask-name = Cửa hàng tên là gì?
setup-ask-time-zone = Cửa hàng ở múi giờ nào?
setup-note-time-zone = Múi giờ đúng hiện giờ bây giờ.
setup-ask-city = Thành phố nào cùng giờ?
setup-note-city = Chọn nơi gần nhất hiện đúng giờ bây giờ.
setup-ask-city-letter = Tên thành phố bắt đầu bằng chữ nào?
setup-zone-now = bây giờ { $time }
setup-zone-america = Châu Mỹ
setup-zone-europe = Châu Âu
setup-zone-asia = Châu Á
setup-zone-africa = Châu Phi
setup-zone-australia = Úc
setup-zone-pacific = Thái Bình Dương
setup-zone-atlantic = Đại Tây Dương
setup-zone-indian = Ấn Độ Dương
setup-ask-opens = Cửa hàng mở cửa lúc mấy giờ?
setup-note-opens = Bốn chữ số, như 0930 là 9 giờ 30 sáng.
setup-ask-closes = Cửa hàng đóng cửa lúc mấy giờ?
setup-note-closes = Bốn chữ số, như 2130 là 9 giờ 30 tối.
setup-no-time = { $text } không phải là giờ. Viết bốn chữ số, như 0930 hay 2130.
setup-ask-closed-days = Cửa hàng nghỉ những ngày nào?
setup-note-closed-days = Nhấn vào một ngày để đổi. Ngày nghỉ không có việc đến hạn.
setup-is-closed = nghỉ
setup-is-open = mở
setup-add-day = một ngày mỗi năm
setup-no-day-closed = mở mọi ngày
setup-never-open = Mỗi tuần cửa hàng phải mở ít nhất một ngày.
setup-ask-month = Ngày nghỉ vào tháng nào?
setup-ask-day = Ngày mấy của { $month }?
setup-no-day = { $month } không có ngày { $text }.
setup-date = ngày { $day } { $month }
setup-weekday = { $day ->
    [monday] thứ hai
    [tuesday] thứ ba
    [wednesday] thứ tư
    [thursday] thứ năm
    [friday] thứ sáu
    [saturday] thứ bảy
   *[sunday] chủ nhật
}
setup-month = { $month ->
    [m1] tháng 1
    [m2] tháng 2
    [m3] tháng 3
    [m4] tháng 4
    [m5] tháng 5
    [m6] tháng 6
    [m7] tháng 7
    [m8] tháng 8
    [m9] tháng 9
    [m10] tháng 10
    [m11] tháng 11
   *[m12] tháng 12
}

setup-ask-limits = Các số đo được xét theo giới hạn nào?
setup-note-limits = Hãy hỏi cơ quan kiểm tra cửa hàng này. Quy định địa phương được ưu tiên.
setup-limit-mix-temperature = nhiệt độ kem nền
setup-limit-sanitizer-strength = nồng độ khử trùng
setup-limit-sanitizer-temperature = nhiệt độ dung dịch khử trùng
setup-limit-contact-time = thời gian tiếp xúc
setup-limit-wash-temperature = nước rửa
setup-limit-hand-wash-time = rửa tay
setup-limit-line = { $what }: { $bounds }
setup-limit-silent = không nói gì về: { $names }
setup-limit-unwalkable = không làm được { $n } trên { $all } quy trình với giới hạn này
setup-least = ít nhất { $least }
setup-most = nhiều nhất { $most }
setup-bounds = từ { $least } đến { $most }

setup-ask-machines = Có những máy nào?
setup-note-machines = Nhấn vào máy để sửa, hoặc thêm máy khác.
setup-add-machine = thêm máy
setup-ask-kind = Máy thuộc loại nào?
setup-note-kind = Xem kem nền từ phễu xuống bằng cách nào. Các loại này là bịa ra; sách hướng dẫn của máy được ưu tiên.
setup-kind-is = { $hoppers ->
   *[other] { $hoppers } phễu
}, { $parts } linh kiện
setup-kind-own = của riêng cửa hàng này: { $kind }
setup-kind-spoilt = Chưa dùng được khi chưa sửa; kiosk check cho biết tất cả. { $why }
setup-kind-gone = { $who }: loại máy { $kind } không có ở đây. Hãy đổi loại hoặc bỏ máy ra.
setup-ask-machine-name = Ở cửa hàng gọi máy này là gì?
setup-note-machine-name = Để không ai nhầm với máy khác, chẳng hạn gọi theo chỗ đặt.
setup-ask-option = { $who }: { $option }
setup-ask-machine = { $who }: đổi điều gì?
setup-change-name = tên
setup-change-kind = loại máy
setup-change-language = ngôn ngữ
setup-change-role = vai trò
setup-take-off-machine = Các lần làm vẫn còn trong sổ ghi.
setup-amounts = lượng và thời gian
setup-ask-amounts = { $who }: lượng và thời gian này có đúng không?
setup-note-amounts = Đây là số của một loại máy bịa ra. Hãy so từng số với sách hướng dẫn của máy và các nhãn, nhấn vào để sửa.
setup-amounts-right = đúng cả
setup-ask-amount = { $what }: bao nhiêu?
setup-option-isolation-plug = phích cắm
setup-option-isolation-plug-is = Máy có phích cắm. Người làm rút ra và để ở chỗ nhìn thấy.
setup-option-isolation-lock = khóa
setup-option-isolation-lock-is = Máy nối thẳng vào điện. Người làm ngắt cầu dao và móc khóa riêng của mình.
setup-setting-hand-wash-time = rửa tay
setup-setting-flush-volume = nước xả
setup-setting-cleaner-volume = dung dịch rửa
setup-setting-circulate-time = chất rửa tác dụng
setup-setting-soak-volume = nước ngâm
setup-setting-soak-time = ngâm linh kiện
setup-setting-sanitizer-volume = dung dịch khử trùng
setup-setting-contact-time = khử trùng tác dụng
setup-setting-prime-volume = kem nền để xả
setup-setting-freeze-down-time = làm đông

setup-ask-thermometer = Nhiệt kế đo bằng gì?
setup-option-thermometer-celsius = độ C
setup-option-thermometer-celsius-is = Kem nền lạnh khoảng 4.
setup-option-thermometer-fahrenheit = độ F
setup-option-thermometer-fahrenheit-is = Kem nền lạnh khoảng 40.
setup-ask-sink = Bồn rửa có mấy ngăn?
setup-option-sink-three = ba
setup-option-sink-three-is = Rửa, tráng và khử trùng mỗi việc một ngăn.
setup-option-sink-two = hai
setup-option-sink-two-is = Tráng linh kiện dưới vòi nước trong ngăn rửa đã xả hết.

setup-ask-product = Trên nhãn, chất khử trùng tên là gì?
setup-note-product = Máy hướng dẫn tính liều cho bột hoặc viên clo đóng gói cùng một cỡ. Hãy cầm sản phẩm trên tay: các câu sau đọc từ nhãn.
setup-ask-chlorine = Clo hữu dụng bao nhiêu phần trăm?
setup-note-chlorine = Đọc trên nhãn. Có thể ghi: clo hữu dụng, hay clo hoạt tính. Đừng đoán, đừng lấy số của sản phẩm khác.
setup-no-percent = { $text } không phải là phần trăm. Viết số trên nhãn, trên 0 và đến 100.
setup-ask-packet = Một gói nặng bao nhiêu gam?
setup-note-packet = Đọc trên nhãn. Với viên, đó là khối lượng một viên.
setup-no-grams = Không thể là { $text } gam. Viết số trên 0 và đến 1000.
setup-ask-strength = Dung dịch phải đậm bao nhiêu?
setup-note-strength = Tính bằng phần triệu. Đọc trên nhãn: nồng độ cho bề mặt chạm thực phẩm, không tráng lại.
setup-strength-off = Giới hạn đã chọn đòi { $bounds } ({ $clause }). Hãy xem lại nhãn.
setup-ask-dose = Người làm sẽ nghe câu này. Có khớp với chỉ dẫn trên nhãn không?
setup-ask-no-dose = Với các số này không tính được liều. Hãy xem lại nhãn.
setup-dose-right = khớp với nhãn
setup-figures-again = nhập lại các số
setup-ask-rinse = Nhãn có bảo tráng sau khi khử trùng không?
setup-note-rinse = Đọc trên nhãn.
setup-option-label-rinse-no = không tráng
setup-option-label-rinse-no-is = Linh kiện để ráo dung dịch khử trùng.
setup-option-label-rinse-yes = có tráng
setup-option-label-rinse-yes-is = Tráng linh kiện bằng nước uống sạch.

setup-ask-languages = Nhóm nói những ngôn ngữ nào?
setup-note-languages = Nhấn vào ngôn ngữ để thêm hoặc bỏ.
setup-texts-checked = đã có người thạo tiếng xem lại
setup-texts-drafted = máy dịch, chưa có người thạo tiếng xem lại
setup-by-voice = bằng giọng nói và bằng chạm
setup-by-touch = bằng chạm: ở đây không có mẫu tiếng nói
setup-no-language = Chọn ít nhất một ngôn ngữ.
setup-language-spoken = Có người trong danh sách nói tiếng này. Đổi người đó trước.
setup-ask-people = Ai làm việc với máy?
setup-note-people = Nhấn vào tên để sửa, hoặc thêm người. Quản lý xem sổ ghi và đứng cạnh người học việc.
setup-add-person = thêm người
setup-ask-person-name = Người này tên là gì?
setup-note-person-name = Tên hiện trên màn hình và báo cáo. Sổ ghi không giữ tên.
setup-ask-person-language = { $who } nói tiếng gì?
setup-ask-person-role = { $who } được làm gì?
setup-ask-person = { $who }: đổi điều gì?
setup-role-worker = Tự làm mọi quy trình.
setup-role-trainee = Những lần đầu làm có quản lý bên cạnh.
setup-role-supervisor = Làm, xem sổ ghi, ký, đứng cạnh người học việc.
setup-take-off-person = Các lần làm vẫn còn. Những gì giữ bên cạnh sổ ghi xóa bằng: kiosk people erase { $person }
setup-no-supervisor = Không ai là quản lý: không ai xem hay ký được sổ ghi. Thêm một người, hoặc nhấn xong lần nữa.
setup-trainee-alone = Có người học việc mà không có quản lý đứng cạnh. Thêm một người, hoặc giao vai trò đó cho ai.

setup-note-keyboard = Gõ bằng bàn phím, hoặc nhấn nhóm chữ rồi nhấn chữ. Chữ có dấu tiếng Việt và chữ khác cần bàn phím.
setup-key-space = dấu cách
setup-key-capital = chữ hoa
setup-key-small = chữ thường
setup-key-others = chữ khác
setup-to-the-keys = đến các phím
setup-nothing-typed = Chưa gõ gì cả.

setup-ask-pin = { $who } cần mã PIN để xem sổ ghi và đứng cạnh người khác. Người đó có ở đây không?
setup-pin-now = có, đặt ngay
setup-pin-later = để sau
setup-pin-later-is = bằng: kiosk setup
setup-pin-is = đặt mã PIN cho ai đó
setup-sound-is = thử loa và micrô
setup-sound-begin = Máy hướng dẫn nói một câu, rồi nghe bạn. Hãy đứng ở chỗ làm việc, cứ để máy chạy.
setup-sound-start = thử
setup-sound-skip = bỏ qua
setup-sound-on = làm tiếp
setup-sound-again = thử lại
setup-sound-speaking = Hãy nghe.
setup-sound-sentence = Đây là máy hướng dẫn. Tôi nói từng bước và chờ bạn.
setup-sound-spoken = Bạn nghe rõ câu đó không?
setup-sound-yes = có
setup-sound-no = không
setup-sound-voice-good = Loa đủ to.
setup-sound-voice-bad = Vặn loa to lên, hoặc cắm loa khác. Mọi lời nói cũng hiện trên màn hình.
setup-sound-no-voice = Ở đây không nói được ({ $why }). Mọi lời sẽ hiện trên màn hình.
setup-sound-listening = Đang thử micrô.
setup-sound-heard = Kết quả đây.
setup-sound-silent = Hãy im lặng một lát.
setup-sound-say-yes = Bây giờ hãy nói: { $phrase }
setup-sound-understood = Máy đã hiểu.
setup-sound-not-heard = Máy không hiểu. Nghe ra là: “{ $text }”.
setup-sound-nothing = Không nghe thấy gì.
setup-sound-ended = Micrô không còn tiếng. Còn cắm không?
setup-sound-no-ear = Máy hướng dẫn không nghe được ngôn ngữ này ({ $text }).
setup-sound-no-microphone = Ở đây không nghe được ({ $why }). Cứ làm bằng chạm và bằng phím.

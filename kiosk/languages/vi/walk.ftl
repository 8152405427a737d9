### Lời của máy hướng dẫn bằng tiếng Việt. Bản nháp do máy dịch; chưa có người bản ngữ xem lại.
### reviewed: no

language-name = Tiếng Việt

## Đơn vị viết bằng chữ, để đọc và nói giống nhau.
unit-litres = { $n } lít
unit-millilitres = { $n } mi li lít
unit-gallons = { $n } ga lông
unit-quarts = { $n } phần tư ga lông
unit-fluid-ounces = { $n } ao xơ nước
unit-grams = { $n } gam
unit-seconds = { $n } giây
unit-minutes = { $n } phút
unit-hours = { $n } giờ
unit-celsius = { $n } độ C
unit-fahrenheit = { $n } độ F
unit-milligrams-per-litre = { $n } phần triệu
unit-ph = pH { $n }
unit-none = { $n }

## Lời để nói. Các cách nói cùng một ý cách nhau bằng dấu gạch chéo; cách đầu được hiện ra.
say-next = xong bước này / đã làm xong
say-yes = đúng rồi / vâng
say-no = không phải / chưa
say-repeat = xin nhắc lại / nói lại đi
say-back = lùi một bước / về bước trước
say-problem = có sự cố / gặp trục trặc
say-pause = tạm nghỉ / chờ một chút
say-continue = tiếp tục / làm tiếp thôi
say-hand-over = đổi người làm / người khác làm thay
say-out-of-service = ngừng dùng máy
say-end = kết thúc ở đây / chúng tôi nghỉ làm
say-good = linh kiện còn tốt / vẫn dùng được
say-replaced = tôi đã thay mới / thay mới rồi
say-none-left = hết đồ thay thế / kho không còn
say-language = ngôn ngữ khác
say-never-mind = thôi bỏ qua
say-number = số { $number }

## Từ báo hiệu theo ANSI Z535.
signal-danger = Nguy hiểm
signal-warning = Cảnh báo
signal-caution = Thận trọng
signal-notice = Lưu ý

## Lời hỏi.
first-again = Trước hết, xác nhận lại điều này.
say-phrase = Khi đã như vậy, hãy nói: { $phrase }.
heard-phrase = Tôi nghe là: { $phrase }. Đúng rồi hay không phải?
heard-number = Tôi nghe là { $number }. Đúng rồi hay không phải?
is-that-so = Có như vậy không? Đúng rồi hay không phải?
good-or-replaced = Linh kiện còn tốt, hay bạn đã thay mới?
try-again = Sửa cho đúng, rồi nói xong bước này để thử lại.
time-up = Hết giờ. Nói xong bước này để đi tiếp.
witness-needed = Người thứ hai phải xác nhận điều này bằng mã PIN của mình.
count-off = Bạn đếm được { $number }. Bảng linh kiện ghi { $expected }. Hãy tìm linh kiện còn thiếu.
reading-off-least = { $number } là quá thấp. Phải từ { $least } trở lên.
reading-off-most = { $number } là quá cao. Phải từ { $most } trở xuống.
reading-off-least-most = { $number } nằm ngoài giới hạn. Phải từ { $least } đến { $most }.
passes-ran-out = Đó là lượt thứ { $number } mà vẫn chưa đạt.
what-is-wrong = Có sự cố gì?
then-continue = Khi làm xong, hãy nói tiếp tục.
stop-here = Máy không thể chạy tiếp. Hãy ngừng dùng máy hoặc đổi người làm.
held-pause = Phiên đang tạm dừng. Nói tiếp tục để làm tiếp. Những gì có thể đã thay đổi sẽ được hỏi lại.
held-restart = Máy hướng dẫn đã khởi động lại. Nói tiếp tục. Những gì có thể đã thay đổi sẽ được hỏi lại.
held-no-way-in = Từ đây quy trình không thể tiếp tục an toàn. Kết thúc phiên và báo cho quản lý.
end-asked = Kết thúc phiên này bây giờ? Phiên chưa xong. Đúng rồi hay không phải?
complete = Quy trình đã xong. Cảm ơn bạn.
aborted = Phiên kết thúc trước khi xong. Hãy báo cho người tiếp theo:
out-of-service = Máy đã ngừng dùng. Hãy báo cho người tiếp theo:

who-takes-over = Ai làm tiếp?
which-language = Ngôn ngữ nào?
press-instead = Tôi không chắc bạn nói gì. Hãy bấm trên màn hình.

## Vì sao một việc không được làm.
refused-not-now = Bây giờ không làm được việc đó.
refused-hold-first = Đây là điểm dừng an toàn. Nói trọn câu, hoặc bấm nút của nó và giữ.
refused-time-left = Chưa được. Còn { $time }.
refused-number-first = Hãy cho biết con số trước.
refused-absurd = Con số đó không thể đúng. Phải nằm từ { $least } đến { $most }.
refused-whole-number = Hãy cho một số nguyên.
refused-look-first = Xem linh kiện trước. Hãy nói: linh kiện còn tốt, tôi đã thay mới, hoặc hết đồ thay thế.
refused-reason-first = Trước hết hãy nói có sự cố gì.
refused-no-such-reason = Ở đây không có lý do đó.
refused-must-stop = Máy không thể chạy tiếp. Hãy ngừng dùng máy.
refused-no-way-in = Từ đây không có lối an toàn để đi tiếp. Hãy kết thúc phiên.
refused-confirm-this-first = Hãy xác nhận điều này trước.
refused-first-step = Đây là bước đầu tiên.
refused-same-person = Phải là một người khác.

## Màn hình
standing-in-service = đang phục vụ
standing-being-taken-apart = đang tháo
standing-apart-and-drying = đã tháo, đang phơi
standing-being-put-together = đang lắp
standing-held = dừng lại, có sự cố
standing-left-unfinished = bỏ dở
standing-out-of-service = ngừng dùng

which-machine = Máy nào?
which-procedure = Bạn muốn làm gì?
who-walks = Ai làm?
due = Đến hạn: { $procedure }
nothing-due = Không có gì đến hạn.
not-due = không phải việc thường làm tiếp
unfinished = Chưa xong, bấm để làm tiếp: { $procedure }, { $worker }
no-procedure = Máy này không có quy trình nào làm được.
some-faulty = Máy này có quy trình chưa làm được.
day-or-night = sáng hoặc tối
what-is-faulty = có lỗi gì
faults-found = { $n ->
    [1] Có một lỗi khiến một quy trình không làm được.
   *[other] Có { $n } lỗi khiến các quy trình không làm được.
}
all-machines = tất cả các máy
more = thêm
practice = tập làm
place = bước { $place } trên { $last }
time-left = còn khoảng { $n } phút
time-left-spread = còn khoảng { $n } phút ({ $least } đến { $most })
held = Đang dừng
drafted = lời do máy dịch, chưa có người bản ngữ xem lại

keep-pressed = giữ nguyên tay
kept-too-short = quá ngắn: bấm giữ, hoặc bấm thêm một lần
kept-enough = bây giờ thả ra
type-number = gõ con số
enter-number = nhập
rub-out = xóa
number-missing = Gõ con số trước, rồi bấm nhập.
try-to-begin = thử lại

ear-hears = Tôi đang nghe
ear-deaf = Tôi đang nói nên không nghe
ear-off = Tôi không nghe được: { $why }
ear-opening = đang mở bộ nghe
ear-none = máy hướng dẫn này không nghe được
voice-on = giọng nói đang bật
voice-off = Tôi không nói được: { $why }
voice-opening = đang mở giọng nói
voice-none = máy hướng dẫn này không có giọng nói
heard = nghe là “{ $text }”
heard-nothing = tôi không biết lời đó
heard-not-allowed = “{ $text }” không phải lời dùng lúc này
heard-too-short = lời đó quá ngắn
heard-doubtful = “{ $text }”? Tôi không chắc, hãy nói lại

text-changed = Lời của quy trình này đã đổi từ khi phiên bắt đầu. Không thể làm tiếp phiên này. Kết thúc phiên rồi bắt đầu lại.
cannot-take-up = Không thể làm tiếp phiên này. { $why }

recorded = Những gì đã được ghi
took = Mất { $time }.
confirmed-by-voice = { $n } lần xác nhận bằng lời
confirmed-by-touch = { $n } lần xác nhận bằng chạm
confirmed-by-key = { $n } lần xác nhận bằng phím
readings = Số đo
reading-taken = { $what }: { $number }
limit-least = giới hạn: từ { $least } trở lên
limit-most = giới hạn: từ { $most } trở xuống
limit-least-most = giới hạn: { $least } đến { $most }
limit-none = không có giới hạn
deviations = Sai lệch
no-deviations = Không có sai lệch.
deviation-reading = { $what }: { $number } nằm ngoài giới hạn.
deviation-count = { $what }: đếm được { $number }, bảng linh kiện ghi { $expected }.
deviation-passes = Sau { $number } lượt vẫn chưa đạt: { $what }
deviation-verify = Thử không đạt: { $what }
deviation-none-left = Trong kho không còn: { $what }
deviation-problem = Sự cố: { $what }
left-unsafe = Hãy báo cho người tiếp theo
journal-head = Nhật ký { $hash }

## Tờ dán tường
sheet-kind = Tờ dán tường, dùng khi không dùng được máy hướng dẫn
sheet-text = phiên bản { $version }, văn bản { $digest }
sheet-practice = Tập làm: cửa hàng được bịa ra. Không làm việc theo tờ này.
sheet-drafted = Lời này do máy dịch. Chưa có người bản ngữ xem lại.
sheet-no-lockout = Tờ này không thay cho việc khóa nguồn điện. Nó không dừng được máy, và không ngăn được bạn.
sheet-in-order = Làm mọi bước theo đúng thứ tự này. Làm xong thì đánh dấu.
sheet-stop-at-holds = Đến điểm dừng an toàn thì dừng lại. Chỉ đi tiếp khi đã xác nhận và đã thử.
sheet-after-break = Sau khi nghỉ hoặc đổi người, xác nhận lại mọi điểm dừng an toàn còn phải giữ đúng. Rửa tay lại.
sheet-machine = Máy
sheet-name = Tên
sheet-date = Ngày
sheet-begun = Bắt đầu
sheet-ended = Kết thúc
sheet-signature = Chữ ký
sheet-supervisor = Quản lý
sheet-second-person = Người thứ hai
sheet-done = Xong
sheet-step = Bước
sheet-write-down = Ghi lại
safety-hold = ĐIỂM DỪNG AN TOÀN
sheet-say-aloud = Khi đã như vậy, nói to: { $phrase }.
sheet-try-out = Thử
sheet-it-is-so = Đúng như vậy
sheet-least = Phải từ { $least } trở lên.
sheet-most = Phải từ { $most } trở xuống.
sheet-least-most = Phải từ { $least } đến { $most }.
sheet-no-limit = Không có giới hạn; hãy ghi lại.
sheet-limit-source = Giới hạn: { $source }
sheet-if-off = Nếu chưa đạt
sheet-wait = Thời gian: từ { $time } trở lên.
sheet-passes = Số lượt: ít nhất { $least }, nhiều nhất { $most }.
sheet-pass = Lượt
sheet-parts-list = Bảng linh kiện: { $part }, { $expected }.
sheet-counted = Đếm được
sheet-look-at = Xem: { $part }
sheet-good = tốt
sheet-replaced = đã thay
sheet-none-left = kho không còn
sheet-problems = Khi có sự cố
sheet-stops-service = Ngừng dùng máy.
sheet-end-of-work = Hết việc
sheet-left-at = Chưa xong? Dừng ở bước
sheet-told-to = Đã báo cho người tiếp theo

picture-established = bắt đầu có hiệu lực
picture-relied-on = được dựa vào
picture-ended = hết hiệu lực
picture-by-hold = xác nhận ở điểm dừng an toàn
picture-danger = nguy hiểm khi còn kéo dài
picture-other = điều kiện khác
picture-not-in-force = được dựa vào mà chưa có hiệu lực
picture-page = trang { $page } trên { $pages }

## Tính toán bên cạnh một bước.
say-reckon = tính giúp tôi
say-ask-again = hỏi lại câu trước
say-back-to-the-step = trở về bước đang làm
which-reckoning = Bạn muốn tính gì?
reckoned = Đã tính xong hết.
not-one-of = { $given } không phải một trong các câu trả lời.
not-a-number = { $given } không phải là số. Hãy viết chữ số, ví dụ 12.5.
not-believable = Không thể như vậy: phải nằm từ { $least } đến { $most }.
not-whole = { $given } phải là số nguyên.
cannot-work-out = Không tính được việc này.
say-other-reckonings = tính thứ khác
say-hours = { $n ->
   *[other] { $number } giờ
}
say-minutes = { $n ->
   *[other] { $number } phút
}
say-days = { $n ->
   *[other] { $number } ngày
}
say-gallons = { $n ->
   *[other] { $number } ga lông
}
say-quarts = { $n ->
   *[other] { $number } phần tư ga lông
}
say-tubes = { $n ->
   *[other] { $number } ống nghiệm
}
say-colonies = { $n ->
   *[other] { $number } khuẩn lạc
}
say-results = { $n ->
   *[other] { $number } kết quả
}
say-ph = { $n ->
   *[other] pê hát { $number }
}
# Ngày khi nói ra: thứ, ngày, tháng, năm.
day-said = { $weekday ->
    [mon] thứ hai
    [tue] thứ ba
    [wed] thứ tư
    [thu] thứ năm
    [fri] thứ sáu
    [sat] thứ bảy
   *[sun] chủ nhật
} ngày { $day } { $month ->
    [jan] tháng một
    [feb] tháng hai
    [mar] tháng ba
    [apr] tháng tư
    [may] tháng năm
    [jun] tháng sáu
    [jul] tháng bảy
    [aug] tháng tám
    [sep] tháng chín
    [oct] tháng mười
    [nov] tháng mười một
   *[dec] tháng mười hai
} năm { $year }

# Vì sao không tính được.
cannot-label-bad-percent = Không thể có { $percent } phần trăm; hãy viết phần trăm ghi trên nhãn, trên 0 và đến 100.
cannot-label-share-not-percent = { $percent } phần trăm là quá ít cho sản phẩm dạng rắn; nếu phần trên nhãn là { $percent }, hãy viết { $mend } phần trăm.
cannot-label-bad-gravity = Không thể có tỷ trọng { $gravity }; hãy viết tỷ trọng ghi trên nhãn, ví dụ 1.08.
cannot-label-too-strong = Không dung dịch clo nào có { $percent } phần trăm thương mại; hãy viết số gam clo hữu dụng trong một lít, chia cho 10.
cannot-label-bad-dilution = Tỷ lệ pha trên nhãn phải có lượng sản phẩm và nồng độ lớn hơn 0.
cannot-label-bad-packet = Số gam trong một gói phải lớn hơn 0.
cannot-dose-bad-strength = Không pha được nồng độ { $wanted }; hãy hỏi nồng độ lớn hơn 0.
cannot-dose-bad-water = Không đổ được { $water } nước; hãy viết số lớn hơn 0.
cannot-dose-bad-count = Không đong được { $count } lần; hãy viết số lớn hơn 0.
cannot-dose-wanted-over-cap = { $wanted } vượt mức tối đa { $cap }; hãy hỏi { $cap } hoặc ít hơn.
cannot-dose-over-cap = { $count } lần đong trong { $water } cho { $strength }, vượt mức tối đa { $cap }; dùng ít nhất { $least_water } nước, cỡ đong nhỏ hơn hoặc gói nhỏ hơn.
cannot-dose-too-weak = Bản thân sản phẩm chỉ có { $strongest } nên không pha được { $wanted }; hãy dùng sản phẩm đậm hơn.
cannot-dose-wrong-measure = Không đong sản phẩm này bằng đơn vị đó được; hãy dùng cách đong khác.
cannot-dose-over-full = { $count } lần đong nhiều hơn { $water }; hãy dùng cỡ đong nhỏ hơn.
cannot-solution-bad-strength = Không thể có nồng độ { $strength }; hãy đọc lại giấy thử.
cannot-solution-bad-ph = Không thể có độ pH { $ph }; pH nằm từ 0 đến 14, hãy đọc lại giấy thử.
cannot-solution-bad-hardness = Không thể có độ cứng { $hardness }; hãy thử lại nước.
cannot-solution-bad-temperature = { $temperature } không thể là nhiệt độ của dung dịch; hãy cho theo độ C hoặc độ F và đo lại.
cannot-solution-other-label = Nhãn này là của chất khử trùng khác với dung dịch; hãy dùng đúng nhãn.
cannot-share-bad-ph = Không thể có độ pH { $ph }; pH nằm từ 0 đến 14, hãy đọc lại giấy thử.
cannot-share-no-number = { $temperature } không thể là nhiệt độ; hãy đo lại.
cannot-share-too-cold = { $temperature } thấp hơn { $least } độ C, ở đó không biết cân bằng ra sao.
cannot-share-too-warm = { $temperature } cao hơn { $most } độ C, ở đó không biết cân bằng ra sao; hãy để nguội.
cannot-growth-outside-range = Mô hình dùng được từ { $least } đến { $most } độ C, không dùng được ở { $celsius }; đừng dùng mô hình nào.
cannot-growth-not-finite = Giá trị { $value } không phải là số; hãy cho giá trị đã đo.
cannot-growth-negative = Giá trị { $value } nhỏ hơn 0; hãy cho số 0 hoặc lớn hơn.
cannot-growth-not-positive = Giá trị { $value } phải lớn hơn 0.
cannot-growth-no-room = Số vi khuẩn tối đa, 10^{ $most }, phải lớn hơn lúc đầu, 10^{ $start }.
cannot-growth-absurd-count = Không đếm được 10^{ $value } vi khuẩn; số mũ nằm từ -3 đến 12.
cannot-growth-no-growth-there = Theo mô hình, ở { $celsius } vi khuẩn không tăng; chỉ quy đổi từ phép thử ấm hơn.
cannot-growth-gap = Trong { $hours } không có số đo; tổng qua khoảng đó không nói lên gì, nên hãy bỏ ra.
cannot-growth-too-few = Muốn biết tốc độ phải đếm ở hai thời điểm trở lên; hãy đếm lại sau.
cannot-log-no-readings = Sổ chưa có số đo nào; hãy đo và ghi lại.
cannot-log-bad-instant = Thời điểm { $at } không phải là số giây; hãy ghi lúc đã đo.
cannot-log-bad-unit = “{ $unit }” không phải đơn vị nhiệt độ; hãy dùng °C hoặc °F.
cannot-log-absurd = { $temperature } không thể là nhiệt độ của kem nền; hãy kiểm tra đầu đo và đo lại.
cannot-log-bad-gap = Khoảng dài nhất giữa hai số đo, { $gap }, phải lớn hơn 0.
cannot-log-ends-first = Khoảng thời gian xem kết thúc ({ $until }) trước khi bắt đầu ({ $since }); hãy đổi chỗ hai mốc.
cannot-log-before-start = Thời điểm xem ({ $now }) nằm trước { $start }; hãy kiểm tra đồng hồ.
cannot-log-no-points = Chưa nêu điểm đo nào; hãy nêu mọi điểm phải nóng.
cannot-log-empty-point = Một điểm đo không có số đo; hãy đo hoặc sửa đầu đo.
cannot-log-bad-time = Không giữ được trong thời gian { $seconds }; hãy cho số 0 hoặc lớn hơn.
cannot-log-bad-fat = Không thể có { $percent } phần trăm chất béo; hãy cho số từ 0 đến 100.
cannot-log-bad-z = Trị số z { $z } từ { $reference } không hợp lý; z nằm từ 1 đến 50, mốc nằm từ -50 đến 150.
cannot-log-bad-pairs = Cần hai cặp có thời gian khác nhau và lớn hơn 0.
cannot-log-gap = Trong { $seconds } không có số đo, mà nhiều nhất chỉ được { $gap }; hãy cho phần sổ không có khoảng trống đó.
cannot-date-unknown-zone = “{ $zone }” không phải múi giờ được biết ở đây; hãy dùng tên như Europe/Berlin, và xem dữ liệu múi giờ (tzdata) đã được cài chưa.
cannot-date-has-zone = { $local } đã có sẵn múi giờ; hãy cho giờ như đồng hồ treo tường chỉ.
cannot-date-twice = Đêm đó ở { $zone } giờ { $local } đến hai lần: { $first } và { $second }; hãy nói lần nào.
cannot-date-skipped = Ở { $zone } không có giờ { $local }: đồng hồ đã chỉnh tới; ý là { $first } hoặc { $second }, hãy nói giờ nào.
cannot-date-ends-first = { $end } nằm trước { $begin }; hãy đổi chỗ hai mốc, hoặc sửa mốc sai.
cannot-date-bad-freeze = Lần đông lạnh { $frozen } không đi sau { $before }; hãy sửa ngày.
cannot-date-still-frozen = Nó lại được đông lạnh { $frozen } mà chưa rã đông; hãy ghi lúc rã đông.
cannot-date-frozen-unopened = Có thời gian trong tủ đông mà không có ngày mở; hãy ghi ngày mở.
cannot-date-absurd-year = { $day } không thể là ngày dùng kem nền; hãy sửa năm.
cannot-date-no-packages = Chưa ghi kem nền nào; hãy ghi những gì có trong tủ mát.
cannot-date-bad-instant = { $at } không phải là thời điểm; hãy cho số giây kể từ năm 1970.
cannot-plate-bad-dilution = Độ pha loãng { $dilution }: viết 1:100 là 0.01, không pha loãng là 1.
cannot-plate-bad-volume = Thể tích { $volume }: viết số mi li lít cấy lên đĩa, lớn hơn 0.
cannot-plate-bad-spread = Phần mọc lan { $spread }: viết phần của đĩa, ví dụ 0.25.
cannot-plate-bad-colonies = { $colonies } khuẩn lạc: viết số 0 hoặc lớn hơn.
cannot-plate-no-area = Đĩa có hơn 100 khuẩn lạc trên một xen ti mét vuông cần biết diện tích tính bằng xen ti mét vuông.
cannot-plate-no-plate = Không có đĩa nào: hãy cho ít nhất một đĩa.
cannot-plate-no-count = Đĩa đã được đánh dấu thì không có số đếm.
cannot-tubes-bad-amount = { $amount } trong một ống: viết số gam mẫu, lớn hơn 0.
cannot-tubes-bad-tubes = { $tubes } ống: viết bao nhiêu ống có lượng này, 1 hoặc hơn.
cannot-tubes-bad-positive = { $positive } trên { $tubes } ống dương tính: viết từ 0 đến { $tubes }.
cannot-tubes-no-tubes = Không có ống nào: hãy cho ít nhất một độ pha loãng.
cannot-tubes-one-tube = Chỉ một ống thì không ra con số: hãy cho ít nhất hai ống.
cannot-plan-no-sample = n = { $n }: kế hoạch cần ít nhất một mẫu.
cannot-plan-bad-c = c = { $c }: viết từ 0 đến n, ở đây là { $n }.
cannot-plan-bad-m = m = { $m }: viết số 0 hoặc lớn hơn.
cannot-plan-bad-top = M = { $top }: M phải lớn hơn m = { $m }; kế hoạch hai hạng không có M.
cannot-plan-other-number = { $given } mẫu cho kế hoạch { $n } mẫu: hãy cho { $n } kết quả của một lô.
cannot-result-number-missing = Kết quả loại này phải có số.
cannot-result-number-too-many = Kết quả loại này không được có số.
cannot-result-bad-number = { $value } không phải số đếm; viết số 0 hoặc lớn hơn.
cannot-result-no-result = “{ $text }” không phải kết quả; viết như 1200, < 10, > 1100 hoặc spreaders (mọc lan).
cannot-limit-several-limits = { $title } có { $count } giới hạn cho { $test } trong { $product }: hãy giữ một.
cannot-limit-no-limit = { $title } không có giới hạn cho { $test } trong { $product }.
cannot-limit-other-unit = { $title } đặt giới hạn theo { $limit_per }, còn kết quả này theo { $per }.
cannot-limit-no-authority = Không cơ quan nào tên là “{ $called }”; các cơ quan được biết: { $known }.
cannot-limit-no-plan = Không kế hoạch lấy mẫu nào tên là “{ $called }”; các kế hoạch được biết: { $known }.

reckon-dose = Khử trùng: cho vào bao nhiêu
call-dose = pha bao nhiêu
ask-dose-unit = Bạn cho lượng nước bằng lít, ga lông hay phần tư ga lông?
ask-dose-water = Có bao nhiêu nước?
ask-dose-wanted = Nồng độ cần là bao nhiêu phần triệu?
pick-in-litres = tính theo lít
pick-in-gallons = theo ga lông
pick-in-quarts = một phần tư ga lông
dose-put = Cho { $count } gói vào { $water } nước. Như vậy được { $strength }.
dose-put-one = Cho một gói vào { $water } nước. Như vậy được { $strength }.
dose-rounded = Chính xác là { $exact } gói. Dùng nguyên gói thì đậm hơn { $gained }.
dose-exact = Đó là số chính xác, không làm tròn gì.
dose-grams = Tính theo cân nặng, liều chính xác là { $grams }.
dose-in-range = Nằm trong khoảng { $least } đến { $most }. Hãy thử bằng giấy thử.
dose-below-range = Như vậy quá loãng: phải từ { $least } đến { $most }.
dose-above-range = Như vậy quá đặc: phải từ { $least } đến { $most }.
dose-no-range = Giới hạn của nơi này không có khoảng cho nó. Hãy theo nhãn.
dose-wanted-over-cap = { $wanted } vượt mức tối đa được phép khi không tráng, { $cap }. Hãy hỏi mức đó hoặc ít hơn.
dose-over-cap = Số gói nguyên cần: { $count }. Trong { $water } chúng cho { $strength }, vượt mức tối đa được phép, { $cap }. Dùng từ { $needed } nước trở lên.

reckon-strength = Khử trùng: đã đủ đậm chưa
call-strength = đủ đậm chưa
ask-strength-strip = Giấy thử chỉ bao nhiêu phần triệu?
ask-strength-acidity = Độ pH của dung dịch là bao nhiêu?
ask-strength-temperature = Dung dịch ấm bao nhiêu độ?
strength-passes = Đủ đậm. Để tác dụng từ { $time } trở lên.
strength-passes-at-once = Đủ đậm. Không có quy định thời gian.
strength-label-first = Chỗ nào nhãn sản phẩm đòi hỏi hơn thì làm theo nhãn.
strength-any-ph = Chưa đo pH: chỉ tính những gì bộ luật ghi cho mọi độ pH đến { $most }.
pick-not-measured = không ai đo
strength-no-row = Không đạt: bộ luật không ghi dung dịch nào như vậy.
strength-over-cap = Quá đặc nên không được dùng khi không tráng.
strength-off-label = Không đạt: nhãn sản phẩm không cho phép.
strength-no-contact-time = Không đạt: không đâu ghi phải để tác dụng bao lâu.
strength-no-table = Giới hạn của nơi này, { $profile }, không ghi dung dịch khử trùng nào, nên không gì đạt được. Hãy hỏi quản lý.
strength-to-mend = Để sửa:
strength-or = Hoặc:
strength-test-again = Rồi thử lại.
strength-ask = Hãy hỏi quản lý.
need-stronger = Pha đậm đến { $value } hoặc hơn.
need-weaker = Thêm nước đến khi còn { $value } hoặc ít hơn.
need-warmer = Làm ấm đến { $value } hoặc hơn.
need-lower-ph = Hạ pH xuống { $value } hoặc ít hơn.
need-softer-water = Dùng nước có độ cứng { $value } hoặc ít hơn.
need-measure-strength = Đo nồng độ.
need-measure-ph = Đo pH.
need-measure-ph-up-to = Đo pH. Phải từ { $value } trở xuống.
need-measure-temperature = Đo nhiệt độ.
need-measure-hardness = Đo độ cứng của nước.
need-read-label = Nhập những gì nhãn sản phẩm ghi.

reckon-free-chlorine = Khử trùng: vì sao pH quan trọng
call-free-chlorine = axit và clo
ask-free-chlorine-kind = Là nước tẩy, hay là bột hoặc viên?
ask-free-chlorine-strip = Giấy thử chỉ bao nhiêu phần triệu?
ask-free-chlorine-acidity = Độ pH của dung dịch là bao nhiêu?
ask-free-chlorine-temperature = Dung dịch ấm bao nhiêu độ?
pick-bleach = nước tẩy
pick-powder = bột hoặc viên
free-chlorine-share = Ở pH { $ph }, { $percent } phần trăm clo tự do ở dạng diệt khuẩn nhanh: { $acid } trong { $free }.
free-chlorine-at-most = Bột giữ chặt một phần clo, nên thực tế ít hơn vậy.
free-chlorine-extrapolated = Nước ấm hơn khoảng mà công thức được lập cho.
free-chlorine-explains = Điều này chỉ giải thích vì sao đo pH. Không gì đạt hay không đạt theo nó.

reckon-cold = Kem nền: có lạnh suốt không
call-cold = có lạnh suốt không
ask-cold-hours = Lần cuối đo thấy kem nền lạnh là mấy giờ trước? Nếu không ai biết, trả lời 72 giờ.
ask-cold-now = Bây giờ kem nền bao nhiêu độ?
ask-cold-power = Từ lúc đó có mất điện không?
ask-cold-plan = Có quy trình viết sẵn để giữ kem nền không làm lạnh, và trên hộp có ghi giờ đổ bỏ không?
ask-cold-watched = Từ lúc đó có đo mỗi giờ, và chưa lần nào ấm hơn 70 độ F, tức 21 độ C không?
pick-stayed-on = điện vẫn có
pick-was-out = đã mất điện
pick-not-known = không ai biết
pick-plan-there = có cả hai
pick-plan-missing = còn thiếu một thứ
pick-watched = giờ nào cũng đo
pick-not-watched = không đo thường xuyên
cold-kept = Kem nền lạnh ở cả hai lần đo, bây giờ { $now }, và điện vẫn có. Được bán.
cold-unwatched = Bây giờ kem nền lạnh, { $now }. Nhưng trong { $time } không ai đo: khoảng đó là không biết, không phải là lạnh.
cold-watch-it = Không bán trước khi quản lý quyết định. Từ bây giờ đo bốn giờ một lần.
cold-left = Còn được bán trong { $left }. Sau đó đổ bỏ.
cold-clock-runs = Thời gian vẫn tính tiếp, dù kem nền đã lạnh lại.
cold-throw-away = Không bán kem nền này. Đổ bỏ.
cold-unknown-is-warm = Khoảng thời gian không ai theo dõi được tính là ấm.
cold-ground-no-procedure = Không có quy trình viết sẵn.
cold-ground-start-not-cold = Không có gì cho thấy lúc đầu nó lạnh.
cold-ground-unmarked = Hộp không ghi giờ đổ bỏ.
cold-ground-marked-too-late = Giờ đổ bỏ trễ hơn quy định cho phép.
cold-ground-time-is-up = Đã hết thời gian được giữ không làm lạnh.
cold-ground-too-warm = Đã có lúc ấm hơn mức quy định cho phép.
cold-ground-not-watched = Thiếu số đo, nên không ai biết nó đã ấm đến đâu.

reckon-growth = Kem nền: vi khuẩn tăng nhanh thế nào
call-growth = vi khuẩn tăng
ask-growth-temperature = Kem nền bao nhiêu độ?
ask-growth-hours = Trong bao nhiêu giờ?
growth-listeria = Ở { $temperature } trong { $time }, vi khuẩn listeria có thể tăng lên { $times } lần. Theo thang logarit là { $log }.
growth-spoilers = Vi khuẩn làm hỏng sữa có thể tăng lên { $times } lần. Theo thang logarit là { $log }.
growth-explains = Điều này chỉ giải thích vì sao quy định nghiêm. Kem nền đạt hay không là theo quy định, không bao giờ theo điều này.

reckon-use-by = Kem nền: ngày cuối được dùng
call-use-by = ngày cuối cùng
ask-use-by-state = Túi đã mở, hay còn niêm kín?
ask-use-by-opened = Mở mấy ngày trước? Hôm nay là số không.
ask-use-by-frozen = Từ lúc đó nó nằm trong tủ đông mấy ngày trọn? Không tính ngày cho vào và ngày lấy ra.
ask-use-by-printed = Trên túi có in hạn dùng của nhà sản xuất không?
ask-use-by-when = Ngày đó chưa đến, hay đã qua? Hôm nay tính là chưa đến.
ask-use-by-date = Còn mấy ngày đến ngày đó? Hôm nay là số không.
pick-opened = túi đã mở
pick-sealed = còn niêm kín
pick-nobody-wrote = mở mà không ghi ngày
pick-date-printed = có in ngày
pick-no-date = không in gì
pick-still-to-come = còn chưa đến
pick-already-over = đã qua rồi
use-by-last-day = Ngày cuối là { $day }. Số ngày còn lại, tính cả hôm nay: { $left }.
use-by-then-away = Hết ngày đó thì đổ bỏ.
use-by-kept-cold = Chỉ đúng với kem nền được giữ ở { $most } hoặc lạnh hơn.
use-by-throw-away = Không dùng túi này. Đổ bỏ.
use-by-frozen-too-long = Không thể đã đông lạnh { $frozen } ngày trọn khi mới mở { $opened } ngày trước. Hãy cho lại số ngày.
bar-too-warm = Nó được giữ quá ấm, hoặc không ai biết ấm đến đâu.
bar-undated = Không ai ghi mở lúc nào, hoặc giữ được đến khi nào.
bar-wrongly-dated = Các ngày của nó không thể đúng.
bar-frozen = Nó đang đông. Rã đông trước.
bar-days-are-up = Nó đã mở đủ số ngày được phép.
bar-makers-date-passed = Đã qua hạn dùng của nhà sản xuất.
bar-mark-passed = Đã qua ngày cuối ghi trên nhãn.

reckon-pour-next = Kem nền: đổ túi nào tiếp
call-pour-next = dùng túi nào
ask-pour-next-state = Túi { $place }: đã mở, hay còn niêm kín?
ask-pour-next-opened = Túi { $place }: mở mấy ngày trước? Hôm nay là số không.
ask-pour-next-printed = Túi { $place }: có in hạn dùng của nhà sản xuất không?
ask-pour-next-when = Túi { $place }: ngày đó chưa đến, hay đã qua? Hôm nay tính là chưa đến.
ask-pour-next-date = Túi { $place }: còn mấy ngày đến ngày đó? Hôm nay là số không.
ask-pour-next-another = Đã ghi túi { $place }. Còn túi khác không?
pick-another = thêm một túi
pick-no-more = chỉ có vậy
pour-first = Đổ túi { $bag } tiếp theo. Ngày cuối của nó là { $day }.
pour-then = Rồi đến túi { $bag }. Ngày cuối của nó là { $day }.
pour-not = Không dùng túi { $bag }.
pour-none = Không túi nào trong số này được đổ.

reckon-heat-treatment = Xử lý nhiệt: có được rót không
call-heat-treatment = xử lý nhiệt
ask-heat-treatment-coldest = Trong lúc giữ nóng, điểm lạnh nhất của kem nền là bao nhiêu độ?
ask-heat-treatment-minutes = Giữ ở đó mấy phút?
ask-heat-treatment-ended = Kết thúc mấy giờ trước?
ask-heat-treatment-strip = Lần cuối máy được tháo, rửa và khử trùng là mấy ngày trước?
heat-allowed = Máy được rót. Máy sẽ khóa sau { $left } nếu không làm gì thêm.
heat-locked = Việc rót đang bị khóa.
heat-only-this-pair = Chỉ tính đúng cặp đã ghi: { $hot } ở mọi điểm trong { $time }, không gián đoạn.
heat-lapse-no-heat = Chưa ghi chu kỳ nhiệt nào.
heat-lapse-heat-failed = Chu kỳ nhiệt không đạt: { $coldest } trong { $minutes } ở điểm lạnh nhất.
heat-lapse-heat-overdue = Chu kỳ nhiệt cuối kết thúc hơn một ngày trước. Hãy chạy ngay một chu kỳ.
heat-lapse-no-strip = Chưa ghi lần tháo rửa toàn bộ nào.
heat-lapse-strip-overdue = Hơn { $days } ngày máy chưa được tháo. Hãy tháo, rửa và khử trùng.

reckon-plate-count = Phòng thí nghiệm: đếm khuẩn lạc trên đĩa
call-plate-count = đếm đĩa
ask-plate-count-rule = Theo quy tắc nào: FDA hay ISO?
ask-plate-count-exponent = Đĩa { $place }: là độ pha loãng mười lần thứ mấy? Một phần trăm là số hai, không pha loãng là số không.
ask-plate-count-kind = Đĩa { $place }: có đếm được không?
ask-plate-count-colonies = Đĩa { $place }: trên đó có bao nhiêu khuẩn lạc?
ask-plate-count-more = Đã ghi đĩa { $place }. Còn đĩa khác không?
pick-fda-rule = quy tắc của Mỹ
pick-iso-rule = tiêu chuẩn quốc tế
pick-counted = tôi đếm được
pick-too-full = dày quá không đếm nổi
pick-overgrown = khuẩn mọc lan
pick-spoiled-plate = hỏng ở phòng thí nghiệm
pick-another-plate = thêm một đĩa
plate-exact = { $amount } đơn vị khuẩn lạc trong một gam.
plate-estimated = { $amount } đơn vị khuẩn lạc trong một gam, ước tính.
plate-less-than = Ít hơn { $amount } đơn vị khuẩn lạc trong một gam.
plate-more-than = Nhiều hơn { $amount } đơn vị khuẩn lạc trong một gam.
plate-spreaders = Không có số đếm, vì khuẩn mọc lan phủ quá nhiều trên mọi đĩa. Hãy cấy lại mẫu.
plate-laboratory-accident = Không có số đếm, vì không đĩa nào dùng được. Hãy cấy lại mẫu.
plate-why-out-of-range = Các đĩa ngoài khoảng { $least } đến { $most } khuẩn lạc không được tính.
plate-why-other-dilution = Các đĩa sau hai độ pha loãng liên tiếp đầu tiên không được tính.
plate-why-spreader = Các đĩa có khuẩn mọc lan hơn một phần tư không được tính.
plate-why-accident = Các đĩa hỏng vì rủi ro không được tính.
plate-why-all-low = Mọi đĩa đều có ít hơn { $least } khuẩn lạc.
plate-why-no-colonies = Không đĩa nào có khuẩn lạc.
plate-why-all-high = Mọi đĩa đều có nhiều hơn { $most } khuẩn lạc.
plate-why-none-in-range = Không đĩa nào có từ { $least } đến { $most } khuẩn lạc.
plate-why-no-number = Đĩa dày nhất không đếm được.
plate-why-present = Có khuẩn lạc, nhưng quá ít để ước tính.

reckon-mpn = Phòng thí nghiệm: số có xác suất lớn nhất
call-mpn = ba ống nghiệm
ask-mpn-tenth = Trong ba ống chứa một phần mười gam, mấy ống dương tính?
ask-mpn-hundredth = Trong ba ống chứa một phần trăm gam, mấy ống dương tính?
ask-mpn-thousandth = Trong ba ống chứa một phần nghìn gam, mấy ống dương tính?
mpn-exact = Số có xác suất lớn nhất là { $amount } trong một gam.
mpn-less-than = Số có xác suất lớn nhất ít hơn { $amount } trong một gam.
mpn-more-than = Số có xác suất lớn nhất nhiều hơn { $amount } trong một gam.
mpn-limits = Với độ tin cậy 95 phần trăm, nó nằm từ { $low } đến { $high }.
mpn-limit-below = Với độ tin cậy 95 phần trăm, nó từ { $low } trở lên.
mpn-improbable = Kết quả các ống này rất khó xảy ra. Có thể đã sai sót, hãy thử lại.

reckon-lot = Phòng thí nghiệm: các mẫu của một lô
call-lot = mẫu của một lô
ask-lot-plan = Kế hoạch lấy mẫu nào?
ask-lot-count = Mẫu { $place }: bao nhiêu đơn vị khuẩn lạc trong một gam?
ask-lot-found = Mẫu { $place }: có tìm thấy không?
pick-eu-ice-cream-enterobacteriaceae = vi khuẩn đường ruột
pick-eu-listeria-shelf-life = listeria tại cửa hàng
pick-eu-listeria-at-producer = listeria trước khi bán
pick-eu-ice-cream-salmonella = salmonella trong kem
pick-found = có tìm thấy
pick-not-found = không thấy gì
lot-satisfactory = Lô đạt yêu cầu.
lot-acceptable = Lô chấp nhận được. Hãy xem lại vệ sinh.
lot-unsatisfactory = Lô không đạt. Hãy gọi quản lý.
lot-unknown = Các mẫu chưa cho biết rõ. Hãy xét nghiệm lại.
lot-above = Số mẫu vượt { $limit }: { $above } trên { $of }. Được phép nhiều nhất { $may }.
lot-above-top = Số mẫu vượt { $limit }: { $above }. Không mẫu nào được phép.
lot-presence = Tìm thấy trong { $found } trên { $of } mẫu. Không mẫu nào được phép.
ask-lot-bound = Mẫu { $place }: phiếu ghi ít hơn bao nhiêu?

reckon-authority = Phòng thí nghiệm: cơ quan sẽ làm gì
call-authority = cơ quan chức năng
ask-authority-who = Giới hạn của ai?
ask-authority-test = Xét nghiệm nào?
ask-authority-product = Mẫu là của sản phẩm nào?
ask-authority-results = Có mấy kết quả gần nhất, vào các ngày khác nhau? Nhiều nhất là năm.
ask-authority-result = Kết quả { $place }, cũ nhất trước: bao nhiêu đơn vị khuẩn lạc?
pick-usda = bộ nông nghiệp Mỹ
pick-iowa = iowa
pick-maryland = maryland
pick-north-carolina = bắc carolina
pick-kansas = kansas
pick-connecticut = connecticut
pick-houston = houston
pick-california-frozen-yogurt = california
pick-grade-a-milk = quy định về sữa
pick-total-count = tổng số vi khuẩn
pick-coliform = khuẩn coliform
pick-enterobacteriaceae = vi khuẩn đường ruột
pick-listeria-monocytogenes = listeria
pick-salmonella = salmonella
pick-yeast = nấm men
pick-mold = nấm mốc
pick-plain = kem không nhân
pick-bulky = trái cây, hạt hoặc sô cô la
pick-sherbet = kem sherbet
pick-frozen-yogurt = sữa chua đông lạnh
pick-mix = kem nền trước khi đông
pick-milk = sữa
authority-clear = Bình thường: { $over } trong { $of } kết quả gần nhất vượt giới hạn.
authority-notice = Thông báo: { $over } trong { $of } kết quả gần nhất vượt giới hạn. Lấy mẫu lại từ 3 đến 21 ngày sau thông báo.
authority-action = Xử lý: { $over } trong { $of } kết quả gần nhất vượt giới hạn. Cơ quan có thể đình chỉ việc bán.
authority-each-clear = Kết quả cuối nằm trong giới hạn.
authority-each-action = Xử lý: kết quả cuối vượt giới hạn, mà không kết quả nào được vượt.
authority-average-kept = Trung bình logarit của bốn kết quả cuối nằm trong giới hạn.
authority-average-over = Xử lý: trung bình logarit của bốn kết quả cuối vượt giới hạn.
authority-limit-g = Giới hạn là { $limit } trong một gam.
authority-limit-ml = Giới hạn là { $limit } trong một mi li lít.
authority-cleared-by = Số ngày lấy mẫu liên tiếp trong giới hạn để trở lại bình thường: { $days }.
authority-rule-not-stated = Cơ quan này không nêu quy tắc cho nhiều kết quả liên tiếp. Đã xét theo hai trong bốn và ba trong năm kết quả gần nhất.
ask-authority-bound = Kết quả { $place }: phiếu ghi ít hơn bao nhiêu?
authority-unknown = Chưa rõ: { $over } trong { $of } kết quả gần nhất chắc chắn vượt giới hạn, và những kết quả khác có thể vượt.
authority-each-unknown = Chưa rõ: kết quả cuối có thể vượt giới hạn.
authority-average-unknown = Chưa rõ: trung bình logarit của bốn kết quả cuối có thể vượt giới hạn.
authority-may-be-action = Có thể đã đến mức xử lý.

reckon-trend = Phòng thí nghiệm: cảnh báo sớm
call-trend = cảnh báo sớm
ask-trend-test = Xét nghiệm nào?
ask-trend-limit = Giới hạn là bao nhiêu đơn vị khuẩn lạc trong một gam?
ask-trend-results = Có mấy kết quả? Ít nhất là tám.
ask-trend-result = Kết quả { $place }, cũ nhất trước: bao nhiêu đơn vị khuẩn lạc?
trend-too-few-results = Có quá ít kết quả để thấy xu hướng.
trend-steady = Các kết quả ổn định.
trend-shift = Trung bình trượt đã vượt giới hạn kiểm soát.
trend-rise = Các kết quả tăng theo thời gian.
trend-early = Chưa kết quả nào vượt { $limit }: hãy xem lại việc rửa xi lanh này ngay.
trend-over = Đã có kết quả vượt { $limit }.
trend-no-chart = Quá ít số đếm khác nhau để lập biểu đồ kiểm soát.
trend-even-days = Các kết quả được coi là cách đều nhau theo thời gian.
trend-needs-scipy = Muốn xem xu hướng cần thư viện scipy, ở đây chưa cài. Cài bằng lệnh: pip install "brushdown[laboratory]".
ask-trend-bound = Kết quả { $place }: phiếu ghi ít hơn bao nhiêu?
pick-below-detection = dưới mức phát hiện
results-left-open = Số kết quả có thể vượt { $limit }, vì phiếu chỉ ghi ít hơn một số cao hơn: { $count }. Hãy cho xét nghiệm ở độ pha loãng thấp hơn.

## Con số của công việc
typed-nothing = Chưa gõ gì. Hãy gõ một con số.
typed-no-number = “{ $text }” không phải là số. Hãy gõ bằng chữ số, ví dụ 38.5.
typed-fraction = “{ $text }” có phân số hoặc chữ số viết nhỏ. Hãy gõ số thập phân, ví dụ 0.5.
typed-two-readings = “{ $text }” có thể đọc là { $first } hoặc { $second }. Hãy gõ { $first } hoặc { $second }.
typed-mixed = “{ $text }” có nhiều hơn một con số. Hãy tính ra một số với một đơn vị.
typed-no-unit = “{ $text }” không có đơn vị. Hãy thêm một trong: { $units }.
typed-unknown-unit = “{ $unit }” không phải đơn vị được biết ở đây. Hãy dùng một trong: { $units }.
typed-ounce = “{ $unit }” là cân nặng, mà ở đây cần thể tích. Hãy gõ fl oz cho ao xơ nước.
typed-negative = { $number } nhỏ hơn 0. Hãy gõ một số từ { $least } đến { $most }.
typed-out-of-range = { $number } không thể đúng. Phải nằm từ { $least } đến { $most }.
typed-no-time = “{ $text }” không phải giờ trong ngày. Hãy gõ như 21:30.
typed-no-such-time = Không có giờ “{ $text }” trong ngày. Giờ cuối là 23:59, với am hoặc pm là 12:59.
typed-twelve = “{ $text }” có thể là nửa đêm hoặc giữa trưa. Hãy gõ { $first } hoặc { $second }.
typed-half-of-day = “{ $text }” có thể là buổi sáng hoặc buổi tối. Hãy gõ { $first } hoặc { $second }.

## Bấm để nói
ear-press-to-talk = Tôi không nghe: bấm { $key } rồi nói
ear-pressed = Tôi đang nghe; bấm { $key } để dừng

refused-press-for-hold = Từ riêng của bạn không trả lời được điểm dừng an toàn. Hãy bấm trên màn hình.

## Thử giọng nói
voice-test-begin = Việc này mất khoảng hai phút. Mặc như khi làm việc, đứng ở chỗ làm việc, và để các máy chạy.
voice-test-speak = 1. Nói trong { $seconds } giây như khi bạn nói với máy hướng dẫn. Bắt đầu.
voice-test-level = Giọng của bạn: { $rms } dB, đỉnh { $peak } dB dưới mức tối đa.
voice-test-silent = 2. Im lặng trong { $seconds } giây. Bắt đầu.
voice-test-noise = { $n ->
    [0] Trong phòng: { $rms } dB. Tiếng ồn không bị nhầm là lời nói.
   *[other] Trong phòng: { $rms } dB. Tiếng ồn bị nhầm là lời nói { $n } lần.
}
voice-test-say = 3. Nói từng câu này khi nó hiện ra.
voice-test-right = đã hiểu
voice-test-wrong = hiểu nhầm là “{ $text }”
voice-test-rejected = không hiểu
voice-test-nothing = không nghe thấy gì
voice-test-count = Trong { $said } câu, { $right } câu được hiểu, { $rejected } câu không được hiểu, và { $wrong } câu bị hiểu nhầm.
voice-test-above = Giọng của bạn to hơn tiếng trong phòng { $decibels } dB.
voice-test-no-ear = { $why }
voice-test-good = Chỗ này đủ tốt để làm bằng lời nói.
voice-test-bad = Chỗ này không đủ tốt để làm bằng lời nói.

spot-nothing-heard = Không nghe thấy lời nói. Xem có đúng micrô không, đã bật chưa, và âm lượng đã đủ lớn chưa.
spot-no-ear = Máy hướng dẫn không có bộ nghe cho ngôn ngữ này. Hãy làm bằng chạm, thêm một mô hình tiếng nói, hoặc dạy nó từ riêng của bạn: kiosk voice teach.
spot-too-loud = Âm lượng micrô quá lớn: những tiếng to nhất bị cắt. Hãy vặn nhỏ lại.
spot-too-faint = Giọng của bạn vào quá nhỏ. Đưa micrô gần miệng hơn, hoặc vặn micrô lớn lên.
spot-nearer = Đưa micrô gần miệng hơn: tốt nhất là cách hai ngón tay ở bên cạnh.
spot-other-place = Ở đây ồn. Hãy thử chỗ khác, hoặc tắt máy và nhạc trong lúc làm.
spot-push-to-talk = Nếu vẫn ồn như vậy, hãy dùng cách bấm để nói: trong site.toml, dưới [hearing], push_to_talk = true.
spot-wrong-heard = Một từ đã bị nhầm với từ khác. Đọc trên màn hình những gì đã nghe trước khi bạn nói đúng rồi.
spot-own-words = Không phải do tiếng ồn. Hãy nói giọng bình thường, đừng chậm hơn; hoặc dạy máy hướng dẫn từ riêng của bạn: kiosk voice teach.
spot-touch = Cho đến lúc đó, hãy làm bằng chạm: bước nào cũng làm được trên màn hình.

## Từ riêng
teach-begin = Dạy máy hướng dẫn từ riêng của bạn, ở chỗ yên tĩnh. Mỗi từ nói ba lần. Chỉ giữ lại âm thanh dưới dạng con số, không giữ bản ghi âm.
teach-word = Từ của bạn cho “{ $word }”:
teach-too-short = Quá ngắn. Hãy nói thêm một lần.
teach-too-long = Quá dài. Hãy nói một từ ngắn.
teach-too-loud = Quá to nên bị cắt. Hãy đưa micrô xa hơn.
teach-too-faint = Quá nhỏ. Hãy đưa micrô gần hơn.
teach-too-noisy = Ở đây quá ồn. Hãy dạy ở chỗ yên tĩnh.
teach-unlike = Nghe khác lần trước. Mỗi lần hãy nói giống nhau.
teach-like-another = Nghe giống một từ khác của bạn. Hãy chọn từ khác.
teach-nothing-heard = Không nghe thấy gì.
teach-given-up = Không dạy được “{ $word }”, nên không giữ gì. Hãy chọn từ dài hơn, hoặc chỗ yên tĩnh hơn, rồi bắt đầu lại.
teach-tried = Trong { $said } lần nói mẫu của bạn, { $right } lần sẽ được hiểu nhờ các lần còn lại.
teach-kept = Từ của bạn được giữ trong { $file }. Đó là dữ liệu về một người: khi không cần nữa, hãy xóa bằng --forget.
teach-holds = Không trả lời điểm dừng an toàn bằng từ riêng được: ở đó bạn nói trọn câu, hoặc bấm.
teach-forgotten = Đã xóa từ riêng của { $worker }.
teach-nothing-kept = Không giữ từ riêng nào của { $worker }.

## Sai lệch
found-problem-open = { $named ->
    [yes] Sự cố, chưa giải quyết trong { $time }: { $reason }. Tại: { $what }
   *[other] Sự cố không nêu lý do, chưa giải quyết trong { $time }. Tại: { $what }
}
found-problem = { $became ->
    [put-right] { $named ->
        [yes] Sự cố: { $reason }. Người làm nói đã xử lý xong và làm tiếp. Tại: { $what }
       *[other] Sự cố không nêu lý do. Người làm đã làm tiếp. Tại: { $what }
    }
    [out-of-service] { $named ->
        [yes] Sự cố: { $reason }. Máy đã ngừng dùng. Tại: { $what }
       *[other] Sự cố không nêu lý do. Máy đã ngừng dùng. Tại: { $what }
    }
   *[other] { $named ->
        [yes] Sự cố: { $reason }. Phiên đã kết thúc. Tại: { $what }
       *[other] Sự cố không nêu lý do. Phiên đã kết thúc. Tại: { $what }
    }
}
found-out-of-service = Máy đã ngừng dùng. Tại: { $what }
found-ended-early = Phiên kết thúc trước khi xong. Tại: { $what }
found-unfinished = Trong { $time } không có gì xảy ra, và phiên chưa kết thúc. Tại: { $what }
found-no-way-in = Không có lối an toàn để đi tiếp. Tại: { $what }
found-hold-touched-after-doubt = Điểm dừng an toàn được bấm sau lời không chắc (“{ $heard }”): { $what }
found-hold-read-back-refused = “{ $heard }” bị hiểu là câu xác nhận, và người làm nói không: { $what }
found-try-out-failed = Thử cho thấy không phải như vậy: { $what }
found-wait-short = { $clock ->
    [wall] Theo đồng hồ treo tường chỉ có { $waited } trong { $needed } trôi qua. Đồng hồ có bị chỉnh không? { $what }
   *[other] Chỉ có { $waited } trong { $needed } trôi qua: { $what }
}
found-wait-cut = Bị ngắt sau { $waited } trong { $needed }: { $what }
found-reading-off = { $told ->
    [yes] { $what }: { $number } nằm ngoài giới hạn ({ $limit }). Việc phải làm: { $corrective } Sau đó chỉ { $then }.
   *[other] { $what }: { $number } nằm ngoài giới hạn ({ $limit }). Không nêu việc phải làm. Sau đó chỉ { $then }.
}
found-reading-left-off = { $told ->
    [yes] { $what }: { $number } nằm ngoài giới hạn ({ $limit }), và sau đó không số đo nào đạt. Việc phải làm: { $corrective }
   *[other] { $what }: { $number } nằm ngoài giới hạn ({ $limit }), và sau đó không số đo nào đạt. Không nêu việc phải làm.
}
found-count-off = { $told ->
    [yes] { $what }: đếm được { $number } ({ $limit }). Việc phải làm: { $corrective } Sau đó đếm được { $then }.
   *[other] { $what }: đếm được { $number } ({ $limit }). Sau đó đếm được { $then }.
}
found-count-left-off = { $told ->
    [yes] { $what }: đếm được { $number } ({ $limit }), và không được sửa. Việc phải làm: { $corrective }
   *[other] { $what }: đếm được { $number } ({ $limit }), và không được sửa.
}
found-passes-ran-out = Sau lượt { $number } vẫn chưa đạt: { $what }
found-too-fast = Xác nhận sau { $time }, mà việc này mất từ { $least } trở lên: { $what }
found-none-in-stock = Không có linh kiện thay: { $what }
found-shorter-than-usual = Phiên mất { $time }. Giá trị giữa của { $number } phiên trước là { $usual }.
found-longer-than-usual = Phiên mất { $time }. Giá trị giữa của { $number } phiên trước là { $usual }.
found-restarted = { $power ->
    [cut] Máy tính đã khởi động lại; phiên đứng yên trong { $time }. Tại: { $what }
   *[other] Máy hướng dẫn đã khởi động lại; phiên đứng yên trong { $time }. Tại: { $what }
}
found-back-step = Lùi từ “{ $what }” về “{ $to }”.
found-touch-only = Cả { $number } bước được xác nhận bằng chạm, dù bộ nghe ở máy này hoạt động.
found-text-unknown = Văn bản của { $procedure }, phiên bản { $version } ({ $digest }), không còn ở đây. Không xét được hết tốc độ, thời gian và linh kiện.
found-session-early = { $machine }, { $day }: { $duty ->
    [close] việc buổi tối
    [open] việc buổi sáng
   *[other] { $title }
} đã xong lúc { $at }, rất lâu trước giờ của nó ({ $begins } đến { $until }).
found-session-late = { $machine }, { $day }: { $duty ->
    [close] việc buổi tối
    [open] việc buổi sáng
    [check] kiểm tra trong ngày
   *[other] { $title }
} đã xong lúc { $at }. Giờ của nó là { $begins } đến { $until }.
found-session-not-finished = { $machine }, { $day }: { $duty ->
    [close] việc buổi tối
    [open] việc buổi sáng
    [check] kiểm tra trong ngày
   *[other] { $title }
} đã bắt đầu mà chưa xong; lần cuối làm lúc { $at }. Giờ của nó là { $begins } đến { $until }.
found-session-never-started = { $machine }, { $day }: { $duty ->
    [close] việc buổi tối
    [open] việc buổi sáng
    [check] kiểm tra trong ngày
   *[other] { $title }
} không ai bắt đầu. Giờ của nó là { $begins } đến { $until }.
found-overdue = { $machine }: { $duty ->
    [sample] mẫu phòng thí nghiệm
   *[other] { $title }
} đến hạn ngày { $day } mà chưa được ghi.
due-close = Việc buổi tối: { $machine }
due-open = Việc buổi sáng: { $machine }
due-check = Kiểm tra trong ngày: { $machine }
due-sample = Mẫu phòng thí nghiệm: { $machine }
due-other = { $title }: { $machine }

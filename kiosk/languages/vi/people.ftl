### Ai được làm gì, và mã PIN. Bản nháp do máy dịch.
### reviewed: no

## Lời để nói.
say-witness = người thứ hai đã đến

## Các màn hình mã PIN.
pin-ask = { $who }, nhập mã PIN của bạn.
pin-invented = (cửa hàng được bịa ra: mã PIN { $pin })
pin-new = { $who }, nhập mã PIN mới: 4 đến 12 chữ số.
pin-again = Nhập lại đúng các chữ số đó.
pin-is-set = { $who } đã có mã PIN mới.
pin-for-begin = để bắt đầu
pin-for-take-over = để làm tiếp thay
pin-for-witness = với tư cách người thứ hai
pin-for-stand-by = để đứng cạnh người học việc
pin-for-sign = để ký
pin-for-review = để xem hồ sơ
pin-for-set-pin = để đặt mã PIN
which-supervisor = Quản lý nào?
no-supervisor = Trong danh sách của nơi này không có quản lý nào làm được việc đó.
who-witnesses = Người thứ hai là ai?
whose-pin = Mã PIN của ai?
who-vouches = Ai bảo đảm?
pin-by-old-one = bằng mã PIN cũ
pin-by-supervisor = có quản lý bảo đảm

## Bảng chính.
to-practise = tập làm
to-set-pin = đặt mã PIN
practise-or-pin = Bạn muốn làm gì?
practice-is = được đánh dấu là tập làm, để riêng khỏi việc thật
practice-board = Tập làm: việc làm thật không được ghi ở đây.
back-to-work = trở lại việc thật
with-a-supervisor = có quản lý bên cạnh

## Vì sao một việc không được làm.
refused-pin-first = Cần mã PIN của bạn trước.
refused-supervisor-first = Phải có quản lý đứng cạnh và nhập mã PIN trước.
refused-not-on-list = Không có trong danh sách của nơi này.
refused-not-your-walk = Không phải quy trình mà người này được làm.
refused-trainee-no-witness = Người học việc không thể là người thứ hai.
refused-own-work = Không ai ký việc của chính mình. Phải có quản lý khác xem.
refused-supervisors-only = Chỉ quản lý được làm việc đó.
refused-pin-wrong = Mã PIN không đúng. Thử lại.
refused-pin-wait = Sai quá nhiều lần. Còn { $time } mới được thử tiếp.
refused-pin-closed = Mã PIN này đã bị khóa vì sai quá nhiều lần. Quản lý phải đặt mã mới.
refused-no-pin-set = { $person } chưa có mã PIN. Quản lý có thể đặt trên bảng chính, hoặc dùng lệnh 'kiosk people pin { $person }'.
refused-pins-unreadable = Bây giờ không kiểm tra được mã PIN. { $reason }
refused-pin-not-written = Không ghi lại được, nên chưa làm gì. { $reason }
refused-pin-length = Mã PIN có từ { $least } đến { $most } chữ số.
refused-pin-easy = Mã PIN đó quá dễ đoán. Hãy chọn chữ số khác.
refused-pin-differs = Hai lần nhập khác nhau. Nhập mã PIN mới thêm một lần.

## kiosk people
people-nobody = { $person } không có trong danh sách của nơi này. Có: { $known }.
people-ask-pin = Mã PIN mới cho { $who } ({ $person }), không hiện ra:
people-ask-again = Lần nữa:
people-pin-set = { $who } ({ $person }) đã có mã PIN mới.
people-pin-yes = có mã PIN
people-pin-no = không có mã PIN
people-role-worker = người làm
people-role-trainee = người học việc
people-role-supervisor = quản lý
people-walks-all = làm được mọi quy trình
people-walks = làm được { $procedures }
people-erased = Đã xóa của { $person }: tên, mã PIN, từ riêng, và lời của { $n } ghi chú. Nhật ký giữ mã số của người này, và ghi lại việc xóa.
people-kept-over = Đã xóa vì giữ đủ lâu: { $names } tên, { $remarks } ghi chú.
people-nothing-over = Không có gì được giữ lâu hơn thời gian nơi này đặt ra.

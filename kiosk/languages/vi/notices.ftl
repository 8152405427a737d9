### Điều trục trặc của giọng nói, bộ nghe và nhật ký, và dấu hiệu bất thường của một phiên. Bản nháp do máy dịch.
### reviewed: no

## Loa và giọng nói.
sound-no-library = không có thư viện âm thanh: hãy cài libasound2 hoặc libpulse0
speaker-none = không có thiết bị âm thanh ({ $reason })
speaker-not-started = thiết bị âm thanh không khởi động ({ $reason })
speaker-takes-nothing = thiết bị âm thanh không nhận âm thanh trong { $seconds } s
speaker-no-way = không có cách phát âm thanh: hãy cài alsa-utils, trong đó có 'aplay'
speaker-no-player = không khởi động được 'aplay': { $reason }
speaker-failed = thiết bị âm thanh bị lỗi ({ $reason })
speaker-stopped = loa không nhận âm thanh nữa
prompt-unreadable = không đọc được câu nói ở { $file }: { $reason }
prompts-not-kept = không dùng được thư mục câu nói { $folder } ({ $reason }); hãy cho phép ghi
prompt-not-kept = không giữ được câu nói trong { $folder }: { $reason }; hãy giải phóng chỗ trống
speech-no-voice = không có giọng cho ngôn ngữ '{ $language }'; có giọng cho { $known }
speech-no-letter = văn bản { $text } trống: không có chữ hay số nào để nói
speech-too-long = văn bản { $text }... có { $length } ký tự; hãy chia ra, mỗi lần nói nhiều nhất { $most }
speech-ended-twice = bộ nói tắt hai lần ở văn bản này: { $reason }
speech-no-answer = bộ nói không trả lời trong { $seconds } s; đã tắt nó
speech-not-started = không khởi động được bộ nói: { $reason }
speech-install-again = { $reason }; hãy cài lại gói
speech-failed = bộ nói bị lỗi: { $reason }

## Micrô và bộ nghe.
microphone-no-library = ở đây chưa cài thư viện âm thanh miniaudio
microphone-none = không có micrô ({ $reason })
microphone-no-answer = hệ thống âm thanh không trả lời trong { $seconds } giây
microphone-ended = âm thanh đã dứt: micrô còn cắm không?
ear-stopped = bộ nghe dừng lại: { $reason }
ear-failed-once = bộ nghe { $ear } bị lỗi ở một câu nói: { $reason }
ear-not-whole = { $more ->
    [0] { $model } trong { $place } không đủ: thiếu { $missing }. Để sửa: { $mend }
   *[other] { $model } trong { $place } không đủ: thiếu { $missing } và { $more } tệp nữa. Để sửa: { $mend }
}
ear-mend-remove = xóa thư mục đó, rồi { $mend }
ear-needs-package = { $model } cần một gói chưa có ({ $package }). Để sửa: { $mend }
ear-not-loaded = không nạp được { $model } ({ $reason }). Để sửa: { $mend }
ear-none-listed = không có mô hình tiếng nói nào cho '{ $language }' trong models.toml
ear-none-installed = chưa cài mô hình tiếng nói nào cho '{ $language }'. Để sửa: { $mend }
ear-mend-or = { $one } hoặc { $other }
notice-and = { $one }; { $other }
own-words-unreadable = không đọc được từ riêng trong { $file } ({ $reason }); hãy dạy lại bằng '{ $command }'

## Nhật ký.
not-recorded = Không ghi được nhật ký, nên chưa có gì được ghi và chưa có gì thay đổi.
see-the-screen = Màn hình cho biết phải làm gì.
journal-full = Ổ đĩa đã đầy: { $file }. Giải phóng chỗ trống, rồi thử lại.
journal-two-kiosks = Hai máy hướng dẫn cùng làm việc trong { $folder }. Đóng một máy, rồi thử lại.
journal-moved = { $file } hoặc { $log } bị dời đi khi đang mở. Đặt lại chỗ cũ, rồi thử lại.
journal-swallowed = { $file }: những gì đã ghi không có ở đó. Hãy gọi quản lý: phải dùng tiếp bản sao lưu.
journal-read-only = Không được phép ghi vào { $file }: { $reason }. Hãy gọi quản lý: phải cho phép ghi.
journal-busy = Chương trình khác đang giữ { $file }. Đóng nó, rồi thử lại.
journal-damaged = { $file } bị hỏng: { $reason }. Hãy gọi quản lý: phải dùng tiếp bản sao lưu.
journal-failed = { $file }: { $reason }. Hãy gọi quản lý, rồi thử lại.
row-unknown = không đọc được một dòng loại '{ $kind }': { $reason }
session-without-beginning = phiên { $session } không có phần bắt đầu trong nhật ký
result-unreadable = không đọc được kết quả { $result }: { $reason }
file-failed = { $file }: { $reason }

## Mã PIN.
pins-unusable = không dùng được { $file }: { $why }. Để sửa: cho phép đọc, hoặc dời nó đi và đặt lại mã PIN bằng 'kiosk people pin ID'.
pins-damaged = mục của '{ $person }' bị hỏng
pins-no-list = đó không phải danh sách mã băm
pins-not-written = không ghi được { $file }: { $reason }

## Dấu hiệu bất thường của một phiên.
sign-waited = đã đợi { $waited } trong { $needed }
sign-filled = việc tiếp xúc bắt đầu { $after } sau khi đọc giấy thử: quá sớm để đổ đầy và làm ướt hết ({ $least })
sign-weak = giấy thử chỉ { $value }, mà ít nhất là { $least }
sign-weak-mended = giấy thử chỉ { $value }, mà ít nhất là { $least }; sau { $after } chỉ { $then }
sign-weak-too-soon = giấy thử chỉ { $value }, mà ít nhất là { $least }; sau { $after } chỉ { $then }: quá sớm để pha mới ({ $needed })
sign-warm = kem nền ở { $value }
sign-warm-cooled = kem nền ở { $value }, sau { $after } ở { $then }
sign-warm-too-soon = kem nền ở { $value }, sau { $after } ở { $then }: không phễu nào nguội nhanh vậy ({ $needed })
sign-worn = { $part }: thấy mòn { $days } ngày trước, kho không có, từ đó chưa thay
sign-new = phiên thứ { $nth } của một người làm mới ({ $who })
sign-late = việc buổi tối bắt đầu { $hours } sau giờ đóng cửa
sign-early = { $ended ->
    [ended-early] phiên kết thúc sớm
    [out-of-service] máy đã ngừng dùng
   *[open] phiên chưa kết thúc
}; bước cuối: { $step }
sign-doubts = điểm dừng an toàn được trả lời không chắc: { $holds }
sign-missed = đêm này không ghi việc buổi tối của máy, dù máy đang sẵn sàng phục vụ (hoặc không dùng máy hướng dẫn)

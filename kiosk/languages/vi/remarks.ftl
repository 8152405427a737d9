### Ghi chú bằng lời về sự cố. Bản nháp do máy dịch.
### reviewed: no

## Lời để nói.
say-remark = để lại ghi chú
say-remark-keep = giữ bản này
say-remark-again = thu âm lần nữa

## Trong lúc thu.
remark-speak-now = Hãy nói: có sự cố gì?
remark-ends = Tự kết thúc khi bạn im lặng, hoặc sau { $most }.
remark-done = xong
remark-waits = sắp thu
remark-records = đang thu
remark-level = mức âm
remark-ear-closed = Tôi đang thu, nên lời bạn nói bây giờ không phải là lệnh.

## Sau đó.
remark-keep = Giữ ghi chú dài { $time } này không?
remark-full = Một ghi chú dài nhất là { $most }, nên nó kết thúc ở đây.
remark-no-speech = Tôi không thấy lời nói trong đó.
remark-empty = Không thu được gì.
remark-microphone-gone = Micrô không còn cho âm thanh.
remark-kept = Đã giữ ghi chú dài { $time } của bạn.
remark-not-kept = Không giữ được ghi chú của bạn. { $why }

## Khi xem lại hồ sơ.
remark-left = Ghi chú bằng lời của { $who }, { $time }
remark-hash = SHA-256 của âm thanh: { $hash }
remark-erased-by = Âm thanh đã bị xóa lúc { $at }; { $by } yêu cầu.
remark-erased-by-time = Âm thanh đã bị xóa lúc { $at }, vì ghi chú không được giữ lâu hơn ở đây.
remark-play = phát một ghi chú
remark-stop = ngừng phát
remark-which = Ghi chú nào?
remark-playing = Đang phát ghi chú của { $who }, { $time }.
remark-cannot-play = Không phát được. { $why }
remark-is-missing = Trong thư mục dữ liệu của máy hướng dẫn này không có âm thanh nào có mã băm đó.
remark-is-altered = Âm thanh trong thư mục dữ liệu không phải âm thanh đã thu: mã băm của nó khác.
remark-is-unreadable = Không đọc được âm thanh trong thư mục dữ liệu.
remark-no-player = Máy hướng dẫn này không có trình phát cho nó.

## kiosk people
remark-sounds-erased = Âm thanh của { $n } ghi chú bằng lời cũng đã bị xóa; nhật ký giữ mã băm.

## Báo cáo.
report-spoken-remark = ghi chú bằng lời
report-spoken-told = { $who }, { $time }; SHA-256 của âm thanh { $hash }
report-spoken-erased-by = âm thanh bị xóa { $at }, do { $by } yêu cầu
report-spoken-erased-by-time = âm thanh bị xóa { $at }, vì ghi chú không được giữ lâu hơn

## Tờ dán tường.
quick-remark = Khi có sự cố: kể bằng lời của bạn. Quản lý có thể nghe sau.

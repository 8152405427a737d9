### Nhật ký dùng làm bằng chứng.
### reviewed: no
record-disagrees = Nhật ký không khớp với những gì máy hướng dẫn này đã ký. Hãy báo cho quản lý; không xóa gì cả.
record-unsigned = Hiện không ký được nhật ký. Mọi thứ vẫn được ghi. Hãy báo cho quản lý.
record-second-place = Không thấy nơi thứ hai giữ các mốc của nhật ký. Hãy cắm lại thẻ nhớ. Mọi thứ vẫn được ghi.

### Máy hướng dẫn trên máy tính bảng: ghép màn hình, đứng xem, giành quyền. Bản nháp do máy dịch.
### reviewed: no

pairing-code = Để ghép thêm màn hình: mã { $code }.
pairing-closed = Sai mã quá nhiều lần: không ghép được màn hình nào cho đến khi máy hướng dẫn khởi động lại.
pairing-ask = Nhập mã hiện trên bảng chính của máy hướng dẫn.
pairing-wrong = Đó không phải mã trên bảng chính. Hãy xem lại: có thể mã đã đổi.
pairing-wait = Sai mã quá nhiều lần. Đợi { $seconds } giây, rồi nhập mã trên bảng chính.
pairing-give = Ghép
pairing-rub-out = Xóa
screen-lost = Mất kết nối với máy hướng dẫn. Những gì đã xác nhận vẫn được giữ. Đang thử lại.
screen-watches = Bạn đang xem. Màn hình khác đang giữ máy hướng dẫn.
screen-hidden = Đang nhập mã PIN, hoặc đang xem thứ được mã PIN bảo vệ. Chỉ hiện trên màn hình kia.
screen-take-over = Giành quyền
screen-keyboard = Bàn phím
screen-not-taken = Màn hình không giành quyền được: { $why }

### Lời của máy hướng dẫn bằng tiếng Việt. Bản nháp do máy dịch; chưa có người bản ngữ xem lại.
### reviewed: no

ear-no-sound = Không có âm thanh từ micrô. Micrô đã cắm và đã bật chưa?

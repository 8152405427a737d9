### reviewed: no
# Lời ở dòng dưới màn hình khi một buổi tối bịa ra tự diễn.
crew-evening = Một buổi tối bịa ra, tự diễn: { $who } đóng một cái máy không có thật. Ctrl+Q để dừng.
crew-says = { $who } nói: “{ $phrase }”
crew-presses = { $who } bấm: “{ $phrase }”
crew-next-passes-no-hold = Đây là chốt an toàn. { $who } mệt, chỉ nói từ quen miệng: ở đây không được tính.
crew-short-press-passes-no-hold = Bấm ngắn cũng không qua được chốt an toàn.
crew-read-back = Máy nói lại điều nó hiểu và chờ tiếng có.
crew-power-cut = Máy hướng dẫn mất điện, giữa một bước.
crew-cut-is-over = Máy hướng dẫn bật lại. Bảng cho thấy việc chưa xong; sổ ghi không mất gì.
crew-problem = Có gì không ổn: { $who } báo sự cố và mọi thứ dừng lại.
crew-holds-again = Trước khi làm tiếp, máy hỏi lại những gì có thể đã thay đổi.
crew-one-is-missing = { $who } đếm thiếu một vòng đệm. Nếu không đếm, nó nằm trong máy hoặc trong cây kem.
crew-other-language = Người khác làm nốt, bằng tiếng khác. Điều an toàn được hỏi lại với người đang ở đó.
crew-time-passes = Thời gian trôi nhanh hơn thật.
crew-written = Mỗi câu trả lời nằm trong sổ ghi, kèm giờ và cách trả lời.
crew-evening-over = Buổi tối là như vậy. Sáng ra người giám sát xem lại.

### reviewed: no
# Những gì làm được ở đây, cho ai hỏi.
help = trợ giúp
say-help = tôi nói được gì / trợ giúp
help-say = Bạn có thể nói: { $list }.
help-number = Bạn cũng có thể nói con số, hoặc bấm nó.
help-hold = Điểm dừng an toàn cần đúng lời của nó, nói trọn câu, hoặc bấm nút của nó và giữ.
help-hurt = Có ai bị thương không? Rời máy, gọi người giúp, và nếu bị hóa chất bắn thì làm theo nhãn sản phẩm.
help-board = Bấm một máy để làm việc đến hạn của nó, hoặc kiểm tra trong ngày. Việc bỏ dở có dấu riêng và chờ làm tiếp. Rồi bấm người làm. Máy hướng dẫn chỉ dẫn và ghi lại; nó không thay cho việc khóa nguồn điện.
help-list = Bấm điều bạn muốn, hoặc số của nó trên bàn phím. Chưa có gì được ghi.
help-summary = Đây là những gì đã vào nhật ký. Hãy đọc, rồi trở về các máy.
or-say = Bấm, hoặc nói: { $phrase }.

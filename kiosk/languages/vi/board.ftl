### Bảng: ai đang đứng đó, việc gì phải làm và đến khi nào. Bản nháp do máy làm.
### reviewed: no

board-greeting = { $part ->
    [morning] Chào buổi sáng, { $who }
    [day] Chào buổi chiều, { $who }
   *[evening] Chào buổi tối, { $who }
}
sign-in = chọn tên
sign-in-who = Ai đang ở đây?
sign-out = tôi rời đi
sign-out-or-other = rời đi hoặc đổi
board-due-from = { $what }: từ { $at }
board-due-by = { $what }: trước { $at }
board-in = sau { $time }
board-left = còn { $time }
board-overdue = ! Quá hạn từ { $at }: { $what }
board-never = { $what }: nửa năm qua chưa ghi lần nào
help-board-more = Hãy chọn tên, rồi việc bạn bấm sẽ bắt đầu với bạn, bằng tiếng của bạn; nơi nào hỏi mã PIN thì vẫn hỏi. Sau mười phút không chạm, không còn ai được chọn nữa. Trên mỗi máy có ghi việc phải làm từ khi nào, hoặc trước khi nào.

### reviewed: no
# Tờ những lời có thể nói.
quick-title = Nói gì với máy hướng dẫn
quick-no-lockout = Máy hướng dẫn chỉ dẫn và ghi lại. Nó không thay cho việc khóa nguồn điện; sách hướng dẫn máy và nhãn sản phẩm được ưu tiên.
quick-say-it = Nói, hoặc bấm
quick-next = Bước đã xong; đi tiếp. Bước nào cần hơn thế thì màn hình hiện lời cần nói.
quick-repeat = Nghe lại câu hỏi.
quick-back = Lùi một bước.
quick-problem = Dừng: nói có sự cố gì, rồi nghe phải làm gì.
quick-pause = Tạm rời việc. Sau đó các điểm dừng an toàn được hỏi lại.
quick-continue = Làm tiếp sau khi nghỉ hoặc sau sự cố.
quick-hand-over = Người khác làm tiếp. Các điểm dừng an toàn được hỏi lại.
quick-reckon = Nhờ tính liều lượng, thời gian, ngày hoặc số đếm.
quick-language = Làm tiếp bằng ngôn ngữ khác.
quick-help = Nghe ở bước này nói được gì.
quick-end = Kết thúc sớm. Máy hướng dẫn nói những gì người tiếp theo phải biết.
quick-whole = Nói trọn câu, và đợi máy hướng dẫn nói xong.
quick-hold = Ở điểm dừng an toàn: làm việc đó, nói đúng lời của nó, trả lời câu hỏi được đọc lại, rồi thử.
quick-number = Nói con số như trên màn hình, và khi được đọc lại đúng thì trả lời đúng rồi.
quick-loud = Quá ồn, hoặc hai lần không hiểu? Hãy bấm nút. Mọi thứ đều bấm được.
quick-touch = Găng ướt: chạm một lần rồi nhấc tay. Nút của điểm dừng an toàn thì giữ đến khi nó báo đã đủ.

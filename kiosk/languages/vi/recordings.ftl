### Ghi âm lời hướng dẫn bằng giọng của người trong nhóm. Bản nháp do máy viết; cần người nói tiếng Việt kiểm tra.
### reviewed: no

recording-begin = Cần ghi âm { $count } câu. Hãy đọc to từng câu đúng như đã viết, như khi nói với đồng nghiệp. Lần ghi kết thúc sau hai giây im lặng. Mọi người làm việc bằng ngôn ngữ này sẽ nghe giọng của bạn.
recording-ready = Enter: ghi âm. s: bỏ qua. q: dừng.
recording-speak = Hãy nói bây giờ.
recording-level = thấp hơn mức tối đa { $decibels } dB, { $seconds } giây
recording-flaw-silent = Không nghe thấy gì. Hãy xem có đúng micrô không, đã bật và đã tăng âm chưa.
recording-flaw-quiet = Nhỏ quá. Hãy lại gần hơn hoặc tăng âm micrô.
recording-flaw-clipped = To quá: âm to nhất bị cắt. Hãy lùi ra hoặc giảm âm micrô.
recording-flaw-begins-cut = Phần đầu bị cắt. Hãy chờ “Hãy nói bây giờ” rồi mới nói.
recording-flaw-ends-cut = Phần cuối bị cắt. Hãy nói không nghỉ lâu, rồi giữ im lặng.
recording-flaw-noisy = Ở đây ồn. Chỗ yên hơn thì tốt hơn.
recording-flaw-short = Quá ngắn so với câu này. Bạn đã đọc cả câu chưa?
recording-flaw-long = Quá dài so với câu này. Bạn chỉ đọc câu này thôi chứ?
recording-keep = Enter: giữ. a: ghi lại. s: bỏ qua. q: dừng.
recording-not-kept = Không thể giữ như vậy. Enter: ghi lại. s: bỏ qua. q: dừng.
recording-not-played = Ở đây không phát lại được. { $why }
recording-no-sound = Không còn âm thanh. Micrô còn cắm không?
recording-done = Đã giữ: { $kept }. Còn phải ghi: { $left }.
recording-all-there = Mọi câu đã được ghi âm. Để ghi lại, thêm --again.
recording-recorded = đã ghi
recording-missing = còn thiếu
recording-stale = không còn nói nữa
recording-standing = Đã ghi: { $recorded }. Còn thiếu: { $missing }. Không còn nói nữa: { $stale }.
recording-erased = Đã xóa { $n } câu đã ghi âm.
recording-folder = Không thể giữ, đọc hoặc xóa bản ghi âm trong { $folder } ({ $reason }). Hãy cho phép ghi vào thư mục đó và giải phóng chỗ trống.

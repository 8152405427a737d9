### Văn bản do máy soạn, và ai đã kiểm tra. Bản nháp do máy làm.
### reviewed: no

texts-drafted = { $language }: { $n } văn bản do máy soạn, chưa ký: { $left }
texts-signed-by = { $who } đã ký, { $at }: { $n } văn bản
texts-left = câu hiện tại chưa được ký: { $where }
texts-nothing-left = Không còn gì để ký.
texts-signed = { $who } đã ký { $n } văn bản. Chưa ký: { $left }. Khi không còn gì, dấu “{ $mark }” sẽ mất khỏi màn hình ở lần khởi động sau.
texts-withdrawn = Số chữ ký đã rút lại: { $n }.

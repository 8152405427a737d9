### 문제에 남기는 음성 메모. 기계 번역 초안.
### reviewed: no

say-remark = 음성 메모 남기기
say-remark-keep = 저장해 주세요
say-remark-again = 처음부터 녹음

remark-speak-now = 지금 말하세요. 무엇이 잘못되었습니까?
remark-ends = 말을 멈추면 저절로 끝나고, 길어도 { $most } 뒤에 끝납니다.
remark-done = 다 말했습니다
remark-waits = 곧 녹음합니다
remark-records = 녹음 중
remark-level = 소리 크기
remark-ear-closed = 녹음 중이므로 지금 하는 말은 명령이 아닙니다.

remark-keep = { $time } 길이의 이 메모를 저장할까요?
remark-full = 메모 하나는 { $most }까지이므로 여기서 끝났습니다.
remark-no-speech = 말소리를 찾지 못했습니다.
remark-empty = 아무것도 녹음되지 않았습니다.
remark-microphone-gone = 마이크에서 소리가 더 들어오지 않습니다.
remark-kept = { $time } 길이의 메모를 저장했습니다.
remark-not-kept = 메모를 저장하지 못했습니다. { $why }

remark-left = { $who } 님의 음성 메모, { $time }
remark-hash = 소리의 SHA-256: { $hash }
remark-erased-by = 소리는 { $at }에 지워졌습니다. 요청한 사람: { $by }.
remark-erased-by-time = 소리는 { $at }에 지워졌습니다. 이곳의 메모 보관 기간이 끝났습니다.
remark-play = 메모 듣기
remark-stop = 그만 듣기
remark-which = 어느 메모입니까?
remark-playing = { $who } 님의 메모를 들려줍니다, { $time }.
remark-cannot-play = 들을 수 없습니다. { $why }
remark-is-missing = 이 키오스크의 데이터 폴더에 이 해시의 소리가 없습니다.
remark-is-altered = 데이터 폴더의 소리가 녹음된 것이 아닙니다. 해시가 다릅니다.
remark-is-unreadable = 데이터 폴더의 소리를 읽을 수 없습니다.
remark-no-player = 이 키오스크에는 재생할 장치가 없습니다.

remark-sounds-erased = 음성 메모 { $n }개의 소리도 지웠습니다. 기록에는 해시가 남습니다.

report-spoken-remark = 음성 메모
report-spoken-told = { $who }, { $time }; 소리의 SHA-256 { $hash }
report-spoken-erased-by = 소리 삭제 { $at }, 요청한 사람 { $by }
report-spoken-erased-by-time = 소리 삭제 { $at }, 메모 보관 기간이 끝남

quick-remark = 문제가 있을 때: 자기 말로 남깁니다. 관리자가 나중에 들을 수 있습니다.

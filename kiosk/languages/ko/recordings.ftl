### 동료의 목소리로 안내를 녹음하는 말. 기계가 초안을 썼고 한국어를 아는 사람의 확인이 필요합니다.
### reviewed: no

recording-begin = 녹음할 문장이 { $count }개입니다. 적힌 그대로, 동료에게 말하듯이 소리 내어 읽으세요. 2초 동안 조용하면 녹음이 끝납니다. 이 언어로 일하는 모든 사람이 당신의 목소리를 듣습니다.
recording-ready = Enter: 녹음. s: 건너뛰기. q: 끝내기.
recording-speak = 지금 말하세요.
recording-level = 최대보다 { $decibels }데시벨 낮음, { $seconds }초
recording-flaw-silent = 아무 소리도 들리지 않았습니다. 마이크가 맞는지, 켜져 있는지, 소리를 올렸는지 보세요.
recording-flaw-quiet = 너무 작습니다. 가까이 오거나 마이크 소리를 올리세요.
recording-flaw-clipped = 너무 큽니다. 큰 소리가 잘립니다. 떨어지거나 마이크 소리를 낮추세요.
recording-flaw-begins-cut = 시작이 잘렸습니다. “지금 말하세요”를 기다린 뒤에 시작하세요.
recording-flaw-ends-cut = 끝이 잘렸습니다. 오래 쉬지 말고 말한 뒤에 조용히 하세요.
recording-flaw-noisy = 여기는 시끄럽습니다. 더 조용한 곳이 좋습니다.
recording-flaw-short = 이 문장으로는 너무 짧습니다. 문장 전체를 읽었습니까?
recording-flaw-long = 이 문장으로는 너무 깁니다. 이 문장만 읽었습니까?
recording-keep = Enter: 저장. a: 다시. s: 건너뛰기. q: 끝내기.
recording-not-kept = 이대로는 저장할 수 없습니다. Enter: 다시. s: 건너뛰기. q: 끝내기.
recording-not-played = 여기서는 다시 들을 수 없습니다. { $why }
recording-no-sound = 소리가 더 들어오지 않습니다. 마이크가 아직 꽂혀 있습니까?
recording-done = 저장: { $kept }개. 남은 녹음: { $left }개.
recording-all-there = 모든 문장이 녹음되어 있습니다. 새로 녹음하려면 --again을 붙이세요.
recording-recorded = 녹음됨
recording-missing = 없음
recording-stale = 이제 쓰지 않음
recording-standing = 녹음됨 { $recorded }개. 없음 { $missing }개. 이제 쓰지 않음 { $stale }개.
recording-erased = 녹음한 문장 { $n }개를 지웠습니다.
recording-folder = { $folder }의 녹음을 저장하거나 읽거나 지울 수 없습니다({ $reason }). 그 폴더에 쓸 수 있게 하고 공간을 비우세요.

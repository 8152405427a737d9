### 종이 보고서.
### reviewed: no

report-title-day = 하루 보고서
report-title-month = 월 보고서
report-title-folder = 점검용 서류철
report-practice = 연습: 지어낸 가게이거나 예행연습입니다. 실제 작업의 기록이 아닙니다.
report-drafted = 이 보고서의 문장은 기계가 초안을 썼습니다. 아직 능숙한 사람이 확인하지 않았습니다.

## 작업 하나 또는 며칠에 대하여
report-session = 작업
report-shop = 가게
report-machine = 기계
report-procedure = 절차
report-text = 따라 한 글
report-version = { $version }판, 요약값 { $digest }
report-workers = 작업자
report-begun = 시작
report-last-event = 마지막 기록
report-how-ended = 끝난 모습
report-ended = { $how ->
    [complete] 끝까지 마침
    [ended-early] 중간에 끝냄
    [out-of-service] 끝냄, 기계 사용 중지
   *[open] 끝나지 않음
}
report-length = 걸린 시간
report-minutes = { $minutes }분
report-usual-length = 평소 시간
report-usual = { $minutes }분: 앞선 작업 { $count }번의 중앙값
report-usual-none = 견줄 앞선 작업이 없음
report-confirmed-steps = 확인된 단계
report-signed = 서명
report-signed-not = 관리자의 서명이 없습니다.
report-signed-off = { $person } 확인 서명, { $at }
report-signed-back = { $person } 돌려보냄, { $at }
report-left-unsafe = 끝날 때 다음 사람에게 알려야 했던 것: { $what }.
report-text-unknown = 절차가 그때의 글과 다릅니다. 문장, 단계의 종류, 필요한 시간을 보여 줄 수 없습니다.
report-days = 영업일
report-days-mean = 시작한 작업
report-days-begun = { $first }부터 { $until }까지; 영업일은 문을 닫고 여는 시각의 한가운데에서 바뀝니다
report-sessions = 작업
report-sessions-complete = 끝까지 마친 작업
report-sessions-signed = 확인 서명된 작업
report-sessions-sent-back = 돌려보낸 작업
report-due = 해야 할 일
report-due-in-time = 제때 마침
report-due-missed = 빠뜨림
report-readings = 측정값
report-readings-off = 한계를 벗어난 측정값
report-deviations = 벗어난 것
report-steps = 단계
report-beside = 단계 밖의 일
report-signing = 서명
report-laboratory = 검사실 결과
report-parts = 부품
report-people = 사람
report-procedures = 절차
report-figures = 그림

## 열
report-column-rows = 행
report-column-time = 시각
report-column-day = 날
report-column-step = 단계
report-column-answer = 답과 한계
report-column-how = 답한 방법
report-column-who = 누가
report-column-what = 무엇
report-column-told = 기록된 것
report-column-at-step = 단계 이름
report-column-weight = 무게
report-column-deviation = 벗어난 것
report-column-why-seen = 보아야 하는 까닭
report-column-source = 규칙의 출처
report-column-session = 작업
report-column-count = 수
report-column-machine = 기계
report-column-measured = 잰 것
report-column-value = 값
report-column-limit = 한계와 출처
report-column-kept = 지킴
report-column-least = 최저
report-column-middle = 중앙
report-column-most = 최고
report-column-off = 벗어남
report-column-remark = 덧붙인 말
report-column-barrel = 기계와 출구
report-column-product = 제품
report-column-analysis = 검사
report-column-result = 결과
report-column-laboratory = 검사실
report-column-because = 까닭
report-column-standing = 처지
report-column-trend = 추세
report-column-due = 할 일
report-column-its-time = 정해진 시간
report-column-became = 어떻게 되었나
report-column-begun = 시작
report-column-work = 기계와 일
report-column-length = 분 (평소)
report-column-ended = 끝
report-column-deviations = 벗어난 것
report-column-signed = 서명
report-column-part = 부품
report-column-found = 살펴본 결과
report-column-procedures = 절차
report-column-procedure = 절차
report-column-version = 판
report-column-known = 알려진 것
report-column-kind = 기계 종류
report-column-signs = 의심할 점
report-column-digest = 글의 요약값 (SHA-256)

## 표
report-none = 없음
report-steps-caption = 단계마다 머문 것, 차례대로
report-steps-none = 들어간 단계가 없음
report-beside-caption = 멈춤, 문제, 교대, 되돌아감, 계산한 것
report-signings-caption = 관리자가 한 말
report-deviations-caption = 벗어난 것, 무거운 것부터; 빠진 것은 없습니다
report-deviations-none = 찾은 것이 없음
report-rules-caption = 규칙마다 몇 번 찾았나
report-readings-caption = 잰 값
report-readings-none = 잰 것이 없음
report-spread-caption = 기계별 잰 값
report-results-caption = 이 기간에 뜬 시료의 결과
report-results-none = 적힌 것이 없음
report-struck-caption = 지워져 더는 세지 않는 기록
report-standing-caption = { $day }의 처지
report-due-caption = 해야 했던 모든 일
report-due-caption-off = 제때 하지 않은 일
report-sessions-caption = 작업, 시작한 차례대로
report-sessions-none = 작업이 없었음
report-parts-caption = 바꾼 부품, 닳은 부품, 개수가 틀린 부품
report-wear-caption = { $day }의 닳는 부품
report-shelf-caption = { $day }의 예비 부품
report-traces = 나쁜 결과로 이어졌을 수 있는 것
report-traces-more = 마지막 것들만 되짚었습니다. { $n }개는 되짚지 않았습니다.
report-trace-caption = { $day }, { $what }: { $amount }. 살펴본 기간: { $first }부터 { $last }까지. 가장 의심스러운 것부터
report-people-caption = 참여한 사람
report-procedures-caption = 따라 한 글

## 답
report-on-list = 부품 목록: { $expected }
report-remark-erased = 이 말의 글은 지워졌습니다
report-hold-confirmed = 확인됨
report-done = 함
report-passes = { $number }번
report-waited = { $waited } 기다림, { $needed } 필요
report-left = { $how ->
    [went-back] 답 없음: 되돌아감
    [held] 답 없음: 멈춤
    [handed-over] 답 없음: 교대
    [session-ended] 답 없음: 작업 끝남
   *[still-there] 아직 답 없음
}
report-finding = { $finding ->
    [good] 좋음
    [replaced] 바꿈
    [none-left] 닳음, 예비 없음
   *[other] { $other }
}
report-counted = { $counted }개 셈, 부품 목록에는 { $expected }개
report-said = { $said ->
    [phrase] 문구
    [read-back-agreed] 되읽기에 동의
    [read-back-refused] 되읽기를 거절
    [try-out-failed] 시험 실패
    [number] 숫자
    [out-of-limit] 한계를 벗어남
    [pass] 한 번 함
    [pass-judged] 한 번을 판단함
    [passes-ran-out] 횟수를 다 씀
    [tried-again] 다시 함
    [time-up] 시간이 됨
   *[confirmed] 확인
}
report-channel = { $channel ->
    [touch] 누름
    [key] 글쇠
    [kiosk] 안내기
   *[voice] 말
}
report-heard = 말 “{ $heard }”, 귀 { $ear }
report-heard-sure = 말 “{ $heard }” ({ $sure }), 귀 { $ear }
report-asked-again = 다시 물음: { $count }
report-witnessed = 증인: { $person }
report-limit-none = 한계 없음
report-kept-yes = 지킴
report-kept-no = 지키지 않음
report-kept-unknown = 알 수 없음
report-kept-without = 판단하지 않음

## 단계 밖의 일
report-stood-still = 멈춤
report-break = { $because ->
    [pause] 쉼
    [problem] 문제
    [restart] 안내기 다시 시작
   *[no-way-in] 안전한 길 없음
}, { $until }까지
report-problem = 문제
report-no-reason = 까닭을 말하지 않음
report-became = { $became ->
    [put-right] 바로잡았다고 함
    [ended-early] 작업을 끝냄
    [out-of-service] 기계 사용 중지
   *[open] 풀리지 않음
}
report-hand-over = 교대
report-back = 되돌아감
report-worked-out = 계산함
report-stand = { $stand ->
    [not-yet-due] 아직 때가 아님
    [due] 지금 할 때
    [done] 제때 함
    [done-early] 너무 일찍 함
    [done-late] 늦게 함
    [begun-not-finished] 시작하고 끝내지 않음
    [out-of-service] 기계 사용 중지
    [not-opened] 그날 기계를 쓰지 않음
   *[missed] 빠뜨림
}

## 검사실
report-head = { $head ->
    [left] 왼쪽 출구
    [right] 오른쪽 출구
    [twist] 섞인 출구
    [single] 하나뿐인 출구
   *[other] 출구 { $head }
}
report-authority = { $title }, { $law }에 따라 판단. 출처: { $source } ({ $tag }).
report-authority-none = 이 보고서에는 기관이 정해지지 않아 한계와 처지를 보여 주지 않습니다.
report-state = { $state ->
    [clear] 이상 없음.
    [notice] 통보.
    [action] 조치.
    [unknown] 알 수 없음: 결과가 범위일 뿐입니다.
   *[no-results] 결과 없음.
}
report-over-of = 한계를 넘은 것: 최근 { $of_four }개 중 { $four }개, 최근 { $of_five }개 중 { $five }개.
report-resample = 추가 시료: { $first }부터 { $last }까지.
report-owed = 여섯 달 안에 더 떠야 할 날: { $days }.
report-average = 최근 네 결과의 로그 평균: { $low } 이상.
report-left-out = 뺀 것 { $result }: { $why }.
report-trend-none = 추세를 말할 수 없습니다.

## 서명, 그리고 이 보고서의 바탕
report-meaning = { $what ->
    [signed-off] 보았고 그대로 둠
   *[sent-back] 돌려보냄, 할 일이 있음
}
report-signature-means = 서명의 뜻. “확인 서명”은 이름이 적힌 관리자가 그 시각에 그 작업의 기록을 보았고 그대로 둔다는 뜻입니다. “돌려보냄”은 무언가 해야 한다는 뜻입니다. 관리자가 작업을 직접 보았다거나 기계가 안전하다는 뜻은 아닙니다. 서명마다 이름, 시각, 뜻이 함께 있습니다 (21 CFR 11.50의 세 가지). PIN을 쓰는 곳에서는 그 사람의 PIN으로 한 것이며, 공인 전자서명은 아닙니다.
report-sign-name = 이름 (정자로)
report-sign-signature = 서명
report-sign-date = 날짜와 시각
report-rests-on = 이 보고서의 바탕
report-limits-are = 한계는 그때 시행되어 기록된 그대로이며, 조항과 출처가 함께 있습니다. 기계 설명서, 제품 라벨, 지역 규정이 다르면 그것이 먼저입니다.
report-deviations-are = 벗어난 것은 글로 된 규칙이 기록에서 찾은 것이며, 규칙마다 출처가 있습니다. “common practice, no source”는 알려진 출처가 없다는 뜻입니다. 벗어난 것은 살펴볼 까닭이지 잘못의 증거가 아닙니다.
report-rows-are = “{ $column }” 열은 안내기 기록의 행을 가리킵니다. 여기 있는 모든 값과 수는 그 행에서 나왔고 다시 얻을 수 있습니다. 작업 전체는 첫 행과 마지막 행을 적었습니다.
report-verify = 기록를 확인하는 방법
report-kiosk = 안내기
report-head-row = 기록의 마지막 행
report-head-hash = 그 행의 해시 (SHA-256)
report-head-time = 그 행의 시각 (UTC)
report-made = 이 보고서를 만든 시각
report-verify-how = journal.db 파일의 사본을 달라고 하세요. 행마다 해시는 그 행과 앞 행의 해시를 덮습니다. 첫 행부터 위에 적힌 행까지 해시를 계산하면 마지막 값이 여기 인쇄된 해시와 같아야 합니다. { $page } 문서에 우리 것이 하나도 필요 없는 짧은 프로그램이 있고, “kiosk log verify”도 같은 일을 합니다.
report-verify-not = 해시가 같으면 이 보고서가 그 행들로 만들어졌다는 것을 보여 줍니다. 작업자가 안내기에 한 말이 사실이라는 것을 보여 주지는 않습니다.
report-caution = 안내기는 안내하고 기록합니다. 에너지 차단 잠금, 기계 설명서, 제품 라벨, 지역 규정, 자격을 갖춘 일을 대신하지 않습니다.
report-hashes-agree = 이 보고서를 만들 때 { $first }행부터 { $last }행까지 해시를 다시 계산했고, 맞습니다.
report-hashes-differ = { $row }행이 없거나 쓴 뒤에 고쳐졌습니다. 이 보고서를 믿지 말고 기록를 확인하세요.
report-unread = 이 판의 안내기가 읽지 못해 여기에 빠진 작업: { $sessions }.

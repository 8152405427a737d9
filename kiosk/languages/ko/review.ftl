### reviewed: no
## The supervisor's review
review = 검토
review-back = 돌아가기
review-other-ways = 다른 화면
review-where-to = 어디로 갈까요?
review-place = { $first }~{ $last }
review-nothing-here = 여기에는 아무것도 없습니다.
review-reading = 기록을 읽고 있습니다.
review-reading-place = 기록을 읽고 있습니다: 작업 { $of }개 가운데 { $done }개. 처음에는 오래 걸리고, 다음부터는 새것만 읽습니다.
review-cannot-read = 검토를 열 수 없습니다. { $why }
review-cannot-look = 이 화면을 보여 줄 수 없습니다. { $why }
review-only = 일부 작업만
review-laboratory = 검사실
review-dates = 날짜
review-parts = 부품
review-picture = 그림
review-pictures = 그림
review-people = 사람
review-sessions = 작업
review-unsigned = 서명 안 됨
review-which-sessions = 어느 작업을 볼까요?
review-eyes = { $n ->
    [0] 먼저 볼 것이 없습니다. 작업, 새것부터:
   *[other] 먼저 보아야 할 것이 { $n }가지 있습니다.
}
review-newest-first = 작업, 새것부터:

# A session in a line.
review-deviations = { $n ->
    [0] 이상 없음
   *[other] 이상 { $n }건
}
review-length = { $time }
review-length-usual = { $time }, 보통 { $usual } ({ $number }번의 중앙값)
review-is-not-signed = 서명 안 됨
review-is-signed-off = 서명됨
review-is-sent-back = 되돌려 보냄
review-ended-open = 끝나지 않음
review-ended-complete = 완료
review-ended-ended-early = 도중에 끝냄
review-ended-out-of-service = 기계 사용 중지

# A session's account and timeline.
review-from-to = { $begun }부터 { $ended }까지
review-text-here = 절차 버전 { $version }, 문안 { $digest }
review-text-gone = 절차 버전 { $version }, 문안 { $digest }: 이 문안은 이제 여기에 없어서 문장이 빠져 있습니다.
review-was-signed-off = { $by }, { $at } 서명.
review-was-sent-back = { $by }, { $at } 되돌려 보냄.
review-remark-erased = (이 메모의 글은 지워졌습니다.)
review-timeline = 시간 순서
review-journal-rows = 기록 줄 { $first }~{ $last }
review-asked-in = { $language }로 물음: “{ $text }”
review-waited = 기다린 시간 { $waited }, 필요한 시간 { $needed }
review-witness = 입회: { $who }
review-asked-again = { $n ->
   *[other] 질문을 { $n }번 다시 들었습니다.
}
review-limit-parts = 부품 목록: { $number }
review-passes = { $n ->
   *[other] { $n }차례
}
review-sure = 확신 { $percent }퍼센트
review-not-taken = “{ $heard }” 말이 받아들여지지 않은 뒤
review-ear = 귀: { $ear }
review-after = { $time } 뒤
review-by-voice = 목소리
review-by-touch = 손
review-by-key = 키
review-by-kiosk = 키오스크
review-said-phrase = 확인 문구
review-said-read-back-agreed = 다시 읽어 확인
review-said-read-back-refused = 다시 읽자 아니라고 함
review-said-try-out-failed = 시험 실패
review-said-number = 숫자 말함
review-said-out-of-limit = 맞지 않음
review-said-pass = 한 차례 끝남
review-said-pass-judged = 차례 판단
review-said-passes-ran-out = 차례를 다 씀
review-said-tried-again = 다시 함
review-said-time-up = 시간이 다 됨
review-said-confirmed = 확인
review-clear-yes = 됐음
review-clear-no = 아직 아님
review-left-confirmed = 확인함.
review-left-went-back = 한 단계 돌아감.
review-left-held = 여기서 작업이 멈춤.
review-left-handed-over = 여기서 넘겨줌.
review-left-session-ended = 여기서 작업을 끝냄.
review-left-still-there = 작업이 아직 여기에 있음.
review-break-pause = 잠시 멈춤.
review-break-problem = 멈춤: 문제를 알림.
review-break-restart = 키오스크가 다시 켜짐.
review-break-no-way-in = 멈춤: 안전하게 이어 갈 길이 없었음.
review-power-cut = 컴퓨터가 새로 켜졌음.
review-until = { $at }까지.
review-problem = 문제: { $what } ({ $became })
review-no-reason = 까닭을 말하지 않음
review-became-open = 해결 안 됨
review-became-put-right = 작업자 말로는 해결됨
review-became-ended-early = 작업을 끝냄
review-became-out-of-service = 기계를 사용 중지함
review-handed-over = { $before }에서 { $after }에게 넘겨줌
review-worked-out = 계산함: { $what }

# The supervisor's word.
review-sign-off = 서명하기
review-send-back = 되돌려 보내기
review-what-remark = 서명합니다. 어떤 메모를 남길까요?
review-what-to-do = 되돌려 보냅니다. 무엇을 해야 하나요?
review-remark-right = 살펴봄, 할 일 없음
review-remark-talked = 작업자와 이야기함
review-remark-machine = 기계를 살펴봄
review-back-again = 기계를 다시 씻을 것
review-back-talk = 작업자는 나에게 올 것
review-back-sample = 시료를 뜰 것
review-back-part = 부품을 바꿀 것
review-write = 직접 쓰기
review-take-it = 이대로 하기
review-nothing-written = 먼저 쓰세요.
review-not-ended = 이 작업은 끝나지 않았습니다. 되돌려 보낼 수는 있지만 서명할 수는 없습니다.
review-not-written = 기록을 쓸 수 없어서 아무것도 남지 않았습니다. { $why }

# Laboratory.
review-no-results = 검사 결과가 아직 없습니다.
review-no-result-judged = 판단할 수 있는 결과가 없습니다.
review-results = 결과, 새것부터
review-left-out = 이 기관에는 기준이 없어서 판단하지 않음: { $result }
review-resample = { $first }부터 { $last }까지 다시 시료를 뜨세요.
review-samples-owed = { $n ->
   *[other] 여섯 달 동안 시료를 떠야 하는 날이 { $n }일 남았습니다.
}
review-over = 기준 넘음
review-may-be-over = 기준을 넘을 수 있음
review-per-g = 그램당
review-per-ml = 밀리리터당
review-head-left = 왼쪽 출구
review-head-right = 오른쪽 출구
review-head-twist = 섞인 출구
review-head-single = 하나뿐인 출구
review-amount-exact = { $amount }
review-amount-estimated = 약 { $amount }
review-amount-less-than = { $amount } 미만
review-amount-more-than = { $amount } 초과
review-amount-spreaders = 퍼져 자람
review-amount-laboratory-accident = 검사실 사고
review-enter-result = 결과 적기
review-other-authority = 다른 기관
review-trace = 무엇 때문인지
review-nothing-to-trace = 이 실린더에는 기준을 넘은 결과가 없습니다.
review-trace-lead = 단서일 뿐 증거가 아닙니다. 순서는 발표된 출처가 없는 무게에서 나옵니다. 보고, 묻고, 다시 시료를 뜨세요.
review-trace-looked = 살펴본 때: { $begun }부터 { $ended }까지.
review-no-session = 작업 없음
review-no-sign = 의심할 것이 없습니다.
clue-short-contact = 너무 짧은 접촉 시간
clue-weak-sanitizer = 약한 살균액
clue-warm-mix = 따뜻한 믹스
clue-worn-part = 닳은 부품
clue-missed-close = 저녁 작업 빠짐
clue-late-close = 늦은 저녁 작업
clue-ended-early = 도중에 끝냄
clue-new-worker = 새 작업자
clue-doubtful-hold = 의심스러운 안전 확인

review-ask-machine = 어느 기계의 시료인가요?
review-ask-barrel = 어느 출구의 시료인가요?
review-ask-day = 언제 떴나요? 2026-11-25처럼 쓰세요.
review-ask-product = 무엇의 시료인가요?
review-ask-analysis = 어떤 검사인가요?
review-ask-amount = 성적서에 뭐라고 되어 있나요? 1200, < 10, > 1100, est. 900, spreaders처럼 쓰세요.
review-ask-per = 그램당인가요, 밀리리터당인가요?
review-ask-laboratory = 어느 검사실인가요?
review-ask-sample = 검사실이 매긴 시료 번호는 무엇인가요?
review-no-sample-number = 번호 없음
review-wrong-day = 오늘까지의 날짜가 아닙니다. 2026-11-25처럼 쓰세요.
review-wrong-amount = 두 가지로 읽히거나 읽을 수 없습니다. 1200처럼 천 단위 표시 없이 쓰세요.
review-wrong-laboratory = 이름이 너무 깁니다. 줄이세요.
review-wrong-sample = 번호가 너무 깁니다. 줄이세요.
review-is-that-right = 맞나요?
review-enter-it = 네, 적기
review-again = 아니요, 다시
review-this-result = 이 결과
review-entered = 결과가 기록에 있습니다.
review-known-already = 이 결과는 이미 기록에 있습니다. 아무것도 적지 않았습니다.
review-known-otherwise = 기록에는 이 시료의 다른 숫자가 있습니다. 검사실 번호를 쓰거나, 잘못 적은 것을 지우세요: kiosk lab strike.

# Dates, parts and people.
review-overdue = 때가 지남
review-due = 지금 할 일
review-to-come = 앞으로 할 일
review-done = 지난 며칠 동안 한 일
review-by = { $at }까지
review-sampled-session = 마지막 채취 { $day }, 작업 기록 있음. 결과는 아직 입력되지 않음
review-sampled-result = 마지막 시료 { $day }, 입력된 결과로 확인
review-sampled-both = 마지막 채취 { $day }, 작업 기록 있음. 결과도 입력됨
review-sampled-never = 아직 시료를 채취하지 않음
review-stand-not-yet-due = 아직 아님
review-stand-due = 할 때
review-stand-done = 했음
review-stand-done-early = 너무 일찍 했음
review-stand-done-late = 늦게 했음
review-stand-begun-not-finished = 시작했지만 끝내지 않음
review-stand-missed = 하지 않음
review-stand-out-of-service = 기계 사용 중지
review-stand-not-opened = 그날 기계를 쓰지 않음
review-check-rule = 영업 중 점검은 그날 그 기계로 작업했고 사용 중지가 아니었을 때만 하지 않은 것으로 셉니다.
review-role-worker = 작업자
review-role-trainee = 수습
review-role-supervisor = 감독자
review-not-here-any-more = 이제 명단에 없음
review-no-walk = 아직 한 작업이 없음
review-walked = { $n ->
    [1] { $title }: 한 번, { $last }
   *[other] { $title }: { $n }번, 처음 { $first }, 마지막 { $last }
}
review-first-walks = 감독자와 함께하는 처음 작업

# Pictures.
review-days = { $n ->
   *[other] 지난 { $n }일
}
review-other-days = 다른 기간

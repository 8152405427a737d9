### 키오스크의 한국어 문구. 기계 초안이며, 한국어 사용자의 검토가 필요하다.
### reviewed: no

language-name = 한국어

## 단위. 읽고 말하기가 같도록 말로 적는다.
unit-litres = { $n } 리터
unit-millilitres = { $n } 밀리리터
unit-gallons = { $n } 갤런
unit-quarts = { $n } 쿼트
unit-fluid-ounces = { $n } 액량 온스
unit-grams = { $n } 그램
unit-seconds = { $n } 초
unit-minutes = { $n } 분
unit-hours = { $n } 시간
unit-celsius = 섭씨 { $n } 도
unit-fahrenheit = 화씨 { $n } 도
unit-milligrams-per-litre = { $n } 피피엠
unit-ph = 피에이치 { $n }
unit-none = { $n }

## 말할 낱말. 같은 뜻의 말은 빗금으로 나누며, 첫째 것이 화면에 나온다.
say-next = 완료 / 다 했어요
say-yes = 네 맞습니다 / 맞습니다
say-no = 아니요 / 아니에요
say-repeat = 다시 말해 주세요
say-back = 이전
say-problem = 문제 있어요
say-pause = 잠시 쉬기
say-continue = 계속
say-hand-over = 담당자 교대
say-out-of-service = 사용 중지
say-end = 작업 종료
say-good = 좋아요 / 상태가 좋아요
say-replaced = 교체했어요
say-none-left = 재고 없어요
say-language = 다른 언어
say-never-mind = 취소
say-number = 번호 { $number }

## 주의를 알리는 말.
signal-danger = 위험
signal-warning = 경고
signal-caution = 주의
signal-notice = 알림

## 물음.
first-again = 먼저 다시 확인하세요.
# The phrase stands inside the sentence: alone after a pause the ear would take it for an answer.
say-phrase = 확인되면 { $phrase }, 라고 말하세요.
heard-phrase = { $phrase }, 이렇게 들었습니다. 그렇습니까? 맞으면 네 맞습니다, 아니면 아니요라고 답하세요.
heard-number = { $number }, 이렇게 들었습니다. 그렇습니까? 맞으면 네 맞습니다, 아니면 아니요라고 답하세요.
is-that-so = 그렇습니까? 맞으면 네 맞습니다, 아니면 아니요라고 답하세요.
good-or-replaced = 상태가 좋습니까? 좋아요, 교체했어요, 재고 없어요 가운데 하나로 답하세요.
try-again = 바로잡은 뒤에 완료라고 말하면 다시 합니다.
time-up = 시간이 다 되었습니다. 완료라고 말하세요.
witness-needed = 다른 사람이 자신의 비밀번호로 확인해야 합니다.
count-off = { $number }개를 세었습니다. 부품표에는 { $expected }개입니다. 없는 부품을 찾으세요.
reading-off-least = { $number }, 너무 낮습니다. { $least } 이상이어야 합니다.
reading-off-most = { $number }, 너무 높습니다. { $most } 이하여야 합니다.
reading-off-least-most = { $number }, 한계를 벗어났습니다. { $least }에서 { $most } 사이여야 합니다.
passes-ran-out = { $number }번 했지만 아직 깨끗하지 않습니다.
what-is-wrong = 무엇이 문제입니까?
then-continue = 끝나면 계속이라고 말하세요.
stop-here = 기계를 더 쓸 수 없습니다. 사용을 중지하거나 담당자를 바꾸세요.
held-pause = 멈추었습니다. 계속이라고 말하세요. 바뀌었을 수 있는 것은 다시 묻습니다.
held-restart = 키오스크가 다시 켜졌습니다. 계속이라고 말하세요. 바뀌었을 수 있는 것은 다시 묻습니다.
held-no-way-in = 여기서는 안전하게 계속할 수 없습니다. 작업을 종료하고 관리자에게 알리세요.
end-asked = 지금 작업을 종료합니까? 아직 끝나지 않았습니다. 맞으면 네 맞습니다, 아니면 아니요라고 답하세요.
complete = 모든 단계를 마쳤습니다. 감사합니다.
aborted = 작업이 끝나기 전에 종료되었습니다. 다음 사람에게 알리세요.
out-of-service = 기계 사용을 중지했습니다. 다음 사람에게 알리세요.
who-takes-over = 누가 이어서 합니까?
which-language = 어느 언어로 할까요?
press-instead = 잘 알아듣지 못했습니다. 화면에서 눌러 주세요.

## 하지 않은 까닭.
refused-not-now = 지금은 할 수 없습니다.
refused-hold-first = 안전 확인 단계입니다. 문장을 모두 말하거나 단추를 길게 누르세요.
refused-time-left = 아직 아닙니다. { $time } 남았습니다.
refused-number-first = 먼저 숫자를 말하세요.
refused-absurd = 있을 수 없는 숫자입니다. { $least }에서 { $most } 사이여야 합니다.
refused-whole-number = 정수로 말하세요.
refused-look-first = 먼저 부품을 보고, 좋아요, 교체했어요, 재고 없어요 가운데 하나로 답하세요.
refused-reason-first = 무엇이 문제인지 먼저 말하세요.
refused-no-such-reason = 알 수 없는 이유입니다.
refused-must-stop = 기계를 더 쓸 수 없습니다. 사용을 중지하세요.
refused-no-way-in = 여기서 안전하게 계속할 수 없습니다. 작업을 종료하세요.
refused-confirm-this-first = 먼저 이것을 확인하세요.
refused-first-step = 첫 단계입니다.
refused-same-person = 다른 사람이어야 합니다.

## Wall sheet
sheet-kind = 벽에 거는 작업표. 키오스크를 쓸 수 없을 때 쓰세요.
sheet-text = 버전 { $version }, 글 { $digest }
sheet-practice = 연습용: 지어낸 가게입니다. 이 표로 작업하지 마세요.
sheet-drafted = 기계가 쓴 초안입니다. 한국어 사용자가 아직 검토하지 않았습니다.
sheet-no-lockout = 이 표는 전원 잠금을 대신하지 못합니다. 기계도 사람도 막아 주지 못합니다.
sheet-in-order = 모든 단계를 이 순서대로 하세요. 끝낸 단계에 표시하세요.
sheet-stop-at-holds = 안전 확인에서는 멈추세요. 확인하고 시험한 뒤에만 계속하세요.
sheet-after-break = 쉬었거나 담당자가 바뀌면, 아직 지켜져야 하는 안전 확인을 모두 다시 하세요. 손도 다시 씻으세요.
sheet-machine = 기계
sheet-name = 이름
sheet-date = 날짜
sheet-begun = 시작
sheet-ended = 끝
sheet-signature = 서명
sheet-supervisor = 관리자
sheet-second-person = 두 번째 사람
sheet-done = 완료
sheet-step = 단계
sheet-write-down = 적는 곳
safety-hold = 안전 확인
sheet-say-aloud = 확인되면 소리 내어 말하세요: { $phrase }.
sheet-try-out = 시험하세요
sheet-it-is-so = 그렇습니다
sheet-least = { $least } 이상이어야 합니다.
sheet-most = { $most } 이하여야 합니다.
sheet-least-most = { $least }에서 { $most } 사이여야 합니다.
sheet-no-limit = 한계 없음. 적어 두세요.
sheet-limit-source = 한계: { $source }
sheet-if-off = 맞지 않으면
sheet-wait = 시간: { $time } 이상.
sheet-passes = 횟수: { $least }번 이상, { $most }번까지.
sheet-pass = 횟수
sheet-parts-list = 부품표: { $part }, { $expected }개.
sheet-counted = 센 개수
sheet-look-at = 점검: { $part }
sheet-good = 좋음
sheet-replaced = 교체함
sheet-none-left = 재고 없음
sheet-problems = 문제가 있을 때
sheet-stops-service = 기계 사용을 중지하세요.
sheet-end-of-work = 작업 마침
sheet-left-at = 못 끝냈으면, 멈춘 단계
sheet-told-to = 알린 사람

picture-established = 시작됨
picture-relied-on = 필요함
picture-ended = 끝남
picture-by-hold = 안전 확인으로 확인됨
picture-danger = 있는 동안 위험
picture-other = 그 밖의 조건
picture-not-in-force = 필요하지만 갖춰지지 않음
picture-page = { $pages }쪽 가운데 { $page }쪽

## Screens
standing-in-service = 사용 중
standing-being-taken-apart = 분해 중
standing-apart-and-drying = 분해하여 건조 중
standing-being-put-together = 조립 중
standing-held = 중지됨, 문제 있음
standing-left-unfinished = 끝내지 않음
standing-out-of-service = 사용 중지

which-machine = 어느 기계입니까?
which-procedure = 무엇을 하겠습니까?
who-walks = 누가 합니까?
due = 할 일: { $procedure }
nothing-due = 지금 할 일이 없습니다.
not-due = 보통 다음 순서가 아님
unfinished = 끝나지 않음, 누르면 계속: { $procedure }, { $worker }
no-procedure = 이 기계에서 할 수 있는 절차가 없습니다.
some-faulty = 이 기계에서 할 수 없는 절차가 있습니다.
day-or-night = 밝게 또는 어둡게
what-is-faulty = 잘못된 것 보기
faults-found = { $n ->
   *[other] 절차를 막는 문제가 { $n }개 있습니다.
}
all-machines = 모든 기계
more = 더 보기
practice = 연습
place = { $last }단계 중 { $place }단계
time-left = 약 { $n }분 남음
time-left-spread = 약 { $n }분 남음 ({ $least }~{ $most })
held = 중지됨
drafted = 기계가 번역한 글이며 아직 검토되지 않음

keep-pressed = 누르고 계세요
kept-too-short = 너무 짧음: 누르고 있거나 한 번 더 누르세요
kept-enough = 이제 떼세요
type-number = 숫자 입력
enter-number = 확인
rub-out = 지우기
number-missing = 먼저 숫자를 입력하세요.
try-to-begin = 다시 시도

ear-hears = 듣고 있습니다
ear-deaf = 말하는 동안은 듣지 않습니다
ear-off = 들을 수 없습니다: { $why }
ear-opening = 듣기를 준비하고 있습니다
ear-none = 이 안내기는 들을 수 없습니다
voice-on = 음성 켜짐
voice-off = 말할 수 없습니다: { $why }
voice-opening = 음성을 준비하고 있습니다
voice-none = 이 안내기는 음성이 없습니다
heard = “{ $text }” 들음
heard-nothing = 아는 말이 아니었습니다
heard-not-allowed = “{ $text }”: 지금 쓰는 말이 아닙니다
heard-too-short = 너무 짧았습니다
heard-doubtful = “{ $text }”? 확실하지 않으니 다시 말하세요

text-changed = 이 절차의 글이 시작한 뒤에 바뀌었습니다. 계속할 수 없습니다. 작업을 끝내고 다시 시작하세요.
cannot-take-up = 이 작업을 계속할 수 없습니다. { $why }

recorded = 기록된 것
took = { $time } 걸렸습니다.
confirmed-by-voice = { $n ->
   *[other] 음성 확인 { $n }번
}
confirmed-by-touch = { $n ->
   *[other] 터치 확인 { $n }번
}
confirmed-by-key = { $n ->
   *[other] 키 확인 { $n }번
}
readings = 측정값
reading-taken = { $what }: { $number }
limit-least = 한계: { $least } 이상
limit-most = 한계: { $most } 이하
limit-least-most = 한계: { $least }에서 { $most }까지
limit-none = 한계 없음
deviations = 벗어난 것
no-deviations = 벗어난 것이 없습니다.
deviation-reading = { $what }: { $number }, 한계를 벗어남.
deviation-count = { $what }: { $number }개 셈, 목록에는 { $expected }개.
deviation-passes = { $number }번 뒤에도 좋지 않음: { $what }
deviation-verify = 시험 실패: { $what }
deviation-none-left = 남은 부품 없음: { $what }
deviation-problem = 문제: { $what }
left-unsafe = 다음 사람에게 알리세요
journal-head = 기록 { $hash }

## 단계 옆에서 계산하기.
say-reckon = 계산해 주세요
say-ask-again = 마지막 대답 다시
say-back-to-the-step = 단계로 돌아가기
which-reckoning = 무엇을 계산할까요?
reckoned = 모두 계산했습니다.
not-one-of = { $given }: 고를 수 있는 대답이 아닙니다.
not-a-number = { $given }: 숫자가 아닙니다. 12.5처럼 숫자로 쓰세요.
not-believable = 그럴 수 없습니다. { $least }에서 { $most } 사이여야 합니다.
not-whole = { $given }: 정수여야 합니다.
cannot-work-out = 계산할 수 없습니다.
say-other-reckonings = 다른 계산
say-hours = { $n ->
   *[other] { $number } 시간
}
say-minutes = { $n ->
   *[other] { $number } 분
}
say-days = { $n ->
   *[other] { $number } 일
}
say-gallons = { $n ->
   *[other] { $number } 갤런
}
say-quarts = { $n ->
   *[other] { $number } 쿼트
}
say-tubes = { $n ->
   *[other] { $number } 개
}
say-colonies = { $n ->
   *[other] { $number } 개
}
say-results = { $n ->
   *[other] { $number } 번
}
say-ph = { $n ->
   *[other] 산도 { $number }
}
# 말로 하는 날짜.
day-said = { $year }년 { $month ->
    [jan] 1월
    [feb] 2월
    [mar] 3월
    [apr] 4월
    [may] 5월
    [jun] 6월
    [jul] 7월
    [aug] 8월
    [sep] 9월
    [oct] 10월
    [nov] 11월
   *[dec] 12월
} { $day }일 { $weekday ->
    [mon] 월요일
    [tue] 화요일
    [wed] 수요일
    [thu] 목요일
    [fri] 금요일
    [sat] 토요일
   *[sun] 일요일
}

# 왜 계산할 수 없는지.
cannot-label-bad-percent = { $percent } 퍼센트일 수 없습니다. 제품 표시의 퍼센트를 0보다 크고 100 이하로 쓰세요.
cannot-label-share-not-percent = 고체 제품에 { $percent } 퍼센트는 너무 적습니다. 표시의 비율이 { $percent } 이면 { $mend } 퍼센트라고 쓰세요.
cannot-label-bad-gravity = 비중이 { $gravity } 일 수 없습니다. 1.08처럼 제품 표시의 값을 쓰세요.
cannot-label-too-strong = 상업 농도 { $percent } 퍼센트인 염소 용액은 없습니다. 리터당 유효 염소 그램을 10으로 나누어 쓰세요.
cannot-label-bad-dilution = 제품 표시의 희석은 제품과 농도가 모두 0보다 커야 합니다.
cannot-label-bad-packet = 한 봉지의 그램은 0보다 커야 합니다.
cannot-dose-bad-strength = 농도 { $wanted } 은(는) 만들 수 없습니다. 0보다 크게 하세요.
cannot-dose-bad-water = 물 { $water } 은(는) 채울 수 없습니다. 0보다 크게 쓰세요.
cannot-dose-bad-count = { $count } 번 분량은 잴 수 없습니다. 0보다 크게 쓰세요.
cannot-dose-wanted-over-cap = { $wanted } 은(는) 상한 { $cap } 을(를) 넘습니다. { $cap } 이하로 하세요.
cannot-dose-over-cap = { $water }에 { $count } 번 분량을 넣으면 { $strength } 이(가) 되어 상한 { $cap } 을(를) 넘습니다. 물을 { $least_water } 이상 쓰거나, 더 작은 숟가락이나 봉지를 쓰세요.
cannot-dose-too-weak = 제품 자체가 { $strongest } 이어서 { $wanted } 을(를) 만들 수 없습니다. 더 진한 제품을 쓰세요.
cannot-dose-wrong-measure = 이 제품은 그렇게 잴 수 없습니다. 다른 도구로 재세요.
cannot-dose-over-full = { $count } 번 분량은 { $water } 보다 많습니다. 더 작은 도구로 재세요.
cannot-solution-bad-strength = 농도가 { $strength } 일 수 없습니다. 시험지를 다시 읽으세요.
cannot-solution-bad-ph = 피에이치가 { $ph } 일 수 없습니다. 0에서 14 사이입니다. 시험지를 다시 읽으세요.
cannot-solution-bad-hardness = 경도가 { $hardness } 일 수 없습니다. 물을 다시 검사하세요.
cannot-solution-bad-temperature = { $temperature } 은(는) 소독액의 온도일 수 없습니다. 섭씨나 화씨로 다시 재세요.
cannot-solution-other-label = 제품 표시가 이 소독액의 것이 아닙니다. 맞는 제품 표시를 쓰세요.
cannot-share-bad-ph = 피에이치가 { $ph } 일 수 없습니다. 0에서 14 사이입니다. 시험지를 다시 읽으세요.
cannot-share-no-number = { $temperature } 은(는) 온도일 수 없습니다. 다시 재세요.
cannot-share-too-cold = { $temperature } 은(는) 섭씨 { $least } 도보다 낮아서, 그곳의 평형은 알려지지 않았습니다.
cannot-share-too-warm = { $temperature } 은(는) 섭씨 { $most } 도보다 높아서, 그곳의 평형은 알려지지 않았습니다. 식히세요.
cannot-growth-outside-range = 이 모형은 섭씨 { $least } 도에서 { $most } 도까지만 맞고 { $celsius } 에는 맞지 않습니다. 모형을 쓰지 마세요.
cannot-growth-not-finite = 값 { $value } 은(는) 숫자가 아닙니다. 잰 값을 쓰세요.
cannot-growth-negative = 값 { $value } 은(는) 0보다 작습니다. 0 이상으로 쓰세요.
cannot-growth-not-positive = 값 { $value } 은(는) 0보다 커야 합니다.
cannot-growth-no-room = 가장 많은 균 10^{ $most } 은(는) 처음의 10^{ $start } 보다 많아야 합니다.
cannot-growth-absurd-count = 균 10^{ $value } 개는 셀 수 없습니다. 지수는 -3에서 12 사이입니다.
cannot-growth-no-growth-there = 이 모형은 { $celsius }에서 증식이 없습니다. 더 따뜻한 시험에서만 바꾸세요.
cannot-growth-gap = { $hours } 동안 잰 것이 없습니다. 그 시간을 넣어 더하면 뜻이 없으니 빼세요.
cannot-growth-too-few = 속도를 알려면 두 번 이상 세어야 합니다. 나중에 다시 세세요.
cannot-log-no-readings = 기록에 잰 값이 없습니다. 재서 적으세요.
cannot-log-bad-instant = 시각 { $at } 은(는) 초가 아닙니다. 언제 쟀는지 적으세요.
cannot-log-bad-unit = “{ $unit }” 은(는) 온도 단위가 아닙니다. °C나 °F를 쓰세요.
cannot-log-absurd = { $temperature } 은(는) 믹스의 온도일 수 없습니다. 탐침을 살피고 다시 재세요.
cannot-log-bad-gap = 잰 시각 사이의 가장 긴 틈 { $gap } 은(는) 0보다 커야 합니다.
cannot-log-ends-first = 보려는 시간의 끝({ $until })이 처음({ $since })보다 먼저입니다. 둘을 바꾸세요.
cannot-log-before-start = 보려는 시각({ $now })이 { $start } 보다 먼저입니다. 시계를 살피세요.
cannot-log-no-points = 재는 곳이 없습니다. 뜨거워야 하는 곳을 모두 쓰세요.
cannot-log-empty-point = 잰 값이 없는 곳이 있습니다. 재거나 탐침을 고치세요.
cannot-log-bad-time = { $seconds } 동안 유지할 수 없습니다. 0 이상으로 쓰세요.
cannot-log-bad-fat = 지방이 { $percent } 퍼센트일 수 없습니다. 0에서 100 사이의 숫자를 쓰세요.
cannot-log-bad-z = z 값 { $z }, 기준 { $reference } 은(는) 맞지 않습니다. z는 1에서 50 사이, 기준은 -50에서 150 사이입니다.
cannot-log-bad-pairs = 시간이 서로 다르고 0보다 큰 두 쌍이 있어야 합니다.
cannot-log-gap = { $seconds } 동안 잰 것이 없고, { $gap } 넘게 재지 않으면 안 됩니다. 그 틈이 없는 기록을 쓰세요.
cannot-date-unknown-zone = “{ $zone }” 은(는) 여기서 모르는 시간대입니다. Europe/Berlin 같은 이름을 쓰고, 시간대 자료(tzdata)가 설치되었는지 보세요.
cannot-date-has-zone = { $local } 에는 이미 시간대가 있습니다. 벽시계가 보인 시각을 쓰세요.
cannot-date-twice = { $zone } 에서는 그날 밤 { $local } 이(가) 두 번 왔습니다: { $first }, { $second }. 어느 것인지 말하세요.
cannot-date-skipped = { $zone } 에서는 시계를 앞당겨 { $local } 이(가) 오지 않았습니다. { $first } 또는 { $second } 입니다. 어느 것인지 말하세요.
cannot-date-ends-first = { $end } 이(가) { $begin } 보다 먼저입니다. 둘을 바꾸거나 틀린 것을 고치세요.
cannot-date-bad-freeze = { $frozen } 에 얼린 것은 { $before } 다음이 될 수 없습니다. 날짜를 고치세요.
cannot-date-still-frozen = 녹이지 않고 { $frozen } 에 다시 얼렸습니다. 언제 녹였는지 적으세요.
cannot-date-frozen-unopened = 냉동실에 있던 시간은 있는데 연 날이 없습니다. 적으세요.
cannot-date-absurd-year = { $day } 은(는) 믹스를 쓰는 날일 수 없습니다. 해를 고치세요.
cannot-date-no-packages = 기록된 믹스가 없습니다. 냉장고에 있는 것을 적으세요.
cannot-date-bad-instant = { $at } 은(는) 시각이 아닙니다. 1970년부터의 초를 쓰세요.
cannot-plate-bad-dilution = 희석 { $dilution }: 1:100은 0.01로, 희석하지 않은 것은 1로 쓰세요.
cannot-plate-bad-volume = 부피 { $volume }: 평판에 넣은 밀리리터를 0보다 크게 쓰세요.
cannot-plate-bad-spread = 번진 넓이 { $spread }: 0.25처럼 평판에서 차지하는 비율을 쓰세요.
cannot-plate-bad-colonies = 집락 { $colonies }: 0 이상으로 쓰세요.
cannot-plate-no-area = 제곱센티미터마다 집락이 100개를 넘는 평판은 넓이를 제곱센티미터로 써야 합니다.
cannot-plate-no-plate = 평판이 없습니다. 하나 이상 쓰세요.
cannot-plate-no-count = 표시만 한 평판에는 센 수가 없습니다.
cannot-tubes-bad-amount = 시험관에 { $amount }: 시료의 그램을 0보다 크게 쓰세요.
cannot-tubes-bad-tubes = 시험관 { $tubes }: 이 양을 넣은 시험관이 몇 개인지 1 이상으로 쓰세요.
cannot-tubes-bad-positive = 시험관 { $tubes } 가운데 양성 { $positive }: 0에서 { $tubes } 사이로 쓰세요.
cannot-tubes-no-tubes = 시험관이 없습니다. 희석을 하나 이상 쓰세요.
cannot-tubes-one-tube = 시험관 하나로는 수를 알 수 없습니다. 둘 이상 쓰세요.
cannot-plan-no-sample = n = { $n }: 계획에는 시료가 하나 이상 있어야 합니다.
cannot-plan-bad-c = c = { $c }: 0에서 n까지 쓰세요. 여기서는 { $n } 입니다.
cannot-plan-bad-m = m = { $m }: 0 이상으로 쓰세요.
cannot-plan-bad-top = M = { $top }: M은 m = { $m } 보다 커야 합니다. 두 등급에는 M이 없습니다.
cannot-plan-other-number = 시료 { $n } 개의 계획에 { $given } 개입니다. 한 묶음의 결과 { $n } 개를 쓰세요.
cannot-result-number-missing = 이런 결과에는 숫자가 있어야 합니다.
cannot-result-number-too-many = 이런 결과에는 숫자가 없어야 합니다.
cannot-result-bad-number = { $value } 은(는) 센 수가 아닙니다. 0 이상으로 쓰세요.
cannot-result-no-result = “{ $text }” 은(는) 결과가 아닙니다. 1200, < 10, > 1100, spreaders처럼 쓰세요.
cannot-limit-several-limits = { $title }: { $product }의 { $test } 한계가 { $count } 개입니다. 하나만 두세요.
cannot-limit-no-limit = { $title }: { $product }의 { $test } 한계가 없습니다.
cannot-limit-other-unit = { $title }의 한계는 { $limit_per } 기준이고, 이 결과는 { $per } 기준입니다.
cannot-limit-no-authority = “{ $called }” 이라는 당국은 없습니다. 아는 것: { $known }.
cannot-limit-no-plan = “{ $called }” 이라는 시료 계획은 없습니다. 아는 것: { $known }.

reckon-dose = 소독제: 얼마나 넣을까
call-dose = 얼마나 넣을까요
ask-dose-unit = 물을 리터, 갤런, 쿼트 가운데 무엇으로 말합니까?
ask-dose-water = 물이 얼마입니까?
ask-dose-wanted = 농도를 몇 피피엠으로 할까요?
pick-in-litres = 리터로
pick-in-gallons = 갤런으로
pick-in-quarts = 쿼트 단위
dose-put = 물 { $water }에 { $count }봉지를 넣으세요. 그러면 { $strength }입니다.
dose-put-one = 물 { $water }에 한 봉지를 넣으세요. 그러면 { $strength }입니다.
dose-rounded = 정확한 양은 { $exact }봉지입니다. 통째로 넣으면 { $gained } 더 진합니다.
dose-exact = 정확합니다. 반올림하지 않았습니다.
dose-grams = 무게로는 { $grams } 이 정확한 양입니다.
dose-in-range = { $least }에서 { $most } 사이입니다. 시험지로 확인하세요.
dose-below-range = 너무 약합니다. { $least }에서 { $most } 사이여야 합니다.
dose-above-range = 너무 진합니다. { $least }에서 { $most } 사이여야 합니다.
dose-no-range = 이 매장의 한계에는 범위가 없습니다. 제품 표시를 따르세요.
dose-wanted-over-cap = { $wanted }은 헹구지 않고 쓸 수 있는 상한 { $cap }을 넘습니다. 그 이하로 하세요.
dose-over-cap = 통째로 { $count }봉지가 필요합니다. { $water }에 넣으면 { $strength }이 되어 상한 { $cap }을 넘습니다. 물을 { $needed } 이상 쓰세요.

reckon-strength = 소독제: 충분히 진한가
call-strength = 충분히 진한가요
ask-strength-strip = 시험지가 몇 피피엠입니까?
ask-strength-acidity = 소독액의 피에이치, 산도는 얼마입니까?
ask-strength-temperature = 소독액은 몇 도입니까?
strength-passes = 충분히 진합니다. { $time } 이상 두세요.
strength-passes-at-once = 충분히 진합니다. 정해진 시간은 없습니다.
strength-label-first = 제품 표시가 더 요구하면 제품 표시를 따르세요.
strength-any-ph = 피에이치를 재지 않았습니다. 규정이 { $most }까지의 모든 피에이치에 허용하는 것만 보았습니다.
pick-not-measured = 재지 않았어요
strength-no-row = 통과하지 못합니다. 규정에 이런 소독액이 없습니다.
strength-over-cap = 헹구지 않고 쓰기에는 너무 진합니다.
strength-off-label = 통과하지 못합니다. 제품 표시가 허용하지 않습니다.
strength-no-contact-time = 통과하지 못합니다. 얼마 동안 두어야 하는지 정해져 있지 않습니다.
strength-no-table = 이 매장의 한계, { $profile }에는 소독액 표가 없어 통과할 수 없습니다. 관리자에게 물으세요.
strength-to-mend = 고치려면:
strength-or = 또는:
strength-test-again = 그다음 다시 재세요.
strength-ask = 관리자에게 물으세요.
need-stronger = { $value } 이상으로 진하게 하세요.
need-weaker = 물을 더 넣어 { $value } 이하로 하세요.
need-warmer = { $value } 이상으로 데우세요.
need-lower-ph = 피에이치를 { $value } 이하로 낮추세요.
need-softer-water = 경도 { $value } 이하의 물을 쓰세요.
need-measure-strength = 농도를 재세요.
need-measure-ph = 피에이치를 재세요.
need-measure-ph-up-to = 피에이치를 재세요. { $value } 이하여야 합니다.
need-measure-temperature = 온도를 재세요.
need-measure-hardness = 물의 경도를 재세요.
need-read-label = 제품 표시의 값을 입력하세요.

reckon-free-chlorine = 소독제: 산도가 중요한 까닭
call-free-chlorine = 염소와 산도
ask-free-chlorine-kind = 액체 염소입니까, 가루나 알약입니까?
ask-free-chlorine-strip = 시험지가 몇 피피엠입니까?
ask-free-chlorine-acidity = 소독액의 피에이치, 산도는 얼마입니까?
ask-free-chlorine-temperature = 소독액은 몇 도입니까?
pick-bleach = 액체 염소
pick-powder = 가루나 알약
free-chlorine-share = 피에이치 { $ph }에서 유리 염소의 { $percent } 퍼센트가 빨리 죽이는 꼴입니다. { $free } 가운데 { $acid }입니다.
free-chlorine-at-most = 가루 제품은 염소 일부를 붙잡고 있어 이보다 적습니다.
free-chlorine-extrapolated = 물이 공식의 범위보다 뜨겁습니다.
free-chlorine-explains = 왜 산도를 재는지 설명할 뿐입니다. 이것으로 합격이나 불합격을 정하지 않습니다.

reckon-cold = 믹스: 줄곧 차가웠는가
call-cold = 줄곧 차가웠나요
ask-cold-hours = 믹스가 차가운 것을 마지막으로 잰 것이 몇 시간 전입니까? 아무도 모르면 72시간이라고 답하세요.
ask-cold-now = 지금 믹스는 몇 도입니까?
ask-cold-power = 그 뒤로 정전이 있었습니까?
ask-cold-plan = 냉장 없이 두는 절차를 적은 문서가 있고, 용기에 버릴 시각이 적혀 있습니까?
ask-cold-watched = 그 뒤로 매시간 쟀고, 화씨 70도, 섭씨 21도를 넘은 적이 없습니까?
pick-stayed-on = 전기는 켜져 있었어요
pick-was-out = 정전이 있었어요
pick-not-known = 아무도 몰라요
pick-plan-there = 둘 다 있어요
pick-plan-missing = 빠진 것이 있어요
pick-watched = 매시간 쟀어요
pick-not-watched = 그렇게 자주는 못 했어요
cold-kept = 두 번 모두 차가웠고 지금은 { $now }이며, 전기는 켜져 있었습니다. 팔아도 됩니다.
cold-unwatched = 믹스는 지금 차갑습니다: { $now }. 그러나 { $time } 동안 아무도 재지 않았습니다. 그 시간은 모르는 시간이며, 차가웠다고 볼 수 없습니다.
cold-watch-it = 관리자가 결정하기 전에는 팔지 마세요. 지금부터 네 시간마다 재세요.
cold-left = { $left } 동안 더 팔 수 있습니다. 그다음에는 버리세요.
cold-clock-runs = 믹스가 다시 차가워져도 시간은 계속 갑니다.
cold-throw-away = 이 믹스는 팔지 말고 버리세요.
cold-unknown-is-warm = 아무도 보지 않은 시간은 따뜻했던 것으로 칩니다.
cold-ground-no-procedure = 적어 둔 절차가 없습니다.
cold-ground-start-not-cold = 처음에 차가웠다는 기록이 없습니다.
cold-ground-unmarked = 용기에 버릴 시각이 없습니다.
cold-ground-marked-too-late = 적힌 버릴 시각이 규칙보다 늦습니다.
cold-ground-time-is-up = 냉장 없이 둘 수 있는 시간이 지났습니다.
cold-ground-too-warm = 규칙이 허용하는 것보다 따뜻했습니다.
cold-ground-not-watched = 잰 기록이 빠져 있어 얼마나 따뜻했는지 모릅니다.

reckon-growth = 믹스: 균이 얼마나 늘까
call-growth = 세균 증식
ask-growth-temperature = 믹스는 몇 도입니까?
ask-growth-hours = 몇 시간 동안입니까?
growth-listeria = { $temperature }에서 { $time } 동안 리스테리아가 { $times }배로 늘 수 있습니다. 로그로는 { $log }입니다.
growth-spoilers = 우유를 상하게 하는 균은 { $times }배로 늘 수 있습니다. 로그로는 { $log }입니다.
growth-explains = 규칙이 엄한 까닭을 설명할 뿐입니다. 합격은 규칙으로 정하며, 이것으로 정하지 않습니다.

reckon-use-by = 믹스: 마지막 날
call-use-by = 마지막 날
ask-use-by-state = 봉지가 열려 있습니까, 아직 닫혀 있습니까?
ask-use-by-opened = 며칠 전에 열었습니까? 오늘은 영입니다.
ask-use-by-frozen = 그 뒤로 온전히 며칠을 냉동실에 있었습니까? 넣은 날과 꺼낸 날은 세지 않습니다.
ask-use-by-printed = 제조사의 기한이 찍혀 있습니까?
ask-use-by-when = 그 날짜가 아직 남았습니까, 이미 지났습니까? 오늘이면 아직 남은 것입니다.
ask-use-by-date = 그 날짜까지, 또는 그 날짜부터 며칠입니까? 오늘은 영입니다.
pick-opened = 열려 있어요
pick-sealed = 아직 닫혀 있어요
pick-nobody-wrote = 언제 열었는지 몰라요
pick-date-printed = 날짜가 있어요
pick-no-date = 찍힌 것이 없어요
pick-still-to-come = 아직 남았어요
pick-already-over = 이미 지났어요
use-by-last-day = 마지막 날은 { $day }입니다. 오늘을 넣어 남은 날: { $left }.
use-by-then-away = 그날이 지나면 버리세요.
use-by-kept-cold = { $most } 이하로 보관한 믹스에만 맞습니다.
use-by-throw-away = 이 봉지는 쓰지 말고 버리세요.
use-by-frozen-too-long = { $opened }일 전에 열었다면 온전히 { $frozen }일을 얼려 둘 수 없습니다. 날수를 다시 말하세요.
bar-too-warm = 너무 따뜻하게 두었거나, 몇 도였는지 아무도 모릅니다.
bar-undated = 언제 열었는지, 언제까지인지 아무도 적지 않았습니다.
bar-wrongly-dated = 날짜가 맞지 않습니다.
bar-frozen = 얼어 있습니다. 먼저 녹이세요.
bar-days-are-up = 열어 둘 수 있는 날이 다 지났습니다.
bar-makers-date-passed = 제조사의 기한이 지났습니다.
bar-mark-passed = 표시된 마지막 날이 지났습니다.

reckon-pour-next = 믹스: 다음에 부을 봉지
call-pour-next = 다음 봉지
ask-pour-next-state = 봉지 { $place }: 열려 있습니까, 아직 닫혀 있습니까?
ask-pour-next-opened = 봉지 { $place }: 며칠 전에 열었습니까? 오늘은 영입니다.
ask-pour-next-printed = 봉지 { $place }: 제조사의 기한이 찍혀 있습니까?
ask-pour-next-when = 봉지 { $place }: 그 날짜가 아직 남았습니까, 이미 지났습니까? 오늘이면 아직 남은 것입니다.
ask-pour-next-date = 봉지 { $place }: 그 날짜까지, 또는 그 날짜부터 며칠입니까? 오늘은 영입니다.
ask-pour-next-another = 봉지 { $place }: 적었습니다. 봉지가 더 있습니까?
pick-another = 하나 더 있어요
pick-no-more = 그게 다예요
pour-first = 다음은 봉지 { $bag }을 부으세요. 마지막 날은 { $day }입니다.
pour-then = 그다음은 봉지 { $bag }입니다. 마지막 날은 { $day }입니다.
pour-not = 봉지 { $bag }은 쓰지 마세요.
pour-none = 부을 수 있는 봉지가 없습니다.

reckon-heat-treatment = 가열: 팔아도 되는가
call-heat-treatment = 가열 처리
ask-heat-treatment-coldest = 뜨겁게 유지하는 동안 믹스의 가장 찬 곳은 몇 도였습니까?
ask-heat-treatment-minutes = 몇 분 동안 유지했습니까?
ask-heat-treatment-ended = 몇 시간 전에 끝났습니까?
ask-heat-treatment-strip = 기계를 모두 분해해서 씻고 소독한 것이 며칠 전입니까?
heat-allowed = 기계를 써도 됩니다. 더 하지 않으면 { $left } 뒤에 잠깁니다.
heat-locked = 판매가 잠겼습니다.
heat-only-this-pair = 규정에 있는 조합만 됩니다. 모든 곳이 { $hot } 이상으로 끊김 없이 { $time }입니다.
heat-lapse-no-heat = 가열 기록이 없습니다.
heat-lapse-heat-failed = 가열이 모자랐습니다. 가장 찬 곳이 { $coldest }로 { $minutes }이었습니다.
heat-lapse-heat-overdue = 마지막 가열이 끝난 지 하루가 넘었습니다. 지금 가열하세요.
heat-lapse-no-strip = 모두 분해한 기록이 없습니다.
heat-lapse-strip-overdue = { $days }일이 넘도록 기계를 분해하지 않았습니다. 분해해서 씻고 소독하세요.

reckon-plate-count = 검사실: 평판 균수
call-plate-count = 평판 세기
ask-plate-count-rule = 어느 규칙입니까? 미국 규칙입니까, 국제 규격입니까?
ask-plate-count-exponent = 평판 { $place }: 십 배 희석이 몇 번째입니까? 백 배는 번호 이, 희석하지 않으면 번호 영입니다.
ask-plate-count-kind = 평판 { $place }: 셀 수 있었습니까?
ask-plate-count-colonies = 평판 { $place }: 집락이 몇 개입니까?
ask-plate-count-more = 평판 { $place }: 적었습니다. 평판이 더 있습니까?
pick-fda-rule = 미국 규칙
pick-iso-rule = 국제 규격
pick-counted = 세었습니다
pick-too-full = 너무 많아요
pick-overgrown = 번져서 자랐어요
pick-spoiled-plate = 검사실 사고
pick-another-plate = 하나 더 있어요
plate-exact = 그램당 집락 { $amount }개입니다.
plate-estimated = 그램당 집락 { $amount }개로 추정됩니다.
plate-less-than = 그램당 집락 { $amount }개 미만입니다.
plate-more-than = 그램당 집락 { $amount }개를 넘습니다.
plate-spreaders = 모든 평판에 균이 너무 번져서 셀 수 없습니다. 다시 검사하세요.
plate-laboratory-accident = 쓸 수 있는 평판이 없습니다. 다시 검사하세요.
plate-why-out-of-range = 집락이 { $least }개에서 { $most }개 밖인 평판은 뺐습니다.
plate-why-other-dilution = 이어진 처음 두 희석이 아닌 평판은 뺐습니다.
plate-why-spreader = 사분의 일 넘게 번진 평판은 뺐습니다.
plate-why-accident = 사고가 난 평판은 뺐습니다.
plate-why-all-low = 모든 평판의 집락이 { $least }개보다 적습니다.
plate-why-no-colonies = 집락이 있는 평판이 없습니다.
plate-why-all-high = 모든 평판의 집락이 { $most }개보다 많습니다.
plate-why-none-in-range = 집락이 { $least }개에서 { $most }개인 평판이 없습니다.
plate-why-no-number = 가장 많은 평판을 셀 수 없었습니다.
plate-why-present = 집락이 있지만 추정하기에는 너무 적습니다.

reckon-mpn = 검사실: 최확수
call-mpn = 시험관 셋
ask-mpn-tenth = 십분의 일 그램 시험관 셋 가운데 양성이 몇 개입니까?
ask-mpn-hundredth = 백분의 일 그램 시험관 셋 가운데 양성이 몇 개입니까?
ask-mpn-thousandth = 천분의 일 그램 시험관 셋 가운데 양성이 몇 개입니까?
mpn-exact = 최확수는 그램당 { $amount }입니다.
mpn-less-than = 최확수는 그램당 { $amount } 미만입니다.
mpn-more-than = 최확수는 그램당 { $amount }을 넘습니다.
mpn-limits = 95 퍼센트 신뢰로 { $low }에서 { $high } 사이입니다.
mpn-limit-below = 95 퍼센트 신뢰로 { $low } 이상입니다.
mpn-improbable = 이런 시험관은 매우 드뭅니다. 실수가 있었는지 보고 다시 검사하세요.

reckon-lot = 검사실: 한 묶음의 시료
call-lot = 시료 검사
ask-lot-plan = 어느 시료 계획입니까?
ask-lot-count = 시료 { $place }: 그램당 집락이 몇 개입니까?
ask-lot-found = 시료 { $place }: 나왔습니까?
pick-eu-ice-cream-enterobacteriaceae = 장내 세균
pick-eu-listeria-shelf-life = 매장의 리스테리아
pick-eu-listeria-at-producer = 판매 전 균 검사
pick-eu-ice-cream-salmonella = 살모넬라 검사
pick-found = 나왔어요
pick-not-found = 하나도 없어요
lot-satisfactory = 이 묶음은 만족스럽습니다.
lot-acceptable = 이 묶음은 받아들일 수 있습니다. 위생을 살피세요.
lot-unsatisfactory = 이 묶음은 불합격입니다. 관리자를 부르세요.
lot-unknown = 이 시료로는 알 수 없습니다. 다시 검사하세요.
lot-above = { $limit }을 넘은 시료: { $of } 가운데 { $above }. 많아야 { $may }까지 됩니다.
lot-above-top = { $limit }을 넘은 시료: { $above }. 하나도 없어야 합니다.
lot-presence = 시료 { $of } 가운데 { $found }에서 나왔습니다. 하나도 없어야 합니다.
ask-lot-bound = 시료 { $place }: 보고서에 몇 개 미만이라고 적혀 있습니까?

reckon-authority = 검사실: 당국의 조치
call-authority = 당국의 조치
ask-authority-who = 누구의 한계입니까?
ask-authority-test = 어느 검사입니까?
ask-authority-product = 무엇의 시료입니까?
ask-authority-results = 서로 다른 날의 마지막 결과가 몇 번입니까? 많아야 다섯 번입니다.
ask-authority-result = 결과 { $place }, 오래된 것부터: 집락이 몇 개입니까?
pick-usda = 미국 농무부
pick-iowa = 아이오와
pick-maryland = 메릴랜드
pick-north-carolina = 노스캐롤라이나
pick-kansas = 캔자스
pick-connecticut = 코네티컷
pick-houston = 휴스턴
pick-california-frozen-yogurt = 캘리포니아
pick-grade-a-milk = 우유 조례
pick-total-count = 총 균수
pick-coliform = 대장균
pick-enterobacteriaceae = 장내 세균
pick-listeria-monocytogenes = 리스테리아
pick-salmonella = 살모넬라
pick-yeast = 효모
pick-mold = 곰팡이
pick-plain = 기본 아이스크림
pick-bulky = 과일이나 초콜릿
pick-sherbet = 셔벗
pick-frozen-yogurt = 얼린 요구르트
pick-mix = 얼리기 전 믹스
pick-milk = 우유
authority-clear = 이상 없음: 마지막 { $of }번 가운데 { $over }번이 한계를 넘었습니다.
authority-notice = 통지: 마지막 { $of }번 가운데 { $over }번이 한계를 넘었습니다. 통지 뒤 3일에서 21일 사이에 시료를 다시 뜨세요.
authority-action = 조치: 마지막 { $of }번 가운데 { $over }번이 한계를 넘었습니다. 당국이 판매를 막을 수 있습니다.
authority-each-clear = 마지막 결과는 한계 안입니다.
authority-each-action = 조치: 마지막 결과가 한계를 넘었습니다. 한 번도 넘으면 안 됩니다.
authority-average-kept = 마지막 네 결과의 로그 평균은 한계 안입니다.
authority-average-over = 조치: 마지막 네 결과의 로그 평균이 한계를 넘었습니다.
authority-limit-g = 한계는 그램당 { $limit }입니다.
authority-limit-ml = 한계는 밀리리터당 { $limit }입니다.
authority-cleared-by = 한계 안의 결과가 잇달아 필요한 날: { $days }.
authority-rule-not-stated = 이 당국은 잇단 결과에 대한 규칙을 밝히지 않습니다. 마지막 넷 중 둘, 다섯 중 셋으로 판단했습니다.
ask-authority-bound = 결과 { $place }: 보고서에 몇 개 미만이라고 적혀 있습니까?
authority-unknown = 알 수 없음: 마지막 { $of }번 가운데 { $over }번은 분명히 한계를 넘었고, 다른 것도 넘었을 수 있습니다.
authority-each-unknown = 알 수 없음: 마지막 결과가 한계를 넘었을 수 있습니다.
authority-average-unknown = 알 수 없음: 마지막 네 결과의 로그 평균이 한계를 넘었을 수 있습니다.
authority-may-be-action = 이미 조치에 해당할 수 있습니다.

reckon-trend = 검사실: 이른 경고
call-trend = 이른 경고
ask-trend-test = 어느 검사입니까?
ask-trend-limit = 한계는 그램당 집락 몇 개입니까?
ask-trend-results = 결과가 몇 번입니까? 적어도 여덟 번입니다.
ask-trend-result = 결과 { $place }, 오래된 것부터: 집락이 몇 개입니까?
trend-too-few-results = 추세를 보기에는 결과가 너무 적습니다.
trend-steady = 결과는 고릅니다.
trend-shift = 이동 평균이 관리 한계를 넘었습니다.
trend-rise = 결과가 시간이 갈수록 높아집니다.
trend-early = 아직 { $limit }을 넘은 결과는 없습니다. 지금 이 통의 세척을 살피세요.
trend-over = 이미 { $limit }을 넘은 결과가 있습니다.
trend-no-chart = 관리도를 그리기에는 서로 다른 값이 너무 적습니다.
trend-even-days = 결과 사이의 시간이 같은 것으로 보았습니다.
trend-needs-scipy = 추세에는 scipy 라이브러리가 필요한데 설치되어 있지 않습니다. 설치: pip install "brushdown[laboratory]".
ask-trend-bound = 결과 { $place }: 보고서에 몇 개 미만이라고 적혀 있습니까?
pick-below-detection = 검출 한계 아래
results-left-open = 보고서가 더 큰 수 미만이라고만 해서 { $limit }을 넘었을 수 있는 결과: { $count }. 덜 희석해서 다시 검사하게 하세요.

## Numbers of the job
typed-nothing = 입력된 것이 없습니다. 숫자를 입력하세요.
typed-no-number = “{ $text }” 은(는) 숫자가 아닙니다. 38.5처럼 숫자로 입력하세요.
typed-fraction = “{ $text }” 에 분수나 위 첨자가 있습니다. 0.5처럼 소수로 입력하세요.
typed-two-readings = “{ $text }” 은(는) { $first } 또는 { $second } 로 읽을 수 있습니다. { $first } 또는 { $second } 로 입력하세요.
typed-mixed = “{ $text }” 에 숫자가 둘 이상 있습니다. 한 가지 단위의 숫자 하나로 계산해서 입력하세요.
typed-no-unit = “{ $text }” 에 단위가 없습니다. 다음 중 하나를 붙이세요: { $units }.
typed-unknown-unit = “{ $unit }” 은(는) 여기서 모르는 단위입니다. 다음 중 하나를 쓰세요: { $units }.
typed-ounce = “{ $unit }” 은(는) 무게인데 부피가 필요합니다. 액량 온스는 fl oz로 입력하세요.
typed-negative = { $number } 은(는) 영보다 작습니다. { $least } 부터 { $most } 까지의 숫자를 입력하세요.
typed-out-of-range = { $number } 은(는) 맞을 수 없습니다. { $least } 와 { $most } 사이여야 합니다.
typed-no-time = “{ $text }” 은(는) 시각이 아닙니다. 21:30처럼 입력하세요.
typed-no-such-time = “{ $text }” 라는 시각은 없습니다. 마지막 시각은 23:59이고, 오전이나 오후를 붙이면 12:59입니다.
typed-twelve = “{ $text }” 은(는) 자정일 수도 정오일 수도 있습니다. { $first } 또는 { $second } 로 입력하세요.
typed-half-of-day = “{ $text }” 은(는) 오전일 수도 오후일 수도 있습니다. { $first } 또는 { $second } 로 입력하세요.

## Push-to-talk
ear-press-to-talk = 듣지 않습니다: { $key } 키를 누르고 말하세요
ear-pressed = 듣고 있습니다. 그만하려면 { $key } 키를 누르세요

refused-press-for-hold = 직접 가르친 말로는 안전 확인에 답할 수 없습니다. 화면에서 누르세요.

## Voice test
voice-test-begin = 2분쯤 걸립니다. 일할 때처럼 입고, 일하는 자리에 서고, 기계는 켜 두세요.
voice-test-speak = 1. 안내기에 말하듯이 { $seconds }초 동안 말하세요. 지금 시작하세요.
voice-test-level = 목소리: { $rms } dB, 최고 { $peak } dB (최대 기준).
voice-test-silent = 2. { $seconds }초 동안 조용히 하세요. 지금 시작하세요.
voice-test-noise = { $n ->
    [0] 주변: { $rms } dB. 소음을 말로 듣지 않았습니다.
   *[other] 주변: { $rms } dB. 소음을 말로 { $n }번 들었습니다.
}
voice-test-say = 3. 화면에 나오는 말을 하나씩 하세요.
voice-test-right = 알아들음
voice-test-wrong = “{ $text }” 로 들음
voice-test-rejected = 알아듣지 못함
voice-test-nothing = 아무 소리도 듣지 못함
voice-test-count = { $said }개 가운데 { $right }개를 알아듣고, { $rejected }개는 알아듣지 못하고, { $wrong }개는 다른 말로 들었습니다.
voice-test-above = 목소리가 주변보다 { $decibels } dB 컸습니다.
voice-test-no-ear = { $why }
voice-test-good = 이 자리에서는 말로 일할 수 있습니다.
voice-test-bad = 이 자리에서는 말로 일하기 어렵습니다.

spot-nothing-heard = 말소리를 듣지 못했습니다. 마이크가 맞는지, 켜져 있는지, 소리 크기가 맞는지 보세요.
spot-no-ear = 이 언어를 들을 수 없습니다. 화면을 눌러 일하거나, 음성 모델을 더하거나, 직접 말을 가르치세요: kiosk voice teach.
spot-too-loud = 마이크 소리가 너무 커서 큰 소리가 잘립니다. 마이크를 줄이세요.
spot-too-faint = 목소리가 너무 작게 들어옵니다. 마이크를 입에 더 가까이 하거나 소리를 키우세요.
spot-nearer = 마이크를 입에 더 가까이 하세요. 입 옆으로 손가락 두 개 거리가 가장 좋습니다.
spot-other-place = 여기는 시끄럽습니다. 다른 자리에서 하거나, 일하는 동안 기계와 음악을 끄세요.
spot-push-to-talk = 계속 시끄러우면 눌러서 말하기를 쓰세요: site.toml의 [hearing] 아래에 push_to_talk = true.
spot-wrong-heard = 한 말을 다른 말로 들었습니다. 네라고 말하기 전에 화면에서 들은 말을 읽으세요.
spot-own-words = 소음 때문이 아닙니다. 느리게 말하지 말고 평소처럼 말하거나, 직접 말을 가르치세요: kiosk voice teach.
spot-touch = 그때까지는 화면을 눌러 일하세요. 모든 단계를 화면에서 할 수 있습니다.

## Own words
teach-begin = 조용한 곳에서 직접 쓰는 말을 가르치세요. 말마다 세 번 말합니다. 소리의 모양만 숫자로 남기고 녹음은 남기지 않습니다.
teach-word = “{ $word }” 대신 쓸 말:
teach-too-short = 너무 짧았습니다. 다시 말하세요.
teach-too-long = 너무 길었습니다. 짧은 말로 하세요.
teach-too-loud = 너무 커서 소리가 잘렸습니다. 마이크를 멀리 하세요.
teach-too-faint = 너무 작았습니다. 마이크를 가까이 하세요.
teach-too-noisy = 여기는 너무 시끄럽습니다. 조용한 곳에서 가르치세요.
teach-unlike = 앞의 것과 다르게 들렸습니다. 매번 똑같이 말하세요.
teach-like-another = 가르친 다른 말과 비슷합니다. 다른 말을 고르세요.
teach-nothing-heard = 아무 소리도 듣지 못했습니다.
teach-given-up = “{ $word }” 을(를) 가르치지 못해서 아무것도 남기지 않았습니다. 더 긴 말이나 더 조용한 곳에서 처음부터 다시 하세요.
teach-tried = 표본 { $said }개 가운데 { $right }개를 나머지 표본으로 알아들었을 것입니다.
teach-kept = 가르친 말은 { $file } 에 있습니다. 개인 정보이니 쓰지 않게 되면 --forget 으로 지우세요.
teach-holds = 안전 확인에는 이 말로 답할 수 없습니다. 문장을 모두 말하거나 누르세요.
teach-forgotten = { $worker } 님이 가르친 말을 지웠습니다.
teach-nothing-kept = { $worker } 님이 가르친 말이 없습니다.

## Deviations
found-problem-open = { $named ->
    [yes] 문제, { $time } 동안 해결되지 않음: { $reason }. 단계: { $what }
   *[other] 이유를 말하지 않은 문제, { $time } 동안 해결되지 않음. 단계: { $what }
}
found-problem = { $became ->
    [put-right] { $named ->
        [yes] 문제: { $reason }. 작업자가 해결했다고 하고 계속했습니다. 단계: { $what }
       *[other] 이유를 말하지 않은 문제. 작업자가 계속했습니다. 단계: { $what }
    }
    [out-of-service] { $named ->
        [yes] 문제: { $reason }. 기계 사용을 중지했습니다. 단계: { $what }
       *[other] 이유를 말하지 않은 문제. 기계 사용을 중지했습니다. 단계: { $what }
    }
   *[other] { $named ->
        [yes] 문제: { $reason }. 작업을 끝냈습니다. 단계: { $what }
       *[other] 이유를 말하지 않은 문제. 작업을 끝냈습니다. 단계: { $what }
    }
}
found-out-of-service = 기계 사용을 중지했습니다. 단계: { $what }
found-ended-early = 작업을 끝나기 전에 마쳤습니다. 단계: { $what }
found-unfinished = { $time } 동안 아무 일도 없고 작업이 끝나지 않았습니다. 단계: { $what }
found-no-way-in = 안전하게 계속할 방법이 없었습니다. 단계: { $what }
found-hold-touched-after-doubt = 불확실한 말(“{ $heard }”) 뒤에 안전 확인을 눌러서 했습니다: { $what }
found-hold-read-back-refused = “{ $heard }” 소리를 안전 문구로 들었고, 작업자가 아니라고 했습니다: { $what }
found-try-out-failed = 시험해 보니 아니었습니다: { $what }
found-wait-short = { $clock ->
    [wall] 벽시계로는 { $needed } 가운데 { $waited }만 지났습니다. 시계를 바꾸었습니까? { $what }
   *[other] { $needed } 가운데 { $waited }만 지났습니다: { $what }
}
found-wait-cut = { $needed } 가운데 { $waited } 뒤에 중단: { $what }
found-reading-off = { $told ->
    [yes] { $what }: { $number }, 한계({ $limit })를 벗어났습니다. 할 일: { $corrective } 그다음 값: { $then }.
   *[other] { $what }: { $number }, 한계({ $limit })를 벗어났습니다. 정해진 조치가 없습니다. 그다음 값: { $then }.
}
found-reading-left-off = { $told ->
    [yes] { $what }: { $number }, 한계({ $limit })를 벗어났고, 그 뒤에 한계를 지킨 값이 없습니다. 할 일: { $corrective }
   *[other] { $what }: { $number }, 한계({ $limit })를 벗어났고, 그 뒤에 한계를 지킨 값이 없습니다. 정해진 조치가 없습니다.
}
found-count-off = { $told ->
    [yes] { $what }: { $number }개를 셌습니다({ $limit }). 할 일: { $corrective } 그다음 { $then }개를 셌습니다.
   *[other] { $what }: { $number }개를 셌습니다({ $limit }). 그다음 { $then }개를 셌습니다.
}
found-count-left-off = { $told ->
    [yes] { $what }: { $number }개를 셌고({ $limit }), 바로잡지 않았습니다. 할 일: { $corrective }
   *[other] { $what }: { $number }개를 셌고({ $limit }), 바로잡지 않았습니다.
}
found-passes-ran-out = { $number }번째에도 아직 좋지 않았습니다: { $what }
found-too-fast = { $time } 만에 확인했지만 { $least } 이상 걸리는 일입니다: { $what }
found-none-in-stock = 예비 부품 없음: { $what }
found-shorter-than-usual = 작업에 { $time } 걸렸습니다. 앞선 { $number }번의 가운데 값은 { $usual }입니다.
found-longer-than-usual = 작업에 { $time } 걸렸습니다. 앞선 { $number }번의 가운데 값은 { $usual }입니다.
found-restarted = { $power ->
    [cut] 컴퓨터가 다시 켜졌고, 작업이 { $time } 멈췄습니다. 단계: { $what }
   *[other] 안내기가 다시 시작되었고, 작업이 { $time } 멈췄습니다. 단계: { $what }
}
found-back-step = “{ $what }”에서 “{ $to }” 단계로 되돌아갔습니다.
found-touch-only = 이 기계에서 음성이 되는데도 { $number }단계 모두 눌러서 확인했습니다.
found-text-unknown = { $procedure } 버전 { $version } ({ $digest })의 글이 이제 없습니다. 속도, 시간, 부품을 모두 판단하지는 못했습니다.
found-session-early = { $machine }, { $day }: { $duty ->
    [close] 저녁 작업
    [open] 아침 작업
   *[other] { $title }
} 끝난 때 { $at }, 제시간({ $begins }부터 { $until }까지)보다 훨씬 먼저입니다.
found-session-late = { $machine }, { $day }: { $duty ->
    [close] 저녁 작업
    [open] 아침 작업
    [check] 영업 중 점검
   *[other] { $title }
} 끝난 때 { $at }. 제시간은 { $begins }부터 { $until }까지였습니다.
found-session-not-finished = { $machine }, { $day }: { $duty ->
    [close] 저녁 작업
    [open] 아침 작업
    [check] 영업 중 점검
   *[other] { $title }
} 시작했지만 끝내지 않음, 마지막 작업 { $at }. 제시간은 { $begins }부터 { $until }까지였습니다.
found-session-never-started = { $machine }, { $day }: { $duty ->
    [close] 저녁 작업
    [open] 아침 작업
    [check] 영업 중 점검
   *[other] { $title }
} 시작하지 않음. 제시간은 { $begins }부터 { $until }까지였습니다.
found-overdue = { $machine }: { $duty ->
    [sample] 실험실 시료
   *[other] { $title }
}, 기한 { $day }, 기록 없음.
due-close = 저녁 작업: { $machine }
due-open = 아침 작업: { $machine }
due-check = 영업 중 점검: { $machine }
due-sample = 실험실 시료: { $machine }
due-other = { $title }: { $machine }

### 키오스크의 한국어 문구. 기계 초안이며, 한국어 사용자의 검토가 필요하다.

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
say-yes = 네 / 맞습니다
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
heard-phrase = { $phrase }, 이렇게 들었습니다. 그렇습니까? 네, 아니요로 답하세요.
heard-number = { $number }, 이렇게 들었습니다. 그렇습니까? 네, 아니요로 답하세요.
is-that-so = 그렇습니까? 네, 아니요로 답하세요.
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
end-asked = 지금 작업을 종료합니까? 아직 끝나지 않았습니다. 네, 아니요로 답하세요.
complete = 모든 단계를 마쳤습니다. 감사합니다.
aborted = 작업이 끝나기 전에 종료되었습니다. 다음 사람에게 알리세요.
out-of-service = 기계 사용을 중지했습니다. 다음 사람에게 알리세요.
who-takes-over = 누가 이어서 합니까?
which-language = 어느 언어로 할까요?
not-written = 기록을 쓰지 못했습니다. 아무것도 기록되지 않았고 진행되지 않았습니다. 저장 공간을 비우거나 관리자를 부른 뒤 다시 하세요.

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
day-or-night = 밝게 또는 어둡게
what-is-faulty = 잘못된 것 보기
faults-found = { $n ->
   *[other] 절차를 막는 문제가 { $n }개 있습니다.
}
all-machines = 모든 기계
more = 더 보기
practice = 연습
place = { $last }단계 중 { $place }단계
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

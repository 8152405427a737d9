### 설정: 가게마다 한 번 묻는 것. 기계로 만든 초안입니다.
### reviewed: no

setup = 설정
setup-place = { $all } 중 { $n }
setup-back = 뒤로
setup-stop = 멈추고 나중에 계속
setup-done = 완료
setup-take = 입력
setup-take-off = 빼기
setup-go-on = 계속
setup-resumed = 멈춘 곳에서 계속합니다. 잃은 것은 없습니다.
setup-left-aside = 그 뒤 가게 파일이 바뀌었습니다. 저장하지 않은 답은 쓰지 않습니다.
setup-not-kept = 답을 적어 두지 못했습니다({ $why }). 이 화면이 켜져 있는 동안만 남습니다.
setup-not-answered = 아직 답이 없음
setup-left = { $n ->
   *[other] 질문이 { $n }개 남았습니다.
}
setup-ask-overview = 답은 이렇습니다. 바꾸려면 누르세요.
setup-write = 맞습니다, 저장
setup-written = 가게 설정을 저장했습니다.
setup-leave = 기계 목록으로
setup-wrong = { $n ->
   *[other] 먼저 { $n }가지를 고쳐야 합니다. 아무것도 저장하지 않았습니다.
}
setup-changed-meanwhile = 그사이 다른 사람이 site.toml을 바꿨습니다. 덮어쓰지 않았습니다. 여기서 멈추고 그 파일에서 다시 시작하세요.
setup-checking = 이 가게의 기계 종류를 점검하고 있습니다. 잠시 걸립니다.

setup-about-language = 설정 언어
setup-about-practice = 실제 또는 연습
setup-about-name = 가게 이름
setup-about-time-zone = 시간대
setup-about-opens = 여는 시각
setup-about-closes = 닫는 시각
setup-about-closed-days = 쉬는 날
setup-about-limits = 기준
setup-about-machines = 기계
setup-about-thermometer = 온도계
setup-about-sink = 싱크대
setup-about-product = 소독제
setup-about-chlorine = 유효 염소
setup-about-packet = 봉지
setup-about-strength = 농도
setup-about-rinse = 헹굼
setup-about-languages = 직원의 언어
setup-about-people = 사람
setup-about-pin = 비밀번호
setup-about-sound = 소리
setup-about-isolation = 전원 차단
setup-about-label-rinse = 헹굼

setup-ask-language = 어느 언어로 답하겠습니까?
setup-note-language = 기계 목록도 이 언어로 시작합니다. 나중에 사람마다 언어가 따로 있습니다.
setup-ask-practice = 실제 가게입니까, 연습용입니까?
setup-real = 실제 가게
setup-real-is = 확인한 것이 실제 작업의 기록이 됩니다.
setup-practice-is = 모든 작업에 연습 표시가 붙습니다. 실제 작업의 기록이 아닙니다.
setup-ask-name = 가게 이름이 무엇입니까?
setup-ask-time-zone = 가게가 어느 시간대에 있습니까?
setup-note-time-zone = 지금 시각을 보여 주는 것이 맞습니다.
setup-ask-city = 시각이 같은 도시는 어디입니까?
setup-note-city = 지금 시각을 보여 주는 가장 가까운 도시를 누르세요.
setup-ask-city-letter = 도시 이름이 어느 글자로 시작합니까?
setup-zone-now = 지금 { $time }
setup-zone-america = 아메리카
setup-zone-europe = 유럽
setup-zone-asia = 아시아
setup-zone-africa = 아프리카
setup-zone-australia = 오스트레일리아
setup-zone-pacific = 태평양
setup-zone-atlantic = 대서양
setup-zone-indian = 인도양
setup-ask-opens = 가게를 몇 시에 엽니까?
setup-note-opens = 숫자 네 자리입니다. 아침 9시 30분은 0930입니다.
setup-ask-closes = 가게를 몇 시에 닫습니까?
setup-note-closes = 숫자 네 자리입니다. 저녁 9시 30분은 2130입니다.
setup-no-time = { $text }은(는) 시각이 아닙니다. 0930이나 2130처럼 네 자리로 쓰세요.
setup-ask-closed-days = 어느 날에 가게를 열지 않습니까?
setup-note-closed-days = 바꾸려면 요일을 누르세요. 쉬는 날에는 할 일이 없습니다.
setup-is-closed = 쉼
setup-is-open = 엶
setup-add-day = 해마다 쉬는 날짜
setup-no-day-closed = 매일 엶
setup-never-open = 한 주에 하루는 열어야 합니다.
setup-ask-month = 쉬는 날이 몇 월입니까?
setup-ask-day = { $month } 며칠입니까?
setup-no-day = { $month }에는 { $text }일이 없습니다.
setup-date = { $month } { $day }일
setup-weekday = { $day ->
    [monday] 월요일
    [tuesday] 화요일
    [wednesday] 수요일
    [thursday] 목요일
    [friday] 금요일
    [saturday] 토요일
   *[sunday] 일요일
}
setup-month = { $month ->
    [m1] 1월
    [m2] 2월
    [m3] 3월
    [m4] 4월
    [m5] 5월
    [m6] 6월
    [m7] 7월
    [m8] 8월
    [m9] 9월
    [m10] 10월
    [m11] 11월
   *[m12] 12월
}

setup-ask-limits = 잰 값을 어느 기준으로 판단합니까?
setup-note-limits = 이 가게를 점검하는 관청에 물어보세요. 지역 규정이 먼저입니다.
setup-limit-mix-temperature = 믹스 온도
setup-limit-sanitizer-strength = 소독액 농도
setup-limit-sanitizer-temperature = 소독액 온도
setup-limit-contact-time = 접촉 시간
setup-limit-wash-temperature = 세척물
setup-limit-hand-wash-time = 손 씻기
setup-limit-line = { $what }: { $bounds }
setup-limit-silent = 정하지 않은 것: { $names }
setup-limit-unwalkable = 이 기준으로는 절차 { $all }개 중 { $n }개를 할 수 없습니다
setup-least = { $least } 이상
setup-most = { $most } 이하
setup-bounds = { $least }에서 { $most }까지

setup-ask-machines = 어떤 기계가 있습니까?
setup-note-machines = 바꾸려면 누르고, 아니면 더하세요.
setup-add-machine = 기계 더하기
setup-ask-kind = 어떤 종류의 기계입니까?
setup-note-kind = 믹스가 호퍼에서 어떻게 내려오는지 보세요. 종류는 꾸며 낸 것이며, 기계 설명서가 먼저입니다.
setup-kind-is = { $hoppers ->
   *[other] 호퍼 { $hoppers }개
}, 부품 { $parts }개
setup-kind-own = 이 가게의 것: { $kind }
setup-kind-spoilt = 고치기 전에는 쓸 수 없습니다. kiosk check가 모두 알려 줍니다. { $why }
setup-kind-gone = { $who }: 이 기계의 종류 { $kind }이(가) 여기에 없습니다. 종류를 바꾸거나 기계를 빼세요.
setup-ask-machine-name = 가게에서 이 기계를 무엇이라고 부릅니까?
setup-note-machine-name = 다른 기계와 헷갈리지 않게, 이를테면 놓인 자리로 부르세요.
setup-ask-option = { $who }: { $option }
setup-ask-machine = { $who }: 무엇을 바꿉니까?
setup-change-name = 이름
setup-change-kind = 기계 종류
setup-change-language = 언어
setup-change-role = 역할
setup-take-off-machine = 그 작업들은 기록에 남습니다.
setup-amounts = 양과 시간
setup-ask-amounts = { $who }: 이 양과 시간이 맞습니까?
setup-note-amounts = 꾸며 낸 종류의 값입니다. 하나씩 기계 설명서와 라벨에 견주고, 바꾸려면 누르세요.
setup-amounts-right = 맞습니다
setup-ask-amount = { $what }: 얼마입니까?
setup-option-isolation-plug = 플러그
setup-option-isolation-plug-is = 플러그가 있습니다. 작업자가 뽑아서 눈에 보이는 곳에 둡니다.
setup-option-isolation-lock = 자물쇠
setup-option-isolation-lock-is = 벽에 바로 이어져 있습니다. 작업자가 차단기를 내리고 본인의 자물쇠를 채웁니다.
setup-setting-hand-wash-time = 손 씻기
setup-setting-flush-volume = 씻어 내는 물
setup-setting-cleaner-volume = 세척액
setup-setting-circulate-time = 세척액 작용
setup-setting-soak-volume = 담그는 물
setup-setting-soak-time = 부품 담그기
setup-setting-sanitizer-volume = 소독액
setup-setting-contact-time = 소독액 작용
setup-setting-prime-volume = 먼저 빼내는 믹스
setup-setting-freeze-down-time = 얼리기

setup-ask-thermometer = 온도계 눈금이 무엇입니까?
setup-option-thermometer-celsius = 섭씨
setup-option-thermometer-celsius-is = 차가운 믹스가 4쯤입니다.
setup-option-thermometer-fahrenheit = 화씨
setup-option-thermometer-fahrenheit-is = 차가운 믹스가 40쯤입니다.
setup-ask-sink = 싱크대가 몇 칸입니까?
setup-option-sink-three = 세 칸
setup-option-sink-three-is = 세척, 헹굼, 소독에 칸이 따로 있습니다.
setup-option-sink-two = 두 칸
setup-option-sink-two-is = 비운 세척 칸에서 흐르는 물로 부품을 헹굽니다.

setup-ask-product = 라벨에 적힌 소독제 이름이 무엇입니까?
setup-note-product = 키오스크는 같은 크기의 봉지에 든 염소 가루나 알약의 양을 계산합니다. 이제 제품을 손에 드세요. 다음 답은 그 라벨에서 읽습니다.
setup-ask-chlorine = 유효 염소가 몇 퍼센트입니까?
setup-note-chlorine = 라벨에서 읽으세요. 유효 염소라고 적혀 있을 수 있습니다. 짐작하거나 다른 제품의 숫자를 쓰지 마세요.
setup-no-percent = { $text }은(는) 퍼센트가 아닙니다. 라벨의 숫자를 0보다 크고 100 이하로 쓰세요.
setup-ask-packet = 봉지 하나가 몇 그램입니까?
setup-note-packet = 라벨에서 읽으세요. 알약이면 한 알의 무게입니다.
setup-no-grams = { $text }그램일 수 없습니다. 0보다 크고 1000 이하로 쓰세요.
setup-ask-strength = 소독액이 얼마나 진해야 합니까?
setup-note-strength = 백만분율입니다. 라벨에서 읽으세요. 헹구지 않는 식품 접촉면의 농도입니다.
setup-strength-off = 고른 기준은 { $bounds }입니다({ $clause }). 라벨을 다시 보세요.
setup-ask-dose = 작업자는 이렇게 듣습니다. 라벨의 사용법과 맞습니까?
setup-ask-no-dose = 이 숫자로는 양을 계산할 수 없습니다. 라벨을 다시 보세요.
setup-dose-right = 라벨과 맞습니다
setup-figures-again = 숫자를 다시 입력
setup-ask-rinse = 라벨에 소독한 뒤 헹구라고 적혀 있습니까?
setup-note-rinse = 라벨에서 읽으세요.
setup-option-label-rinse-no = 헹구지 않음
setup-option-label-rinse-no-is = 부품을 소독액에서 꺼내 그대로 말립니다.
setup-option-label-rinse-yes = 헹굼
setup-option-label-rinse-yes-is = 부품을 깨끗한 먹는 물로 헹굽니다.

setup-ask-languages = 직원들이 어느 언어를 씁니까?
setup-note-languages = 언어를 눌러 더하거나 빼세요.
setup-texts-checked = 능숙한 사람이 검토함
setup-texts-drafted = 기계가 만든 초안, 아직 능숙한 사람이 검토하지 않음
setup-by-voice = 말과 누르기로
setup-by-touch = 누르기로만: 음성 모델이 없음
setup-no-language = 언어를 하나는 고르세요.
setup-language-spoken = 명단에 이 언어를 쓰는 사람이 있습니다. 그 사람을 먼저 바꾸세요.
setup-ask-people = 누가 기계에서 일합니까?
setup-note-people = 바꾸려면 이름을 누르고, 아니면 사람을 더하세요. 관리자는 기록을 보고 수습 직원 곁에 섭니다.
setup-add-person = 사람 더하기
setup-ask-person-name = 이 사람의 이름이 무엇입니까?
setup-note-person-name = 화면과 보고서에 나옵니다. 기록 자체에는 이름이 없습니다.
setup-ask-person-language = { $who } 님은 어느 언어를 씁니까?
setup-ask-person-role = { $who } 님은 무엇을 할 수 있습니까?
setup-ask-person = { $who }: 무엇을 바꿉니까?
setup-role-worker = 모든 절차를 혼자 합니다.
setup-role-trainee = 처음 몇 번은 관리자와 함께 합니다.
setup-role-supervisor = 절차를 하고, 기록을 보고 서명하며, 수습 직원 곁에 섭니다.
setup-take-off-person = 그 작업들은 남습니다. 기록 곁에 있는 것은 이렇게 지웁니다: kiosk people erase { $person }
setup-no-supervisor = 관리자가 없습니다. 기록을 보거나 서명할 사람이 없습니다. 한 사람을 더하거나 완료를 다시 누르세요.
setup-trainee-alone = 수습 직원은 있는데 곁에 설 관리자가 없습니다. 한 사람을 더하거나 그 역할을 주세요.

setup-note-keyboard = 자판으로 쓰거나, 글자 묶음을 누르고 글자를 누르세요. 한글 같은 다른 글자에는 자판이 필요합니다.
setup-key-space = 띄어쓰기
setup-key-capital = 대문자
setup-key-small = 소문자
setup-key-others = 다른 글자
setup-to-the-keys = 글자판으로
setup-nothing-typed = 아직 아무것도 쓰지 않았습니다.

setup-ask-pin = { $who } 님이 기록을 보고 다른 사람 곁에 서려면 비밀번호가 필요합니다. 지금 여기 있습니까?
setup-pin-now = 네, 지금 정하기
setup-pin-later = 나중에
setup-pin-later-is = 이렇게: kiosk setup
setup-pin-is = 비밀번호 정하기
setup-sound-is = 스피커와 마이크 시험
setup-sound-begin = 키오스크가 한 문장을 말한 뒤 듣습니다. 일하는 자리에 서고, 기계는 켜 두세요.
setup-sound-start = 시험하기
setup-sound-skip = 건너뛰기
setup-sound-on = 계속
setup-sound-again = 다시 시험
setup-sound-speaking = 들어 보세요.
setup-sound-sentence = 키오스크입니다. 단계를 하나씩 말하고 기다립니다.
setup-sound-spoken = 문장이 잘 들렸습니까?
setup-sound-yes = 네
setup-sound-no = 아니요
setup-sound-voice-good = 스피커 소리가 충분합니다.
setup-sound-voice-bad = 스피커를 키우거나 다른 것을 꽂으세요. 말하는 것은 화면에도 모두 나옵니다.
setup-sound-no-voice = 여기서는 말할 수 없습니다({ $why }). 말할 것은 화면에 모두 나옵니다.
setup-sound-listening = 마이크를 시험합니다.
setup-sound-heard = 결과입니다.
setup-sound-silent = 잠시 조용히 하세요.
setup-sound-say-yes = 이제 말하세요: { $phrase }
setup-sound-understood = 알아들었습니다.
setup-sound-not-heard = 알아듣지 못했습니다. 들린 것: “{ $text }”.
setup-sound-nothing = 아무것도 들리지 않았습니다.
setup-sound-ended = 마이크에서 소리가 끊겼습니다. 아직 꽂혀 있습니까?
setup-sound-no-ear = 이 언어를 알아들을 모델이 없습니다({ $text }).
setup-sound-no-microphone = 여기서는 들을 수 없습니다({ $why }). 작업은 누르기와 자판으로 합니다.

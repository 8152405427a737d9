### 음성과 귀와 기록에 생긴 문제, 그리고 작업에서 의심되는 점. 기계가 만든 초안입니다.
### reviewed: no

## 스피커와 음성.
sound-no-library = 소리 라이브러리가 없습니다: libasound2 또는 libpulse0을 설치하세요
speaker-none = 소리 장치가 없습니다 ({ $reason })
speaker-not-started = 소리 장치가 시작되지 않았습니다 ({ $reason })
speaker-takes-nothing = 소리 장치가 { $seconds }초 동안 소리를 받지 않았습니다
speaker-no-way = 소리를 낼 방법이 없습니다: 'aplay'가 들어 있는 alsa-utils를 설치하세요
speaker-no-player = 'aplay'를 시작하지 못했습니다: { $reason }
speaker-failed = 소리 장치가 고장 났습니다 ({ $reason })
speaker-stopped = 스피커가 소리를 받지 않습니다
prompt-unreadable = { $file }에 있는 안내 음성을 읽을 수 없습니다: { $reason }
prompts-not-kept = 안내 음성 폴더 { $folder }을(를) 쓸 수 없습니다 ({ $reason }). 쓸 수 있게 하세요
prompt-not-kept = 안내 음성을 { $folder }에 저장할 수 없습니다: { $reason }. 저장 공간을 비우세요
speech-no-voice = '{ $language }' 언어의 음성이 없습니다. 있는 음성: { $known }
speech-no-letter = { $text }에는 말할 글자도 숫자도 없습니다
speech-too-long = { $text }... 글이 { $length }자입니다. 한 번에 { $most }자까지 말하니 나누세요
speech-ended-twice = 이 글에서 음성 프로그램이 두 번 끝났습니다: { $reason }
speech-no-answer = 음성 프로그램이 { $seconds }초 동안 답하지 않아 끝냈습니다
speech-not-started = 음성 프로그램을 시작하지 못했습니다: { $reason }
speech-install-again = { $reason }. 패키지를 다시 설치하세요
speech-failed = 음성 프로그램이 실패했습니다: { $reason }

## 마이크와 귀.
microphone-no-library = 소리 라이브러리 miniaudio가 설치되어 있지 않습니다
microphone-none = 마이크가 없습니다 ({ $reason })
microphone-no-answer = 소리 시스템이 { $seconds }초 안에 답하지 않았습니다
microphone-ended = 소리가 끊겼습니다. 마이크가 꽂혀 있습니까?
ear-stopped = 듣기가 멈추었습니다: { $reason }
ear-failed-once = { $ear }이(가) 말을 알아듣다가 실패했습니다: { $reason }
ear-not-whole = { $more ->
    [0] { $place }의 { $model }이(가) 온전하지 않습니다: { $missing }이(가) 없습니다. 고치려면: { $mend }
   *[other] { $place }의 { $model }이(가) 온전하지 않습니다: { $missing } 외 { $more }개가 없습니다. 고치려면: { $mend }
}
ear-mend-remove = 그 폴더를 지운 뒤 { $mend }
ear-needs-package = { $model }에 필요한 패키지가 없습니다 ({ $package }). 고치려면: { $mend }
ear-not-loaded = { $model }을(를) 불러올 수 없습니다 ({ $reason }). 고치려면: { $mend }
ear-none-listed = models.toml에 '{ $language }' 음성 모델이 없습니다
ear-none-installed = '{ $language }' 음성 모델이 설치되어 있지 않습니다. 고치려면: { $mend }
ear-mend-or = { $one } 또는 { $other }
notice-and = { $one }; { $other }
own-words-unreadable = { $file }의 자기 말을 읽을 수 없습니다 ({ $reason }). '{ $command }' 명령으로 다시 가르치세요

## 기록.
not-recorded = 기록을 쓰지 못했습니다. 아무것도 기록되지 않았고 진행되지 않았습니다.
see-the-screen = 할 일은 화면에 있습니다.
journal-full = 저장 공간이 가득 찼습니다: { $file }. 공간을 비운 뒤 다시 하세요.
journal-two-kiosks = 키오스크 두 대가 { $folder }에서 작업하고 있습니다. 하나를 닫은 뒤 다시 하세요.
journal-moved = 쓰고 있는 동안 { $file } 또는 { $log }이(가) 옮겨졌습니다. 제자리에 돌려놓은 뒤 다시 하세요.
journal-swallowed = { $file }: 쓴 내용이 없습니다. 관리자를 부르세요. 백업으로 이어 가야 합니다.
journal-read-only = { $file }에 쓸 수 없습니다: { $reason }. 관리자를 부르세요. 쓸 수 있게 해야 합니다.
journal-busy = 다른 프로그램이 { $file }을(를) 쓰고 있습니다. 그것을 닫은 뒤 다시 하세요.
journal-damaged = { $file }이(가) 손상되었습니다: { $reason }. 관리자를 부르세요. 백업으로 이어 가야 합니다.
journal-failed = { $file }: { $reason }. 관리자를 부른 뒤 다시 하세요.
row-unknown = '{ $kind }' 종류의 줄을 읽을 수 없습니다: { $reason }
session-without-beginning = 작업 { $session }의 시작이 기록에 없습니다
result-unreadable = 결과 { $result }을(를) 읽을 수 없습니다: { $reason }
file-failed = { $file }: { $reason }

## 비밀번호.
pins-unusable = { $file }을(를) 쓸 수 없습니다: { $why }. 고치려면: 읽을 수 있게 하거나, 옮겨 놓고 'kiosk people pin ID' 명령으로 비밀번호를 새로 정하세요.
pins-damaged = '{ $person }'의 항목이 손상되었습니다
pins-no-list = 해시 목록이 아닙니다
pins-not-written = { $file }을(를) 쓸 수 없습니다: { $reason }

## 작업에서 의심되는 점.
sign-waited = { $needed } 가운데 { $waited }만 기다렸습니다
sign-filled = 시험지를 읽고 { $after } 만에 접촉이 시작되었습니다. 모두 채우고 적시기에는 너무 이릅니다 ({ $least })
sign-weak = 시험지가 { $value }였습니다. 최소는 { $least }입니다
sign-weak-mended = 시험지가 { $value }였습니다. 최소는 { $least }입니다. { $after } 뒤에는 { $then }
sign-weak-too-soon = 시험지가 { $value }였습니다. 최소는 { $least }입니다. { $after } 뒤에는 { $then }: 새로 타기에는 너무 이릅니다 ({ $needed })
sign-warm = 믹스가 { $value }였습니다
sign-warm-cooled = 믹스가 { $value }였고, { $after } 뒤에는 { $then }
sign-warm-too-soon = 믹스가 { $value }였고, { $after } 뒤에는 { $then }: 그렇게 빨리 식는 호퍼는 없습니다 ({ $needed })
sign-worn = { $part }: { $days }일 전에 닳은 것을 보았고, 재고가 없어 그 뒤로 바꾸지 않았습니다
sign-new = 새 작업자의 { $nth }번째 작업 ({ $who })
sign-late = 저녁 작업이 영업 종료 { $hours } 뒤에 시작되었습니다
sign-early = { $ended ->
    [ended-early] 일찍 종료되었습니다
    [out-of-service] 기계 사용을 중지했습니다
   *[open] 끝나지 않았습니다
}. 마지막 단계: { $step }
sign-doubts = 답이 불확실했던 안전 확인: { $holds }
sign-missed = 판매할 상태였는데 이날 밤 이 기계의 저녁 작업 기록이 없습니다 (또는 키오스크를 쓰지 않았습니다)

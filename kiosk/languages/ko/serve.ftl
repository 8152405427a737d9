### 태블릿에서 쓰는 키오스크: 화면 연결, 보기, 넘겨받기. 기계로 만든 초안입니다.
### reviewed: no

pairing-code = 다른 화면을 연결하려면: 코드 { $code }.
pairing-closed = 틀린 코드가 너무 많습니다. 키오스크를 다시 시작할 때까지 화면을 연결할 수 없습니다.
pairing-ask = 키오스크 현황판에 있는 코드를 입력하세요.
pairing-wrong = 현황판에 있는 코드가 아닙니다. 다시 보세요. 코드가 바뀌었을 수 있습니다.
pairing-wait = 틀린 코드가 너무 많습니다. { $seconds }초 기다린 뒤 현황판에 있는 코드를 입력하세요.
pairing-give = 연결
pairing-rub-out = 지우기
screen-lost = 키오스크와 연결이 끊겼습니다. 확인된 것은 저장되어 있습니다. 다시 시도하고 있습니다.
screen-watches = 보고 있는 중입니다. 다른 화면이 키오스크를 쓰고 있습니다.
screen-hidden = 비밀번호를 입력하고 있거나 비밀번호로 보호된 것을 보고 있습니다. 다른 화면에만 보입니다.
screen-take-over = 넘겨받기
screen-keyboard = 키보드
screen-not-taken = 화면을 넘겨받지 못했습니다: { $why }

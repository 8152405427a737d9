### 누가 무엇을 할 수 있는지, 그리고 비밀번호. 기계로 만든 초안입니다.
### reviewed: no

say-witness = 두 번째 사람이 왔어요

pin-ask = { $who } 님, 비밀번호를 입력하세요.
pin-invented = (꾸며 낸 가게: 비밀번호 { $pin })
pin-new = { $who } 님, 새 비밀번호를 입력하세요. 숫자 4자리에서 12자리입니다.
pin-again = 같은 숫자를 한 번 더 입력하세요.
pin-is-set = { $who } 님의 새 비밀번호를 정했습니다.
pin-for-begin = 시작하려고
pin-for-take-over = 이어받으려고
pin-for-witness = 두 번째 사람으로
pin-for-stand-by = 수습 직원 곁에 있으려고
pin-for-sign = 서명하려고
pin-for-review = 기록을 보려고
pin-for-set-pin = 비밀번호를 정하려고
which-supervisor = 어느 관리자입니까?
no-supervisor = 이 가게 명단에 이것을 할 수 있는 관리자가 없습니다.
who-witnesses = 두 번째 사람은 누구입니까?
whose-pin = 누구의 비밀번호입니까?
who-vouches = 누가 확인해 줍니까?
pin-by-old-one = 예전 비밀번호로
pin-by-supervisor = 관리자가 확인

to-practise = 연습
to-set-pin = 비밀번호 정하기
practise-or-pin = 무엇을 하겠습니까?
practice-is = 연습으로 표시하고 실제 작업과 따로 둡니다
practice-board = 연습입니다. 실제로 한 작업은 여기에 기록되지 않습니다.
back-to-work = 작업으로 돌아가기
with-a-supervisor = 관리자와 함께

refused-pin-first = 먼저 비밀번호가 필요합니다.
refused-supervisor-first = 관리자가 곁에 있고 먼저 비밀번호를 입력해야 합니다.
refused-not-on-list = 이 가게 명단에 없습니다.
refused-not-your-walk = 이 사람이 하는 절차가 아닙니다.
refused-trainee-no-witness = 수습 직원은 두 번째 사람이 될 수 없습니다.
refused-own-work = 자기 작업에는 서명할 수 없습니다. 다른 관리자가 보아야 합니다.
refused-supervisors-only = 관리자만 할 수 있습니다.
refused-pin-wrong = 비밀번호가 맞지 않습니다. 다시 해 보세요.
refused-pin-wait = 틀린 횟수가 너무 많습니다. { $time } 뒤에 다시 할 수 있습니다.
refused-pin-closed = 너무 많이 틀려서 비밀번호가 닫혔습니다. 관리자가 새로 정해야 합니다.
refused-no-pin-set = { $person }: 아직 비밀번호가 없습니다. 관리자가 기계 화면에서 정하거나 'kiosk people pin { $person }' 명령으로 정할 수 있습니다.
refused-pins-unreadable = 지금은 비밀번호를 확인할 수 없습니다. { $reason }
refused-pin-not-written = 기록할 수 없어서 아무것도 하지 않았습니다. { $reason }
refused-pin-length = 비밀번호는 숫자 { $least }자리에서 { $most }자리입니다.
refused-pin-easy = 너무 쉬운 비밀번호입니다. 다른 숫자를 쓰세요.
refused-pin-differs = 두 번 입력한 것이 다릅니다. 새 비밀번호를 다시 입력하세요.

people-nobody = { $person }: 이 가게 명단에 없습니다. 있는 사람: { $known }.
people-ask-pin = { $who } ({ $person }) 님의 새 비밀번호, 화면에 보이지 않습니다:
people-ask-again = 한 번 더:
people-pin-set = { $who } ({ $person }) 님의 새 비밀번호를 정했습니다.
people-pin-yes = 비밀번호 있음
people-pin-no = 비밀번호 없음
people-role-worker = 직원
people-role-trainee = 수습 직원
people-role-supervisor = 관리자
people-walks-all = 모든 절차
people-walks = 하는 절차: { $procedures }
people-erased = { $person }: 이름, 비밀번호, 자기 낱말, 그리고 메모 { $n ->
   *[other] { $n }개
}의 글을 지웠습니다. 기록에는 번호가 남고, 지운 사실이 적힙니다.
people-kept-over = 보관 기간이 끝나 지웠습니다: 이름 { $names ->
   *[other] { $names }개
}, 메모 { $remarks ->
   *[other] { $remarks }개
}.
people-nothing-over = 보관 기간을 넘긴 것이 없습니다.

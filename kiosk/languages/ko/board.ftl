### 보드: 누가 서 있는지, 무엇을 언제까지 해야 하는지. 기계로 만든 초안입니다.
### reviewed: no

board-greeting = { $part ->
    [morning] 좋은 아침입니다, { $who } 님
    [day] 안녕하세요, { $who } 님
   *[evening] 좋은 저녁입니다, { $who } 님
}
sign-in = 이름 고르기
sign-in-who = 누가 왔습니까?
sign-out = 나가기
sign-out-or-other = 나가기 또는 바꾸기
board-due-from = { $what }: { $at }부터
board-due-by = { $what }: { $at }까지
board-in = { $time } 뒤
board-left = { $time } 남음
board-overdue = ! { $at }부터 기한 지남: { $what }
board-never = { $what }: 지난 반년 동안 기록 없음
help-board-more = 이름을 고르면 누르는 일이 그 사람의 이름과 언어로 시작됩니다. 비밀번호를 묻는 곳에서는 그대로 묻습니다. 십 분 동안 누르지 않으면 이름이 풀립니다. 기계마다 할 일이 언제부터인지, 언제까지인지 적혀 있습니다.

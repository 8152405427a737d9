### reviewed: no
# 꾸며낸 저녁이 저절로 진행되는 동안 화면 아래 줄에 나오는 말.
crew-evening = 꾸며낸 저녁이 저절로 진행됩니다: { $who } 님이 실제로 없는 기계를 마감합니다. Ctrl+Q로 끝냅니다.
crew-says = { $who }: “{ $phrase }”
crew-presses = { $who } 님이 누름: “{ $phrase }”
crew-next-passes-no-hold = 안전 확인 단계입니다. 지친 { $who } 님이 늘 하던 말을 합니다. 여기서는 통하지 않습니다.
crew-short-press-passes-no-hold = 짧게 눌러도 안전 확인은 지나갈 수 없습니다.
crew-read-back = 키오스크가 알아들은 것을 다시 말하고 예를 기다립니다.
crew-power-cut = 단계 중간에 키오스크의 전원이 나갑니다.
crew-cut-is-over = 키오스크가 다시 켜졌습니다. 끝나지 않은 일이 화면에 나오고, 기록은 하나도 잃지 않았습니다.
crew-problem = 이상해 보입니다. { $who } 님이 문제를 알리자 모두 멈춥니다.
crew-holds-again = 다시 시작하기 전에 그동안 바뀌었을 수 있는 것을 다시 묻습니다.
crew-one-is-missing = { $who } 님이 오링을 하나 적게 셉니다. 세지 않았다면 기계나 콘 안에 있었을 것입니다.
crew-other-language = 다른 사람이 다른 언어로 마무리합니다. 안전은 지금 있는 사람에게 다시 묻습니다.
crew-time-passes = 시간이 실제보다 빨리 지나갑니다.
crew-written = 모든 대답이 시간과 방법과 함께 기록되었습니다.
crew-evening-over = 이것이 그날 저녁이었습니다. 아침에 관리자가 검토합니다.

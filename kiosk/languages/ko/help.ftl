### reviewed: no
# What can be done here, for whoever asks.
help = 도움말
say-help = 도움말
help-say = 이렇게 말할 수 있습니다: { $list }.
help-number = 숫자를 말하거나 누를 수도 있습니다.
help-hold = 안전 확인에는 정해진 말을 모두 하거나, 단추를 계속 누르고 있어야 합니다.
help-hurt = 다친 사람이 있습니까? 기계에서 물러나 도움을 청하고, 약품이 튀었으면 제품 라벨을 따르세요.
help-board = 기계를 눌러 할 일이나 영업 중 점검을 시작하세요. 하다 만 작업은 표시와 함께 기다립니다. 그다음 누가 하는지 누르세요. 이 안내기는 안내하고 기록할 뿐, 전원 잠금을 대신하지 못합니다.
help-list = 해당하는 것을 누르거나, 자판에서 그 번호를 누르세요. 아직 아무것도 기록되지 않았습니다.
help-summary = 기록에 남은 내용입니다. 읽고 기계 목록으로 돌아가세요.
or-say = 누르거나 이렇게 말하세요: { $phrase }.

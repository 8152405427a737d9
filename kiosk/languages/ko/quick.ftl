### reviewed: no
# The sheet of what can be said.
quick-title = 안내기에 하는 말
quick-no-lockout = 이 안내기는 안내하고 기록할 뿐입니다. 전원 잠금을 대신하지 못하며, 기계 설명서와 제품 라벨이 먼저입니다.
quick-say-it = 말하거나 누르세요
quick-next = 이 단계를 마쳤습니다. 다른 말이 필요한 단계에는 화면에 그 말이 나옵니다.
quick-repeat = 질문을 다시 듣습니다.
quick-back = 한 단계 뒤로 갑니다.
quick-problem = 멈춥니다. 무엇이 잘못됐는지 말하고 할 일을 듣습니다.
quick-pause = 잠시 자리를 비웁니다. 돌아오면 안전 확인을 다시 합니다.
quick-continue = 쉬었거나 문제가 있은 뒤에 계속합니다.
quick-hand-over = 다른 사람이 이어서 합니다. 안전 확인을 다시 합니다.
quick-reckon = 분량, 시간, 날짜, 개수를 계산합니다.
quick-language = 다른 언어로 계속합니다.
quick-help = 이 단계에서 할 수 있는 말을 듣습니다.
quick-end = 일찍 끝냅니다. 다음 사람이 알아야 할 것을 말해 줍니다.
quick-whole = 말을 끝까지 하고, 안내기가 말을 마칠 때까지 기다리세요.
quick-hold = 안전 확인에서는 먼저 하고, 정해진 말을 하고, 되묻는 질문에 답하고, 시험해 보세요.
quick-number = 숫자는 화면에 나온 대로 말하고, 맞게 되물으면 맞다고 답하세요.
quick-loud = 너무 시끄럽거나 두 번 못 알아들으면 단추를 누르세요. 모두 누를 수 있습니다.
quick-touch = 젖은 장갑으로는 한 번 누르고 떼세요. 안전 확인 단추는 됐다고 할 때까지 누르고 있으세요.

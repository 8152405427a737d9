### 소모 부품과 예비 부품.
### reviewed: no

parts-worn = { $day }부터 닳아 있음, 재고가 없었음.
parts-due = 기한: { $day }.
parts-overdue = 기한 지남: { $day }까지였음.
parts-replaced = { $days ->
    [0] 오늘({ $day }) { $by } 교체.
   *[other] { $day } { $by } 교체, { $days }일 전.
}
parts-replacements = 기록된 교체 { $n }건.
parts-never-replaced = 교체 기록 없음; 처음 본 날 { $day }.
parts-likely = 다음 교체 예상: { $low }부터 { $high }까지 (10 중 8), 가운데 { $middle }.
parts-likely-open = 다음 교체 예상: { $low }부터 (10 중 9), 가운데 { $middle }.
parts-likely-hardly = 다음 교체 예상: { $low }부터 (10 중 9), 10년 안에는 어려움.
parts-likely-later = 10년 안에 교체가 예상되지 않음.
parts-too-little = 교체 기록이 너무 적어 예상할 수 없음.
parts-none-found = { $day }에 재고가 없다고 확인됨.
parts-short = 있던 것보다 { $n }개 더 사용됨. 다시 세세요.
parts-shelf-unknown = 선반을 센 적이 없음.
parts-shelf = 선반에 { $pieces }개; 한 번 교체에 { $takes }개. 교체 { $n }번 가능.
parts-counted-on = { $day }에 셈; 그 뒤는 입력된 대로.
parts-never-counted = 센 적 없음: 받은 것만.
parts-runs-out = 교체할 부품이 모자랄 때: { $low }부터 { $high }까지 (10 중 8), 가운데 { $middle }.
parts-runs-out-open = 교체할 부품이 모자랄 때: { $low }부터 (10 중 9), 가운데 { $middle }.
parts-runs-out-hardly = 교체할 부품이 모자랄 때: { $low }부터 (10 중 9), 10년 안에는 어려움.
parts-runs-out-later = 10년 동안 충분함.
parts-how-foretold = 예상은 같은 종류의 모든 기계에서 지금까지 교체한 기록으로 계산함. 한계가 아님: 일정과 기계 설명서가 먼저임.
parts-on-machines = 기계에 있는 부품
parts-on-shelf = 선반의 부품
parts-none-seen = 아직 살펴본 소모 부품이 없음.
parts-received = 받음: { $part } { $count }개.
parts-counted = 셈: { $part } { $count }개.

### 그림: 제목, 축, 범례.
### reviewed: no

plot-number = { $n }
plot-month = { $month }월
plot-month-day = { $month }월 { $day }일
plot-today = 오늘
plot-reach = { $days ->
    [1] 하루의 최저에서 최고
   *[other] { $days }일 동안의 최저에서 최고
}
plot-middle = 그 가운뎃값

## 작업
plot-length = 작업에 걸린 시간: { $what }
plot-length-told = { $first }부터 { $last }까지 작업 { $n }건. 가운뎃값 { $middle }, 가장 짧은 것 { $least }, 가장 긴 것 { $most }.
plot-axis-minutes = 분
plot-session-complete = 완료
plot-session-open = 아직 끝나지 않음
plot-session-ended = 끝나기 전에 종료
plot-session-told = { $moment }: { $time }, { $worker }
plot-usual = 평소: 이전 작업의 가운뎃값
plot-deviations = 이탈: { $what }
plot-deviations-told = { $first }부터 { $last }까지 작업 { $n }건에서 이탈 { $found }건.
plot-found-in = 작업 { $sessions }건에서 { $found }건
plot-axis-per-session = 작업당 이탈
plot-deviations-bar = { $days ->
    [1] 하루 평균
   *[other] { $days }일 평균
}

## 측정값
plot-readings = { $quantity }: { $what }
plot-quantity = { $quantity ->
    [mix-temperature] 믹스 온도
    [sanitizer-strength] 소독액 농도
    [sanitizer-temperature] 소독액 온도
    [wash-temperature] 세척수 온도
    [discarded-product] 버린 제품
   *[other] { $other }
}
plot-readings-told = { $first }부터 { $last }까지 측정값 { $n }개, { $least }에서 { $most }. 한계를 벗어난 것: { $off }.
plot-other-unit = 단위가 달라 그리지 않은 측정값: { $n }.
plot-kept = 한계 안
plot-without-limit = 측정값
plot-off = 한계를 벗어남
plot-should-lie = 있어야 할 범위

## 실험실 결과
plot-results = 실험실, { $analysis }: { $what }
plot-head = { $head ->
    [left] 왼쪽 출구
    [right] 오른쪽 출구
    [twist] 트위스트 출구
    [single] 단일 출구
   *[other] 출구 { $head }
}
plot-axis-count = { $per ->
    [mL] 밀리리터당 집락 수; 한 줄마다 열 배
   *[g] 그램당 집락 수; 한 줄마다 열 배
}
plot-result-counted = 계수
plot-result-estimated = 추정
plot-result-less = 미만
plot-result-more = 초과
plot-result-over = 한계 초과
plot-result-limit = 한계: { $per }당 { $n } ({ $products })
plot-average = 이동 평균
plot-control = 관리 한계
plot-results-told = { $first }부터 { $last }까지 결과 { $n }건. 한계 초과: { $over }.
plot-results-without = 숫자가 없어 그리지 않은 결과: { $n }.

## 누가 언제 마감했나
plot-closings = 누가 언제 마감했나
plot-closings-told = { $first }부터 { $last }까지 기계별 저녁 마감 { $n }건. 늦게 끝남: { $late }. 끝나지 않음: { $missed }.
plot-late = 늦음
plot-nobody = 없음
plot-closed = 마감 횟수, 짙을수록 많음
plot-closed-late = 늦었거나 하지 않음

## 부품
plot-parts = 소모 부품
plot-parts-told = { $first }부터 부품 { $n }개. 교체: { $replaced }. 기한 지남: { $overdue }. 닳았고 재고 없음: { $worn }.
plot-part-in-use = 사용 중, 차례로
plot-part-likely = 다음 교체 예상 (10 중 8)
plot-part-replaced = 교체
plot-part-worn = 닳음, 재고 없음
plot-part-due = 일정상 기한

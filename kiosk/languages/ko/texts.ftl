### 기계가 쓴 초안과 그것을 확인한 사람. 기계로 만든 초안입니다.
### reviewed: no

texts-drafted = { $language }: 기계 초안 { $n }개, 서명되지 않은 것 { $left }개
texts-signed-by = { $who } 님이 서명함, { $at }: { $n }개
texts-left = 지금 문장에는 서명이 없음: { $where }
texts-nothing-left = 서명할 것이 남아 있지 않습니다.
texts-signed = { $who } 님이 { $n }개에 서명했습니다. 서명되지 않은 것: { $left }개. 남은 것이 없으면 다음에 켤 때 “{ $mark }” 표시가 화면에서 없어집니다.
texts-withdrawn = 거둔 서명: { $n }개.

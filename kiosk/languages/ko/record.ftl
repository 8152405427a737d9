### The journal as evidence.
### reviewed: no
record-disagrees = 기록이 이 키오스크가 서명한 것과 맞지 않습니다. 관리자에게 알리고 아무것도 지우지 마십시오.
record-unsigned = 지금은 기록에 서명할 수 없습니다. 그래도 모든 것이 기록됩니다. 관리자에게 알리십시오.
record-second-place = 기록 확인점을 둘 두 번째 장소가 없습니다. 저장 장치를 다시 꽂으십시오. 그래도 모든 것이 기록됩니다.

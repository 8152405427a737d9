"""Sounds that are no phrase, put into a grammar so that it need not answer with one."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

DECOYS: Final[Mapping[str, tuple[str, ...]]] = MappingProxyType(
    {
        "ko": tuple(
            ["이", "스", "리", "사", "기", "지", "대", "자", "시", "아", "수", "정", "전", "라", "장", "인", "트", "국", "가", "로", "원", "동", "부", "제", "주", "고", "마", "보", "도", "비", "한", "상", "구", "성", "어", "드", "화", "소", "공", "오", "미", "우", "신", "하", "산", "르", "조", "회", "경", "무", "서", "레", "유", "나", "학", "다", "치", "타", "선", "세"]
        ),
    }
)
"""Decoys per language. Korean: the sixty single syllables that occur in most words of the small
Korean model's vocabulary, so that together they can imitate almost any speech.

Measured with a list of twelve phrases, five synthetic voices (60 clips, clean / 10 dB kitchen-like
noise), 180 clips of English speech and 75 clips of Korean that is on no list; each phrase counted
`PHRASE_WEIGHT` times, confidence at least 0.7:

    decoys  weight  right clean  right 10 dB  wrong phrase  English taken  Korean taken
         0       1           34           18             2              6             5   (confidence 0)
        60      30           25           11             0              0             0
        60     100           29           14             1              0             0
        60     300           30           15             2              0             1
       150     100           25           15             1              0             0
       300     100           22           13             1              0             0
"""

PHRASE_WEIGHT: Final = 100
"""How many times a phrase stands in the grammar against once for each decoy."""

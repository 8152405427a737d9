"""Sounds that are no phrase, put into a grammar so that it need not answer with one."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

DECOYS: Final[Mapping[str, tuple[str, ...]]] = MappingProxyType(
    {
        "ko": tuple(
            "이스리사기지대자시아수정전라장인트국가로원동부제주고마보도비"
            "한상구성어드화소공오미우신하산르조회경무서레유나학다치타선세"
        ),
    }
)
"""Decoys per language. Korean: the sixty single syllables that occur in most words of the small
Korean model's vocabulary, so that together they can imitate almost any speech.

Measured with a list of twelve phrases, five synthetic voices (60 clips, clean / 10 dB kitchen-like
noise), 180 clips of English speech and 75 clips of Korean that is on no list; each phrase counted
`PHRASE_WEIGHT` times, confidence at least 0.7:

    decoys  weight  right clean  right 10 dB  wrong phrase  English taken  Korean taken
         0       1           34           18             2              6             5  *
        60      30           25           11             0              0             0
        60     100           29           14             1              0             0
        60     300           30           15             2              0             1
       150     100           25           15             1              0             0
       300     100           22           13             1              0             0

* with no threshold on confidence.

With lists as a walk has them (8 to 10 phrases, 60 decoys, weight 100, confidence 0.7), of the same
180 and 75 clips these were taken for a phrase: with a hold's list 0 and 0, with a step's 6 and 3,
with a question's (yes, no) 9 and 0, of which 8 for the single syllable 'ne'. Without decoys it is
0 and 1, 10 and 7, 12 and 2.
"""

PHRASE_WEIGHT: Final = 100
"""How many times a phrase stands in the grammar against once for each decoy."""

"""A count below detection: how it is asked for, and what it leaves open."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal
from typing import Final

from kiosk.engine.prompt import Message, Number
from kiosk.reckoning.calculator import Answers, NumberWanted, Question, number
from kiosk.trade.rounding import Amount, Qualifier

BELOW: Final = "below-detection"
"""The answer beside the numbers; the bound is asked for next."""

MOST_COLONIES: Final = Decimal(10**8)

_LEAST = Decimal("0.1")
_SAID = tuple(map(Decimal, (1, 3, 10, 25, 30, 100, 250, 1000)))
"""Bounds that can be said: what the usual dilutions and tube designs leave; our choice."""


def about(
    answers: Answers, name: str, place: int, choices: tuple[Decimal, ...]
) -> Iterator[Question]:
    """Yield what is asked of one count; `choices` are the counts that can be said."""
    least = Decimal(0)
    wants = NumberWanted("", least, MOST_COLONIES, choices, True, "say-colonies", (BELOW,))
    yield Question(f"{name}-{place}", wants)
    if answers[f"{name}-{place}"] == BELOW:
        bound = NumberWanted("", _LEAST, MOST_COLONIES, _SAID, said="say-colonies")
        yield Question(f"bound-{place}", bound)


def amount(answers: Answers, name: str, place: int) -> Amount:
    """Return one count that was answered. Raises KeyError when it was not."""
    if answers[f"{name}-{place}"] == BELOW:
        return Amount(Qualifier.LESS_THAN, number(answers, f"bound-{place}"))
    return Amount(Qualifier.EXACT, number(answers, f"{name}-{place}"))


def left_open(amounts: Iterable[Amount], limit: Decimal) -> list[Message]:
    """Return the sentence that some results may be over a limit; none where all can be told."""
    untold = sum(one.exceeds(limit) is None for one in amounts)
    if not untold:
        return []
    told = {"count": Number(str(untold)), "limit": Number(f"{limit:f}")}
    return [Message("results-left-open", told)]

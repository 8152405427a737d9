"""Invented laboratory counts that follow from what really went wrong at a machine."""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal

from kiosk.review.clues import Clue
from kiosk.review.results import Sample
from kiosk.trade.authorities import Analysis, Product
from kiosk.trade.rounding import Amount, Qualifier, significant

LABORATORY = "Sample Laboratory (invented)"

USUAL_LOG10 = 3.4
"""Total count of a clean machine, log10 CFU per gram; with all below, invented."""
NOISE = 0.25
"""Standard deviation of one result in log10: sampling and counting together."""
BETWEEN_HEADS = 0.1
COLIFORM_BELOW = 4.4
"""How many log10 the coliforms lie below the total count; what comes from outside brings more."""
LEFT_BY_A_SESSION = 0.85
"""What a cleaning leaves of an added load: it does not go at once."""
MOST_LOG10 = 7.0

ADDS: dict[Clue, float] = {
    Clue.SHORT_CONTACT: 2.8,
    Clue.WEAK_SANITIZER: 2.8,
    Clue.WARM_MIX: 2.8,
    Clue.MISSED_CLOSE: 2.8,
    Clue.NEW_WORKER: 2.6,
}
"""What one mishap adds, log10."""
WORN_PER_DAY, WORN_MOST = 0.18, 2.2


@dataclass(slots=True)
class Soil:
    """What a machine carries beyond the usual, log10."""

    added: float = 0.0
    worn: dict[str, int] = field(default_factory=dict)
    """Worn part to the day number since when it is."""

    def add(self, clue: Clue) -> None:
        """Bring in what a mishap brings."""
        self.added += ADDS[clue]

    def cleaned(self) -> None:
        """Let one session pass over it."""
        self.added *= LEFT_BY_A_SESSION

    def log10(self, day: int) -> float:
        """Return log10 of the total count per gram on a day, without the noise."""
        worn = sum(min(WORN_MOST, WORN_PER_DAY * (day - since)) for since in self.worn.values())
        return min(MOST_LOG10, USUAL_LOG10 + self.added + worn)


def samples(
    machine: str, heads: tuple[str, ...], day: date, log10: float, number: int,
    chance: random.Random,
) -> list[Sample]:  # fmt: skip
    """Return one day's results of a machine: total count and coliforms of each head."""
    found = []
    for place, head in enumerate(heads):
        level = log10 + chance.gauss(0, BETWEEN_HEADS)
        for analysis, lower in ((Analysis.TOTAL_COUNT, 0.0), (Analysis.COLIFORM, COLIFORM_BELOW)):
            amount = reported(level - lower + chance.gauss(0, NOISE))
            label = f"S{number + place}"
            found.append(
                Sample(machine, head, day, Product.PLAIN, analysis, amount, "g", LABORATORY, label)
            )
    return found


def reported(log10: float) -> Amount:
    """Return a count as a laboratory reports it: two digits, and less than 10 below that."""
    count = Decimal(repr(10**log10))
    if count < 10:
        return Amount(Qualifier.LESS_THAN, Decimal(10))
    return Amount(Qualifier.EXACT, significant(count))

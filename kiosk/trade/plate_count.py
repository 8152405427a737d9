"""Colonies on plates to colony-forming units per gram, by FDA BAM chapter 3 and by ISO 7218."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from kiosk.trade.keyed import Keyed
from kiosk.trade.rounding import Amount, Qualifier, significant

SPREADER_SHARE = Decimal("0.25")
"""A plate with more of its area under spreaders is a spreader plate. READ, copy of the BAM text."""

CROWDED = 100
"""Colonies per cm² from which a plate is only 'more than'. BAM, MEM."""

_TENFOLD = Decimal("0.1")


_SAYS = {
    "bad-dilution": "dilution {dilution}: write 1:100 as 0.01, undiluted as 1",
    "bad-volume": "volume {volume} mL: write the mL put on the plate, above 0",
    "bad-spread": "spread {spread}: write the share of the plate, as 0.25",
    "bad-colonies": "{colonies} colonies: write 0 or more",
    "no-area": "a plate with more than 100 colonies per cm² needs its area in cm²",
    "no-plate": "no plate: give at least one",
    "no-count": "a plate marked '{mark}' has no count",
}


class NotAPlate(Keyed, ValueError):
    """A plate cannot be as it is written; the message says what to change."""

    says = _SAYS


class Mark(StrEnum):
    """What is written of a plate in place of a count."""

    TOO_MANY = "too numerous to count"
    CROWDED = "more than 100 per cm²"
    SPREADER = "spreader"
    ACCIDENT = "laboratory accident"


class Why(StrEnum):
    """A reason that shaped a result."""

    OUT_OF_RANGE = "out of range"
    OTHER_DILUTION = "other dilution"
    SPREADER = "spreader"
    ACCIDENT = "accident"
    ALL_LOW = "all low"
    NO_COLONIES = "no colonies"
    ALL_HIGH = "all high"
    NONE_IN_RANGE = "none in range"
    NO_NUMBER = "no number"
    PRESENT = "present"


@dataclass(frozen=True, slots=True)
class Reason:
    """A reason as a word to program with, and as an English sentence."""

    why: Why
    english: str


@dataclass(frozen=True, slots=True)
class Plate:
    """One plate."""

    dilution: Decimal
    """Grams (or mL) of sample in one mL of what was plated: 0.01 for 1:100."""
    colonies: int | Mark
    """A count, also one estimated from representative parts of a crowded plate; or a mark."""
    volume: Decimal = Decimal(1)
    """mL on the plate."""
    spread: Decimal = Decimal(0)
    """Share of the plate under spreading growth, 0 to 1."""
    area: Decimal | None = None
    """cm² of agar, wanted of a plate marked CROWDED: about 65 plastic, 59 glass (BAM, MEM)."""

    def __post_init__(self) -> None:
        if not 0 < self.dilution <= 1:
            raise NotAPlate("bad-dilution", dilution=self.dilution)
        if not self.volume > 0:
            raise NotAPlate("bad-volume", volume=self.volume)
        if not 0 <= self.spread <= 1:
            raise NotAPlate("bad-spread", spread=self.spread)
        if not isinstance(self.colonies, Mark) and self.colonies < 0:
            raise NotAPlate("bad-colonies", colonies=self.colonies)
        if self.colonies is Mark.CROWDED and not (self.area and self.area > 0):
            raise NotAPlate("no-area")

    @property
    def sample(self) -> Decimal:
        """Grams (or mL) of sample on the plate."""
        return self.dilution * self.volume


@dataclass(frozen=True, slots=True)
class CountingRule:
    """What a standard makes of plates."""

    name: str
    least: int
    most: int
    low_with_others: bool
    """Whether plates below `least` count beside one in range, at the same two dilutions."""
    estimate_from: int | None
    """Fewest colonies a plate, below `least`, that still give an estimate; None for never."""
    source: str
    tag: str


BAM = CountingRule(
    "FDA BAM chapter 3", 25, 250, False, None,
    "FDA BAM chapter 3, January 2001", "range and results READ in copies; formula MEM",
)  # fmt: skip
ISO_7218 = CountingRule(
    "ISO 7218", 10, 300, True, 4,
    "ISO 7218:2007", "READ almerja.com idm=40487; plates below 10 beside others MEM",
)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class PlateCount:
    """A plate count and how it came about."""

    reported: Amount
    """What the laboratory writes: two significant digits."""
    value: Decimal | None
    """The same before rounding, in CFU per gram or mL; a bound for less-than and more-than."""
    colonies: int
    """Colonies that the value rests on; 0 for a bound."""
    reasons: tuple[Reason, ...]
    rule: str

    @property
    def english(self) -> str:
        """The result and its reasons in plain English."""
        number = f"{self.reported} CFU" if self.value is not None else str(self.reported)
        return " ".join([f"{number} by {self.rule}.", *(one.english for one in self.reasons)])


def weighted_mean(plates: Sequence[Plate]) -> Decimal:
    """Return all colonies over all sample on the plates, in CFU per gram or mL.

    With 1 mL on n1 plates of a dilution d and n2 plates of the tenfold next, this is BAM's
    N = sum(C) / ((1 x n1 + 0.1 x n2) x d), and ISO 7218's sum(C) / (V x (n1 + 0.1 x n2) x d).
    Raises NotAPlate when a plate has no count, or there is none.
    """
    counts = [_colonies(one) for one in plates]
    if not counts:
        raise NotAPlate("no-plate")
    return sum(counts) / sum((one.sample for one in plates), Decimal(0))


def count_plates(plates: Sequence[Plate], rule: CountingRule = BAM) -> PlateCount:
    """Return the count by a standard's rule. Raises NotAPlate when no plate is given."""
    if not plates:
        raise NotAPlate("no-plate")
    usable, reasons = _usable(plates)
    if not usable:
        spreaders = any(one.why is Why.SPREADER for one in reasons)
        qualifier = Qualifier.SPREADERS if spreaders else Qualifier.ACCIDENT
        return PlateCount(
            reported=Amount(qualifier), value=None, colonies=0, reasons=reasons, rule=rule.name
        )
    counted, more = _counted(usable, rule)
    if counted:
        qualifier, value = Qualifier.EXACT, weighted_mean(counted)
    elif all(isinstance(one.colonies, int) and one.colonies < rule.least for one in usable):
        qualifier, value, counted, more = _low(usable, rule)
    else:
        qualifier, value, counted, more = _high(usable, rule)
    return PlateCount(
        reported=Amount(qualifier, significant(value)),
        value=value,
        colonies=sum(_colonies(one) for one in counted),
        reasons=reasons + more,
        rule=rule.name,
    )


def _usable(plates: Sequence[Plate]) -> tuple[list[Plate], tuple[Reason, ...]]:
    accidents = [one for one in plates if one.colonies is Mark.ACCIDENT]
    spreaders = [
        one
        for one in plates
        if one.colonies is Mark.SPREADER
        or (one.colonies is not Mark.ACCIDENT and one.spread > SPREADER_SHARE)
    ]
    reasons = []
    if spreaders:
        english = f"{_plates(len(spreaders))} left out: spreaders over more than a quarter of it."
        reasons.append(Reason(Why.SPREADER, english))
    if accidents:
        english = f"{_plates(len(accidents))} left out: laboratory accident."
        reasons.append(Reason(Why.ACCIDENT, english))
    left_out = {id(one) for one in accidents + spreaders}
    return [one for one in plates if id(one) not in left_out], tuple(reasons)


def _counted(plates: list[Plate], rule: CountingRule) -> tuple[list[Plate], tuple[Reason, ...]]:
    """Choose the plates that the formula takes: in range, at two successive dilutions at most."""
    within = [one for one in plates if _in_range(one, rule)]
    if not within:
        return [], ()
    first = max(one.dilution for one in within)
    pair = (first, first * _TENFOLD)
    chosen = [one for one in within if one.dilution in pair]
    if rule.low_with_others:
        chosen += [one for one in plates if one.dilution in pair and _below(one, rule)]
    reasons = []
    elsewhere = sum(1 for one in within if one.dilution not in pair)
    if elsewhere:
        english = f"{_plates(elsewhere)} left out: not at the first two successive dilutions."
        reasons.append(Reason(Why.OTHER_DILUTION, english))
    outside = len(plates) - len(chosen) - elsewhere
    if outside:
        english = f"{_plates(outside)} left out: outside {rule.least} to {rule.most} colonies."
        reasons.append(Reason(Why.OUT_OF_RANGE, english))
    return chosen, tuple(reasons)


_Outcome = tuple[Qualifier, Decimal, list[Plate], tuple[Reason, ...]]


def _low(plates: list[Plate], rule: CountingRule) -> _Outcome:
    """Every plate lies below the range: a bound from the plates with most sample, or an estimate.

    Bounds are those of a single plate, also when there are two, so that they never promise more.
    """
    most_sample = max(one.sample for one in plates)
    lowest = [one for one in plates if one.sample == most_sample]
    if not any(_colonies(one) for one in plates):
        english = "No colonies on any plate: less than one on the plate with most sample."
        return Qualifier.LESS_THAN, 1 / most_sample, [], (Reason(Why.NO_COLONIES, english),)
    if rule.estimate_from is None:
        english = f"Every plate has fewer than {rule.least} colonies: less than {rule.least}."
        bound = rule.least / most_sample
        return Qualifier.LESS_THAN, bound, [], (Reason(Why.ALL_LOW, english),)
    few = rule.estimate_from
    if sum(_colonies(one) for one in lowest) >= few * len(lowest):
        english = f"Every plate has fewer than {rule.least} colonies: an estimate."
        return Qualifier.ESTIMATED, weighted_mean(lowest), lowest, (Reason(Why.ALL_LOW, english),)
    english = f"Present, but with fewer than {few} colonies a plate: less than {few}."
    return Qualifier.LESS_THAN, few / most_sample, [], (Reason(Why.PRESENT, english),)


def _high(plates: list[Plate], rule: CountingRule) -> _Outcome:
    """No plate lies within the range and some lie above: an estimate, or more-than.

    Where other plates lie below, the estimate still comes from those above: no published rule was
    seen for that case, and this one never reports the smaller number.
    """
    above = [one for one in plates if not _below(one, rule)]
    if len(above) == len(plates):
        reason = Reason(Why.ALL_HIGH, f"Every plate has more than {rule.most} colonies.")
    else:
        english = f"No plate has {rule.least} to {rule.most} colonies; the fuller ones count."
        reason = Reason(Why.NONE_IN_RANGE, english)
    bound = max((_least_on(one, rule) / one.sample for one in above if _marked(one)), default=None)
    numbered = [one for one in above if not _marked(one)]
    nearest = min(numbered, key=lambda one: (_colonies(one), one.sample), default=None)
    if nearest is not None and (bound is None or weighted_mean([nearest]) >= bound):
        english = f"Estimated from the plate nearest {rule.most}: {nearest.colonies} colonies."
        reasons = (reason, Reason(Why.OUT_OF_RANGE, english))
        return Qualifier.ESTIMATED, weighted_mean([nearest]), [nearest], reasons
    english = "A plate too full to count gives the larger number: more than."
    why = (reason, Reason(Why.NO_NUMBER, english))
    return Qualifier.MORE_THAN, bound or Decimal(0), [], why


def _least_on(plate: Plate, rule: CountingRule) -> Decimal:
    if plate.colonies is Mark.CROWDED and plate.area is not None:
        return max(Decimal(rule.most), CROWDED * plate.area)
    return Decimal(rule.most)


def _marked(plate: Plate) -> bool:
    return isinstance(plate.colonies, Mark)


def _in_range(plate: Plate, rule: CountingRule) -> bool:
    return isinstance(plate.colonies, int) and rule.least <= plate.colonies <= rule.most


def _below(plate: Plate, rule: CountingRule) -> bool:
    return isinstance(plate.colonies, int) and plate.colonies < rule.least


def _colonies(plate: Plate) -> int:
    if isinstance(plate.colonies, Mark):
        raise NotAPlate("no-count", mark=plate.colonies)
    return plate.colonies


def _plates(number: int) -> str:
    return "1 plate" if number == 1 else f"{number} plates"

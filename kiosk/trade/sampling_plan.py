"""Two- and three-class sampling plans (n, c, m, M): a lot's samples to one verdict."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from kiosk.trade.keyed import Keyed
from kiosk.trade.rounding import Amount, Qualifier

ABSENT = Amount(Qualifier.EXACT, Decimal(0))
"""A presence test that found nothing; its plan has m = 0."""

PRESENT = Amount(Qualifier.MORE_THAN, Decimal(0))
"""A presence test that found the organism."""


_SAYS = {
    "no-sample": "n = {n}: a plan needs at least one sample",
    "bad-c": "c = {c}: write 0 to n, here {n}",
    "bad-m": "m = {m}: write 0 or more",
    "bad-top": "M = {top}: M must lie above m = {m}; two classes have no M",
    "other-number": "{given} samples for a plan of {n}: give {n} results of one lot",
}


class NotAPlan(Keyed, ValueError):
    """A plan, or the samples given to it, cannot be; the message says what to change."""

    says = _SAYS


class Verdict(StrEnum):
    """What a plan says of a lot."""

    SATISFACTORY = "satisfactory"
    ACCEPTABLE = "acceptable"
    UNSATISFACTORY = "unsatisfactory"
    UNKNOWN = "unknown"
    """A less-than or more-than result leaves two verdicts open."""


_ORDER = (Verdict.SATISFACTORY, Verdict.ACCEPTABLE, Verdict.UNSATISFACTORY)


@dataclass(frozen=True, slots=True, kw_only=True)
class SamplingPlan:
    """A plan as (EC) 2073/2005 writes it; without `top` it has two classes."""

    n: int
    """Samples of the lot."""
    c: int
    """Samples that may lie above m."""
    m: Decimal
    """Limit in CFU per gram or mL; 0 for absence."""
    top: Decimal | None = None
    """M, that no sample may pass; None in a two-class plan."""

    def __post_init__(self) -> None:
        if self.n < 1:
            raise NotAPlan("no-sample", n=self.n)
        if not 0 <= self.c <= self.n:
            raise NotAPlan("bad-c", c=self.c, n=self.n)
        if not self.m >= 0:
            raise NotAPlan("bad-m", m=self.m)
        if self.top is not None and not self.top > self.m:
            raise NotAPlan("bad-top", top=self.top, m=self.m)


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """A verdict, and what it rests on."""

    verdict: Verdict
    above_m: int
    """Samples surely above m, those above M among them."""
    above_top: int
    """Samples surely above M."""
    untold: tuple[int, ...]
    """Places (from 0) of samples that cannot be told from m or from M."""
    worst: Verdict
    """The verdict if every untold sample is as bad as it may be."""
    english: str


def judge(plan: SamplingPlan, samples: Sequence[Amount]) -> Judged:
    """Judge a lot. Raises NotAPlan unless there are exactly n samples.

    Three classes: satisfactory when all are at most m; acceptable when at most c lie between m and
    M and none above M. Two classes: satisfactory when at most c lie above m. Wording of the
    interpretation in (EC) 2073/2005, MEM.
    """
    if len(samples) != plan.n:
        raise NotAPlan("other-number", given=len(samples), n=plan.n)
    over_m = [one.exceeds(plan.m) for one in samples]
    over_top = [plan.top is not None and one.exceeds(plan.top) for one in samples]
    best = _verdict(plan, over_m.count(True), over_top.count(True))
    untold = tuple(
        place for place, both in enumerate(zip(over_m, over_top, strict=True)) if None in both
    )
    worst = _verdict(
        plan, sum(one is not False for one in over_m), sum(one is not False for one in over_top)
    )
    verdict = best if best is worst else Verdict.UNKNOWN
    return Judged(
        verdict=verdict, above_m=over_m.count(True), above_top=over_top.count(True),
        untold=untold, worst=worst, english=_english(plan, verdict, best, worst, over_m, over_top),
    )  # fmt: skip


def _verdict(plan: SamplingPlan, above_m: int, above_top: int) -> Verdict:
    if above_top or above_m > plan.c:
        return Verdict.UNSATISFACTORY
    if above_m and plan.top is not None:
        return Verdict.ACCEPTABLE
    return Verdict.SATISFACTORY


def _english(
    plan: SamplingPlan,
    verdict: Verdict,
    best: Verdict,
    worst: Verdict,
    over_m: Sequence[bool | None],
    over_top: Sequence[bool | None],
) -> str:
    said = f"{over_m.count(True)} of {plan.n} above m = {plan.m:,f} (at most {plan.c} may be)"
    if plan.top is not None:
        said += f", {over_top.count(True)} above M = {plan.top:,f} (none may be)"
    if verdict is Verdict.UNKNOWN:
        open_ones = _ORDER[_ORDER.index(best) : _ORDER.index(worst) + 1]
        return (
            f"Unknown: {said}. Samples with only a bound leave it open between {open_ones[0]}"
            f" and {open_ones[-1]}: test them at another dilution."
        )
    return f"{verdict.capitalize()}: {said}."

"""Print how long laboratory results take to judge: `python -m tests.bench.bench_laboratory`.

Random results of invented barrels, with a fixed seed. The last lines print how often the trend
warns of barrels that do not change, and how early of barrels that do.
"""

from __future__ import annotations

import random
import time
from collections.abc import Callable
from decimal import Decimal

from kiosk.trade.authorities import Analysis
from kiosk.trade.most_probable_number import Tubes, most_probable_number
from kiosk.trade.plate_count import Plate, count_plates
from kiosk.trade.rounding import Amount, Qualifier, read_amount, significant
from kiosk.trade.sampling_plan import SamplingPlan, judge
from kiosk.trade.standing import Barrel, Result, standings

_MANY = 10_000
_BARRELS = 250
_TRENDS = 400
_SEED = 20260302


def _timed(name: str, number: int, work: Callable[[], object]) -> None:
    begun = time.process_time()
    work()
    seconds = time.process_time() - begun
    print(f"{name:44} {number:6} in {seconds:6.2f} CPU s, {seconds / number * 1e6:7.1f} us each")


def _results(rng: random.Random) -> list[Result]:
    barrels = [Barrel(f"M{i}", "left", Analysis.TOTAL_COUNT) for i in range(_BARRELS)]
    texts = [f"{rng.choice(('', '', '', '< ', '> '))}{rng.randint(1, 900)}00" for _ in range(_MANY)]
    return [
        Result(barrels[i % _BARRELS], 700_000 + 7 * (i // _BARRELS), read_amount(text))
        for i, text in enumerate(texts)
    ]


def _amount(log10: float) -> Amount:
    if log10 < 1:
        return Amount(Qualifier.LESS_THAN, Decimal(10))
    return Amount(Qualifier.EXACT, significant(Decimal(repr(10**log10))))


def _warnings(rng: random.Random, slope: float, mean: float, limit: int) -> None:
    from kiosk.review.trend import Point, Warned, trend

    rises = shifts = early = before = 0
    begun = time.process_time()
    for _ in range(_TRENDS):
        history = [Point(45 * i, _amount(rng.gauss(mean + slope * i, 0.4))) for i in range(16)]
        found = trend(history, Decimal(limit))
        rises += Warned.RISE in found.warned
        shifts += Warned.SHIFT in found.warned
        early += found.early
        first = next((n for n in range(8, 17) if trend(history[:n], Decimal(limit)).early), None)
        before += first is not None
    each = (time.process_time() - begun) / _TRENDS / 10 * 1000
    share = 100 / _TRENDS
    print(
        f"slope {slope:4.2f} log10 a sample, mean {mean}, limit {limit:6}:"
        f" rise {rises * share:5.1f} %, shift {shifts * share:5.1f} %,"
        f" early now {early * share:5.1f} %, early at any sample {before * share:5.1f} %;"
        f" {each:.2f} ms a trend"
    )


def main() -> None:
    """Print the figures."""
    rng = random.Random(_SEED)
    results = _results(rng)
    limits = {one.of: Decimal(50_000) for one in results}
    _timed(
        "results to the standing of 250 barrels", _MANY, lambda: standings(results, limits, 700_300)
    )
    plates = [
        [Plate(Decimal("0.01"), rng.randint(0, 400)), Plate(Decimal("0.001"), rng.randint(0, 60))]
        for _ in range(_MANY)
    ]
    _timed("pairs of plates to a count", _MANY, lambda: [count_plates(one) for one in plates])
    plan = SamplingPlan(n=5, c=2, m=Decimal(10_000), top=Decimal(50_000))
    lots = [[one.amount for one in results[i : i + 5]] for i in range(0, _MANY, 5)]
    _timed(
        "samples in lots of five to a verdict", _MANY, lambda: [judge(plan, one) for one in lots]
    )
    tubes = [
        [Tubes(Decimal(z), 3, rng.randint(0, 3)) for z in ("0.1", "0.01", "0.001")]
        for _ in range(1000)
    ]
    _timed("sets of nine tubes to a number with limits", 1000,
           lambda: [most_probable_number(one) for one in tubes])  # fmt: skip
    for slope, mean, limit in (
        (0.0, 3.5, 50_000),
        (0.0, 0.9, 500),
        (0.05, 3.5, 50_000),
        (0.1, 3.0, 50_000),
    ):
        _warnings(rng, slope, mean, limit)


if __name__ == "__main__":
    main()

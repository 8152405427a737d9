"""A figure of laboratory results: powers of ten, the limits, and where the results head."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING

from kiosk.plots.axes import day_axis, power_axis
from kiosk.plots.figure import (
    Chart,
    Dash,
    Ink,
    Layer,
    Level,
    Line,
    Point,
    Points,
    Shape,
    Source,
)
from kiosk.plots.reader import Reader
from kiosk.review.barrels import Judged, heading
from kiosk.review.results import Entered
from kiosk.trade.authorities import MicrobialLimit
from kiosk.trade.rounding import Qualifier

if TYPE_CHECKING:
    from kiosk.review.trend import Trend

_DASHES = (Dash.SOLID, Dash.DASHED, Dash.DOTTED)

_SHAPES = {
    Qualifier.EXACT: (Shape.DOT, "plot-result-counted"),
    Qualifier.ESTIMATED: (Shape.RING, "plot-result-estimated"),
    Qualifier.LESS_THAN: (Shape.DOWN, "plot-result-less"),
    Qualifier.MORE_THAN: (Shape.UP, "plot-result-more"),
}
_OVER = (Shape.CROSS, "plot-result-over")


def results(of: Judged, reader: Reader, *, seqs: dict[str, int] | None = None) -> Chart | None:
    """Return the results of one barrel with the limits and the moving average; None for none.

    Results without a number are left out, and counted in the description. `seqs` has the journal's
    row of each result by its id, where they are known.
    """
    numbered = [one for one in of.entered if one.of.amount.value is not None]
    if not numbered:
        return None
    say = reader.words.say
    trend = heading(of)
    layers = [*_of_limits(of.limits, reader), *_of_results(of, numbered, seqs or {}, reader)]
    logs = [_log10(one) for one in numbered] + [math.log10(float(x.most)) for x in of.limits]
    if not isinstance(trend, str) and trend.average:
        layers += _of_trend(trend, [one.of.day for one in numbered], reader)
        logs += [*trend.average, *trend.control_limits]
    analysis = say(f"pick-{of.of.analysis.value.replace(' ', '-')}")
    what = f"{reader.machine(of.of.machine)}, {say('plot-head', head=of.of.barrel)}"
    return Chart(
        title=say("plot-results", analysis=analysis, what=what),
        told=_told(of, numbered, trend, reader),
        x=day_axis(numbered[0].of.day, numbered[-1].of.day, reader.words),
        y=power_axis(say("plot-axis-count", per=numbered[-1].of.per), logs, reader.words),
        layers=tuple(layers),
    )  # fmt: skip


def _of_limits(limits: Sequence[MicrobialLimit], reader: Reader) -> list[Layer]:
    say = reader.words.say
    return [
        Level(
            say("plot-result-limit", n=float(one.most), per=one.per, products=", ".join(
                say(f"pick-{product.value.replace(' ', '-')}") for product in one.products
            )),
            math.log10(float(one.most)), _DASHES[place % len(_DASHES)],
        )
        for place, one in enumerate(limits)
    ]  # fmt: skip


def _of_results(
    of: Judged, numbered: Sequence[Entered], seqs: dict[str, int], reader: Reader
) -> list[Layer]:
    groups: dict[tuple[Shape, str], list[Point]] = {}
    for one in numbered:
        sort = _OVER if _over(one, of.limits) else _SHAPES[one.of.amount.qualifier]
        told = f"{one.of.day} {one.of.amount}, {one.of.laboratory} {one.of.sample}".strip()
        source = Source(seqs.get(one.id, 0), told=told)
        groups.setdefault(sort, []).append(Point(_x(one.of.day), _log10(one), source))
    return [
        Points(reader.words.say(name), tuple(points), shape, Ink.OFF if sort == _OVER else Ink.DATA)
        for sort, points in groups.items()
        for shape, name in (sort,)
    ]


def _of_trend(trend: Trend, days: Sequence[date], reader: Reader) -> list[Layer]:
    """Return the moving average and its control limit, over the results past the baseline."""
    say = reader.words.say
    later = [_x(day) for day in days[len(days) - len(trend.average) :]]
    average = zip(later, trend.average, strict=True)
    control = zip(later, trend.control_limits, strict=True)
    return [
        Line(say("plot-average"), tuple(Point(x, y) for x, y in average), Dash.DASHED),
        Line(say("plot-control"), tuple(Point(x, y) for x, y in control), Dash.DOTTED),
    ]


def _told(of: Judged, numbered: Sequence[Entered], trend: Trend | str, reader: Reader) -> str:
    say = reader.words.say
    over = sum(_over(one, of.limits) for one in numbered)
    told = [
        say("plot-results-told", n=len(numbered), first=str(numbered[0].of.day),
            last=str(numbered[-1].of.day), over=over)
    ]  # fmt: skip
    if len(of.entered) > len(numbered):
        told.append(say("plot-results-without", n=len(of.entered) - len(numbered)))
    if not isinstance(trend, str):
        told += [say(f"trend-{one.value.replace(' ', '-')}") for one in trend.warned]
    return " ".join(told)


def _over(one: Entered, limits: Sequence[MicrobialLimit]) -> bool:
    """Say whether a result is surely over the limit of its own product."""
    return any(
        one.of.amount.exceeds(limit.most) is True
        for limit in limits
        if one.of.product in limit.products and limit.test == one.of.analysis
    )


def _x(day: date) -> float:
    return day.toordinal() + 0.5


def _log10(one: Entered) -> float:
    return math.log10(max(float(one.of.amount.value or 0), 1.0))

"""Where each barrel stands with its authority, and where its results head."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import TYPE_CHECKING, Final

from kiosk.plots.of_results import results
from kiosk.plots.reader import reader
from kiosk.report.desk import Desk
from kiosk.report.paper import Block, Cell, Picture, Row, Seqs
from kiosk.review.barrels import Judged, heading
from kiosk.trade.standing import ACTION_OF, NOTICE_OF, State

if TYPE_CHECKING:
    from kiosk.review.trend import Trend

_TRENDS: Final = {"too few results": "too-few-results"}


def standings(
    judged: Sequence[Judged], entered: Mapping[str, int], today: date, desk: Desk
) -> Iterator[Block]:
    """Yield how the barrels stand, and of those that need eyes their results as figures.

    `entered` has the journal's row of each result by its id.
    """
    heads = [(one, heading(one)) for one in judged]
    yield desk.table(
        id="standing", caption=desk.say("standing-caption", day=today.isoformat()),
        columns={"barrel": 24, "analysis": 20, "standing": 42, "trend": 30},
        rows=(_judged(one, head, entered, desk) for one, head in heads),
        empty=desk.say("results-none"),
    )  # fmt: skip
    who = reader(desk.site, desk.words)
    for one, head in heads:
        if _needs_eyes(one, head):
            figure = results(one, who, seqs=dict(entered))
            if figure is not None:
                yield Picture(figure)


def _judged(one: Judged, head: Trend | str, entered: Mapping[str, int], desk: Desk) -> Row:
    cells = (
        desk.barrel(one.of.machine, one.of.barrel), desk.kind(one.of.analysis), _stands(one, desk),
        _trend(head, desk),
    )  # fmt: skip
    return Row(tuple(map(Cell, cells)), _decisive(one, entered), off=_needs_eyes(one, head))


def _decisive(one: Judged, entered: Mapping[str, int]) -> Seqs:
    """Return the rows of the results of the last days that a standing looks at."""
    days = {day.day for day in one.days[-ACTION_OF:]}
    return tuple(sorted(entered[x.id] for x in one.entered if x.of.day.toordinal() in days))


def _needs_eyes(one: Judged, head: Trend | str) -> bool:
    early = not isinstance(head, str) and head.early
    return early or one.state not in (State.CLEAR, State.NO_RESULTS)


def _stands(one: Judged, desk: Desk) -> str:
    told = [desk.say("state", state=one.state.replace(" ", "-"))]
    stands = one.standing
    if stands is not None:
        told.append(
            desk.say(
                "over-of", four=stands.over_of_four, of_four=min(NOTICE_OF, len(one.days)),
                five=stands.over_of_five, of_five=min(ACTION_OF, len(one.days)),
            )
        )  # fmt: skip
        if stands.resample is not None:
            first, last = (date.fromordinal(day).isoformat() for day in stands.resample)
            told.append(desk.say("resample", first=first, last=last))
        if stands.samples_owed:
            told.append(desk.say("owed", days=stands.samples_owed))
    elif one.average is not None:
        told.append(desk.say("average", low=f"{one.average.low:,.0f}"))
    told += [desk.say("left-out", result=lost.id, why=why) for lost, why in one.left_out]
    return " ".join(told)


def _trend(head: Trend | str, desk: Desk) -> str:
    if isinstance(head, str):
        return desk.say("trend-none")
    named = (_TRENDS.get(one.value, one.value) for one in head.warned)
    return " ".join(desk.words.say(f"trend-{name}") for name in named)

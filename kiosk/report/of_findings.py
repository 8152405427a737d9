"""Deviations and readings as tables: the actual values, with their limits and reasons."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from decimal import Decimal, InvalidOperation
from statistics import median

from kiosk.report.answers import limit
from kiosk.report.desk import Desk
from kiosk.report.paper import Cell, Row, Seqs, Table
from kiosk.review.deviations import Deviation, sentence
from kiosk.review.ledger_lines import Reading

Traced = tuple[Deviation, Seqs]
"""A deviation with the journal rows that it is from."""


def traced(found: Iterable[Deviation], desk: Desk) -> tuple[Traced, ...]:
    """Return deviations with the journal rows that they are from, in their order."""
    return tuple((one, seqs_of(one, desk)) for one in found)


def deviations(found: Sequence[Traced], desk: Desk, *, one: str = "") -> Table:
    """Return deviations, heaviest first; of `one` session, or of several."""
    names = ["column-weight", "column-time", "column-deviation", "column-why-seen"]
    names.insert(2, "column-session") if not one else names.append("column-source")
    widths = (13, 18, 42, 31, 20) if one else (13, 18, 22, 44, 27)
    sources = {rule.id: rule.source for rule in desk.rules.rules}
    return Table(
        id=f"deviations-{one}" if one else "deviations",
        caption=desk.say("deviations-caption"),
        columns=tuple(desk.say(name) for name in names),
        widths=widths,
        rows=tuple(_deviation(x, seqs, desk, sources, several=not one) for x, seqs in found),
        empty=desk.say("deviations-none"),
    )


def _deviation(
    found: Deviation, seqs: Seqs, desk: Desk, sources: dict[str, str], *, several: bool
) -> Row:
    cells = [
        Cell(str(found.weight)),
        Cell(desk.moment(found.at_utc)),
        Cell(f"{desk.text(found.title)}\n{sentence(found, desk.words)}"),
        Cell(desk.text(found.reason)),
    ]
    if several:
        cells.insert(2, Cell(f"{desk.machine(found.machine)}\n{found.session or '–'}"))
    else:
        cells.append(Cell(sources.get(found.rule, "")))
    return Row(tuple(cells), seqs)


def seqs_of(found: Deviation, desk: Desk) -> Seqs:
    """Return the journal rows that a deviation is from.

    They are those of its session at its time; all that the session has where the deviation speaks
    of the whole of it, as its first and last row; none where nothing was recorded.
    """
    if not found.session:
        return ()
    at = desk.rows.at(found.session, found.at_utc)
    if at:
        return at
    line = desk.ledger.line(found.session)
    return (line.first_seq, line.last_seq)


def by_rule(found: Sequence[Traced], desk: Desk) -> Table:
    """Return how often each rule found something, heaviest first."""
    count = Counter(one.rule for one, _ in found)
    seqs: dict[str, set[int]] = {}
    for one, rows in found:
        seqs.setdefault(one.rule, set()).update(rows)
    rules = sorted((x for x in desk.rules.rules if count[x.id]), key=lambda x: (-x.weight, x.id))
    names = ("column-weight", "column-deviation", "column-count", "column-source")
    return Table(
        id="rules", caption=desk.say("rules-caption"),
        columns=tuple(desk.say(name) for name in names), widths=(13, 33, 12, 54),
        rows=tuple(
            Row(
                (
                    Cell(str(x.weight)),
                    Cell(desk.text(x.title)),
                    Cell(str(count[x.id]), key=f"rule-{x.id}"),
                    Cell(x.source),
                ),
                tuple(sorted(seqs[x.id])),
            )
            for x in rules
        ),
        empty=desk.say("deviations-none"),
    )  # fmt: skip


def readings(found: Sequence[Reading], desk: Desk, *, one: str = "") -> Table:
    """Return what was measured, oldest first; in `one` session, or in several."""
    names = ["column-time", "column-measured", "column-value", "column-limit", "column-kept"]
    widths = [19, 22, 12, 42, 14]
    if not one:
        names.insert(1, "column-machine")
        widths.insert(1, 16)
    return Table(
        id=f"readings-{one}" if one else "readings",
        caption=desk.say("readings-caption"),
        columns=tuple(desk.say(name) for name in names),
        widths=tuple(widths),
        rows=tuple(_reading(x, desk, several=not one) for x in found),
        empty=desk.say("readings-none"),
    )


def _reading(one: Reading, desk: Desk, *, several: bool) -> Row:
    kept = {True: "kept-yes", False: "kept-no", None: "kept-without"}[one.kept]
    cells = [
        Cell(desk.second(one.at_utc)),
        Cell(desk.quantity(one.quantity)),
        Cell(f"{one.value} {one.unit}".strip()),
        Cell(limit(one.limit, one.unit, desk)),
        Cell(desk.say(kept)),
    ]
    if several:
        cells.insert(1, Cell(desk.machine(one.machine)))
    return Row(tuple(cells), (one.seq,), off=one.kept is False)


def spread(found: Sequence[Reading], desk: Desk) -> Table:
    """Return of each quantity at each machine how often it was measured, and between what."""
    groups: dict[tuple[str, str, str], list[Reading]] = {}
    for one in found:
        groups.setdefault((one.machine, one.quantity, one.unit), []).append(one)
    names = (
        "column-machine", "column-measured", "column-count", "column-least", "column-middle",
        "column-most", "column-off",
    )  # fmt: skip
    return Table(
        id="spread", caption=desk.say("spread-caption"),
        columns=tuple(desk.say(name) for name in names), widths=(24, 28, 10, 14, 14, 14, 12),
        rows=tuple(_spread(key, group, desk) for key, group in sorted(groups.items())),
        empty=desk.say("readings-none"),
    )  # fmt: skip


def _spread(key: tuple[str, str, str], group: Sequence[Reading], desk: Desk) -> Row:
    machine, quantity, unit = key
    values = [value for one in group if (value := _number(one.value)) is not None]
    off = tuple(one.seq for one in group if one.kept is False)
    name = "-".join((machine, *quantity.split()))

    def cell(value: Decimal | None, what: str) -> Cell:
        text = "–" if value is None else f"{value:f} {unit}".strip()
        return Cell(text, key=f"{what}-{name}-{unit}")

    return Row(
        (
            Cell(desk.machine(machine)),
            Cell(desk.quantity(quantity)),
            Cell(str(len(group)), key=f"count-{name}-{unit}"),
            cell(min(values, default=None), "least"),
            cell(median(values) if values else None, "middle"),
            cell(max(values, default=None), "most"),
            Cell(str(len(off)), off, key=f"off-{name}-{unit}"),
        ),
        tuple(one.seq for one in group),
        off=bool(off),
    )


def _number(text: str) -> Decimal | None:
    try:
        found = Decimal(text)
    except InvalidOperation:
        return None
    return found if found.is_finite() else None

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
    columns = {"weight": 13, "time": 18}
    if one:
        columns |= {"deviation": 42, "why-seen": 31, "source": 20}
    else:
        columns |= {"session": 22, "deviation": 44, "why-seen": 27}
    sources = {rule.id: rule.source for rule in desk.rules.rules}
    return desk.table(
        id=f"deviations-{one}" if one else "deviations",
        caption=desk.say("deviations-caption"),
        columns=columns,
        rows=(_deviation(x, seqs, desk, sources, several=not one) for x, seqs in found),
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
    return desk.table(
        id="rules", caption=desk.say("rules-caption"),
        columns={"weight": 13, "deviation": 33, "count": 12, "source": 54},
        rows=(
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
    machine = {} if one else {"machine": 16}
    return desk.table(
        id=f"readings-{one}" if one else "readings",
        caption=desk.say("readings-caption"),
        columns={"time": 19, **machine, "measured": 22, "value": 12, "limit": 42, "kept": 14},
        rows=(_reading(x, desk, several=not one) for x in found),
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
    return desk.table(
        id="spread", caption=desk.say("spread-caption"),
        columns={
            "machine": 24, "measured": 28, "count": 10, "least": 14, "middle": 14, "most": 14,
            "off": 12,
        },
        rows=(_spread(key, group, desk) for key, group in sorted(groups.items())),
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

"""Spare parts on the shelf: received, counted, used up, and when they will not last any more."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from kiosk.engine.commands import Finding
from kiosk.journal.shop_facts import PartsReceived, ShopEvent, StockCounted
from kiosk.procedure.load import Library
from kiosk.procedure.model import Text
from kiosk.procedure.site import Site
from kiosk.review.ledger_lines import PartLine
from kiosk.review.lifetimes import Spread, until
from kiosk.review.parts import Wear, lives, same_part


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """The spare pieces of one part. Times are POSIX seconds."""

    kind: str
    """Machine kind that the part is for."""
    part: str
    name: Text
    takes: int
    """Pieces that one replacement takes: the whole set, as the parts list has it."""
    pieces: int | None = None
    """On the shelf by what was entered; None when nothing was entered yet."""
    counted_utc: float | None = None
    """When the shelf was last counted; None for never: then older pieces may lie there too."""
    none_left_utc: float | None = None
    """When a worker found none there, and no piece is known to have come since."""
    short: int = 0
    """Pieces that were used since the last count though the shelf had them not: count again."""

    @property
    def replacements(self) -> int | None:
        """How many replacements the shelf is good for."""
        return None if self.pieces is None else self.pieces // self.takes


def stocks(
    events: Iterable[ShopEvent],
    lines: Iterable[PartLine],
    site: Site,
    library: Library,
    *,
    practice: bool,
) -> tuple[Stock, ...]:
    """Return the shelf's stock of each wearing part of the site's machines, kind by kind.

    `lines` has all that was seen of parts since the first count. A replacement is taken to use a
    whole set; where workers replace single pieces, a count puts it right.
    """
    found = {(one.kind, one.part): one for one in _empty(site, library)}
    kinds = {machine.id: machine.kind for machine in site.machines}
    happened: list[tuple[float, int, tuple[str, str], PartLine | PartsReceived | StockCounted]] = []
    for place, event in enumerate(events):
        fact = event.fact
        if isinstance(fact, PartsReceived | StockCounted) and fact.practice == practice:
            happened.append((event.at.utc, place, (fact.kind, fact.part), fact))
    for line in lines:
        if line.practice == practice and line.finding in (Finding.REPLACED, Finding.NONE_LEFT):
            key = (kinds.get(line.machine, ""), line.part)
            happened.append((line.at_utc, line.seq, key, line))
    for at_utc, _, key, what in sorted(happened, key=lambda one: one[:2]):
        if key in found:
            found[key] = _after(found[key], what, at_utc)
    return tuple(found.values())


def runs_out(stock: Stock, wears: Sequence[Wear]) -> Spread | None:
    """Foretell in how many days a replacement will not find its pieces on the shelf.

    It goes by what workers replaced so far on all machines of the kind. Returns None when the
    shelf is not known, or too few replacements were seen.
    """
    if stock.replacements is None:
        return None
    mine = same_part(wears, stock.kind, stock.part)
    return until(lives(mine), [one.age_days for one in mine], stock.replacements + 1)


def _empty(site: Site, library: Library) -> list[Stock]:
    kinds = dict.fromkeys(
        machine.kind for machine in site.machines if machine.kind in library.kinds
    )
    return [
        Stock(kind=kind, part=part, name=made.name, takes=made.count)
        for kind in kinds
        for part, made in library.kinds[kind].parts.items()
        if made.wears
    ]


def _after(stock: Stock, what: PartLine | PartsReceived | StockCounted, at_utc: float) -> Stock:
    match what:
        case StockCounted(count=count):
            return replace(stock, pieces=count, counted_utc=at_utc, none_left_utc=None, short=0)
        case PartsReceived(count=count):
            return replace(stock, pieces=(stock.pieces or 0) + count, none_left_utc=None)
        case PartLine(finding=Finding.NONE_LEFT):
            return replace(stock, pieces=None if stock.pieces is None else 0, none_left_utc=at_utc)
        case _ if stock.pieces is None:
            return replace(stock, none_left_utc=None)
        case _:
            missing = max(0, stock.takes - stock.pieces)
            left = max(0, stock.pieces - stock.takes)
            return replace(stock, pieces=left, short=stock.short + missing)

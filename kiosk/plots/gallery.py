"""The figures of a shop, each drawn when it is wanted."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Final

from kiosk.plots.figure import Figure
from kiosk.plots.of_closings import closings
from kiosk.plots.of_parts import wear as wear_picture
from kiosk.plots.of_readings import MIX_TEMPERATURE, SANITIZER_STRENGTH, readings
from kiosk.plots.of_results import results
from kiosk.plots.of_sessions import deviations, lengths
from kiosk.plots.reader import Reader
from kiosk.procedure.load import Library
from kiosk.procedure.review_rules import Interval
from kiosk.procedure.site import Site
from kiosk.review.barrels import Judged
from kiosk.review.ledger import Ledger
from kiosk.review.parts import wear
from kiosk.review.schedule import Duty

_DAY_S: Final = 86_400.0


@dataclass(frozen=True, slots=True)
class Picture:
    """One figure that can be drawn."""

    name: str
    """What it shows, in the reader's language."""
    draw: Callable[[], Figure | None]
    """Draws it; None where there is nothing to show."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Gallery:
    """What the figures of a shop are made from; the ledger is caught up."""

    ledger: Ledger
    reader: Reader
    site: Site
    library: Library
    intervals: Sequence[Interval]
    judged: tuple[Judged, ...] = ()
    """Barrels with laboratory results, by some authority's limits."""
    now_utc: float
    days: int
    """How far back they look. Parts and laboratory results are looked at as a whole."""

    def pictures(self) -> tuple[Picture, ...]:
        """Return the figures that a shop has, those of the whole shop first."""
        return (*self._of_shop(), *self._of_machines(), *self._of_laboratory())

    def _of_shop(self) -> Iterable[Picture]:
        say = self.reader.words.say
        yield Picture(say("plot-closings"), self._closings)
        yield Picture(say("plot-deviations", what=self.site.name), self._deviations)
        yield Picture(say("plot-parts"), self._wear)

    def _of_machines(self) -> Iterable[Picture]:
        words, say = self.reader.words, self.reader.words.say
        for machine in self.site.machines:
            for procedure in self.library.procedures.values():
                if procedure.machine_kind == machine.kind:
                    what = f"{words.text(procedure.title)}, {machine.name}"
                    draw = partial(self._lengths, machine.id, procedure.id, what)
                    yield Picture(say("plot-length", what=what), draw)
            for quantity in (MIX_TEMPERATURE, SANITIZER_STRENGTH):
                name = say("plot-quantity", quantity=quantity.replace(" ", "-"), other=quantity)
                title = say("plot-readings", quantity=name, what=machine.name)
                yield Picture(title, partial(self._readings, machine.id, quantity, machine.name))

    def _of_laboratory(self) -> Iterable[Picture]:
        for one in self.judged:
            drawn = results(one, self.reader)
            if drawn is not None:
                yield Picture(drawn.title, partial(results, one, self.reader))

    @property
    def _from_utc(self) -> float:
        return self.now_utc - self.days * _DAY_S

    def _closings(self) -> Figure | None:
        first, last = self.reader.day(self._from_utc), self.reader.day(self.now_utc)
        practice = self.site.practice
        kept = self.ledger.kept(first, last, self.now_utc, practice=practice, duties=(Duty.CLOSE,))
        named = {name for one in kept for name in one.due.procedures}
        since = self._from_utc - _DAY_S
        lines = [
            line
            for name in sorted(named)
            for line in self.ledger.lines(
                practice=practice, procedure=name, from_utc=since, limit=None
            )
        ]
        return closings(kept, lines, self.reader)

    def _deviations(self) -> Figure | None:
        counts = self.ledger.counts(practice=self.site.practice, from_utc=self._from_utc)
        return deviations(counts, self.reader, what=self.site.name)

    def _wear(self) -> Figure | None:
        lines = self.ledger.wearing(practice=self.site.practice)
        worn = wear(lines, self.site, self.library, self.intervals, self.now_utc)
        return wear_picture(worn, self.reader, self.now_utc)

    def _lengths(self, machine: str, procedure: str, what: str) -> Figure | None:
        lines = self.ledger.lines(
            practice=self.site.practice, machine=machine, procedure=procedure,
            from_utc=self._from_utc, limit=None,
        )  # fmt: skip
        return lengths(lines, self.reader, what=what)

    def _readings(self, machine: str, quantity: str, what: str) -> Figure | None:
        found = self.ledger.readings(
            practice=self.site.practice, machine=machine, quantity=quantity,
            from_utc=self._from_utc,
        )  # fmt: skip
        return readings(found, self.reader, what=what)

"""What all pages of one supervisor's review share: the shop, its ledger, names and times."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import ExitStack, closing, contextmanager, suppress
from dataclasses import dataclass, field, replace
from datetime import date, datetime
from decimal import Decimal
from zoneinfo import ZoneInfo

from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import ResultEntered, ResultStruck, ShopEvent, ShopFact
from kiosk.journal.store import Journal, JournalFailed
from kiosk.languages.words import Words, words
from kiosk.people.beside import BesideFailed
from kiosk.people.may import SignOff
from kiosk.plots.reader import Reader, reader
from kiosk.procedure.load_review import load_deviation_rules
from kiosk.procedure.model import Text
from kiosk.procedure.review_rules import DeviationRule
from kiosk.procedure.site import Person
from kiosk.review.ledger import Ledger, LedgerFailed
from kiosk.review.ledger_lines import Line, PartLine
from kiosk.review.record import in_zone
from kiosk.review.results import Entered, results
from kiosk.shop import Shop
from kiosk.trade.code_dates import site_zone
from kiosk.trade.units import Quantity

_LONG_S = 120
"""Seconds from which a length is told in minutes."""


@dataclass(slots=True)
class Desk:
    """One supervisor's review."""

    shop: Shop
    ledger: Ledger
    supervisor: Person
    authority: str = ""
    """Id of the authority whose limits are looked at; none is taken by itself."""
    channel: Channel = Channel.TOUCH
    """By which the last target was pressed."""
    touched_mono: float = field(init=False)
    """When that was, by the clock that is never set."""
    words: Words = field(init=False)
    zone: ZoneInfo = field(init=False)
    reader: Reader = field(init=False)
    """Who reads a figure."""
    _results: tuple[int, tuple[Entered, ...]] | None = field(default=None, init=False)
    """The results, and up to which row of the journal they were read."""

    def __post_init__(self) -> None:
        self.touched_mono = self.shop.clock.now().mono
        self.words = words(self.supervisor.language)
        self.zone = site_zone(self.shop.site.time_zone)
        self.reader = reader(self.shop.site, self.words)

    @contextmanager
    def elsewhere(self) -> Iterator[Desk]:
        """This desk for another thread, with a journal and a ledger of its own.

        Raises JournalFailed, LedgerFailed, FaultyFile.
        """
        with ExitStack() as open_ones:
            journal = open_ones.enter_context(closing(Journal(self.shop.folder)))
            shop = self.shop.elsewhere(journal)
            ledger = open_ones.enter_context(closing(shop.ledger()))
            with suppress(BesideFailed):
                open_ones.enter_context(closing(shop.beside))
            desk = replace(self, shop=shop, ledger=ledger)
            desk._results = self._results
            yield desk
            self._results = desk._results

    def touch(self, channel: Channel) -> None:
        """Somebody pressed something, or wrote."""
        self.channel = channel
        self.touched_mono = self.shop.clock.now().mono

    @property
    def practice(self) -> bool:
        """Whether it is an invented shop that is looked at."""
        return self.shop.site.practice

    def may_sign(self, line: Line, *, back: bool) -> str:
        """Return why this supervisor may not sign a session off, or send it back; '' if they may.

        A session that has not ended can be sent back, and not signed off.
        """
        refused = self.shop.may(line.procedure, SignOff(self.supervisor.id, line.workers))
        if refused is not None:
            return self.words.refusal(refused)
        return self.words.say("review-not-ended") if not (line.over or back) else ""

    def write(self, fact: ShopFact) -> str:
        """Write a fact into the journal; return why it could not be written, '' when it is."""
        event = ShopEvent(self.shop.clock.now(), Evidence(self.channel), fact)
        try:
            self.shop.journal.append_shop([event])
            self.ledger.catch_up()
        except (JournalFailed, LedgerFailed) as error:
            return self.words.say("review-not-written", why=str(error))
        return ""

    def keep(self, text: str) -> str:
        """Keep a remark's text beside the journal; return what stands for it.

        Raises BesideFailed.
        """
        return self.shop.beside.keep(text, self.supervisor.id, self.now())

    def remark(self, remark: str) -> str:
        """Return the text of a remark of the journal; that it was erased, where it is gone."""
        try:
            text = self.shop.beside.text(remark)
        except BesideFailed as error:
            return self.words.told(str(error))
        return self.words.say("review-remark-erased") if text is None else text

    def results(self) -> tuple[Entered, ...]:
        """Return the laboratory's results in force. Raises UnknownEvent."""
        journal = self.shop.journal
        last = journal.mark()[0]
        if self._results is None or self._results[0] != last:
            events = journal.shop_events(ResultEntered, ResultStruck)
            self._results = last, results(events, practice=self.practice)
        return self._results[1]

    def rule(self, rule_id: str) -> DeviationRule | None:
        """Return a rule for deviations; None where it is no rule any more."""
        rules = {one.id: one for one in load_deviation_rules().rules}
        return rules.get(rule_id)

    def now(self) -> float:
        """Return the present moment, POSIX seconds."""
        return self.shop.clock.now().utc

    def today(self) -> date:
        """Return the site's day."""
        return in_zone(self.now(), self.zone).date()

    def local(self, at_utc: float) -> datetime:
        """Return a moment as the site's clock showed it."""
        return in_zone(at_utc, self.zone)

    def day_and_time(self, at_utc: float) -> str:
        """Return a moment as `2026-11-25 21:34` by the site's clock."""
        return f"{self.local(at_utc):%Y-%m-%d %H:%M}"

    def clock_time(self, at_utc: float) -> str:
        """Return a moment as `21:34:05` by the site's clock."""
        return f"{self.local(at_utc):%H:%M:%S}"

    def length(self, seconds: float) -> str:
        """Return a length in minutes, below two minutes in seconds, whole ones."""
        if seconds >= _LONG_S:
            return self.words.quantity(Quantity(Decimal(round(seconds / 60)), "min"))
        return self.words.quantity(Quantity(Decimal(round(seconds)), "s"))

    def machine(self, machine_id: str) -> str:
        """Return a machine's name; its id where the site has it no more."""
        return self.reader.machine(machine_id)

    def person(self, person_id: str) -> str:
        """Return a person's name, also of somebody who has left; the id where it is not kept."""
        known = self.reader.people.get(person_id)
        if known:
            return known
        try:
            return self.shop.beside.name(person_id)
        except BesideFailed:
            return person_id

    def people(self, ids: tuple[str, ...]) -> str:
        """Return several people's names."""
        return ", ".join(self.person(one) for one in ids)

    def replaced_by(self, line: PartLine) -> str:
        """Return who replaced a part."""
        return self.people(self.ledger.replaced_by(line))

    def title(self, procedure: str, text: Text | None = None) -> str:
        """Return what a procedure is called; its id where its text is not here."""
        known = self.shop.library.procedures.get(procedure)
        found = text or (None if known is None else known.title)
        return self.words.text(found) if found else procedure

    def full_title(self, procedure: str) -> str:
        """Return what a procedure is called, and on which machines it is walked."""
        known = self.shop.library.procedures.get(procedure)
        kind = "" if known is None else known.machine_kind
        machines = [one.name for one in self.shop.site.machines if one.kind == kind]
        return ", ".join([self.title(procedure), *machines])

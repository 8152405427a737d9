"""An invented shop's history: every session walked by the real engine into the real journal."""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from pathlib import Path
from types import MappingProxyType
from zoneinfo import ZoneInfo

from kiosk import home
from kiosk.engine import commands as c
from kiosk.engine.events import Event
from kiosk.journal.shop_facts import PartReplaced, ShopEvent, ShopFact, SignedOff
from kiosk.journal.store import FILE, Journal
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Person, Role, Site
from kiosk.rehearsal.counts import Soil, samples
from kiosk.rehearsal.habits import (
    CAREFUL,
    HURRIED,
    NEW,
    ORDINARY,
    Habit,
    InventedClock,
    Mishaps,
    Shift,
)
from kiosk.rehearsal.planting import (
    WORN_BEFORE,
    Plant,
    Planted,
    mishaps_of,
    sample_days,
    warm,
    wearing,
)
from kiosk.review.clues import Clue
from kiosk.review.results import Sample, entry
from kiosk.review.trace import closing
from kiosk.session import Session

_REPORT_AFTER = 3
"""Days from sample to the laboratory's report."""
_CREW = 2
"""Machines that are worked one after the other. More are worked at the same time, each pair as by a
kiosk switched on for it: one kiosk could not walk them all in a night."""
_CHECKED = 0.93
"""Chance that a machine's day check is made."""
_CHANCES = {"strip": 0.03, "mix": 0.03, "replaced": 0.02, "late": 0.03}
"""Chance in a session of a mishap that is put right, and of a late breakdown."""


Progress = Callable[[int, int], None]
"""Told how many days were invented, and of how many."""


class NotInvented(Exception):
    """Here no history may be invented; the message says why and how to mend it."""


@dataclass(slots=True)
class Invented:
    """What a history came to."""

    sessions: int = 0
    planted: list[Planted] = field(default_factory=list)
    results: list[str] = field(default_factory=list)


class InventedJournal(Journal):
    """A journal whose sessions are written whole when they are over.

    An invented worker loses nothing in a power cut, so that one write for a session is enough.
    """

    def __init__(self, folder: Path) -> None:
        """Begin a journal in a folder. Raises NotInvented where one lies, JournalFailed."""
        for name in (FILE, home.SITE_FILE):
            if (folder / name).exists():
                raise NotInvented(
                    f"{folder / name} is there already. A history is invented into an empty folder "
                    "only: move that folder away, or name another one."
                )
        super().__init__(folder)
        self._waiting: list[Event] = []

    def append(self, session: str, events: Sequence[Event], after: int | None = None) -> int:
        """Keep events of the session that is being walked; `write` writes them."""
        del session, after
        self._waiting += events
        return 0

    def write(self, session: str) -> None:
        """Write the session that was walked, in one transaction. Raises JournalFailed."""
        super().append(session, self._waiting)
        self._waiting = []


class History:
    """A shop of up to four people being invented, day by day."""

    def __init__(
        self,
        journal: InventedJournal,
        site: Site,
        plans: Mapping[str, tuple[Plan, Plan]],
        heads: Mapping[str, tuple[str, ...]],
        seed: int,
        plants: Sequence[Plant],
        new_from: int = 20,
        checks: Mapping[str, Plan] = MappingProxyType({}),
    ) -> None:
        """Take the site's `plans`: machine to its assembly and its breakdown; and its day `checks`.

        `new_from` is the day, from 0, on which the new worker begins; one planted new worker
        begins for that sample instead. Raises NotInvented for a site that is no practice.
        """
        if not site.practice:
            raise NotInvented("A history is invented for a site marked 'practice = true' only.")
        self.made = Invented()
        self.journal, self._site, self._plans, self._heads = journal, site, plans, heads
        self._plants, self._checks = plants, checks
        supervisors = [one.id for one in site.people if one.role is Role.SUPERVISOR]
        self._signs = next(iter(supervisors), site.people[0].id)
        # For a story, not for secrets.
        self._chance = random.Random(seed)  # noqa: S311
        # By a chance of their own, so that the rest of a story is the same without them.
        self._aside = random.Random(f"{seed} beside")  # noqa: S311
        self._clock = InventedClock()
        names = list(plans)
        self._crews = [names[n : n + _CREW] for n in range(0, len(names), _CREW)]
        self._soil = {machine: Soil() for machine in plans}
        self._apart = dict.fromkeys(plans, True)
        self._reports: list[tuple[int, Sample]] = []
        self._guilty: dict[Plant, list[str]] = {}
        self._sampled = 0
        newcomer = next(
            (one.day - one.before - 1 for one in plants if one.cause is Clue.NEW_WORKER), new_from
        )
        habits = (CAREFUL, ORDINARY, HURRIED, NEW)
        self._crew: list[tuple[Person, Habit, int]] = [
            (person, habit, newcomer if habit is NEW else 0)
            for person, habit in zip(site.people, habits, strict=False)
        ]

    def run(self, first: date, days: int, progress: Progress | None = None) -> Invented:
        """Invent days from a first one on. Raises JournalFailed, worker.Stuck."""
        for day in range(days):
            self._day(first, day)
            if progress is not None:
                progress(day + 1, days)
        last = first + timedelta(days=days - 1)
        for _, sample in self._reports:
            self._enter(sample, closing(self._site, last))
        self.made.planted = [
            Planted(plant, tuple(self._guilty.get(plant, ()))) for plant in self._plants
        ]
        return self.made

    def _day(self, first: date, day: int) -> None:
        today = first + timedelta(days=day)
        zone = ZoneInfo(self._site.time_zone)
        opens = datetime.combine(today, time.fromisoformat(self._site.opens), zone).timestamp()
        closes = closing(self._site, today)
        for crew in self._crews:
            self._clock.start_day(opens - self._chance.uniform(130, 150) * 60)
            for machine in crew:
                if self._apart[machine]:
                    self._walk(machine, day, assembles=True)
        self._clock.leap_to(opens + 4 * 3600)
        self._check(day)
        self._due_reports(day)
        self._replace_worn(day, today)
        if day in sample_days(day + 1):
            self._sample(day, today)
        for place, crew in enumerate(self._crews):
            if place:
                self._clock.start_day(closes - 3600)
            self._clock.leap_to(closes - self._chance.uniform(-5, 10) * 60)
            self._close(crew, day)

    def _check(self, day: int) -> None:
        """Make the day checks of the machines that serve."""
        for machine, plan in self._checks.items():
            if not self._apart[machine] and self._aside.random() < _CHECKED:
                mishaps = Mishaps()
                if self._aside.random() < _CHANCES["strip"]:
                    mishaps.strip = Decimal(50)
                if self._aside.random() < _CHANCES["mix"]:
                    mishaps.mix = warm(plan, 1)
                who, habit = self._aside.choice(self._there(day))
                name = self._name(machine, self._aside)
                self._written(plan, name, who, habit, mishaps, self._aside)

    def _close(self, crew: Sequence[str], day: int) -> None:
        if self._chance.random() < _CHANCES["late"]:
            self._clock.leap(self._chance.uniform(2.0, 3.0) * 3600)
        for machine in crew:
            if self._planted(Clue.MISSED_CLOSE, machine, day + 1) is None:
                self._walk(machine, day, assembles=False)
            else:
                self._soil[machine].add(Clue.MISSED_CLOSE)
                self._apart[machine] = False

    def _planted(self, cause: Clue, machine: str, day: int) -> Plant | None:
        for one in self._plants:
            if (one.cause, one.machine, one.day - one.before) == (cause, machine, day):
                return one
        return None

    def _walk(self, machine: str, day: int, *, assembles: bool) -> None:
        plan = self._plans[machine][0 if assembles else 1]
        session = self._name(machine, self._chance)
        plant, mishaps = self._mishaps(plan, machine, day, assembles=assembles)
        who, habit = self._worker(day, plant)
        self._written(plan, session, who, habit, mishaps, self._chance)
        self._apart[machine] = plan.leaves is Standing.DRYING
        soil = self._soil[machine]
        soil.cleaned()
        if plant is not None:
            self._guilty.setdefault(plant, []).append(session)
            if plant.cause is Clue.WORN_PART:
                soil.worn[mishaps.worn] = day
            else:
                soil.add(plant.cause)
        if not assembles and self._chance.random() < 0.8:
            self._tell(SignedOff(session, self._signs, ""))

    def _name(self, machine: str, chance: random.Random) -> str:
        zone = ZoneInfo(self._site.time_zone)
        at = datetime.fromtimestamp(self._clock.now().utc, zone).date()
        return f"{at}-{machine}-{chance.getrandbits(32):08x}"

    def _written(
        self, plan: Plan, session: str, who: Person, habit: Habit, mishaps: Mishaps,
        chance: random.Random,
    ) -> None:  # fmt: skip
        """Walk a session and write it."""
        walk = Session(plan, self.journal, self._clock, session)
        Shift(walk, self._clock, who, habit, mishaps, chance, self._aside).walk()
        self.journal.write(session)
        self.made.sessions += 1
        self._clock.leap(chance.uniform(60, 240))

    def _mishaps(
        self, plan: Plan, machine: str, day: int, *, assembles: bool
    ) -> tuple[Plant | None, Mishaps]:
        """Return what is planted in a session, and all that goes wrong in it."""
        chance = self._chance
        if assembles:
            for cause in (Clue.SHORT_CONTACT, Clue.WEAK_SANITIZER, Clue.WARM_MIX, Clue.NEW_WORKER):
                plant = self._planted(cause, machine, day)
                if plant is not None:
                    return plant, mishaps_of(cause, plan, chance)
        else:
            plant = self._planted(Clue.WORN_PART, machine, day + WORN_BEFORE)
            if plant is not None:
                return plant, Mishaps(worn=chance.choice(wearing(plan)))
        found = Mishaps()
        if chance.random() < _CHANCES["strip"]:
            found.strip = Decimal(50)
        if assembles and chance.random() < _CHANCES["mix"]:
            found.mix = warm(plan, 1)
        if chance.random() < _CHANCES["replaced"]:
            found.replaced = chance.choice(wearing(plan))
        return None, found

    def _worker(self, day: int, plant: Plant | None) -> tuple[Person, Habit]:
        there = self._there(day)
        if plant is not None and plant.cause is Clue.NEW_WORKER:
            return next((one for one in there if one[1] is NEW), there[-1])
        if plant is not None and plant.cause is Clue.SHORT_CONTACT:
            return next((one for one in there if one[1] is HURRIED), there[-1])
        return self._chance.choice(there)

    def _there(self, day: int) -> list[tuple[Person, Habit]]:
        return [(who, habit) for who, habit, since in self._crew if since <= day]

    # What belongs to no session.

    def _sample(self, day: int, today: date) -> None:
        for machine, heads in self._heads.items():
            level = self._soil[machine].log10(day)
            found = samples(machine, heads, today, level, self._sampled + 1, self._chance)
            self._sampled += len(heads)
            self._reports += [(day + _REPORT_AFTER, one) for one in found]

    def _due_reports(self, day: int) -> None:
        due = [one for when, one in self._reports if when <= day]
        self._reports = [(when, one) for when, one in self._reports if when > day]
        for one in due:
            self._enter(one, self._clock.now().utc)

    def _enter(self, sample: Sample, utc: float) -> None:
        self._clock.leap_to(utc)
        result = f"{sample.day}-{sample.machine}-{self._chance.getrandbits(32):08x}"
        self._tell(entry(sample, self._crew[0][0].id, practice=True, result=result))
        self.made.results.append(result)

    def _replace_worn(self, day: int, today: date) -> None:
        """Replace a worn part when the bad result is known."""
        for machine, soil in self._soil.items():
            for part, since in list(soil.worn.items()):
                if day >= since + WORN_BEFORE + _REPORT_AFTER + 1:
                    by = self._crew[0][0].id
                    self._tell(PartReplaced(machine, part, today.isoformat(), by, "", True))
                    del soil.worn[part]

    def _tell(self, fact: ShopFact) -> None:
        at = self._clock.now()
        self.journal.append_shop([ShopEvent(at, c.Evidence(c.Channel.KEY), fact)])

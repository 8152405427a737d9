"""A worker at a kiosk that something goes wrong with, and what is held against its journal after.

Whoever walks keeps what the kiosk showed as confirmed. Afterwards the journal is read afresh: each
of those confirmations must be in it, its chain must be whole, and the monitor that proves
procedures must find no rule broken.
"""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine import commands as c
from kiosk.engine.events import Event
from kiosk.engine.state import Mode
from kiosk.journal.store import Journal
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import load_site
from kiosk.proof.audit import audit
from kiosk.rehearsal.worker import answer
from kiosk.screens.stand_in import NoHearing
from kiosk.session import Outcome, Session
from kiosk.speaking.voice import SilentVoice, Voice
from kiosk.walk import Walk
from tests.plans import EVERY_KIND

ROOT = Path(__file__).parents[2]
SITE = load_site(ROOT / "demo" / "site.toml")
TOUCH = c.Evidence(c.Channel.TOUCH)
Shown = dict[str, list[Event]]
"""What was shown as recorded, by session."""


@dataclass(slots=True)
class Withstood:
    """What became of some tries of one fault."""

    tries: int = 0
    lost: int = 0
    """Confirmations that were shown and are not in the journal."""
    bypassed: int = 0
    """Rules that the monitor finds broken."""
    broken: int = 0
    """Journals that could not be read, or whose chain is not whole."""
    seen: list[str] = field(default_factory=list)
    """The sentences that the worker saw, each once."""

    def saw(self, *sentences: str) -> None:
        """Add what the worker saw."""
        self.seen += [one for one in dict.fromkeys(sentences) if one and one not in self.seen]

    def judge(self, folder: Path, shown: Shown, plans: Iterable[Plan] = (EVERY_KIND,)) -> None:
        """Read a journal afresh and hold it against what was shown; one try more."""
        self.tries += 1
        by_digest = {plan.digest: plan for plan in plans}
        with closing(Journal(folder)) as journal:
            self.broken += not journal.verify().whole
            there = {one: journal.events(one) for one in journal.sessions()}
        for events in there.values():
            plan = by_digest[events[0].fact.digest]  # type: ignore[union-attr]
            self.bypassed += len(audit(plan, events))
        for session, events in shown.items():
            known = there.get(session, [])
            self.lost += sum(one not in known for one in events)

    @property
    def nothing_lost(self) -> bool:
        """True when there were tries, and none of them lost, let through or broke anything."""
        return self.tries > 0 and (self.lost, self.bypassed, self.broken) == (0, 0, 0)


class Worker:
    """Somebody who walks a session at a kiosk without a screen."""

    def __init__(
        self, folder: Path, clock: LeapingClock | None = None, journal: Journal | None = None,
        plan: Plan = EVERY_KIND, voice: Voice | None = None,
    ) -> None:  # fmt: skip
        """Begin a session in a folder, or take up the one that is open there."""
        self.journal = journal or Journal(folder)
        self.clock = clock or LeapingClock(SystemClock())
        self.shown: Shown = {}
        self.voice = voice or SilentVoice("")
        unfinished = self.journal.open_sessions()
        self._take(plan, unfinished[0] if unfinished else None)

    def _take(self, plan: Plan, unfinished: str | None) -> None:
        if unfinished is None:
            session = Session.fresh(plan, self.journal, self.clock)
        else:
            session = Session(plan, self.journal, self.clock, unfinished)
        self.session = session
        do, shown = session.do, self.shown

        def kept(act: c.Act, by: c.Evidence) -> Outcome:
            outcome = do(act, by)
            if outcome.events:
                shown.setdefault(session.id, []).extend(outcome.events)
            return outcome

        session.do = kept  # type: ignore[method-assign]
        self.walk = Walk(session, SITE, self.clock, self.voice, NoHearing(""), lambda: None)
        self.press(c.Start("ana", "en") if unfinished is None else c.Restart())

    def press(self, act: c.Act) -> str:
        """Press something; return the notice that the screen shows then, empty when it was done."""
        self.walk.do(act, TOUCH)
        return self.walk.notice

    def on(self, answers: int = 1) -> str:
        """Give careful answers, to session after session; stop at a notice, and return it."""
        for _ in range(answers):
            if self.session.over:
                self._take(self.session.plan, None)
                if self.walk.notice:
                    return self.walk.notice
                continue
            idle = self.session.state.mode is Mode.IDLE
            act = c.Start("ana", "en") if idle else answer(self.session)
            if act is None:
                self.clock.leap(1.0 + (self.session.seconds_left() or 0.0))
                act = answer(self.session) or c.TimeUp()
            if notice := self.press(act):
                return notice
        return ""

    @property
    def moved(self) -> int:
        """How many events were shown as recorded."""
        return sum(map(len, self.shown.values()))

    def to(self, step: str) -> None:
        """Answer until a step is stood in."""
        while self.session.state.step != step:
            if notice := self.on():
                raise AssertionError(f"on the way to {step}: {notice}")

    def to_the_end(self) -> None:
        """Answer until the session is over."""
        while not self.session.over:
            if notice := self.on():
                raise AssertionError(notice)

    def close(self) -> None:
        """Close the journal."""
        self.journal.close()

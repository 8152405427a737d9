"""One walk: a command is decided, journaled, and only then believed."""

from __future__ import annotations

import secrets
from dataclasses import dataclass
from decimal import Decimal

from kiosk.clock import Clock
from kiosk.engine import commands as c
from kiosk.engine.decide import decide
from kiosk.engine.effects import Effect, effects, seconds_left
from kiosk.engine.events import Event
from kiosk.engine.offers import asks_for_number, offers
from kiosk.engine.prompt import Prompt, prompt
from kiosk.engine.state import Mode, fold
from kiosk.journal.codec import stamp
from kiosk.journal.store import Journal, JournalFailed
from kiosk.procedure.plan import Measure, Plan

KIOSK = c.Evidence(c.Channel.KIOSK)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of a command."""

    refusal: c.Refusal | None = None
    events: tuple[Event, ...] = ()
    effects: tuple[Effect, ...] = ()
    trouble: str = ""
    """Why the journal could not be written. Then nothing has moved."""


class Session:
    """A plan being walked, its state the fold of what is on the disk."""

    def __init__(self, plan: Plan, journal: Journal, clock: Clock, session_id: str) -> None:
        """Take up a session that is in the journal already, or one that will begin.

        Raises codec.UnknownEvent when the journal holds what this version does not know.
        """
        self.plan = plan
        self.id = session_id
        self._journal = journal
        self._clock = clock
        self.state = fold(journal.events(session_id))

    @classmethod
    def fresh(cls, plan: Plan, journal: Journal, clock: Clock) -> Session:
        """Return a session that has not begun."""
        day = stamp(clock.now().utc)[:10]
        return cls(plan, journal, clock, f"{day}-{plan.machine}-{secrets.token_hex(4)}")

    def do(self, act: c.Act, by: c.Evidence = KIOSK) -> Outcome:
        """Decide an act, write what it leads to, then move. A refused act changes nothing."""
        command = c.Command(act, self._clock.now(), by)
        decided = decide(self.plan, self.state, command)
        if isinstance(decided, c.Refusal):
            return Outcome(refusal=decided)
        try:
            self._journal.append(self.id, decided)
        except JournalFailed as error:
            return Outcome(trouble=str(error))
        before, self.state = self.state, fold(decided, self.state)
        return Outcome(None, decided, effects(self.plan, before, decided, self.state))

    @property
    def over(self) -> bool:
        """True when nothing can be done any more."""
        return self.state.mode in (Mode.COMPLETE, Mode.ABORTED)

    def prompt(self) -> Prompt:
        """Return the question that is open."""
        return prompt(self.plan, self.state)

    def offers(self) -> tuple[c.Act, ...]:
        """Return what can be done now."""
        return offers(self.plan, self.state, self._clock.now())

    def number(self) -> tuple[str, Decimal, Decimal, tuple[Decimal, ...], bool] | None:
        """Return what number the open question takes: unit, least, most, choices, whole; or None.

        The unit of a count is empty.
        """
        if not asks_for_number(self.plan, self.state, self._clock.now()):
            return None
        match self.plan.step(self.state.step).task:
            case Measure(unit=unit, least=least, most=most, choices=choices):
                return unit, least, most, choices, False
            case _:
                return "", Decimal(0), Decimal(9999), (), True

    def seconds_left(self) -> float | None:
        """Return what a running wait still needs; None outside a wait."""
        return seconds_left(self.plan, self.state, self._clock.now())

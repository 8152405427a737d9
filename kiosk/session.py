"""One walk: a command is decided, journaled, and only then believed."""

from __future__ import annotations

import secrets
from collections.abc import Callable
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
from kiosk.journal.store import GoneOn, Journal, JournalFailed
from kiosk.procedure.plan import Measure, Plan

KIOSK = c.Evidence(c.Channel.KIOSK)

May = Callable[[str, c.Act], c.Refusal | None]
"""Given a procedure and an act: why the person in it may not do it, or None."""


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

    def __init__(
        self,
        plan: Plan,
        journal: Journal,
        clock: Clock,
        session_id: str,
        may: May | None = None,
    ) -> None:
        """Take up a session that is in the journal already, or one that will begin.

        Without `may` everybody may do everything: in a rehearsal, or an invented history.
        Raises codec.UnknownEvent when the journal holds what this version does not know.
        """
        self.plan = plan
        self.id = session_id
        self._journal = journal
        self._clock = clock
        self._may = may
        self._read()

    @classmethod
    def fresh(cls, plan: Plan, journal: Journal, clock: Clock, may: May | None = None) -> Session:
        """Return a session that has not begun."""
        day = stamp(clock.now().utc)[:10]
        return cls(plan, journal, clock, f"{day}-{plan.machine}-{secrets.token_hex(4)}", may)

    def _read(self) -> None:
        """Stand where the journal says, and remember its last row."""
        rows = self._journal.numbered(self.id)
        self._last = rows[-1][0] if rows else 0
        self.state = fold([event for _, event in rows])

    def do(self, act: c.Act, by: c.Evidence = KIOSK) -> Outcome:
        """Decide an act, write what it leads to, then move. A refused act changes nothing.

        Where another kiosk has gone on with the session, it stands where that one left it.
        """
        command = c.Command(act, self._clock.now(), by)
        decided = decide(self.plan, self.state, command)
        if not isinstance(decided, c.Refusal):
            decided = self.refused(act) or decided
        if isinstance(decided, c.Refusal):
            return Outcome(refusal=decided)
        try:
            self._last = self._journal.append(self.id, decided, self._last)
        except JournalFailed as error:
            if isinstance(error, GoneOn):
                self._read()
            return Outcome(trouble=str(error))
        before, self.state = self.state, fold(decided, self.state)
        return Outcome(None, decided, effects(self.plan, before, decided, self.state))

    def refused(self, act: c.Act) -> c.Refusal | None:
        """Return why the person in an act may not do it, whatever the session's state."""
        return None if self._may is None else self._may(self.plan.procedure, act)

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

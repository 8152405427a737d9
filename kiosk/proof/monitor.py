"""An independent judge of sessions: it reads the plan and the events, never the engine's state.

The same judge serves the search over all states, the property tests and the audit of journals. It
keeps its own account of what is in force: what steps establish and end is taken from the plan, not
from the event, and what an absence or a step back may have changed is owed as a lapse.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from kiosk.engine.events import Event
from kiosk.procedure.plan import Plan
from kiosk.proof.account import Account, Violation
from kiosk.proof.hearing import Hearing, Known


class Monitor:
    """The judge of sessions of one plan."""

    def __init__(self, plan: Plan) -> None:
        self._known = Known(plan)

    def judge(
        self, account: Account, act: Iterable[Event], first: int = 1
    ) -> tuple[Account, tuple[Violation, ...]]:
        """Return the account after the events of one act, and what they broke.

        `first` is the place of the first of them in the session.
        """
        hearing = Hearing(self._known, account, first)
        for event in act:
            hearing.hear(event)
        hearing.close()
        return hearing.account(), tuple(hearing.violations)

    def violations(self, events: Iterable[Event]) -> Iterator[Violation]:
        """Yield what a whole session broke. Events of one moment are taken as one act."""
        account, seq = Account(), 1
        for _, act in groupby(events, key=lambda event: (event.at, event.by)):
            batch = tuple(act)
            account, broken = self.judge(account, batch, seq)
            yield from broken
            seq += len(batch)

"""Who stands at the board: their walks begin without asking who, in their language.

It vouches for nobody. Whatever a walk asks of a person, a PIN or a supervisor beside them, it asks
of this one too.
"""

from __future__ import annotations

from typing import Final

from kiosk.clock import Clock
from kiosk.procedure.site import Person

FALLS_OFF_S: Final = 600.0
"""Seconds without a touch after which nobody is signed in any more."""


class SignedIn:
    """One person, or nobody."""

    def __init__(self, clock: Clock) -> None:
        self._clock = clock
        self._person: Person | None = None
        self._touched = 0.0

    @property
    def person(self) -> Person | None:
        """Who is signed in; None when nobody is, or when their last touch is too long ago."""
        if self._clock.now().mono - self._touched >= FALLS_OFF_S:
            self._person = None
        return self._person

    def take(self, person: Person | None) -> None:
        """Sign somebody in, in place of who was before; None signs them out."""
        self._person = person
        self._touched = self._clock.now().mono

    def touch(self) -> None:
        """They are still there."""
        self.take(self.person)

    def worked(self, worker: str) -> None:
        """A walk of theirs is over; one that somebody else went on with signs them out."""
        person = self._person
        self.take(person if person is not None and person.id == worker else None)

"""The gate: whether the digits that somebody typed are their PIN, and what is written of it."""

from __future__ import annotations

import hmac
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine.commands import Channel, Evidence, Refusal
from kiosk.journal.shop_facts import PinGiven, PinRefused, PinSet, ShopEvent, ShopFact
from kiosk.journal.store import Journal, JournalFailed
from kiosk.people.lockout import closed, wait_s
from kiosk.people.may import Purpose
from kiosk.people.pins import Pins, PinsFailed, fault_of

COMMAND_LINE = "command line"
"""Who sets a PIN without anybody's PIN: whoever may run commands on the kiosk."""


class PinGate:
    """One kiosk's gate. Each answer is in the journal before it is given. Use from one thread."""

    def __init__(self, pins: Pins, journal: Journal, clock: Clock, invented: str = "") -> None:
        """Take the hashes and the journal. `invented` opens for who has no PIN of their own."""
        self._pins, self._journal, self._clock = pins, journal, clock
        self._invented = invented
        self._opened_at = clock.now()

    @classmethod
    def of(cls, folder: Path, journal: Journal, clock: Clock, invented: str = "") -> PinGate:
        """Return the gate of a data folder."""
        return cls(Pins(folder), journal, clock, invented)

    def has_pin(self, person: str) -> bool:
        """True when a person can give a PIN at all. Raises PinsFailed."""
        return bool(self._invented) or self._pins.has(person)

    def invented_for(self, person: str) -> str:
        """Return the invented PIN where it is this person's; else nothing."""
        try:
            return "" if self._pins.has(person) else self._invented
        except PinsFailed:
            return ""

    def blocked(self, person: str) -> Refusal | None:
        """Return why no PIN of a person is taken now; None when one may be tried."""
        try:
            if not self.has_pin(person):
                return Refusal("no-pin-set", (("person", person),))
        except PinsFailed as error:
            return Refusal("pins-unreadable", (("reason", str(error)),))
        if closed(self._wrong(person)):
            return Refusal("pin-closed")
        left = self.wait(person)
        return Refusal("pin-wait", (("seconds", left),)) if left else None

    def give(self, person: str, digits: str, purpose: Purpose, by: Evidence) -> Refusal | None:
        """Try a PIN; None when it is right. Digits are written nowhere.

        What was heard is left out of the evidence: it would be the digits.
        """
        blocked = self.blocked(person)
        if blocked is not None:
            return blocked
        try:
            right = self._right(person, digits)
            wrong = 0 if right else self._wrong(person) + 1
            fact: ShopFact = PinGiven(person, purpose) if right else PinRefused(
                person, purpose, wrong
            )  # fmt: skip
            self._tell(fact, by)
        except PinsFailed as error:
            return Refusal("pins-unreadable", (("reason", str(error)),))
        except JournalFailed as error:
            return Refusal("pin-not-written", (("reason", str(error)),))
        return None if right else self.blocked(person) or Refusal("pin-wrong")

    def put(self, person: str, digits: str, by: str, evidence: Evidence) -> Refusal | None:
        """Set a person's PIN; None when it is set. `by` is who vouched with their own PIN."""
        fault = fault_of(digits)
        if fault is not None:
            return fault
        try:
            self._tell(PinSet(person, by), evidence)
            self._pins.put(person, digits)
        except (PinsFailed, JournalFailed) as error:
            return Refusal("pin-not-written", (("reason", str(error)),))
        return None

    def wait(self, person: str) -> float:
        """Return the seconds until a person's PIN may be tried again; 0 when it may be now.

        Within one boot the monotonic clock counts. After a restart it is the wall clock, or the
        time since the kiosk came up where that is longer: a clock set back locks nobody out.
        """
        last = self._last(person)
        if last is None or not isinstance(last.fact, PinRefused):
            return 0.0
        now = self._clock.now()
        passed = now.since(last.at)
        if now.boot != last.at.boot:
            passed = max(now.utc - last.at.utc, now.since(self._opened_at))
        return max(0.0, wait_s(last.fact.in_a_row) - passed)

    def _right(self, person: str, digits: str) -> bool:
        invented = self.invented_for(person)
        if invented:
            return hmac.compare_digest(invented.encode(), digits.encode())
        return self._pins.right(person, digits)

    def _wrong(self, person: str) -> int:
        last = self._last(person)
        return last.fact.in_a_row if last and isinstance(last.fact, PinRefused) else 0

    def _last(self, person: str) -> ShopEvent | None:
        kinds = tuple(one.__name__ for one in (PinGiven, PinRefused, PinSet))
        return self._journal.last_of_person(kinds, person)

    def _tell(self, fact: ShopFact, by: Evidence) -> None:
        silent = Evidence(by.channel) if by.channel is not Channel.VOICE else Evidence(
            Channel.VOICE, ear=by.ear
        )  # fmt: skip
        self._journal.append_shop([ShopEvent(self._clock.now(), silent, fact)])

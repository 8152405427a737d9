"""What happens in the shop outside any session, kept in the same journal under its own stream."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from kiosk.engine.commands import Evidence, Instant

STREAM: Final = "shop"
"""The stream's id, where a session's id stands otherwise. It is no session."""


@dataclass(frozen=True, slots=True)
class ResultEntered:
    """A laboratory's result, as its report has it."""

    result: str
    """Id of this entry; what a striking names."""
    machine: str
    barrel: str
    """The head that was sampled: `left`, `right`, `twist`, or `single`."""
    day: str
    """Local day of the sample, as 2026-11-25."""
    product: str
    analysis: str
    amount: str
    """With its qualifier, as `1200`, `< 10` or `spreaders`; colony-forming units."""
    per: str
    """Below the line: g or mL."""
    laboratory: str
    sample: str
    """The laboratory's own number for the sample; empty when there is none."""
    entered_by: str
    practice: bool


@dataclass(frozen=True, slots=True)
class ResultStruck:
    """An entry that counts no more. It stays in the journal; a right one is entered anew."""

    result: str
    because: str
    by: str


@dataclass(frozen=True, slots=True)
class PartReplaced:
    """A wearing part changed while no session ran."""

    machine: str
    part: str
    day: str
    """Local day, as 2026-11-25."""
    by: str
    remark: str
    practice: bool


@dataclass(frozen=True, slots=True)
class SignedOff:
    """A supervisor has looked at a session and lets it stand."""

    session: str
    by: str
    remark: str


@dataclass(frozen=True, slots=True)
class SentBack:
    """A supervisor has looked at a session and wants something done about it."""

    session: str
    by: str
    remark: str
    """What is to be done."""


ShopFact = ResultEntered | ResultStruck | PartReplaced | SignedOff | SentBack


@dataclass(frozen=True, slots=True)
class ShopEvent:
    """A fact of the shop with its time and evidence. No session's state is made of these."""

    at: Instant
    by: Evidence
    fact: ShopFact

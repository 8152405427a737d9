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


@dataclass(frozen=True, slots=True)
class PinSet:
    """Somebody has a new PIN. No digits are kept here, nor their hash."""

    person: str
    by: str
    """Who vouched with their own PIN, or `command line`."""


@dataclass(frozen=True, slots=True)
class PinGiven:
    """A PIN was given, and was right."""

    person: str
    purpose: str


@dataclass(frozen=True, slots=True)
class PinRefused:
    """A PIN was given, and was wrong."""

    person: str
    purpose: str
    in_a_row: int
    """Wrong tries since the last right one, this one counted."""


@dataclass(frozen=True, slots=True)
class PersonErased:
    """What was kept of a person beside the journal is gone: name, PIN, own words, remarks."""

    person: str
    by: str
    remarks: int
    """How many remarks lost their text."""
    sounds: tuple[str, ...] = ()
    """Hashes of the spoken remarks that lost their sound."""


@dataclass(frozen=True, slots=True)
class KeptTimeOver:
    """Names and remarks are gone that lay beside the journal for as long as the site keeps them."""

    people: tuple[str, ...]
    """Ids of those whose name is gone."""
    remarks: int
    """How many remarks lost their text."""
    sounds: tuple[str, ...] = ()
    """Hashes of the spoken remarks that lost their sound."""


@dataclass(frozen=True, slots=True)
class RemarkRecorded:
    """A worker left a spoken remark on a problem. Its sound lies beside the journal, not in it."""

    session: str
    step: str
    worker: str
    sha256: str
    """Of the wave file, in hexadecimal."""
    seconds: float
    practice: bool


@dataclass(frozen=True, slots=True)
class KioskMoved:
    """From this row on another kiosk keeps the journal, as on a new device."""

    kiosk: str
    """Id of the kiosk that kept it before."""
    seq: int
    """Its last row that was taken over."""
    head: str
    """Hash of that row."""


@dataclass(frozen=True, slots=True)
class KioskRetired:
    """The last row of a kiosk: after it, it writes no more."""


@dataclass(frozen=True, slots=True)
class SigningKeyMade:
    """From here on checkpoints may be signed with this key."""

    key: str
    """The public Ed25519 key, 32 bytes in hexadecimal."""


@dataclass(frozen=True, slots=True)
class ScreenTakenOver:
    """Another screen works the kiosk from here on."""

    screen: str
    """Id of the paired screen."""
    before: str
    """Which screen had held it."""


@dataclass(frozen=True, slots=True)
class PartsReceived:
    """Spare parts came in."""

    kind: str
    """Machine kind that the part is for."""
    part: str
    count: int
    """Single pieces."""
    by: str
    practice: bool


@dataclass(frozen=True, slots=True)
class StockCounted:
    """Somebody counted the spare parts on the shelf."""

    kind: str
    """Machine kind that the part is for."""
    part: str
    count: int
    """Single pieces."""
    by: str
    practice: bool


@dataclass(frozen=True, slots=True)
class CheckpointDisagreed:
    """At its start the kiosk found that the row of its last checkpoint is gone, or another one."""

    seq: int
    hash: str
    """What the checkpoint had been signed for."""


ShopFact = (
    ResultEntered
    | ResultStruck
    | PartReplaced
    | PartsReceived
    | StockCounted
    | SignedOff
    | SentBack
    | RemarkRecorded
    | KioskMoved
    | KioskRetired
    | SigningKeyMade
    | CheckpointDisagreed
    | ScreenTakenOver
    | PinSet
    | PinGiven
    | PinRefused
    | PersonErased
    | KeptTimeOver
)


@dataclass(frozen=True, slots=True)
class ShopEvent:
    """A fact of the shop with its time and evidence. No session's state is made of these."""

    at: Instant
    by: Evidence
    fact: ShopFact

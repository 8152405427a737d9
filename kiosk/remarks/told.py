"""What the journal tells of spoken remarks: who left them where, and which were erased."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Final

from kiosk.journal.queries import Queries
from kiosk.journal.shop_facts import KeptTimeOver, PersonErased, RemarkRecorded, ShopFact

KINDS: Final = (RemarkRecorded, PersonErased, KeptTimeOver)
"""The facts that tell of remarks."""


@dataclass(frozen=True, slots=True)
class Erasure:
    """When a remark's sound was erased."""

    at_utc: float
    by: str
    """Id of who asked for it; empty where it was kept for as long as the site says."""


@dataclass(frozen=True, slots=True)
class Remark:
    """One spoken remark, as the journal tells of it."""

    seq: int
    """Its row of the journal."""
    at_utc: float
    session: str
    step: str
    worker: str
    sha256: str
    """Of its wave file."""
    seconds: float
    erased: Erasure | None = None


Told = tuple[int, float, ShopFact]
"""Row, POSIX seconds, fact."""


def remarks(told: Iterable[Told]) -> tuple[Remark, ...]:
    """Return the remarks that facts tell of, in order."""
    found: dict[str, Remark] = {}
    for seq, at_utc, fact in told:
        match fact:
            case RemarkRecorded():
                found[fact.sha256] = Remark(
                    seq, at_utc, fact.session, fact.step, fact.worker, fact.sha256, fact.seconds
                )
            case PersonErased(sounds=sounds, by=by):
                _erase(found, sounds, Erasure(at_utc, by))
            case KeptTimeOver(sounds=sounds):
                _erase(found, sounds, Erasure(at_utc, ""))
            case _:
                pass
    return tuple(found.values())


def _erase(found: dict[str, Remark], sounds: Iterable[str], erasure: Erasure) -> None:
    for one in sounds:
        if one in found and found[one].erased is None:
            found[one] = replace(found[one], erased=erasure)


def journaled(journal: Queries, since: int = 0) -> tuple[Remark, ...]:
    """Return the remarks of the journal after a row, in order. Raises codec.UnknownEvent."""
    rows = journal.numbered_shop_events(*KINDS, since=since)
    return remarks((seq, event.at.utc, event.fact) for seq, event in rows)

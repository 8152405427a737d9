"""What earlier sessions say about one: the usual length, and when the ear was last used."""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Iterable
from dataclasses import dataclass, field
from statistics import median
from typing import Final

from kiosk.review.record import Brief, Ended


@dataclass(frozen=True, slots=True)
class Earlier:
    """What had begun before a session."""

    usual_s: float | None = None
    """Median length of the complete sessions of its procedure, machine and kind of work (practice
    or real), in seconds; None when there was none."""
    usual_of: int = 0
    """Of how many."""
    spoken_utc: float | None = None
    """When the last session on its machine began in which something was said; POSIX seconds."""


_FEW: Final = 32
"""Later sessions that are sooner taken out of the sorted lengths than all are sorted anew."""


@dataclass(slots=True)
class _Lengths:
    """Complete sessions of one procedure: when each began and how long it took."""

    begun: list[tuple[float, str, float]] = field(default_factory=list)
    by_length: list[float] = field(default_factory=list)

    def put(self, one: Brief) -> None:
        insort(self.begun, (one.begun_utc, one.session, one.length_s))
        insort(self.by_length, one.length_s)

    def take(self, one: Brief) -> None:
        self.begun.remove((one.begun_utc, one.session, one.length_s))
        del self.by_length[bisect_left(self.by_length, one.length_s)]

    def before(self, at_utc: float) -> tuple[float | None, int]:
        count = bisect_left(self.begun, (at_utc,))
        if not count:
            return None, 0
        if len(self.begun) - count > _FEW:
            return _middle(sorted(length for _, _, length in self.begun[:count])), count
        ordered = self.by_length.copy()
        for _, _, length in self.begun[count:]:
            del ordered[bisect_left(ordered, length)]
        return _middle(ordered), count


def _middle(ordered: list[float]) -> float:
    half = len(ordered) // 2
    return median(ordered[half - 1 : half + 1] if len(ordered) % 2 == 0 else ordered[half:][:1])


class Past:
    """The sessions of one machine, to be asked of any of them what was before it."""

    def __init__(self, sessions: Iterable[Brief] = ()) -> None:
        self._known = {one.session: one for one in sessions}
        self._lengths: dict[tuple[str, bool], _Lengths] = {}
        # Sorted once: much sooner done than put in one by one.
        self._spoken = sorted(one.begun_utc for one in self._known.values() if one.spoken)
        for one in self._known.values():
            if one.ended is Ended.COMPLETE:
                of = self._lengths.setdefault((one.procedure, one.practice), _Lengths())
                of.begun.append((one.begun_utc, one.session, one.length_s))
                of.by_length.append(one.length_s)
        for of in self._lengths.values():
            of.begun.sort()
            of.by_length.sort()

    def put(self, one: Brief) -> None:
        """Add a session, or put what it is now in the place of what it was."""
        before = self._known.get(one.session)
        if before is not None:
            self._take(before)
        self._known[one.session] = one
        if one.spoken:
            insort(self._spoken, one.begun_utc)
        if one.ended is Ended.COMPLETE:
            self._lengths.setdefault((one.procedure, one.practice), _Lengths()).put(one)

    def _take(self, one: Brief) -> None:
        if one.spoken:
            del self._spoken[bisect_left(self._spoken, one.begun_utc)]
        if one.ended is Ended.COMPLETE:
            self._lengths[one.procedure, one.practice].take(one)

    def before(self, one: Brief) -> Earlier:
        """Return what had begun before a session of this machine."""
        lengths = self._lengths.get((one.procedure, one.practice), _Lengths())
        spoken = bisect_left(self._spoken, one.begun_utc)
        return Earlier(*lengths.before(one.begun_utc), self._spoken[spoken - 1] if spoken else None)


def earlier(one: Brief, sessions: Iterable[Brief]) -> Earlier:
    """Return what had begun before a session, of any sessions in any order."""
    return Past(other for other in sessions if other.machine == one.machine).before(one)

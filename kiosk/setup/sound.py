"""A short trial of the loudspeaker and the microphone: a sentence, the room, a yes.

Nothing here is needed for a walk: a machine without speaker or microphone says so, and is worked
by touch.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Final, Protocol

import numpy as np
from numpy.typing import NDArray

from kiosk.engine import commands as c
from kiosk.languages.words import Words
from kiosk.listening.ear import Ear
from kiosk.listening.models import Missing
from kiosk.listening.settled import settled
from kiosk.listening.sources import Source
from kiosk.listening.spot import Commands, Room, dbfs, level_of, rms_of, verdict
from kiosk.listening.taking import SoundEnded, Taker

ROOM_S: Final = 2.0
YES_S: Final = 6.0
"""How long a yes is waited for."""
_LEVEL_FRAMES: Final = 6
"""Frames between two levels: about five in a second."""
QUIET_DBFS, LOUD_DBFS = -60.0, -6.0
"""The ends of the level that is shown."""


@dataclass(frozen=True, slots=True)
class Found:
    """What came of the trial of a microphone: a message's name, and the advice after it."""

    good: bool
    told: str
    text: str = ""
    """What was heard in place of a yes, or why there is no ear."""
    advice: tuple[str, ...] = ()


class Watcher(Protocol):
    """Is told how the trial goes on. Called from the thread of the trial."""

    def stage(self, message: str, **args: str) -> None:
        """Say what to do now, by the name of a message."""
        ...

    def level(self, dbfs: float) -> None:
        """Show how loud it is, in decibels below full scale."""
        ...


class Tapped:
    """A source that also tells how loud it is, about five times a second."""

    def __init__(self, source: Source, tell: Callable[[float], object]) -> None:
        self._source, self._tell = source, tell
        self.live = source.live

    def frames(self) -> Iterator[NDArray[np.float32]]:
        """Yield every frame of the source."""
        kept: list[NDArray[np.float32]] = []
        for frame in self._source.frames():
            kept.append(frame)
            if len(kept) >= _LEVEL_FRAMES:
                self._tell(dbfs(rms_of(np.concatenate(kept))))
                kept = []
            yield frame

    def waiting(self) -> int:
        """Return how many frames wait in the source."""
        return self._source.waiting()

    def close(self) -> None:
        """Close the source."""
        self._source.close()


def share(level: float) -> float:
    """Return how much of a bar a level fills, 0 to 1."""
    return min(1.0, max(0.0, (level - QUIET_DBFS) / (LOUD_DBFS - QUIET_DBFS)))


def trial(source: Source, ear: Ear | Missing, words: Words, watcher: Watcher) -> Found:
    """Listen to the room, then to a yes; say what came of it. Takes up to ten seconds."""
    taker = Taker(Tapped(source, watcher.level))
    try:
        watcher.stage("setup-sound-silent")
        room = taker.stretch(ROOM_S)
        watcher.stage("setup-sound-say-yes", phrase=words.phrases(c.Yes())[0])
        said = taker.utterance(YES_S)
    except SoundEnded:
        return Found(False, "setup-sound-ended")
    if said is None:
        return Found(False, "setup-sound-nothing", advice=("spot-nothing-heard",))
    level = level_of(said.samples, said.speech_rms)
    heard_room = Room(rms_of(room.samples), room.openings)
    if isinstance(ear, Missing):
        judged = verdict(level, heard_room, None)
        return Found(False, "setup-sound-no-ear", ear.mend, judged.advice)
    meanings: dict[str, c.Act] = {
        phrase: act for act in (c.Yes(), c.No()) for phrase in words.phrases(act)
    }
    heard = settled(ear.hear(said, tuple(meanings)), meanings)
    is_yes = heard.phrase is not None and meanings[heard.phrase] == c.Yes()
    above = dbfs(level.speech_rms) - dbfs(heard_room.rms)
    counts = {"right": 0, "wrong": 0, "rejected": 0, "silent": 0}
    counts["right" if is_yes else "wrong" if heard.phrase else "rejected"] = 1
    judged = verdict(level, heard_room, Commands(**counts, above_noise_db=above))
    told = "setup-sound-understood" if is_yes else "setup-sound-not-heard"
    return Found(is_yes, told, heard.text, judged.advice)

"""The figures of one ear: understanding, false accepts, speed, memory, cost of listening."""

from __future__ import annotations

import queue
import statistics
import sys
import threading
import time
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache
from itertools import islice
from pathlib import Path
from typing import Any, Final

import numpy as np

from kiosk.engine import commands as c
from kiosk.listening.ear import RATE, Ear, Heard, Utterance
from kiosk.listening.endpoint import FRAME_S
from kiosk.listening.grammar import Grammar
from kiosk.listening.listener import FIRST_MOMENT_S, Listener, hear_frames
from kiosk.listening.sources import Samples
from tests.bench.bench_tally import TALLY
from tests.speech.clips import Sound
from tests.speech.kitchen import in_kitchen, kitchen
from tests.speech.material import Said, people, positives
from tests.speech.moments import moments, own_phrases, phrases
from tests.speech.negatives import KINDS, negatives
from tests.speech.voices import voices

CONFIRMING = (c.Confirm, c.GivePhrase, c.Yes, c.Read)
"""Acts that say that something is so."""
NUMBERS_EVERY: Final = 12
"""Of so many numbers one is said where all other phrases are."""
Figures = dict[str, Any]


@cache
def lists(language: str) -> dict[str, Grammar]:
    """Return the longest list of each kind of moment."""
    kinds = {"step": c.Confirm, "hold": c.GivePhrase, "question": c.Yes, "number": c.Read}
    found = [one for _, one in moments(language)]
    return {
        name: max((one for one in found if act in map(type, one.values())), key=len)
        for name, act in kinds.items()
    }


def hear(ear: Ear, sound: Sound, allowed: Grammar) -> list[Heard]:
    """Return what gate and ear make of a sound."""
    return hear_frames(Samples(sound).frames(), ear, allowed)


def understanding(ear: Ear, said: Iterator[Said]) -> dict[str, dict[str, int]]:
    """Return, for each condition, how many phrases were taken for what, counted by meaning."""
    counts: dict[str, Counter[str]] = defaultdict(Counter)
    for one in said:
        found = hear(ear, one.sound, one.allowed)
        phrase = next((heard.phrase for heard in found if heard.phrase is not None), None)
        meant = one.allowed[one.phrase]
        outcome = "missed" if phrase is None else "right"
        if phrase is not None and one.allowed[phrase] != meant:
            outcome = "wrong"
        counts[one.where]["said"] += 1
        counts[one.where][outcome] += 1
    return {where: dict(count) for where, count in counts.items()}


def said_by_voices(every: int) -> Iterator[Said]:
    """Yield every `every`th phrase in each voice there is, clean and at 10 dB; of numbers fewer.

    The words of the walk's own questions are said at a step.
    """
    own = own_phrases("en")
    listed = {**dict.fromkeys(own, lists("en")["step"] | own), **phrases("en")}
    numbers = [one for one, allowed in listed.items() if isinstance(allowed[one], c.Read)]
    words = [one for one in listed if one not in numbers]
    said = [(one, "") for one in words[::every]]
    said += [(one, ", numbers") for one in numbers[:: NUMBERS_EVERY * every]]
    for voice in voices():
        for number, (phrase, what) in enumerate(said):
            sound, where = voice.say(phrase), f"{voice.kind} voices{what}"
            yield Said(phrase, sound, where, listed[phrase])
            noisy = in_kitchen(sound, 10, number)
            yield Said(phrase, noisy, f"{where}, kitchen 10 dB", listed[phrase])


def false_accepts(ear: Ear, language: str, hours: float) -> list[Figures]:
    """Return, for each kind of sound without phrases and each kind of list, what was taken.

    Half of the hours are recordings of people, where there are any; each block's running count
    goes to standard error.
    """
    found = []
    for kind in KINDS:
        rows = {name: Taken(kind, name) for name in lists(language)}
        if kind == "digits":
            del rows["number"]
        share_s = 3600 * hours * (0.5 if kind == "people" else 0.5 / (len(KINDS) - 1))
        for number, block in enumerate(negatives(language, kind, share_s)):
            for name, row in rows.items():
                row.hear(ear, block, lists(language)[name])
            if number % 10 == 9:
                print(language, *map(str, rows.values()), sep="\n  ", file=sys.stderr, flush=True)
        found += [row.figures() for row in rows.values() if row.seconds]
    return found


@dataclass(slots=True)
class Taken:
    """What of one kind of sound was taken for a phrase of one list."""

    kind: str
    listed: str
    seconds: float = 0.0
    confirming: int = 0
    phrases: Counter[str] = field(default_factory=Counter)

    def hear(self, ear: Ear, block: Sound, allowed: Grammar) -> None:
        self.seconds += len(block) / RATE
        for one in hear(ear, block, allowed):
            if one.phrase is not None:
                self.phrases[one.phrase] += 1
                self.confirming += isinstance(allowed[one.phrase], CONFIRMING)

    def figures(self) -> Figures:
        return {
            "kind": self.kind,
            "list": self.listed,
            "hours": self.seconds / 3600,
            "taken": self.phrases.total(),
            "confirming": self.confirming,
            "most": self.phrases.most_common(3),
        }

    def __str__(self) -> str:
        return (
            f"{self.kind}, list {self.listed}: {self.seconds / 3600:.3f} h, "
            f"{self.phrases.total()} taken, {self.confirming} confirming {dict(self.phrases)}"
        )


class Paced:
    """A live source that gives a sound's frames as fast as they would be spoken."""

    live = True

    def __init__(self, sound: Sound) -> None:
        self._sound = sound
        self._stopping = threading.Event()
        self.begun_at = 0.0

    def frames(self) -> Iterator[Sound]:
        self.begun_at = time.monotonic()
        for number, frame in enumerate(Samples(self._sound).frames(), 1):
            late = self.begun_at + number * FRAME_S - time.monotonic()
            if self._stopping.wait(max(0.0, late)):
                return
            yield frame

    def waiting(self) -> int:
        return 0

    def close(self) -> None:
        self._stopping.set()


def waits(ear: Ear, said: Sequence[Said]) -> list[tuple[float, float]]:
    """Return the seconds that each phrase that was understood took to become an event.

    Heard in real time by the listener that the kiosk uses, with its threads. Counted first from
    the gate's end of speech, then from where the sound has fallen to 2 % of its loudest.
    """
    found: list[tuple[float, float]] = []
    for one in said:
        loud = np.flatnonzero(np.abs(one.sound) > 0.02 * np.abs(one.sound).max())
        still = np.zeros(round(FIRST_MOMENT_S * RATE), dtype=np.float32)
        source = Paced(np.concatenate([still, one.sound]))
        ends_s = (len(still) + int(loud[-1])) / RATE
        told: queue.Queue[tuple[float, Heard] | None] = queue.Queue()
        listener = Listener(
            source,
            ear,
            lambda heard, told=told: told.put((time.monotonic(), heard)),
            lambda _why, told=told: told.put(None),
        )
        listener.allow(one.allowed)
        event = told.get()
        listener.stop()
        if event is not None and event[1].phrase is not None:
            found.append((event[0] - event[1].ended_at, event[0] - source.begun_at - ends_s))
    return found


def cost(ear: Ear, sound: Sound, allowed: Grammar) -> float:
    """Return the share of one core that listening to a sound takes, all threads together."""
    begun = time.process_time()
    hear(ear, sound, allowed)
    return (time.process_time() - begun) / (len(sound) / RATE)


def decoding(ear: Ear, said: Sequence[Said]) -> tuple[list[float], float]:
    """Return the seconds of each decoding, and seconds of decoding for each second of sound."""
    seconds, sound_s = [], 0.0
    for one in said:
        utterance = Utterance(one.sound, 1.0, 1.0, 0.0)
        seconds.append(ear.hear(utterance, tuple(one.allowed)).decode_s)
        sound_s += len(one.sound) / RATE
    return seconds, sum(seconds) / sound_s


def spread(seconds: Sequence[float]) -> tuple[float, float]:
    """Return median and 95th percentile, in milliseconds."""
    ordered = sorted(seconds)
    p95 = ordered[min(len(ordered) - 1, round(0.95 * len(ordered)))]
    return 1000 * statistics.median(ordered), 1000 * p95


def resident_mb() -> float:
    """Return the memory of this process in MB; 0 where it cannot be told."""
    status = Path("/proc/self/status")
    if not status.exists():
        return 0.0
    line = next(one for one in status.read_text().splitlines() if one.startswith("VmRSS"))
    return int(line.split()[1]) / 1024


def timed(ear: Ear, language: str) -> tuple[list[tuple[float, float]], int]:
    """Return the two spreads of `waits` over some clean phrases, and how many were understood."""
    clean = [one for one in positives(language, 8, 10_000) if one.where == "clean"]
    hear(ear, clean[0].sound, clean[0].allowed)
    found = waits(ear, clean[::3])
    return [spread(column) for column in zip(*found, strict=True)], len(found)


def figures(ear: Ear, language: str, hours: float, quick: bool) -> Figures:
    """Return all figures of an ear."""
    every, noisy_every, sample = (8, 10, 16) if quick else (4, 4, 40)
    clean = [one for one in positives(language, every, 10_000) if one.where == "clean"]
    hear(ear, clean[0].sound, clean[0].allowed)
    listed = lists(language)
    talk = np.concatenate(list(negatives(language, "talk", 30 if quick else 120)))
    quiet = 0.001 * kitchen(30 * RATE, 0)
    decodes, factor = decoding(ear, clean[:sample])
    in_time = clean[:: max(1, len(clean) // sample)]
    first = waits(ear, in_time)
    found: Figures = {
        "decode": spread(decodes),
        "factor": factor,
        "quiet": statistics.median(cost(ear, quiet, listed["step"]) for _ in range(5)),
        "talk": cost(ear, talk, listed["step"]),
        "understanding": understanding(ear, positives(language, every, noisy_every)),
    }
    if language == "en":
        found["understanding"] |= understanding(ear, islice(people(), 0, None, 4 if quick else 1))
        found["understanding"] |= understanding(ear, said_by_voices(6 if quick else 1))
    taken_elsewhere = language == "en" and TALLY.exists()
    found["false"] = [] if taken_elsewhere else false_accepts(ear, language, hours)
    second = waits(ear, in_time)
    found["waits"] = [
        spread(column) for run in (first, second) for column in zip(*run, strict=True)
    ]
    found["timed"] = len(first)
    found["resident_mb"] = resident_mb()
    return found

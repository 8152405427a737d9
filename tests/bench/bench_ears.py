"""Figures of the ears on this machine: `python -m tests.bench.bench_ears`."""

from __future__ import annotations

import os
import platform
import statistics
import subprocess
import sys
import time
from collections.abc import Iterable
from pathlib import Path

from kiosk.listening.ear import RATE, Ear, Utterance
from kiosk.listening.models import Missing, open_ear
from tests.speech.clips import (
    RECORDINGS,
    Sound,
    commands,
    of_file,
    spoken,
    utterances,
)
from tests.speech.kitchen import in_kitchen

LANGUAGES = ("en", "ko")
NOISE_DB = 10


def main() -> None:
    """Print the figures of every ear that can be had, each in a process of its own."""
    if len(sys.argv) > 1:
        judge(sys.argv[1])
        return
    print(f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}")
    for language in LANGUAGES:
        subprocess.run([sys.executable, "-m", "tests.bench.bench_ears", language], check=False)


def judge(language: str) -> None:
    """Load one ear and print what it costs and what it understands."""
    sounds = list(spoken(commands(language), language))
    clean = [(phrase, one) for phrase, sound in sounds for one in utterances(sound)]
    before = resident_mb()
    begun = time.perf_counter()
    ear = open_ear(language)
    loaded_s = time.perf_counter() - begun
    if isinstance(ear, Missing):
        print(f"\n{language}: {ear.mend}")
        return
    allowed = commands(language)
    ear.hear(clean[0][1], allowed)
    print(f"\n{ear.name} ({language}), {len(allowed)} phrases allowed")
    print(f"  loaded in {loaded_s:.2f} s; {resident_mb() - before:.0f} MB more resident")
    speed(ear, [one for _, one in clean], allowed)
    noisy = [
        (phrase, one)
        for number, (phrase, sound) in enumerate(sounds[::2])
        for one in utterances(in_kitchen(sound, NOISE_DB, number))
    ]
    recall(ear, "synthetic voices, clean", clean[::2], allowed, len(sounds[::2]))
    recall(ear, f"synthetic voices, {NOISE_DB} dB kitchen", noisy, allowed, len(sounds[::2]))
    if language == "en":
        for word in ("yes", "no", "stop"):
            clips = human(f"gsc/{word}")
            found = [(word, one) for clip in clips for one in utterances(clip)]
            recall(ear, f"people, '{word}'", found, [*allowed, "stop"], len(clips))
    taken(ear, "people, words on no list", human("gsc/unknown"), allowed)
    taken(ear, "rooms, no speech", human("gsc/silence"), allowed)


def speed(ear: Ear, utterances_: list[Utterance], allowed: list[str]) -> None:
    """Print decode times and the wait between the end of speech and the event."""
    decodes = [ear.hear(one, allowed).decode_s for one in utterances_]
    waits = [one.decided_at - one.ended_at for one in utterances_]
    sound_s = sum(len(one.samples) for one in utterances_) / RATE
    ends = sorted(wait + decode for wait, decode in zip(waits, decodes, strict=True))
    print(f"  decode {spread(decodes)} ms; real-time factor {sum(decodes) / sound_s:.3f}")
    print(f"  end of speech to event {spread(ends)} ms, of which the gate waits {spread(waits)}")


def spread(seconds: Iterable[float]) -> str:
    """Return 'median m, p95 p' in milliseconds."""
    ordered = sorted(seconds)
    p95 = ordered[min(len(ordered) - 1, round(0.95 * len(ordered)))]
    return f"median {1000 * statistics.median(ordered):.0f}, p95 {1000 * p95:.0f}"


def recall(
    ear: Ear, what: str, said: list[tuple[str, Utterance]], allowed: list[str], clips: int
) -> None:
    """Print how many clips were understood, and how many taken for another phrase."""
    if not clips:
        print(f"  {what}: no recordings here")
        return
    phrases = [(word, ear.hear(one, allowed).phrase) for word, one in said]
    right = sum(word == phrase for word, phrase in phrases)
    wrong = sum(phrase not in (None, word) for word, phrase in phrases)
    print(f"  {what}: {right} of {clips} right, {wrong} taken for another phrase")


def taken(ear: Ear, what: str, clips: list[Sound], allowed: list[str]) -> None:
    """Print how much of what is no phrase was taken for one."""
    found = [one for clip in clips for one in utterances(clip)]
    count = sum(ear.hear(one, allowed).phrase is not None for one in found)
    print(f"  {what}: {len(clips)} clips, {len(found)} utterances, {count} taken for a phrase")


def human(kind: str) -> list[Sound]:
    """Return the human clips of a folder beside the project; none when they are not there."""
    return [of_file(path) for path in sorted((RECORDINGS / kind).glob("*.wav"))]


def resident_mb() -> float:
    """Return the memory of this process in MB; 0 where it cannot be told."""
    status = Path("/proc/self/status")
    if not status.exists():
        return 0.0
    line = next(one for one in status.read_text().splitlines() if one.startswith("VmRSS"))
    return int(line.split()[1]) / 1024


if __name__ == "__main__":
    main()

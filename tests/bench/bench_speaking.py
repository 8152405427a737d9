"""How long the voice takes: to speak a prompt into a file, to be heard, to fall silent.

Run with `python -m tests.bench.bench_speaking`. Times to sound and to silence are read from a
recording of the loudspeaker, so they hold the recorder's own delay and are upper bounds.
"""

from __future__ import annotations

import os
import statistics
import tempfile
import threading
import time
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

import numpy as np

from kiosk.speaking.player import NoSpeaker, Player, open_player
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recordings import Recording as Kept
from kiosk.speaking.recordings import Recordings
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.shop_prompts import ShopPrompts
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import VOICES
from kiosk.speaking.waves import read
from tests.speech.test_speaking_device import (
    LOUD,
    Recording,
    missing_for_a_sound_server,
    null_loudspeaker,
)

TEXTS = {
    "en": "Switch to off. Pull the plug and keep it in your sight. Part {}.",
    "es": "Apague la máquina. Desenchúfela y no la pierda de vista. Pieza {}.",
    "ko": "전원을 끄세요. 플러그를 뽑고 눈앞에 두세요. 부품 {}.",
}
RATE = 48_000
STEP = RATE // 200
"""Samples of 5 ms, how finely the recording is looked at."""
PLAYS = 25


def spread(seconds: Sequence[float]) -> str:
    """Return median, 95th percentile and worst in milliseconds."""
    ordered = sorted(seconds)
    high = ordered[min(len(ordered) - 1, int(0.95 * len(ordered)))]
    figures = (statistics.median(ordered), high, ordered[-1])
    return "median {:.1f}  p95 {:.1f}  worst {:.1f} ms".format(*(1e3 * one for one in figures))


def timed(work: Callable[[], object]) -> float:
    """Return the seconds `work` takes."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def bench_rendering(folder: Path) -> None:
    """Print the times of a first prompt, further prompts and kept prompts."""
    cold = []
    for at in range(5):
        renderer = Renderer()
        prompts = PromptCache(folder / f"cold{at}", renderer)
        cold.append(
            timed(lambda prompts=prompts: prompts.wave(Speech(TEXTS["en"].format(1), "en")))
        )
        renderer.close()
    print(f"first prompt, worker not yet started (n=5): {spread(cold)}")
    renderer = Renderer()
    prompts = PromptCache(folder / "warm", renderer)
    prompts.wave(Speech("Warm.", "en"))
    for language, text in TEXTS.items():
        asked = [text.format(at) for at in range(100)]
        warm = [timed(partial(prompts.wave, one, language)) for one in asked]
        kept = [timed(partial(prompts.wave, one, language)) for one in asked]
        rate = VOICES[language].rate
        print(f"{language} at {rate} words/min (n=100): new {spread(warm)}; kept {spread(kept)}")
    renderer.close()


def bench_recordings(folder: Path) -> None:
    """Print the times of a prompt with a recorded sentence in it, beside those of a kept one."""
    renderer = Renderer()
    recordings = Recordings(folder)
    prompts = ShopPrompts(PromptCache(folder / "mixed", renderer), recordings=recordings)
    own, other = "Pull the plug and keep it in your sight.", "Switch to off."
    plain = [timed(lambda: prompts.wave(f"{other} {own}", "en")) for _ in range(100)]
    said = read(prompts.wave(own, "en"))
    recordings.keep(Kept(text=own, language="en", by="p1", at_utc=0.0), said)
    mixed = [timed(lambda: prompts.wave(f"{other} {own}", "en")) for _ in range(100)]
    alone = [timed(lambda: prompts.wave(own, "en")) for _ in range(100)]
    print(f"without a recording (n=100): {spread(plain)}")
    print(f"one of two sentences recorded (n=100): {spread(mixed)}; recorded alone {spread(alone)}")
    renderer.close()


def bench_loudspeaker(place: dict[str, str], folder: Path) -> None:
    """Print the times from play to sound and from stop to silence, and the gaps in the sound."""
    os.environ.update(place)
    renderer = Renderer()
    path = PromptCache(folder / "played", renderer).wave(Speech(" ".join(["Aaaa"] * 30), "en"))
    renderer.close()
    start = time.perf_counter()
    try:
        player = open_player()
    except NoSpeaker as failure:
        print(f"no loudspeaker: {failure}")
        return
    print(f"opening the loudspeaker ({type(player).__name__}): {time.perf_counter() - start:.3f} s")
    recording = Recording(place, RATE, latency_ms=5)
    heard: list[float] = []
    silent: list[float] = []
    for _ in range(PLAYS):
        to_sound, to_silence = play_and_stop(player, path, recording)
        heard.append(to_sound)
        silent.append(to_silence)
    print(f"play to sound (n={PLAYS}): {spread(heard)}")
    print(f"stop to silence (n={PLAYS}): {spread(silent)}")
    recording.close()
    player.close()


def play_and_stop(player: Player, path: Path, recording: Recording) -> tuple[float, float]:
    """Return the seconds from play to the first loud 5 ms, and from stop to the last loud one."""
    catch_up(recording)
    sound = player.load(path)
    start = time.perf_counter()
    player.play(sound, lambda reason: None)
    while np.abs(recording.next(STEP)).max() < LOUD:
        pass
    to_sound = time.perf_counter() - start
    for _ in range(60):
        recording.next(STEP)
    start = time.perf_counter()
    player.stop()
    last_loud = start
    quiet = 0
    while quiet < 60:
        loud = np.abs(recording.next(STEP)).max() >= LOUD
        quiet = 0 if loud else quiet + 1
        if loud:
            last_loud = time.perf_counter()
    return to_sound, last_loud - start


def catch_up(recording: Recording) -> None:
    """Read what was recorded in the meantime, until reading has to wait for the present."""
    while timed(lambda: recording.next(STEP)) < 0.001:
        pass


def main() -> None:
    """Print every figure this machine can give."""
    load = ", ".join(f"{one:.1f}" for one in os.getloadavg())
    print(f"{os.cpu_count()} cores, load {load}, {threading.active_count()} thread")
    with tempfile.TemporaryDirectory() as folder:
        bench_rendering(Path(folder))
        bench_recordings(Path(folder))
        lacking = missing_for_a_sound_server()
        if lacking:
            print(f"no times to sound: {lacking}")
            return
        with null_loudspeaker() as place:
            bench_loudspeaker(place, Path(folder))


if __name__ == "__main__":
    main()

"""A loudspeaker or a microphone that is unplugged in the middle of a sentence."""

from __future__ import annotations

import os
import random
import threading
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from unittest import mock

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import Heard
from kiosk.listening.endpoint import FRAME
from kiosk.listening.hearing import MicrophoneHearing
from kiosk.speaking.kiosk_voice import KioskVoice
from kiosk.speaking.player import open_player
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.shop_prompts import ShopPrompts
from tests.faults.judging import Withstood, Worker
from tests.sound_server import Recording, null_loudspeaker

LONG_S = 30.0


def speaker_unplugged(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Take the sound server away while a prompt is heard; work on by touch."""
    found, renderer = Withstood(), Renderer()
    try:
        for number in range(tries):
            home = folder / f"home-{number}"
            with null_loudspeaker() as place, mock.patch.dict(os.environ, place):
                # A kiosk waits three seconds beyond a sentence's length.
                cache = PromptCache(folder / "prompts", renderer)
                voice = KioskVoice(ShopPrompts(cache), open_player(), overdue_s=0.2)
                recording = Recording(place)
                worker = Worker(home, voice=voice)
                try:
                    worker.on(chance.randrange(1, 8))
                    recording.until_loud(LONG_S)
                finally:
                    recording.close()
            _until(lambda said=voice: said.notice)
            found.saw(voice.notice)
            _until(lambda walk=worker.walk: not walk.intercom.speaking)
            worker.on(8)
            voice.close()
            worker.close()
            found.judge(home, worker.shown)
    finally:
        renderer.close()
    return found


def _until(true: object) -> None:
    """Wait for what must come, without a bound that a working kiosk would wait out."""
    pause = threading.Event()
    for _ in range(int(LONG_S / 0.01)):
        if true():  # type: ignore[operator]
            return
        pause.wait(0.01)
    raise AssertionError("it did not come")


class Unplugged:
    """A microphone that gives noise for a while and then fails, or falls silent for good."""

    live = True

    def __init__(self, chance: random.Random) -> None:
        self._frames = chance.randrange(1, 60)
        self._fails = chance.random() < 0.5
        self._noise = np.random.default_rng(chance.randrange(1000))

    def frames(self) -> Iterator[NDArray[np.float32]]:
        for _ in range(self._frames):
            yield self._noise.normal(0, 0.05, FRAME).astype(np.float32)
        if self._fails:
            raise OSError("No such device")

    def waiting(self) -> int:
        return 0

    def close(self) -> None: ...


def microphone_unplugged(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Take the microphone away while the ear listens; work on by touch."""
    found = Withstood()
    for number in range(tries):
        told, heard = threading.Event(), list[Heard]()
        with closing(Worker(folder / f"home-{number}")) as worker:
            ear = MicrophoneHearing(Unplugged(chance), heard.append, told.set)
            worker.walk.attend(worker.voice, ear)
            assert told.wait(LONG_S)
            worker.on(10)
            for thread in threading.enumerate():
                if thread.name in ("listener", "load-ear"):
                    thread.join(LONG_S)
            found.saw(ear.notice)
            found.broken += bool(heard) or not ear.notice
            ear.stop()
        found.judge(folder / f"home-{number}", worker.shown)
    return found

"""The kiosk as a user starts it, and a worker who only talks: microphone to journal, in real time.

Sound goes through a real sound server without hardware. The worker is a synthetic voice that knows
the open question from the journal, waits until the loudspeaker is silent, and speaks.
"""

from __future__ import annotations

import fcntl
import os
import pty
import struct
import subprocess
import sys
import termios
import threading
from collections.abc import Callable, Iterator
from contextlib import closing, suppress
from pathlib import Path

import numpy as np
import pyte
import pytest

from kiosk.clock import SystemClock
from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.state import Mode
from kiosk.journal.store import FILE, Journal
from kiosk.languages.words import words
from kiosk.listening.grammar import grammar
from kiosk.procedure.load import load_library
from kiosk.procedure.site import load_site
from kiosk.proof.audit import audit
from kiosk.rehearsal.speaker import WorkerVoice
from kiosk.rehearsal.worker import answer
from kiosk.session import Session
from kiosk.shipped import shipped
from kiosk.shop import Shop
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from tests.sound_server import LOUD, RATE, Recording, missing_for_a_sound_server, null_loudspeaker

pytest.importorskip("ctranslate2", reason="the English ear is not installed")
pytest.importorskip("tokenizers", reason="the English ear is not installed")

MOMENT = RATE // 10
TRIES = 6


class Terminal:
    """A kiosk in a terminal of its own."""

    def __init__(self, environment: dict[str, str]) -> None:
        self._ours, theirs = pty.openpty()
        fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", 30, 100, 0, 0))
        self._process = subprocess.Popen(
            [sys.executable, "-m", "kiosk", "demo"],
            stdin=theirs,
            stdout=theirs,
            stderr=theirs,
            env={**os.environ, **environment, "TERM": "xterm-256color"},
            start_new_session=True,
        )
        os.close(theirs)
        self._screen = pyte.Screen(100, 30)
        self._stream = pyte.ByteStream(self._screen)
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()

    def _read(self) -> None:
        with suppress(OSError):
            while piece := os.read(self._ours, 65_536):
                self._stream.feed(piece)

    @property
    def shown(self) -> str:
        """The screen as text."""
        return "\n".join(self._screen.display)

    def press(self, keys: str) -> None:
        os.write(self._ours, keys.encode())

    def close(self) -> None:
        self._process.kill()
        self._process.wait()
        self._reader.join(5)
        os.close(self._ours)


class Worker:
    """Answers the open question aloud."""

    def __init__(self, place: dict[str, str], room: Recording, shop: Shop, voice: WorkerVoice):
        self._place, self._room, self._shop, self._voice = place, room, shop, voice
        self.said = self.said_again = 0

    def until(self, seconds: float, true: Callable[[], bool]) -> bool:
        """Listen to the room until something is so; False after so many seconds of sound."""
        for _ in range(int(seconds * 10)):
            if true():
                return True
            self._room.next(MOMENT)
        return true()

    def until_silent(self) -> None:
        """Wait for the kiosk to begin to speak, if it does, and to end."""
        silent = spoken = 0
        for _ in range(600):
            loud = bool(np.abs(self._room.next(MOMENT)).max() > LOUD)
            spoken += loud
            silent = 0 if loud else silent + 1
            if silent >= (8 if spoken else 30):
                return
        raise AssertionError("the kiosk speaks without end")

    def session(self) -> Session:
        (name,) = self._shop.journal.open_sessions()
        plan = self._shop.plan_of(name)
        assert plan is not None
        return Session(plan, self._shop.journal, SystemClock(), name)

    def say(self, act: c.Act, session: Session, attempt: int) -> None:
        known = grammar(session.plan, session.state.step, session.offers(), words("en"))
        phrase = next(phrase for phrase, of in known.items() if of == act)
        sound = self._voice.say(phrase, attempt)
        environment = {**os.environ, **self._place}
        subprocess.run(["paplay", "--device=mic", str(sound)], env=environment, check=True)
        self.said += 1
        self.said_again += attempt > 0

    def answer_once(self) -> None:
        """Say the answer until the journal has it."""
        self.until_silent()
        session = self.session()
        act = answer(session)
        if act is None:
            assert self.until(60, lambda: answer(self.session()) is not None)
            return
        before = self._shop.journal.head()
        for attempt in range(TRIES):
            self.say(act, session, attempt)
            if self.until(4, lambda: self._shop.journal.head() != before):
                return
            self.until_silent()
        raise AssertionError(f"'{session.state.step}' was not understood in {TRIES} tries")


@pytest.fixture(scope="module")
def place() -> Iterator[dict[str, str]]:
    lacking = missing_for_a_sound_server()
    if lacking:
        pytest.skip(lacking)
    with null_loudspeaker() as variables:
        yield variables


def test_a_phase_is_walked_by_voice_alone(place: dict[str, str], tmp_path: Path) -> None:
    site = load_site(shipped("demo") / "site.toml")
    number, name = next(
        (str(i), one.name) for i, one in enumerate(site.people, 1) if one.language == "en"
    )
    folder = tmp_path / "home" / "demo"
    room = Recording(place)
    kiosk = Terminal({**place, "KIOSK_HOME": str(tmp_path / "home")})
    try:
        worker = Worker(place, room, None, None)  # type: ignore[arg-type]
        assert worker.until(60, lambda: site.machines[0].name in kiosk.shown), kiosk.shown
        assert (folder / FILE).exists()
        with closing(Journal(folder)) as journal, closing(Renderer()) as renderer:
            cache = PromptCache(tmp_path / "prompts", renderer)
            shop = Shop(site, load_library(shipped("procedures")), journal, SystemClock(), folder)
            worker = Worker(place, room, shop, WorkerVoice(cache, "en"))
            choices = (("1", lambda: name in kiosk.shown), (number, journal.open_sessions))
            for key, seen in choices:
                # A press too soon after the screen has changed is not taken.
                for _ in range(30):
                    kiosk.press(key)
                    if worker.until(2, seen):
                        break
                assert seen(), kiosk.shown
            begun = journal.head()
            plan = worker.session().plan
            while plan.step(worker.session().state.step).phase == plan.steps[0].phase:
                worker.answer_once()
            assert journal.head() != begun
            session = worker.session()
            events = journal.events(session.id)
            assert session.state.mode is Mode.RUNNING
            assert audit(plan, events) == []
            assert journal.verify().whole
    finally:
        kiosk.close()
        room.close()
    confirmed = {one.fact.step: one.by for one in events if isinstance(one.fact, e.StepConfirmed)}
    walked = [step.id for step in plan.steps if step.phase == plan.steps[0].phase]
    assert set(confirmed) == set(walked)
    for step, by in confirmed.items():
        assert by.channel is c.Channel.VOICE, step
        assert by.heard, step
    print(f"{len(walked)} steps, {worker.said} phrases, {worker.said_again} said again")

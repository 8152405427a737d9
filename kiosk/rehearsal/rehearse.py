"""The rehearsal: a session walked to its end through the real engine, journal, voice and ear."""

from __future__ import annotations

import statistics
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Literal

from kiosk.clock import LeapingClock
from kiosk.engine import commands as c
from kiosk.engine.state import Mode
from kiosk.listening.ear import Ear, Heard
from kiosk.listening.grammar import grammar
from kiosk.listening.listener import hear_frames
from kiosk.listening.sources import WaveFile
from kiosk.listening.turn import Meanings, meanings_of
from kiosk.procedure.site import Person, Site
from kiosk.rehearsal.speaker import RenderedVoice, WorkerVoice
from kiosk.rehearsal.worker import answer
from kiosk.session import Session
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.walk import Walk

MOST_TURNS_PER_STEP = 25
"""More answers than this for each step means that the walk goes in circles."""
MOST_TRIES = 16
"""A worker who was not understood so often would stop and use the screen."""
_LEAP_MARGIN_S = 0.01

Print = Callable[[str], None]
By = Literal["voice", "touch"]


class RehearsalEar:
    """The hearing of a rehearsal: the real ear, fed with the worker's wave files."""

    notice = ""

    def __init__(self, ear: Ear | None) -> None:
        self._ear = ear
        self._allowed: Meanings = {}

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others; a mapping tells which of them mean the same."""
        self._allowed = meanings_of(phrases)

    def deafen(self) -> None:
        """Nothing is fed while the kiosk speaks."""

    def undeafen(self, *, at_once: bool = False) -> None:
        """Nothing is fed while the kiosk speaks."""

    def speak(self, language: str, worker: str = "") -> None:
        """The ear was opened for the language of the rehearsal."""

    def listen(self, wave: Path) -> list[Heard]:
        """Return what the ear makes of a wave file."""
        if self._ear is None:
            return []
        return hear_frames(WaveFile(wave).frames(), self._ear, self._allowed)


@dataclass(slots=True)
class Tally:
    """What a rehearsal counted."""

    answers: int = 0
    repeated: int = 0
    """Answers of which nothing allowed was understood, so that they were said again."""
    mistaken: int = 0
    """Answers that were taken for another allowed phrase."""
    decode_s: list[float] = field(default_factory=list)

    def sentence(self) -> str:
        """Return the counts in one line."""
        text = f"{self.answers} answers, {self.repeated} said again, {self.mistaken} mistaken"
        if self.decode_s:
            text += f", decoding {1000 * statistics.median(self.decode_s):.0f} ms (median)"
        return text


class Rehearsal:
    """One walk by a simulated worker. Prints the dialogue as it goes."""

    def __init__(
        self,
        session: Session,
        site: Site,
        clock: LeapingClock,
        cache: PromptCache,
        ear: Ear | None,
        show: Print,
    ) -> None:
        self.tally = Tally()
        self._session = session
        self._clock = clock
        self._show = show
        self._cache = cache
        self._hearing = RehearsalEar(ear)
        voice = RenderedVoice(cache, lambda text: show(f"{self._place():>9}  kiosk: {text}"))
        self._walk = Walk(session, site, clock, voice, self._hearing, lambda: None)

    def run(self, worker: Person, by: By) -> bool:
        """Walk to the end. Returns True when the procedure was completed.

        Raises worker.Stuck and speaking's SpeechFailed.
        """
        self._walk.begin(worker)
        voice = WorkerVoice(self._cache, worker.language)
        tries: dict[tuple[str, c.Act], int] = {}
        misses = 0
        for _ in range(MOST_TURNS_PER_STEP * len(self._session.plan.steps)):
            if self._session.over:
                return self._session.state.mode is Mode.COMPLETE
            act = answer(self._session)
            if act is None:
                self._leap()
                continue
            self.tally.answers += 1
            if by == "touch":
                self._show(f"{'':>9}  touch: {self._phrases(act)[0]}")
                self._walk.do(act, c.Evidence(c.Channel.TOUCH))
                continue
            asked = (self._session.state.step, act)
            attempt = tries.get(asked, 0)
            tries[asked] = attempt + 1
            missed = self._say(voice, act, attempt)
            misses = misses + 1 if missed else 0
            if misses == MOST_TRIES:
                self._show(f"The worker gives up: '{self._phrases(act)[0]}' was never understood.")
                return False
        return False

    def _leap(self) -> None:
        left = self._session.seconds_left() or 0.0
        self._show(f"{'':>9}  (the rehearsal's clock leaps over {left:.0f} s of waiting)")
        self._clock.leap(left + _LEAP_MARGIN_S)
        self._walk.tick()

    def _say(self, voice: WorkerVoice, act: c.Act, attempt: int) -> bool:
        """Say one answer into the ear; True when nothing allowed was understood."""
        phrases = self._phrases(act)
        phrase = phrases[(attempt + attempt // voice.voices) % len(phrases)]
        found = self._hearing.listen(voice.say(phrase, attempt))
        heard = next((one for one in found if one.phrase is not None), found[0] if found else None)
        if heard is None:
            self._show(f"{'':>9} worker: {phrase}   (no speech found)")
            self.tally.repeated += 1
            return True
        self.tally.decode_s.append(heard.decode_s)
        sure = "" if heard.confidence is None else f" {heard.confidence:.2f}"
        outcome = heard.why or "accepted"
        self._show(f"{'':>9} worker: {phrase}   [heard '{heard.text}'{sure}: {outcome}]")
        understood = self._meaning(heard.phrase)
        if understood is None:
            self.tally.repeated += 1
        elif understood != act:
            self.tally.mistaken += 1
        self._walk.hear(heard)
        return understood is None

    def _grammar(self) -> dict[str, c.Act]:
        session = self._session
        return grammar(session.plan, session.state.step, session.offers(), self._walk.words)

    def _phrases(self, act: c.Act) -> list[str]:
        """Return the phrases that stand for an act now, the one on the button first.

        A worker who was not understood says it in another way.
        """
        return [said for said, one in self._grammar().items() if one == act] or [str(act)]

    def _meaning(self, phrase: str | None) -> c.Act | None:
        return None if phrase is None else self._grammar().get(phrase)

    def _place(self) -> str:
        session = self._session
        if not session.state.goal:
            return ""
        return f"{session.plan.index[session.state.goal] + 1}/{len(session.plan.steps)}"

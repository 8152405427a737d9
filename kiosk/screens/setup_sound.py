"""The trial of loudspeaker and microphone, at the end of the setup. It may be left out."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum, auto
from typing import Any, Final

from textual import on
from textual.app import ComposeResult
from textual.content import Content
from textual.widgets import Static
from textual.worker import Worker, WorkerState

from kiosk.clock import Clock
from kiosk.languages.words import Words
from kiosk.listening.ear import Ear
from kiosk.listening.microphone import NoMicrophone
from kiosk.listening.models import Missing
from kiosk.listening.sources import Source
from kiosk.screens.arrangement import LEAST_HEIGHT, Block, even_columns, most_columns
from kiosk.screens.faces import Face, Pick
from kiosk.screens.setup_page import Asked, Done, SetupPage, Ways
from kiosk.setup.sound import Found, share, trial
from kiosk.speaking.voice import Voice

_SENTENCE_S: Final = 20.0
"""A sentence that does not end by then is given up."""
_BAR: Final = 24


@dataclass(frozen=True, slots=True)
class Sound:
    """How voice, microphone and ear of this machine are opened; each may take seconds."""

    voice: Callable[[], Voice]
    source: Callable[[], Source]
    """Raises NoMicrophone."""
    ear: Callable[[str], Ear | Missing]


class _Stage(Enum):
    BEGIN = auto()
    SPEAKING = auto()
    SPOKEN = auto()
    LISTENING = auto()
    HEARD = auto()


class SoundPage(SetupPage):
    """Says a sentence, listens to a yes, and tells what came of it."""

    def __init__(
        self,
        clock: Clock,
        words: Words,
        head: tuple[str, str],
        sound: Sound,
        then: Callable[[], object],
    ) -> None:
        super().__init__(clock, words, Asked(head, ""), Ways(done=then))
        self._sound = sound
        self._stage = _Stage.BEGIN
        self._told: list[str] = []
        self._level: float | None = None
        self._voice: Voice | None = None
        self._source: Source | None = None

    def compose_more(self) -> ComposeResult:
        yield Static(id="level", markup=False)

    def on_unmount(self) -> None:
        if self._source is not None:
            self._source.close()
        if self._voice is not None:
            self._voice.close()

    # What is shown.

    def draw(self) -> None:
        say = self.words.say
        question = say(f"setup-sound-{self._stage.name.lower()}")
        self.asked = Asked(self.asked.head, question, "\n".join(self._told))
        super().draw()

    def draw_more(self, width: int) -> int:  # noqa: ARG002
        line = self.query_one("#level", Static)
        line.display = self._stage is _Stage.LISTENING
        if self._stage is not _Stage.LISTENING:
            return 0
        filled = round(_BAR * share(self._level)) if self._level is not None else 0
        line.update(Content("█" * filled + "·" * (_BAR - filled)))
        return 1

    def primary(self, width: int, height: int, lines: int) -> Block:  # noqa: ARG002
        say = self.words.say
        again = Face(Pick(self._speak), say("setup-sound-again"), key="1", listed=True)
        match self._stage:
            case _Stage.BEGIN:
                faces = [Face(Pick(self._speak), say("setup-sound-start"), key="1", listed=True)]
            case _Stage.SPOKEN:
                faces = [
                    Face(Pick(self._was_heard), say("setup-sound-yes"), key="y", listed=True),
                    Face(Pick(self._was_not_heard), say("setup-sound-no"), key="n", listed=True),
                    again,
                ]
            case _Stage.HEARD:
                faces = [again]
            case _:
                faces = []
        columns = even_columns(len(faces), most_columns(width))
        return Block(tuple(faces), columns, LEAST_HEIGHT)

    def secondary(self, width: int) -> Block:  # noqa: ARG002
        finished = self._stage is _Stage.HEARD
        label = self.words.say("setup-sound-on" if finished else "setup-sound-skip")
        return Block((Face(Pick(Done()), label, key="enter", primary=finished),))

    def chosen(self, item: Any) -> None:
        if callable(item):
            item()

    # The loudspeaker.

    def _speak(self) -> None:
        self._to(_Stage.SPEAKING, [])
        self._work(self._say_sentence)

    def _say_sentence(self) -> None:
        if self._voice is None:
            self._voice = self._sound.voice()
        ended = threading.Event()
        text = self.words.say("setup-sound-sentence")
        self._voice.say(text, self.words.language, ended.set)
        ended.wait(_SENTENCE_S)
        notice = self._voice.notice
        if notice:
            silent = self.words.say("setup-sound-no-voice", why=notice)
            self._post(lambda: self._listen([silent]))
        else:
            self._post(lambda: self._to(_Stage.SPOKEN, [f"“{text}”"]))

    def _was_heard(self) -> None:
        self._listen([self.words.say("setup-sound-voice-good")])

    def _was_not_heard(self) -> None:
        self._listen([self.words.say("setup-sound-voice-bad")])

    # The microphone.

    def _listen(self, told: list[str]) -> None:
        self._to(_Stage.LISTENING, told)
        self._work(self._hear)

    def _hear(self) -> None:
        say = self.words.say
        try:
            self._source = self._sound.source()
        except NoMicrophone as error:
            missing = say("setup-sound-no-microphone", why=str(error))
            self._post(lambda: self._to(_Stage.HEARD, [*self._told, missing]))
            return
        try:
            ear = self._sound.ear(self.words.language)
            found = trial(self._source, ear, self.words, self)
        finally:
            self._source.close()
            self._source = None
        self._post(lambda: self._to(_Stage.HEARD, [*self._kept(), *self._lines(found)]))

    def _lines(self, found: Found) -> list[str]:
        say = self.words.say
        return [say(found.told, text=found.text), *(say(one) for one in found.advice)]

    def _kept(self) -> list[str]:
        """Return what was said of the voice, without what to do at the microphone."""
        return self._told[:1]

    # From the thread of the trial.

    def stage(self, message: str, **args: str) -> None:
        """Say what to do now."""
        told = self.words.say(message, **args)
        self._post(lambda: self._to(_Stage.LISTENING, [*self._kept(), told]))

    def level(self, dbfs: float) -> None:
        """Show how loud it is."""

        def show() -> None:
            self._level = dbfs
            if self.is_mounted:
                self.draw_more(self.room.width)

        self._post(show)

    def _work(self, task: Callable[[], None]) -> None:
        self.run_worker(task, thread=True, exclusive=True, exit_on_error=False)

    @on(Worker.StateChanged)
    def _on_worker(self, message: Worker.StateChanged) -> None:
        """Say what went wrong; the setup goes on without sound."""
        if message.worker.state is WorkerState.ERROR:
            self._to(_Stage.HEARD, [*self._kept(), str(message.worker.error)])

    def _post(self, task: Callable[[], object]) -> None:
        if self.is_mounted:
            self.app.call_from_thread(task)

    def _to(self, stage: _Stage, told: list[str]) -> None:
        self._stage, self._told = stage, told
        self.unsteady()
        self.draw()

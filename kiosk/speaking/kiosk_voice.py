"""Prompts from the cache through the loudspeaker, each with exactly one end."""

from __future__ import annotations

import logging
import queue
import threading
import time
from collections import deque
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from typing import Protocol

from kiosk.languages.words import notice
from kiosk.speaking.player import NoSpeaker, Player, open_player
from kiosk.speaking.voices import SpeechFailed

OVERDUE_S = 3.0
"""A sound that has not ended this long after its length is given up: its device is gone."""

_log = logging.getLogger(__name__)


class Prompts(Protocol):
    """What the voice needs of its prompts."""

    def wave(self, text: str, language: str, person: str) -> Path:
        """Return the wave file of a text as it is said to a person; it may be another text's when
        it is asked for again. Raises SpeechFailed."""
        ...

    def ready(self, text: str, language: str, person: str) -> None:
        """Render what `wave` will need, and leave its last file alone. Raises SpeechFailed."""
        ...


@dataclass(eq=False, slots=True)
class _Utterance:
    text: str
    language: str
    on_end: Callable[[], None]
    person: str = field(default="")
    due: float | None = field(default=None)
    """Monotonic seconds by which it must have ended; None before it sounds."""
    ended: bool = field(default=False)
    """Touched by the endings thread alone."""
    sound: Path | None = field(default=None)
    """A wave file to play instead of a text."""


@dataclass(frozen=True, slots=True)
class _Started:
    utterance: _Utterance


@dataclass(frozen=True, slots=True)
class _Ending:
    utterance: _Utterance
    notice: str | None
    """What the voice's notice becomes; None leaves it, for what was cut off."""


class KioskVoice:
    """Renders in one thread, reports the ends in another; say and hush never wait for either."""

    def __init__(
        self,
        prompts: Prompts,
        player: Player,
        reopen: Callable[[], Player] = open_player,
        on_close: Callable[[], None] = lambda: None,
        overdue_s: float = OVERDUE_S,
    ) -> None:
        """`reopen` opens the loudspeaker anew after it was lost; `on_close` frees the renderer."""
        self.notice = ""
        self._prompts = prompts
        self._player = player
        self._reopen = reopen
        self._on_close = on_close
        self._overdue_s = overdue_s
        self._speaker_lost = False
        self._person = ""
        self._state = threading.Condition()
        self._current: _Utterance | None = None
        self._wanted: _Utterance | None = None
        self._ahead: deque[tuple[str, str]] = deque()
        self._closed = False
        self._endings: queue.SimpleQueue[_Started | _Ending | None] = queue.SimpleQueue()
        self._threads = [
            threading.Thread(target=self._render_all, name="voice-render", daemon=True),
            threading.Thread(target=self._report_ends, name="voice-ends", daemon=True),
        ]
        for thread in self._threads:
            thread.start()

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        """Cut off what is being said and start saying `text` as soon as it is rendered."""
        utterance = _Utterance(text, language, on_end, self._person)
        if not self._replace(utterance):
            on_end()

    def suit(self, person: str) -> None:
        """Speak as this person wants it, from the next text on; '' for nobody in particular."""
        self._person = person

    def play(self, sound: Path, on_end: Callable[[], None]) -> None:
        """Cut off what is being said and play a wave file."""
        if not self._replace(_Utterance("", "", on_end, sound=sound)):
            on_end()

    def prepare(self, texts: Iterable[str], language: str) -> None:
        """Queue texts for rendering whenever nothing is wanted at once."""
        with self._state:
            if self._closed:
                return
            waiting = set(self._ahead)
            self._ahead.extend(
                item
                for item in dict.fromkeys((text, language) for text in texts)
                if item not in waiting
            )
            self._state.notify()

    def hush(self) -> None:
        """Cut off what is being said, or about to be."""
        self._replace(None)

    def close(self) -> None:
        """Cut off, report the last end, give the device and the renderer back."""
        with self._state:
            if self._closed:
                return
            self._stop_current(None)
            self._closed = True
            self._ahead.clear()
            self._state.notify()
        self._on_close()
        here = threading.current_thread()
        renders, reports = self._threads
        if renders is not here:
            renders.join()
        self._endings.put(None)
        if reports is not here:
            reports.join()
        self._player.close()

    def _replace(self, utterance: _Utterance | None) -> bool:
        """Put `utterance` in the place of the current one; False when the voice is closed."""
        with self._state:
            if self._closed:
                return False
            self._stop_current(utterance)
            self._state.notify()
            return True

    def _stop_current(self, utterance: _Utterance | None) -> None:
        """Silence the loudspeaker and end the current utterance; the lock is held."""
        earlier, self._current, self._wanted = self._current, utterance, utterance
        self._player.stop()
        if earlier is not None:
            self._endings.put(_Ending(earlier, None))

    def _render_all(self) -> None:
        while True:
            with self._state:
                while not (self._wanted or self._ahead or self._closed):
                    self._state.wait()
                if self._closed:
                    return
                utterance, self._wanted = self._wanted, None
                ahead = None if utterance else self._ahead.popleft()
            if utterance:
                self._start(utterance)
            elif ahead:
                self._render_ahead(*ahead)

    def _start(self, utterance: _Utterance) -> None:
        try:
            if self._speaker_lost:
                self._reopen_player()
            file = utterance.sound or self._prompts.wave(
                utterance.text, utterance.language, utterance.person
            )
            sound = self._player.load(file)
            with self._state:
                if self._current is utterance:
                    utterance.due = time.monotonic() + sound.seconds + self._overdue_s
                    self._endings.put(_Started(utterance))
                    self._player.play(sound, partial(self._done, utterance))
        except (SpeechFailed, NoSpeaker) as failure:
            self._done(utterance, str(failure))

    def _reopen_player(self) -> None:
        # Closing a device that is gone may never come back.
        threading.Thread(target=self._player.close, name="close-speaker", daemon=True).start()
        player = self._reopen()
        with self._state:
            self._player = player
        self._speaker_lost = False

    def _render_ahead(self, text: str, language: str) -> None:
        try:
            self._prompts.ready(text, language, self._person)
        except SpeechFailed as failure:
            if not self._closed:
                self.notice = self.notice or str(failure)

    def _done(self, utterance: _Utterance, reason: str) -> None:
        """Post an end; also called from the player's thread."""
        self._endings.put(_Ending(utterance, reason))

    def _report_ends(self) -> None:
        sounding: _Utterance | None = None
        while True:
            try:
                item = self._endings.get(timeout=_seconds_left(sounding))
            except queue.Empty:
                if sounding is None:
                    continue
                self._speaker_lost = True
                item = _Ending(sounding, notice("speaker-stopped"))
            if item is None:
                return
            utterance = item.utterance
            if utterance.ended:
                continue
            if isinstance(item, _Started):
                sounding = utterance
                continue
            utterance.ended = True
            if sounding is utterance:
                sounding = None
            self._report(item)

    def _report(self, ending: _Ending) -> None:
        with self._state:
            if self._current is ending.utterance:
                self._current = None
                self._player.stop()
        if ending.notice is not None:
            self.notice = ending.notice
        try:
            ending.utterance.on_end()
        except Exception:  # noqa: BLE001 (a fault of the listener must not end the voice)
            _log.exception("what was to happen after a prompt failed")


def _seconds_left(sounding: _Utterance | None) -> float | None:
    if sounding is None or sounding.due is None:
        return None
    return max(0.0, sounding.due - time.monotonic())

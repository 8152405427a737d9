"""A source, the gate and an ear: sound goes in, what was heard comes out."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from functools import cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.languages.notice import Told
from kiosk.languages.words import notice
from kiosk.listening.cut_short import cuts
from kiosk.listening.ear import Ear, Heard, Utterance
from kiosk.listening.echo import EchoFilter, SpeechBeside
from kiosk.listening.endpoint import FIRST_SILENCE_S, FRAME_S, Gate
from kiosk.listening.level import LevelMeter
from kiosk.listening.sources import Source
from kiosk.listening.turn import Meanings, Turn, meanings_of

TAIL_S: Final = 0.3
"""Deafness after the kiosk has spoken: its last syllable is still in the room and the buffers."""
FIRST_MOMENT_S: Final = 0.5
"""Nobody takes in a question and answers it so soon: what began before this was meant for another
question, or for somebody else."""


def hear_frames(
    frames: Iterable[NDArray[np.float32]], ear: Ear, allowed: Iterable[str]
) -> list[Heard]:
    """Return what an ear makes of each utterance in a finite stream of 512-sample frames.

    An answer acts as soon as it would with a decoder that takes no time.
    """
    meanings = meanings_of(allowed)
    listed = tuple(meanings)
    turn = Turn(Gate(), lambda said: _WhenAsked(ear, said, listed), lambda: meanings)
    found = [one for frame in frames if (one := turn.feed(frame)) is not None]
    last = turn.flush()
    return [heard for _, heard in (found if last is None else [*found, last])]


class _WhenAsked:
    """A decoding made when its result is wanted: of a short pause inside a sentence it never is."""

    def __init__(self, ear: Ear, utterance: Utterance, allowed: Sequence[str]) -> None:
        self._heard = cache(lambda: ear.hear(utterance, allowed))

    def done(self) -> bool:
        return True

    def cancel(self) -> bool:
        return True

    def result(self) -> Heard:
        return self._heard()


class EarFailed(Told):
    """An ear broke on an utterance; the listening goes on."""


class Listener:
    """Listens to a source until it ends. Callbacks come from its thread: they must only post."""

    def __init__(
        self,
        source: Source,
        ear: Ear | None,
        on_heard: Callable[[Heard], None],
        on_trouble: Callable[[str], None],
        clock: Callable[[], float] = time.monotonic,
        echo: EchoFilter | None = None,
    ) -> None:
        """Begin to listen. Without an ear, frames are dropped until one is given.

        With an `echo` filter, what may cut a prompt short is heard while one is said.
        """
        self._source = source
        self._ear = ear
        self._on_heard = on_heard
        self._on_trouble = on_trouble
        self._clock = clock
        self._meter = LevelMeter(clock)
        self._echo = echo
        self._beside = None if echo is None else SpeechBeside()
        self._prompt = ""
        self._prompt_from = self._prompt_until = float("-inf")
        self._meanings: Meanings = {}
        self._take: Callable[[NDArray[np.float32]], None] | None = None
        self.ended = False
        """True when the source gives no more."""
        self._asked_at = float("-inf")
        self._deaf_until = float("-inf")
        self._stopping = False
        self._lock = threading.Lock()
        self._decoder = ThreadPoolExecutor(1, thread_name_prefix="decoder")
        self._thread = threading.Thread(target=self._listen, name="listener", daemon=True)
        self._thread.start()

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases from now on, and no others: a question is asked.

        With a mapping, phrases of one meaning are not taken for different answers.
        """
        with self._lock:
            self._meanings = meanings_of(phrases)
            self._asked_at = self._clock()

    def deafen(self) -> None:
        """Hear nothing until told otherwise."""
        with self._lock:
            self._deaf_until = float("inf")

    def undeafen(self, tail_s: float = TAIL_S) -> None:
        """Hear again, after a tail in which the last sound dies away."""
        with self._lock:
            self._deaf_until = self._clock() + tail_s

    def record(self, take: Callable[[NDArray[np.float32]], None] | None) -> None:
        """Give every frame to `take`, in the listener's thread, and hear nothing in it.

        With None hear again.
        """
        with self._lock:
            self._take = take

    def saying(self, text: str) -> None:
        """Take note of the prompt that the kiosk begins to say, or with '' of its end."""
        with self._lock:
            if text:
                self._prompt = text
                self._prompt_from = self._clock()
            self._prompt_until = float("inf") if text else self._clock()

    @property
    def level(self) -> float | None:
        """How loud it is at the microphone, in dBFS; None when no sound at all comes in."""
        return None if self.ended else self._meter.level

    def swap_ear(self, ear: Ear | None) -> None:
        """Listen with another ear; None hears nothing."""
        with self._lock:
            self._ear = ear

    def stop(self) -> None:
        """Stop the source and wait for the thread to end; that is no trouble."""
        self._stopping = True
        self._source.close()
        if self._thread is not threading.current_thread():
            self._thread.join(timeout=2.0)
        self._decoder.shutdown(wait=False, cancel_futures=True)

    def _listen(self) -> None:
        try:
            self._drain(self._source.frames())
        except Exception as error:  # noqa: BLE001 (whatever ends the ear must reach the screen)
            self.ended = True
            if not self._stopping:
                self._on_trouble(notice("ear-stopped", reason=str(error)))
        else:
            self.ended = True
            if not self._stopping:
                self._on_trouble(notice("microphone-ended"))

    def _drain(self, frames: Iterator[NDArray[np.float32]]) -> None:
        turn = Turn(Gate(self._clock(), self._beside), self._begin, self._what_may_be_heard)
        was_deaf = False
        for raw in frames:
            self._meter.take(raw)
            frame = self._without_echo(raw)
            with self._lock:
                take = self._take
                nothing_hears = (
                    take is not None
                    or self._ear is None
                    or (self._deaf_until == float("inf") and not self._hears_through_prompt())
                )
                deaf = self._clock() < self._deaf_until
            if take is not None:
                take(raw)
            if nothing_hears:
                turn.reset()
                turn.gate.skip()
                continue
            if was_deaf and not deaf and turn.gate.silent_s >= FIRST_SILENCE_S:
                turn.reset()
            was_deaf = deaf
            if self._source.live:
                # This frame was spoken before those that pile up behind it while the ear decodes.
                turn.gate.anchor(self._clock() - (self._source.waiting() + 1) * FRAME_S)
            self._tell(turn.feed, frame)
        self._tell(turn.flush)

    def _without_echo(self, frame: NDArray[np.float32]) -> NDArray[np.float32]:
        if self._echo is None or self._beside is None:
            return frame
        cleaned = self._echo.clean(frame, self._source.waiting())
        self._beside.listen_to(cleaned.for_gate)
        return cleaned.for_ear

    def _hears_through_prompt(self) -> bool:
        return self._echo is not None and self._echo.settled and self._prompt_until == float("inf")

    def _what_may_be_heard(self) -> Meanings:
        with self._lock:
            return self._meanings

    def _begin(self, utterance: Utterance) -> Future[Heard] | None:
        """Begin to decode in the decoder's thread.

        With nothing allowed nothing is decoded: talk beside an idle kiosk is nobody's business.
        """
        with self._lock:
            ear, allowed = self._ear, tuple(self._meanings)
        if ear is None or not allowed or not self._may_be(utterance):
            return None
        return self._decoder.submit(_heard_by, ear, utterance, allowed)

    def _may_be(self, utterance: Utterance) -> frozenset[str | None]:
        """Return what the speech may have been, by when it began; None stands for anything else.

        Nothing, if it began before this question could be answered. Into a prompt, what may cut it
        short.
        """
        began = utterance.began_at
        with self._lock:
            if began < self._asked_at + FIRST_MOMENT_S:
                return frozenset()
            if began >= self._deaf_until:
                return frozenset([*self._meanings, None])
            into_prompt = self._prompt_from + FIRST_MOMENT_S <= began < self._prompt_until
            if self._echo is None or not into_prompt:
                return frozenset()
            return frozenset(cuts(self._meanings, self._prompt))

    def _tell(
        self,
        heard_of: Callable[..., tuple[Utterance, Heard] | None],
        *frame: NDArray[np.float32],
    ) -> None:
        """Tell what was heard, unless the question has changed while it was said or decoded."""
        try:
            found = heard_of(*frame)
        except EarFailed as error:
            self._on_trouble(str(error))
            return
        if found is not None and found[1].phrase in self._may_be(found[0]):
            self._on_heard(found[1])


def _heard_by(ear: Ear, utterance: Utterance, allowed: Sequence[str]) -> Heard:
    try:
        return ear.hear(utterance, allowed)
    except Exception as error:
        raise EarFailed(notice("ear-failed-once", ear=ear.name, reason=str(error))) from error

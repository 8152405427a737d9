"""A source, the gate and an ear in one thread: sound goes in, what was heard comes out."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterable, Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import Ear, Heard, Utterance
from kiosk.listening.endpoint import FRAME_S, Gate
from kiosk.listening.sources import Source

TAIL_S = 0.3
"""Deafness after the kiosk has spoken: its last syllable is still in the room and the buffers."""


def hear_frames(
    frames: Iterable[NDArray[np.float32]], ear: Ear, allowed: Sequence[str]
) -> list[Heard]:
    """Return what an ear makes of each utterance in a finite stream of 512-sample frames."""
    gate = Gate()
    found = [ear.hear(one, allowed) for frame in frames if (one := gate.feed(frame)) is not None]
    last = gate.flush()
    return found if last is None else [*found, ear.hear(last, allowed)]


class Listener:
    """Listens to a source until it ends. Callbacks come from its thread: they must only post."""

    def __init__(
        self,
        source: Source,
        ear: Ear | None,
        on_heard: Callable[[Heard], None],
        on_trouble: Callable[[str], None],
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        """Begin to listen. Without an ear, frames are dropped until one is given."""
        self._source = source
        self._ear = ear
        self._on_heard = on_heard
        self._on_trouble = on_trouble
        self._clock = clock
        self._allowed: tuple[str, ...] = ()
        self._deaf_until = 0.0
        self._stopping = False
        self._lock = threading.Lock()
        self._thread = threading.Thread(target=self._listen, name="listener", daemon=True)
        self._thread.start()

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases from now on, and no others."""
        with self._lock:
            self._allowed = tuple(phrases)

    def deafen(self) -> None:
        """Hear nothing until told otherwise."""
        with self._lock:
            self._deaf_until = float("inf")

    def undeafen(self, tail_s: float = TAIL_S) -> None:
        """Hear again, after a tail in which the last sound dies away."""
        with self._lock:
            self._deaf_until = self._clock() + tail_s

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

    def _deaf(self) -> bool:
        with self._lock:
            return self._ear is None or self._clock() < self._deaf_until

    def _listen(self) -> None:
        try:
            self._drain(self._source.frames())
        except Exception as error:  # noqa: BLE001 (whatever ends the ear must reach the screen)
            self._on_trouble(f"the ear stopped: {error}")
        else:
            if not self._stopping:
                self._on_trouble("the sound has ended: is the microphone still plugged in?")

    def _drain(self, frames: Iterator[NDArray[np.float32]]) -> None:
        gate = Gate(self._clock())
        for frame in frames:
            if self._deaf():
                gate.reset()
                gate.skip()
                continue
            if self._source.live:
                # This frame was spoken before those that pile up behind it while the ear decodes.
                gate.anchor(self._clock() - (self._source.waiting() + 1) * FRAME_S)
            utterance = gate.feed(frame)
            if utterance is not None:
                self._take(utterance)
        last = gate.flush()
        if last is not None:
            self._take(last)

    def _take(self, utterance: Utterance) -> None:
        """Hear one utterance; drop the answer if the question has changed in the meantime.

        With nothing allowed nothing is decoded: talk beside an idle kiosk is nobody's business.
        """
        with self._lock:
            ear, allowed = self._ear, self._allowed
        if ear is None or not allowed:
            return
        try:
            heard = ear.hear(utterance, allowed)
        except Exception as error:  # noqa: BLE001 (one bad utterance must not end the listening)
            self._on_trouble(f"the ear {ear.name} failed on an utterance: {error}")
            return
        with self._lock:
            stale = allowed != self._allowed or self._clock() < self._deaf_until
        if not stale:
            self._on_heard(heard)

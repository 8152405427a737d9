"""A speaker's turn: decoded in its first short silence, acted on as soon as that is safe."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Final, Protocol

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import Heard, Utterance
from kiosk.listening.endpoint import Gate
from kiosk.listening.settled import settled

CERTAIN_S: Final = 0.22
"""Silence after which a certain answer acts. An answer that more words could turn into another one
waits for the gate's whole silence."""

Meanings = Mapping[str, object]
"""Each phrase that may be heard, with what it stands for; two phrases may stand for the same."""


def meanings_of(phrases: Iterable[str]) -> Meanings:
    """Return a copy of a mapping; phrases alone stand each for itself."""
    return dict(phrases) if isinstance(phrases, Mapping) else {one: one for one in phrases}


class Decoding(Protocol):
    """A decoding that was begun; `concurrent.futures.Future` is one."""

    def done(self) -> bool:
        """Return whether `result` would come at once."""
        ...

    def cancel(self) -> bool:
        """Do not begin, if it has not begun."""
        ...

    def result(self) -> Heard:
        """Wait for the end and return it, or raise what the ear raised."""
        ...


Begin = Callable[[Utterance], Decoding | None]
"""Begins to decode what was said so far; None when nobody wants to know."""


def certain(heard: Heard, meanings: Meanings) -> bool:
    """Tell whether nothing that may still be said could turn an answer into another one."""
    if heard.phrase is None:
        return False
    mine = meanings.get(heard.phrase)
    start = " ".join(heard.phrase.lower().split())
    return not any(
        meaning != mine and " ".join(other.lower().split()).startswith(start)
        for other, meaning in meanings.items()
    )


class Turn:
    """Feed it frames; it returns what was heard when the speaker has said it."""

    def __init__(self, gate: Gate, begin: Begin, meanings: Callable[[], Meanings]) -> None:
        """Take a gate, what begins a decoding, and what tells what may be heard at the moment."""
        self.gate = gate
        self._begin = begin
        self._meanings = meanings
        self._begun: Decoding | None = None
        self._said: Utterance | None = None

    def feed(self, frame: NDArray[np.float32]) -> tuple[Utterance, Heard] | None:
        """Take one frame of 512 samples; return what was heard if it is to be acted on now."""
        utterance = self.gate.feed(frame)
        if utterance is not None:
            return self._whole(utterance)
        silent_s = self.gate.silent_s
        if self.gate.pausing:
            self._said = self.gate.so_far()
            self._begun = self._begin(self._said)
        elif not silent_s:
            self.forget()
        if self._begun is None or self._said is None or silent_s < CERTAIN_S:
            return None
        return self._certain(self._said, self._begun)

    def _certain(self, said: Utterance, begun: Decoding) -> tuple[Utterance, Heard] | None:
        """Return what was heard if it is known by now and may act; then the turn is over."""
        if not begun.done():
            return None
        try:
            heard = begun.result()
        except Exception:
            self.reset()
            raise
        meanings = self._meanings()
        heard = settled(heard, meanings)
        if not certain(heard, meanings):
            return None
        self.reset()
        return said, heard

    def flush(self) -> tuple[Utterance, Heard] | None:
        """End the stream: return what was heard of the utterance still open, if there is one."""
        utterance = self.gate.flush()
        return None if utterance is None else self._whole(utterance)

    def forget(self) -> None:
        """Drop a decoding that was begun: the speaker goes on."""
        if self._begun is not None:
            self._begun.cancel()
        self._begun = self._said = None

    def reset(self) -> None:
        """Forget what was being heard; time goes on."""
        self.forget()
        self.gate.reset()

    def _whole(self, utterance: Utterance) -> tuple[Utterance, Heard] | None:
        begun = self._begun if self._begun is not None else self._begin(utterance)
        self._begun = self._said = None
        return None if begun is None else (utterance, settled(begun.result(), self._meanings()))

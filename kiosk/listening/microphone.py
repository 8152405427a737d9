"""The microphone: 512-sample frames from the default input, or a plain reason why there is none."""

from __future__ import annotations

import contextlib
import queue
from collections.abc import Generator, Iterator
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from kiosk.in_time import opened_in_time
from kiosk.languages.notice import Told
from kiosk.languages.words import notice
from kiosk.listening.ear import RATE
from kiosk.listening.endpoint import FRAME
from kiosk.speaking.quiet_alsa import quiet_alsa

OPEN_LIMIT_S: Final = 5.0
"""A sound server that does not answer must not keep the kiosk from starting."""
MOST_WAITING: Final = 200
"""Frames kept while the ear decodes: six seconds. What comes on top of them is dropped."""
SILENT_LIMIT_S: Final = 3.0
"""A device that gives no frame for so long is gone."""


FIRST_LIMIT_S: Final = 10.0
"""The first frame may be late: a sound server of two cores took 2 s for it."""


class NoMicrophone(Told):
    """Nothing can be heard here; the message is the plain reason."""


class Microphone:
    """A live source. Frames are put on a queue by the device's thread and taken by the listener."""

    live = True

    def __init__(self) -> None:
        """Open the default input. Raises NoMicrophone; may block for long: see open_microphone."""
        try:
            import miniaudio
        except ImportError as error:
            raise NoMicrophone(notice("microphone-no-library")) from error
        quiet_alsa()
        self._frames: queue.Queue[NDArray[np.float32] | None] = queue.Queue(MOST_WAITING)
        self._rest = np.empty(0, dtype=np.float32)
        self._closed = False
        try:
            self._device: Any = miniaudio.CaptureDevice(
                input_format=miniaudio.SampleFormat.FLOAT32,
                nchannels=1,
                sample_rate=RATE,
                buffersize_msec=32,
                app_name="kiosk",
            )
            if self._device.backend == "Null":
                self._device.close()
                raise NoMicrophone(notice("sound-no-library"))
            taking = self._taking()
            next(taking)
            self._device.start(taking)
        except miniaudio.MiniaudioError as error:
            raise NoMicrophone(notice("microphone-none", reason=str(error.args[0]))) from error

    def _taking(self) -> Generator[None, bytes, None]:
        """Take what the device gives, on its thread, and cut it into frames."""
        while True:
            data = yield
            samples = np.frombuffer(data, dtype=np.float32)
            self._rest = np.concatenate([self._rest, samples])
            while len(self._rest) >= FRAME:
                frame, self._rest = self._rest[:FRAME].copy(), self._rest[FRAME:]
                try:
                    self._frames.put_nowait(frame)
                except queue.Full:
                    continue

    def frames(self) -> Iterator[NDArray[np.float32]]:
        """Yield frames until closed, or until the device gives none for some seconds."""
        limit_s = FIRST_LIMIT_S
        while not self._closed:
            try:
                frame = self._frames.get(timeout=limit_s)
            except queue.Empty:
                return
            if frame is None:
                return
            limit_s = SILENT_LIMIT_S
            yield frame

    def waiting(self) -> int:
        """Return how many frames lie on the queue."""
        return self._frames.qsize()

    def close(self) -> None:
        """Give the device back; `frames` ends."""
        if self._closed:
            return
        self._closed = True
        with contextlib.suppress(queue.Full):
            self._frames.put_nowait(None)
        self._device.close()


def open_microphone(limit_s: float = OPEN_LIMIT_S) -> Microphone:
    """Open the microphone within a time limit. Raises NoMicrophone."""
    found = opened_in_time(Microphone, limit_s, "open-microphone", NoMicrophone)
    if found is None:
        raise NoMicrophone(notice("microphone-no-answer", seconds=f"{limit_s:g}"))
    return found

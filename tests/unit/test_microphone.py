"""A microphone that cannot be had is a plain sentence, and soon."""

from __future__ import annotations

import sys
import threading

import pytest

from kiosk.listening import microphone
from kiosk.listening.microphone import NoMicrophone, open_microphone


def test_a_machine_without_the_sound_library_says_so(monkeypatch):
    monkeypatch.setitem(sys.modules, "miniaudio", None)
    with pytest.raises(NoMicrophone, match="miniaudio is not installed"):
        open_microphone()


class Late:
    """A device that opens only when it is let go."""

    def __init__(self) -> None:
        LET_GO.wait(20)

    def close(self) -> None:
        CLOSED.set()


LET_GO, CLOSED = threading.Event(), threading.Event()


def test_a_sound_system_that_does_not_answer_is_given_up_and_closed_when_it_does(monkeypatch):
    monkeypatch.setattr(microphone, "Microphone", Late)
    with pytest.raises(NoMicrophone, match="did not answer"):
        open_microphone(limit_s=0.01)
    LET_GO.set()
    assert CLOSED.wait(20)

"""A voice that is announced tells what it says, and when nothing is said any more."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from kiosk.speaking.announced import AnnouncedVoice


class Slow:
    """A voice whose texts end when they are told to."""

    notice = "no sound device"

    def __init__(self) -> None:
        self.ends: list[Callable[[], None]] = []
        self.done: list[object] = []

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        self.done.append(("say", text, language))
        self.ends.append(on_end)

    def prepare(self, texts: Iterable[str], language: str) -> None:
        self.done.append(("prepare", *texts, language))

    def hush(self) -> None:
        self.done.append("hush")

    def close(self) -> None:
        self.done.append("close")


def test_a_text_is_told_before_it_is_said_and_its_end_before_the_listener_opens():
    order: list[str] = []
    slow = Slow()
    voice = AnnouncedVoice(slow, lambda text: order.append(f"told {text!r}"))
    voice.say("Open the door.", "en", lambda: order.append("ended"))
    slow.ends[0]()
    assert order == ["told 'Open the door.'", "told ''", "ended"]


def test_a_text_that_another_one_cuts_off_does_not_end_the_other():
    told: list[str] = []
    slow, ended = Slow(), []
    voice = AnnouncedVoice(slow, told.append)
    voice.say("First.", "en", lambda: ended.append("first"))
    voice.say("Second.", "en", lambda: ended.append("second"))
    slow.ends[0]()
    assert (told, ended) == (["First.", "Second."], ["first"])
    slow.ends[1]()
    assert (told, ended) == (["First.", "Second.", ""], ["first", "second"])


def test_all_else_goes_to_the_voice():
    slow = Slow()
    voice = AnnouncedVoice(slow, lambda _text: None)
    voice.prepare(["a", "b"], "ko")
    voice.hush()
    voice.close()
    assert slow.done == [("prepare", "a", "b", "ko"), "hush", "close"]
    assert voice.notice == "no sound device"

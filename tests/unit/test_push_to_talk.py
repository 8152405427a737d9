"""Push-to-talk: the ear is deaf but after a press."""

from __future__ import annotations

import pytest

from kiosk.listening.ear import NOTHING, Heard
from kiosk.opening import behind_key
from kiosk.procedure import site
from kiosk.push_to_talk import OPEN_S, PushToTalk


class Ear:
    notice = ""

    def __init__(self) -> None:
        self.deaf = False
        self.at_once = False
        self.allowed: tuple[str, ...] = ()
        self.speaker = ("", "")

    def allow(self, phrases) -> None:
        self.allowed = tuple(phrases)

    def deafen(self) -> None:
        self.deaf = True

    def undeafen(self, *, at_once: bool = False) -> None:
        self.deaf, self.at_once = False, at_once

    def speak(self, language: str, worker: str = "") -> None:
        self.speaker = (language, worker)


class Scene:
    def __init__(self) -> None:
        self.ear = Ear()
        self.time = 100.0
        self.told: list[Heard] = []
        self.changes = 0
        self.key = PushToTalk(self._open, self.told.append, self._changed, lambda: self.time)
        self.key.allow(("next", "yes"))

    def _open(self, tell):
        self.tell = tell
        return self.ear

    def _changed(self) -> None:
        self.changes += 1

    def hear(self, phrase: str | None) -> None:
        why = "" if phrase else NOTHING
        self.tell(Heard(phrase or "", phrase, 0.9, "ear", why, 0.1, 0.0))


@pytest.fixture
def scene() -> Scene:
    return Scene()


def test_the_ear_is_deaf_until_the_key_is_pressed(scene: Scene):
    assert scene.ear.deaf
    assert not scene.key.open
    scene.key.press()
    assert not scene.ear.deaf
    assert scene.ear.at_once
    assert scene.key.open
    assert scene.changes == 1


def test_a_second_press_closes_it(scene: Scene):
    scene.key.press()
    scene.key.press()
    assert scene.ear.deaf
    assert not scene.key.open


def test_what_is_understood_closes_it_and_is_told(scene: Scene):
    scene.key.press()
    scene.hear("next")
    assert scene.ear.deaf
    assert [one.phrase for one in scene.told] == ["next"]


def test_what_is_not_understood_leaves_it_open_and_is_told(scene: Scene):
    scene.key.press()
    scene.hear(None)
    assert not scene.ear.deaf
    assert [one.phrase for one in scene.told] == [None]


def test_it_closes_after_some_seconds(scene: Scene):
    scene.key.press()
    scene.time += OPEN_S - 0.1
    scene.key.tick()
    assert not scene.ear.deaf
    scene.time += 0.2
    scene.key.tick()
    assert scene.ear.deaf
    assert scene.changes == 2


def test_the_end_of_a_sentence_does_not_open_it(scene: Scene):
    scene.key.deafen()
    scene.key.undeafen()
    assert scene.ear.deaf


def test_a_press_while_the_kiosk_speaks_counts_when_it_falls_silent(scene: Scene):
    scene.key.deafen()
    scene.key.press()
    assert scene.ear.deaf
    scene.time += OPEN_S + 1
    scene.key.tick()
    scene.key.undeafen()
    assert not scene.ear.deaf
    assert not scene.ear.at_once
    scene.time += OPEN_S - 0.1
    scene.key.tick()
    assert not scene.ear.deaf


def test_a_walk_that_is_left_shuts_it(scene: Scene):
    scene.key.press()
    scene.key.allow(())
    assert scene.ear.deaf
    assert not scene.key.open


def test_the_rest_is_passed_on(scene: Scene):
    scene.key.speak("ko", "p1")
    assert scene.ear.speaker == ("ko", "p1")
    assert scene.ear.allowed == ("next", "yes")
    scene.ear.notice = "no microphone"
    assert scene.key.notice == "no microphone"


def test_the_site_decides_whether_there_is_a_key():
    ear = Ear()
    found = behind_key(site.Hearing(), lambda _tell: ear, print, lambda: None)
    assert found is ear
    wanted = site.Hearing(push_to_talk=True, key="f9")
    found = behind_key(wanted, lambda _tell: ear, print, lambda: None)
    assert isinstance(found, PushToTalk)
    assert found.key == "f9"
    assert ear.deaf

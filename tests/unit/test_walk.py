"""A session with its voice and its ear: what is said, what may be heard, what is shown."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from decimal import Decimal

import pytest

from kiosk.engine import commands as c
from kiosk.engine.state import Mode, Stage
from kiosk.journal.store import Journal, JournalFailed
from kiosk.listening.ear import Heard
from kiosk.procedure.site import Machine, Person, Sanitizer, Site
from kiosk.session import Session
from kiosk.walk import ChooseLanguage, NeverMind, Walk
from tests.plans import EVERY_KIND, TEMPERATURE, hold, plan, step
from tests.screens.scene import FakeHearing, StillClock

ANA = Person(id="ana", name="Ana", language="en")
MINA = Person(id="mina", name="Mina", language="ko")
SITE = Site(
    name="Invented", time_zone="Etc/UTC", opens="10:00", closes="22:00", languages=("en", "ko"),
    limits="x", machines=(Machine(id="m1", name="One", kind="twin"),), people=(ANA, MINA),
    sanitizer=Sanitizer(
        name="x", available_chlorine=Decimal("0.5"), packet_grams=Decimal(1), target=Decimal(100)
    ),
)  # fmt: skip
TOUCH = c.Evidence(c.Channel.TOUCH)


class Voice:
    """Remembers what it was told to say; ends when the test says so."""

    notice = ""

    def __init__(self) -> None:
        self.said: list[str] = []
        self.ends: list[Callable[[], None]] = []

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        self.said.append(text)
        self.ends.append(on_end)

    def prepare(self, texts: Iterable[str], language: str) -> None: ...

    def hush(self) -> None: ...

    def close(self) -> None: ...


class Scene:
    def __init__(self, folder, of=EVERY_KIND) -> None:
        self.journal = Journal(folder)
        self.clock = StillClock()
        self.voice, self.hearing = Voice(), FakeHearing()
        session = Session.fresh(of, self.journal, self.clock)
        self.changes = 0
        self.walk = Walk(session, SITE, self.clock, self.voice, self.hearing, self.changed)
        self.walk.begin(ANA)

    def changed(self) -> None:
        self.changes += 1

    @property
    def state(self):
        return self.walk.session.state

    def touch(self, *acts: c.Act) -> None:
        for act in acts:
            self.walk.do(act, TOUCH)

    def hear(self, text: str, *, phrase: str | None = "same") -> None:
        found = text if phrase == "same" else phrase
        why = "" if found else "doubtful"
        self.walk.hear(Heard(text, found, 0.9, "test-ear", why, 0.1, 0.0))


@pytest.fixture
def scene(tmp_path):
    made = Scene(tmp_path)
    yield made
    made.journal.close()


def test_a_prompt_is_said_and_the_ear_is_deaf_until_it_ends(scene):
    assert scene.voice.said[-1] == "Do hands."
    assert scene.hearing.deaf
    scene.voice.ends[-1]()
    assert not scene.hearing.deaf


def test_the_ear_is_told_whose_words_it_hears(scene):
    assert scene.hearing.worker == scene.state.worker != ""
    scene.touch(c.HandOver("somebody else", scene.state.language))
    assert scene.hearing.worker == scene.state.worker == "somebody else"


def test_a_prompt_that_was_cut_off_does_not_open_the_ear_while_the_next_is_said(scene):
    scene.touch(c.Confirm())
    scene.voice.ends[0]()
    assert scene.hearing.deaf
    scene.voice.ends[-1]()
    assert not scene.hearing.deaf


def test_a_spoken_command_is_journaled_with_what_was_heard(scene):
    scene.hear("next")
    event = next(
        one for one in scene.journal.events(scene.walk.session.id)
        if type(one.fact).__name__ == "StepConfirmed"
    )  # fmt: skip
    assert event.by == c.Evidence(c.Channel.VOICE, "next", 0.9, "test-ear")


def test_only_what_can_be_done_now_may_be_heard(scene):
    assert "next" in scene.hearing.allowed
    assert "yes" not in scene.hearing.allowed
    before = scene.state
    scene.hear("yes")
    assert scene.state is before


def test_the_ear_hears_the_challenge_phrase_only_at_its_hold(tmp_path):
    scene = Scene(tmp_path, plan(step("first"), hold("isolate", "power isolated")))
    assert "power isolated now" not in scene.hearing.allowed
    scene.hear("next")
    assert "power isolated now" in scene.hearing.allowed
    assert "next" not in scene.hearing.allowed
    scene.hear("power isolated now")
    assert scene.state.stage is Stage.READ_BACK
    assert "power isolated now" not in scene.hearing.allowed
    assert "I heard: power isolated now" in scene.voice.said[-1]


def test_what_was_not_understood_is_remembered_and_moves_nothing(scene):
    before = scene.state
    scene.hear("mumble", phrase=None)
    assert scene.state is before
    assert scene.walk.heard is not None
    assert scene.walk.heard.why == "doubtful"


def test_a_second_doubtful_hearing_in_a_row_asks_for_touch(scene):
    scene.hear("mumble", phrase=None)
    said = len(scene.voice.said)
    scene.hear("mumble", phrase=None)
    assert scene.walk.notice == "I am not sure what you said. Press it on the screen instead."
    assert scene.voice.said[said:] == [scene.walk.notice]
    scene.hear("mumble", phrase=None)
    assert len(scene.voice.said) == said + 1


def test_doubts_of_two_questions_are_not_added_up(scene):
    scene.hear("mumble", phrase=None)
    scene.touch(c.SayAgain())
    scene.hear("mumble", phrase=None)
    assert scene.walk.notice == ""


def test_numbers_of_the_closed_list_may_be_heard(tmp_path):
    scene = Scene(tmp_path, plan(step("t", TEMPERATURE)))
    assert "four point five" in scene.hearing.allowed
    scene.hear("four point five")
    assert scene.state.pending == "4.5"
    assert "4.5 degrees Celsius" in scene.voice.said[-1]


def test_a_refusal_is_said_and_shown(scene):
    scene.touch(c.Confirm(), c.Confirm(), c.Confirm(), c.No(), c.Confirm(), c.Yes())
    assert scene.state.step == "soak"
    scene.touch(c.Confirm())
    assert scene.walk.notice == "Not yet. 60 seconds left."
    assert scene.voice.said[-1] == scene.walk.notice
    scene.touch(c.SayAgain())
    assert scene.walk.notice == ""


def test_the_clock_ends_a_wait(scene):
    scene.touch(c.Confirm(), c.Confirm(), c.Confirm(), c.No(), c.Confirm(), c.Yes())
    scene.walk.tick()
    assert scene.state.stage is Stage.ASK
    scene.clock.seconds += 60
    scene.walk.tick()
    assert scene.state.stage is Stage.TIME_UP
    assert "The time is up" in scene.voice.said[-1]
    said = len(scene.voice.said)
    scene.walk.tick()
    assert len(scene.voice.said) == said


def test_the_language_can_be_changed_by_number_in_the_middle(scene):
    scene.hear("change language")
    assert [one.detail for one in scene.walk.options()] == ["English", "한국어", ""]
    scene.hear("number two")
    assert scene.state.language == "ko"
    assert scene.hearing.language == "ko"
    assert "완료" in scene.hearing.allowed


def test_a_question_of_the_walks_own_can_be_taken_back(scene):
    scene.touch()
    scene.walk.do(ChooseLanguage(), TOUCH)
    scene.walk.do(NeverMind(), TOUCH)
    assert scene.walk.lines() == ["Do hands."]


def test_a_hand_over_asks_who_and_goes_on_in_their_language(scene):
    scene.hear("take a break")
    scene.hear("someone else takes over")
    assert scene.walk.lines() == ["Who takes over?"]
    scene.hear("number one")
    assert (scene.state.worker, scene.state.language) == ("mina", "ko")
    assert scene.state.mode is Mode.HELD


def test_when_the_journal_cannot_be_written_nothing_moves_and_it_is_said(scene, monkeypatch):
    def full(session, events, after=None):
        raise JournalFailed("database or disk is full")

    before = scene.state
    monkeypatch.setattr(scene.journal, "append", full)
    scene.hear("next")
    assert scene.state is before
    assert "disk is full" in scene.walk.notice
    assert "could not be written" in scene.voice.said[-1]
    monkeypatch.undo()
    scene.hear("next")
    assert scene.state.step == "guards"


def test_taking_up_an_open_session_asks_to_continue(scene):
    session = Session(EVERY_KIND, scene.journal, scene.clock, scene.walk.session.id)
    walk = Walk(session, SITE, scene.clock, scene.voice, scene.hearing, scene.changed)
    walk.take_up()
    assert session.state.mode is Mode.HELD
    assert "continue" in scene.hearing.allowed
    assert "restarted" in scene.voice.said[-1]


def test_at_the_end_nothing_may_be_heard(tmp_path):
    scene = Scene(tmp_path, plan(step("only")))
    scene.hear("next")
    assert scene.state.mode is Mode.COMPLETE
    assert scene.hearing.allowed == ()
    assert scene.walk.options() == ()


class SuitingVoice(Voice):
    def __init__(self) -> None:
        super().__init__()
        self.suits: list[str] = []

    def suit(self, person: str) -> None:
        self.suits.append(person)


def test_the_voice_speaks_to_whoever_walks_now(scene):
    voice = scene.walk.intercom.voice = SuitingVoice()
    scene.touch(c.SayAgain())
    scene.touch(c.HandOver("mina", "ko"))
    assert (voice.suits[0], voice.suits[-1]) == ("ana", "mina")

"""The setup on the screen: from nothing to the first confirmed step, and every answer changed."""

from __future__ import annotations

import shutil
from contextlib import suppress
from decimal import Decimal
from pathlib import Path

import numpy as np
import pytest
from textual.worker import WorkerFailed

from kiosk import home
from kiosk.journal.shop_facts import PinSet
from kiosk.languages.words import words
from kiosk.listening.models import Missing
from kiosk.listening.sources import Samples
from kiosk.people.gate import COMMAND_LINE
from kiosk.procedure.load import load_library
from kiosk.procedure.site import Role, load_site
from kiosk.screens.setup_sound import Sound
from kiosk.screens.setup_typing import NumberPage
from kiosk.setup.check import check_site
from kiosk.setup.draft import DRAFT_FILE, Draft
from kiosk.setup.questions import Question
from kiosk.shipped import shipped
from kiosk.speaking.voice import SilentVoice
from tests.screens.scene import kiosk
from tests.screens.setup_scene import Setting, answer_all, find, setting_up

LIBRARY = load_library(shipped("procedures"))


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A data folder with the invented site in it."""
    shutil.copy(shipped("demo") / home.SITE_FILE, tmp_path / home.SITE_FILE)
    return tmp_path


async def sounded(it: Setting) -> None:
    """Wait until the trial of the sound has nothing to do any more."""
    await it.settle()
    while running := [one for one in it.app.workers if one.is_running]:
        for worker in running:
            with suppress(WorkerFailed):
                await worker.wait()
        await it.settle()


# From nothing to the first confirmed step.


async def test_from_an_empty_folder_to_the_first_confirmed_step_by_touch_alone(tmp_path):
    kept = []
    async with setting_up(tmp_path) as it:

        def seen(_: str) -> None:
            kept.append(len(Draft.of(tmp_path).answered))

        await answer_all(it, seen=seen)
        assert kept == sorted(kept)
        assert kept[-1] == len(Question)
        assert not (tmp_path / home.SITE_FILE).exists()
        await it.touch("it is right, write it")
        assert not (tmp_path / DRAFT_FILE).exists()
        await it.touch("yes, set it now")
        for _ in range(2):
            await it.touch(*"4729", "enter")
        assert PinSet("p1", COMMAND_LINE) in shop_facts(it)
        await it.touch("leave it out")
        assert it.app.return_value is True
    made = check_site(tmp_path / home.SITE_FILE, LIBRARY)
    assert made.sanitizer.available_chlorine == Decimal("0.554")
    assert [(one.id, one.role) for one in made.people] == [("p1", Role.SUPERVISOR)]
    assert made.closed_days == ("monday",)
    async with kiosk(tmp_path, library=LIBRARY, site=made) as it:
        await it.touch("W", "Day check", "Ana")
        await it.press("4", "enter", "y")
        assert it.state.step == "bucket"
        assert "StepConfirmed" in it.facts()


def shop_facts(it: Setting) -> list[object]:
    return [one.fact for one in it.journal.shop_events()]


async def test_it_is_taken_up_where_it_was_left(tmp_path):
    async with setting_up(tmp_path) as it:
        await it.touch("English", "a real shop")
        await it.write("Stand")
        await it.press("s")
        assert it.app.return_value is False
    async with setting_up(tmp_path) as it:
        assert "You go on where it was left" in it.words()
        assert "Time zone" in it.words()
        await it.touch("go back")
        assert it.app.screen.keyboard.text == "Stand"
        await it.press("escape", "escape")
        assert "✓ a real shop" not in it.labels()
        assert "✓ English" in it.labels()


async def test_a_row_of_enters_answers_nothing(tmp_path):
    async with setting_up(tmp_path) as it:
        await it.press("enter", "enter")
        await it.touch("English")
        await it.press("enter", "enter")
        assert "Is this a real shop" in it.words()
        await it.touch("practice")
        await it.press("enter")
        assert "Nothing was typed yet" in it.words()
        assert Draft.of(tmp_path).document.get("name") is None


async def test_a_real_keyboard_types_straight_in_any_script(tmp_path):
    async with setting_up(tmp_path) as it:
        await it.touch("한국어", "실제 가게")
        await it.write("꾸민 가게 s1")
        assert Draft.of(tmp_path).document.get("name") == "꾸민 가게 s1"


async def test_a_mistyped_figure_is_told_and_not_taken(site):
    async with setting_up(site) as it:
        for question, typed, told in (
            (Question.OPENS, "2460", "24:60 is no time of day"),
            (Question.CHLORINE, "554", "554 is no percent"),
            (Question.PACKET, "5000", "5000 grams cannot be right"),
            (Question.STRENGTH, "300", "100 parts per million to 200 parts per million"),
        ):
            it.app.flow.ask(question)
            await it.settle()
            await it.digits(typed)
            assert told in it.words()
            assert isinstance(it.app.screen, NumberPage)
            await it.press("escape")
        assert not Draft.of(site).changed


async def test_figures_that_give_no_dose_lead_back_to_the_label(site):
    async with setting_up(site) as it:
        it.app.flow.ask(Question.PACKET)
        await it.settle()
        await it.digits("20")
        await find(it, "Strength")
        await it.digits("100")
        assert "no dose can be worked out" in it.words()
        await it.touch("enter the figures again")
        assert "How much available chlorine" in it.words()


# What is there is changed.


async def test_one_answer_is_changed_and_the_comments_stay(site):
    before = (site / home.SITE_FILE).read_text(encoding="utf-8")
    async with setting_up(site) as it:
        assert it.labels()[-1] == "to the board"
        await find(it, "Closes")
        await it.digits("2200")
        assert "10:00" in it.words()
        assert "22:00" in it.words()
        await it.touch("it is right, write it")
        assert "The site is written" in it.words()
        await it.touch("to the board")
        assert it.app.return_value is True
    after = (site / home.SITE_FILE).read_text(encoding="utf-8")
    assert after == before.replace('"21:30"', '"22:00"')


async def test_machines_and_people_are_added_changed_and_taken_off(site):
    async with setting_up(site) as it:
        await find(it, "Machines")
        await it.touch("add a machine", "Twin gravity-fed soft-serve machine")
        await it.write("Third")
        await it.touch("lock", "soaking parts")
        await it.digits("3")
        await it.touch("they are right")
        await it.touch("Third", "name")
        await it.write("!")
        await it.touch("go back", "Counter single", "take off", "done")
        await find(it, "People")
        await it.touch("Dale Whitcomb", "role", "trainee", "go back", "add somebody")
        await it.write("Lee")
        await it.touch("Español", "worker")
        await find(it, "Rosa Beltrán")
        await it.touch("take off")
        await find(it, "done")
        await it.touch("it is right, write it")
    made = load_site(site / home.SITE_FILE)
    third = made.machine("m1")
    assert (third.name, dict(third.options)) == ("Third!", {"isolation": "lock"})
    assert dict(third.settings) == {"soak_time": "3 min"}
    assert [one.id for one in made.machines] == ["patio", "m1"]
    people = {one.name: one for one in made.people}
    assert people["Dale Whitcomb"].role is Role.TRAINEE
    assert (people["Lee"].language, people["Lee"].id) == ("es", "p9")
    assert "Rosa Beltrán" not in people


async def test_a_crew_without_a_supervisor_is_told_once_and_a_trainee_alone_always(site):
    text = (site / home.SITE_FILE).read_text(encoding="utf-8")
    (site / home.SITE_FILE).write_text(text.replace('"trainee"', '"worker"'), encoding="utf-8")
    async with setting_up(site) as it:
        await find(it, "People")
        await find(it, "Priya Nair")
        await it.touch("role", "worker", "go back", "done")
        assert "Nobody is a supervisor" in it.words()
        await it.touch("done")
        assert "These are the answers" in it.words()
        await find(it, "People")
        await find(it, "Priya Nair")
        await it.touch("role", "trainee", "go back", "done")
        assert "no supervisor to stand by" in it.words()
        await it.touch("done")
        assert "no supervisor to stand by" in it.words()


async def test_what_cannot_be_written_is_told_and_nothing_is(site):
    before = (site / home.SITE_FILE).read_text(encoding="utf-8")
    async with setting_up(site) as it:
        await find(it, "Machines")
        await it.touch("Counter single", "take off", "Patio twin", "take off", "go back")
        await it.touch("it is right, write it")
        assert "Machines: not answered yet" in it.words()
        await it.press("escape")
        assert "One thing must be mended first" in it.words()
    assert (site / home.SITE_FILE).read_text(encoding="utf-8") == before
    assert Draft.of(site).changed


async def test_a_language_that_somebody_speaks_and_the_last_open_day_stay(site):
    async with setting_up(site) as it:
        await find(it, "Languages of the crew")
        await find(it, "✓ Español")
        assert "Somebody on the list speaks it" in it.words()
        await it.press("escape")
        await find(it, "Closed days")
        for day in ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"):
            await it.touch(day)
        assert "at least the shop must open" in it.words()
        assert "Sunday" in it.labels()
        await it.touch("a date in every year", "December")
        await it.digits("32")
        assert "December has no day 32" in it.words()
        await it.touch("rub out")
        await it.digits("")
        assert "✓ 3 December" in it.labels()
    assert Draft.of(site).document.get("closed_days")[-1] == "12-03"


async def test_limits_with_which_nothing_can_be_walked_cannot_be_chosen(site):
    async with setting_up(site) as it:
        await find(it, "Limits")
        await find(it, "EU food hygiene, with Irish advice on cold")
        assert "By which limits" in it.words()
        await find(it, "California Retail Food Code")
        assert Draft.of(site).document.get("limits") == "california-retail-food-code"


# Sound.


class Speaks(SilentVoice):
    """A voice that can be heard, and ends at once."""

    def __init__(self) -> None:
        super().__init__("")
        self.said: list[str] = []

    def say(self, text: str, language: str, on_end) -> None:
        self.said.append(text)
        on_end()


async def test_without_speaker_and_microphone_it_is_said_and_the_setup_goes_on(site):
    async with setting_up(site) as it:
        await find(it, "Sound")
        await it.touch("try it")
        await sounded(it)
        assert "This is what came of it" in it.words()
        assert "Nothing can be said here" in it.words()
        assert "Nothing can be heard here" in it.words()
        await it.touch("go on")
        assert "These are the answers" in it.words()


async def test_a_device_that_breaks_is_told_and_the_setup_goes_on(site):
    def broken():
        raise OSError("the device is on fire")

    sound = Sound(Speaks, broken, lambda one: Missing(one, "no ear"))
    async with setting_up(site, sound=sound) as it:
        await find(it, "Sound")
        await it.touch("try it")
        await sounded(it)
        assert "Did you hear the sentence well?" in it.words()
        await it.touch("no")
        await sounded(it)
        assert "the device is on fire" in it.words()
        assert "Turn the loudspeaker up" in it.words()
        await it.touch("go on")
        assert "These are the answers" in it.words()


async def test_a_sentence_is_said_and_silence_is_told(site):
    voice = Speaks()
    quiet = np.zeros(16_000 * 10, dtype=np.float32)
    sound = Sound(lambda: voice, lambda: Samples(quiet), lambda one: Missing(one, "no ear"))
    async with setting_up(site, sound=sound) as it:
        await find(it, "Sound")
        await it.touch("try it")
        await sounded(it)
        assert "Did you hear the sentence well?" in it.words()
        assert voice.said == [words("en").say("setup-sound-sentence")]
        await it.touch("yes")
        await sounded(it)
        assert "Nothing was heard" in it.words()
        assert "The loudspeaker is loud enough" in it.words()

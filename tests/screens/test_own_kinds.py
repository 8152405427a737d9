"""The screens with machine kinds of the site's own: set up, chosen, walked, refused, reviewed."""

from __future__ import annotations

import shutil
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from kiosk import home
from kiosk.checking.own_kinds import library_of
from kiosk.engine import commands as c
from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.own_kinds import OWN
from kiosk.procedure.site import Role, load_site
from kiosk.setup.copy_kind import copy_kind
from kiosk.setup.questions import Question
from kiosk.shipped import shipped
from kiosk.shop import Shop
from tests.own_kind import EVENING, NAME, own_kind
from tests.screens.review_scene import enter
from tests.screens.scene import StillClock, kiosk
from tests.screens.setup_scene import Setting, answer_all, find, setting_up
from tests.screens.test_setup_looks import lost

HOLD = EVENING[EVENING.index("      - id: guards") : EVENING.index("      - id: run")]
TITLE = "Counter machine (invented)"


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A data folder with the invented site in it."""
    shutil.copy(shipped("demo") / home.SITE_FILE, tmp_path / home.SITE_FILE)
    return tmp_path


def edited(file: Path, old: str, new: str) -> None:
    text = file.read_text(encoding="utf-8")
    assert text.count(old) == 1
    file.write_text(text.replace(old, new), encoding="utf-8")


async def test_a_kind_is_copied_edited_set_up_and_its_first_step_is_walked(tmp_path):
    shipped_alone = load_library(shipped("procedures"))
    copy_kind(shipped_alone, tmp_path, "single-pump", NAME, date(2026, 11, 26))
    own = tmp_path / OWN
    edited(
        own / "machines" / f"{NAME}.yaml", "en: Single pump-fed soft-serve machine", f"en: {TITLE}"
    )
    evening = own / f"close-{NAME}.yaml"
    edited(evening, "Wash your hands and forearms with soap and warm water for {time}.",
           "Wash up to the elbows with soap and warm water for {time}.")  # fmt: skip
    found = library_of(tmp_path, ("en",))
    assert found.faults == ()
    async with setting_up(tmp_path, library=found) as it:
        await answer_all(it, kind=NAME)
        await it.touch("it is right, write it")
        await it.settle()
        assert "needs a PIN" in it.words()
    made = load_site(tmp_path / home.SITE_FILE)
    assert [one.kind for one in made.machines] == [NAME]
    assert made.languages == ("en",)
    async with kiosk(tmp_path, library=library_of(tmp_path, made.languages), site=made) as it:
        assert TITLE in it.words()
        await it.touch("W", "Evening breakdown", "Ana")
        assert "Wash up to the elbows with soap and warm water for 20 seconds." in it.words()
        await it.pass_time(21)
        await it.say(c.Confirm())
        assert it.state.step == "gloves"
        digest = it.walk.session.plan.digest
        assert "Wash up to the elbows" in str(it.app.shop.journal.text(digest))


async def adding(it: Setting) -> None:
    await find(it, "Machines")
    await find(it, "add a machine")


async def test_a_spoilt_kind_is_shown_with_its_reason_and_cannot_be_chosen(site):
    own_kind(site, close=(HOLD, ""))
    async with setting_up(site, (100, 30), library=library_of(site, ())) as it:
        await adding(it)
        own, why = it.target(TITLE).face.detail.split("\n")
        assert own == "this shop's own: counter-pump"
        assert why.startswith("It cannot be used before it is mended")
        assert "close-counter-pump.yaml:" in why
        assert "it requires 'guards on'" in why
        assert lost(it) == []
        await find(it, TITLE)
        assert "Which kind of machine is it?" in it.words()
        await it.touch("Single pump-fed soft-serve machine")
        assert "What is the machine called" in it.words()


async def test_a_kind_of_which_nothing_can_be_read_is_shown_by_its_id(site):
    own_kind(site, machines=("hoppers: 1", "hoppers: many"))
    async with setting_up(site, (100, 30), library=library_of(site, ())) as it:
        await adding(it)
        assert "counter-pump.yaml:3: 'many' is not a number" in it.target(NAME).face.detail
        await find(it, NAME)
        assert "Which kind of machine is it?" in it.words()


@pytest.mark.parametrize("language", languages())
async def test_own_kinds_are_read_whole_on_the_smallest_screen(site, language):
    own_kind(site)
    own_kind(site, machines=("hoppers: 1", "hoppers: many"))
    spoilt = library_of(site, ())
    async with setting_up(site, (60, 18), library=spoilt) as it:
        it.app.flow.draft.language = language
        it.app.flow.ask(Question.MACHINES)
        await it.settle()
        await find(it, words(language).say("setup-add-machine"))
        more = words(language).say("more")
        for _ in range(3):
            assert lost(it) == []
            if more in it.labels():
                await it.touch(more)


async def test_a_machine_is_made_one_of_another_kind(site):
    own_kind(site)
    text = (site / home.SITE_FILE).read_text(encoding="utf-8")
    english = library_of(site, ())
    before = load_site(site / home.SITE_FILE).machine("patio")
    assert before.kind == "twin-gravity"
    async with setting_up(site, (100, 30), library=english, library_of=lambda _: english) as it:
        await find(it, "Machines")
        await find(it, "Patio twin")
        await it.touch("kind of machine")
        await find(it, TITLE)
        assert "are these amounts and times right?" in it.words()
        await it.touch("they are right", "done")
        await find(it, "it is right, write it")
        await it.settle()
        assert "The site is written" in it.words()
    made = load_site(site / home.SITE_FILE).machine("patio")
    assert (made.kind, made.name) == (NAME, before.name)
    assert (dict(made.options), dict(made.settings)) == ({}, {})
    assert text != (site / home.SITE_FILE).read_text(encoding="utf-8")


async def test_what_a_kind_lacks_in_a_language_of_the_crew_is_told_before_it_is_written(site):
    own_kind(site)
    edited(site / home.SITE_FILE, 'kind = "twin-gravity"', f'kind = "{NAME}"')
    before = (site / home.SITE_FILE).read_text(encoding="utf-8")

    def judged(made) -> Library:
        return library_of(site, tuple(one for one in made.languages if one != "ko"))

    async with setting_up(
        site, (100, 30), library=library_of(site, ()), library_of=judged
    ) as it:  # fmt: skip
        await find(it, "Closes")
        await it.digits("2200")
        await it.touch("it is right, write it")
        await it.settle()
        assert "the sentence is not there in: es, pt, vi, zh" in it.words()
    assert (site / home.SITE_FILE).read_text(encoding="utf-8") == before


async def test_a_machine_whose_kind_is_gone_is_told_in_the_readers_language(site):
    edited(site / home.SITE_FILE, 'kind = "twin-gravity"', 'kind = "gone"')
    async with setting_up(site) as it:
        it.app.flow.draft.language = "ko"
        it.say = words("ko").say
        it.app.screen.draw()
        await find(it, it.say("setup-about-closes"))
        await it.digits("2200")
        await it.touch(it.say("setup-write"))
        name = load_site(site / home.SITE_FILE).machine("patio").name
        assert it.say("setup-kind-gone", who=name, kind="gone") in it.words()


# When its files are gone.


async def test_a_session_is_reviewed_after_its_files_are_gone(site):
    own_kind(site)
    edited(site / home.SITE_FILE, 'kind = "twin-gravity"', f'kind = "{NAME}"')
    made = load_site(site / home.SITE_FILE)
    worker = next(one for one in made.people if one.role is Role.WORKER)
    with closing(Journal(site)) as journal:
        shop = Shop(made, library_of(site, ()), journal, StillClock(), site)
        session = shop.fresh("patio", f"check-{NAME}")
        for act in (c.Start(worker.id, "en"), c.Confirm()):
            assert session.do(act, c.Evidence(c.Channel.TOUCH)).refusal is None
    shutil.rmtree(site / OWN)
    async with kiosk(site, (100, 30), library=library_of(site, ()), site=made) as it:
        assert "No procedure can be walked on it." in it.words()
        await enter(it)
        await it.touch(f"{worker.name} · Patio twin")
        assert "Patio twin · Day check" in it.words()
        assert "Look at the brushes. They hang clean and dry." in it.words()

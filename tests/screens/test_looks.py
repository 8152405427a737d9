"""How the screens look: contrast, the size of targets, and that no sentence is cut off."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from rich.cells import cell_len
from rich.color import ColorType

from kiosk.engine import commands as c
from kiosk.engine.prompt import prompt
from kiosk.engine.state import Mode, Stage, State
from kiosk.languages.words import languages, words
from kiosk.procedure.fit import fit
from kiosk.procedure.load import load_library
from kiosk.procedure.plan import Count, Hold, Measure, Plan, Repeat
from kiosk.procedure.site import load_site
from kiosk.screens import colours
from kiosk.screens.colours import DARK, LIGHT
from kiosk.screens.lettering import sentences
from kiosk.screens.question import Figures, Level, Sentence
from kiosk.shipped import shipped
from tests.screens.scene import NEXT, SITE, SMALL, YES, Kiosk, StillClock, kiosk

LEAST_CONTRAST = 7.0
"""WCAG 2.2, success criterion 1.4.6 (enhanced contrast)."""
BLOCKS = " ▀━─┃┏┓┗┛▁▂▃▄▅▆▇█"
LARGE = Sentence | Figures | Level
"""What is drawn with blocks and is read."""
HARDEST = 6
"""So many of the longest questions of each procedure are drawn."""
LEAST_WIDTH, LEAST_HEIGHT = 18, 3
SIZES = [(60, 18), (80, 24), (100, 30)]


def luminance(colour: tuple[int, int, int]) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    red, green, blue = (
        one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4
        for one in (part / 255 for part in colour)
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: tuple[int, int, int], other: tuple[int, int, int]) -> float:
    """Contrast ratio as WCAG 2.2 defines it, 1 to 21."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def rgb(colour: str) -> tuple[int, int, int]:
    red, green, blue = (int(colour[at : at + 2], 16) for at in (1, 3, 5))
    return red, green, blue


def test_the_formula_on_the_two_ends_and_on_a_grey():
    assert contrast((0, 0, 0), (255, 255, 255)) == pytest.approx(21)
    assert contrast((9, 9, 9), (9, 9, 9)) == 1
    assert contrast(rgb("#595959"), rgb("#FFFFFF")) == pytest.approx(7.0, abs=0.01)


@pytest.mark.parametrize("pairs", [DARK, LIGHT], ids=["dark", "light"])
def test_every_pair_of_the_palette_is_clear(pairs):
    poor = {
        name: round(contrast(rgb(pair.text), rgb(pair.ground)), 2)
        for name, pair in pairs.items()
        if contrast(rgb(pair.text), rgb(pair.ground)) < LEAST_CONTRAST
    }
    assert poor == {}


def test_the_two_themes_and_the_style_sheet_name_the_same_pairs():
    assert DARK.keys() == LIGHT.keys()
    sheet = (Path(colours.__file__).parent / "kiosk.tcss").read_text(encoding="utf-8")
    assert [name for name in DARK if f"${name}-ground" not in sheet] == []
    used = re.findall(r"(?:color|background)[\w-]*:\s*([^;}]+)", sheet)
    used += re.findall(r"border: heavy ([^;]+);", sheet)
    assert [one for one in used if one.strip("$").rpartition("-")[0] not in DARK] == []


def poor_texts(it: Kiosk) -> list[str]:
    """Texts on the screen that are drawn with too little contrast."""
    found = []
    large = [one.region for one in it.app.screen.query("*") if isinstance(one, LARGE)]
    for y, strip in enumerate(it.app.screen._compositor.render_strips()):
        x = 0
        for text, style, _ in strip:
            place, x = x, x + cell_len(text)
            is_large = any(one.contains(place, y) for one in large)
            if not text.strip(" " if is_large else BLOCKS):
                continue
            assert style.color.type is ColorType.TRUECOLOR
            ratio = contrast(tuple(style.color.triplet), tuple(style.bgcolor.triplet))
            if ratio < LEAST_CONTRAST or style.dim or style.reverse:
                found.append(f"{ratio:.2f} {text}")
    return found


async def poor_in_a_theme(it: Kiosk) -> list[str]:
    """Texts that are drawn with too little contrast in one of the themes; leaves the other on."""
    found = [f"{it.app.theme}: {one}" for one in poor_texts(it)]
    it.app.theme = "day" if it.app.theme == "night" else "night"
    await it.settle()
    return found + [f"{it.app.theme}: {one}" for one in poor_texts(it)]


def small_targets(it: Kiosk) -> list[str]:
    """Targets that are too small, or that reach out of the screen or into each other."""
    screen = it.app.screen.region
    shown = it.targets()
    found = [
        f"{one.face.label} {one.region}"
        for one in shown
        if one.region.width < LEAST_WIDTH
        or one.region.height < LEAST_HEIGHT
        or not screen.contains_region(one.region)
    ]
    for place, one in enumerate(shown):
        found += [
            f"{one.face.label} lies on {other.face.label}"
            for other in shown[place + 1 :]
            if one.region.overlaps(other.region)
        ]
    return found


async def every_screen(it: Kiosk):
    """Go through every kind of screen; yield its name."""
    yield "board"
    await it.touch("Window machine")
    yield "who"
    await it.touch("Ana")
    yield "hold"
    await it.touch(c.GivePhrase())
    yield "hold armed"
    await it.down(it.target(c.GivePhrase()))
    it.clock.seconds += 0.6
    it.target(c.GivePhrase()).refresh()
    await it.settle()
    yield "hold half filled"
    it.clock.seconds += 1
    await it.up(it.target(c.GivePhrase()))
    yield "read back"
    await it.touch(YES)
    yield "caution"
    await it.press("m") if not it.offers(c.Pause()) else None
    yield "more"
    await it.press("escape" if not it.offers(NEXT) else "f1")
    await it.press("enter", "enter", "enter", "y")
    yield "verify"
    await it.press("y", *"999")
    yield "keypad"
    await it.press("enter")
    yield "keypad with a notice"
    await it.press("backspace", "backspace", "enter")
    yield "off"
    await it.press("enter", "3", "enter")
    yield "quick numbers"
    await it.touch("100")
    yield "wait"
    await it.pass_time(120)
    yield "time is up"
    await it.press("h")
    yield "who takes over"
    await it.press("escape", "l")
    yield "languages"
    await it.press("escape", "p")
    yield "reasons"
    await it.press("2")
    yield "must stop"
    await it.press("e")
    yield "end asked"
    await it.press("y")
    yield "account"
    await it.press("enter")
    yield "board again"


@pytest.mark.parametrize("size", SIZES, ids=str)
async def test_every_text_is_clear_and_every_target_large(tmp_path, size):
    async with kiosk(tmp_path, size=size) as it:
        seen = 0
        async for name in every_screen(it):
            assert await poor_in_a_theme(it) == [], name
            assert small_targets(it) == [], f"{name}\n{it.seen()}"
            seen += 1
        assert seen == 22


def squeezed(text: str) -> str:
    """A text without blanks, frames and pictures, so that a wrapped sentence is still found.

    In large letters a zero is drawn as a capital O is.
    """
    kept = (one for one in text if one not in BLOCKS and not one.isspace())
    return "".join(one for one in kept if not "\u2800" <= one <= "\u28ff").replace("0", "O")


def lost(it: Kiosk) -> list[str]:
    """Sentences of the open question, and of its caution, that are not wholly on the screen."""
    seen = (squeezed(it.seen()), squeezed(it.large()))
    wanted = [one for line in it.walk.lines() for one in sentences(line)]
    caution = it.walk.session.prompt().caution
    if caution is not None:
        wanted += [it.walk.words.text(part) for part in (caution.hazard, caution.avoid)]
    return [one for one in wanted if not any(squeezed(one) in text for text in seen)]


def views(plan: Plan, language: str) -> Iterator[State]:
    """Every question that a plan can ask, as the state that asks it."""
    blank = State(
        mode=Mode.RUNNING,
        worker="p1",
        language=language,
        since=StillClock().now(),
        in_force=frozenset(plan.conditions),
    )
    for step in plan.steps:
        asked = replace(blank, step=step.id, goal=step.id)
        yield asked
        yield replace(asked, goal=plan.steps[-1].id)
        match step.task:
            case Hold():
                yield replace(asked, stage=Stage.READ_BACK)
                yield replace(asked, stage=Stage.VERIFY)
            case Measure(judged_by=by):
                yield replace(asked, stage=Stage.READ_BACK, pending="12.5")
                if by is not None:
                    yield replace(asked, stage=Stage.OFF, pending="99.5")
            case Count():
                yield replace(asked, stage=Stage.OFF, pending="11")
            case Repeat():
                yield replace(asked, stage=Stage.IS_CLEAR)
                yield replace(asked, stage=Stage.OFF, passes=9)
    held = replace(blank, mode=Mode.HELD, step=plan.steps[0].id, goal=plan.steps[0].id)
    for because in ("pause", "restart", "no way in"):
        yield replace(held, because=because)
    for reason in plan.problems:
        yield replace(held, because="problem", reason=reason)


def length(plan: Plan, state: State) -> int:
    asked = prompt(plan, state)
    said = words(state.language)
    caution = asked.caution
    parts = said.lines(asked)
    if caution is not None:
        parts += [said.text(part) for part in (caution.hazard, caution.avoid)]
    return sum(cell_len(part) + 20 for part in parts)


async def cut_off(it: Kiosk, plan: Plan, states: list[State]) -> list[str]:
    found = []
    for state in states:
        it.walk.session.plan, it.walk.session.state = plan, state
        it.app.screen.draw()
        await it.settle()
        lines = lost(it)
        if not it.targets():
            lines.append("no target")
        if lines:
            found.append(f"{plan.procedure} {state.step} {state.stage} {lines}\n{it.seen()}")
    return found


@pytest.mark.parametrize("size", [(60, 18), (80, 24)], ids=str)
@pytest.mark.parametrize("language", languages())
async def test_the_longest_questions_of_the_shipped_procedures_are_wholly_seen(
    tmp_path, size, language
):
    site = load_site(shipped("demo") / "site.toml")
    library = load_library(shipped("procedures"))
    async with kiosk(
        tmp_path,
        size=size,
        library=SMALL,
        site=replace(SITE, people=site.people, machines=SITE.machines),
    ) as it:
        await it.touch("Window machine", site.people[0].name)
        for machine in site.machines:
            for procedure in library.procedures.values():
                if procedure.machine_kind != machine.kind:
                    continue
                plan = fit(library, procedure, machine, site, lambda q, to: words(to).quantity(q))
                asked = sorted(views(plan, language), key=lambda state: length(plan, state))
                assert await cut_off(it, plan, asked[-HARDEST:]) == []


LONG = "Hold bucket {} under the left and the right valve, and open both until nothing runs out."


async def long_question(it: Kiosk, sentences: int) -> list[str]:
    """Draw a step with a caution and so many long sentences; return what is lost of it."""
    await it.begin()
    plan = it.walk.session.plan
    long = " ".join(LONG.format(number) for number in range(1, sentences + 1))
    lid = replace(plan.step("lid"), say={"en": long})
    steps = tuple(lid if one.id == "lid" else one for one in plan.steps)
    state = next(one for one in views(plan, "en") if one.step == "lid")
    return await cut_off(it, replace(plan, steps=steps), [state])


async def test_a_question_that_is_long_for_the_screen_pushes_out_what_matters_less(tmp_path):
    async with kiosk(tmp_path, size=(60, 18)) as it:
        assert await long_question(it, 4) == []
        assert "Window machine" not in it.words()
        assert it.offers(NEXT)
        assert small_targets(it) == []


async def test_a_question_that_is_too_long_for_the_screen_is_scrolled(tmp_path):
    async with kiosk(tmp_path, size=(60, 18)) as it:
        assert await long_question(it, 12) != []
        assert it.offers(NEXT)
        assert small_targets(it) == []
        scrolled = it.app.screen.query_one("Question VerticalScroll")
        top = it.seen()
        await it.press("pagedown")
        assert scrolled.scroll_y > 0
        assert it.seen() != top
        await it.press("pageup")
        assert scrolled.scroll_y == 0

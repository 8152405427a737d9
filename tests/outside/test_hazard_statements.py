"""The cautions of the shipped procedures against published hazard statements and signal words.

READ: seen in stored text; MEM: recalled from memory. The parts are those of OASIS DITA 1.3, the
words and colours those of ANSI Z535.4 and Z535.6.
"""

from __future__ import annotations

import colorsys
from dataclasses import fields
from pathlib import Path

import pytest

from kiosk.languages.words import words
from kiosk.procedure.load import load_library
from kiosk.procedure.model import Caution, Signal
from kiosk.screens.colours import DARK, LIGHT

LIBRARY = load_library(Path(__file__).parents[2] / "procedures")
CAUTIONS = tuple(
    (f"{procedure.id}.{block.id}", block.caution)
    for procedure in LIBRARY.procedures.values()
    for phase in procedure.phases
    for block in phase.steps
    if block.caution is not None
)
each_caution = pytest.mark.parametrize(("place", "caution"), CAUTIONS)

INJURY = ("crush", "cut", "burn", "injur", "eyes", "lungs", "shock")
GRAVE = ("crush", "burn", "lungs", "injure you")
"""Words of ours for what an injury is, and for those that may be serious. Common practice, no
source."""


def test_there_are_cautions_to_look_at():
    assert len(CAUTIONS) > 30


def test_the_signal_words_are_the_four_of_the_standard():
    """ANSI Z535: READ safetylabel.com. DITA 1.3 `hazardstatement` type: READ oasis-open."""
    assert [str(one) for one in Signal] == ["danger", "warning", "caution", "notice"]
    said = [words("en").say(f"signal-{one}").upper() for one in Signal]
    assert said == ["DANGER", "WARNING", "CAUTION", "NOTICE"]


def test_a_caution_has_the_parts_of_a_hazard_statement():
    """DITA 1.3 messagepanel: typeofhazard, consequence, howtoavoid (one or more). READ."""
    assert [one.name for one in fields(Caution)] == ["signal", "hazard", "consequence", "avoid"]


@each_caution
def test_each_part_is_there_in_every_language(place: str, caution: Caution):
    for part in (caution.hazard, caution.consequence, caution.avoid):
        assert {"en", "es", "ko"} <= part.keys()
        assert all(text.strip() for text in part.values())


@each_caution
def test_notice_is_for_what_hurts_nobody_and_the_rest_is_not(place: str, caution: Caution):
    """NOTICE: not related to injury; the other three: injury. ANSI Z535, READ."""
    hurts = any(word in caution.consequence["en"].lower() for word in INJURY)
    assert hurts is (caution.signal is not Signal.NOTICE)


@each_caution
def test_what_can_injure_badly_is_at_least_a_warning(place: str, caution: Caution):
    """WARNING: could cause death or serious injury; CAUTION: minor or moderate. ANSI Z535, READ."""
    grave = any(word in caution.consequence["en"].lower() for word in GRAVE)
    assert grave is (caution.signal in (Signal.DANGER, Signal.WARNING))


@each_caution
def test_danger_is_kept_for_what_will_kill(place: str, caution: Caution):
    """DANGER: will cause death or serious injury; most extreme cases only. ANSI Z535, READ.

    No step of the shipped procedures is one when it is done as it says.
    """
    assert caution.signal is not Signal.DANGER


@pytest.mark.parametrize("palette", [DARK, LIGHT])
def test_the_colours_are_red_orange_yellow_and_blue(palette):
    """DANGER red, WARNING orange, CAUTION yellow, NOTICE blue. ANSI Z535, READ.

    Which hue has which name: degrees on the colour circle, common practice, no source.
    """
    names = {"danger": (345, 15), "warning": (16, 44), "caution": (45, 65), "notice": (190, 255)}
    for signal, (least, most) in names.items():
        text = palette[signal].ground.lstrip("#")
        red, green, blue = (int(text[i : i + 2], 16) / 255 for i in (0, 2, 4))
        hue = colorsys.rgb_to_hsv(red, green, blue)[0] * 360
        assert (least <= hue <= most) if least < most else (hue >= least or hue <= most), signal


@pytest.mark.parametrize("palette", [DARK, LIGHT])
def test_text_on_them_is_white_on_red_and_blue_and_black_on_orange_and_yellow(palette):
    """White has the better contrast on red and blue, black on orange and yellow. CALC."""
    texts = [palette[one].text for one in ("danger", "warning", "caution", "notice")]
    assert texts == ["#FFFFFF", "#000000", "#000000", "#FFFFFF"]

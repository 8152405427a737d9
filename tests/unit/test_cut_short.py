"""What may cut a prompt short confirms nothing, and is not in the prompt."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.decide import decide
from kiosk.listening.cut_short import CUTS, cuts
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.site import load_site
from kiosk.shipped import shipped
from tests.speech.moments import NOW, _states
from tests.unit.test_shipped_procedures import plans

EN = {
    "next": c.Confirm(),
    "yes": c.Yes(),
    "no": c.No(),
    "power is off": c.GivePhrase(),
    "two": c.Read(Decimal(2)),
    "the part is good": c.Inspected(c.Finding.GOOD),
    "repeat please": c.SayAgain(),
    "go back": c.Back(),
    "something is wrong": c.CallProblem(),
    "pause": c.Pause(),
    "stop here": c.End(),
    "continue": c.Resume(),
}


def test_only_what_confirms_nothing_may_cut_a_prompt_short():
    assert cuts(EN, "Take off the door.") == {
        "no", "repeat please", "go back", "something is wrong", "pause",
    }  # fmt: skip


def test_no_such_act_confirms_a_step_anywhere_in_a_shipped_procedure():
    tried = 0
    for plan in plans():
        for state in _states(plan):
            for act in CUTS:
                found = decide(plan, state, c.Command(act(), NOW, c.Evidence(c.Channel.VOICE)))
                if isinstance(found, c.Refusal):
                    continue
                tried += 1
                assert not any(isinstance(one, e.StepConfirmed) for one in found), (state, act)
    assert tried > 100


@pytest.mark.parametrize(
    ("prompt", "kept"),
    [
        ("Is it so? Say yes, or no.", {"no": False, "pause": True}),
        ("Now nothing must turn.", {"no": True}),
        ("After the pause, go on.", {"pause": False, "go back": True}),
        ("Go. Back off!", {"go back": False}),
        ("If something is wrong, say so.", {"something is wrong": False, "repeat please": True}),
        ("", {"no": True, "pause": True}),
    ],
)
def test_what_stands_in_the_prompt_may_be_the_loudspeaker(prompt: str, kept: dict[str, bool]):
    found = cuts(EN, prompt)
    assert {phrase: phrase in found for phrase in kept} == kept


def test_a_korean_word_is_found_with_its_particle():
    meanings = {"이전": c.Back(), "문제 있어요": c.CallProblem(), "잠시 쉬기": c.Pause()}
    assert cuts(meanings, "이전에 닫은 밸브를 여세요.") == {"문제 있어요", "잠시 쉬기"}


def site_with(folder: Path, table: str) -> Path:
    path = folder / "site.toml"
    text = (shipped("demo") / "site.toml").read_text("utf-8")
    path.write_text(f"{text}\n[hearing]\n{table}\n", encoding="utf-8")
    return path


def test_prompts_are_not_cut_short_unless_the_site_asks_for_it(tmp_path: Path):
    assert not load_site(shipped("demo") / "site.toml").hearing.cut_short
    assert load_site(site_with(tmp_path, "cut_short = true")).hearing.cut_short


def test_an_ear_behind_a_key_cannot_cut_in(tmp_path: Path):
    with pytest.raises(FaultyFile, match="set either push_to_talk or cut_short to false"):
        load_site(site_with(tmp_path, "cut_short = true\npush_to_talk = true"))

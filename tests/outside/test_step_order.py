"""The order of the shipped steps against published orders of work; each test names its source.

READ: seen in stored text; READ (state): in a state adoption that carries the Food Code's section
number; MEM: recalled from memory, to be checked before it becomes law for anybody.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache
from pathlib import Path

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.plan import Hold, Plan, Wait
from kiosk.procedure.site import Site, load_site

ROOT = Path(__file__).parents[2]
KINDS = ("twin-gravity", "single-pump")
each_kind = pytest.mark.parametrize("kind", KINDS)


@lru_cache
def shop() -> tuple[Library, Site]:
    return load_library(ROOT / "procedures"), load_site(ROOT / "demo" / "site.toml")


def plan(way: str, kind: str, **settings: str) -> Plan:
    library, site = shop()
    machine = next(one for one in site.machines if one.kind == kind)
    machine = replace(machine, settings=settings)
    procedure = library.procedures[f"{way}-{kind}"]
    return fit(library, procedure, machine, site, lambda amount, _: f"{amount.value} {amount.unit}")


def place(of: Plan, condition: str) -> int:
    """Return the place of the first step that establishes a condition."""
    return next(i for i, step in enumerate(of.steps) if condition in step.establishes)


def in_order(of: Plan, *conditions: str) -> bool:
    places = [place(of, one) for one in conditions]
    return places == sorted(set(places))


@each_kind
def test_taken_apart_then_washed(kind):
    """Food Code 4-603.15: apart, so that detergent reaches all parts. READ WAC 246-215-04640."""
    close = plan("close", kind)
    assert in_order(close, "machine open", "parts washed")
    washing = close.steps[place(close, "parts washed")]
    assert "brush" in washing.say["en"]


@each_kind
def test_a_water_rinse_stands_between_washing_and_sanitizing(kind):
    """Food Code 4-603.16: a distinct water rinse. READ 16 Del. Admin. Code 4-603.16."""
    close = plan("close", kind)
    assert in_order(close, "parts washed", "parts rinsed", "parts sanitized")
    assert "parts washed" in close.steps[place(close, "parts rinsed")].requires
    assert "parts rinsed" in close.steps[place(close, "parts sanitized")].requires
    assert "water" in close.steps[place(close, "parts rinsed")].say["en"]


@each_kind
def test_sanitized_after_cleaning_and_before_use(kind):
    """Food Code 4-702.11. READ Maine 10-144 ch. 200."""
    assert in_order(plan("close", kind), "barrel brushed", "parts washed", "parts sanitized")
    assert in_order(plan("open", kind), "surfaces sanitized", "mix unproven", "primed")


@each_kind
def test_air_dried_without_a_cloth(kind):
    """Food Code 4-901.11: air-dry; no cloth drying. READ WAC 246-215-04900."""
    close = plan("close", kind)
    drying = close.steps[place(close, "parts laid out")]
    assert "parts sanitized" in drying.requires
    assert "air" in drying.say["en"]
    assert "no towel" in drying.say["en"]
    between = close.steps[place(close, "parts sanitized") + 1 : place(close, "parts laid out")]
    assert not between


@each_kind
def test_lukewarm_rinse_disassembly_brushing_rinse_sanitize_reassemble_sanitize(kind):
    """7 Pa. Code 39.55, the whole order of work. READ parules.elaws.us."""
    close, morning = plan("close", kind), plan("open", kind)
    assert in_order(
        close,
        "barrel flushed",
        "machine open",
        "wash water hot",
        "parts washed",
        "parts rinsed",
        "parts sanitized",
    )
    assert in_order(morning, "machine assembled", "surfaces sanitized", "primed")


@each_kind
def test_sanitized_surfaces_are_not_touched_again(kind):
    """7 Pa. Code 39.55, last sentence. READ parules.elaws.us."""
    morning = plan("open", kind)
    after = morning.steps[place(morning, "surfaces sanitized") + 1 :]
    assert after
    assert not [step.id for step in after if "power isolated" in step.requires]


@each_kind
def test_cleaned_each_day_left_open_to_the_air_and_sanitized_again_before_use(kind):
    """7 Pa. Code 39.54. READ pacodeandbulletin.gov."""
    close, morning = plan("close", kind), plan("open", kind)
    assert close.leaves == "apart and drying"
    assert "air" in close.steps[-1].say["en"]
    assert "parts sanitized" in close.steps[-1].requires
    needed = morning.steps[place(morning, "mix unproven")].requires
    assert {"surfaces sanitized", "solution drained"} <= set(needed)


@each_kind
@pytest.mark.parametrize("way", ["close", "open"])
def test_isolated_then_verified_before_a_hand_goes_in(kind, way):
    """ISO 14118: isolate, dissipate, lock, verify; a stop command alone is no isolation. MEM."""
    walk = plan(way, kind)
    isolate, verify = place(walk, "power isolated"), place(walk, "proven dead")
    first_hand = next(i for i, step in enumerate(walk.steps) if "proven dead" in step.requires)
    assert isolate < verify < first_hand
    assert isinstance(walk.steps[isolate].task, Hold)
    assert isinstance(walk.steps[verify].task, Hold)
    tried = walk.steps[verify].say["en"]
    assert "Press" in tried


def test_stored_pressure_is_let_out_between_isolating_and_verifying():
    """ISO 14118: dissipate stored energy. MEM."""
    walk = plan("close", "single-pump")
    assert in_order(walk, "power isolated", "pressure released", "proven dead", "machine open")


@each_kind
@pytest.mark.parametrize("way", ["close", "open"])
def test_hands_are_washed_for_twenty_seconds_first(kind, way):
    """Food Code 2-301.12: the whole procedure takes at least 20 s. READ (state) S.C. 61-25."""
    first = plan(way, kind).steps[0]
    assert first.establishes == ("hands clean",)
    assert isinstance(first.task, Wait)
    assert first.task.seconds == 20
    with pytest.raises(FaultyFile, match=r"2-301\.12"):
        plan(way, kind, hand_wash_time="19 s")


@each_kind
def test_hands_are_washed_again_between_soiled_and_clean(kind):
    """Food Code 2-301.14: after soiled equipment and before clean. READ 16 Del. 2-301.14."""
    close, morning = plan("close", kind), plan("open", kind)
    soiled = close.index["wash-parts"]
    assert "hands clean" in close.steps[soiled].ends
    again = next(
        i for i, step in enumerate(close.steps) if i > soiled and "hands clean" in step.establishes
    )
    assert again < place(close, "parts sanitized")
    assert "hands clean" in morning.steps[place(morning, "mix unproven")].requires
    assert morning.index["hands-again"] == place(morning, "mix unproven") - 1


@each_kind
def test_gloves_come_after_hands(kind):
    """Food Code 2-301.14: wash before donning gloves. READ 16 Del. 2-301.14."""
    close = plan("close", kind)
    assert "hands clean" in close.step("gloves").requires


@each_kind
@pytest.mark.parametrize(("way", "setting"), [("close", "soak_time"), ("open", "contact_time")])
def test_a_contact_time_under_ten_seconds_is_refused(kind, way, setting):
    """Food Code 4-703.11(C): chlorine, at least 10 s. READ (state) Wisconsin ATCP 75 App."""
    assert plan(way, kind, **{setting: "10 s"})
    with pytest.raises(FaultyFile, match=r"4-703\.11\(C\)"):
        plan(way, kind, **{setting: "9 s"})


@each_kind
def test_sanitizer_is_drained_and_not_rinsed_off_unless_the_label_says_so(kind):
    """40 CFR 180.940(a): adequate draining before food. READ govinfo.gov (2005)."""
    morning = plan("open", kind)
    assert in_order(morning, "surfaces sanitized", "solution drained", "mix unproven")
    assert "Do not rinse" in morning.steps[place(morning, "solution drained")].say["en"]
    assert "label-rinse" not in morning.index

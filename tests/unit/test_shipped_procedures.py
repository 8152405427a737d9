"""The shipped procedures fit every machine, speak every language and keep the safety rules."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from functools import lru_cache
from itertools import product
from pathlib import Path
from typing import Any

import pytest

from kiosk.engine.holds import lapsed_by_absence, way_in
from kiosk.languages.words import words
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.model import Procedure, StepBlock
from kiosk.procedure.plan import Hold, Measure, Plan, Step
from kiosk.procedure.site import Site, load_site

ROOT = Path(__file__).parents[2]
LANGUAGES = {"en", "es", "ko", "pt", "vi", "zh"}
ISOLATED = {"power isolated", "proven dead"}

MOST_WORDS = {"en": 24, "es": 26, "ko": 20, "pt": 26, "vi": 36, "zh": 3}
"""Vietnamese parts its syllables by blanks; Chinese parts nothing."""
"""Words of one spoken sentence, quantities filled in."""

INSIDE = re.compile(
    r"\b(barrels?|beaters?|shafts?|drives?|inlets?|pump|hose|door|valves?|rear)\b", re.IGNORECASE
)
"""Places where something can turn, cut or be under pressure."""

RUNS = re.compile(
    r"set (wash|both sides to (wash|serve)|the (beater to (wash|serve)|pump on))"
    r"|(beater and pump|both sides) (run|freeze)|leave the pump on|run beater|pump (it|\{)|work in"
    r"|let the (pump|barrel)",
    re.IGNORECASE,
)
"""Sentences that set something turning or keep it turning."""

OFF_THE_MACHINE = {
    "tools": "the hose brush is laid out",
    "inspect-seals": "seals lie on the rack",
    "inspect-hose": "the hose lies on the rack",
    "inspect-seal": "the seal lies on the rack",
    "lubricate": "parts lie on the rack",
    "wash-parts": "parts lie in the sink",
    "rinse-parts": "parts lie in the sink",
    "rinse-parts-running": "parts lie in the sink",
    "soak-in": "parts lie in the sink",
    "label-rinse": "parts lie in the sink, or the machine is closed",
    "lay-out": "parts lie in the sink",
    "in-service": "the outside is wiped, the machine is closed",
    "count-pump-parts": "the parts stand in a cup",
}
"""Steps that name such a place but touch only parts that are out of the machine, and why."""

TAKING_APART_OR_TOGETHER = {"apart", "barrels", "together"}
"""Phases in which hands go in at every step."""


@lru_cache
def library() -> Library:
    return load_library(ROOT / "procedures")


@lru_cache
def site() -> Site:
    return load_site(ROOT / "demo" / "site.toml")


def fitted(procedure_id: str, **options: str) -> Plan:
    procedure = library().procedures[procedure_id]
    machine = next(one for one in site().machines if one.kind == procedure.machine_kind)
    machine = replace(machine, options={**machine.options, **options})
    return fit(
        library(), procedure, machine, site(), lambda amount, lang: words(lang).quantity(amount)
    )


def combinations(kind_id: str) -> Iterator[dict[str, str]]:
    options = library().kinds[kind_id].options
    for values in product(*options.values()):
        yield dict(zip(options, values, strict=True))


@lru_cache
def plans() -> tuple[Plan, ...]:
    return tuple(
        fitted(procedure.id, **options)
        for procedure in library().procedures.values()
        for options in combinations(procedure.machine_kind)
    )


def blocks(procedure: Procedure) -> Iterator[StepBlock]:
    for phase in procedure.phases:
        yield from phase.steps


def every_block() -> Iterator[tuple[Procedure, StepBlock]]:
    for procedure in library().procedures.values():
        for block in blocks(procedure):
            yield procedure, block


def walked(plan: Plan) -> Iterator[tuple[Step, frozenset[str]]]:
    """Yield each step with what is in force when it is entered, with nothing going wrong."""
    in_force: frozenset[str] = frozenset()
    for step in plan.steps:
        yield step, in_force
        in_force = in_force - set(step.ends) | set(step.establishes)


def at_the_end(plan: Plan) -> frozenset[str]:
    step, in_force = list(walked(plan))[-1]
    return in_force - set(step.ends) | set(step.establishes)


def texts(value: Any, where: str) -> Iterator[tuple[str, Mapping[str, str]]]:
    """Yield every sentence of a record with the place where it stands."""
    if isinstance(value, Mapping):
        if "en" in value:
            yield where, value
        else:
            for key, one in value.items():
                yield from texts(one, f"{where}.{key}")
    elif isinstance(value, tuple):
        for place, one in enumerate(value):
            yield from texts(one, f"{where}.{getattr(one, 'id', place)}")
    elif is_dataclass(value):
        for field in fields(value):
            yield from texts(getattr(value, field.name), f"{where}.{field.name}")


# The files as files.


def test_every_file_loads_and_each_machine_can_be_closed_opened_and_checked():
    assert library().faults == ()
    names = {path.stem for path in (ROOT / "procedures").glob("*.yaml")} - {"common"}
    assert set(library().procedures) == names
    for kind in library().kinds:
        leaves = {
            (one.during, one.leaves)
            for one in library().procedures.values()
            if one.machine_kind == kind
        }
        assert leaves == {
            ("being taken apart", "apart and drying"),
            ("being put together", "in service"),
            ("in service", "in service"),
        }


def test_every_procedure_fits_with_every_combination_of_options():
    assert len(plans()) == sum(
        len(list(combinations(one.machine_kind))) for one in library().procedures.values()
    )
    assert all(plan.practice or not site().practice for plan in plans())


def test_every_option_value_changes_a_step_of_its_machine():
    for kind in library().kinds.values():
        used = {
            choice
            for procedure, block in every_block()
            if procedure.machine_kind == kind.id
            for choice in block.when.items()
        }
        assert used == {(name, value) for name, values in kind.options.items() for value in values}


def test_every_sentence_stands_in_six_languages_with_the_same_places():
    records = [library().common, *library().kinds.values(), *library().limits.values()]
    found = [
        pair
        for record in [*records, *library().procedures.values()]
        for pair in texts(record, getattr(record, "id", "common"))
    ]
    assert len(found) > 500
    for where, text in found:
        assert set(text) == LANGUAGES, where
        assert all(sentence.strip() == sentence and sentence for sentence in text.values()), where
        places = {tuple(sorted(re.findall(r"\{\w+\}", one))) for one in text.values()}
        assert len(places) == 1, where
        assert text["en"] != text["es"] != text["ko"], where
        assert re.search("[가-힣]", text["ko"]), where
        assert re.search("[\u4e00-\u9fff]", text["zh"]), where


def test_machine_drafted_languages_are_said_to_be_so():
    for procedure in library().procedures.values():
        assert set(procedure.drafted) == LANGUAGES - {"en"}


def test_sentences_are_short_and_have_no_unit_symbols():
    symbol = re.compile(r"°|%|\bppm\b|\bmg\b|\d\s*(L|mL|min|s|h)\b|\bsec\b|\bmin\b")
    for plan in plans():
        for step in plan.steps:
            asked = [step.say, step.corrective]
            if isinstance(step.task, Hold):
                asked.append(step.task.verify)
            asked.append(getattr(step.task, "until", None))
            for text in asked:
                for language, sentence in (text or {}).items():
                    where = f"{plan.procedure}.{step.id} {language}: {sentence}"
                    assert len(sentence.split()) <= MOST_WORDS[language], where
                    assert not symbol.search(sentence), where
                    assert "{" not in sentence, where


def test_warnings_and_correctives_are_short():
    common = library().common
    spoken = [one.corrective for one in common.problems.values()]
    spoken += [one.present for one in common.conditions.values() if one.present]
    for _, block in every_block():
        if block.caution:
            spoken += [block.caution.hazard, block.caution.consequence, block.caution.avoid]
    for text in spoken:
        for language, sentence in text.items():
            assert len(sentence.split()) <= MOST_WORDS[language], sentence


def test_every_reading_that_can_be_off_says_what_to_do():
    for procedure, block in every_block():
        judged = block.mix or block.repeat or block.count or (block.measure and block.measure.limit)
        assert bool(block.corrective) == bool(judged), f"{procedure.id}.{block.id}"


def test_spoken_readings_reach_both_sides_of_the_limit():
    for plan in plans():
        for step in plan.steps:
            if not isinstance(step.task, Measure):
                continue
            choices, judged_by = step.task.choices, step.task.judged_by
            assert list(choices) == sorted(set(choices)), step.id
            assert all(step.task.least <= one <= step.task.most for one in choices), step.id
            if judged_by:
                verdicts = {judged_by.passes(one) for one in choices}
                assert verdicts == {True, False}, step.id


def test_only_wearing_parts_are_inspected():
    for procedure, block in every_block():
        if block.inspect:
            part = library().kinds[procedure.machine_kind].parts[block.inspect.part]
            assert part.wears, f"{procedure.id}.{block.id}"


def test_only_parts_on_the_list_are_lubricated():
    for procedure, block in every_block():
        if block.id != "lubricate":
            continue
        parts = library().kinds[procedure.machine_kind].parts.values()
        named = {part.name["en"] for part in parts if part.name["en"] in block.say["en"]}
        assert named == {part.name["en"] for part in parts if part.lubricate}


def test_problems_name_a_source_and_are_told_apart():
    problems = library().common.problems
    for language in LANGUAGES:
        spoken = [one.name[language] for one in problems.values()]
        assert len(set(spoken)) == len(spoken)
    assert all(one.source for one in problems.values())


# The steps as a walk.


def test_on_the_straight_path_everything_required_is_in_force():
    for plan in plans():
        for step, in_force in walked(plan):
            assert set(step.requires) <= in_force, f"{plan.procedure}.{step.id}"


def test_no_danger_is_ever_required():
    for plan in plans():
        for step in plan.steps:
            assert not plan.hazards & set(step.requires), f"{plan.procedure}.{step.id}"


def test_every_condition_is_used():
    used: set[str] = set()
    for _, block in every_block():
        used |= {*block.requires, *block.ends}
    assert used == set(library().common.conditions)


def test_after_an_absence_at_any_step_the_worker_gets_back_to_it():
    for plan in plans():
        for goal, before in walked(plan):
            in_force = before - set(lapsed_by_absence(plan, before))
            asked = 0
            while (step := way_in(plan, goal.id, in_force)) is not goal:
                assert step is not None, f"{plan.procedure}.{goal.id}: no way in"
                in_force = in_force - set(step.ends) | set(step.establishes)
                asked += 1
                assert asked <= 4, f"{plan.procedure}.{goal.id}: asked too often"


def test_a_close_leaves_only_the_open_machine_and_an_opening_no_danger():
    for plan in plans():
        left = at_the_end(plan) & plan.hazards
        assert left == ({"machine open"} if plan.leaves == "apart and drying" else set())


# The safety rules.


def test_power_is_never_both_on_and_isolated_nor_guards_on_an_open_machine():
    for plan in plans():
        for step, in_force in walked(plan):
            assert not {"power on", "power isolated"} <= in_force, step.id
            assert not {"power on", "proven dead"} <= in_force, step.id
            assert not {"guards on", "machine open"} <= in_force, step.id


def test_power_comes_back_only_behind_guards_and_takes_isolation_away():
    for procedure, block in every_block():
        where = f"{procedure.id}.{block.id}"
        if "power on" in block.establishes:
            assert "guards on" in block.requires, where
            assert set(block.ends) >= ISOLATED, where
            assert block.hold or procedure.during == "being taken apart", where
        if "power isolated" in block.establishes:
            assert block.hold, where
            assert "power on" in block.ends, where
        if "proven dead" in block.establishes:
            assert block.hold, where
            assert "power isolated" in block.requires, where


def test_guards_are_confirmed_by_a_hold_and_in_the_morning_on_an_assembled_machine():
    for procedure, block in every_block():
        if "guards on" not in block.establishes:
            continue
        assert block.hold
        assert "machine open" in block.ends
        if procedure.during == "being put together":
            assert "machine assembled" in block.requires


def test_what_opens_the_machine_ends_its_guards_and_needs_it_dead_and_empty():
    for procedure, block in every_block():
        if "machine open" in block.establishes and not block.hold:
            assert "guards on" in block.ends
            needed = ISOLATED | {"product discarded", "solution drained", "machine rinsed"}
            assert set(block.requires) >= needed, f"{procedure.id}.{block.id}"


def test_every_hold_is_tried_out_afterwards():
    for procedure, block in every_block():
        if block.hold:
            assert block.hold.verify is not None, f"{procedure.id}.{block.id}"


def test_hands_go_in_only_when_isolated_and_proven_dead():
    for procedure in library().procedures.values():
        for phase in procedure.phases:
            for block in phase.steps:
                where = f"{procedure.id}.{block.id}"
                dead = set(block.requires) >= ISOLATED
                if phase.id in TAKING_APART_OR_TOGETHER:
                    assert dead, where
                elif INSIDE.search(block.say["en"]) and block.id not in OFF_THE_MACHINE:
                    about_power = ISOLATED & {*block.requires, *block.establishes}
                    guarded = "guards on" in {*block.requires, *block.establishes}
                    assert dead or guarded or about_power, where


def test_the_list_of_steps_away_from_the_machine_is_no_longer_than_needed():
    named = {block.id for _, block in every_block() if INSIDE.search(block.say["en"])}
    assert set(OFF_THE_MACHINE) <= named


def test_everything_that_runs_needs_guards_and_power():
    running = set()
    for procedure, block in every_block():
        if RUNS.search(block.say["en"]):
            running.add(f"{procedure.id}.{block.id}")
            assert {"guards on", "power on"} <= set(block.requires), f"{procedure.id}.{block.id}"
    for procedure in library().procedures.values():
        waits = {
            f"{procedure.id}.{block.id}"
            for block in blocks(procedure)
            if block.wait and block.wait.at_least not in ("hand_wash_time", "soak_time")
        }
        assert waits or procedure.stays_in_service
        assert waits <= running


def test_pressure_is_let_out_before_anything_is_loosened():
    procedure = library().procedures["close-single-pump"]
    by_id = {block.id: block for block in blocks(procedure)}
    assert "pressure released" in by_id["prove-dead"].requires
    assert "power isolated" in by_id["release-pressure"].requires
    for step_id in ("pump-out", "hose-off", "door-off"):
        assert "pressure released" in by_id[step_id].requires
    for block in by_id.values():
        if "under pressure" in block.establishes:
            assert "pressure released" in block.ends, block.id


def test_a_chemical_is_drained_before_mix_goes_in_or_the_machine_is_opened():
    for plan in plans():
        for step, in_force in walked(plan):
            opens = "machine open" in step.establishes and not isinstance(step.task, Hold)
            if opens or "mix unproven" in step.establishes:
                assert "chemical in machine" not in in_force, f"{plan.procedure}.{step.id}"
                assert "solution drained" in step.requires, f"{plan.procedure}.{step.id}"


def test_each_pour_of_a_chemical_takes_back_that_it_was_drained():
    for _, block in every_block():
        if "chemical in machine" in block.establishes:
            assert {"solution drained"} <= set(block.ends)
            assert "solution mixed" in block.requires
        if "chemical in machine" in block.ends:
            assert {"solution drained"} <= set(block.establishes)
            assert "solution mixed" in block.ends


def test_nothing_is_flushed_or_mixed_before_the_old_product_is_thrown_away():
    for plan in plans():
        for step, in_force in walked(plan):
            water = {"barrel flushed", "solution mixed", "chemical in machine"}
            if plan.during == "being taken apart" and water & set(step.establishes):
                assert "product discarded" in in_force, f"{plan.procedure}.{step.id}"
                assert "old product" not in in_force, f"{plan.procedure}.{step.id}"
            if "barrel flushed" in step.establishes:
                assert "product discarded" in step.requires, f"{plan.procedure}.{step.id}"


def test_chlorine_is_never_mixed_without_its_warning():
    for procedure, block in every_block():
        if block.mix:
            assert block.caution is not None, f"{procedure.id}.{block.id}"
            assert "acid or ammonia" in block.caution.hazard["en"]
            assert "eye protection" in block.caution.avoid["en"]


def test_clean_hands_touch_what_is_clean():
    clean = {"soak-in", "lay-out", "label-rinse", "pour-mix", "air-tubes", "air-dial", "lubricate"}
    for procedure, block in every_block():
        sinks = block.id == "label-rinse" and procedure.during == "being put together"
        if block.inspect or (block.id in clean and not sinks):
            assert "hands clean" in block.requires, f"{procedure.id}.{block.id}"


@pytest.mark.parametrize("machine_kind", ["twin-gravity", "single-pump"])
def test_a_part_taken_off_in_the_evening_goes_back_in_the_morning(machine_kind):
    close = library().procedures[f"close-{machine_kind}"]
    open_ = library().procedures[f"open-{machine_kind}"]
    said = {
        one.id: " ".join(block.say["en"].lower() for block in blocks(one)) for one in (close, open_)
    }
    apart = re.compile(
        r"\b(door|draw valve|beater|scraper blade|drive shaft|seal|o-ring|drip tray|"
        r"air tube|lid|pump cover|lock pin|piston|check band|feed hose|relief plug)s?\b"
    )
    taken = set(apart.findall(said[close.id]))
    assert len(taken) >= 9
    assert taken == set(apart.findall(said[open_.id]))

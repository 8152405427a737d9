"""Fitting a procedure to a machine: what is filled in, and what is refused with its mend."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.plan import Do, Hold, Measure, Plan, Wait
from kiosk.procedure.site import Machine, Person, Sanitizer, Site

COMMON = """\
conditions:
  hands clean: {name: {en: hands clean}, lapses: true}
  power isolated: {name: {en: power isolated}}
problems: {}
"""
KIND = """\
id: twin
title: {en: Twin}
hoppers: 2
parts:
  o-ring: {name: {en: O-ring}, count: 4, wears: true}
settings: {flush_volume: 8 L, contact_time: 60 s, unit: °C}
options: {sink: [three, two]}
"""
LIMITS = """\
id: code
title: {en: Code}
edition: test edition
date: "2022"
limits:
  mix temperature: {bounds: {°C: {most: 5}, °F: {most: 41}}, clause: 3-501.16, source: x, tag: READ}
  strength: {bounds: {mg/L: {least: 100, most: 200}}, clause: 4-501.114, source: x, tag: READ}
  contact: {bounds: {s: {least: 10}}, clause: 4-703.11, source: x, tag: READ}
"""
HEAD = """\
id: close
version: 1
title: {en: Close}
machine_kind: twin
limits: code
drafted: []
follow: {en: The manual comes first.}
begins_from: [in service]
during: being taken apart
leaves: apart and drying
phases:
  - id: one
    title: {en: One}
    steps:
"""
MACHINE = Machine(id="m1", name="One", kind="twin")
SANITIZER = Sanitizer(
    name="invented",
    available_chlorine=Decimal("0.554"),
    packet_grams=Decimal(2),
    target=Decimal(100),
)


def site(**fields) -> Site:
    return Site(
        **{
            "name": "Invented", "time_zone": "Etc/UTC", "opens": "10:00", "closes": "22:00",
            "languages": ("en",), "limits": "code", "sanitizer": SANITIZER, "machines": (MACHINE,),
            "people": (Person(id="ana", name="Ana", language="en"),), **fields,
        }
    )  # fmt: skip


@pytest.fixture
def fitted(tmp_path: Path):
    """Return a function that fits steps written in YAML."""

    def library(steps: str) -> Library:
        (tmp_path / "machines").mkdir(exist_ok=True)
        (tmp_path / "limits").mkdir(exist_ok=True)
        (tmp_path / "common.yaml").write_text(COMMON)
        (tmp_path / "machines" / "twin.yaml").write_text(KIND)
        (tmp_path / "limits" / "code.yaml").write_text(LIMITS)
        indented = "\n".join(f"      {line}" for line in steps.strip().splitlines())
        (tmp_path / "close.yaml").write_text(HEAD + indented + "\n")
        return load_library(tmp_path)

    def fit_steps(steps: str, machine: Machine = MACHINE, **fields) -> Plan:
        loaded = library(steps)
        assert loaded.faults == (), loaded.faults
        return fit(
            loaded, loaded.procedures["close"], machine, site(**fields), lambda q, lang: f"<{q}>"
        )

    return fit_steps


def test_settings_fill_the_sentences(fitted):
    plan = fitted("- {id: a, say: {en: 'Pour {flush_volume} of water.'}}")
    assert plan.steps[0].say == {"en": "Pour <8 L> of water."}
    assert plan.steps[0].task == Do()


def test_a_machine_overrides_the_site_and_the_site_its_kind(fitted):
    step = "- {id: a, say: {en: '{flush_volume}'}}"
    assert fitted(step, settings={"flush_volume": "9 L"}).steps[0].say["en"] == "<9 L>"
    own = Machine(id="m1", name="One", kind="twin", settings={"flush_volume": "2 gal"})
    assert fitted(step, own, settings={"flush_volume": "9 L"}).steps[0].say["en"] == "<2 gal>"


def test_options_choose_the_steps(fitted):
    steps = """
- {id: rinse, say: {en: Rinse.}, when: {sink: three}}
- {id: bucket, say: {en: Bucket.}, when: {sink: two}}
- {id: end, say: {en: End.}}
"""
    assert [step.id for step in fitted(steps).steps] == ["rinse", "end"]
    assert [s.id for s in fitted(steps, options={"sink": "two"}).steps] == ["bucket", "end"]


def test_a_measure_is_judged_in_the_unit_in_which_it_is_taken(fitted):
    """12.9 degrees C and 55.2 degrees F are one temperature but may be judged differently."""
    steps = """
- id: t
  say: {en: Read it.}
  measure: {quantity: mix temperature, unit: unit, limit: mix temperature, least: -5, most: 100}
"""
    celsius = fitted(steps).steps[0].task
    fahrenheit = fitted(steps, settings={"unit": "°F"}).steps[0].task
    assert isinstance(celsius, Measure)
    assert isinstance(fahrenheit, Measure)
    assert celsius.judged_by is not None
    assert fahrenheit.judged_by is not None
    assert (celsius.unit, celsius.judged_by.most) == ("°C", Decimal(5))
    assert (fahrenheit.unit, fahrenheit.judged_by.most) == ("°F", Decimal(41))
    assert celsius.judged_by.source == "3-501.16, test edition (READ)"


def test_a_mix_tells_the_packets(fitted):
    steps = """
- id: mix
  say: {en: '{packets} packets into {volume}.'}
  mix: {volume: flush_volume, limit: strength, choices: [0, 50, 100, 200]}
"""
    plan = fitted(steps)
    assert plan.steps[0].say["en"] == "1 packets into <8 L>."
    assert isinstance(plan.steps[0].task, Measure)


def test_a_wait_takes_its_time_from_a_setting(fitted):
    steps = """
- id: soak
  say: {en: 'Wait {time}.'}
  wait: {at_least: contact_time, limit: contact}
"""
    assert fitted(steps).steps[0].task == Wait(60.0)
    with pytest.raises(FaultyFile, match="out of the limit 'contact'"):
        fitted(steps, settings={"contact_time": "5 s"})


def test_a_hold_keeps_its_phrase(fitted):
    steps = """
- id: isolate
  say: {en: Pull the plug.}
  hold: {phrase: {en: the power is off}, verify: {en: Press start.}}
  establishes: [power isolated]
"""
    task = fitted(steps).steps[0].task
    assert isinstance(task, Hold)
    assert task.phrase == {"en": "the power is off"}


@pytest.mark.parametrize(
    ("step", "field", "what", "mend"),
    [
        ("say: {en: 'Pour {flush_volum}.'}", "say", "'flush_volum'", "flush_volume"),
        ("requires: [hands cleen]", "requires", "'hands cleen' is not known", "common.yaml"),
        ("wait: {at_least: unit}", "wait.at_least", "not a number with a unit", "setting"),
        ("wait: {at_least: flush_volume}", "wait.at_least", "is not a time", "setting"),
        ("measure: {quantity: x, unit: K, limit: mix temperature, least: 0, most: 9}",
         "measure.limit", "no bounds in K", "°C, °F"),
        ("measure: {quantity: x, unit: °C, limit: warmth, least: 0, most: 9}", "measure.limit",
         "has no 'warmth'", "mix temperature"),
        ("count: {part: spring}", "count.part", "has no 'spring'", "o-ring"),
        ("when: {sink: four}", "when", "is never 'four'", "three, two"),
        ("when: {sinks: two}", "when", "no option 'sinks'", "sink"),
        ("hold: {phrase: {en: it is off}}", "establishes", "establishes nothing", "name the"),
        ("repeat: {least: 3, most: 2, until: {en: Clear?}}", "repeat", "'least'", "two numbers"),
        ("mix: {volume: contact_time, limit: strength, choices: [100]}", "mix", "not a volume",
         "volume"),
    ],
)  # fmt: skip
def test_what_cannot_be_fitted_names_the_step_and_the_mend(fitted, step, field, what, mend):
    text = f"- id: it\n  {step}" + ("" if step.startswith("say") else "\n  say: {en: It.}")
    with pytest.raises(FaultyFile) as caught:
        fitted(text)
    (found,) = caught.value.faults
    assert found.line == 15
    assert found.field == f"it.{field}"
    assert what in found.what
    assert mend in found.mend


def test_two_tasks_in_one_step_are_refused(fitted):
    with pytest.raises(FaultyFile, match="stand in one step"):
        fitted("- {id: a, say: {en: A.}, count: {part: o-ring}, wait: {at_least: contact_time}}")


def test_two_steps_of_one_name_are_refused(fitted):
    with pytest.raises(FaultyFile, match="two steps are called 'a'"):
        fitted("- {id: a, say: {en: A.}}\n- {id: a, say: {en: B.}}")


def test_the_digest_tells_a_changed_sentence_or_limit(fitted):
    one = fitted("- {id: a, say: {en: A.}}").digest
    assert fitted("- {id: a, say: {en: A.}}").digest == one
    assert fitted("- {id: a, say: {en: B.}}").digest != one


def test_a_procedure_of_which_no_step_is_left_is_refused(fitted):
    with pytest.raises(FaultyFile, match="no step is left"):
        fitted("- {id: a, say: {en: A.}, when: {sink: two}}")

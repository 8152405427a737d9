"""Plans made in code: a few words for each step."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal

from kiosk.procedure.model import Condition, Problem, Standing, Strength
from kiosk.procedure.plan import (
    Count,
    Do,
    Hold,
    Inspect,
    JudgedBy,
    Measure,
    Plan,
    Repeat,
    Step,
    Task,
    Wait,
)

PROBLEMS = {
    "noise": Problem(
        name={"en": "strange noise"}, corrective={"en": "Listen."}, source="common practice"
    ),
    "broken": Problem(
        name={"en": "broken part"},
        corrective={"en": "Stop."},
        source="common practice",
        stops_service=True,
    ),
}


def step(
    name: str,
    task: Task | None = None,
    *,
    requires: Iterable[str] = (),
    establishes: Iterable[str] = (),
    ends: Iterable[str] = (),
) -> Step:
    """A step whose sentence is its name."""
    return Step(
        id=name,
        phase="work",
        say={"en": f"Do {name}."},
        task=Do() if task is None else task,
        requires=tuple(requires),
        establishes=tuple(establishes),
        ends=tuple(ends),
    )


def hold(
    name: str,
    establishes: str,
    *,
    requires: Iterable[str] = (),
    ends: Iterable[str] = (),
    strength: Strength = Strength.PHRASE,
    verify: bool = False,
) -> Step:
    """A hold that establishes one condition."""
    task = Hold({"en": f"{establishes} now"}, strength, {"en": "Try it."} if verify else None)
    return step(name, task, requires=requires, establishes=[establishes], ends=ends)


def measure(least: int = 0, most: int = 20, limit: tuple[int, int] | None = (2, 5)) -> Measure:
    """A temperature; `limit` is the critical limit."""
    judged = limit and JudgedBy("cold", Decimal(limit[0]), Decimal(limit[1]), "invented")
    return Measure("temperature", "°C", Decimal(least), Decimal(most), (), judged or None)


WAIT = Wait(60.0)
REPEAT = Repeat(2, 3, {"en": "Clear?"})
COUNT = Count("seal", {"en": "seal"}, 2)
INSPECT = Inspect("seal", {"en": "seal"})


def plan(
    *steps: Step,
    lapses: Iterable[str] = (),
    hazards: Iterable[str] = (),
    warned: Iterable[str] = (),
    problems: Mapping[str, Problem] | None = None,
) -> Plan:
    """A plan of steps, numbered as lines 10, 20, 30 ... of `made.yaml`."""
    numbered = tuple(
        Step(**{n: getattr(one, n) for n in Step.__slots__} | {"line": 10 * place})
        for place, one in enumerate(steps, 1)
    )
    names = {n for one in steps for n in (*one.requires, *one.establishes, *one.ends)}
    conditions = {
        name: Condition(
            name={"en": name},
            lapses=name in set(lapses),
            present={"en": f"Beware of {name}."} if name in set(hazards) else None,
            without={"en": f"No {name}."} if name in set(warned) else None,
        )
        for name in sorted(names)
    }
    return Plan(
        procedure="made",
        version=1,
        digest="made",
        title={"en": "Made"},
        machine="m1",
        machine_name="Machine 1",
        during=Standing.COMING_APART,
        leaves=Standing.DRYING,
        follow={"en": "The manual comes first."},
        phases={"work": {"en": "Work"}},
        steps=numbered,
        conditions=conditions,
        problems=PROBLEMS if problems is None else problems,
        file="made.yaml",
    )


def every_kind() -> Plan:
    """A short day: each kind of step once, two holds, a hazard, and a release that is guarded."""
    return plan(
        step("wash hands", establishes=["clean hands"]),
        step("flush", REPEAT, requires=["clean hands"], establishes=["flushed"]),
        step("mix", measure(), establishes=["chemical inside"]),
        step("soak", WAIT, requires=["flushed"]),
        step("drain", ends=["chemical inside"]),
        hold("isolate", "isolated", verify=True),
        step("open", requires=["isolated", "flushed"], ends=["guarded"], establishes=["open"]),
        step("count", COUNT, requires=["isolated", "open", "clean hands"]),
        step("look", INSPECT, requires=["isolated"]),
        hold("close", "guarded", requires=["isolated"], ends=["open"]),
        hold(
            "power",
            "powered",
            requires=["guarded"],
            ends=["isolated"],
            strength=Strength.SECOND_PERSON,
            verify=True,
        ),
        step("chill", measure(), requires=["guarded", "powered"]),
        lapses=["clean hands"],
        hazards=["chemical inside"],
        warned=["guarded"],
    )


def chain(length: int) -> Plan:
    """A line of any length in four rounds: isolate, work behind the guard, close, power on."""
    kinds = [None, None, measure(), None, REPEAT, None, COUNT, None, WAIT, None]
    made: list[Step] = []
    span = length // 4
    for n in range(length):
        place = n % span
        if place == 0:
            made.append(step(f"wash {n}", establishes=["hands"]))
        elif place == 1:
            made.append(hold(f"isolate {n}", "isolated", verify=True, ends=["powered"]))
        elif place == span - 2:
            made.append(hold(f"close {n}", "guarded", requires=["isolated"]))
        elif place == span - 1:
            gives, ends = "powered", ["isolated", "guarded"]
            made.append(hold(f"power {n}", gives, requires=["guarded"], ends=ends))
        else:
            needs = [*(["isolated"] if n % 3 == 0 else []), *(["hands"] if n % 5 == 0 else [])]
            gives = f"fact {n // 4}"
            given = [gives] if n % 4 == 0 else []
            made.append(step(f"s{n}", kinds[n % 10], requires=needs, establishes=given))
    return plan(*made, lapses=["hands"])

"""Small plans for tests: a few lines for a step, everything else filled in."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal
from typing import Any

from kiosk.engine.commands import Channel, Command, Evidence, Instant, Refusal
from kiosk.engine.decide import decide
from kiosk.engine.events import Event
from kiosk.engine.state import State, fold
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

TOUCH = Evidence(Channel.TOUCH)
VOICE = Evidence(Channel.VOICE, "heard", 0.9, "ear")


def en(text: str) -> dict[str, str]:
    return {"en": text}


PROBLEMS = {
    "leak": Problem(name=en("leak"), corrective=en("Wipe."), source="common practice"),
    "hurt": Problem(
        name=en("someone is hurt"), corrective=en("Call help."), source="common practice",
        stops_service=True,
    ),
}  # fmt: skip


def step(
    step_id: str, task: Task | None = None, *, requires: Iterable[str] = (),
    establishes: Iterable[str] = (), ends: Iterable[str] = (), **fields: Any,
) -> Step:  # fmt: skip
    """A step whose sentence is its name."""
    return Step(
        id=step_id, phase="work", say=en(f"Do {step_id}."), task=task or Do(),
        requires=tuple(requires), establishes=tuple(establishes), ends=tuple(ends), **fields,
    )  # fmt: skip


def hold(
    step_id: str, establishes: str, *, verify: bool = False, strength: Strength = Strength.PHRASE,
    **fields: Any,
) -> Step:  # fmt: skip
    """A hold that establishes one condition."""
    task = Hold(en(f"{establishes} now"), strength, en("Does it hold?") if verify else None)
    return step(step_id, task, establishes=[establishes], **fields)


def plan(
    *steps: Step, hazards: Iterable[str] = (), lapses: Iterable[str] = (),
    warned: Iterable[str] | None = None,
) -> Plan:  # fmt: skip
    """A plan of steps, as lines 10, 20, 30 ... of `made.yaml`. At an early end it is told of the
    hazards that are there, and of `warned` that are not: of all others, where none are named."""
    numbered = tuple(replace(one, line=10 * place) for place, one in enumerate(steps, 1))
    names = {name for one in steps for name in (*one.requires, *one.establishes, *one.ends)}
    missed = names - set(hazards) if warned is None else set(warned)
    return Plan(
        procedure="made", version=1, digest="0" * 64, title=en("Made"), machine="m1",
        machine_name="Machine one", during=Standing.COMING_APART, leaves=Standing.DRYING,
        follow=en("Follow the manual."), phases={"work": en("Work")}, steps=numbered,
        conditions={
            name: Condition(
                name=en(name), lapses=name in set(lapses),
                present=en(f"{name} is there") if name in set(hazards) else None,
                without=en(f"no {name}") if name in missed else None,
            )
            for name in sorted(names)
        },
        problems=PROBLEMS, file="made.yaml",
    )  # fmt: skip


TEMPERATURE = Measure(
    "mix temperature", "°C", Decimal(-5), Decimal(40), (Decimal(4), Decimal("4.5"), Decimal(9)),
    JudgedBy("mix temperature", None, Decimal(5), "3-501.16(A)(2)"),
)  # fmt: skip

EVERY_KIND = plan(
    step("hands", establishes=("hands clean",)),
    step("guards", establishes=("guards on",)),
    step("flush", Repeat(2, 3, en("Is it clear?")), requires=("hands clean",)),
    step("soak", Wait(60.0), requires=("guards on",), establishes=("soaked",)),
    hold("isolate", "power isolated", verify=True),
    step("door", requires=("power isolated",), ends=("guards on",), establishes=("door off",)),
    step("rings", Count("ring", en("ring"), 4), requires=("power isolated",)),
    step("blade", Inspect("blade", en("blade"))),
    step("door-on", requires=("power isolated",), establishes=("guards on",), ends=("door off",)),
    hold("power", "power on", requires=("guards on",), ends=("power isolated",)),
    step("temperature", TEMPERATURE, requires=("power on",), corrective=en("Wait for cold.")),
    hazards=("door off",),
    lapses=("hands clean",),
)
"""One step of every kind, and a power switch."""


class Walker:
    """Drives the pure engine by hand: a state, a clock, and the events so far."""

    def __init__(self, of: Plan, boot: str = "boot-1") -> None:
        self.plan = of
        self.state = State()
        self.events: list[Event] = []
        self.now = 1000.0
        self.boot = boot

    def do(self, act: Any, by: Evidence = TOUCH) -> tuple[Event, ...] | Refusal:
        at = Instant(1_774_000_000.0 + self.now, self.now, self.boot)
        decided = decide(self.plan, self.state, Command(act, at, by))
        if not isinstance(decided, Refusal):
            self.state = fold(decided, self.state)
            self.events.extend(decided)
        return decided

    def all(self, *acts: Any, by: Evidence = TOUCH) -> Walker:
        """Do several acts; each must be taken."""
        for act in acts:
            decided = self.do(act, by)
            if isinstance(decided, Refusal):
                raise AssertionError(f"{act} in {self.state.step}: {decided.why}")
        return self

    def facts(self) -> list[str]:
        return [type(event.fact).__name__ for event in self.events]

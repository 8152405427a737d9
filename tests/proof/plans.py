"""Plans for the prover: one with every kind of step, and one of any length."""

from __future__ import annotations

from decimal import Decimal

from kiosk.procedure.model import Strength
from kiosk.procedure.plan import Count, Inspect, JudgedBy, Measure, Plan, Repeat, Step, Wait
from tests.plans import hold, plan, step


def measure(least: int = 0, most: int = 20, limit: tuple[int, int] | None = (2, 5)) -> Measure:
    """A temperature; `limit` is the critical limit."""
    judged = limit and JudgedBy("cold", Decimal(limit[0]), Decimal(limit[1]), "invented")
    return Measure("temperature", "°C", Decimal(least), Decimal(most), (), judged or None)


WAIT = Wait(60.0)
REPEAT = Repeat(2, 3, {"en": "Clear?"})
COUNT = Count("seal", {"en": "seal"}, 2)
INSPECT = Inspect("seal", {"en": "seal"})


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

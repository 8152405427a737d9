"""The shipped limits profiles, and one line to judge a solution by one of them."""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from pathlib import Path

from kiosk.procedure.load import load_record
from kiosk.procedure.model import LimitsProfile
from kiosk.trade.solution import Label, Solution, Verdict, judge
from kiosk.trade.solution_table import Agent
from kiosk.trade.units import Quantity, quantity

FOLDER = Path(__file__).parents[2] / "procedures" / "limits"
SHIPPED = tuple(sorted(path.stem for path in FOLDER.glob("*.yaml")))


@lru_cache
def profile(name: str) -> LimitsProfile:
    return load_record(FOLDER / f"{name}.yaml", LimitsProfile)


def verdict(
    strength: str | None,
    ph: str | None = None,
    temperature: str | None = None,
    *,
    agent: Agent = Agent.CHLORINE,
    by: str = "food-code-2022",
    hardness: str | None = None,
    label: Label | None = None,
) -> Verdict:
    solution = Solution(
        agent=agent, strength=number(strength), ph=number(ph), hardness=number(hardness),
        temperature=degrees(temperature),
    )  # fmt: skip
    return judge(solution, profile(by).solutions, label)


def number(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)


def degrees(text: str | None) -> Quantity | None:
    return None if text is None else quantity(text)


def ways(found: Verdict) -> set[tuple[str, ...]]:
    return {tuple(f"{need.kind} {need.value or ''}".strip() for need in way) for way in found.ways}

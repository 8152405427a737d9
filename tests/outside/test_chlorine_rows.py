"""Food Code 4-501.114: strength, pH and temperature of a solution, every corner of the table.

READ (state): Wisconsin Food Code 4-501.114, current to May 2024, and WAC 246-215-04565. "And above"
on the row of 100 mg/L is a reading of ours.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from kiosk.trade.solution import Label, Solution, Why, judge
from kiosk.trade.solution_table import Agent, SolutionRow, SolutionTable
from tests.outside.profiles import degrees, profile, verdict, ways

TABLE = [
    ("25", "10", 49, 120), ("25", "8", 49, 120), ("49", "10", 49, 120), ("49", "8", 49, 120),
    ("50", "10", 38, 100), ("50", "8", 24, 75), ("99", "10", 38, 100), ("99", "8", 24, 75),
    ("100", "10", 13, 55), ("100", "8", 13, 55), ("200", "10", 13, 55), ("200", "8", 13, 55),
]  # fmt: skip


@pytest.mark.parametrize(("strength", "ph", "celsius", "fahrenheit"), TABLE)
def test_least_temperature_as_printed_in_both_units(strength, ph, celsius, fahrenheit):
    """READ (state)."""
    assert verdict(strength, ph, f"{celsius} °C").passes
    assert verdict(strength, ph, f"{fahrenheit} °F").passes
    assert ways(verdict(strength, ph, f"{celsius - 0.1} °C")) & {(f"warmer {celsius} °C",)}
    assert ways(verdict(strength, ph, f"{fahrenheit - 0.1} °F")) & {(f"warmer {fahrenheit} °F",)}


@pytest.mark.parametrize("strength", ["25", "50", "99", "100", "200"])
def test_above_ph_ten_there_is_no_row(strength):
    """READ (state): the table ends at pH 10."""
    assert verdict(strength, "10", "60 °C").passes
    found = verdict(strength, "10.1", "60 °C")
    assert found.why is Why.NO_ROW
    assert ways(found) == {("lower pH 10 pH",)}


def test_below_the_first_row_nothing_passes():
    """READ (state)."""
    assert verdict("25", "7", "49 °C").passes
    assert ways(verdict("24.9", "7", "49 °C")) == {("stronger 25 mg/L",)}


def test_a_strength_between_two_rows_is_judged_by_the_weaker_one():
    """The table prints whole mg/L; a reading of ours: 49.5 is no 50."""
    assert verdict("49.5", "7", "49 °C").passes
    assert not verdict("49.5", "7", "48 °C").passes
    assert not verdict("99.5", "10", "37 °C").passes


def test_a_reading_is_judged_in_the_unit_in_which_it_was_taken():
    """12.9 °C is 55.2 °F: below the printed 13 °C, above the printed 55 °F (CALC)."""
    assert not verdict("100", "7", "12.9 °C").passes
    assert verdict("100", "7", "55.2 °F").passes


@pytest.mark.parametrize(
    ("strength", "ph", "temperature", "passes"),
    [
        ("12.5", "5.0", "68 °F", True), ("25", "5.0", "20 °C", True),
        ("12.4", "5.0", "20 °C", False),
        ("25.1", "5.0", "20 °C", False), ("12.5", "5.1", "20 °C", False),
        ("12.5", "5.0", "67 °F", False), ("12.5", "5.0", "19.9 °C", False),
    ],
)  # fmt: skip
def test_iodine(strength, ph, temperature, passes):
    """12.5-25 mg/L, 68 °F (20 °C), pH 5.0 or less. READ (state), same source."""
    assert verdict(strength, ph, temperature, agent=Agent.IODINE).passes is passes


def test_the_maker_may_state_another_ph_for_iodine():
    """READ (state)."""
    label = Label(agent=Agent.IODINE, ph_most=Decimal("5.6"))
    assert verdict("12.5", "5.6", "20 °C", agent=Agent.IODINE, label=label).passes
    assert not verdict("12.5", "5.7", "20 °C", agent=Agent.IODINE, label=label).passes


def test_an_older_edition_asks_for_warmer_iodine():
    """Indiana 410 IAC 7-24-294 prints 75 °F. READ inrules.elaws.us; 24 °C as printed elsewhere."""
    newer = profile("food-code-2022").solutions
    rows = [row for row in newer.rows if row.agent is Agent.IODINE]
    older = replace(
        newer,
        rows=tuple(
            replace(row, temperature={"°C": Decimal(24), "°F": Decimal(75)}) for row in rows
        ),
    )
    solution = Solution(
        agent=Agent.IODINE, strength=Decimal(20), ph=Decimal(5), temperature=degrees("70 °F")
    )
    assert judge(solution, newer).passes
    assert ways(judge(solution, older)) == {("warmer 75 °F",)}


def test_older_texts_print_single_minimums():
    """25, 50 and 100 rather than ranges. READ La. Admin. Code 51:X-117; 410 IAC 7-24-294.

    Rows without an end give the same verdicts as the ranges.
    """
    newer = profile("food-code-2022").solutions
    older = replace(newer, rows=tuple(replace(row, most=None) for row in newer.rows))
    for strength in ("24", "25", "49", "50", "99", "100", "200"):
        for ph in ("8", "9", "11"):
            for temperature in ("12 °C", "24 °C", "38 °C", "49 °C"):
                solution = Solution(
                    agent=Agent.CHLORINE, strength=Decimal(strength), ph=Decimal(ph),
                    temperature=degrees(temperature),
                )  # fmt: skip
                assert judge(solution, newer).passes is judge(solution, older).passes


QUAT = Label(agent=Agent.QUAT, least=Decimal(200), most=Decimal(400))
"""200 to 400 mg/L: the usual range on labels (MEM)."""


@pytest.mark.parametrize(
    ("temperature", "hardness", "passes"),
    [("75 °F", "500", True), ("24 °C", "500", True), ("74 °F", "500", False),
     ("23.9 °C", "500", False), ("75 °F", "501", False)],
)  # fmt: skip
def test_quats_need_warmth_and_soft_water(temperature, hardness, passes):
    """75 °F (24 °C), hardness 500 mg/L or less. READ (state)."""
    found = verdict("200", None, temperature, agent=Agent.QUAT, hardness=hardness, label=QUAT)
    assert found.passes is passes


def test_quats_follow_their_label():
    """Strength by the label; its hardness limit counts in place of 500 mg/L. READ (state)."""
    without = verdict("200", None, "24 °C", agent=Agent.QUAT, hardness="100")
    assert ways(without) == {("read label",)}
    weak = verdict("199", None, "24 °C", agent=Agent.QUAT, hardness="100", label=QUAT)
    assert weak.why is Why.OFF_LABEL
    hard = replace(QUAT, hardness_most=Decimal(650))
    assert verdict("200", None, "24 °C", agent=Agent.QUAT, hardness="650", label=hard).passes


def test_what_the_table_does_not_name_is_refused():
    """Other chemistries: by their own label, shown and approved. READ (state)."""
    only_iodine = SolutionTable(
        rows=(
            SolutionRow(
                agent=Agent.IODINE, least=Decimal(1), clause="x", source="invented", tag="CALC"
            ),
        )
    )
    found = judge(Solution(agent=Agent.CHLORINE, strength=Decimal(100)), only_iodine)
    assert found.why is Why.NO_ROW
    assert found.ways == ()

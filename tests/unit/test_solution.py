"""What keeps a solution from passing, what would make it pass, and readings that cannot be."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load import load_record
from kiosk.procedure.model import LimitsProfile
from kiosk.trade.solution import Kind, Label, NotASolution, Solution, judge
from kiosk.trade.solution_table import Agent, Cap, ContactRow, SolutionRow, SolutionTable
from kiosk.trade.solution_words import english, source
from kiosk.trade.units import Quantity, quantity

WHERE = {"clause": "1-1", "source": "invented", "tag": "CALC", "edition": "first"}


def row(least: str, most: str | None = None, **more) -> SolutionRow:
    end = None if most is None else Decimal(most)
    return SolutionRow(agent=Agent.CHLORINE, least=Decimal(least), most=end, **more, **WHERE)


WARM = {"°C": Decimal(24), "°F": Decimal(75)}
CONTACT = ContactRow(agent=Agent.CHLORINE, seconds=Decimal(10), **WHERE)
TABLE = SolutionTable(
    rows=(row("50", "99", ph_most=Decimal(8), temperature=WARM),), contacts=(CONTACT,)
)


def chlorine(strength="60", ph="7", temperature="25 °C") -> Solution:
    return Solution(
        agent=Agent.CHLORINE, strength=Decimal(strength), ph=Decimal(ph),
        temperature=quantity(temperature),
    )  # fmt: skip


def test_all_that_is_wrong_with_one_row_is_told_together():
    (way,) = judge(chlorine("40", "9", "20 °C"), TABLE).ways
    assert [need.kind for need in way] == [Kind.STRONGER, Kind.LOWER_PH, Kind.WARMER]


def test_above_the_last_row_nothing_passes():
    (way,) = judge(chlorine("99.5"), TABLE).ways
    assert [(need.kind, need.value) for need in way] == [
        (Kind.WEAKER, Quantity(Decimal(99), "mg/L"))
    ]


def test_a_hole_between_two_rows_is_no_row():
    gap = replace(TABLE, rows=(row("25", "49"), row("100")))
    assert not judge(chlorine("75"), gap).passes
    assert not judge(chlorine("49.5"), gap).passes
    assert judge(chlorine("49"), gap).passes
    assert judge(chlorine("100"), gap).passes


def test_without_a_contact_time_nothing_passes():
    found = judge(chlorine(), replace(TABLE, contacts=()))
    assert not found.passes
    assert found.ways[0][0].kind is Kind.READ_LABEL


def test_a_label_narrows_what_the_code_allows():
    label = Label(agent=Agent.CHLORINE, temperature=quantity("86 °F"), seconds=Decimal(60))
    cold = judge(chlorine(), TABLE, label)
    assert cold.ways[0][0].value == Quantity(Decimal(30), "°C")
    assert judge(chlorine(temperature="30 °C"), TABLE, label).seconds == 60


def test_a_label_does_not_widen_the_ph_of_a_row():
    label = Label(agent=Agent.CHLORINE, ph_most=Decimal(10))
    assert not judge(chlorine(ph="9"), TABLE, label).passes
    letting = replace(TABLE, rows=(replace(TABLE.rows[0], label_ph=True),))
    assert judge(chlorine(ph="9"), letting, label).passes


def test_of_two_caps_the_lower_one_holds():
    caps = tuple(Cap(agent=Agent.CHLORINE, most=Decimal(most), **WHERE) for most in (90, 70))
    found = judge(chlorine("80"), replace(TABLE, caps=caps))
    assert found.cap is not None
    assert found.cap.most == 70


@pytest.mark.parametrize(
    ("solution", "says"),
    [
        (
            chlorine(),
            "It is strong enough. Contact time: 10 seconds or longer. [1-1, first (CALC)]",
        ),
        (chlorine("40"), "To mend: make it 50 mg/L or stronger, then test it again."),
        (chlorine(ph="9"), "bring it to pH 8 or less"),
        (chlorine(temperature="70 °F"), "warm it to 75 °F or more"),
        (Solution(agent=Agent.CHLORINE), "measure the strength and measure the pH and measure the"),
        (Solution(agent=Agent.IODINE), "Ask your supervisor."),
    ],
)
def test_english(solution, says):
    assert says in english(judge(solution, TABLE))


def test_the_source_of_a_row_falls_back_on_the_profile():
    assert source(replace(CONTACT, edition=None), "Code 2022") == "1-1, Code 2022 (CALC)"


@pytest.mark.parametrize(
    ("fields", "key", "says"),
    [
        ({"strength": Decimal(-1)}, "bad-strength", "read the strip again"),
        ({"strength": Decimal("NaN")}, "bad-strength", "read the strip again"),
        ({"ph": Decimal("14.1")}, "bad-ph", "between 0 and 14"),
        ({"ph": Decimal("NaN")}, "bad-ph", "between 0 and 14"),
        ({"hardness": Decimal(-1)}, "bad-hardness", "test the water again"),
        ({"temperature": quantity("24 g")}, "bad-temperature", "in °C or °F"),
        ({"temperature": quantity("200 °C")}, "bad-temperature", "read again"),
        ({"temperature": Quantity(Decimal("NaN"), "°C")}, "bad-temperature", "read again"),
    ],
)
def test_a_reading_that_cannot_be(fields, key, says):
    with pytest.raises(NotASolution, match=says) as caught:
        Solution(agent=Agent.CHLORINE, **fields)
    assert caught.value.key == key


def test_the_label_of_another_agent():
    with pytest.raises(NotASolution, match="use the right label"):
        judge(chlorine(), TABLE, Label(agent=Agent.IODINE))


HEAD = """\
id: code
title: {en: Code}
edition: test edition
date: "2022"
limits: {}
solutions:
  rows:
    - {agent: chlorine, clause: x, source: x, tag: READ, %s}
"""


@pytest.mark.parametrize(
    ("fields", "says"),
    [
        ("least: 50, temperature: {°C: 24}", "both printed numbers"),
        ("least: 50, most: 25", "must not lie above"),
        ("most: 25", "needs 'least' or 'by_label: true'"),
        ("least: 50, ph: 8", "'ph' is not known here"),
        ("least: fifty", "is not a number"),
    ],
)
def test_a_faulty_row_is_refused_with_its_line(tmp_path, fields, says):
    (tmp_path / "code.yaml").write_text(HEAD % fields, encoding="utf-8")
    with pytest.raises(FaultyFile, match=says) as caught:
        load_record(tmp_path / "code.yaml", LimitsProfile)
    assert caught.value.faults[0].line == 8

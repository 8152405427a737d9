"""Every limit of every shipped profile says where it stands; what no law says is not made up."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.solution import Label, Why
from kiosk.trade.solution_table import Agent
from tests.outside.profiles import SHIPPED, profile, verdict

EUROPE = "eu-food-hygiene"


@pytest.mark.parametrize("name", SHIPPED)
def test_each_limit_has_clause_source_tag_edition_and_date(name):
    it = profile(name)
    table = it.solutions
    for one in (*it.limits.values(), *table.rows, *table.contacts, *table.caps):
        assert one.clause
        assert one.source
        assert one.tag.startswith(("READ", "MEM", "CALC"))
        assert one.edition or it.edition
        assert one.date or it.date


@pytest.mark.parametrize("name", SHIPPED)
def test_each_row_has_a_contact_time_for_its_agent(name):
    table = profile(name).solutions
    assert table.rows
    assert {row.agent for row in table.rows} == {one.agent for one in table.contacts}


@pytest.mark.parametrize("name", [one for one in SHIPPED if one != EUROPE])
@pytest.mark.parametrize("unit", ["°C", "°F"])
def test_what_the_steps_ask_for_is_a_solution_that_the_table_lists(name, unit):
    """The weakest and coldest that the steps let pass, at the highest pH that the table knows."""
    limits = profile(name).limits
    least = limits["sanitizer temperature"].bounds[unit].least
    for strength in (
        limits["sanitizer strength"].bounds["mg/L"].least,
        limits["sanitizer strength"].bounds["mg/L"].most,
    ):
        found = verdict(str(strength), "10", f"{least} {unit}", by=name)
        assert found.passes
        assert found.seconds == limits["contact time"].bounds["s"].least


@pytest.mark.parametrize("agent", [Agent.CHLORINE, Agent.IODINE, Agent.QUAT])
def test_european_law_has_no_table_so_that_the_label_alone_speaks(agent):
    """MEM: Regulation (EU) 528/2012; no table of strengths is known."""
    assert verdict("200", "7", "24 °C", agent=agent, by=EUROPE).why is Why.NO_ROW
    partly = Label(agent=agent, least=Decimal(100), most=Decimal(300))
    assert verdict("200", "7", "24 °C", agent=agent, by=EUROPE, label=partly).why is Why.NO_CONTACT
    whole = Label(agent=agent, least=Decimal(100), most=Decimal(300), seconds=Decimal(300))
    assert verdict("200", "7", "24 °C", agent=agent, by=EUROPE, label=whole).seconds == 300
    assert verdict("99", "7", "24 °C", agent=agent, by=EUROPE, label=whole).why is Why.OFF_LABEL


def test_european_steps_have_no_borrowed_strength():
    assert set(profile(EUROPE).limits) == {"mix temperature"}


def test_irish_advice_on_cold():
    """0-5 °C. READ fsai.ie, 30 Nov 2022."""
    bounds = profile(EUROPE).limits["mix temperature"].bounds
    assert (bounds["°C"].most, bounds["°F"].most) == (5, 41)

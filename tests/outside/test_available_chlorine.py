"""Percent available chlorine: from labels, by stoichiometry, and against chempy's molar masses."""

from __future__ import annotations

from decimal import Decimal

import pytest
from chempy import Substance

from kiosk.trade.available_chlorine import (
    STOICHIOMETRIC,
    NotALabel,
    from_hypochlorite,
    trade_percent,
)
from kiosk.trade.product import (
    hypochlorite,
    label_dilution,
    liquid_by_trade_percent,
    liquid_by_weight,
    packets,
    solid,
)
from kiosk.trade.solution_table import Agent


@pytest.mark.parametrize(
    ("hypochlorite_percent", "available"), [("5.25", "5.0"), ("6", "5.7"), ("8.25", "7.86")]
)
def test_from_sodium_hypochlorite(hypochlorite_percent, available):
    """READ: water-treatment forums; an industrial profile."""
    places = len(available.partition(".")[2])
    assert f"{from_hypochlorite(Decimal(hypochlorite_percent)):.{places}f}" == available


def test_the_factor():
    """70.906/74.44, x 0.952 in short. READ. Not 10/7, which one stored page has."""
    assert f"{from_hypochlorite(Decimal(100)):.1f}" == "95.3"
    assert abs(from_hypochlorite(Decimal(1)) - Decimal("0.952")) < Decimal("0.001")


def test_trade_percent():
    """6 wt % is 5.71 wt % available chlorine, 6.17 trade. READ; so its gravity is 1.08 (CALC)."""
    weight = from_hypochlorite(Decimal(6))
    assert abs(weight - Decimal("5.71")) < Decimal("0.01")
    assert f"{trade_percent(weight, Decimal('1.08')):.2f}" == "6.17"


def test_trade_percent_is_grams_per_litre_over_ten():
    """READ, same source; a millilitre brings as many milligrams as a litre brings grams."""
    assert liquid_by_trade_percent(Decimal("6.17")).strength == Decimal("61.7")


@pytest.mark.parametrize(
    ("compound", "formula", "chlorines", "percent"),
    [
        ("sodium dichloroisocyanurate", "NaC3Cl2N3O3", 2, "64.5"),
        ("sodium dichloroisocyanurate dihydrate", "NaC3Cl2N3O5H4", 2, "55.4"),
        ("trichloroisocyanuric acid", "C3Cl3N3O3", 3, "91.5"),
        ("calcium hypochlorite", "CaCl2O2", 2, "99.2"),
    ],
)
def test_the_stoichiometric_most(compound, formula, chlorines, percent):
    """CALC: every Cl at nitrogen or oxygen counts as Cl2. Molar masses: chempy."""
    mass = Substance.from_formula(formula).mass
    chlorine = Substance.from_formula("Cl2").mass
    assert STOICHIOMETRIC[compound] == Decimal(percent)
    assert f"{100 * chlorines * chlorine / mass:.1f}" == percent


def test_the_molar_masses_of_the_factor():
    """70.906 and 74.44 as printed. READ; chempy agrees to its rounding."""
    assert f"{Substance.from_formula('Cl2').mass:.1f}" == "70.9"
    assert f"{Substance.from_formula('NaOCl').mass:.2f}" == "74.44"


def test_labels_make_products():
    assert hypochlorite(Decimal(6), Decimal("1.08")) == liquid_by_weight(
        from_hypochlorite(Decimal(6)), Decimal("1.08")
    )
    assert solid(Decimal("55.4")).strength == 554
    assert packets(Decimal(2), Decimal("55.4")).packet_grams == 2
    assert label_dilution(Agent.QUAT, Decimal(4), Decimal(200)).strength == 50


@pytest.mark.parametrize(
    ("make", "key", "says"),
    [
        (lambda: solid(Decimal(0)), "bad-percent", "above 0 and up to 100"),
        (lambda: solid(Decimal("100.1")), "bad-percent", "up to 100"),
        (lambda: solid(Decimal("0.554")), "share-not-percent", "write 55.4"),
        (lambda: packets(Decimal(0), Decimal(55)), "bad-packet", "more than nothing"),
        (lambda: liquid_by_trade_percent(Decimal(-5)), "bad-percent", "above 0"),
        (lambda: liquid_by_trade_percent(Decimal("52.5")), "too-strong", "grams of available"),
        (lambda: liquid_by_weight(Decimal(5), Decimal(0)), "bad-gravity", "as 1.08"),
        (lambda: liquid_by_weight(Decimal(5), Decimal(1080)), "bad-gravity", "as 1.08"),
        (lambda: hypochlorite(Decimal(101), Decimal(1)), "bad-percent", "up to 100"),
        (lambda: label_dilution(Agent.IODINE, Decimal(0), Decimal(25)), "bad-dilution", "label"),
        (lambda: solid(Decimal("NaN")), "bad-percent", "cannot be"),
    ],
)
def test_an_impossible_label_is_refused(make, key, says):
    with pytest.raises(NotALabel, match=says) as caught:
        make()
    assert caught.value.key == key

"""The share of hypochlorous acid against tables and textbooks, and the fit's range."""

from __future__ import annotations

import math
from decimal import Decimal

import pytest
from chempy.equilibria import EqSystem

from kiosk.trade.hypochlorous import NoShare, dissociation, hypochlorous, share
from kiosk.trade.units import NotAQuantity, Quantity, quantity

PH = ("6", "6.5", "7", "7.5", "8", "8.5", "9", "10")
TABLE = [
    ("0", "7.825", ("98.5", "95.5", "87.0", "67.9", "40.1", "17.4", "6.3", "0.7")),
    ("5", "7.754", ("98.3", "94.7", "85.0", "64.2", "36.2", "15.2", "5.4", "0.6")),
    ("13", "7.655", ("97.8", "93.5", "81.9", "58.8", "31.1", "12.5", "4.3", "0.4")),
    ("20", "7.582", ("97.4", "92.3", "79.2", "54.7", "27.6", "10.8", "3.7", "0.4")),
    ("24", "7.545", ("97.2", "91.7", "77.8", "52.6", "26.0", "10.0", "3.4", "0.3")),
    ("25", "7.537", ("97.2", "91.6", "77.5", "52.1", "25.6", "9.8", "3.3", "0.3")),
    ("38", "7.445", ("96.5", "89.8", "73.6", "46.8", "21.8", "8.1", "2.7", "0.3")),
]


@pytest.mark.parametrize(("celsius", "pka", "percents"), TABLE)
def test_the_table(celsius, pka, percents):
    """CALC from Morris 1966, whose constants are READ in several public source files."""
    temperature = Quantity(Decimal(celsius), "°C")
    assert f"{dissociation(temperature):.3f}" == pka
    found = [hypochlorous(Decimal(ph), temperature).share * 100 for ph in PH]
    assert [f"{one:.1f}" for one in found] == list(percents)


def test_a_textbook_example():
    """Davis, Water and Wastewater Engineering, Ex. 13-1: READ. 77.6 % from its ratio: CALC."""
    found = share(Decimal("7.0"), Decimal("7.54"))
    assert f"{found / (1 - found):.2f}" == "3.47"
    assert f"{found * 100:.1f}" == "77.6"
    assert f"{dissociation(quantity('25 °C')):.2f}" == "7.54"


def test_near_ph_seven_about_four_fifths():
    """Near pH 7 about 80 %. READ foodsafetyclearinghouse.org/es/node/1119."""
    assert round(hypochlorous(Decimal(7), quantity("20 °C")).share, 1) == Decimal("0.8")


@pytest.mark.parametrize("acid", [1e-5, 2e-4, 5e-4, 9e-4, 1e-3])
def test_against_an_equilibrium_solver(acid):
    """chempy solves the mass action of acid, hypochlorite and water; its pH must give its share."""
    pka = dissociation(quantity("25 °C"))
    system = EqSystem.from_string(
        f"HOCl = H+ + OCl-; 10**-{float(pka)}\nH2O = H+ + OH-; 1e-14/55.4"
    )
    start = {"HOCl": acid, "OCl-": 1e-3 - acid, "H+": 1e-7, "OH-": 1e-7, "H2O": 55.4}
    solved, _, sane = system.root(start)
    assert sane
    found = dict(zip(system.substances, solved, strict=True))
    ph = Decimal(-math.log10(found["H+"]))
    expected = found["HOCl"] / (found["HOCl"] + found["OCl-"])
    assert float(share(ph, pka)) == pytest.approx(expected, rel=1e-6)


def test_fahrenheit_and_celsius_agree():
    warm, same = quantity("77 °F"), quantity("25 °C")
    assert dissociation(warm) == dissociation(same)


@pytest.mark.parametrize(("temperature", "flagged"), [("35 °C", False), ("35.1 °C", True)])
def test_above_thirty_five_degrees_it_is_marked_as_extrapolated(temperature, flagged):
    """Fit range 0-35 °C: MEM."""
    found = hypochlorous(Decimal(7), quantity(temperature))
    assert found.extrapolated is flagged
    assert ("warmer than the formula" in found.english) is flagged


def test_isocyanurates_have_less_than_the_formula_says():
    """MEM: they bind chlorine to cyanurate."""
    found = hypochlorous(Decimal(7), quantity("25 °C"), isocyanurate=True)
    assert found.at_most
    assert found.english.startswith("At most 77.5 %")
    assert "cyanurate" in found.english
    assert hypochlorous(Decimal(7), quantity("25 °C")).english == (
        "77.5 % of the free chlorine is HOCl."
    )


@pytest.mark.parametrize(
    ("ph", "temperature", "key", "says"),
    [
        ("-0.1", "25 °C", "bad-ph", "between 0 and 14"),
        ("14.1", "25 °C", "bad-ph", "read the strip again"),
        ("7", "-0.1 °C", "too-cold", "below 0 °C"),
        ("7", "31 °F", "too-cold", "below 0 °C"),
        ("7", "49.1 °C", "too-warm", "let it cool"),
    ],
)
def test_out_of_range_is_refused(ph, temperature, key, says):
    with pytest.raises(NoShare, match=says) as caught:
        hypochlorous(Decimal(ph), quantity(temperature))
    assert caught.value.key == key


@pytest.mark.parametrize("odd", ["NaN", "Infinity", "-Infinity"])
def test_what_is_no_number_is_refused(odd):
    with pytest.raises(ValueError, match="cannot be a temperature"):
        hypochlorous(Decimal(7), Quantity(Decimal(odd), "°C"))


def test_another_unit_is_refused():
    with pytest.raises(NotAQuantity, match="not a temperature"):
        hypochlorous(Decimal(7), quantity("25 g"))

"""Doses of chlorine powder against values worked out elsewhere."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.trade.sanitizer import NoDose, powder_grams, whole_packets
from kiosk.trade.units import Quantity, litres, quantity

DIHYDRATE = Decimal("0.554")
"""NaDCC dihydrate, share of available chlorine: stoichiometry with Cl 35.453 (CALC)."""


@pytest.mark.parametrize(
    ("strength", "volume", "grams"),
    [("100", "10 L", "1.805"), ("100", "1 gal", "0.683"), ("200", "1 gal", "1.367")],
)
def test_powder_mass(strength, volume, grams):
    """Mass balance grams = ppm x litres / (1000 x share), NaDCC dihydrate 55.4 % (CALC)."""
    found = powder_grams(Decimal(strength), litres(quantity(volume)), DIHYDRATE)
    assert round(found, 3) == Decimal(grams)


def test_the_gallon():
    """US gallon 3785.41 mL: NIST SP 811 appendix B, from memory (MEM)."""
    assert round(litres(Quantity(Decimal(1), "gal")) * 1000, 2) == Decimal("3785.41")


def test_packets_are_rounded_up_and_the_true_strength_is_told():
    dose = whole_packets(Decimal(100), Decimal(10), DIHYDRATE, Decimal(1), Decimal(200))
    assert dose.count == 2
    assert round(dose.strength, 1) == Decimal("110.8")


def test_a_dose_over_the_no_rinse_cap_is_refused():
    """200 mg/L, 40 CFR 180.940(a): READ through secondary summaries, primary table not seen."""
    with pytest.raises(NoDose, match="above the cap of 200"):
        whole_packets(Decimal(100), Decimal(1), DIHYDRATE, Decimal(1), Decimal(200))


@pytest.mark.parametrize("bad", ["0", "-1", "1.01"])
def test_an_impossible_label_is_refused(bad):
    with pytest.raises(NoDose, match="between 0 and 1"):
        powder_grams(Decimal(100), Decimal(10), Decimal(bad))


positive = st.decimals("0.1", "500", places=1)


@given(strength=positive, volume=positive, more=positive)
def test_more_water_or_more_strength_needs_more_powder(strength, volume, more):
    first = powder_grams(strength, volume, DIHYDRATE)
    assert powder_grams(strength + more, volume, DIHYDRATE) > first
    assert powder_grams(strength, volume + more, DIHYDRATE) > first


@given(volume=positive, packet=st.decimals("0.1", "20", places=1), target=positive)
def test_whole_packets_reach_the_target_and_one_less_does_not(volume, packet, target):
    dose = whole_packets(target, volume, DIHYDRATE, packet, Decimal(10**9))
    assert dose.strength >= target
    assert dose.strength * (dose.count - 1) / dose.count < target

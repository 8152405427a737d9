"""The limits profile against published values, each with its tag.

READ (state): seen in a state adoption that carries the Food Code's section number; MEM: recalled
from memory; CALC: computed. None of them was seen in FDA's own file.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from pathlib import Path

import pytest

from kiosk.procedure.load import load_record
from kiosk.procedure.model import LimitsProfile
from kiosk.procedure.plan import JudgedBy

PROFILE = Path(__file__).parents[2] / "procedures" / "limits" / "food-code-2022.yaml"


@lru_cache
def profile() -> LimitsProfile:
    return load_record(PROFILE, LimitsProfile)


def passes(limit: str, value: str, unit: str) -> bool:
    bounds = profile().limits[limit].bounds[unit]
    return JudgedBy(limit, bounds.least, bounds.most, "").passes(Decimal(value))


@pytest.mark.parametrize(
    ("value", "unit", "verdict"),
    [("5", "°C", True), ("5.1", "°C", False), ("41", "°F", True), ("41.5", "°F", False)],
)
def test_cold_holding(value, unit, verdict):
    """3-501.16(A)(2): 41 °F (5 °C) or less. READ (state) 16 Del. 3-501.16, WAC 246-215-03525."""
    assert passes("mix temperature", value, unit) is verdict


@pytest.mark.parametrize(
    ("value", "unit", "verdict"),
    [("13", "°C", True), ("12", "°C", False), ("55", "°F", True), ("54", "°F", False)],
)
def test_sanitizer_temperature_at_100_mg_per_litre(value, unit, verdict):
    """4-501.114(A), row 100 mg/L: 55 °F (13 °C) up to pH 10. READ (state) Wisconsin, WAC."""
    assert passes("sanitizer temperature", value, unit) is verdict


@pytest.mark.parametrize(
    ("value", "verdict"),
    [("24", False), ("49", False), ("50", False), ("75", False), ("99", False),
     ("100", True), ("150", True), ("200", True), ("201", False)],
)  # fmt: skip
def test_sanitizer_strength(value, verdict):
    """4-501.114(A): below 100 mg/L a warmer solution or a pH would be needed. READ (state).

    The upper end, 200 mg/L without a rinse: 40 CFR 180.940(a). READ in secondary summaries.
    """
    assert passes("sanitizer strength", value, "mg/L") is verdict


def test_contact_time():
    """4-703.11(C): chlorine, at least 10 s. READ (state) Wisconsin ATCP 75 App., Maine, DC."""
    assert passes("contact time", "10", "s")
    assert not passes("contact time", "9.9", "s")


@pytest.mark.parametrize(
    ("value", "unit", "verdict"),
    [("43", "°C", True), ("42.5", "°C", False), ("110", "°F", True), ("109", "°F", False)],
)
def test_wash_temperature(value, unit, verdict):
    """4-501.19: 110 °F (43 °C). READ US Navy P-5010-1 item 4-2.13; clause number MEM."""
    assert passes("wash temperature", value, unit) is verdict


def test_hand_wash_time():
    """2-301.12: the whole procedure at least 20 s. READ (state) S.C. 61-25."""
    assert passes("hand wash time", "20", "s")
    assert not passes("hand wash time", "19", "s")


def test_a_reading_is_judged_in_the_unit_in_which_it_was_taken():
    """12.9 °C is 55.22 °F (CALC): too cold by the printed 13 °C, warm enough by 55 °F."""
    as_fahrenheit = Decimal("12.9") * 9 / 5 + 32
    assert as_fahrenheit == Decimal("55.22")
    assert not passes("sanitizer temperature", "12.9", "°C")
    assert passes("sanitizer temperature", str(as_fahrenheit), "°F")


@pytest.mark.parametrize("name", ["mix temperature", "sanitizer temperature", "wash temperature"])
def test_printed_pairs_agree_within_rounding(name):
    """Codes print rounded pairs; exact 55 °F = 12.78 °C, 110 °F = 43.33 °C (CALC)."""
    bounds = profile().limits[name].bounds
    for end in ("least", "most"):
        celsius, fahrenheit = getattr(bounds["°C"], end), getattr(bounds["°F"], end)
        assert (celsius is None) == (fahrenheit is None)
        if celsius is not None:
            assert abs((fahrenheit - 32) * 5 / 9 - celsius) < Decimal("0.5")


CLAUSES = {
    "mix temperature": ("3-501.16(A)(2)", "READ (state)"),
    "sanitizer strength": (
        "4-501.114(A); 40 CFR 180.940(a)",
        "READ (state); cap READ in secondary",
    ),
    "sanitizer temperature": ("4-501.114(A)", "READ (state)"),
    "contact time": ("4-703.11(C)", "READ (state)"),
    "wash temperature": ("4-501.19", "READ; clause number MEM"),
    "hand wash time": ("2-301.12", "READ (state)"),
}


def test_every_limit_names_clause_source_and_tag():
    limits = profile().limits
    assert set(limits) == set(CLAUSES)
    for name, (clause, tag) in CLAUSES.items():
        assert limits[name].clause == clause
        assert limits[name].tag.startswith(tag)
        assert limits[name].source

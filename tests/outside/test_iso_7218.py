"""Plate counts against ISO 7218:2007 and ISO 21149, one plate or two at each dilution.

READ: seen in a stored copy; MEM: recalled from memory; CALC: computed from the formula.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.plate_count import ISO_7218, Mark, Plate, Why, count_plates
from kiosk.trade.rounding import Qualifier

TENTH, HUNDREDTH, THOUSANDTH = Decimal("0.1"), Decimal("0.01"), Decimal("0.001")


def count(*plates: tuple[Decimal, int | Mark]):
    return count_plates([Plate(*one) for one in plates], ISO_7218)


def test_two_plates_at_one_dilution():
    """38 and 42 at 1e-1 give 400. READ npalib.ru, GOST ISO 21149-2020."""
    assert str(count((TENTH, 38), (TENTH, 42)).reported) == "400"


def test_one_plate():
    """60 at 1e-1 gives 600. READ, same."""
    assert str(count((TENTH, 60)).reported) == "600"


def test_two_plates_at_two_dilutions():
    """168, 215 and 14, 25: 422/0.022 = 19,182 -> 1.9 x 10^4. Counts MEM, result CALC."""
    found = count((HUNDREDTH, 168), (HUNDREDTH, 215), (THOUSANDTH, 14), (THOUSANDTH, 25))
    assert round(found.value) == 19_182
    assert str(found.reported) == "19,000"


def test_one_plate_at_each_of_two_dilutions():
    """sum(C) / (1.1 V d). READ almerja.com on ISO 7218:2007; numbers CALC."""
    found = count((HUNDREDTH, 150), (THOUSANDTH, 15))
    assert found.value == Decimal(165) / (Decimal("1.1") * HUNDREDTH)
    assert str(found.reported) == "15,000"


@pytest.mark.parametrize(
    ("colonies", "qualifier"),
    [(10, Qualifier.EXACT), (300, Qualifier.EXACT), (9, Qualifier.ESTIMATED),
     (301, Qualifier.ESTIMATED)],
)  # fmt: skip
def test_the_range_is_10_to_300(colonies, qualifier):
    """READ, same."""
    assert count((HUNDREDTH, colonies)).reported.qualifier is qualifier


@pytest.mark.parametrize(
    ("colonies", "written", "why"),
    [
        (9, "est. 900", Why.ALL_LOW),
        (4, "est. 400", Why.ALL_LOW),
        (3, "< 400", Why.PRESENT),
        (1, "< 400", Why.PRESENT),
        (0, "< 100", Why.NO_COLONIES),
    ],
)
def test_fewer_than_ten(colonies, written, why):
    """4 and more: an estimate; 1 to 3: present, fewer than 4; none: less than 1. READ, same."""
    found = count((HUNDREDTH, colonies))
    assert str(found.reported) == written
    assert [one.why for one in found.reasons] == [why]


def test_two_plates_with_fewer_than_four_each():
    """The bound of one plate, so that it never promises more; this project's reading."""
    assert str(count((HUNDREDTH, 2), (HUNDREDTH, 3)).reported) == "< 400"
    assert str(count((HUNDREDTH, 5), (HUNDREDTH, 3)).reported) == "est. 400"


def test_a_plate_below_ten_counts_beside_one_in_range():
    """MEM."""
    assert count((HUNDREDTH, 95), (THOUSANDTH, 4)).value == Decimal(99) / Decimal("0.011")


def test_too_many_everywhere():
    assert str(count((HUNDREDTH, Mark.TOO_MANY)).reported) == "> 30,000"

"""Most probable numbers against printed tables.

READ: seen in stored text; MEM: recalled from memory; CALC: computed. The confidence limits of
BAM's table are made by another method and are not compared.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.most_probable_number import METHOD, NotADesign, Tubes, most_probable_number
from kiosk.trade.rounding import Qualifier

THREE = ("0.1", "0.01", "0.001")


def number(*positive: int, amounts=THREE, tubes=3):
    return most_probable_number(
        [Tubes(Decimal(z), tubes, x) for z, x in zip(amounts, positive, strict=True)]
    )


@pytest.mark.parametrize(
    ("outcome", "written", "calc"),
    [
        ("0-0-1", "3.0", "3.008"), ("0-1-0", "3.0", "3.049"), ("1-0-0", "3.6", "3.571"),
        ("1-1-0", "7.4", "7.357"), ("1-1-1", "11", "11.18"), ("1-2-0", "11", "11.38"),
        ("2-0-0", "9.2", "9.178"), ("2-0-1", "14", "14.33"), ("2-1-0", "15", "14.69"),
        ("2-1-1", "20", "20.47"), ("2-2-0", "21", "21.06"), ("3-0-0", "23", "23.12"),
        ("3-0-1", "38", "38.50"), ("3-1-0", "43", "42.73"), ("3-1-1", "75", "74.89"),
        ("3-2-0", "93", "93.28"), ("3-2-1", "150", "149.4"), ("3-2-2", "210", "214.7"),
        ("3-3-0", "240", "239.8"), ("3-3-1", "460", "462.2"), ("3-3-2", "1,100", "1099"),
    ],
)  # fmt: skip
def test_three_tubes_at_each_of_three_amounts(outcome, written, calc):
    """MPN per gram at 0.1, 0.01, 0.001 g. READ Yousef, Analytical Food Microbiology, Table 3.2.

    3-3-0 and 3-3-1 are MEM; the unrounded numbers CALC, one unit of their last digit allowed.
    """
    found = number(*map(int, outcome.split("-")))
    assert str(found.reported) == written
    last_digit = Decimal(1).scaleb(Decimal(calc).as_tuple().exponent)
    assert abs(Decimal(repr(found.value)) - Decimal(calc)) <= last_digit / 2
    assert not found.improbable


def test_all_negative_and_all_positive():
    """< 3.0 and > 1,100. READ, same table."""
    none, every = number(0, 0, 0), number(3, 3, 3)
    assert (str(none.reported), str(every.reported)) == ("< 3.0", "> 1,100")
    assert (none.value, every.value) == (0, float("inf"))
    assert (none.low, every.high) == (0, float("inf"))


@pytest.mark.parametrize(
    ("outcome", "value", "low", "high"),
    [
        ((0, 1, 0), "3.1", "0.2", "13.4"),
        ((1, 1, 0), "7.4", "1.2", "23.3"),
        ((2, 0, 0), "9.2", "1.5", "30.6"),
        ((2, 0, 1), "14.3", "3.4", "40.5"),
    ],
)
def test_limits_by_likelihood_ratio(outcome, value, low, high):
    """Ridout's limits, printed to one decimal. READ, tests of the R package MPN.

    Two printed values are not the rounded ones: 3.1 where the equation gives 3.049, and 23.3 where
    it gives 23.246; another port of the same package gives ours to six digits.
    """
    found = number(*outcome)
    assert found.method == METHOD
    ours = (found.value, found.low, found.high)
    for printed, other in zip((value, low, high), ours, strict=True):
        allowed = 0.055 if printed in ("3.1", "23.3") else 0.05
        assert abs(float(printed) - other) <= allowed


def test_ten_times_less_sample_gives_ten_times_the_number():
    """2-2-0 at 0.01, 0.001, 0.0001 g: 21 x 10 = 2.1 x 10^2. READ livelib.biz."""
    assert str(number(2, 2, 0, amounts=("0.01", "0.001", "0.0001")).reported) == "210"


def test_five_tubes():
    """5-1-0 gives 33 per 100, and 3.3 per g at a tenth of the amounts.

    READ, Health Canada appendix D.
    """
    whole = number(5, 1, 0, amounts=("10", "1", "0.1"), tubes=5)
    assert round(whole.value * 100) == 33
    assert str(number(5, 1, 0, amounts=("1", "0.1", "0.01"), tubes=5).reported) == "3.3"


def test_an_improbable_outcome_is_flagged():
    """Below 1e-4 of the likeliest outcome. READ, manual of the R package MPN."""
    found = number(0, 0, 3)
    assert found.improbable
    assert "suspect an error" in found.english
    # Rarity 0.000082 and 0.00018 (CALC, another port of the same package).
    assert number(1, 1, 2).improbable
    assert not number(1, 0, 2).improbable


def test_a_less_than_keeps_its_qualifier():
    assert number(0, 0, 0).reported.qualifier is Qualifier.LESS_THAN
    assert number(3, 3, 3).reported.qualifier is Qualifier.MORE_THAN


@pytest.mark.parametrize(
    ("bad", "mend"),
    [(("0", 3, 1), "above 0"), (("0.1", 0, 0), "1 or more"), (("0.1", 3, 4), "write 0 to 3"),
     (("0.1", 3, -1), "write 0 to 3")],
)  # fmt: skip
def test_tubes_that_cannot_be_are_refused(bad, mend):
    amount, tubes, positive = bad
    with pytest.raises(NotADesign, match=mend):
        Tubes(Decimal(amount), tubes, positive)


def test_too_few_tubes_are_refused():
    with pytest.raises(NotADesign, match="at least one dilution"):
        most_probable_number([])
    with pytest.raises(NotADesign, match="at least two"):
        most_probable_number([Tubes(Decimal(1), 1, 1)])

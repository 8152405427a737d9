"""Plate counts against FDA BAM chapter 3 (January 2001).

READ: seen in a stored copy; MEM: recalled from memory; CALC: computed from the formula.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.plate_count import (
    BAM,
    Mark,
    NotAPlate,
    Plate,
    Why,
    count_plates,
    weighted_mean,
)
from kiosk.trade.rounding import NotAResult, Qualifier, read_amount, significant

HUNDREDTH, THOUSANDTH = Decimal("0.01"), Decimal("0.001")


def plates(first: list[int | Mark], second: list[int | Mark] = ()) -> list[Plate]:
    return [Plate(HUNDREDTH, one) for one in first] + [Plate(THOUSANDTH, one) for one in second]


def why(found):
    return {one.why for one in found.reasons}


def test_two_dilutions_in_duplicate():
    """232, 244 and 33, 28 give 537/0.022 = 24,409 -> 24,000. READ; the four counts MEM."""
    found = count_plates(plates([232, 244], [33, 28]))
    assert found.colonies == 537
    assert round(found.value) == 24_409
    assert str(found.reported) == "24,000"
    assert found.reported.qualifier is Qualifier.EXACT
    assert found.reasons == ()


def test_all_plates_below_the_range():
    """18, 2 and 0, 0 give less than 2,500, which is 25 x 1/d. READ."""
    found = count_plates(plates([18, 2], [0, 0]))
    assert str(found.reported) == "< 2,500"
    assert found.colonies == 0
    assert why(found) == {Why.ALL_LOW}


def test_one_plate():
    """27 at 1:100 gives 2,700. READ, tests of the R package MPN."""
    assert str(count_plates(plates([27])).reported) == "2,700"


def test_the_formula_over_any_plates_and_the_rule_over_those_in_range():
    """120 and 23: 143/0.011 = 13,000, READ, as a maximum likelihood; CALC agrees.

    BAM itself leaves out the plate of 23, below 25, so that its count is 12,000 (CALC).
    """
    both = plates([120], [23])
    assert weighted_mean(both) == 13_000
    found = count_plates(both)
    assert str(found.reported) == "12,000"
    assert why(found) == {Why.OUT_OF_RANGE}


@pytest.mark.parametrize(
    ("value", "written"),
    [("12700", "13000"), ("12400", "12000"), ("15500", "16000"), ("14500", "14000")],
)
def test_two_significant_digits_half_to_even(value, written):
    """READ."""
    assert str(significant(Decimal(value))) == written


@pytest.mark.parametrize(
    ("value", "written"),
    [("0", "0"), ("3.008", "3.0"), ("9.96", "10"), ("0.0345", "0.034"), ("1098.95", "1100")],
)
def test_a_significant_zero_is_written_and_no_exponent(value, written):
    """CALC, the same rule."""
    assert str(significant(Decimal(value))) == written


@pytest.mark.parametrize(
    ("first", "colonies", "written"),
    [([24, 60], 60, "6,000"), ([251, 240], 240, "24,000"), ([25, 250], 275, "14,000")],
)
def test_duplicates_partly_outside_the_range(first, colonies, written):
    """Only those inside 25 to 250 count. READ for the rule, CALC for the numbers."""
    found = count_plates(plates(first))
    assert found.colonies == colonies
    assert str(found.reported) == written


def test_all_plates_above_the_range():
    """Too numerous but for the plate nearest 250; its count is an estimate (EAPC). READ."""
    found = count_plates(plates([Mark.TOO_MANY, Mark.TOO_MANY], [640, 700]))
    assert str(found.reported) == "est. 640,000"
    assert found.reported.qualifier is Qualifier.ESTIMATED
    assert why(found) == {Why.ALL_HIGH, Why.OUT_OF_RANGE}


def test_nothing_but_too_numerous_to_count():
    """No number can be given but more than 250 x 1/d. CALC, our reading."""
    found = count_plates(plates([Mark.TOO_MANY], [Mark.TOO_MANY]))
    assert str(found.reported) == "> 250,000"


@pytest.mark.parametrize(("area", "written"), [("65", "> 6,500,000"), ("59", "> 5,900,000")])
def test_more_than_a_hundred_a_square_centimetre(area, written):
    """Greater than 100 x area x dilution; 65 cm² plastic, 59 cm² glass. MEM."""
    found = count_plates([Plate(THOUSANDTH, Mark.CROWDED, area=Decimal(area))])
    assert str(found.reported) == written


def test_spreaders_over_a_quarter_of_the_plate():
    """Reported as spreaders; up to a quarter the plate is counted. READ."""
    quarter = Decimal("0.25")
    assert str(count_plates([Plate(HUNDREDTH, 80, spread=quarter)]).reported) == "8,000"
    over = Plate(HUNDREDTH, 80, spread=Decimal("0.26"))
    assert str(count_plates([over]).reported) == "spreaders"
    beside = count_plates([over, Plate(HUNDREDTH, 90), Plate(HUNDREDTH, Mark.SPREADER)])
    assert str(beside.reported) == "9,000"
    assert why(beside) == {Why.SPREADER}
    assert "2 plates left out" in beside.english


def test_an_accident():
    assert str(count_plates(plates([Mark.ACCIDENT])).reported) == "laboratory accident"
    found = count_plates(plates([Mark.ACCIDENT, 90]))
    assert (str(found.reported), why(found)) == ("9,000", {Why.ACCIDENT})


def test_no_colonies_at_all():
    """Less than one at the lowest dilution. MEM."""
    found = count_plates(plates([0, 0], [0, 0]))
    assert str(found.reported) == "< 100"
    assert why(found) == {Why.NO_COLONIES}


def test_plates_above_and_below_but_none_within():
    """No published rule was seen: the fuller plate is reported, marked as an estimate."""
    found = count_plates(plates([300], [20]))
    assert str(found.reported) == "est. 30,000"
    assert Why.NONE_IN_RANGE in why(found)


def test_a_plate_too_full_at_a_higher_dilution_outweighs_an_estimate():
    found = count_plates(plates([300], [Mark.TOO_MANY]))
    assert str(found.reported) == "> 250,000"


def test_plates_in_range_at_a_third_dilution_are_left_out():
    third = [*plates([200], [30]), Plate(Decimal("0.0001"), 25)]
    found = count_plates(third)
    assert found.colonies == 230
    assert why(found) == {Why.OTHER_DILUTION}


def test_less_volume_on_the_plate():
    """0.1 mL of 1:10 holds the same sample as 1 mL of 1:100 (CALC)."""
    found = count_plates([Plate(Decimal("0.1"), 27, volume=Decimal("0.1"))], BAM)
    assert str(found.reported) == "2,700"


@pytest.mark.parametrize(
    ("bad", "mend"),
    [
        ({"dilution": Decimal(100), "colonies": 1}, "write 1:100 as 0.01"),
        ({"dilution": HUNDREDTH, "colonies": -1}, "write 0 or more"),
        ({"dilution": HUNDREDTH, "colonies": 1, "volume": Decimal(0)}, "write the mL"),
        ({"dilution": HUNDREDTH, "colonies": 1, "spread": Decimal(25)}, "as 0.25"),
        ({"dilution": HUNDREDTH, "colonies": Mark.CROWDED}, "needs its area"),
    ],
)
def test_a_plate_that_cannot_be_is_refused(bad, mend):
    with pytest.raises(NotAPlate, match=mend):
        Plate(**bad)


def test_no_plates_and_uncounted_plates_are_refused():
    with pytest.raises(NotAPlate, match="at least one"):
        count_plates([])
    with pytest.raises(NotAPlate, match="has no count"):
        weighted_mean(plates([Mark.TOO_MANY]))


@pytest.mark.parametrize("text", ["1,200", "< 10", "> 1,100", "est. 900", "spreaders", "0.5"])
def test_a_result_reads_back_as_it_is_written(text):
    assert str(read_amount(text)) == text


@pytest.mark.parametrize("text", ["", "ten", "<", "1 200", "-3", "< -1"])
def test_a_text_that_is_no_result_is_refused(text):
    with pytest.raises(NotAResult, match="write it as"):
        read_amount(text)

"""Laboratory results: read whole or refused by line, entered once, and judged by the authority."""

from __future__ import annotations

import csv
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.shop_facts import ResultEntered, ShopEvent, ShopFact
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.fault import FaultyFile
from kiosk.review.barrels import barrels, heading, over
from kiosk.review.result_file import read_csv, sort_out
from kiosk.review.results import (
    COLUMNS,
    Entered,
    NoSuchResult,
    Sample,
    entry,
    heads,
    read_row,
    results,
    strike,
)
from kiosk.trade.authorities import Analysis, Enforcing, Product, authority
from kiosk.trade.rounding import Amount, Qualifier, read_amount
from kiosk.trade.standing import State

MACHINES = {"patio": ("left", "right", "twist"), "counter": ("single",)}
TODAY = date(2026, 11, 25)
HEAD = "machine,barrel,day,product,analysis,amount,laboratory\n"
GOOD = "patio,left,2026-11-20,plain,total count,1200,Lab\n"
USDA = authority(load_authorities(), "usda")


def told(fact: ShopFact, at: float = 1.0) -> ShopEvent:
    return ShopEvent(Instant(at, at, "b"), Evidence(Channel.KEY), fact)


def sample(amount: str, day: date = TODAY, barrel: str = "left", **other: object) -> Sample:
    fields = {
        "machine": "patio", "barrel": barrel, "day": day, "product": Product.PLAIN,
        "analysis": Analysis.TOTAL_COUNT, "amount": read_amount(amount), "per": "g",
        "laboratory": "Lab", "sample": "",
    } | other  # fmt: skip
    return Sample(**fields)


def entered(*amounts: str, every: int = 7, **other: object) -> list[Entered]:
    """Results in a row, the last one today."""
    last = len(amounts) - 1
    return [
        Entered(f"r{n}", sample(one, TODAY - timedelta(days=every * (last - n)), **other), "ana", n)
        for n, one in enumerate(amounts)
    ]


def file(folder: Path, text: str, encoding: str = "utf-8") -> Path:
    path = folder / "results.csv"
    path.write_bytes(text.encode(encoding))
    return path


def faults(folder: Path, text: str) -> list[str]:
    with pytest.raises(FaultyFile) as caught:
        read_csv(file(folder, text), MACHINES, TODAY)
    return [f"{one.line} {one.field}: {one.what}; {one.mend}" for one in caught.value.faults]


# Reading.


def test_a_good_file_is_read_by_line(tmp_path):
    text = HEAD + GOOD + "counter,single,2026-11-20,Bulky,Coliform,< 10,Lab\n"
    read = read_csv(file(tmp_path, text), MACHINES, TODAY)
    assert read[2] == sample("1200", date(2026, 11, 20))
    assert read[3].amount == Amount(Qualifier.LESS_THAN, Decimal(10))
    assert (read[3].product, read[3].analysis) == (Product.BULKY, Analysis.COLIFORM)


def test_semicolons_a_byte_order_mark_and_other_column_orders_are_read(tmp_path):
    text = (
        "\ufefflaboratory;amount;analysis;product;day;barrel;machine;sample;per\r\n"
        'Lab;"1,200";total count;plain;2026-11-20;left;patio;S7;mL\r\n'
    )
    read = read_csv(file(tmp_path, text), MACHINES, TODAY)
    assert read[2] == sample("1200", date(2026, 11, 20), sample="S7", per="mL")


@pytest.mark.parametrize(
    ("row", "named"),
    [
        ("porch,left,2026-11-20,plain,total count,1200,Lab", "machine: 'porch'"),
        ("counter,left,2026-11-20,plain,total count,1200,Lab", "barrel: counter has no head"),
        ("patio,left,20.11.2026,plain,total count,1200,Lab", "day: '20.11.2026' is no day"),
        ("patio,left,2026-11-26,plain,total count,1200,Lab", "day: 2026-11-26 is not between"),
        ("patio,left,1026-11-20,plain,total count,1200,Lab", "day: 1026-11-20 is not between"),
        ("patio,left,2026-11-20,cake,total count,1200,Lab", "product: 'cake'"),
        ("patio,left,2026-11-20,plain,colour,1200,Lab", "analysis: 'colour'"),
        ("patio,left,2026-11-20,plain,total count,many,Lab", "amount: 'many' is no result"),
        ("patio,left,2026-11-20,plain,total count,1.200,Lab", "amount: '1.200' can be read as two"),
        ('patio,left,2026-11-20,plain,total count,"1,2",Lab', "amount: '1,2' can be read as two"),
        ("patio,left,2026-11-20,plain,total count,1200,", "laboratory: is empty"),
        ("patio,left,2026-11-20,plain,total count,1200,Lab,9", "more cells than columns"),
    ],
)
def test_a_wrong_row_is_named_with_line_and_mend_and_nothing_is_read(tmp_path, row, named):
    (found,) = faults(tmp_path, HEAD + GOOD + row + "\n")
    assert found.startswith("3 ")
    assert named in found
    assert found.rsplit("; ", 1)[1]


def test_every_wrong_row_is_named_at_once(tmp_path):
    bad = "porch,left,soon,plain,total count,1200,Lab\n"
    found = faults(tmp_path, HEAD + bad + GOOD + bad)
    assert [one.split(":")[0] for one in found] == ["2 day", "2 machine", "4 day", "4 machine"]


@pytest.mark.parametrize(
    ("text", "named"),
    [
        ("", "machine: is missing"),
        (HEAD, "has no results"),
        (HEAD.replace("amount", "result"), "amount: is missing"),
        (HEAD.replace("amount", "amount,colour"), "colour: is no column"),
        (HEAD.replace("amount", "amount,amount"), "amount: stands twice"),
        (HEAD + 'patio,"left', "is no CSV"),
    ],
)
def test_a_file_that_is_no_table_of_results_is_told(tmp_path, text, named):
    assert any(named in one for one in faults(tmp_path, text))


def test_a_file_that_is_not_there_or_not_text_is_told(tmp_path):
    with pytest.raises(FaultyFile, match="cannot be read"):
        read_csv(tmp_path / "none.csv", MACHINES, TODAY)
    with pytest.raises(FaultyFile, match="UTF-8"):
        read_csv(file(tmp_path, HEAD + GOOD + "é", "latin-1"), MACHINES, TODAY)


@given(st.dictionaries(st.sampled_from(COLUMNS), st.text(max_size=30)))
def test_no_cells_make_the_reader_fail(cells):
    read = read_row(cells, MACHINES, TODAY)
    assert isinstance(read, Sample) or all(len(one) == 3 and all(one) for one in read)


def test_machines_have_a_name_for_each_head():
    assert heads(1) == ("single",)
    assert heads(2) == ("left", "right", "twist")
    assert heads(3) == ("1", "2", "3")


# Entering.


def test_a_row_that_is_known_is_recognised():
    known = entered("1200")
    rows = {2: sample("1200"), 3: sample("< 10", barrel="right"), 4: sample("< 10", barrel="right")}
    found = sort_out("f", rows, known)
    assert found.new == (sample("< 10", barrel="right"),)
    assert found.again == (sample("1200"), sample("< 10", barrel="right"))


def test_another_amount_for_a_known_result_is_refused_by_line():
    with pytest.raises(FaultyFile, match=r"f:2: amount: says 1,300 .* 1,200 \(r0\)"):
        sort_out("f", {2: sample("1300")}, entered("1200"))
    with pytest.raises(FaultyFile, match=r"f:5: amount: says 9 where line 4 has it as 8"):
        sort_out("f", {4: sample("8"), 5: sample("9")}, [])


def test_two_samples_of_a_day_are_told_apart_by_number():
    rows = {2: sample("8", sample="S1"), 3: sample("9", sample="S2")}
    assert len(sort_out("f", rows, []).new) == 2


amounts = st.builds(
    Amount,
    st.sampled_from(
        [Qualifier.EXACT, Qualifier.ESTIMATED, Qualifier.LESS_THAN, Qualifier.MORE_THAN]
    ),
    st.decimals(0, 10**9, places=1),
) | st.sampled_from([Amount(Qualifier.SPREADERS), Amount(Qualifier.ACCIDENT)])


@given(amounts, st.sampled_from(Product), st.sampled_from(Analysis), st.text(max_size=20))
def test_a_result_comes_back_from_the_journal_as_it_was_entered(amount, product, analysis, number):
    of = sample("1", product=product, analysis=analysis, sample=number)
    of = Sample(*(amount if n == "amount" else getattr(of, n) for n in Sample.__slots__))
    (back,) = results([told(entry(of, "ana", practice=True))], practice=True)
    assert back.of == of


def test_practice_and_real_results_do_not_meet():
    events = [
        told(entry(sample("1"), "a", practice=True)),
        told(entry(sample("2"), "a", practice=False)),
    ]
    assert [one.of.amount.value for one in results(events, practice=True)] == [1]
    assert [one.of.amount.value for one in results(events, practice=False)] == [2]


def test_a_struck_result_counts_no_more_and_can_be_entered_anew():
    first = entry(sample("1200"), "ana", practice=True)
    events = [told(first)]
    events.append(told(strike(results(events, practice=True), first.result, "typing", "ana")))
    assert results(events, practice=True) == ()
    assert sort_out("f", {2: sample("1300")}, results(events, practice=True)).new
    events.append(told(entry(sample("1300"), "ana", practice=True)))
    assert [str(one.of.amount) for one in results(events, practice=True)] == ["1,300"]


def test_what_is_not_there_cannot_be_struck():
    with pytest.raises(NoSuchResult, match="lab list"):
        strike(entered("1"), "r7", "typing", "ana")


def test_an_entry_of_another_version_is_a_plain_error():
    fact = entry(sample("1"), "ana", practice=True)
    fields = {name: getattr(fact, name) for name in ResultEntered.__slots__}
    with pytest.raises(UnknownEvent, match="sponge"):
        results([told(ResultEntered(**fields | {"product": "sponge"}))], practice=True)


# Judging.


def test_two_of_the_last_four_are_notice_and_three_of_five_action():
    (one,) = barrels(entered("900", "60000", "900", "60000"), USDA, TODAY)
    assert one.state is State.NOTICE
    assert one.standing.over_of_four == 2
    (one,) = barrels(entered("60000", "900", "60000", "900", "60000"), USDA, TODAY)
    assert one.state is State.ACTION


def test_each_product_is_judged_by_its_own_limit():
    test = {"analysis": Analysis.COLIFORM}
    plain = entered("15", "15", product=Product.PLAIN, **test)
    bulky = entered("15", "15", product=Product.BULKY, **test)
    assert barrels(plain, USDA, TODAY)[0].state is State.NOTICE
    assert barrels(bulky, USDA, TODAY)[0].state is State.CLEAR
    mixed = [plain[0], bulky[1]]
    (one,) = barrels(mixed, USDA, TODAY)
    assert [day.over for day in one.days] == [True, False]
    assert [limit.most for limit in one.limits] == [10, 20]


def test_results_of_one_day_count_as_one_and_the_worst():
    same = [*entered("900"), *entered("60000", sample="S2")]
    (one,) = barrels(same, USDA, TODAY)
    assert [(day.over, day.results) for day in one.days] == [(True, 2)]


def test_over_is_worse_than_untold_and_untold_worse_than_within():
    def found(plain: str, bulky: str) -> bool | None:
        test = {"analysis": Analysis.COLIFORM}
        rows = [*entered(plain, **test), *entered(bulky, product=Product.BULKY, **test)]
        (day,) = barrels(rows, USDA, TODAY)[0].days
        return day.over

    assert found("15", "spreaders") is True
    assert found("spreaders", "9") is None
    assert found("9", "15") is False


def test_the_day_of_the_notice_moves_the_additional_sample():
    rows = entered("60000", "60000")
    (one,) = barrels(rows, USDA, TODAY)
    assert one.standing.resample == (TODAY.toordinal() + 3, TODAY.toordinal() + 21)
    notified = TODAY + timedelta(days=4)
    (one,) = barrels(rows, USDA, TODAY, {one.of: notified})
    assert one.standing.resample == (notified.toordinal() + 3, notified.toordinal() + 21)


def test_barrels_and_analyses_are_judged_apart():
    rows = [*entered("60000", "60000"), *entered("900", "900", barrel="right")]
    assert [one.state for one in barrels(rows, USDA, TODAY)] == [State.NOTICE, State.CLEAR]


def test_no_limit_is_ever_guessed():
    (one,) = barrels(entered("9", product=Product.SHERBET), USDA, TODAY)
    assert (one.state, one.limits) == (State.NO_RESULTS, ())
    assert "no limit for total count in sherbet" in one.left_out[0][1]
    (one,) = barrels(entered("9", per="mL"), USDA, TODAY)
    assert "per g, and this result is per mL" in one.left_out[0][1]


def test_results_after_today_are_not_looked_at():
    assert barrels(entered("60000"), USDA, TODAY - timedelta(days=1)) == ()


def test_an_authority_that_allows_none_acts_at_once():
    who = authority(load_authorities(), "north-carolina")
    assert who.enforcing is Enforcing.EACH
    assert barrels(entered("60000"), who, TODAY)[0].state is State.ACTION


def test_an_average_is_taken_where_the_authority_goes_by_it():
    who = replace(USDA, enforcing=Enforcing.LOG_AVERAGE)
    (one,) = barrels(entered("6000", "11000", "12000", "22000"), who, TODAY)
    assert (one.state, round(one.average.low)) == (State.CLEAR, 11489)
    (one,) = barrels(entered("60000", "spreaders"), who, TODAY)
    assert one.state is State.ACTION
    (one,) = barrels(entered("spreaders"), who, TODAY)
    assert (one.state, one.average) == (State.UNKNOWN, None)


def test_a_bound_above_the_limit_is_not_sure():
    (one,) = entered("< 100000")
    assert over(one, USDA) is None


def test_a_rise_is_told_before_the_limit_is_passed():
    pytest.importorskip("scipy", reason="the trend needs the extra 'laboratory'")
    rising = entered("900", "1100", "1500", "2100", "3000", "5000", "9000", "16000", "30000")
    head = heading(barrels(rising, USDA, TODAY)[0])
    assert head.early
    assert "no limit" in heading(barrels(entered("9", per="mL"), USDA, TODAY)[0])


def test_a_written_file_is_read_back(tmp_path):
    path = tmp_path / "made.csv"
    with path.open("w", newline="", encoding="utf-8") as out:
        writer = csv.writer(out)
        writer.writerow((*COLUMNS, "sample"))
        writer.writerow(
            ("patio", "left", "2026-11-25", "plain", "total count", "1,200", 'A "B", C', "7")
        )
    (read,) = read_csv(path, MACHINES, TODAY).values()
    assert read == sample("1200", laboratory='A "B", C', sample="7")

"""The authorities' table against the published limits, each row with its source; all READ but
where a row says MEM."""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache

import pytest

from kiosk.procedure.authorities import FILE, load_authorities
from kiosk.procedure.fault import FaultyFile
from kiosk.shipped import shipped
from kiosk.trade.authorities import (
    Analysis,
    Authorities,
    Enforcing,
    NoSuchLimit,
    Product,
    authority,
    limit_for,
    lot_plan,
)

TOTAL, COLIFORM = Analysis.TOTAL_COUNT, Analysis.COLIFORM
PLAIN, BULKY, MIX = Product.PLAIN, Product.BULKY, Product.MIX


@lru_cache
def table() -> Authorities:
    return load_authorities()


@pytest.mark.parametrize(
    ("name", "analysis", "product", "most", "per"),
    [
        ("usda", TOTAL, PLAIN, 50_000, "g"),
        ("usda", COLIFORM, PLAIN, 10, "g"),
        ("usda", COLIFORM, BULKY, 20, "g"),
        ("iowa", TOTAL, BULKY, 50_000, "g"),
        ("iowa", COLIFORM, PLAIN, 10, "g"),
        ("iowa", COLIFORM, BULKY, 20, "g"),
        ("maryland", TOTAL, PLAIN, 50_000, "g"),
        ("maryland", COLIFORM, PLAIN, 10, "g"),
        ("maryland", COLIFORM, BULKY, 20, "g"),
        ("north-carolina", TOTAL, PLAIN, 50_000, "g"),
        ("north-carolina", COLIFORM, PLAIN, 10, "g"),
        ("north-carolina", COLIFORM, BULKY, 20, "g"),
        ("north-carolina", COLIFORM, Product.SHERBET, 10, "g"),
        ("kansas", TOTAL, PLAIN, 50_000, "g"),
        ("kansas", TOTAL, MIX, 20_000, "g"),
        ("kansas", COLIFORM, PLAIN, 10, "g"),
        ("connecticut", TOTAL, MIX, 50_000, "g"),
        ("connecticut", COLIFORM, MIX, 5, "g"),
        ("houston", TOTAL, PLAIN, 50_000, "mL"),
        ("houston", COLIFORM, PLAIN, 40, "mL"),
        ("california-frozen-yogurt", COLIFORM, Product.FROZEN_YOGURT, 10, "g"),
        ("california-frozen-yogurt", Analysis.YEAST, Product.FROZEN_YOGURT, 10, "g"),
        ("california-frozen-yogurt", Analysis.MOLD, Product.FROZEN_YOGURT, 10, "g"),
        ("grade-a-milk", TOTAL, Product.MILK, 20_000, "mL"),
        ("grade-a-milk", COLIFORM, Product.MILK, 10, "mL"),
    ],
)
def test_a_limit(name, analysis, product, most, per):
    """The law stands in the table beside each row."""
    found = limit_for(authority(table(), name), analysis, product)
    assert (found.most, found.per) == (most, per)


@pytest.mark.parametrize(
    ("name", "rule"),
    [
        ("usda", Enforcing.LAST_FIVE),
        ("iowa", Enforcing.LAST_FIVE),
        ("kansas", Enforcing.LAST_FIVE),
        ("north-carolina", Enforcing.EACH),
        ("grade-a-milk", Enforcing.LAST_FIVE),
        ("connecticut", Enforcing.NOT_STATED),
    ],
)
def test_how_it_is_enforced(name, rule):
    assert authority(table(), name).enforcing is rule


def test_every_row_names_its_source_and_tag():
    for one in (*table().authorities, *table().lot_plans):
        assert one.law
        assert one.source
        assert "READ" in one.tag or "MEM" in one.tag


def test_no_limit_is_guessed():
    with pytest.raises(NoSuchLimit, match="no limit for yeast in plain; it has total count"):
        limit_for(authority(table(), "usda"), Analysis.YEAST, PLAIN)
    with pytest.raises(
        NoSuchLimit, match="no authority is called 'atlantis'; known are california"
    ):
        authority(table(), "atlantis")
    with pytest.raises(NoSuchLimit, match="no sampling plan"):
        lot_plan(table(), "atlantis")


def test_frozen_yogurt_mix_is_exempt_from_the_total_count_in_north_carolina():
    with pytest.raises(NoSuchLimit):
        limit_for(authority(table(), "north-carolina"), TOTAL, Product.FROZEN_YOGURT)


def test_a_faulty_table_is_refused_with_line_and_mend(tmp_path):
    path = tmp_path / "authorities.yaml"
    text = (shipped("procedures") / FILE).read_text(encoding="utf-8")
    path.write_text(text.replace("test: yeast", "test: yeats"), encoding="utf-8")
    with pytest.raises(FaultyFile, match=r"'yeats' is not one of the allowed words") as found:
        load_authorities(path)
    line = text[: text.index("test: yeast")].count("\n") + 1
    assert found.value.faults[0].line == line
    path.write_text(text.replace("id: iowa", "id: usda"), encoding="utf-8")
    with pytest.raises(FaultyFile, match="the id 'usda' stands twice"):
        load_authorities(path)


def test_numbers_are_exact():
    for one in table().authorities:
        assert all(isinstance(limit.most, Decimal) for limit in one.limits)

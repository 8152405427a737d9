"""What a verification says of a chain: the first bad row, and what is wrong with it."""

from __future__ import annotations

import json
from typing import Any

import pytest

from kiosk.journal import chain
from kiosk.journal.chain import Wrong

Rows = list[dict[str, Any]]


def chained(*rows: dict[str, Any], before: str = chain.FIRST, first: int = 1) -> Rows:
    made = []
    for seq, row in enumerate(rows, first):
        usual = {
            "seq": seq, "kiosk": "a", "session": "s1", "kind": "StepEntered", "mono_us": seq,
            "utc": "2026-11-25T22:15:00.000000Z", "boot": "b", "body": f'{{"fact":{{"n":{seq}}}}}',
        }  # fmt: skip
        one = usual | row | {"prev": before}
        one["hash"] = before = chain.row_hash(before, one)
        made.append(one)
    return made


def moved(after: dict[str, Any], to: str = "b", **other: Any) -> dict[str, Any]:
    fact = {"kiosk": after["kiosk"], "seq": after["seq"], "head": after["hash"]} | other
    body = json.dumps({"fact": fact})
    return {"kiosk": to, "session": "shop", "kind": chain.MOVED, "body": body}


def going_on(rows: Rows, *more: dict[str, Any]) -> Rows:
    return rows + chained(*more, before=rows[-1]["hash"], first=rows[-1]["seq"] + 1)


RETIRED = {"session": "shop", "kind": chain.RETIRED}


def test_a_journal_may_pass_to_another_kiosk():
    old = chained({}, {})
    verdict = chain.verify(going_on(old, moved(old[-1]), {"kiosk": "b"}))
    assert (verdict.whole, verdict.rows) == (True, 4)


def test_a_row_of_another_kiosk_without_a_move_is_spliced():
    verdict = chain.verify(chained({}, {}, {"kiosk": "b"}))
    assert (verdict.bad_seq, verdict.wrong) == (3, Wrong.SPLICED)


@pytest.mark.parametrize(
    "other", [{"kiosk": "c"}, {"seq": 1}, {"head": "0" * 64}, {"seq": "2"}, {"kiosk": None}]
)
def test_a_move_from_another_row_is_spliced(other):
    old = chained({}, {})
    verdict = chain.verify(going_on(old, moved(old[-1], **other)))
    assert (verdict.bad_seq, verdict.wrong) == (3, Wrong.SPLICED)


def test_a_move_to_the_same_kiosk_is_none():
    old = chained({}, {})
    assert chain.verify(going_on(old, moved(old[-1], to="a"))).wrong is Wrong.SPLICED


@pytest.mark.parametrize("body", ["{}", "[]", "no JSON", '{"fact":{"kiosk":"a"}}'])
def test_a_move_that_cannot_be_read_is_named(body):
    rows = chained({}, moved({"kiosk": "a", "seq": 1, "hash": ""}) | {"body": body})
    assert chain.verify(rows).wrong is Wrong.UNREADABLE


def test_after_retirement_only_a_move_may_follow():
    old = chained({}, RETIRED)
    assert chain.verify(going_on(old, moved(old[-1]), {"kiosk": "b"})).whole
    verdict = chain.verify(going_on(old, {}))
    assert (verdict.bad_seq, verdict.wrong) == (3, Wrong.RETIRED)


def test_an_altered_link_is_noticed_even_where_no_hash_covers_it():
    rows = chained({}, {}, {})
    rows[1]["prev"] = "f" * 64
    verdict = chain.verify(rows)
    assert (verdict.bad_seq, verdict.wrong) == (2, Wrong.ALTERED)


def test_swapped_rows_are_named_as_such():
    rows = chained({}, {}, {}, {})
    rows[1], rows[2] = rows[2] | {"seq": 2}, rows[1] | {"seq": 3}
    verdict = chain.verify(rows)
    assert (verdict.bad_seq, verdict.wrong) == (2, Wrong.REORDERED)
    assert "row 3" in verdict.what


def test_a_row_that_stands_twice_is_reordered():
    rows = chained({}, {}, {})
    verdict = chain.verify([rows[0], rows[1], rows[1]])
    assert (verdict.wrong, "row 2" in verdict.what) == (Wrong.REORDERED, True)


def test_a_renumbered_row_is_found_again():
    rows = chained({}, {}, {})
    rows = [rows[0], rows[2], rows[1] | {"seq": 9}]
    verdict = chain.verify(rows)
    assert (verdict.bad_seq, verdict.wrong, "row 9" in verdict.what) == (2, Wrong.REORDERED, True)


def test_a_batch_is_verified_from_the_row_before_it():
    rows = chained({}, {}, {}, {})
    verdict = chain.verify(rows[2:], rows[1]["hash"], 3, "a")
    assert (verdict.whole, verdict.rows, verdict.head) == (True, 2, rows[3]["hash"])
    assert chain.verify(rows[2:], rows[0]["hash"], 3, "a").bad_seq == 3
    assert chain.verify(rows[2:], rows[1]["hash"], 3, "z").wrong is Wrong.SPLICED
    assert chain.verify(rows[3:], rows[1]["hash"], 3, "a").wrong is Wrong.MISSING

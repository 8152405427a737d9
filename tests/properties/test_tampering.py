"""Random tamperings: each is caught, by the kiosk's command and by the page for outsiders."""

from __future__ import annotations

import random
import sqlite3
from contextlib import closing

import pytest

from kiosk.journal.chain import Wrong
from kiosk.journal.keys import as_pem
from kiosk.journal.witness import judge
from tests.tampering import (
    TAMPERINGS,
    alter_a_field,
    alter_and_rehash_one,
    cut_the_end_off,
    evident,
    exchange_all,
    flip_a_byte,
    put_one_in,
    renumber,
    rewrite_from,
    splice,
    swap,
    swap_but_leave_the_hashes,
    take_one_out,
    take_one_out_and_close_the_gap,
    tampered,
)
from tests.verify_page import judged

EACH = 17
"""Times twelve kinds: some two hundred tamperings."""
FLIPS = 60

EXPECTED = {
    alter_a_field: {Wrong.ALTERED},
    alter_and_rehash_one: {Wrong.ALTERED},
    rewrite_from: {Wrong.REWRITTEN},
    take_one_out: {Wrong.MISSING},
    take_one_out_and_close_the_gap: {Wrong.REORDERED, Wrong.REWRITTEN, Wrong.TRUNCATED},
    cut_the_end_off: {Wrong.TRUNCATED},
    swap: {Wrong.REORDERED},
    swap_but_leave_the_hashes: {Wrong.REORDERED},
    renumber: {Wrong.REORDERED},
    put_one_in: {Wrong.REORDERED, Wrong.REWRITTEN},
    splice: {Wrong.SPLICED},
    exchange_all: {Wrong.SPLICED},
}


@pytest.fixture(scope="module")
def one(tmp_path_factory):
    made = evident(tmp_path_factory.mktemp("one"))
    (made.folder / "key.pem").write_text(as_pem(made.checkpoints[0].key))
    return made


@pytest.fixture(scope="module")
def foreign(tmp_path_factory):
    return evident(tmp_path_factory.mktemp("foreign"))


@pytest.mark.parametrize("how", TAMPERINGS, ids=lambda how: how.__name__)
def test_every_tampering_is_caught_and_its_row_is_named(one, foreign, how, tmp_path):
    file = tmp_path / "tampered.db"
    key = {one.checkpoints[0].key}
    for number in range(EACH):
        first = tampered(one, file, how, random.Random(number), foreign)
        verdict = judge(file, one.checkpoints, key).verdict
        assert verdict.wrong in EXPECTED[how], (number, verdict)
        if verdict.wrong is Wrong.REWRITTEN:
            # What was written anew begins after the last checkpoint that still agrees.
            good = max((x.seq for x in one.checkpoints if x.seq < first), default=0)
            assert verdict.bad_seq == good + 1, number
        elif how is alter_and_rehash_one:
            assert verdict.bad_seq == first + 1, number
        elif verdict.wrong is Wrong.TRUNCATED:
            assert verdict.bad_seq >= first, number
        else:
            assert verdict.bad_seq == first, number
        outsider = judged(file, one.checkpoints_file, one.folder / "key.pem")
        assert outsider.startswith("NOT WHOLE"), number


def test_a_flipped_bit_in_the_file_is_caught_where_it_touches_a_row(one, tmp_path):
    file, touched = tmp_path / "flipped.db", 0
    for number in range(FLIPS):
        if flip_a_byte(one, file, random.Random(number)):
            touched += 1
            assert not judge(file, one.checkpoints).verdict.whole, number
    assert touched > FLIPS // 10


def test_an_index_that_lacks_a_row_is_no_whole_journal(one, tmp_path):
    file = tmp_path / "hidden.db"
    file.write_bytes(one.file.read_bytes())
    with closing(sqlite3.connect(file)) as db:
        db.execute("pragma writable_schema = on")
        db.execute(
            "update sqlite_master set sql = replace(sql, 'session', 'kind') where type = 'index' "
            "and name = 'idx_journal_session_seq'"
        )
        db.commit()
    verdict = judge(file, one.checkpoints).verdict
    assert verdict.wrong is Wrong.UNREADABLE

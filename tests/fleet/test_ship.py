"""Shipping: whatever is cut, stopped or sent twice, both sides end with the same rows."""

from __future__ import annotations

import sqlite3
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing

import psycopg
import pytest

from kiosk.fleet.connection import connect
from kiosk.fleet.outgoing import COLUMNS, Outgoing
from kiosk.fleet.ship import Refused, ship
from kiosk.journal.guards import TRIGGERS
from kiosk.journal.store import FILE, Journal
from tests.fleet.cutting_line import CuttingLine
from tests.fleet.journals import (
    ABOUT,
    COPY,
    ROWS_OF_A_WALK,
    as_rows,
    rows,
    rows_there,
    send,
    shipped,
    walk,
    walks,
)


def test_every_row_arrives_as_it_lies_on_the_disk(head_office, tmp_path):
    address = head_office.admit("one")
    done = shipped(walks(tmp_path, 4), address, most=7)
    assert (done.taken, done.known, done.aside, done.troubles) == (20, 0, 0, [])
    assert rows_there(head_office.admin) == rows(tmp_path)
    head = head_office.rows("select head_seq, head_hash from fleet.kiosk")
    assert head == [(20, rows(tmp_path)[-1][-1])]


def test_what_is_there_is_not_sent_again(head_office, tmp_path):
    address = head_office.admit("one")
    shipped(walks(tmp_path, 2), address)
    assert shipped(tmp_path, address).taken == 0
    walk(tmp_path, "later")
    assert shipped(tmp_path, address).taken == ROWS_OF_A_WALK
    assert rows_there(head_office.admin) == rows(tmp_path)


def test_an_empty_journal_is_heard_of(head_office, tmp_path):
    Journal(tmp_path).close()
    assert shipped(tmp_path, head_office.admit("one")).taken == 0
    assert head_office.one("select whole_until is not null from fleet.kiosk")


def test_a_row_that_is_not_committed_here_is_not_sent(head_office, tmp_path):
    address = head_office.admit("one")
    walks(tmp_path, 1)
    with closing(sqlite3.connect(tmp_path / FILE)) as writer:
        last = rows(tmp_path)[-1]
        writer.execute("begin immediate")
        values = dict(zip(COLUMNS, last, strict=True)) | {"seq": last[1] + 1, "prev": last[-1]}
        marks = ", ".join(f":{name}" for name in COLUMNS)
        writer.execute(f"insert into journal ({', '.join(COLUMNS)}) values ({marks})", values)
        assert shipped(tmp_path, address).taken == ROWS_OF_A_WALK
        writer.rollback()
    assert rows_there(head_office.admin) == rows(tmp_path)


@pytest.mark.parametrize("way", ["there", "back"])
def test_a_line_that_is_cut_anywhere_loses_nothing_and_doubles_nothing(head_office, tmp_path, way):
    address = head_office.admit("one")
    line = CuttingLine(head_office.server.port)
    through = address.replace(f":{head_office.server.port}/", f":{line.port}/")
    cuts = 0
    walks(tmp_path, 3)
    # Every cut lets a little more through than the one before, until nothing is left to send.
    for share in range(700, 40_000, 700 if way == "there" else 150):
        setattr(line, way, share)
        try:
            shipped(tmp_path, through, most=4)
        except psycopg.OperationalError:
            cuts += 1
        else:
            break
        there = rows_there(head_office.admin)
        assert there == rows(tmp_path)[: len(there)]
    line.close()
    assert cuts >= 3
    assert rows_there(head_office.admin) == rows(tmp_path)
    assert head_office.one("select count(*) from fleet.trouble") == 0


def test_an_answer_that_is_lost_after_the_commit_costs_one_batch_sent_twice(head_office, tmp_path):
    address = head_office.admit("one")
    kiosk = as_rows(walks(tmp_path, 2))[0]["kiosk"]
    line = head_office.line(address)
    first = send(line, kiosk, as_rows(tmp_path)[:6])
    again = send(line, kiosk, as_rows(tmp_path)[:8])
    assert (first["taken"], again["known"], again["taken"]) == (6, 6, 2)
    assert shipped(tmp_path, address).taken == 2
    assert rows_there(head_office.admin) == rows(tmp_path)


def lose_power_before_taking(server, line, batch):
    line.execute("select * from fleet.hello(%s)", [batch[0][0]])
    with line.transaction():
        with line.cursor().copy(COPY) as copy:
            for row in batch:
                copy.write_row(row)
        server.stop("immediate")
        server.start()
        line.execute("select * from fleet.take(%s)", [batch[0][0]])


def test_a_server_that_loses_power_in_the_middle_of_a_batch(head_office, tmp_path):
    address = head_office.admit("one")
    walks(tmp_path, 6)

    def lose_power(seq, last):
        if seq == 10:
            head_office.server.stop("immediate")
            head_office.server.start()

    with (
        closing(connect(address)) as line,
        closing(Outgoing(tmp_path)) as journal,
        pytest.raises(psycopg.OperationalError),
    ):
        ship(journal, line, ABOUT, 5, lose_power)
    assert len(rows_there(head_office.admin)) == 10
    with closing(connect(address)) as line, pytest.raises(psycopg.OperationalError):
        lose_power_before_taking(head_office.server, line, rows(tmp_path)[10:])
    done = shipped(tmp_path, address, most=5)
    assert (done.taken, done.known) == (20, 0)
    assert rows_there(head_office.admin) == rows(tmp_path)


def test_a_journal_that_was_altered_here_is_sent_up_to_that_row(head_office, tmp_path):
    address = head_office.admit("one")
    walks(tmp_path, 2)
    with closing(sqlite3.connect(tmp_path / FILE)) as db:
        for name in TRIGGERS:
            db.execute(f"drop trigger {name}")
        db.execute("update journal set body = replace(body, 'ana', 'bob') where seq = 6")
        db.commit()
    with pytest.raises(Refused, match="Row 6 of the journal here"):
        shipped(tmp_path, address, most=4)
    assert rows_there(head_office.admin) == rows(tmp_path)[:5]
    assert not head_office.one("select whole_until from fleet.kiosk")


def test_two_kiosks_of_one_shop_and_one_of_another_do_not_mix(head_office, tmp_path):
    one, two = head_office.admit("one"), head_office.admit("two")
    folders = [walks(tmp_path / name, 2, name) for name in ("a", "b", "c")]
    for folder, address in zip(folders, (one, one, two), strict=True):
        shipped(folder, address)
    everything = sorted(row for folder in folders for row in rows(folder))
    assert rows_there(head_office.admin) == everything
    assert rows_there(head_office.line(two)) == rows(folders[2])


def test_two_senders_at_once_double_nothing(head_office, tmp_path):
    address = head_office.admit("one")
    walks(tmp_path, 20)
    with ThreadPoolExecutor(3) as pool:
        done = list(pool.map(lambda most: shipped(tmp_path, address, most), (3, 4, 7)))
    assert sum(one.taken for one in done) == 20 * ROWS_OF_A_WALK
    assert rows_there(head_office.admin) == rows(tmp_path)
    assert head_office.one("select count(*) from fleet.trouble") == 0


def test_a_head_office_that_was_put_back_gets_the_rows_again(head_office, tmp_path):
    address = head_office.admit("one")
    shipped(walks(tmp_path, 3), address)
    with head_office.admin.transaction() as inside:
        # As its own backup of some time ago would have it.
        inside.connection.execute("set local session_replication_role = replica")
        inside.connection.execute("delete from fleet.journal where seq > 7")
        inside.connection.execute(
            "update fleet.kiosk set head_seq = 7, head_hash = (select hash from fleet.journal "
            "where seq = 7)"
        )
    assert shipped(tmp_path, address).taken == 8
    assert rows_there(head_office.admin) == rows(tmp_path)

"""The journal's queries: the same answers as from all rows, through indexes that may be missing."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.engine.machine import standing
from kiosk.journal.shop_facts import SentBack, ShopEvent, SignedOff
from kiosk.journal.store import Journal

AT = Instant(1_774_000_000.25, 12.5, "boot-1")
KEY = Evidence(Channel.KEY)
MOVES = (
    e.SessionHeld("problem"), e.SessionHeld("pause"), e.SessionResumed(""),
    e.SessionCompleted(), e.SessionAborted((), True, ""), e.SessionAborted((), False, ""),
    e.StepEntered("a", "b"),
)  # fmt: skip
OPEN_BY_HAND = """
    select session from journal where session <> 'shop' group by session
    having sum(kind in ('SessionCompleted', 'SessionAborted')) = 0 order by min(seq)
"""


def started(session: str, machine: str, practice: bool) -> e.SessionStarted:
    leaves = "apart and drying" if session < "5" else "in service"
    return e.SessionStarted(
        "p", 1, "d", machine, "ana", "en", "being taken apart", leaves, practice
    )


@pytest.fixture(scope="module")
def folder(tmp_path_factory) -> Path:
    return tmp_path_factory.mktemp("queries")


def empty(folder: Path) -> Journal:
    """A new journal in the place of the last."""
    for file in folder.iterdir():
        file.unlink()
    return Journal(folder)


def all_facts(journal: Journal, machine: str, practice: bool) -> list[e.Fact]:
    """Every fact of every session of a machine, in the order of the rows."""
    begun, found = {}, []
    for row in journal.rows():
        ((fact,),) = [[x.fact for seq, x in journal.numbered(row["session"]) if seq == row["seq"]]]
        if isinstance(fact, e.SessionStarted):
            begun[row["session"]] = (fact.machine, fact.practice)
        if begun.get(row["session"]) == (machine, practice):
            found.append(fact)
    return found


@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(st.tuples(st.sampled_from("123456789"), st.sampled_from(MOVES)), max_size=25))
def test_a_machine_stands_where_all_its_facts_put_it(folder, moves):
    journal, begun = empty(folder), set()
    for session, fact in moves:
        machine, practice = ("m1", "m2")[int(session) % 2], int(session) % 3 == 0
        if session not in begun:
            fact = started(session, machine, practice)
            begun.add(session)
        journal.append(session, [e.Event(AT, KEY, fact)])
        if len(begun) % 2:
            # It is asked again and again while rows come in.
            journal.open_sessions()
    for machine in ("m1", "m2"):
        for practice in (True, False):
            found = [f for _, _, f in journal.facts_of_machine(machine, practice=practice)]
            assert standing(found) is standing(all_facts(journal, machine, practice))
    by_hand = [row[0] for row in journal._db.execute(OPEN_BY_HAND)]
    assert journal.open_sessions() == by_hand
    assert journal.sessions() == list(dict.fromkeys(session for session, _ in moves))
    journal.close()


def filled(folder: Path) -> Journal:
    journal = Journal(folder)
    for session, machine in (("1", "m1"), ("2", "m2"), ("3", "m1")):
        journal.append(session, [e.Event(AT, KEY, started(session, machine, False))])
    journal.append_shop([ShopEvent(AT, KEY, SignedOff("1", "priya", ""))])
    journal.append("1", [e.Event(AT, KEY, e.SessionCompleted())])
    journal.append_shop([ShopEvent(AT, KEY, SentBack("2", "priya", "again"))])
    return journal


def test_the_shops_stream_can_be_asked_for_kinds_and_rows(tmp_path):
    journal = filled(tmp_path)
    back = [(6, SentBack("2", "priya", "again"))]
    off = [(4, SignedOff("1", "priya", ""))]

    def asked(*kinds: type, **rows: int):
        return [(seq, one.fact) for seq, one in journal.numbered_shop_events(*kinds, **rows)]

    assert asked() == off + back
    assert asked(SentBack) == back
    assert asked(SignedOff, SentBack, since=4) == back
    assert asked(since=3, until=5) == off
    assert [one.fact for one in journal.shop_events(SignedOff)] == [off[0][1]]
    journal.close()


def test_sessions_that_gained_rows_are_named_in_the_order_of_their_rows(tmp_path):
    journal = filled(tmp_path)
    assert journal.gained(0, 6) == ["1", "2", "3"]
    assert journal.gained(2, 6) == ["3", "1"]
    assert journal.gained(5, 6) == []
    assert journal.hash_at(6) == journal.head()
    assert journal.hash_at(0) == "0" * 64
    assert journal.hash_at(7) == ""
    journal.close()


def test_a_journal_of_before_the_indexes_gets_them(tmp_path):
    filled(tmp_path).close()
    db = sqlite3.connect(tmp_path / "journal.db")
    names = [row[0] for row in db.execute("select name from sqlite_master where type = 'index'")]
    for name in names:
        if name.startswith("journal_"):
            db.execute(f"drop index {name}")
    db.close()
    journal = Journal(tmp_path)
    assert journal.open_sessions() == ["2", "3"]
    assert [x for x, _, _ in journal.facts_of_machine("m1", practice=False)] == ["3", "1"]
    assert len(journal.shop_events(SignedOff)) == 1
    journal.close()


def test_a_beginning_that_was_made_unreadable_does_not_keep_the_journal_closed(tmp_path):
    filled(tmp_path).close()
    db = sqlite3.connect(tmp_path / "journal.db")
    for kind, name in db.execute("select type, name from sqlite_master").fetchall():
        if kind == "trigger" or name.startswith("journal_"):
            db.execute(f"drop {kind} {name}")
    db.execute("update journal set body = 'no json' where seq = 1")
    db.commit()
    db.close()
    journal = Journal(tmp_path)
    assert journal.verify().bad_seq == 1
    journal.close()

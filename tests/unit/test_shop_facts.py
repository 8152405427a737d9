"""Facts of the shop: in the journal's chain, and never taken for a session."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from typing import get_args, get_type_hints

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal import codec
from kiosk.journal.shop_facts import (
    STREAM,
    KioskMoved,
    KioskRetired,
    PartReplaced,
    ResultEntered,
    ResultStruck,
    SentBack,
    ShopEvent,
    ShopFact,
    SignedOff,
)
from kiosk.journal.store import Journal
from kiosk.journal.telling import event_line

AT = Instant(1_774_000_000.25, 12.5, "boot-1")
KEY = Evidence(Channel.KEY)
STARTED = e.SessionStarted("close", 1, "d" * 64, "m1", "ana", "en", "in service", "drying", True)
RESULT = ResultEntered(
    "r1", "m1", "left", "2026-11-20", "plain", "total count", "< 10", "g", "Lab", "S1", "ana", True
)


def shop(fact: ShopFact) -> ShopEvent:
    return ShopEvent(AT, KEY, fact)


@pytest.fixture
def journal(tmp_path: Path):
    opened = Journal(tmp_path)
    yield opened
    opened.close()


def filled(journal: Journal) -> Journal:
    journal.append("s1", [e.Event(AT, KEY, STARTED)])
    journal.append_shop([shop(RESULT), shop(SignedOff("s1", "rosa", "good"))])
    journal.append("s1", [e.Event(AT, KEY, e.SessionCompleted())])
    journal.append_shop([shop(ResultStruck("r1", "wrong barrel", "ana"))])
    return journal


def test_what_belongs_to_no_session_comes_back_in_order(journal):
    kinds = [type(one.fact) for one in filled(journal).shop_events()]
    assert kinds == [ResultEntered, SignedOff, ResultStruck]
    assert journal.shop_events()[0].fact == RESULT


def test_the_stream_is_part_of_the_chain(journal):
    assert filled(journal).verify().rows == 5
    assert journal.verify().whole
    other = sqlite3.connect(journal.file)
    other.execute("drop trigger journal_never_updated")
    other.execute("update journal set body = replace(body, '< 10', '< 99') where seq = 2")
    other.commit()
    other.close()
    assert journal.verify().bad_seq == 2


def test_the_stream_is_no_session(journal):
    filled(journal).append("s2", [e.Event(AT, KEY, STARTED)])
    assert journal.sessions() == ["s1", "s2"]
    assert journal.open_sessions() == ["s2"]
    assert [fact for _, _, fact in journal.facts_of_machine("m1", practice=True)] == [STARTED]


def test_a_journal_with_shop_facts_alone_has_no_session(journal):
    journal.append_shop([shop(RESULT)])
    assert journal.sessions() == []
    assert journal.open_sessions() == []


def test_a_session_cannot_take_the_name_of_the_stream(journal):
    with pytest.raises(ValueError, match="shop"):
        journal.append(STREAM, [e.Event(AT, KEY, STARTED)])
    assert journal.verify().rows == 0


def test_the_stream_cannot_be_read_as_a_session(journal):
    with pytest.raises(codec.UnknownEvent, match="ResultEntered"):
        filled(journal).events(STREAM)


def test_no_kind_is_of_a_session_and_of_the_shop():
    assert not set(codec.FACTS) & set(codec.SHOP_FACTS)
    assert set(codec.SHOP_FACTS) == {one.__name__ for one in get_args(ShopFact)}


def test_nothing_is_updated_or_deleted(journal):
    filled(journal)
    for statement in ("update journal set body = '{}' where seq = 2", "delete from journal"):
        with pytest.raises(sqlite3.DatabaseError, match="append-only"):
            journal._db.execute(statement)


def test_a_line_says_what_was_entered():
    said = event_line(shop(RESULT))
    assert "ResultEntered" in said
    assert "amount=< 10" in said
    assert "key" in said


def test_an_unknown_kind_is_a_plain_error():
    text = codec.body(shop(RESULT))
    with pytest.raises(codec.UnknownEvent, match="ResultDreamt"):
        codec.shop_event("ResultDreamt", "2026-01-01T00:00:00.000000Z", 0, "b", text)


HOSTILE = st.text(
    st.characters() | st.sampled_from("\x00\n\r\u2028\u0085\"\\'{}[],:\ud800\udfff\U0001f366<&;")
)


SORTS = {
    str: HOSTILE,
    bool: st.booleans(),
    int: st.integers(-(1 << 63), (1 << 63) - 1),
    float: st.floats(allow_nan=False, allow_infinity=False),
    tuple[str, ...]: st.lists(HOSTILE, max_size=3).map(tuple),
}
"""What may stand in a field of each type."""


def facts() -> st.SearchStrategy[ShopFact]:
    def of(kind: type) -> st.SearchStrategy[ShopFact]:
        hints = get_type_hints(kind)
        fields = {name: SORTS[hint] for name, hint in hints.items()}
        return st.builds(kind, **fields)

    # The rows at which a journal changes hands have rules of their own.
    kinds = set(get_args(ShopFact)) - {KioskMoved, KioskRetired}
    return st.one_of(*(of(kind) for kind in sorted(kinds, key=repr)))


@pytest.fixture(scope="module")
def long_journal(tmp_path_factory):
    opened = Journal(tmp_path_factory.mktemp("journal"))
    yield opened
    opened.close()


@settings(deadline=None, max_examples=40)
@given(st.lists(facts(), min_size=1, max_size=4))
def test_hostile_text_comes_back_as_it_was_written(long_journal, written):
    before = len(long_journal.shop_events())
    long_journal.append_shop([shop(fact) for fact in written])
    assert [one.fact for one in long_journal.shop_events()[before:]] == written


def test_after_hostile_text_the_chain_is_whole(long_journal):
    long_journal.append_shop([shop(SentBack("s\ud800", "a\x00b", "c\nd")), shop(
        PartReplaced("m", "p", "2026-01-01", "b", "\u2028", True))])  # fmt: skip
    assert long_journal.verify().whole
    assert long_journal.shop_events()[-2].fact == SentBack("s\ud800", "a\x00b", "c\nd")

"""A report names each spoken remark with its length and hash, and follows it to its row."""

from __future__ import annotations

from pathlib import Path

import pytest

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import PersonErased, RemarkRecorded, ShopEvent
from kiosk.journal.store import Journal
from kiosk.languages.words import languages
from kiosk.report.of_session import whole
from kiosk.report.paper import Table
from tests.unit.report_shop import desk, make, sql

KEPT, GONE = "a" * 64, "b" * 64
TOUCH = Evidence(Channel.TOUCH)


@pytest.fixture(scope="module")
def shop(tmp_path_factory) -> tuple[Path, str]:
    """The shop's days, and in its last session two remarks, of which one was erased."""
    made = tmp_path_factory.mktemp("shop")
    make(made)
    journal = Journal(made)
    session = journal.sessions()[-1]
    first = journal.events(session)[1]
    at = Instant(first.at.utc + 0.5, 1.0, "boot-1")
    later = Instant(first.at.utc + 86_400, 1.0, "boot-1")
    journal.append_shop(
        [
            ShopEvent(at, TOUCH, RemarkRecorded(session, "hands", "p1", KEPT, 12.4, True)),
            ShopEvent(at, TOUCH, RemarkRecorded("another", "hands", "p1", "c" * 64, 1.0, True)),
            ShopEvent(at, TOUCH, RemarkRecorded(session, "hands", "p2", GONE, 3.0, True)),
            ShopEvent(later, TOUCH, PersonErased("p2", "p4", 0, (GONE,))),
        ]
    )
    journal.close()
    return made, session


def beside(folder: Path, session: str, language: str) -> Table:
    with desk(folder, language) as found:
        blocks = list(whole(session, found))
    return next(one for one in blocks if isinstance(one, Table) and one.id == f"beside-{session}")


@pytest.mark.parametrize("language", languages())
def test_it_is_named_with_length_hash_and_row(shop, language):
    told = {row.seqs: " | ".join(cell.text for cell in row.cells) for row in
            beside(*shop, language).rows}  # fmt: skip
    rows = sql(shop[0], "select seq, json_extract(body, '$.fact.sha256') from journal "
                       "where kind = 'RemarkRecorded'")  # fmt: skip
    seqs = {sha256: (seq,) for seq, sha256 in rows}
    assert KEPT in told[seqs[KEPT]]
    assert "12" in told[seqs[KEPT]]
    assert "(p1)" in told[seqs[KEPT]]
    assert seqs["c" * 64] not in told
    assert GONE in told[seqs[GONE]]
    assert told[seqs[GONE]].count("(p4)") == 1


def test_it_says_when_its_sound_was_erased(shop):
    texts = [" | ".join(cell.text for cell in row.cells) for row in beside(*shop, "en").rows]
    erased = next(one for one in texts if GONE in one)
    assert "sound erased 20" in erased
    assert "asked for by" in erased
    assert "erased" not in next(one for one in texts if KEPT in one)

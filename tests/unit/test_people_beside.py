"""Names and remarks lie beside the journal: erasing them leaves its chain whole, and is told."""

from __future__ import annotations

import stat
from dataclasses import replace
from pathlib import Path

import pytest

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import KeptTimeOver, PersonErased, ShopEvent, SignedOff
from kiosk.journal.store import Journal
from kiosk.people.beside import Beside, BesideFailed
from kiosk.people.erase import StillHere, erase_person, keep_to_time
from kiosk.people.pins import Pins
from kiosk.procedure.site import Kept
from tests.screens.scene import ANA, MINA, RITA, SITE

DAY = 86_400.0
NOW = 1_774_000_000.0
SECRET = "Ana Lindqvist-Invented dropped the beater"
TOUCH = Evidence(Channel.TOUCH)


class Clock:
    def __init__(self) -> None:
        self.utc = NOW

    def now(self) -> Instant:
        return Instant(self.utc, 100.0, "boot-1")


class Shelf:
    """A data folder with its journal and what lies beside it."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.clock = folder, Clock()
        self.journal, self.beside = Journal(folder), Beside(folder)
        self.beside.meet(SITE.people, NOW)

    def sign(self, text: str, by: str = "rita") -> str:
        remark = self.beside.keep(text, by, self.clock.utc)
        fact = SignedOff("a-session", by, remark)
        self.journal.append_shop([ShopEvent(self.clock.now(), TOUCH, fact)])
        return remark

    def erase(self, person: str, site=SITE) -> PersonErased:
        return erase_person(
            person, "command line", site, self.folder, self.beside, self.journal, self.clock
        )

    def bytes_with(self, text: str) -> list[str]:
        """The names of files that hold a text, as bytes."""
        files = (one for one in self.folder.rglob("*") if one.is_file())
        return [one.name for one in files if text.encode() in one.read_bytes()]


@pytest.fixture
def shelf(tmp_path: Path):
    made = Shelf(tmp_path)
    yield made
    made.journal.close()
    made.beside.close()


def without(person: str):
    return replace(SITE, people=tuple(one for one in SITE.people if one.id != person))


def test_the_journal_holds_a_hash_and_the_text_lies_beside_it(shelf: Shelf):
    remark = shelf.sign(SECRET)
    assert remark.startswith("kept:")
    assert len(remark) == len("kept:") + 64
    assert shelf.beside.text(remark) == SECRET
    assert shelf.bytes_with(SECRET) == ["people.db"]
    assert stat.S_IMODE((shelf.folder / "people.db").stat().st_mode) == 0o600


def test_the_same_remark_twice_has_two_hashes_so_that_none_can_be_guessed(shelf: Shelf):
    assert shelf.sign("well done") != shelf.sign("well done")


def test_no_remark_is_no_text_and_plain_remarks_come_back(shelf: Shelf):
    assert shelf.beside.keep("  ", "rita", NOW) == ""
    assert shelf.beside.text("") == ""
    assert shelf.beside.text("written plainly") == "written plainly"
    assert shelf.beside.text("kept:" + "0" * 64) is None


def test_a_text_that_was_changed_is_none(shelf: Shelf):
    remark = shelf.sign(SECRET)
    shelf.beside._db.execute("update remark set text = 'nothing happened'")
    assert shelf.beside.text(remark) is None


def test_erasing_somebody_leaves_no_byte_and_a_whole_chain(shelf: Shelf):
    remark, other = shelf.sign(SECRET), shelf.sign("the floor was wet", "mina")
    Pins(shelf.folder).put("rita", "480216")
    words = shelf.folder / "own-words" / "rita.es.npz"
    words.parent.mkdir()
    words.write_bytes(b"spectra")
    before = shelf.journal.head()
    fact = shelf.erase("rita", without("rita"))
    assert fact == PersonErased("rita", "command line", 1)
    assert shelf.bytes_with(SECRET) == []
    assert shelf.bytes_with("Rita") == []
    assert shelf.beside.text(remark) is None
    assert shelf.beside.text(other) == "the floor was wet"
    assert shelf.beside.name("rita") == "rita"
    assert shelf.beside.name("mina") == "Mina"
    assert not Pins(shelf.folder).has("rita")
    assert not words.exists()
    verdict = shelf.journal.verify()
    assert verdict.whole
    assert verdict.rows == 3
    rows = list(shelf.journal.rows())
    assert rows[-1]["kind"] == "PersonErased"
    assert rows[-1]["prev"] == before
    assert remark in rows[0]["body"]


def test_somebody_on_the_list_is_not_erased_and_the_mend_is_told(shelf: Shelf):
    remark = shelf.sign(SECRET)
    with pytest.raises(StillHere, match=r"Take that \[\[people\]\] table out"):
        shelf.erase("rita")
    assert shelf.beside.text(remark) == SECRET
    assert [row["kind"] for row in shelf.journal.rows()] == ["SignedOff"]


def test_erasing_twice_says_so_twice_and_harms_nothing(shelf: Shelf):
    shelf.sign(SECRET)
    shelf.erase("rita", without("rita"))
    assert shelf.erase("rita", without("rita")).remarks == 0
    assert shelf.journal.verify().whole


def test_a_name_is_kept_for_its_days_after_somebody_left(shelf: Shelf):
    site = replace(without("rita"), kept=Kept(names_days=30))
    shelf.clock.utc += 29 * DAY
    shelf.beside.meet(site.people, shelf.clock.utc)
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) is None
    assert shelf.beside.name("rita") == "Rita"
    shelf.clock.utc += 2 * DAY
    done = keep_to_time(site, shelf.beside, shelf.journal, shelf.clock)
    assert done == KeptTimeOver(("rita",), 0)
    assert shelf.beside.name("rita") == "rita"
    assert shelf.bytes_with("Rita") == []
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) is None
    assert [one.fact for one in shelf.journal.shop_events()] == [done]


def test_the_name_of_somebody_on_the_list_is_kept_even_while_the_kiosk_was_off(shelf: Shelf):
    site = replace(SITE, kept=Kept(names_days=30))
    shelf.clock.utc += 365 * DAY
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) is None
    assert [shelf.beside.name(one.id) for one in (ANA, MINA, RITA)] == ["Ana", "Mina", "Rita"]


def test_remarks_go_when_their_days_are_over(shelf: Shelf):
    old = shelf.sign(SECRET)
    shelf.clock.utc += 20 * DAY
    young = shelf.sign("swept")
    site = replace(SITE, kept=Kept(remarks_days=30))
    shelf.clock.utc += 11 * DAY
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) == KeptTimeOver((), 1)
    assert shelf.beside.text(old) is None
    assert shelf.beside.text(young) == "swept"
    assert shelf.bytes_with(SECRET) == []
    assert shelf.journal.verify().whole


def test_without_days_everything_is_kept(shelf: Shelf):
    shelf.sign(SECRET)
    shelf.clock.utc += 3650 * DAY
    assert keep_to_time(SITE, shelf.beside, shelf.journal, shelf.clock) is None


def test_a_clock_that_went_back_erases_nothing(shelf: Shelf):
    remark = shelf.sign(SECRET)
    shelf.clock.utc = 0.0
    site = replace(SITE, kept=Kept(names_days=1, remarks_days=1))
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) is None
    assert shelf.beside.text(remark) == SECRET


def test_names_change_and_the_last_one_counts(shelf: Shelf):
    shelf.beside.meet([replace(RITA, name="Rita B.")], NOW + 1)
    assert shelf.beside.name("rita") == "Rita B."


def test_a_file_that_cannot_be_used_says_which(tmp_path: Path):
    (tmp_path / "people.db").write_bytes(b"no database, and longer than a hundred bytes" * 9)
    with pytest.raises(BesideFailed, match=r"people\.db"):
        Beside(tmp_path)

"""`kiosk parts`: what is entered stands in the journal, what is wrong is refused with its mend."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

import pytest

from kiosk.cli import main
from kiosk.cli.place import demo_site
from kiosk.journal.shop_facts import PartReplaced, PartsReceived, StockCounted
from kiosk.journal.store import Journal
from tests.unit.plot_rows import received


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    return tmp_path / "demo"


def facts(folder: Path) -> list[object]:
    with closing(Journal(folder)) as journal:
        assert journal.verify().whole
        return [event.fact for event in journal.shop_events()]


def parts(command: str, **given: str) -> int:
    named = {"machine": "patio", "part": "o-rings", "count": "16", "by": "p4"} | given
    return main(["parts", command, *(f"--{name}={value}" for name, value in named.items())])


def test_received_and_counted_parts_are_journaled(folder: Path, capsys: pytest.CaptureFixture[str]):
    assert parts("received") == 0
    assert parts("counted", count="1", language="es") == 0
    assert facts(folder) == [
        PartsReceived("twin-gravity", "o-rings", 16, "p4", demo_site().practice),
        StockCounted("twin-gravity", "o-rings", 1, "p4", demo_site().practice),
    ]
    told = capsys.readouterr().out
    assert told == "Received: 16 pieces, O-rings.\nContada: 1 pieza, anillos de goma.\n"


@pytest.mark.parametrize(
    ("given", "mend"),
    [
        ({"machine": "garage"}, "There are: patio, counter"),
        ({"part": "beaters"}, "There are: door-gaskets, o-rings"),
        ({"count": "0"}, "give 1 to 10000"),
        ({"count": "20000"}, "give 1 to 10000"),
        ({"by": "nobody"}, "p1, p2, p3, p4"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_is_written(
    folder: Path, given: dict[str, str], mend: str, capsys: pytest.CaptureFixture[str]
):
    assert parts("received", **given) == 1
    assert mend in capsys.readouterr().err
    assert not folder.exists() or facts(folder) == []


def test_the_list_tells_what_wears_and_what_lies_on_the_shelf(
    folder: Path, capsys: pytest.CaptureFixture[str]
):
    with closing(Journal(folder)) as journal:
        event = received(0, 16)
        replaced = PartReplaced("patio", "o-rings", "2026-09-03", "p2", "", practice=True)
        journal.append_shop([event, type(event)(event.at, event.by, replaced)])
    assert main(["parts", "list"]) == 0
    told = capsys.readouterr().out
    assert "Patio twin · O-rings" in told
    assert "Replaced 2026-09-03 by Rosa Beltrán" in told
    assert "On the shelf: 8 pieces; one replacement takes 8. Enough for 1 replacement." in told
    assert "Too few replacements on record" in told
    assert "no limit" in told


def test_the_list_of_a_shop_without_sessions_says_so(
    folder: Path, capsys: pytest.CaptureFixture[str]
):
    assert main(["parts", "list"]) == 1
    assert "nothing was walked" in capsys.readouterr().err
    Journal(folder).close()
    assert main(["parts", "list"]) == 0
    assert "No wearing part was looked at yet." in capsys.readouterr().out

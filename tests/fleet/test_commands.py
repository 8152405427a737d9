"""`kiosk ship` and `kiosk fleet`, as they are typed."""

from __future__ import annotations

import re
import sys

import psycopg
import pytest

from kiosk.cli import main
from kiosk.cli.place import demo_site
from kiosk.fleet.connection import _stays_here
from kiosk.journal.store import FILE
from tests.fleet.journals import rows, rows_there, walk
from tests.fleet.server import free_port
from tests.fleet.test_parted import old_backup


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """The data folder of the invented shop, with a session in its journal."""
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    monkeypatch.delenv("KIOSK_HEAD_OFFICE", raising=False)
    walk(tmp_path / "demo", "s1")
    return tmp_path / "demo"


def test_a_head_office_is_set_up_and_a_shop_ships_to_it(head_office, folder, capsys, monkeypatch):
    server = head_office.server
    database = server.database(f"commands_{head_office.number}")
    office = server.admin(database)
    assert main(["fleet", "migrate", "--to", office]) == 0
    assert main(["fleet", "migrate", "--to", office]) == 0
    shop = f"stand-{head_office.number}"
    name = ["--name", "Sample stand (invented)", "--authority", "usda"]
    assert main(["fleet", "admit", shop, *name, "--to", office]) == 0
    said = capsys.readouterr().out
    assert "The tables are up to date." in said
    found = re.search(r"ships as (\S+), .*once: (\S+)", said)
    assert found is not None
    address = server.address(found[1], found[2], database)
    monkeypatch.setenv("KIOSK_HEAD_OFFICE", address)
    assert main(["ship"]) == 0
    assert "up to row 5: 5 rows are new there" in capsys.readouterr().out
    assert rows_there(head_office.line(office)) == rows(folder)
    for question in ("late", "notice", "holds", "heard", "trouble", "verify"):
        assert main(["fleet", question, "--to", office]) == 0
    said = capsys.readouterr().out
    assert f"{rows(folder)[0][0]}: 5 rows, whole" in said
    assert shop in said


def test_a_fork_is_told_and_settled(head_office, tmp_path, capsys, monkeypatch):
    address, office = head_office.admit("one"), head_office.server.admin(head_office.database)
    old, new = old_backup(tmp_path)
    walk(old, "another third")
    for name, status in ((new, 0), (old, 1)):
        (tmp_path / "home").mkdir(exist_ok=True)
        monkeypatch.setenv("KIOSK_HOME", str(tmp_path / "home"))
        link = tmp_path / "home" / "demo"
        link.unlink(missing_ok=True)
        link.symlink_to(name)
        assert main(["ship", "--to", address]) == status
    assert "From row 11 on" in capsys.readouterr().out
    assert main(["fleet", "trouble", "--to", office]) == 0
    line = next(one for one in capsys.readouterr().out.splitlines() if "fork" in one)
    words = ["--by", "priya", "--remark", "the old disk was put back"]
    assert main(["fleet", "settle", line.split()[0], *words, "--to", office]) == 0
    assert main(["fleet", "settle", line.split()[0], *words, "--to", office]) == 1
    assert "No open trouble" in capsys.readouterr().err


def test_a_head_office_that_is_away_is_a_plain_sentence(folder, capsys):
    assert main(["ship", "--to", f"postgresql://x:y@127.0.0.1:{free_port()}/none"]) == 1
    assert "The head office cannot be reached" in capsys.readouterr().err
    assert main(["ship"]) == 1
    assert "KIOSK_HEAD_OFFICE" in capsys.readouterr().err


def test_shipping_goes_on_when_the_head_office_comes_back(head_office, folder, capsys, monkeypatch):
    there = head_office.admit("one")
    port = head_office.server.port
    waited = []

    def wait(seconds):
        waited.append(seconds)
        if len(waited) == 1:
            monkeypatch.setattr("kiosk.cli.ship.data", lambda: (folder, demo_site()))
        if len(waited) == 3:
            raise KeyboardInterrupt

    def no_journal():
        raise FileNotFoundError("no journal yet")

    monkeypatch.setattr("kiosk.cli.ship.time.sleep", wait)
    monkeypatch.setattr("kiosk.cli.ship.data", no_journal)
    away = there.replace(f":{port}/", f":{free_port()}/")
    assert main(["ship", "--every", "10", "--to", there]) == 130
    assert waited == [600, 600, 600]
    said = capsys.readouterr().out
    assert "no journal yet" in said
    assert "5 rows are new" in said
    waited.clear()
    assert main(["ship", "--every", "0.5", "--to", away]) == 130
    assert capsys.readouterr().out.count("cannot be reached") == 3
    assert main(["ship", "--every", "-1", "--to", there]) == 1


def test_without_the_library_the_command_says_what_to_install(folder, capsys, monkeypatch):
    monkeypatch.setitem(sys.modules, "psycopg", None)
    assert main(["ship", "--to", "postgresql://localhost/x"]) == 1
    assert "brushdown[fleet]" in capsys.readouterr().err


def test_what_the_head_office_refuses_is_a_plain_sentence(head_office, folder, capsys):
    address = head_office.admit("one")
    with psycopg.connect(head_office.server.admin(head_office.database)) as line:
        line.execute("update fleet.shop set role = 'nobody'")
    assert main(["ship", "--to", address]) == 1
    said = capsys.readouterr().err
    assert "Nothing is lost" in said
    assert "ships for no shop" in said


def test_a_journal_that_cannot_be_read_is_a_plain_sentence(head_office, folder, capsys):
    (folder / FILE).write_bytes(b"no database" * 500)
    for rest in folder.glob(f"{FILE}-*"):
        rest.unlink()
    assert main(["ship", "--to", head_office.admit("one")]) == 1
    assert "cannot be read" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("address", "stays"),
    [("", True), ("127.0.0.1", True), ("::1", True), ("192.0.2.7", False), ("2001:db8::1", False)],
)
def test_a_line_may_go_without_tls_on_this_machine_only(address, stays):
    assert _stays_here(address) is stays

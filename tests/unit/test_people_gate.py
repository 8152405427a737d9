"""PINs: kept as hashes, refused in words, locked out for longer and longer, written without digits.

Outside: NIST SP 800-63B-3, 5.2.2 (waits from 30 seconds up to an hour, MEM; at most 100 failed
tries in a row, READ in a quotation); ISO 9564-1 (4 to 12 digits, READ in a quotation); RFC 9106,
section 4 (second recommended parameters: t = 3, m = 2^16 KiB, p = 4, MEM).
"""

from __future__ import annotations

import itertools
import json
import stat
from pathlib import Path

import pytest
from argon2 import PasswordHasher, Type, extract_parameters

from kiosk.engine.commands import Channel, Evidence, Instant, Refusal
from kiosk.journal.shop_facts import PinGiven, PinRefused, PinSet
from kiosk.journal.store import Journal, JournalFailed
from kiosk.people.gate import COMMAND_LINE, PinGate
from kiosk.people.lockout import MOST_TRIES, closed, wait_s
from kiosk.people.may import Purpose
from kiosk.people.pins import Pins, PinsFailed, fault_of

KEY = Evidence(Channel.KEY)
QUICK = PasswordHasher(time_cost=1, memory_cost=8, parallelism=1)
"""Hashes at once: the tests try many PINs, and none of them is a secret."""
RIGHT, WRONG = "480216", "480217"


class Clock:
    def __init__(self) -> None:
        self.utc, self.mono, self.boot = 1_774_000_000.0, 100.0, "boot-1"

    def now(self) -> Instant:
        return Instant(self.utc, self.mono, self.boot)

    def wait(self, seconds: float) -> None:
        self.utc += seconds
        self.mono += seconds

    def restart(self, *, clock_set_back: float = 0.0) -> None:
        self.utc -= clock_set_back
        self.mono, self.boot = 1.0, f"{self.boot}+"


class Door:
    """A gate on a folder, that can be closed and opened again as after a restart."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.clock = folder, Clock()
        self.open()

    def open(self) -> None:
        self.journal = Journal(self.folder)
        self.gate = PinGate(Pins(self.folder, QUICK), self.journal, self.clock)

    def restart(self, *, clock_set_back: float = 0.0) -> None:
        self.journal.close()
        self.clock.restart(clock_set_back=clock_set_back)
        self.open()

    def give(self, digits: str, person: str = "sue") -> str:
        found = self.gate.give(person, digits, Purpose.SIGN, KEY)
        return "" if found is None else found.why

    def facts(self) -> list[object]:
        return [one.fact for one in self.journal.shop_events()]


@pytest.fixture
def door(tmp_path: Path):
    made = Door(tmp_path)
    assert made.gate.put("sue", RIGHT, COMMAND_LINE, KEY) is None
    yield made
    made.journal.close()


def test_a_right_pin_is_let_through_and_a_wrong_one_is_not(door: Door):
    assert door.give(RIGHT) == ""
    assert door.give(WRONG) == "pin-wrong"
    assert door.give("") == "pin-wrong"
    assert door.give(RIGHT + "0") != ""
    assert door.facts() == [
        PinSet("sue", "command line"),
        PinGiven("sue", "sign"),
        PinRefused("sue", "sign", 1),
        PinRefused("sue", "sign", 2),
        PinRefused("sue", "sign", 3),
    ]


def test_somebody_without_a_pin_is_told_and_nothing_is_counted(door: Door):
    found = door.gate.give("ana", RIGHT, Purpose.WITNESS, KEY)
    assert found == Refusal("no-pin-set", (("person", "ana"),))
    assert door.facts() == [PinSet("sue", "command line")]


def test_digits_and_hashes_are_nowhere_in_the_journal_and_digits_nowhere_in_the_folder(door: Door):
    door.give(WRONG)
    spoken = Evidence(Channel.VOICE, f"{RIGHT} said", 0.9, "ear")
    door.gate.give("sue", RIGHT, Purpose.SIGN, spoken)
    kept = json.loads((door.folder / "pins.json").read_text())["sue"]
    rows = "".join(row["body"] for row in door.journal.rows())
    assert kept not in rows
    assert "argon2" not in rows
    door.journal.close()
    for file in door.folder.iterdir():
        assert RIGHT.encode() not in file.read_bytes(), file.name
        assert WRONG.encode() not in file.read_bytes(), file.name
    door.open()


def test_the_file_is_for_the_kiosk_alone_and_written_whole(door: Door):
    file = door.folder / "pins.json"
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    (door.folder / "pins.new").write_text("half a fi")
    before = file.stat().st_ino
    assert door.gate.put("ana", "7193", "sue", KEY) is None
    assert file.stat().st_ino != before
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert not (door.folder / "pins.new").exists()
    assert door.give(RIGHT) == ""
    assert door.give("7193", "ana") == ""


def test_a_real_hash_has_the_parameters_of_the_rfc(tmp_path: Path):
    Pins(tmp_path).put("sue", RIGHT)
    found = extract_parameters(json.loads((tmp_path / "pins.json").read_text())["sue"])
    assert found.type is Type.ID
    assert (found.time_cost, found.memory_cost, found.parallelism) == (3, 2**16, 4)
    assert found.salt_len >= 16
    assert Pins(tmp_path).right("sue", RIGHT)
    assert not Pins(tmp_path).right("sue", WRONG)


def test_two_people_with_the_same_pin_have_different_hashes(door: Door):
    door.gate.put("ana", RIGHT, "sue", KEY)
    kept = json.loads((door.folder / "pins.json").read_text())
    assert kept["ana"] != kept["sue"]


# The lock-out.


def test_waits_grow_from_half_a_minute_to_an_hour():
    waits = [wait_s(n) for n in range(1, MOST_TRIES)]
    assert waits[:2] == [0.0, 0.0]
    assert waits[2] == 30.0
    assert max(waits) == 3600.0
    assert all(later >= earlier for earlier, later in itertools.pairwise(waits))
    assert not closed(99)
    assert closed(100)


def test_after_three_wrong_tries_even_the_right_pin_waits(door: Door):
    assert [door.give(WRONG) for _ in range(3)] == ["pin-wrong", "pin-wrong", "pin-wait"]
    assert door.give(RIGHT) == "pin-wait"
    door.clock.wait(29.0)
    assert door.give(RIGHT) == "pin-wait"
    assert door.gate.wait("sue") == pytest.approx(1.0)
    door.clock.wait(1.0)
    assert door.give(WRONG) == "pin-wait"
    assert door.gate.wait("sue") == 60.0
    door.clock.wait(60.0)
    assert door.give(RIGHT) == ""
    assert [door.give(WRONG) for _ in range(2)] == ["pin-wrong", "pin-wrong"]


def test_a_locked_out_try_is_not_tried_at_all(door: Door):
    for _ in range(3):
        door.give(WRONG)
    before = door.facts()
    door.give(RIGHT)
    door.give(WRONG)
    assert door.facts() == before


def test_one_persons_wrong_tries_lock_nobody_else_out(door: Door):
    door.gate.put("ana", "7193", "sue", KEY)
    for _ in range(3):
        door.give(WRONG)
    assert door.give("7193", "ana") == ""


def test_a_lock_out_survives_a_restart(door: Door):
    for _ in range(3):
        door.give(WRONG)
    door.restart()
    assert door.give(RIGHT) == "pin-wait"
    door.clock.wait(31.0)
    assert door.give(RIGHT) == ""


def test_a_clock_set_back_by_a_restart_locks_out_for_no_longer_than_the_wait(door: Door):
    for _ in range(3):
        door.give(WRONG)
    door.restart(clock_set_back=86_400.0)
    assert door.gate.wait("sue") == 30.0
    door.clock.wait(30.0)
    assert door.give(RIGHT) == ""


def test_a_clock_set_forward_within_a_boot_shortens_nothing(door: Door):
    for _ in range(3):
        door.give(WRONG)
    door.clock.utc += 86_400.0
    assert door.give(RIGHT) == "pin-wait"


def test_after_a_hundred_wrong_tries_only_a_new_pin_helps(door: Door):
    door.journal.append_shop([_refused(door.clock.now(), MOST_TRIES - 1)])
    door.clock.wait(3600.0)
    assert door.give(WRONG) == "pin-closed"
    door.clock.wait(1e6)
    assert door.give(RIGHT) == "pin-closed"
    assert door.gate.put("sue", "913572", "ana", KEY) is None
    assert door.give("913572") == ""


def _refused(at: Instant, in_a_row: int):
    from kiosk.journal.shop_facts import ShopEvent

    return ShopEvent(at, KEY, PinRefused("sue", "sign", in_a_row))


# What cannot be a PIN, and files that cannot be used.


@pytest.mark.parametrize("digits", ["", "123", "12a4", "1234567890123", "１２３４", " 4802"])
def test_a_pin_has_four_to_twelve_plain_digits(digits: str):
    assert fault_of(digits) == Refusal("pin-length", (("least", "4"), ("most", "12")))


@pytest.mark.parametrize("digits", ["0000", "1234", "9876", "456789"])
def test_runs_and_repeats_are_refused(digits: str):
    assert fault_of(digits) == Refusal("pin-easy")


@pytest.mark.parametrize("digits", ["4802", "480216480216", "1235", "2468"])
def test_other_digits_will_do(digits: str):
    assert fault_of(digits) is None


@pytest.mark.parametrize("text", ["{", "[]", '{"sue": 1}', '{"sue": "no hash"}'])
def test_a_damaged_file_lets_nobody_in_and_says_what_to_mend(door: Door, text: str):
    (door.folder / "pins.json").write_text(text)
    found = door.gate.give("sue", RIGHT, Purpose.SIGN, KEY)
    assert found is not None
    assert found.why == "pins-unreadable"
    assert "kiosk people pin" in str(dict(found.args)["reason"])
    assert door.facts() == [PinSet("sue", "command line")]


def test_a_new_pin_is_not_written_over_a_damaged_file(door: Door):
    (door.folder / "pins.json").write_text("{")
    with pytest.raises(PinsFailed):
        Pins(door.folder, QUICK).put("ana", "7193")
    assert (door.folder / "pins.json").read_text() == "{"


def test_nothing_is_let_through_that_cannot_be_written(door: Door, monkeypatch):
    def full(events: object) -> None:
        raise JournalFailed("the disk is full")

    monkeypatch.setattr(door.journal, "append_shop", full)
    assert door.give(RIGHT) == "pin-not-written"
    found = door.gate.put("ana", "7193", "sue", KEY)
    assert found == Refusal("pin-not-written", (("reason", "the disk is full"),))
    assert not Pins(door.folder, QUICK).has("ana")


# The invented shop.


def test_the_invented_pin_is_of_those_without_their_own(door: Door):
    gate = PinGate(Pins(door.folder, QUICK), door.journal, door.clock, "2468")
    assert gate.invented_for("ana") == "2468"
    assert gate.invented_for("sue") == ""
    assert gate.give("ana", "2468", Purpose.SIGN, KEY) is None
    assert gate.give("ana", "2469", Purpose.SIGN, KEY) == Refusal("pin-wrong")
    assert gate.give("sue", "2468", Purpose.SIGN, KEY) == Refusal("pin-wrong")

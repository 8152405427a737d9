"""Each name in a session has its PIN in the shop's own facts, or the audit says so."""

from __future__ import annotations

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.journal.shop_facts import PinGiven, ShopEvent
from kiosk.people.may import Purpose
from kiosk.people.vouched import WITHIN_S, unvouched

TOUCH = c.Evidence(c.Channel.TOUCH)


def at(seconds: float, boot: str = "b0") -> c.Instant:
    return c.Instant(1e9 + seconds, seconds, boot)


def given(person: str, purpose: Purpose, seconds: float = 100.0, boot: str = "b0") -> ShopEvent:
    return ShopEvent(at(seconds, boot), TOUCH, PinGiven(person, purpose))


def event(fact: e.Fact, seconds: float = 110.0) -> e.Event:
    return e.Event(at(seconds), TOUCH, fact)


def started(supervisor: str = "", *, pin: bool = False) -> e.Event:
    fact = e.SessionStarted(
        "close", 1, "d", "m1", "tia", "en", "in service", "apart", False, supervisor, pin
    )
    return event(fact)


def witnessed(person: str, seconds: float = 110.0) -> e.Event:
    fact = e.StepConfirmed("power", "second person", "", "", "", ("off",), (), person)
    return event(fact, seconds)


@pytest.mark.parametrize(
    ("told", "pins"),
    [
        (started(), []),
        (started("sue"), [given("sue", Purpose.STAND_BY)]),
        (started(pin=True), [given("tia", Purpose.BEGIN)]),
        (started("sue", pin=True), [given("tia", Purpose.BEGIN), given("sue", Purpose.STAND_BY)]),
        (witnessed("ben"), [given("ben", Purpose.WITNESS)]),
        (witnessed(""), []),
        (event(e.HandedOver("ben", "en", pin=True)), [given("ben", Purpose.TAKE_OVER)]),
        (event(e.HandedOver("ben", "en", pin=True)), [given("ben", Purpose.BEGIN)]),
    ],
)
def test_a_name_with_its_pin_is_sound(told, pins):
    assert list(unvouched([told], pins)) == []


@pytest.mark.parametrize(
    ("told", "pins"),
    [
        (started("sue"), []),
        (started("sue"), [given("sue", Purpose.SIGN)]),
        (started("sue"), [given("ben", Purpose.STAND_BY)]),
        (started(pin=True), [given("sue", Purpose.STAND_BY)]),
        (witnessed("ben"), [given("ben", Purpose.WITNESS, seconds=111.0)]),
        (witnessed("ben"), [given("ben", Purpose.WITNESS, boot="another")]),
        (witnessed("ben", 101.0 + WITHIN_S), [given("ben", Purpose.WITNESS)]),
    ],
)
def test_a_name_without_its_pin_is_told(told, pins):
    (found,) = unvouched([event(e.SessionResumed("")), told], pins)
    assert (found.seq, found.rule) == (2, "pin-given")

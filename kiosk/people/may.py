"""Who may do what: the one place that says no to a person.

It only ever refuses: it makes no event and moves nothing. Whatever is proven of the engine for a
crew that may do everything is therefore true of every crew.
"""

from __future__ import annotations

from collections.abc import Mapping, Set
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from kiosk.engine import commands as c
from kiosk.procedure.site import Person, Role


class Purpose(StrEnum):
    """What somebody gives their PIN for."""

    BEGIN = "begin"
    TAKE_OVER = "take over"
    WITNESS = "witness"
    STAND_BY = "stand by"
    SIGN = "sign"
    REVIEW = "review"
    SET_PIN = "set pin"


@dataclass(frozen=True, slots=True)
class SignOff:
    """Sign a session off, or send it back."""

    person: str
    workers: tuple[str, ...]
    """All who walked the session."""


@dataclass(frozen=True, slots=True)
class Review:
    """Look at what others have done, and at results."""

    person: str


@dataclass(frozen=True, slots=True)
class SetPin:
    """Set somebody's PIN."""

    person: str
    by: str


Identified = c.Start | c.HandOver | c.Witness
"""Acts for which it matters who somebody is."""

Wish = c.Act | SignOff | Review | SetPin


ASKED_FOR: Final = frozenset({"pin-first", "supervisor-first"})
"""Refusals that go away when a PIN is given."""


@dataclass(frozen=True, slots=True)
class Crew:
    """The people of a site, as far as it matters for what they may do."""

    people: Mapping[str, Person]
    learning: Set[tuple[str, str]] = frozenset()
    """Each trainee with a procedure whose first walks are not done yet."""
    pin_at_start: bool = False


def refusal(crew: Crew, procedure: str, wish: Wish) -> c.Refusal | None:
    """Return why somebody may not do something; None when they may, or when nobody is asked.

    What is `ASKED_FOR` goes away when that PIN is given: the act then says so.
    """
    match wish:
        case c.Start() | c.HandOver():
            return _walk(crew, procedure, wish)
        case c.Witness(person):
            return _witness(crew, procedure, person)
        case SignOff(person, workers):
            return c.Refusal("own-work") if person in workers else _supervisor(crew, person)
        case Review(person):
            return _supervisor(crew, person)
        case SetPin(person, by):
            return _member(crew, person) if person == by else _supervisor(crew, by)
        case _:
            return None


def _walk(crew: Crew, procedure: str, act: c.Start | c.HandOver) -> c.Refusal | None:
    refused = _member(crew, act.worker) or _walks(crew, procedure, act.worker)
    if refused is not None:
        return refused
    if crew.pin_at_start and not act.pin:
        return c.Refusal("pin-first")
    if act.supervisor:
        own = act.supervisor == act.worker
        return c.Refusal("same-person") if own else _supervisor(crew, act.supervisor)
    return c.Refusal("supervisor-first") if (act.worker, procedure) in crew.learning else None


def _witness(crew: Crew, procedure: str, person: str) -> c.Refusal | None:
    refused = _member(crew, person) or _walks(crew, procedure, person)
    if refused is None and crew.people[person].role is Role.TRAINEE:
        return c.Refusal("trainee-no-witness")
    return refused


def _member(crew: Crew, person: str) -> c.Refusal | None:
    return None if person in crew.people else c.Refusal("not-on-list")


def _walks(crew: Crew, procedure: str, person: str) -> c.Refusal | None:
    walks = crew.people[person].walks
    return c.Refusal("not-your-walk") if walks and procedure not in walks else None


def _supervisor(crew: Crew, person: str) -> c.Refusal | None:
    refused = _member(crew, person)
    if refused is None and crew.people[person].role is not Role.SUPERVISOR:
        return c.Refusal("supervisors-only")
    return refused

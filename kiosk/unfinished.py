"""Sessions that were begun and not brought to an end, as the journal tells of them."""

from __future__ import annotations

from dataclasses import dataclass

from kiosk.engine.events import Event, SessionStarted
from kiosk.engine.state import State, fold
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.store import Journal
from kiosk.procedure.load import Library
from kiosk.procedure.model import Standing, Text
from kiosk.procedure.plan import Do, Plan, Step
from kiosk.procedure.site import Site
from kiosk.review.recording import without_beginning
from kiosk.session import Session

TEXT_CHANGED = "text-changed"
"""The message for a session whose procedure no longer has the text that it was begun with."""


@dataclass(frozen=True, slots=True)
class OpenSession:
    """A session that was begun and not brought to an end."""

    id: str
    started: SessionStarted
    state: State


@dataclass(frozen=True, slots=True)
class TakenUp:
    """A session found open, ready to be gone on with."""

    session: Session
    caveat: str = ""
    """TEXT_CHANGED when the session can only be ended; empty when it can be walked on."""


def unfinished(
    journal: Journal, *, practice: bool
) -> tuple[tuple[OpenSession, ...], tuple[str, ...]]:
    """Return the open sessions, oldest first, and why some cannot be read."""
    found: list[OpenSession] = []
    unreadable: list[str] = []
    for session_id in journal.open_sessions():
        try:
            one = open_session(journal, session_id)
        except UnknownEvent as error:
            unreadable.append(
                f"the unfinished session {session_id} cannot be read ({error}); "
                "use the kiosk version that wrote it"
            )
            continue
        if one.started.practice == practice:
            found.append(one)
    return tuple(found), tuple(unreadable)


def open_session(journal: Journal, session_id: str) -> OpenSession:
    """Return one session as it stands. Raises UnknownEvent when it cannot be read."""
    events = journal.events(session_id)
    return OpenSession(session_id, beginning(session_id, events), fold(events))


def beginning(session_id: str, events: list[Event]) -> SessionStarted:
    """Return how a session began. Raises UnknownEvent when it never did."""
    for event in events:
        if isinstance(event.fact, SessionStarted):
            return event.fact
    raise without_beginning(session_id)


def closed_plan(found: OpenSession, library: Library, site: Site) -> Plan:
    """Return a plan of steps that nothing leads into, by which a session can be ended and no more.

    It stands in for one whose text is not here any more.
    """
    started, state = found.started, found.state
    names = {one.id: one.name for one in site.machines}
    procedure = library.procedures.get(started.procedure)
    title: Text = {"en": started.procedure} if procedure is None else procedure.title
    steps = tuple(
        Step(id=name, phase="", say=title, task=Do(), requires=(TEXT_CHANGED,))
        for name in dict.fromkeys((state.step, state.goal))
        if name
    )
    return Plan(
        procedure=started.procedure,
        version=started.version,
        digest=started.digest,
        title=title,
        machine=started.machine,
        machine_name=names.get(started.machine, started.machine),
        during=Standing(started.during),
        leaves=Standing(started.leaves),
        follow={},
        phases={"": title},
        steps=steps,
        conditions=library.common.conditions,
        problems=library.common.problems,
        practice=started.practice,
    )

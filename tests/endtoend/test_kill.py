"""kill -9 at random moments: what was shown as confirmed is in the journal."""

from __future__ import annotations

import json
import os
import random
import signal
import traceback
from pathlib import Path

import pytest

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine import commands as c
from kiosk.engine.decide import decide
from kiosk.engine.state import Mode, fold
from kiosk.journal import chain
from kiosk.journal.store import Journal
from kiosk.rehearsal.worker import answer
from kiosk.session import Session
from tests.plans import EVERY_KIND

TOUCH = c.Evidence(c.Channel.TOUCH)
KILLS = 200

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="this platform cannot fork")


def walk_forever(folder: Path, shown: int) -> None:
    """Walk session after session; write a line for each event once the walk has moved."""
    journal = Journal(folder)
    clock = LeapingClock(SystemClock())
    open_sessions = journal.open_sessions()
    session = (
        Session(EVERY_KIND, journal, clock, open_sessions[0])
        if open_sessions
        else Session.fresh(EVERY_KIND, journal, clock)
    )
    act: c.Act | None = c.Restart() if open_sessions else c.Start("ana", "en")
    while True:
        if act is None:
            clock.leap(session.seconds_left() or 0.0)
        else:
            outcome = session.do(act, TOUCH)
            assert outcome.events, (act, outcome)
            for event in outcome.events:
                kind = type(event.fact).__name__
                line = f"{session.id} {kind} {getattr(event.fact, 'step', '')}\n"
                os.write(shown, line.encode())
        if session.over:
            session = Session.fresh(EVERY_KIND, journal, clock)
            act = c.Start("ana", "en")
        else:
            act = answer(session)


def kill_one(folder: Path, lines: int) -> list[str]:
    """Run a walker and kill it after it has shown some lines; return all that it had shown."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            os.close(reading)
            walk_forever(folder, writing)
        except BaseException:  # noqa: BLE001 (a forked child must never reach pytest)
            traceback.print_exc()
        finally:
            os._exit(1)
    os.close(writing)
    text = b""
    with os.fdopen(reading, "rb", buffering=0) as shown:
        while text.count(b"\n") < lines:
            part = shown.read(256)
            if not part:
                break
            text += part
        os.kill(child, signal.SIGKILL)
        while part := shown.read(4096):
            text += part
    _, status = os.waitpid(child, 0)
    assert os.WIFSIGNALED(status), f"the walker ended by itself: {text[-300:]!r}"
    return text.decode().splitlines()


def test_two_hundred_kills_lose_nothing_that_was_shown(tmp_path):
    chance = random.Random(20260712)
    journaled = 0
    for number in range(KILLS):
        shown = kill_one(tmp_path, chance.randrange(1, 40))
        journal = Journal(tmp_path)
        rows = list(journal.rows())
        new = [
            f"{row['session']} {row['kind']} {json.loads(row['body'])['fact'].get('step', '')}"
            for row in rows[journaled:]
        ]
        assert new[: len(shown)] == shown, f"kill {number} lost a confirmation"
        assert chain.verify(rows).whole, f"kill {number} broke the chain"
        assert len(journal.open_sessions()) <= 1
        journaled = len(rows)
        same_step_after_restart(journal)
        journal.close()


def same_step_after_restart(journal: Journal) -> None:
    """A restart stands where the session stood, held, with every hold to be asked again."""
    for session_id in journal.open_sessions():
        before = Session(EVERY_KIND, journal, SystemClock(), session_id)
        again = Session(EVERY_KIND, journal, SystemClock(), session_id)
        command = c.Command(c.Restart(), SystemClock().now(), TOUCH)
        decided = decide(EVERY_KIND, again.state, command)
        assert not isinstance(decided, c.Refusal)
        state = fold(decided, again.state)
        assert (state.step, state.goal) == (before.state.step, before.state.goal)
        assert state.mode is Mode.HELD
        assert state.in_force.isdisjoint(EVERY_KIND.lapsing)

"""A disk that takes seconds for one write, while somebody presses again or is heard again."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from textual import events

from kiosk.engine import commands as c
from kiosk.engine.state import Stage
from kiosk.journal.store import Journal
from kiosk.listening.ear import Heard
from kiosk.proof.audit import audit
from kiosk.rehearsal.worker import answer
from tests.faults.judging import TOUCH, Withstood
from tests.screens.scene import NEXT, YES, Kiosk, kiosk

_STALL_S = 5.0
WAYS = ("touch", "same key", "other key", "voice")


async def stalled(folder: Path, way: str) -> Withstood:
    """Answer, and answer again while the disk is busy: only the first answer is one.

    The second would have answered a question that nobody had seen: a pass of a rinse, or whether
    an isolation holds.
    """
    found = Withstood(tries=1)
    async with kiosk(folder) as it:
        await it.begin()
        await _to(it, "power" if way == "voice" else "flush")
        if way == "voice":
            await it.keep("the power is off")
            _stall(it, _saying(it, it.walk.words.phrases(YES)[0]))
            await it.touch(YES)
            found.bypassed += it.state.stage is not Stage.VERIFY
        else:
            _stall(it, _touching(it) if way == "touch" else _pressing(it, way))
            await (it.touch(NEXT) if way == "touch" else it.press("enter"))
            found.bypassed += it.state.stage is not Stage.IS_CLEAR
        found.saw(it.walk.lines()[0])
        session = it.walk.session
        rows = it.app.shop.journal.events(session.id)
        found.bypassed += len(audit(session.plan, rows))
        found.broken += not it.app.shop.journal.verify().whole
    return found


async def _to(it: Kiosk, step: str) -> None:
    """Answer until a step is stood in."""
    while it.state.step != step:
        act = answer(it.walk.session)
        it.clock.seconds += 1 if act else 600
        it.walk.do(act or c.Confirm(), TOUCH)
    await it.settle()


def _stall(it: Kiosk, meanwhile: Callable[[], None]) -> None:
    """Have the next write take its time, and something happen in it."""
    append, journal = Journal.append, it.app.shop.journal

    def slow(*args: object) -> int:
        del journal.append  # type: ignore[method-assign]
        it.clock.seconds += _STALL_S / 2
        meanwhile()
        it.clock.seconds += _STALL_S / 2
        return append(journal, *args)  # type: ignore[arg-type]

    journal.append = slow  # type: ignore[method-assign]


def _touching(it: Kiosk) -> Callable[[], None]:
    place = it.target(NEXT).region
    x, y = place.x + place.width // 2, place.y + 1

    def touch() -> None:
        for kind in (events.MouseDown, events.MouseUp) * 3:
            it.app.post_message(kind(None, x, y, 0, 0, 1, False, False, False, x, y))

    return touch


def _pressing(it: Kiosk, way: str) -> Callable[[], None]:
    key, letter = ("enter", None) if way == "same key" else ("y", "y")

    def press() -> None:
        for _ in range(3):
            it.app.post_message(events.Key(key, letter))

    return press


def _saying(it: Kiosk, phrase: str) -> Callable[[], None]:
    return lambda: it.app.heard(Heard(phrase, phrase, 0.9, "test-ear", "", 0.1, 0.0))

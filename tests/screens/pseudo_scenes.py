"""Ways through the screens that the tests of their looks do not pass, for the made language."""

from __future__ import annotations

from collections.abc import AsyncIterator
from dataclasses import replace
from decimal import Decimal
from functools import partial

from kiosk.journal.store import JournalFailed
from kiosk.languages.notice import Notice
from kiosk.languages.words import notice
from kiosk.listening.ear import DOUBTFUL, NOT_ALLOWED, NOTHING, TOO_SHORT, Heard
from kiosk.options import Give, NeverMind, Take
from kiosk.procedure.site import Person, Pins, Role, Site
from kiosk.reckoning.table import CALCULATORS
from tests.screens.remark_scene import PROBLEM
from tests.screens.scene import ANA, MINA, SITE, Kiosk
from tests.screens.test_remark import recording

LOOKED_AT = ("dose", "strength", "cold", "use-by", "authority")
"""Calculators with the longest answers; all others draw theirs alike."""
MOST_QUESTIONS = 9
"""Questions of one calculator that are looked at; some ask the same of every bag and plate."""

SUE = Person(id="sue", name="Sue", language="en", role=Role.SUPERVISOR)
TIA = Person(id="tia", name="Tia", language="en", role=Role.TRAINEE)
CREW: Site = replace(SITE, people=(ANA, MINA, TIA, SUE), pins=Pins(invented="2468"))

REASON, PLACE = "7", "/1/2"
NOTICES = (
    notice("speaker-none", reason=REASON),
    notice("prompts-not-kept", folder=PLACE, reason=REASON),
    notice("speech-no-voice", language="1", known="2, 3"),
    notice("speech-ended-twice", reason=REASON),
    notice("ear-failed-once", ear="1", reason=REASON),
    notice("ear-not-whole", model="1", place=PLACE, missing="2", more=3, mend=REASON),
    notice("own-words-unreadable", file=PLACE, reason=REASON, command="1 2"),
)
"""What voice and ear tell that is long; what fills them is in no language."""
TROUBLES = (
    notice("journal-two-kiosks", folder=PLACE),
    notice("journal-moved", file=PLACE, log="2"),
    notice("journal-full", file=PLACE),
    notice("journal-damaged", file=PLACE, reason=REASON),
)
"""Why the journal cannot be written."""


async def on_the_board(it: Kiosk) -> AsyncIterator[str]:
    """The board's other ways, and what it tells."""
    await it.press("question_mark")
    yield "help"
    await it.press("escape", "k")
    yield "whose PIN"
    await it.press("1")
    yield "who vouches for it"
    await it.press("1")
    yield "the PIN of who vouches"
    await it.press(*"1111", "enter")
    yield "a wrong PIN"
    await it.press(*"2468", "enter", *"12", "enter")
    yield "a new PIN that is too short"
    await it.press(*"1111", "enter")
    yield "a new PIN that is too easy"
    await it.press(*"8642", "enter", *"8643", "enter")
    yield "two new PINs that differ"
    await it.press("escape")
    await it.touch("Window machine", "Tia")
    yield "a trainee without a supervisor"


async def on_a_walk(it: Kiosk) -> AsyncIterator[str]:
    """What ear, voice and journal tell, and what is refused."""
    await it.begin()
    await it.press("question_mark")
    yield "help"
    await it.press("escape")
    for number, why in enumerate((NOTHING, NOT_ALLOWED, TOO_SHORT, DOUBTFUL, DOUBTFUL), 1):
        it.clock.seconds += 1
        it.app.heard(Heard("7", None, 0.9, "1", why, 0.1, 0.0))
        await it.settle()
        yield f"heard {number}: {why}"
    for one in NOTICES:
        it.app.voice.notice = it.app.hearing.notice = one
        it.app.notice_changed()
        await it.settle()
        yield f"notice: {one.name}"
    it.app.voice.notice = it.app.hearing.notice = ""
    append = it.walk.session._journal.append
    for one in TROUBLES:
        it.walk.session._journal.append = partial(_fail, one)
        await it.touch(PROBLEM)
        yield one.name
    it.walk.session._journal.append = append


def _fail(why: Notice, *_: object) -> int:
    raise JournalFailed(why)


async def on_a_remark(it: Kiosk) -> AsyncIterator[str]:
    """From the open problem to a remark that is kept."""
    await recording(it, 1.0)
    yield "recording"
    await it.press("enter")
    yield "recorded"
    await it.press("k")
    yield "kept"


async def on_the_reckoner(it: Kiosk) -> AsyncIterator[str]:
    """A calculator's first question, and its answer to the first choice each time."""
    await it.press("w")
    yield "the calculators"
    for name in LOOKED_AT:
        while not it.offers(Take(name)):
            await it.touch(next(one.choice for one in it.walk.options() if _others(one.choice)))
        await it.touch(Take(name))
        yield f"{name}: the first question"
        for _ in range(MOST_QUESTIONS):
            given = [one.choice for one in it.walk.options() if isinstance(one.choice, Give)]
            if not given and it.walk.number is None:
                yield f"{name}: the answer"
                break
            await it.touch(given[0]) if given else await _type(it)
        await it.touch(NeverMind()) if it.offers(NeverMind()) else None
        await it.press("w") if not it.walk.asking else None


def _others(choice: object) -> bool:
    return isinstance(choice, Take) and choice.calculator not in CALCULATORS


async def _type(it: Kiosk) -> None:
    """Type the least number that is wanted, or one above nothing."""
    wanted = it.walk.number
    await it.press(*str(max(wanted.least, Decimal(1))).replace("-", ""), "enter")

"""What the crew does next: what a careful worker would, and beside it what a visitor should see."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Final

from kiosk.engine import commands as c
from kiosk.engine.state import Mode, Stage
from kiosk.procedure.plan import Hold, Measure, Wait
from kiosk.rehearsal.worker import answer
from kiosk.session import Session


@dataclass(frozen=True, slots=True)
class Answers:
    """Somebody says or presses an answer."""

    act: c.Act


@dataclass(frozen=True, slots=True)
class SaysWrongWord:
    """Somebody says the word of another act, which does not count here."""

    act: c.Act


@dataclass(frozen=True, slots=True)
class PressesShortly:
    """Somebody presses a hold's target and does not keep it pressed."""

    act: c.Act


@dataclass(frozen=True, slots=True)
class TakesOver:
    """Another person goes on."""


@dataclass(frozen=True, slots=True)
class LosesPower:
    """The kiosk stops in the middle of a step, without a word to it before."""


@dataclass(frozen=True, slots=True)
class Waits:
    """There is nothing to do until the time is up."""


Deed = Answers | SaysWrongWord | PressesShortly | TakesOver | LosesPower | Waits


@dataclass(frozen=True, slots=True)
class Beat:
    """One thing that happens."""

    deed: Deed
    note: str = ""
    """A message of what there is to see in it; empty where it needs none."""


Place = tuple[str, Stage]

_INCIDENTS: Final[Mapping[Place, tuple[Beat, ...]]] = {
    ("isolate-plug", Stage.ASK): (
        Beat(SaysWrongWord(c.Confirm()), "crew-next-passes-no-hold"),
        Beat(PressesShortly(c.GivePhrase()), "crew-short-press-passes-no-hold"),
    ),
    ("isolate-plug", Stage.READ_BACK): (Beat(Answers(c.Yes()), "crew-read-back"),),
    ("valves-out", Stage.ASK): (Beat(LosesPower(), "crew-power-cut"),),
    ("shafts-out", Stage.ASK): (
        Beat(Answers(c.CallProblem()), "crew-problem"),
        Beat(Answers(c.NameReason("something-else"))),
        Beat(Answers(c.Resume()), "crew-holds-again"),
    ),
    ("count-o-rings", Stage.ASK): (Beat(Answers(c.Read(Decimal(7))), "crew-one-is-missing"),),
    ("count-o-rings", Stage.READ_BACK): (Beat(Answers(c.Yes())),),
    ("lay-out", Stage.ASK): (Beat(TakesOver(), "crew-other-language"),),
}
"""What happens at a step beside the usual, once each. A step that a plan has not is never met."""


class Plot:
    """One evening. It asks the session's state alone, so that it goes on after a power cut."""

    def __init__(self, incidents: Mapping[Place, tuple[Beat, ...]] = _INCIDENTS) -> None:
        self._left = {place: list(beats) for place, beats in incidents.items()}
        self._at: list[Beat] = []

    def next(self, session: Session) -> Beat:
        """Return what happens now. Raises worker.Stuck."""
        state = session.state
        if self._at:
            return self._at.pop(0)
        if state.mode is Mode.RUNNING:
            self._at = self._left.pop((state.step, state.stage), [])
            if self._at:
                return self._at.pop(0)
        act = answer(session)
        return Beat(Waits()) if act is None else Beat(Answers(act))

    def left(self) -> frozenset[str]:
        """Return the steps at which something was to happen and has not.

        What is pressed is not read back, so what belongs to a read-back may be left over.
        """
        return frozenset(step for step, stage in self._left if stage is Stage.ASK)


def is_scene(session: Session) -> bool:
    """True where the question that is open is worth being heard whole: safety holds with all that
    belongs to them, readings, waits, and whatever stops the work."""
    state = session.state
    if state.mode is not Mode.RUNNING:
        return state.mode is not Mode.IDLE
    task = session.plan.step(state.step).task
    return isinstance(task, Hold) or (
        state.stage in (Stage.ASK, Stage.OFF) and isinstance(task, Measure | Wait)
    )

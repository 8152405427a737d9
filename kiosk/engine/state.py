"""Where a session stands, and how events bring it there."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import reduce

from kiosk.engine import events as e
from kiosk.engine.commands import Instant


class Mode(StrEnum):
    """Session states, in the words of IEC 61512-1 (ISA-88)."""

    IDLE = "idle"
    RUNNING = "running"
    HELD = "held"
    COMPLETE = "complete"
    ABORTED = "aborted"


class Stage(StrEnum):
    """How far the question of the present step has come."""

    ASK = "ask"
    READ_BACK = "read back"
    VERIFY = "verify"
    WITNESS = "witness"
    IS_CLEAR = "is it clear"
    OFF = "off"
    """A deviation was found; the step waits to be tried again."""
    TIME_UP = "time up"


@dataclass(frozen=True, slots=True)
class State:
    """Everything a session is; the fold of its events and nothing else."""

    mode: Mode = Mode.IDLE
    worker: str = ""
    language: str = ""
    step: str = ""
    goal: str = ""
    stage: Stage = Stage.ASK
    pending: str = ""
    """The number that waits for its yes, or that was off."""
    passes: int = 0
    since: Instant | None = None
    """When the present step was entered."""
    in_force: frozenset[str] = frozenset()
    because: str = ""
    """Why the session is held."""
    reason: str = ""
    ending: bool = False
    """True while the worker is asked whether to end the session."""
    unsafe: tuple[str, ...] = ()
    out_of_service: bool = False


def evolve(state: State, event: e.Event) -> State:
    """Apply one event. Total, without rules: it believes the journal."""
    match event.fact:
        case e.SessionStarted(worker=worker, language=language):
            return replace(state, mode=Mode.RUNNING, worker=worker, language=language)
        case e.StepEntered(step=step, goal=goal):
            return _entered(state, step, goal, event.at)
        case e.PhraseGiven():
            return replace(state, stage=Stage.READ_BACK)
        case e.ReadBackAgreed(next=following):
            return replace(state, stage=Stage(following))
        case e.ReadBackDenied() | e.TriedAgain():
            return replace(state, stage=Stage.ASK, pending="")
        case e.ReadingGiven(value=value):
            return replace(state, stage=Stage.READ_BACK, pending=value)
        case e.ReadingOff(value=value):
            return replace(state, stage=Stage.OFF, pending=value)
        case e.PassDone(passes=passes):
            return replace(state, stage=Stage.IS_CLEAR, passes=passes)
        case e.PassJudged():
            return replace(state, stage=Stage.ASK)
        case e.PassesRanOut():
            return replace(state, stage=Stage.OFF)
        case e.WaitEnded():
            return replace(state, stage=Stage.TIME_UP)
        case e.StepConfirmed(establishes=established, ends=ended):
            in_force = (state.in_force - frozenset(ended)) | frozenset(established)
            return replace(state, in_force=in_force, pending="")
        case e.ConditionsLapsed(conditions=lapsed):
            return replace(state, in_force=state.in_force - frozenset(lapsed))
        case e.SessionHeld(because=because):
            return replace(state, mode=Mode.HELD, because=because, reason="", ending=False)
        case e.ReasonNamed(reason=reason):
            return replace(state, reason=reason)
        case e.SessionResumed():
            return replace(state, mode=Mode.RUNNING, because="", reason="", ending=False)
        case e.HandedOver(worker=worker, language=language):
            return replace(state, worker=worker, language=language)
        case e.LanguageChanged(language=language):
            return replace(state, language=language)
        case e.EndAsked():
            return replace(state, ending=True)
        case e.EndWithdrawn():
            return replace(state, ending=False)
        case e.SessionAborted(unsafe=unsafe, out_of_service=out):
            return replace(
                state, mode=Mode.ABORTED, unsafe=unsafe, out_of_service=out, ending=False
            )
        case e.SessionCompleted():
            return replace(state, mode=Mode.COMPLETE)
        case e.PromptRepeated() | e.WentBack() | e.VerifyFailed() | e.WorkedOut():
            return state


def _entered(state: State, step: str, goal: str, at: Instant) -> State:
    """Stand in a step. One that is entered again keeps its clock and its passes."""
    same = step == state.step and state.since is not None and state.since.boot == at.boot
    return replace(
        state,
        step=step,
        goal=goal,
        stage=Stage.ASK,
        pending="",
        passes=state.passes if same else 0,
        since=state.since if same else at,
    )


def fold(events: Iterable[e.Event], state: State | None = None) -> State:
    """Apply events in order, to a fresh session or to `state`."""
    return reduce(evolve, events, State() if state is None else state)

"""What the kiosk asks in a state: the same lines for the screen, the voice and `repeat`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from kiosk.engine.holds import left_unsafe
from kiosk.engine.state import Mode, Stage, State
from kiosk.procedure.model import Caution, Text
from kiosk.procedure.plan import Count, Hold, Inspect, JudgedBy, Measure, Plan, Repeat, Step


@dataclass(frozen=True, slots=True)
class Message:
    """A sentence of the kiosk's own, by name, and what fills it.

    A text argument is filled in in the language of the sentence; a `Number` as that language
    writes and says it.
    """

    name: str
    args: Mapping[str, str | Text | Number] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Number:
    """A decimal number with a unit symbol, or with none."""

    value: str
    unit: str = ""


Line = Message | Text


@dataclass(frozen=True, slots=True)
class Prompt:
    """The question on the screen."""

    lines: tuple[Line, ...]
    caution: Caution | None = None


def prompt(plan: Plan, state: State) -> Prompt:
    """Return what is asked in a state; no lines when nothing is."""
    match state.mode:
        case Mode.IDLE:
            return Prompt(())
        case Mode.RUNNING:
            return _running(plan, state)
        case Mode.HELD:
            return _held(plan, state)
        case Mode.COMPLETE:
            return Prompt((Message("complete"), *_texts(plan, left_unsafe(plan, state.in_force))))
        case Mode.ABORTED:
            name = "out-of-service" if state.out_of_service else "aborted"
            return Prompt((Message(name), *_texts(plan, state.unsafe)))


def _texts(plan: Plan, conditions: tuple[str, ...]) -> tuple[Text, ...]:
    """Return the warning of each condition: that it is there, or that it is not."""
    found = (plan.conditions[name] for name in conditions)
    return tuple(text for one in found if (text := one.present or one.without) is not None)


def _running(plan: Plan, state: State) -> Prompt:
    step = plan.step(state.step)
    match state.stage:
        case Stage.ASK:
            first: tuple[Line, ...] = (Message("first-again"),) if state.step != state.goal else ()
            return Prompt((*first, step.say, *_how_to_answer(step)), step.caution)
        case Stage.READ_BACK:
            return Prompt((_read_back(step, state),))
        case Stage.VERIFY if isinstance(step.task, Hold) and step.task.verify is not None:
            return Prompt((step.task.verify, Message("is-that-so")), step.caution)
        case Stage.IS_CLEAR if isinstance(step.task, Repeat):
            return Prompt((step.task.until,))
        case Stage.OFF:
            corrective = () if step.corrective is None else (step.corrective,)
            return Prompt((_what_is_off(step, state), *corrective, Message("try-again")))
        case Stage.TIME_UP:
            return Prompt((Message("time-up"),))
        case _:
            return Prompt((Message("witness-needed"),))


def _how_to_answer(step: Step) -> tuple[Line, ...]:
    match step.task:
        case Hold(phrase=phrase):
            return (Message("say-phrase", {"phrase": phrase}),)
        case Inspect(name=name):
            return (Message("good-or-replaced", {"part": name}),)
        case _:
            return ()


def _read_back(step: Step, state: State) -> Line:
    match step.task:
        case Hold(phrase=phrase):
            return Message("heard-phrase", {"phrase": phrase})
        case Measure(unit=unit):
            return Message("heard-number", {"number": Number(state.pending, unit)})
        case _:
            return Message("heard-number", {"number": Number(state.pending)})


def _what_is_off(step: Step, state: State) -> Line:
    match step.task:
        case Count(name=name, expected=expected):
            number, wanted = Number(state.pending), Number(str(expected))
            return Message("count-off", {"part": name, "number": number, "expected": wanted})
        case Measure(unit=unit, judged_by=JudgedBy(least=least, most=most)):
            args: dict[str, str | Text | Number] = {"number": Number(state.pending, unit)}
            if least is not None:
                args["least"] = Number(str(least), unit)
            if most is not None:
                args["most"] = Number(str(most), unit)
            ends = "-".join(name for name in ("least", "most") if name in args)
            return Message(f"reading-off-{ends}", args)
        case _:
            return Message("passes-ran-out", {"number": Number(str(state.passes))})


def _held(plan: Plan, state: State) -> Prompt:
    if state.ending:
        return Prompt((Message("end-asked"), *_texts(plan, left_unsafe(plan, state.in_force))))
    if state.because != "problem":
        return Prompt((Message(f"held-{state.because.replace(' ', '-')}"),))
    if not state.reason:
        return Prompt((Message("what-is-wrong"),))
    problem = plan.problems[state.reason]
    then = "stop-here" if problem.stops_service else "then-continue"
    return Prompt((problem.corrective, Message(then)))

"""A counterexample told as the worker would live it, with the place in the file and the mend."""

from __future__ import annotations

from collections.abc import Sequence

from kiosk.engine import commands as c
from kiosk.engine import decide as engine
from kiosk.engine import events as e
from kiosk.engine.state import Mode, Stage, State, fold
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import Text
from kiosk.procedure.plan import Plan
from kiosk.proof.search import Counterexample, Decide

OF_THE_FILE = frozenset({"can-complete", "can-enter"})
"""Rules that an unsound file can break while the kiosk keeps all of its own."""

_STAGES = {
    Stage.ASK: "is asked",
    Stage.READ_BACK: "waits for a yes to what was heard",
    Stage.VERIFY: "waits for the try-out",
    Stage.WITNESS: "waits for a second person",
    Stage.IS_CLEAR: "waits for the look at the last pass",
    Stage.OFF: "waits to be tried again",
    Stage.TIME_UP: "waits to be confirmed, for the time is up",
}


def story(plan: Plan, found: Counterexample, decide: Decide = engine.decide) -> str:
    """Return the whole story, some lines of text ending without a line feed."""
    lines = [f"{plan.procedure}, version {plan.version}: a rule is broken, {_acts(found)}."]
    state = State()
    for number, move in enumerate(found.path, 1):
        events: Sequence[e.Event] = ()
        if move.command is not None:
            decided = decide(plan, state, move.command)
            events = () if isinstance(decided, c.Refusal) else decided
        state = fold(events, state)
        lines.append(f"  {number}. The worker {move.words}.")
        lines += [f"     {line}" for line in (*_happenings(events), _stands(plan, state))]
    fault = as_fault(plan, found)
    lines.append(f"Broken there ({found.rule}): {found.sentence}.")
    lines.append(f"In {fault.file or plan.procedure}, line {fault.line}. To mend: {fault.mend}.")
    return "\n".join(lines)


def as_fault(plan: Plan, found: Counterexample) -> Fault:
    """Return a counterexample as a fault of the file, its path told in one line."""
    state = found.state
    place = plan.index.get(state.goal or state.step, 0)
    step = plan.steps[place]
    path = "; ".join(move.words for move in found.path) or "from the beginning on"
    what = f"{found.sentence} ({found.rule}), {_acts(found)}: {path}"
    mend = "this is a fault of the kiosk's rules, not of the file: do not use this version"
    if found.rule in OF_THE_FILE:
        lost = [name for name in step.requires if name not in state.in_force]
        names = ", ".join(f"'{name}'" for name in lost) or "what it requires"
        mend = (
            f"give '{step.id}' a way to {names}: an earlier step that establishes it, whose own "
            f"requirements can be met again"
        )
    return Fault(plan.file, step.line, step.id, what, mend)


def _acts(found: Counterexample) -> str:
    count = len(found.path)
    return f"in {count} act{'' if count == 1 else 's'}"


def _happenings(events: Sequence[e.Event]) -> list[str]:
    """Tell what changed in what is in force."""
    lines: list[str] = []
    for event in events:
        match event.fact:
            case e.StepConfirmed(step=step, establishes=established, ends=ended):
                effects = [f"in force now: {', '.join(established)}"] if established else []
                effects += [f"ended: {', '.join(ended)}"] if ended else []
                lines.append("; ".join([f"'{step}' is confirmed", *effects]) + ".")
            case e.ConditionsLapsed(conditions=conditions, because=because):
                lines.append(f"Let go ({because}): {', '.join(conditions)}.")
            case _:
                pass
    return lines


def _stands(plan: Plan, state: State) -> str:
    match state.mode:
        case Mode.RUNNING:
            step = plan.step(state.step)
            again = "" if state.step == state.goal else f", on the way to '{state.goal}'"
            place = f"{plan.file}:{step.line}"
            asked = _STAGES[state.stage]
            return f"'{step.id}' ({place}) {asked}{again}: {_english(step.say)}"
        case Mode.HELD:
            return f"The session is held: {state.because}{', ending' if state.ending else ''}."
        case Mode.IDLE:
            return "The session has not begun."
        case Mode.COMPLETE:
            return "The session is complete."
        case Mode.ABORTED:
            return "The session is ended."


def _english(text: Text) -> str:
    return text.get("en") or next(iter(text.values()), "")

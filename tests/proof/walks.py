"""Walk a plan through the engine as a careful worker would, and keep the events."""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine.decide import decide
from kiosk.engine.events import Event
from kiosk.engine.state import Mode, Stage, State, fold
from kiosk.procedure.plan import Count, Hold, Inspect, Measure, Plan, Wait

VOICE = c.Evidence(c.Channel.VOICE, "heard", 0.9, "ear")
TOUCH = c.Evidence(c.Channel.TOUCH)
LONG = 10_000.0
"""Seconds: longer than any wait."""


def right_act(plan: Plan, state: State) -> c.Act:
    """Return what brings a session on: the right answer, or the way out of being held."""
    match state.mode:
        case Mode.IDLE:
            return c.Start("ana", "en")
        case Mode.HELD if state.ending:
            return c.No()
        case Mode.HELD if state.because == "problem" and not state.reason:
            return c.NameReason("leak")
        case Mode.HELD:
            return c.Resume()
        case _:
            return _answer(plan, state)


def _answer(plan: Plan, state: State) -> c.Act:
    match plan.step(state.step).task, state.stage:
        case _, Stage.WITNESS:
            return c.Witness("ben")
        case _, Stage.READ_BACK | Stage.VERIFY | Stage.IS_CLEAR:
            return c.Yes()
        case _, Stage.OFF:
            return c.Confirm()
        case Hold(), _:
            return c.GivePhrase()
        case Measure(judged_by=by, least=least), _:
            return c.Read(least if by is None or by.least is None else by.least)
        case Count(expected=expected), _:
            return c.Read(Decimal(expected))
        case Inspect(), _:
            return c.Inspected(c.Finding.GOOD)
        case _:
            return c.Confirm()


class Walk:
    """A session without a journal: state, events and the time."""

    def __init__(self, plan: Plan) -> None:
        self.plan = plan
        self.state = State()
        self.events: list[Event] = []
        self.now, self.boot = 1000.0, "b0"

    def do(self, act: c.Act, by: c.Evidence = VOICE, after: float = 1.0) -> Walk:
        """Act after some seconds. Raises ValueError when it is refused."""
        self.now += after
        command = c.Command(act, c.Instant(self.now, self.now, self.boot), by)
        decided = decide(self.plan, self.state, command)
        if isinstance(decided, c.Refusal):
            raise ValueError(f"{act} is refused: {decided.why}")
        self.events += decided
        self.state = fold(decided, self.state)
        return self

    def on(self) -> Walk:
        """Do the next right act; in a wait, when it is over."""
        waits = bool(self.state.step) and isinstance(self.plan.step(self.state.step).task, Wait)
        return self.do(right_act(self.plan, self.state), after=LONG if waits else 1.0)

    def to(self, step: str) -> Walk:
        """Go on until a step is stood in."""
        while self.state.step != step or self.state.mode is not Mode.RUNNING:
            self.on()
        return self

    def to_the_end(self) -> Walk:
        """Go on until the session is complete."""
        while self.state.mode is not Mode.COMPLETE:
            self.on()
        return self

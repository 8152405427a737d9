"""Invented workers with habits, who walk a session on a clock that leaps."""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine.state import Mode, Stage
from kiosk.languages.words import words
from kiosk.listening.grammar import label
from kiosk.procedure.plan import Count, Do, Hold, Inspect, Measure, Repeat, Step, Wait
from kiosk.procedure.site import Person
from kiosk.rehearsal.worker import Stuck, answer, passes, right_value
from kiosk.session import Session

EAR = "invented"
"""The ear's name in an invented record: nobody may take its confidence for a measured one."""

_MIXED = "solution mixed"
_MOST_ACTS = 2000


class InventedClock:
    """A clock that stands still until it is set or leapt."""

    def __init__(self) -> None:
        self._utc = 0.0
        self._boot = 0
        self._mono = 0.0

    def start_day(self, utc: float) -> None:
        """Set the time, as a kiosk that is switched on anew; POSIX seconds."""
        self._utc, self._mono = utc, 60.0
        self._boot += 1

    def leap(self, seconds: float) -> None:
        """Move forward by some seconds."""
        self._utc += seconds
        self._mono += seconds

    def leap_to(self, utc: float) -> None:
        """Move forward to a time; where that is past already, stay."""
        self.leap(max(0.0, utc - self._utc))

    def now(self) -> c.Instant:
        return c.Instant(round(self._utc, 6), round(self._mono, 6), f"invented-{self._boot}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Habit:
    """How somebody works. Chances are for one answer."""

    name: str
    pace: float
    """Times the usual seconds for a step."""
    touch: float
    """Chance to press instead of speak."""
    unheard: float
    """Chance to have the question repeated."""
    doubt: float
    """Chance to refuse the read-back of a hold."""
    pause: float


CAREFUL = Habit(name="careful", pace=1.3, touch=0.1, unheard=0.01, doubt=0.01, pause=0.003)
ORDINARY = Habit(name="ordinary", pace=1.0, touch=0.3, unheard=0.03, doubt=0.02, pause=0.004)
HURRIED = Habit(name="hurried", pace=0.6, touch=0.6, unheard=0.01, doubt=0.03, pause=0.001)
NEW = Habit(name="new", pace=1.7, touch=0.4, unheard=0.10, doubt=0.08, pause=0.008)

_SECONDS: dict[type, tuple[float, float]] = {
    Do: (20.0, 70.0),
    Hold: (8.0, 25.0),
    Measure: (15.0, 40.0),
    Repeat: (40.0, 120.0),
    Count: (10.0, 30.0),
    Inspect: (10.0, 30.0),
    Wait: (1.0, 15.0),
}
"""Usual seconds from question to answer, from and to; invented."""


@dataclass(slots=True, kw_only=True)
class Mishaps:
    """What goes otherwise than it should in one session; what has happened is taken out."""

    short_fill: bool = False
    """Steps between strip and contact are told as done at once."""
    strip: Decimal | None = None
    """What the strip reads first."""
    mix: Decimal | None = None
    """What the mix measures first, in the unit of its step."""
    mended: bool = True
    """Whether time is taken to put a reading right, or another number is told at once."""
    worn: str = ""
    """The part that is found worn, with none in stock."""
    replaced: str = ""
    """The part that is found worn and replaced."""
    doubts: int = 0
    """Read-backs that are refused for certain."""


@dataclass(slots=True)
class Shift:
    """One walk by one invented worker."""

    session: Session
    clock: InventedClock
    who: Person
    habit: Habit
    mishaps: Mishaps
    chance: random.Random
    wander: random.Random
    """By it a good mix temperature is now lower and now higher."""
    _told: Decimal | None = field(default=None, init=False)
    """The number that waits for its read-back."""

    def walk(self) -> None:
        """Walk to the end. Raises worker.Stuck when the session refuses an answer."""
        self._do(c.Start(self.who.id, self.who.language), c.Evidence(c.Channel.TOUCH))
        for _ in range(_MOST_ACTS):
            if self.session.over:
                return
            if self.session.state.mode is Mode.HELD:
                self.clock.leap(self.chance.uniform(60, 240))
                self._do(self._held(), c.Evidence(c.Channel.TOUCH))
            else:
                self._answer(self.session.plan.step(self.session.state.step))
        raise Stuck(f"{self.session.id} does not come to its end")

    def _held(self) -> c.Act:
        act = answer(self.session)
        if act is None:
            raise Stuck(f"{self.session.id} is held without a way on")
        return act

    def _answer(self, step: Step) -> None:
        state, chance = self.session.state, self.chance
        wait = self.session.seconds_left()
        if wait:
            self.clock.leap(wait + 0.01)
        self.clock.leap(self._seconds(step))
        at_question = state.stage is Stage.ASK and not isinstance(step.task, Wait)
        if at_question and chance.random() < self.habit.unheard:
            self._do(c.SayAgain(), self._by(c.SayAgain(), step))
        if at_question and chance.random() < self.habit.pause:
            self._do(c.Pause(), c.Evidence(c.Channel.TOUCH))
            return
        act = self._act(step)
        self._do(act, self._by(act, step))

    def _seconds(self, step: Step) -> float:
        """Return how long the worker takes, the waiting itself left out."""
        state = self.session.state
        least, most = _SECONDS[type(step.task)]
        if self.mishaps.short_fill and self._fills(step):
            return self.chance.uniform(1.0, 3.0)
        if state.stage is Stage.OFF:
            return self._putting_right(step)
        usual = 4.0 if state.stage is not Stage.ASK else self.chance.uniform(least, most)
        return usual * self.habit.pace

    def _fills(self, step: Step) -> bool:
        """True from the strip to the wait: pouring, sinking, wetting, measuring."""
        return _MIXED in self.session.state.in_force and isinstance(step.task, Do | Measure)

    def _putting_right(self, step: Step) -> float:
        if not self.mishaps.mended:
            return self.chance.uniform(4.0, 15.0)
        cools = isinstance(step.task, Measure) and step.task.quantity == "mix temperature"
        return self.chance.uniform(900, 1800) if cools else self.chance.uniform(180, 420)

    def _act(self, step: Step) -> c.Act:
        state = self.session.state
        match step.task:
            case Measure() | Count() as task:
                return self._number(task, state.stage)
            case Inspect(part=part):
                return c.Inspected(self._finding(part))
            case Hold() if state.stage is Stage.READ_BACK:
                if self.mishaps.doubts or self.chance.random() < self.habit.doubt:
                    self.mishaps.doubts = max(0, self.mishaps.doubts - 1)
                    return c.No()
        act = answer(self.session)
        return c.Confirm() if act is None else act

    def _finding(self, part: str) -> c.Finding:
        if part == self.mishaps.worn:
            return c.Finding.NONE_LEFT
        return c.Finding.REPLACED if part == self.mishaps.replaced else c.Finding.GOOD

    def _number(self, task: Measure | Count, stage: Stage) -> c.Act:
        if stage is Stage.OFF:
            return c.Confirm()
        if stage is Stage.READ_BACK:
            return c.Yes()
        return c.Read(self._reading(task))

    def _reading(self, task: Measure | Count) -> Decimal:
        limit = task.judged_by.limit if isinstance(task, Measure) and task.judged_by else ""
        wrong = None
        if limit == "sanitizer strength":
            wrong, self.mishaps.strip = self.mishaps.strip, None
        elif limit == "mix temperature":
            wrong, self.mishaps.mix = self.mishaps.mix, None
        if wrong is not None:
            return wrong
        usual = right_value(task)
        if limit != "mix temperature" or not isinstance(task, Measure):
            return usual
        # One of the warmer half of those that pass.
        good = [one for one in task.choices if one >= usual and passes(task, one)]
        return self.wander.choice(good or [usual])

    def _by(self, act: c.Act, step: Step) -> c.Evidence:
        if self.chance.random() < self.habit.touch:
            return c.Evidence(c.Channel.TOUCH)
        say = words(self.session.state.language)
        said = label(self.session.plan, step.id, act, say)
        if isinstance(act, c.Read):
            said = str(act.value)
        sure = round(self.chance.uniform(0.6, 0.99), 3)
        return c.Evidence(c.Channel.VOICE, said, sure, EAR)

    def _do(self, act: c.Act, by: c.Evidence) -> None:
        outcome = self.session.do(act, by)
        if outcome.trouble:
            raise Stuck(outcome.trouble)
        if outcome.refusal is not None:
            raise Stuck(f"{self.session.id}, {self.session.state.step}: {outcome.refusal.why}")

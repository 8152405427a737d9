"""All rules: what a command leads to in a state, or why it is refused."""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.holds import lapsed_by_absence, lapsed_by_going_back, left_unsafe, way_in
from kiosk.engine.state import Mode, Stage, State, fold
from kiosk.procedure.model import Strength
from kiosk.procedure.plan import Count, Do, Hold, Inspect, Measure, Plan, Repeat, Step, Wait

Facts = list[e.Fact]

NOT_NOW = c.Refusal("not-now")
MOST_COUNTED = 99


def decide(plan: Plan, state: State, command: c.Command) -> tuple[e.Event, ...] | c.Refusal:
    """Return the events that a command leads to, or the refusal. Changes nothing."""
    return _Ruling(plan, state, command).outcome()


class _Ruling:
    """One command in one state."""

    def __init__(self, plan: Plan, state: State, command: c.Command) -> None:
        self.plan = plan
        self.state = state
        self.command = command

    def outcome(self) -> tuple[e.Event, ...] | c.Refusal:
        match self.state.mode:
            case Mode.IDLE:
                facts = self._idle()
            case Mode.RUNNING:
                facts = self._running()
            case Mode.HELD:
                facts = self._held()
            case Mode.COMPLETE | Mode.ABORTED:
                return NOT_NOW
        return facts if isinstance(facts, c.Refusal) else self._events(facts)

    def _events(self, facts: Facts) -> tuple[e.Event, ...]:
        return tuple(e.Event(self.command.at, self.command.by, fact) for fact in facts)

    # Ways into a step. Nothing else makes a StepEntered.

    def _then_enter(self, facts: Facts, goal: str) -> Facts:
        """Append the entry to `goal`, or to the step that must be confirmed before it."""
        after = fold(self._events(facts), self.state)
        step = way_in(self.plan, goal, after.in_force)
        if step is None:
            lapsed = lapsed_by_absence(self.plan, after.in_force)
            if lapsed:
                facts = [*facts, e.ConditionsLapsed(lapsed, "no way in")]
            return [*facts, e.SessionHeld("no way in")]
        return [*facts, e.StepEntered(step.id, goal)]

    def _then_go_on(self, facts: Facts) -> Facts:
        """Append what follows a confirmed step."""
        goal = self.state.goal
        if self.state.step == goal:
            following = self.plan.index[goal] + 1
            if following == len(self.plan.steps):
                return [*facts, e.SessionCompleted()]
            goal = self.plan.steps[following].id
        return self._then_enter(facts, goal)

    # Ways out of running. Each one lets go of what an absence may change.

    def _hold(self, because: str) -> Facts:
        return [*self._lapse(because), e.SessionHeld(because)]

    def _lapse(self, because: str) -> Facts:
        lapsed = lapsed_by_absence(self.plan, self.state.in_force)
        return [e.ConditionsLapsed(lapsed, because)] if lapsed else []

    def _hand_over(self, act: c.HandOver) -> Facts | c.Refusal:
        alone = act.supervisor and act.supervisor == act.worker
        if alone or act.worker == self.state.worker:
            return c.Refusal("same-person")
        over = e.HandedOver(act.worker, act.language, act.supervisor, act.pin)
        return [*self._lapse("hand-over"), over]

    def _abort(self, *, out_of_service: bool) -> Facts:
        unsafe = left_unsafe(self.plan, self.state.in_force)
        return [e.SessionAborted(unsafe, out_of_service, self.state.reason)]

    # The modes.

    def _idle(self) -> Facts | c.Refusal:
        match self.command.act:
            case c.Start(worker, language, supervisor, pin):
                if worker == supervisor:
                    return c.Refusal("same-person")
                plan = self.plan
                started = e.SessionStarted(
                    plan.procedure,
                    plan.version,
                    plan.digest,
                    plan.machine,
                    worker,
                    language,
                    plan.during,
                    plan.leaves,
                    plan.practice,
                    supervisor,
                    pin,
                )
                return self._then_enter([started], plan.steps[0].id)
            case _:
                return NOT_NOW

    def _running(self) -> Facts | c.Refusal:
        match self.command.act:
            case c.Restart():
                return self._hold("restart")
            case _ if self._in_another_boot():
                return NOT_NOW
            case c.SayAgain():
                return [e.PromptRepeated(self.state.step)]
            case c.Back():
                return self._back()
            case c.CallProblem():
                return self._hold("problem")
            case c.Pause():
                return self._hold("pause")
            case c.HandOver() as act:
                facts = self._hand_over(act)
                if isinstance(facts, c.Refusal):
                    return facts
                return self._then_enter(facts, self.state.goal)
            case c.Speak(language):
                return [e.LanguageChanged(language)]
            case c.Reckoned(calculator, answers, finding):
                return [e.WorkedOut(calculator, answers, finding)]
            case _:
                return self._answer(self.plan.step(self.state.step))

    def _in_another_boot(self) -> bool:
        """True when the power was cut while the session ran, and no restart was told of yet."""
        since = self.state.since
        return since is None or since.boot != self.command.at.boot

    def _held(self) -> Facts | c.Refusal:
        state = self.state
        match self.command.act:
            case c.Yes() if state.ending:
                return self._abort(out_of_service=False)
            case c.No() if state.ending:
                return [e.EndWithdrawn()]
            case c.SayAgain():
                return [e.PromptRepeated(state.step)]
            case c.Speak(language):
                return [e.LanguageChanged(language)]
            case c.Reckoned(calculator, answers, finding):
                return [e.WorkedOut(calculator, answers, finding)]
            case c.Restart():
                held = self._hold("restart" if state.because == "pause" else state.because)
                return [*held, e.ReasonNamed(state.reason)] if state.reason else held
            case _ if state.ending:
                return NOT_NOW
            case c.CallProblem() if state.because in ("pause", "restart"):
                return self._hold("problem")
            case c.NameReason(reason) if state.because == "problem":
                if reason not in self.plan.problems:
                    return c.Refusal("no-such-reason")
                if state.reason and self.plan.problems[state.reason].stops_service:
                    return c.Refusal("must-stop")
                return [e.ReasonNamed(reason)]
            case c.Resume():
                return self._resume()
            case c.HandOver() as act:
                return self._hand_over(act)
            case c.TakeOutOfService():
                return self._abort(out_of_service=True)
            case c.End():
                return [e.EndAsked()]
            case _:
                return NOT_NOW

    def _resume(self) -> Facts | c.Refusal:
        state = self.state
        if state.because == "problem":
            if not state.reason:
                return c.Refusal("reason-first")
            if self.plan.problems[state.reason].stops_service:
                return c.Refusal("must-stop")
        if not state.goal or way_in(self.plan, state.goal, state.in_force) is None:
            return c.Refusal("no-way-in")
        return self._then_enter([e.SessionResumed(state.reason)], state.goal)

    def _back(self) -> Facts | c.Refusal:
        state = self.state
        if state.step != state.goal:
            return c.Refusal("confirm-this-first")
        place = self.plan.index[state.goal]
        if place == 0:
            return c.Refusal("first-step")
        to = self.plan.steps[place - 1].id
        lapsed = lapsed_by_going_back(self.plan, to, state.goal, state.in_force)
        facts: Facts = [e.WentBack(state.step, to)]
        if lapsed:
            facts.append(e.ConditionsLapsed(lapsed, "back"))
        return self._then_enter(facts, to)

    # Answers to the question of the present step.

    def _answer(self, step: Step) -> Facts | c.Refusal:
        match step.task:
            case Do():
                return self._answer_do(step)
            case Hold():
                return self._answer_hold(step, step.task)
            case Measure() | Count():
                return self._answer_number(step, step.task)
            case Wait():
                return self._answer_wait(step, step.task)
            case Repeat():
                return self._answer_repeat(step, step.task)
            case Inspect():
                return self._answer_inspect(step)

    def _confirmed(
        self,
        step: Step,
        answer: str = "",
        unit: str = "",
        limit: str = "",
        strength: Strength = Strength.ANY,
        witness: str = "",
    ) -> Facts:
        fact = e.StepConfirmed(
            step.id, strength, answer, unit, limit, step.establishes, step.ends, witness
        )
        return self._then_go_on([fact])

    def _answer_do(self, step: Step) -> Facts | c.Refusal:
        return self._confirmed(step) if self.command.act == c.Confirm() else NOT_NOW

    def _answer_hold(self, step: Step, hold: Hold) -> Facts | c.Refusal:
        match self.state.stage, self.command.act:
            case _, c.GivePhrase() | c.Yes() | c.Witness() if self.command.by.by_own_words:
                return c.Refusal("press-for-hold")
            case Stage.ASK, c.GivePhrase():
                return [e.PhraseGiven(step.id)]
            case Stage.READ_BACK, c.Yes():
                if hold.verify is not None:
                    return [e.ReadBackAgreed(step.id, Stage.VERIFY)]
                return self._established(step, hold)
            case Stage.READ_BACK, c.No():
                return [e.ReadBackDenied(step.id)]
            case Stage.VERIFY, c.Yes():
                return self._established(step, hold)
            case Stage.VERIFY, c.No():
                return [e.VerifyFailed(step.id), *self._hold("problem")]
            case Stage.WITNESS, c.Witness(person):
                if person in ("", self.state.worker):
                    return c.Refusal("same-person")
                return self._confirmed(step, strength=hold.strength, witness=person)
            case _, c.Confirm():
                return c.Refusal("hold-first")
            case _:
                return NOT_NOW

    def _established(self, step: Step, hold: Hold) -> Facts:
        if hold.strength is Strength.SECOND_PERSON:
            return [e.ReadBackAgreed(step.id, Stage.WITNESS)]
        return self._confirmed(step, strength=hold.strength)

    def _answer_number(self, step: Step, task: Measure | Count) -> Facts | c.Refusal:
        unit = task.unit if isinstance(task, Measure) else ""
        match self.state.stage, self.command.act:
            case Stage.ASK, c.Read(value):
                least, most = (
                    (task.least, task.most) if isinstance(task, Measure) else (0, MOST_COUNTED)
                )
                if not value.is_finite() or not least <= value <= most:
                    return c.Refusal("absurd", (("least", str(least)), ("most", str(most))))
                if isinstance(task, Count) and value != value.to_integral_value():
                    return c.Refusal("whole-number")
                if self.command.by.channel is c.Channel.VOICE:
                    return [e.ReadingGiven(step.id, str(value), unit)]
                return self._judged(step, task, value)
            case Stage.READ_BACK, c.Yes():
                return self._judged(step, task, Decimal(self.state.pending))
            case Stage.READ_BACK, c.No():
                return [e.ReadBackDenied(step.id)]
            case Stage.OFF, c.Confirm():
                return [e.TriedAgain(step.id)]
            case Stage.ASK, c.Confirm():
                return c.Refusal("number-first")
            case _:
                return NOT_NOW

    def _judged(self, step: Step, task: Measure | Count, value: Decimal) -> Facts:
        if isinstance(task, Count):
            limit = f"parts list: {task.expected}"
            if value != task.expected:
                return [e.ReadingOff(step.id, str(value), "", limit)]
            return self._confirmed(step, str(value), limit=limit)
        by = task.judged_by
        limit = "" if by is None else f"{by.limit} {by.least} to {by.most}: {by.source}"
        if by is not None and not by.passes(value):
            return [e.ReadingOff(step.id, str(value), task.unit, limit)]
        return self._confirmed(step, str(value), task.unit, limit)

    def _answer_wait(self, step: Step, wait: Wait) -> Facts | c.Refusal:
        since = self.state.since
        passed = 0.0 if since is None else self.command.at.since(since)
        over = passed >= wait.seconds
        match self.command.act:
            case c.TimeUp() if over and self.state.stage is Stage.ASK:
                return [e.WaitEnded(step.id, round(passed, 1))]
            case c.Confirm() if over:
                return self._confirmed(step, f"{passed:.0f}", "s", f"at least {wait.seconds:.0f} s")
            case c.Confirm():
                return c.Refusal("time-left", (("seconds", wait.seconds - passed),))
            case _:
                return NOT_NOW

    def _answer_repeat(self, step: Step, repeat: Repeat) -> Facts | c.Refusal:
        passes = self.state.passes
        match self.state.stage, self.command.act:
            case Stage.ASK, c.Confirm():
                return [e.PassDone(step.id, passes + 1)]
            case Stage.IS_CLEAR, c.Yes() if passes >= repeat.least:
                return self._confirmed(step, str(passes), "passes")
            case Stage.IS_CLEAR, c.Yes():
                return [e.PassJudged(step.id, clear=True)]
            case Stage.IS_CLEAR, c.No() if passes >= repeat.most:
                return [e.PassesRanOut(step.id, passes)]
            case Stage.IS_CLEAR, c.No():
                return [e.PassJudged(step.id, clear=False)]
            case Stage.OFF, c.Confirm():
                return [e.TriedAgain(step.id)]
            case _:
                return NOT_NOW

    def _answer_inspect(self, step: Step) -> Facts | c.Refusal:
        match self.command.act:
            case c.Inspected(finding):
                return self._confirmed(step, finding)
            case c.Confirm():
                return c.Refusal("look-first")
            case _:
                return NOT_NOW

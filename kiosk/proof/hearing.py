"""The judging of one act: each kind of fact changes the account, or breaks a rule."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from kiosk.engine import events as e
from kiosk.engine.commands import OWN_WORDS, Channel
from kiosk.procedure.plan import Hold, Plan, Step, Wait
from kiosk.proof.account import HELD, IDLE, NONE, OVER, RUNNING, Account, Violation
from kiosk.proof.answers import Told, wrong_answer


class Known:
    """What the judge knows of a plan before the first event."""

    def __init__(self, plan: Plan) -> None:
        self.plan = plan
        self.place: Mapping[str, int] = {step.id: n for n, step in enumerate(plan.steps)}
        self.hazards = frozenset(n for n, one in plan.conditions.items() if one.present is not None)
        by_holds = {n for s in plan.steps if isinstance(s.task, Hold) for n in s.establishes}
        marked = {n for n, one in plan.conditions.items() if one.lapses}
        self.changeable = frozenset(by_holds | marked) - self.hazards
        """Conditions that may have changed while nobody was at work."""


class Hearing:
    """The judging of one act: the account while it changes."""

    event: e.Event

    def __init__(self, known: Known, account: Account, first: int) -> None:
        self.known, self.plan, self.place = known, known.plan, known.place
        self.seq = first - 1
        self.violations: list[Violation] = []
        (
            self.phase, self.worker, self.step, self.goal, self.standing, self.confirmed,
            self.in_force, self.owed, self.boot, self.since, self.passes, self.looked, self.told,
            self.told_at, self.reading, self.because, self.reason, self.stopped, self.ending,
        ) = account  # fmt: skip

    def account(self) -> Account:
        return Account(
            self.phase, self.worker, self.step, self.goal, self.standing, self.confirmed,
            self.in_force, self.owed, self.boot, self.since, self.passes, self.looked, self.told,
            self.told_at, self.reading, self.because, self.reason, self.stopped, self.ending,
        )  # fmt: skip

    def broken(self, rule: str, sentence: str) -> None:
        self.violations.append(Violation(max(1, self.seq), rule, sentence))

    def hear(self, event: e.Event) -> None:
        """Take one event into the account."""
        self.seq += 1
        self.event, fact = event, event.fact
        if self.phase == OVER:
            self.broken("after-the-end", f"{type(fact).__name__} follows the end of the session")
            return
        if (self.phase == IDLE) is not isinstance(fact, e.SessionStarted):
            self.broken("one-beginning", f"{type(fact).__name__} stands where it cannot")
            return
        step = getattr(fact, "step", None)
        if step is not None and step not in self.place and step != self.step:
            self.broken("of-this-plan", f"the plan has no step '{step}'")
            return
        if self.phase == RUNNING and self.boot not in ("", event.at.boot):
            self._absent()
            self.boot = event.at.boot
        _RULES[type(fact)](self, fact)

    def close(self) -> None:
        """Judge what is left standing when the act is done."""
        if self.phase != RUNNING or self.violations:
            return
        if not self.standing:
            self.broken("entered", f"the session runs on and '{self.step}' was not entered anew")
        else:
            self._must_be_in_force(self._present)

    @property
    def _present(self) -> Step:
        return self.plan.steps[self.place[self.step]]

    def _absent(self) -> None:
        """Nobody vouches for what an absence may have changed, nor for standing in a step."""
        self.owed |= self.known.changeable & self.in_force
        self.standing = False

    def _must_be_in_force(self, step: Step) -> None:
        lost = [name for name in step.requires if name not in self.in_force]
        if lost:
            names = ", ".join(lost)
            self.broken("required-in-force", f"running in '{step.id}' while not in force: {names}")

    def _answers(self, step: str) -> bool:
        """True when an answer is for the step that is stood in."""
        if self.standing and self.phase == RUNNING and step == self.step:
            return True
        what = f"{type(self.event.fact).__name__} of '{step}' while that step was not stood in"
        self.broken("entered", what)
        return False

    # One method for each kind of fact.

    def _started(self, fact: e.SessionStarted) -> None:
        if fact.digest != self.plan.digest:
            self.broken("of-this-plan", "the session was walked by another text of the procedure")
        self.phase, self.worker, self.boot = RUNNING, fact.worker, self.event.at.boot
        self._other_than(fact.worker, fact.supervisor)

    def _other_than(self, worker: str, supervisor: str) -> None:
        if supervisor == worker:
            self.broken("another-person", f"'{worker}' stands by as their own supervisor")

    def _entered(self, fact: e.StepEntered) -> None:
        if self.phase != RUNNING:
            self.broken("entered", f"'{fact.step}' was entered while the session was held")
        if self.place.get(fact.goal, len(self.place)) > self.confirmed:
            self.broken("in-order", f"'{fact.goal}' is aimed at before all before it is confirmed")
        kept = self.owed & self.in_force
        if kept:
            names = ", ".join(sorted(kept))
            self.broken("lapsed", f"the session runs on and these were not let go: {names}")
        self.owed = NONE
        same = fact.step == self.step and self.since and self.since.boot == self.event.at.boot
        if not same:
            self.since, self.passes = self.event.at, 0
        self.step, self.goal = fact.step, fact.goal
        self.standing, self.boot = True, self.event.at.boot
        self.told, self.told_at, self.reading, self.looked = (), None, "", False
        self._must_be_in_force(self._present)

    def _carries_a_hold(self, step: str) -> None:
        by = self.event.by
        if by.channel is Channel.VOICE and by.ear == OWN_WORDS:
            what = f"the hold '{step}' was answered by nothing but the sound of a worker's own word"
            self.broken("own-words", what)

    def _phrase(self, fact: e.PhraseGiven) -> None:
        self._carries_a_hold(fact.step)
        if self._answers(fact.step):
            self.told, self.told_at = ("phrase",), self.event.at

    def _agreed(self, fact: e.ReadBackAgreed) -> None:
        self._carries_a_hold(fact.step)
        if self._answers(fact.step):
            if not self.told or self.told_at == self.event.at:
                self.broken("two-answers", f"'{fact.step}' was agreed to in the act that gave it")
            self.told, self.told_at = (*self.told, fact.next), self.event.at

    def _denied(self, fact: Any) -> None:
        if self._answers(fact.step):
            self.told, self.told_at, self.reading, self.looked = (), None, "", False

    def _reading(self, fact: e.ReadingGiven) -> None:
        if self._answers(fact.step):
            self.reading = fact.value

    def _pass(self, fact: e.PassDone) -> None:
        if self._answers(fact.step):
            self.passes, self.looked = self.passes + 1, True
            if fact.passes != self.passes:
                what = f"pass {self.passes} of '{fact.step}' is journaled as pass {fact.passes}"
                self.broken("passes", what)

    def _wait_ended(self, fact: e.WaitEnded) -> None:
        if self._answers(fact.step) and isinstance(self._present.task, Wait):
            self._judge_answer(self._present, "", "", "")

    def _confirmed(self, fact: e.StepConfirmed) -> None:
        if not self._answers(fact.step):
            return
        step = self._present
        if (tuple(fact.establishes), tuple(fact.ends)) != (step.establishes, step.ends):
            self.broken("as-planned", f"'{step.id}' is journaled with other effects than planned")
        if isinstance(step.task, Hold):
            self._carries_a_hold(step.id)
            if fact.strength != step.task.strength:
                self.broken("strength", f"'{step.id}' is journaled as {fact.strength}")
        self._judge_answer(step, fact.answer, fact.unit, fact.witness)
        self.in_force = (self.in_force - frozenset(step.ends)) | frozenset(step.establishes)
        self.owed -= frozenset(step.establishes)
        if self.place[step.id] == self.confirmed:
            self.confirmed += 1
        self.standing, self.told, self.told_at, self.reading = False, (), None, ""

    def _judge_answer(self, step: Step, answer: str, unit: str, witness: str) -> None:
        event = self.event
        told = Told(
            self.told, self.told_at, self.reading, self.since, self.passes, self.looked,
            self.worker, witness, event.at, event.by.channel is Channel.VOICE,
        )  # fmt: skip
        for rule, sentence in wrong_answer(step, answer, unit, told):
            self.broken(rule, sentence)

    def _lapsed(self, fact: e.ConditionsLapsed) -> None:
        gone = frozenset(fact.conditions)
        for name in sorted(gone & self.known.hazards & self.in_force):
            self.broken("hazards-stay", f"the hazard '{name}' was let go and no step ended it")
        self.in_force -= gone
        self.owed -= gone

    def _went_back(self, fact: e.WentBack) -> None:
        if not self._answers(fact.step) or fact.to not in self.place:
            return
        to, here = self.place[fact.to], self.place[fact.step]
        undone = {n for step in self.plan.steps[to : here + 1] for n in step.establishes}
        self.owed |= (undone - self.known.hazards) & self.in_force
        self.confirmed = min(self.confirmed, to)
        self.standing = False

    def _held(self, fact: e.SessionHeld) -> None:
        self._absent()
        self.phase, self.because, self.reason = HELD, fact.because, ""
        self.boot, self.ending = "", False
        self.told, self.told_at, self.reading, self.looked = (), None, "", False

    def _reason(self, fact: e.ReasonNamed) -> None:
        self.reason = fact.reason
        problem = self.plan.problems.get(fact.reason)
        self.stopped = self.stopped or problem is None or problem.stops_service

    def _resumed(self, _fact: e.SessionResumed) -> None:
        if self.phase != HELD:
            self.broken("resumed", "the session was resumed and had not been held")
        if self.stopped:
            self.broken("stopped", "the session runs on after a problem that stops the machine")
        if self.because == "problem" and not self.reason:
            self.broken("resumed", "the session runs on and nobody said what the problem was")
        self.phase, self.because, self.reason, self.standing = RUNNING, "", "", False

    def _handed_over(self, fact: e.HandedOver) -> None:
        self._absent()
        self.worker = fact.worker
        self._other_than(fact.worker, fact.supervisor)

    def _end_asked(self, _fact: e.EndAsked) -> None:
        self.ending = True

    def _end_withdrawn(self, _fact: e.EndWithdrawn) -> None:
        self.ending = False

    def _aborted(self, fact: e.SessionAborted) -> None:
        if not (self.ending or fact.out_of_service):
            self.broken("asked-before-ending", "the session was ended and nobody was asked twice")
        for name, one in self.plan.conditions.items():
            there = name in self.in_force
            if (one.present if there else one.without) and name not in fact.unsafe:
                self.broken("warned", f"the session was ended without a word about '{name}'")
        self.phase, self.standing = OVER, False

    def _completed(self, _fact: e.SessionCompleted) -> None:
        if self.phase != RUNNING or self.confirmed != len(self.plan.steps):
            first = self.plan.steps[min(self.confirmed, len(self.plan.steps) - 1)].id
            self.broken("in-order", f"the session is complete and '{first}' was never confirmed")
        self.phase, self.standing = OVER, False

    def _nothing(self, _fact: Any) -> None:
        pass


_RULES: Mapping[type, Callable[[Hearing, Any], None]] = MappingProxyType(
    {
        e.SessionStarted: Hearing._started,
        e.StepEntered: Hearing._entered,
        e.PromptRepeated: Hearing._nothing,
        e.PhraseGiven: Hearing._phrase,
        e.ReadBackAgreed: Hearing._agreed,
        e.ReadBackDenied: Hearing._denied,
        e.VerifyFailed: Hearing._denied,
        e.ReadingGiven: Hearing._reading,
        e.ReadingOff: Hearing._denied,
        e.PassDone: Hearing._pass,
        e.PassJudged: Hearing._denied,
        e.PassesRanOut: Hearing._denied,
        e.TriedAgain: Hearing._denied,
        e.WaitEnded: Hearing._wait_ended,
        e.StepConfirmed: Hearing._confirmed,
        e.ConditionsLapsed: Hearing._lapsed,
        e.WentBack: Hearing._went_back,
        e.SessionHeld: Hearing._held,
        e.ReasonNamed: Hearing._reason,
        e.SessionResumed: Hearing._resumed,
        e.HandedOver: Hearing._handed_over,
        e.LanguageChanged: Hearing._nothing,
        e.WorkedOut: Hearing._nothing,
        e.EndAsked: Hearing._end_asked,
        e.EndWithdrawn: Hearing._end_withdrawn,
        e.SessionAborted: Hearing._aborted,
        e.SessionCompleted: Hearing._completed,
    }
)

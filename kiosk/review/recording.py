"""A session's events to its record. No rule here: it tells what the journal has."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from itertools import chain, repeat

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Instant
from kiosk.journal.codec import UnknownEvent
from kiosk.languages.words import notice
from kiosk.procedure.plan import Plan, Step, Wait
from kiosk.review import record as r
from kiosk.review.answers import about, kind_of, part_of, part_seen, sentence_in
from kiosk.review.record import Asked, Became, Ended, Left

_AT_LEAST = re.compile(r"at least ([0-9.]+) s")


def record_of(
    session: str, events: Sequence[e.Event], plan: Plan | None, seqs: Sequence[int] = ()
) -> r.SessionRecord:
    """Return the record of one session, from its events in order and the numbers of their rows.

    `plan` is what the session walked; None, or a plan with another digest, when its text is not
    here any more: then what only the text says is left out. Raises UnknownEvent when the events
    have no beginning.
    """
    for event in events:
        if isinstance(event.fact, e.SessionStarted):
            return _Reading(session, event, plan).read(events, seqs)
    raise without_beginning(session)


def without_beginning(session: str) -> UnknownEvent:
    """Return what to raise for a session that never began."""
    return UnknownEvent(notice("session-without-beginning", session=session))


@dataclass(slots=True)
class _Stay:
    """A stay in a step that has not ended."""

    step: str
    goal: str
    worker: str
    language: str
    entered: Instant
    asked: Instant
    """When the question that is open was first asked."""
    clock: Instant
    """When the clock of a wait began: at the first of entries that follow each other."""
    seq: int
    again: int = 0
    parts: list[r.Part] = field(default_factory=list)


class _Reading:
    """One session being read, event by event."""

    def __init__(self, session: str, begun: e.Event, plan: Plan | None) -> None:
        fact = begun.fact
        if not isinstance(fact, e.SessionStarted):
            raise without_beginning(session)
        self.session, self.begun, self.started = session, begun, fact
        self.plan = plan if plan is not None and plan.digest == fact.digest else None
        self.worker, self.language = fact.worker, fact.language
        self.workers = [fact.worker]
        self.step = ""
        self.clock: Instant | None = None
        self.now = self.before = begun.at
        self.seq = 0
        self.held = False
        self.ended, self.unsafe = Ended.OPEN, tuple[str, ...]()
        self.stay: _Stay | None = None
        self.lapsed: tuple[str, ...] = ()
        self.steps: list[r.StepRecord] = []
        self.breaks: list[r.Break] = []
        self.problems: list[r.ProblemRecord] = []
        self.changes: list[r.Change] = []
        self.back_steps: list[r.BackStep] = []
        self.parts: list[r.PartSeen] = []
        self.worked: list[r.Worked] = []

    def read(self, events: Sequence[e.Event], seqs: Sequence[int]) -> r.SessionRecord:
        """Read all events and return the record."""
        for event, self.seq in zip(events, chain(seqs, repeat(0)), strict=False):
            if event.at != self.now:
                self.before, self.now = self.now, event.at
            self._event(event)
        self._leave(Left.STILL_THERE, self.now)
        return r.SessionRecord(
            session=self.session,
            procedure=self.started.procedure,
            title={} if self.plan is None else self.plan.title,
            version=self.started.version,
            digest=self.started.digest,
            text_known=self.plan is not None,
            machine=self.started.machine,
            practice=self.started.practice,
            workers=tuple(dict.fromkeys(self.workers)),
            begun_utc=self.begun.at.utc,
            last_utc=self.now.utc,
            ended=self.ended,
            ended_step=self.step,
            unsafe=self.unsafe,
            steps=tuple(self.steps),
            breaks=tuple(self.breaks),
            problems=tuple(self.problems),
            changes=tuple(self.changes),
            back_steps=tuple(self.back_steps),
            parts=tuple(self.parts),
            worked_out=tuple(self.worked),
            first_seq=seqs[0] if seqs else 0,
            last_seq=self.seq,
        )

    def _event(self, event: e.Event) -> None:
        at = event.at
        match event.fact:
            case e.StepEntered(step=step, goal=goal):
                self._enter(step, goal, at)
            case e.PromptRepeated() if self.stay is not None:
                self.stay.again += 1
            case e.ConditionsLapsed(conditions=lapsed):
                self.lapsed = lapsed
            case e.WentBack(step=step, to=to):
                self.back_steps.append(r.BackStep(at_utc=at.utc, step=step, to=to, seq=self.seq))
                self._leave(Left.BACK, at)
            case e.SessionHeld(because=because):
                self._hold(event, because)
            case e.ReasonNamed(reason=reason):
                self._name_reason(reason)
            case e.SessionResumed():
                self.held = False
                self._end_break(at)
                self._end_problem(Became.PUT_RIGHT, at)
            case e.HandedOver(worker=worker, language=language):
                self._hand_over(worker, language, at)
            case e.LanguageChanged(language=language):
                self.language = language
            case e.WorkedOut(calculator=calculator, answers=answers, finding=finding):
                self.worked.append(
                    r.Worked(
                        at_utc=at.utc, step=self.step, calculator=calculator, answers=answers,
                        finding=finding, seq=self.seq,
                    )
                )  # fmt: skip
            case e.SessionAborted(unsafe=unsafe, out_of_service=out):
                self.unsafe = unsafe
                self.ended = Ended.OUT_OF_SERVICE if out else Ended.EARLY
                self._end(at, Became.OUT_OF_SERVICE if out else Became.ENDED_EARLY)
            case e.SessionCompleted():
                self.ended = Ended.COMPLETE
                self._end(at, Became.OPEN)
            case _:
                self._answer(event)

    # In and out of steps.

    def _enter(self, step: str, goal: str, at: Instant) -> None:
        self._leave(Left.HANDED_OVER, at)
        same = step == self.step and self.clock is not None and self.clock.boot == at.boot
        self.clock = self.clock if same and self.clock is not None else at
        self.step = step
        self.stay = _Stay(step, goal, self.worker, self.language, at, at, self.clock, self.seq)

    def _leave(self, left: Left, at: Instant, confirmed: e.StepConfirmed | None = None) -> None:
        stay, self.stay = self.stay, None
        if stay is None:
            return
        step = self._step(stay.step)
        needed = self._needed(step, confirmed)
        self.steps.append(
            r.StepRecord(
                step=stay.step,
                goal=stay.goal,
                asked="" if step is None else sentence_in(step.say, stay.language),
                kind=Asked.UNKNOWN if step is None else kind_of(step),
                worker=stay.worker,
                language=stay.language,
                entered_utc=stay.entered.utc,
                left=left,
                left_utc=at.utc,
                stayed_s=_seconds(stay.entered, at),
                confirmed_by=stay.parts[-1] if confirmed is not None else None,
                answer="" if confirmed is None else confirmed.answer,
                unit="" if confirmed is None else confirmed.unit,
                limit="" if confirmed is None else confirmed.limit,
                witness="" if confirmed is None else confirmed.witness,
                asked_again=stay.again,
                needed_s=needed,
                waited_s=None if needed is None else _seconds(stay.clock, at),
                waited_wall_s=None if needed is None else at.utc - stay.clock.utc,
                parts=tuple(stay.parts),
                about={"en": stay.step} if step is None else about(step),
                corrective=None if step is None else step.corrective,
                entered_seq=stay.seq,
                left_seq=self.seq,
            )
        )

    def _needed(self, step: Step | None, confirmed: e.StepConfirmed | None) -> float | None:
        """Return the seconds that a wait asks for; what was journaled comes before the plan."""
        if confirmed is not None and (found := _AT_LEAST.fullmatch(confirmed.limit)):
            return float(found[1])
        return step.task.seconds if step is not None and isinstance(step.task, Wait) else None

    def _step(self, step: str) -> Step | None:
        known = self.plan is not None and step in self.plan.index
        return self.plan.step(step) if self.plan is not None and known else None

    # Answers.

    def _answer(self, event: e.Event) -> None:
        if self.stay is None:
            return
        part = part_of(event, _seconds(self.stay.asked, event.at), self.seq)
        if part is None:
            return
        self.stay.parts.append(part)
        self.stay.asked = event.at
        if isinstance(event.fact, e.StepConfirmed):
            seen = part_seen(self._step(event.fact.step), event.fact, event.at.utc, self.seq)
            self.parts += [] if seen is None else [seen]
            self._leave(Left.CONFIRMED, event.at, event.fact)

    # Breaks, problems, people.

    def _hold(self, event: e.Event, because: str) -> None:
        at = event.at
        self._leave(Left.HELD, at)
        restarted = because == "restart" or (self.held and event.by.channel is Channel.KIOSK)
        self._end_break(at)
        self.breaks.append(
            r.Break(
                because=because, at_utc=at.utc, until_utc=None, step=self.step,
                lapsed=self.lapsed, restarted=restarted,
                power_cut=at.boot != self.before.boot,
                dark_s=max(0.0, at.utc - self.before.utc) if restarted else 0.0,
                seq=self.seq,
            )
        )  # fmt: skip
        self.lapsed = ()
        goes_on = bool(self.problems) and self.problems[-1].became is Became.OPEN
        if because == "problem" and not goes_on:
            self.problems.append(
                r.ProblemRecord(
                    at_utc=at.utc, until_utc=None, step=self.step, worker=self.worker, reasons=(),
                    name={}, became=Became.OPEN, seq=self.seq,
                )
            )  # fmt: skip
        self.held = True

    def _name_reason(self, reason: str) -> None:
        if self.problems and self.problems[-1].became is Became.OPEN:
            last = self.problems[-1]
            known = None if self.plan is None else self.plan.problems.get(reason)
            name = {"en": reason} if known is None else known.name
            if last.reasons[-1:] != (reason,):
                self.problems[-1] = replace(last, reasons=(*last.reasons, reason), name=name)

    def _end_break(self, at: Instant) -> None:
        if self.breaks and self.breaks[-1].until_utc is None:
            self.breaks[-1] = replace(self.breaks[-1], until_utc=at.utc)

    def _end_problem(self, became: Became, at: Instant) -> None:
        if self.problems and self.problems[-1].became is Became.OPEN:
            self.problems[-1] = replace(self.problems[-1], until_utc=at.utc, became=became)

    def _hand_over(self, worker: str, language: str, at: Instant) -> None:
        self.changes.append(
            r.Change(at_utc=at.utc, step=self.step, before=self.worker, after=worker, seq=self.seq)
        )
        self._leave(Left.HANDED_OVER, at)
        self.worker, self.language = worker, language
        self.workers.append(worker)
        self.lapsed = ()

    def _end(self, at: Instant, problem_became: Became) -> None:
        self._leave(Left.ENDED, at)
        self._end_break(at)
        if problem_became is not Became.OPEN:
            self._end_problem(problem_became, at)


def _seconds(since: Instant, at: Instant) -> float | None:
    return at.since(since) if at.boot == since.boot else None

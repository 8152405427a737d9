"""Everything that a worker, a clock or a power cut can do to a session, as a finite list.

Time is either `now` or long ago: a session's instants are moved back by a move of its own, so that
both sides of a deadline are tried wherever a deadline runs.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.procedure.plan import Count, Measure, Plan, Step

NOW = c.Instant(0.0, 0.0, "this boot")
NEXT_BOOT = c.Instant(0.0, 0.0, "next boot")
EARLIER = c.Instant(-1.0, -1.0, "this boot")
LONG_AGO = c.Instant(-1e9, -1e9, "this boot")
BEFORE_BOOT = c.Instant(-1e9, -1e9, "boot before")

WORKER, OTHER = "the worker", "another person"
LANGUAGE, OTHER_LANGUAGE = "en", "es"

_OWN_WORDS = c.Evidence(c.Channel.VOICE, ear=c.OWN_WORDS)
_VOICE, _TOUCH = c.Evidence(c.Channel.VOICE), c.Evidence(c.Channel.TOUCH)
_KIOSK = c.Evidence(c.Channel.KIOSK)


@dataclass(frozen=True, slots=True)
class Move:
    """One thing that happens; without a command, a long time passes."""

    words: str
    """What happens, told of the worker: `says yes`."""
    command: c.Command | None


TIME_PASSES = Move("lets a long time pass", None)


class Alphabet:
    """The moves that are tried in the states of a plan."""

    def __init__(self, plan: Plan) -> None:
        self._plan = plan
        self.begin = (
            *_moves(c.Start(WORKER, LANGUAGE), "begins the session"),
            *_moves(c.Start(WORKER, LANGUAGE, WORKER), "begins it as their own supervisor"),
        )
        self._common = tuple(self._anywhere())
        self._at = {step.id: (*_readings(step), *self._common) for step in plan.steps}

    def moves(self, step: str) -> tuple[Move, ...]:
        """Return the moves that are tried in every state with this step, or with none."""
        return self._at.get(step, (*self.begin, *self._common))

    def _anywhere(self) -> Iterator[Move]:
        for by in (_VOICE, _TOUCH):
            yield from _moves(c.Confirm(), "says this is done", by)
            yield from _moves(c.GivePhrase(), "gives the phrase of the hold", by)
            yield from _moves(c.Yes(), "says yes", by)
        yield from _moves(c.GivePhrase(), "gives the phrase in words of their own", _OWN_WORDS)
        yield from _moves(c.Yes(), "says yes in a word of their own", _OWN_WORDS)
        yield from _moves(c.No(), "says no")
        for finding in c.Finding:
            yield from _moves(c.Inspected(finding), f"finds the part {finding}")
        yield from _moves(c.Witness(OTHER), "has a second person vouch")
        yield from _moves(c.Witness(WORKER), "vouches for their own work")
        yield from _moves(c.Witness(""), "has nobody vouch")
        yield from _moves(c.Witness(OTHER), "has the sound of a word vouch", _OWN_WORDS)
        yield from _moves(c.SayAgain(), "asks to hear it again")
        yield from _moves(c.Back(), "goes back")
        yield from _moves(c.CallProblem(), "calls a problem")
        for reason in self._reasons():
            yield from _moves(c.NameReason(reason), f"names the reason '{reason}'")
        yield from _moves(c.Pause(), "pauses")
        yield from _moves(c.Resume(), "says continue")
        yield from _moves(c.HandOver(OTHER, OTHER_LANGUAGE), "hands over to another person")
        yield from _moves(c.HandOver(WORKER, LANGUAGE), "hands over to themselves")
        alone = c.HandOver(OTHER, OTHER_LANGUAGE, OTHER)
        yield from _moves(alone, "hands over to their own supervisor")
        yield from _moves(c.Speak(OTHER_LANGUAGE), "changes the language")
        yield from _moves(c.TakeOutOfService(), "takes the machine out of service")
        yield from _moves(c.End(), "asks to end the session")
        yield from _moves(c.TimeUp(), "is told that the time is up", _KIOSK)
        yield from _moves(c.Restart(), "sees the kiosk restart", _KIOSK)
        cut = "sees the power cut, and after it "
        yield from _moves(c.Restart(), cut + "the kiosk restart", _KIOSK, NEXT_BOOT)
        for act, words in ((c.Confirm(), "says this is done"), (c.Yes(), "says yes"),
                           (c.Resume(), "says continue")):  # fmt: skip
            yield from _moves(act, cut + words + " with no restart noticed", _VOICE, NEXT_BOOT)

    def _reasons(self) -> list[str]:
        """Return one reason that stops the machine, one that does not, and one that is unknown."""
        by_kind = {one.stops_service: name for name, one in self._plan.problems.items()}
        return [*by_kind.values(), "no such reason"]


def _moves(act: c.Act, words: str, by: c.Evidence = _VOICE, at: c.Instant = NOW) -> Iterator[Move]:
    yield Move(words + (" by touch" if by is _TOUCH else ""), c.Command(act, at, by))


def _readings(step: Step) -> Iterator[Move]:
    """Yield a number that passes, one out of its limit, one that cannot be, and no number."""
    match step.task:
        case Measure() as task:
            numbers = [inside(task), *outside(task), task.most + 1]
        case Count(expected=expected):
            numbers = [Decimal(expected), Decimal(expected + 1), Decimal("0.5"), Decimal(1000)]
        case _:
            numbers = [Decimal(1)]
    for number in (*numbers, Decimal("NaN")):
        for by in (_VOICE, _TOUCH):
            yield from _moves(c.Read(number), f"reads {number}", by)


def inside(task: Measure) -> Decimal:
    """Return a believable reading within the limit, or the least believable when there is none."""
    ends = [task.least, task.most]
    if task.judged_by is not None:
        ends += [end for end in (task.judged_by.least, task.judged_by.most) if end is not None]
    good = [
        end
        for end in ends
        if task.least <= end <= task.most and (task.judged_by is None or task.judged_by.passes(end))
    ]
    return min(good, default=task.least)


def outside(task: Measure) -> list[Decimal]:
    """Return the believable ends that miss the limit, if any do."""
    by = task.judged_by
    return [] if by is None else [end for end in (task.least, task.most) if not by.passes(end)][:1]

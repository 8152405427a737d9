"""What must hold at each step, by data flow over the plan: the author's answer, without a search.

Each step gives (`establishes`) and takes (`ends`). What surely holds in a step is the intersection
over the ways into it: from the step before, back from the step after, and again after an absence.
Where a required condition is not sure, the worker is led back to the nearest earlier step that
establishes it. A fault is a condition that cannot be had at all, one that the file itself takes
away, or one that no such way leads back to.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from kiosk.procedure.fault import Fault
from kiosk.procedure.plan import Hold, Plan, Step

Conditions = frozenset[str]


@dataclass(frozen=True, slots=True)
class MustHold:
    """What was found."""

    faults: tuple[Fault, ...]
    warnings: tuple[Fault, ...]


class NoWayBack(Exception):
    """No way leads back into a step. Arguments: the condition that stays missing, and why."""


def must_hold(plan: Plan) -> MustHold:
    """Return the faults and warnings of a plan, in the order of their lines."""
    flow = _Flow(plan)
    faults = [*flow.own(), *flow.straight()]
    if not faults:
        faults = list(flow.detours())
    return MustHold(tuple(sorted(faults)), tuple(sorted(flow.warnings())))


class _Flow:
    """One plan under study."""

    def __init__(self, plan: Plan) -> None:
        self.plan, self.steps = plan, plan.steps
        self.hazards = plan.hazards
        self.lapsing = plan.lapsing
        self.by_holds = {
            n for s in self.steps if isinstance(s.task, Hold) for n in s.establishes
        } - plan.hazards

    def _fault(self, step: Step, field: str, what: str, mend: str) -> Fault:
        return Fault(self.plan.file, step.line, f"{step.id}.{field}", what, mend)

    def own(self) -> Iterator[Fault]:
        """Yield what is wrong in single steps."""
        for step in self.steps:
            for name in sorted(set(step.establishes) & set(step.ends)):
                what = f"the step both establishes and ends '{name}'"
                yield self._fault(step, "ends", what, "keep one of the two, or make two steps")
            for name in sorted(set(step.requires) & self.hazards):
                what = f"it requires '{name}', which is a hazard and warned of while it is there"
                mend = "require a condition of its own that the worker confirms, and end the hazard"
                yield self._fault(step, "requires", what, mend)

    def straight(self) -> Iterator[Fault]:
        """Yield the required conditions that are not in force when nothing goes wrong."""
        have: set[str] = set()
        given: dict[str, Step] = {}
        taken: dict[str, Step] = {}
        for place, step in enumerate(self.steps):
            for name in step.requires:
                if name in have:
                    continue
                if name in given:
                    by = taken[name]
                    what = (
                        f"it requires '{name}', which '{by.id}' (line {by.line}) has ended, and no "
                        f"step between the two establishes it again"
                    )
                    mend = f"move it before line {by.line}, or establish '{name}' again before it"
                else:
                    what, mend = self._never_given(name, place)
                yield self._fault(step, "requires", what, mend)
                have.add(name)
            have -= set(step.ends)
            taken |= dict.fromkeys(step.ends, step)
            have |= set(step.establishes)
            given |= dict.fromkeys(step.establishes, step)

    def _never_given(self, name: str, place: int) -> tuple[str, str]:
        what = f"it requires '{name}', which no step before it establishes"
        for later in self.steps[place:]:
            if name in later.establishes:
                what += f"; '{later.id}' (line {later.line}) does so only then"
                return what, f"move '{later.id}' before it"
        return what, f"add a step before it that establishes '{name}', or correct the name"

    # The fixpoint.

    def detours(self) -> Iterator[Fault]:
        """Yield the steps into which no way leads back once something has lapsed."""
        surely: list[Conditions | None] = [None] * len(self.steps)
        dead: dict[tuple[int, str], Fault] = {}
        waiting = [0]
        while waiting:
            place = waiting.pop()
            ways = list(self._ways_into(place, surely))
            arrived = [self._arrive(place, have, how, dead) for have, how in ways]
            met = frozenset.intersection(*arrived)
            if surely[place] != met:
                surely[place] = met
                around = (place - 1, place, place + 1)
                waiting += [n for n in around if 0 <= n < len(self.steps)]
        yield from dead.values()

    def _ways_into(
        self, place: int, surely: list[Conditions | None]
    ) -> Iterator[tuple[Conditions, str]]:
        """Yield what is in force at each way into a step, and the way in words."""
        before = surely[place - 1] if place else None
        here = surely[place]
        after = surely[place + 1] if place + 1 < len(self.steps) else None
        if place == 0:
            yield frozenset(), "at the beginning"
        if before is not None:
            yield _done(before, self.steps[place - 1]), f"after '{self.steps[place - 1].id}'"
        if here is not None:
            yield here, "as it was"
            yield here - self.lapsing, "after an absence"
        if after is not None:
            undone = self._established(self.steps[place : place + 2])
            yield after - undone, f"going back from '{self.steps[place + 1].id}'"

    def _established(self, steps: Iterable[Step]) -> Conditions:
        return frozenset(name for step in steps for name in step.establishes) - self.hazards

    def _arrive(
        self, place: int, have: Conditions, how: str, dead: dict[tuple[int, str], Fault]
    ) -> Conditions:
        """Return what is in force on standing in a step; note a fault when it cannot be entered."""
        step = self.steps[place]
        try:
            return lead_in(self.plan, place, have)
        except NoWayBack as none:
            name, why = none.args
            what = f"{how} it needs '{name}' again, and no way leads there: {why}"
            mend = (
                f"let a step before it establish '{name}' that requires nothing which is lost by "
                f"then, and that ends nothing which this step requires"
            )
            dead.setdefault((place, name), self._fault(step, "requires", what, mend))
            return have | set(step.requires)

    def warnings(self) -> Iterator[Fault]:
        """Yield what is suspicious and not wrong."""
        required = {name for step in self.steps for name in step.declared}
        given: set[str] = set()
        for step in self.steps:
            if isinstance(step.task, Hold):
                for name in sorted(set(step.establishes) - required - self.hazards):
                    what = f"no step requires '{name}', so this hold holds nothing back"
                    mend = f"let the steps that are dangerous without it require '{name}'"
                    yield self._fault(step, "establishes", what, mend)
            released = set(step.ends) & self.by_holds & given
            guarded = isinstance(step.task, Hold) or (set(step.declared) & self.by_holds) - released
            for name in sorted(released if not guarded else ()):
                what = f"it ends '{name}', which a hold established, and nothing guards that"
                mend = "make the step a hold, or let it require what a hold has established"
                yield self._fault(step, "ends", what, mend)
            given |= set(step.establishes)


def _done(have: Conditions, step: Step) -> Conditions:
    return (have - set(step.ends)) | set(step.establishes)


def lead_in(plan: Plan, place: int, have: Conditions) -> Conditions:
    """Return what is in force once the worker was led into a step. Raises NoWayBack.

    The worker repeats the nearest earlier step that establishes what is missing first, as often as
    it takes.
    """
    goal = plan.steps[place]
    seen: set[Conditions] = set()
    while lost := [name for name in goal.requires if name not in have]:
        if have in seen:
            raise NoWayBack(lost[0], "the steps that lead there end what each other establish")
        seen.add(have)
        have = _done(have, _first_to_repeat(plan, place, have))
    return have


def _first_to_repeat(plan: Plan, place: int, have: Conditions) -> Step:
    step, trail = plan.steps[place], list[Step]()
    while lost := [name for name in step.requires if name not in have]:
        if step in trail:
            round_about = ", ".join(f"'{one.id}'" for one in trail[trail.index(step) :])
            raise NoWayBack(lost[0], f"{round_about} each require what another establishes")
        trail.append(step)
        earlier = [one for one in plan.steps[:place] if lost[0] in one.establishes]
        if not earlier:
            raise NoWayBack(lost[0], f"no step before it establishes '{lost[0]}'")
        step = earlier[-1]
    return step

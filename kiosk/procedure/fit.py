"""Fit a procedure to one machine at one site: its steps, its sentences, its limits."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from decimal import Decimal

from kiosk.procedure.carry import Waived, carry
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library
from kiosk.procedure.model import (
    TASKS,
    MeasureBlock,
    MixBlock,
    Part,
    Procedure,
    StepBlock,
    Text,
    WaitBlock,
)
from kiosk.procedure.plan import (
    Count,
    Do,
    Hold,
    Inspect,
    JudgedBy,
    Measure,
    Plan,
    Repeat,
    Step,
    Task,
    Wait,
)
from kiosk.procedure.site import Machine, Site
from kiosk.trade.available_chlorine import NotALabel
from kiosk.trade.dose import NO_RINSE_CAP, NoDose, dose
from kiosk.trade.kitchen_measures import packet
from kiosk.trade.product import packets
from kiosk.trade.solution_table import Agent
from kiosk.trade.units import NotAQuantity, Quantity, litres, quantity, seconds

SayQuantity = Callable[[Quantity, str], str]
"""A quantity in the words of a language: (8 L, 'en') to '8 litres'."""

_PLACE = re.compile(r"\{([a-z_]+)\}")


class _WrongStep(Exception):
    """One step cannot be fitted. Arguments: field, what is wrong, mend, and the rule's name."""


def fit(
    library: Library, procedure: Procedure, machine: Machine, site: Site, say_quantity: SayQuantity
) -> Plan:
    """Return the plan for one machine. Raises FaultyFile with every reason against it."""
    fitting = _Fitting(library, procedure, machine, site, say_quantity)
    steps = carry(fitting.steps(), library.common.conditions)
    fitting.faults.extend(_misplaced(procedure, steps))
    if not steps and not fitting.faults:
        what = "no step is left to walk with these options"
        fitting.faults.append(Fault(procedure.file, 1, "phases", what, "add steps"))
    if fitting.faults:
        raise FaultyFile(fitting.faults)
    return Plan(
        procedure=procedure.id,
        version=procedure.version,
        digest=digest_of(procedure.id, procedure.version, steps),
        title=procedure.title,
        machine=machine.id,
        machine_name=machine.name,
        during=procedure.during,
        leaves=procedure.leaves,
        follow=procedure.follow,
        phases={phase.id: phase.title for phase in procedure.phases},
        steps=steps,
        conditions=library.common.conditions,
        problems=library.common.problems,
        file=procedure.file,
        drafted=procedure.drafted,
        practice=site.practice,
    )


def digest_of(procedure: str, version: int, steps: tuple[Step, ...]) -> str:
    """Hash all that is walked; where it stands in the file is no part of it."""
    text = repr((procedure, version, [replace(step, line=0) for step in steps]))
    return hashlib.sha256(text.encode()).hexdigest()


def _misplaced(procedure: Procedure, steps: tuple[Step, ...]) -> Iterator[Fault]:
    """Yield the faults of the list as a whole."""
    seen: set[str] = set()
    for step in steps:
        if step.id in seen:
            what, mend = f"two steps are called '{step.id}'", "give each step an id of its own"
            yield Fault(procedure.file, step.line, "id", what, mend)
        seen.add(step.id)


class _Fitting:
    """The work of one fit: what it reads, and the faults that it found."""

    def __init__(
        self,
        library: Library,
        procedure: Procedure,
        machine: Machine,
        site: Site,
        say_quantity: SayQuantity,
    ) -> None:
        self._library = library
        self._procedure = procedure
        self._site = site
        self._say_quantity = say_quantity
        self.faults: list[Fault] = []
        kind = library.kinds.get(procedure.machine_kind)
        if kind is None or kind.id != machine.kind:
            what = f"it is for '{procedure.machine_kind}', but '{machine.id}' is '{machine.kind}'"
            raise self._unfit("machine_kind", what, "choose a procedure for this kind of machine")
        profile = library.limits.get(site.limits)
        if profile is None:
            known = ", ".join(sorted(library.limits))
            what = f"no limits profile '{site.limits}'"
            raise self._unfit("limits", what, f"use one of: {known}", "limit-missing")
        self._kind, self._profile = kind, profile
        self._settings = {**self._kind.settings, **site.settings, **machine.settings}
        self._options = {name: values[0] for name, values in self._kind.options.items()}
        for name, value in {**site.options, **machine.options}.items():
            if name in self._kind.options and value not in self._kind.options[name]:
                allowed = ", ".join(self._kind.options[name])
                what = f"the option '{name}' cannot be '{value}'"
                raise self._unfit("options", what, f"use one of: {allowed}")
            self._options[name] = value

    def _unfit(self, name: str, what: str, mend: str, rule: str = "") -> FaultyFile:
        return FaultyFile([Fault(self._procedure.file, 1, name, what, mend, rule)])

    def steps(self) -> Iterator[tuple[Step, Waived]]:
        """Yield the steps that belong to this machine; note faults and go on."""
        for phase in self._procedure.phases:
            for block in phase.steps:
                try:
                    if self._belongs(block):
                        yield self._step(phase.id, block), block.regardless
                except _WrongStep as wrong:
                    name, what, mend, *rule = wrong.args
                    place = f"{block.id}.{name}"
                    self.faults.append(
                        Fault(self._procedure.file, block.line, place, what, mend, *rule)
                    )

    def _belongs(self, block: StepBlock) -> bool:
        for name, value in block.when.items():
            allowed = self._kind.options.get(name)
            if allowed is None:
                known = ", ".join(self._kind.options) or "none"
                what = f"the machine kind has no option '{name}'"
                raise _WrongStep("when", what, f"use one of: {known}", "unknown-option")
            if value not in allowed:
                what = f"the option '{name}' is never '{value}'"
                mend = f"use one of: {', '.join(allowed)}"
                raise _WrongStep("when", what, mend, "unknown-option")
        return all(self._options[name] == value for name, value in block.when.items())

    def _step(self, phase: str, block: StepBlock) -> Step:
        for name in ("requires", "establishes", "ends", "regardless"):
            for condition in getattr(block, name):
                if condition not in self._library.common.conditions:
                    what = f"the condition '{condition}' is not known"
                    mend = "add it to common.yaml, or correct its name"
                    raise _WrongStep(name, what, mend, "unknown-condition")
        for condition in block.establishes:
            for need in self._library.common.conditions[condition].needs:
                if need not in self._library.common.conditions:
                    what = f"'{condition}' needs '{need}', and the condition '{need}' is not known"
                    mend = "correct its name in common.yaml"
                    raise _WrongStep("establishes", what, mend, "unknown-condition")
        task, extra = self._task(block)
        if isinstance(task, Hold) and not block.establishes:
            what = "a hold establishes nothing"
            raise _WrongStep("establishes", what, "name the condition that this hold confirms")
        return Step(
            id=block.id,
            phase=phase,
            say=self._fill(block.say, extra, "say"),
            task=task,
            requires=block.requires,
            establishes=block.establishes,
            ends=block.ends,
            caution=block.caution,
            corrective=block.corrective and self._fill(block.corrective, extra, "corrective"),
            line=block.line,
            shows=self._shown(block),
        )

    def _shown(self, block: StepBlock) -> str:
        """Return the name of the picture of what a step points at, or of the part it asks for."""
        asked = block.count or block.inspect
        name = block.shows or (asked.part if asked else "")
        part = self._kind.parts.get(name)
        return part.picture or name if part else name

    def _task(self, block: StepBlock) -> tuple[Task, dict[str, str | Quantity]]:
        """Return what the step asks for, and the extra values that its sentences may use."""
        given = [name for name in TASKS if getattr(block, name) is not None]
        if len(given) > 1:
            what = f"'{given[0]}' and '{given[1]}' stand in one step"
            raise _WrongStep(given[1], what, "make two steps of it")
        if block.hold:
            return Hold(block.hold.phrase, block.hold.strength, block.hold.verify), {}
        if block.measure:
            return self._measure(block.measure), {}
        if block.mix:
            return self._mix(block.mix)
        if block.wait:
            return self._wait(block.wait)
        if block.repeat:
            if not 1 <= block.repeat.least <= block.repeat.most:
                what = "'least' must be 1 or more, and not above 'most'"
                raise _WrongStep("repeat", what, "correct the two numbers")
            return Repeat(block.repeat.least, block.repeat.most, block.repeat.until), {}
        if block.count:
            part = self._part(block.count.part, "count.part")
            return Count(block.count.part, part.name, part.count), {}
        if block.inspect:
            part = self._part(block.inspect.part, "inspect.part")
            return Inspect(block.inspect.part, part.name), {}
        return Do(), {}

    def _measure(self, it: MeasureBlock) -> Measure:
        unit = self._settings.get(it.unit, it.unit)
        judged_by = self._judged_by(it.limit, unit, "measure.limit") if it.limit else None
        return Measure(it.quantity, unit, it.least, it.most, it.choices, judged_by)

    def _mix(self, it: MixBlock) -> tuple[Measure, dict[str, str | Quantity]]:
        product = self._site.sanitizer
        volume = self._setting(it.volume, "mix.volume")
        judged_by = self._judged_by(it.limit, "mg/L", "mix.limit")
        try:
            given = dose(
                packets(product.packet_grams, product.available_chlorine * 100),
                litres(volume),
                product.target,
                packet(product.packet_grams),
                self._most_without_rinse(judged_by),
            )
        except (NoDose, NotALabel, NotAQuantity) as error:
            raise _WrongStep("mix", str(error), "correct the volume or the product") from error
        measure = Measure(
            "sanitizer strength", "mg/L", Decimal(0), Decimal(1000), it.choices, judged_by
        )
        return measure, {"packets": f"{given.count:f}", "volume": volume}

    def _most_without_rinse(self, judged_by: JudgedBy) -> Decimal:
        """Return the lowest of the caps on chlorine that are known, in mg/L."""
        cap = self._profile.solutions.cap(Agent.CHLORINE)
        known = (NO_RINSE_CAP, judged_by.most, cap.most if cap else None)
        return min(one for one in known if one is not None)

    def _wait(self, it: WaitBlock) -> tuple[Wait, dict[str, str | Quantity]]:
        time = self._setting(it.at_least, "wait.at_least")
        try:
            length = seconds(time)
        except NotAQuantity as error:
            mend, rule = "correct the setting", "setting-without-unit"
            raise _WrongStep("wait.at_least", str(error), mend, rule) from error
        if it.limit:
            judged_by = self._judged_by(it.limit, "s", "wait.limit")
            if not judged_by.passes(length):
                what = f"{time} is out of the limit '{it.limit}' ({judged_by.source})"
                raise _WrongStep("wait.at_least", what, "set a longer time", "time-under-limit")
        return Wait(float(length)), {"time": time}

    def _part(self, name: str, where: str) -> Part:
        if name not in self._kind.parts:
            known = ", ".join(self._kind.parts)
            what = f"the parts list of '{self._kind.id}' has no '{name}'"
            raise _WrongStep(where, what, f"use one of: {known}", "unknown-part")
        return self._kind.parts[name]

    def _setting(self, name: str, where: str) -> Quantity:
        if name not in self._settings:
            known = ", ".join(sorted(self._settings))
            what, mend = f"no setting is called '{name}'", f"use one of: {known}"
            raise _WrongStep(where, what, mend, "unknown-setting")
        try:
            return quantity(self._settings[name])
        except NotAQuantity as error:
            mend = f"correct the setting '{name}' of the kind, the machine or the site"
            raise _WrongStep(where, str(error), mend, "setting-without-unit") from error

    def _judged_by(self, name: str, unit: str, where: str) -> JudgedBy:
        limit = self._profile.limits.get(name)
        if limit is None:
            known = ", ".join(sorted(self._profile.limits))
            what = f"the limits profile '{self._profile.id}' has no '{name}'"
            mend = f"add it there, or use one of: {known}"
            raise _WrongStep(where, what, mend, "limit-missing")
        if unit not in limit.bounds:
            what = f"the limit '{name}' has no bounds in {unit}"
            mend = f"measure in one of: {', '.join(limit.bounds)}"
            raise _WrongStep(where, what, mend, "limit-missing")
        bounds = limit.bounds[unit]
        source = f"{limit.clause}, {limit.edition or self._profile.edition} ({limit.tag})"
        return JudgedBy(name, bounds.least, bounds.most, source)

    def _fill(self, text: Text, extra: Mapping[str, str | Quantity], where: str) -> Text:
        """Put the values of this machine into a sentence's places."""

        def filled(language: str, sentence: str) -> str:
            def value(place: re.Match[str]) -> str:
                known = extra.get(place[1]) or self._setting(place[1], where)
                return known if isinstance(known, str) else self._say_quantity(known, language)

            return _PLACE.sub(value, sentence)

        return {language: filled(language, sentence) for language, sentence in text.items()}

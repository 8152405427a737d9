"""The review's rules and schedule, loaded from their data files and checked."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import replace
from pathlib import Path

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library, load_record
from kiosk.procedure.review_rules import (
    PARAMETERS,
    DeviationRule,
    DeviationRules,
    Finds,
    Interval,
    KindSchedule,
    Schedule,
)
from kiosk.shipped import shipped

DEVIATIONS = Path("review") / "deviations.yaml"
SCHEDULE = Path("review") / "schedule.yaml"
"""Their places under a procedures folder."""

_HEAVIEST = 100
_DAY_MIN = 24 * 60


def load_deviation_rules(path: Path | None = None) -> DeviationRules:
    """Load the shipped rules, or a site's own in the same form. Raises FaultyFile.

    Every kind of finding must have a rule, so that no file hides one.
    """
    path = shipped("procedures") / DEVIATIONS if path is None else path
    found = load_record(path, DeviationRules)
    faults = [
        *_twice(path, "rules", [one.id for one in found.rules]),
        *(fault for rule in found.rules for fault in _of_rule(path, rule)),
    ]
    there = {one.finds for one in found.rules}
    for kind in Finds:
        if kind not in there:
            what, mend = f"no rule finds '{kind}'", "add one; a low weight puts it last"
            faults.append(Fault(str(path), 0, "rules", what, mend))
    if faults:
        raise FaultyFile(faults)
    return found


def _of_rule(path: Path, rule: DeviationRule) -> Iterator[Fault]:
    field = f"rules, {rule.id}"
    if not 1 <= rule.weight <= _HEAVIEST:
        mend = f"write a whole number from 1 to {_HEAVIEST}"
        yield Fault(str(path), 0, field, f"the weight is {rule.weight}", mend)
    given, needed = dict(rule.parameters or {}), PARAMETERS.get(rule.finds, ())
    for name in needed:
        if name not in given:
            what = f"'{rule.finds}' needs the parameter '{name}'"
            yield Fault(str(path), 0, field, what, f"add '{name}:' below parameters")
        elif not given[name].is_finite() or given[name] < 0:
            what = f"the parameter '{name}' is {given[name]}"
            yield Fault(str(path), 0, field, what, "write a number from 0 up")
    for name in sorted(set(given) - set(needed)):
        what = f"'{rule.finds}' has no parameter '{name}'"
        mend = f"use {', '.join(needed)}" if needed else "take it out"
        yield Fault(str(path), 0, field, what, mend)
    for name in ("title", "reason"):
        if not getattr(rule, name).get("en"):
            yield Fault(str(path), 0, field, f"the {name} has no English", "add 'en:'")


def load_schedule(
    path: Path | None = None, library: Library | None = None, own: Iterable[KindSchedule] = ()
) -> Schedule:
    """Load the shipped schedule, or a site's own in the same form. Raises FaultyFile.

    What is due on kinds of the site's `own` comes with it. With a library, that is what the library
    has; and machine kinds, procedures and parts that it does not know are faults too.
    """
    path = shipped("procedures") / SCHEDULE if path is None else path
    own = own if library is None else library.own_schedules
    found = _with_own(load_record(path, Schedule), own)
    faults = [*_twice(path, "intervals", [one.id for one in found.intervals])]
    for name, window in (("open", found.open), ("close", found.close)):
        if min(window.before_min, window.after_min, window.claim_min) < 0:
            what, mend = "a number of minutes is below 0", "write a number from 0 up"
            faults.append(Fault(str(path), 0, name, what, mend))
        if window.before_min + window.after_min + window.claim_min >= _DAY_MIN:
            what, mend = "its minutes fill a whole day", "keep their sum below 1440"
            faults.append(Fault(str(path), 0, name, what, mend))
    faults += [*_beside_service(path, found, library)]
    for one in found.intervals:
        faults += _of_interval(path, one, library)
    if faults:
        raise FaultyFile(faults)
    return found


def load_kind_schedule(
    path: Path, library: Library, left_out: Collection[str] = ()
) -> KindSchedule:
    """Load what is due on a kind of the site's own. Raises FaultyFile.

    What names no procedure or part of that kind, in a library that knows it, is a fault; so is an
    interval by a name that is taken. Procedures `left_out`, which are there and cannot be walked,
    are not due.
    """
    found = _without(load_record(path, KindSchedule), left_out)
    intervals = [*load_schedule(library=library).intervals, *found.intervals]
    faults = [*_twice(path, "intervals", [one.id for one in intervals])]
    mine = {n: one for n, one in library.procedures.items() if one.machine_kind == found.id}
    for field, ids in (("checks", found.checks), ("samples", found.samples)):
        may = sorted(name for name, one in mine.items() if one.stays_in_service)
        for name in ids:
            if name not in may:
                what = f"no procedure of this kind that leaves a machine in service is '{name}'"
                faults.append(Fault(str(path), 0, field, what, f"use one of: {', '.join(may)}"))
    for one in found.intervals:
        if one.machine_kind != found.id:
            what = f"it is for the kind '{one.machine_kind}'"
            mend = f"write 'machine_kind: {found.id}'"
            faults.append(Fault(str(path), 0, f"intervals, {one.id}", what, mend))
        faults += _of_interval(path, one, library)
    if faults:
        raise FaultyFile(faults)
    return found


def _without(found: KindSchedule, left_out: Collection[str]) -> KindSchedule:
    return replace(
        found,
        checks=tuple(one for one in found.checks if one not in left_out),
        samples=tuple(one for one in found.samples if one not in left_out),
        intervals=tuple(one for one in found.intervals if one.procedure not in left_out),
    )


def _with_own(found: Schedule, own: Iterable[KindSchedule]) -> Schedule:
    for one in own:
        check = found.check
        found = replace(
            found,
            check=check and replace(check, procedures=(*check.procedures, *one.checks)),
            samples=(*found.samples, *one.samples),
            intervals=(*found.intervals, *one.intervals),
            drafted=tuple(dict.fromkeys((*found.drafted, *one.drafted))),
        )
    return found


def _beside_service(path: Path, found: Schedule, library: Library | None) -> Iterator[Fault]:
    """Yield what is wrong with the day check and the taking of samples."""
    check = found.check
    if check is not None:
        given = (check.after_opening_min, check.before_closing_min, check.claim_min)
        if min(given) < 0:
            what, mend = "a number of minutes is below 0", "write a number from 0 up"
            yield Fault(str(path), 0, "check", what, mend)
        if sum(given) >= _DAY_MIN:
            what, mend = "its minutes fill a whole day", "keep their sum below 1440"
            yield Fault(str(path), 0, "check", what, mend)
    if library is None:
        return
    may = sorted(one.id for one in library.procedures.values() if one.stays_in_service)
    named = {"check": check.procedures if check else (), "samples": found.samples}
    for field, ids in named.items():
        for procedure in ids:
            if procedure not in may:
                what = f"no procedure that leaves a machine in service is '{procedure}'"
                yield Fault(str(path), 0, field, what, f"use one of: {', '.join(may)}")


def _of_interval(path: Path, one: Interval, library: Library | None) -> Iterator[Fault]:
    field = f"intervals, {one.id}"
    if (one.procedure is None) == (one.part is None):
        what, mend = "it must name a procedure or a part", "give one of the two, and not both"
        yield Fault(str(path), 0, field, what, mend)
    if one.days < 1 or not 0 <= one.notice_days < one.days:
        what, mend = "its days make no sense", "days from 1 up, notice_days from 0 to days less 1"
        yield Fault(str(path), 0, field, what, mend)
    if library is None:
        return
    kind = library.kinds.get(one.machine_kind)
    if kind is None:
        mend = f"use one of: {', '.join(sorted(library.kinds))}"
        yield Fault(str(path), 0, field, f"no machine kind is '{one.machine_kind}'", mend)
    elif one.part is not None and one.part not in kind.parts:
        mend = f"use one of: {', '.join(sorted(kind.parts))}"
        yield Fault(str(path), 0, field, f"'{one.machine_kind}' has no part '{one.part}'", mend)
    if one.procedure is not None and one.procedure not in library.procedures:
        mend = f"use one of: {', '.join(sorted(library.procedures))}"
        yield Fault(str(path), 0, field, f"no procedure is '{one.procedure}'", mend)


def _twice(path: Path, field: str, ids: list[str]) -> Iterator[Fault]:
    for twice in sorted({one for one in ids if ids.count(one) > 1}):
        what = f"the id '{twice}' stands twice"
        yield Fault(str(path), 0, field, what, "give each its own id")

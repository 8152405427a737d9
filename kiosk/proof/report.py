"""The check of procedure files, told in lines of text."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import load_library, load_procedure
from kiosk.proof.prove import Report, check_library
from kiosk.proof.search import TooManyStates


def check(files: Sequence[Path], folder: Path, say: Callable[[str], None]) -> int:
    """Load, fit and prove procedures; return 0 when all are sound and 1 when not.

    The files given are checked in place of the folder's own procedures, with the folder's machine
    kinds, limits and conditions.
    """
    try:
        library = load_library(folder)
    except FaultyFile as error:
        return _told(error.faults, (), say)
    faults: list[Fault] = []
    if files:
        given = {}
        for path in files:
            try:
                procedure = load_procedure(path)
                given[procedure.id] = procedure
            except FaultyFile as error:
                faults += error.faults
        library = replace(library, procedures=given, faults=())
    try:
        report = check_library(library)
    except TooManyStates as error:
        say(str(error))
        return 1
    for line in lines(report):
        say(line)
    return _told([*faults, *report.faults], report.warnings, say)


def lines(report: Report) -> list[str]:
    """Return a line for each procedure that was proven: for how many machines, by how many states.

    Plans of one shape are searched once; their states are counted once.
    """
    found: list[str] = []
    for name in dict.fromkeys(one.procedure for one in report.proven):
        mine = [one for one in report.proven if one.procedure == name]
        machines = sum(len(one.machines) for one in mine)
        searched = {id(one.proof): one.proof for one in mine}.values()
        states = sum(proof.states for proof in searched)
        moves = sum(proof.transitions for proof in searched)
        steps = sorted({one.steps for one in mine})
        length = f"{steps[0]} steps" if len(steps) == 1 else f"{steps[0]} to {steps[-1]} steps"
        found.append(
            f"{name}: proven for {machines} machine{'' if machines == 1 else 's'}, {length}, "
            f"{states} states, {moves} moves tried"
        )
    return found


def _told(faults: Sequence[Fault], warnings: Sequence[Fault], say: Callable[[str], None]) -> int:
    for warning in warnings:
        say(f"To look at: {warning}")
    for fault in sorted(dict.fromkeys(faults)):
        say(str(fault))
    return 1 if faults else 0

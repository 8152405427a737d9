"""The check of procedure files: read, fit, prove, look, and say what is wrong with the mend."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Final

from kiosk.checking.gather import Gathered, Sources, gather
from kiosk.checking.instruments import Instruments, open_instruments
from kiosk.checking.proving import Fitted, Named, count, fit_all, prove_all
from kiosk.checking.rule import Finding, NotLookedAt, Rule, Severity
from kiosk.checking.rules import RULES, page
from kiosk.checking.subject import Subject
from kiosk.languages.words import languages
from kiosk.procedure.fault import Fault
from kiosk.proof.beside import cores

Show = Callable[[str], None]


def check(
    files: Sequence[Path],
    folder: Path,
    show: Show,
    explain: str = "",
    *,
    prompts: Path | None = None,
    instruments: Instruments | None = None,
    spoken: Sequence[str] = (),
) -> int:
    """Check the procedures of `folder`, or `files` in their place or beside them.

    `files` may also be machine kinds, limits profiles or a common.yaml. The report goes to `show`,
    line by line. Returns 1 when an error was found, else 0. With `explain`, the page of that rule
    is shown instead. `prompts` is a folder that keeps the spoken texts for the next check. Every
    sentence must be there in the languages `spoken`, by default in all of the kiosk.
    """
    if explain:
        return _explain(explain, show)
    gathered = gather(files, folder)
    findings = [Finding(one, Severity.ERROR, "file") for one in gathered.faults]
    if gathered.library is None:
        return _close(findings, gathered, 0, show)
    fitted = _fitted(gathered)
    stories: list[str] = []
    with cores() as pool:
        for name, of in fitted.items():
            proven = prove_all(name, of, pool)
            findings += [_finding(one) for one in proven.faults]
            stories += [proven.told] if proven.told else []
            show(str(proven))
    notes: list[str] = []
    begun = time.perf_counter()
    if instruments is not None:
        look_at(subject_of(gathered, fitted, instruments, spoken), findings, notes)
    else:
        with open_instruments(prompts) as opened:
            look_at(subject_of(gathered, fitted, opened, spoken), findings, notes)
    plans = sum(len(of.plans) for of in fitted.values())
    show(f"Looked at with {len(RULES)} rules in {time.perf_counter() - begun:.1f} s.")
    for story in stories:
        show(story)
    for note in (*notes, *_drafted(gathered)):
        show(f"note: {note}")
    return _close(findings, gathered, plans, show)


def errors(files: Sequence[Path], folder: Path, spoken: Sequence[str]) -> tuple[Fault, ...]:
    """Return every error in `files`, as `check` finds them; each names its rule.

    What stands in the kiosk's own words is no matter of these files, and is not looked at.
    """
    gathered = gather(files, folder)
    findings = [Finding(one, Severity.ERROR, "file") for one in gathered.faults]
    if gathered.library is not None:
        fitted = _fitted(gathered)
        for name, of in fitted.items():
            findings += [_finding(one) for one in prove_all(name, of).faults]
        with open_instruments() as opened:
            look_at(subject_of(gathered, fitted, opened, spoken), findings, [], _OF_FILES)
    told = sorted(one for one in findings if one.severity is Severity.ERROR)
    return tuple(
        dict.fromkeys(replace(one.fault, rule=one.rule) for one in told if _in_scope(one, gathered))
    )


_OF_FILES: Final = tuple(
    rule
    for rule in RULES.values()
    if rule.severity is Severity.ERROR and rule.name != "missing-message"
)


def _fitted(gathered: Gathered) -> dict[str, Fitted]:
    """Fit what is to be checked."""
    library = gathered.library
    return {
        one.id: fit_all(library, one)
        for one in (library.procedures.values() if library else ())
        if library and one.id in gathered.checked and _has_kind(gathered, one.machine_kind)
    }


def _explain(name: str, show: Show) -> int:
    try:
        show(page(name))
    except KeyError:
        show(f"No rule is called '{name}'. The rules are: {', '.join(sorted(RULES))}.")
        return 1
    return 0


def _has_kind(gathered: Gathered, kind: str) -> bool:
    """False for a kind whose own file is faulty: that is told, and not what follows from it."""
    library = gathered.library
    return ("kind", kind) not in gathered.files or (library is not None and kind in library.kinds)


def _finding(named: Named) -> Finding:
    rule = RULES[named[0]]
    return Finding(named[1], rule.severity, rule.name)


def subject_of(
    gathered: Gathered,
    fitted: Mapping[str, Fitted],
    instruments: Instruments,
    spoken: Sequence[str] = (),
) -> Subject:
    """Return what the rules look at. Raises ValueError without a library."""
    if gathered.library is None:
        raise ValueError("there is nothing to look at without a library")
    return Subject(
        library=gathered.library,
        sources=Sources(),
        files=gathered.files,
        checked=gathered.checked,
        plans={name: of.plans for name, of in fitted.items()},
        whole=len(gathered.library.procedures) == gathered.count("procedure"),
        languages=tuple(spoken) or languages(),
        instruments=instruments,
    )


def look_at(
    subject: Subject,
    findings: list[Finding],
    notes: list[str],
    rules: Iterable[Rule] = tuple(RULES.values()),
) -> None:
    """Apply rules, by default all of them."""
    for rule in rules:
        for found in rule.find(subject):
            if isinstance(found, NotLookedAt):
                notes.append(found.what)
            else:
                findings.append(Finding(found, rule.severity, rule.name))


def _drafted(gathered: Gathered) -> Iterable[str]:
    library = gathered.library
    drafted = {
        language
        for name in gathered.checked
        for language in (library.procedures[name].drafted if library else ())
    }
    if drafted:
        names = ", ".join(sorted(drafted))
        yield f"Drafted by machine and not yet checked by a fluent speaker: {names}."


def _close(findings: Iterable[Finding], gathered: Gathered, plans: int, show: Show) -> int:
    told = sorted(dict.fromkeys(one for one in findings if _in_scope(one, gathered)))
    for one in told:
        show(str(one))
    errors = sum(one.severity is Severity.ERROR for one in told)
    warnings = len(told) - errors
    checked = count(len(gathered.checked), "procedure")
    show(
        f"{checked}, {count(plans, 'plan')}: {count(errors, 'error')}, "
        f"{count(warnings, 'warning')}."
    )
    return 1 if errors else 0


def _in_scope(finding: Finding, gathered: Gathered) -> bool:
    """False for what is wrong in files that were not asked about."""
    scope = gathered.scope
    return scope is None or finding.fault.file in scope or finding.rule == "file"

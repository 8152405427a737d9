"""Rule for the recogniser's word list: what it has no word for, it cannot hear."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from kiosk.checking.phrases import COMMANDS
from kiosk.checking.rule import NotLookedAt
from kiosk.checking.subject import Subject, place_of
from kiosk.languages.words import words
from kiosk.listening.numbers import NoNumbers, spoken
from kiosk.procedure.fault import Fault
from kiosk.procedure.plan import Hold, Measure
from kiosk.procedure.yaml_source import Where

Place = tuple[str, Where]
"""File, and the path into it; an empty path for the kiosk's own words."""


def unknown_word(subject: Subject) -> Iterator[Fault | NotLookedAt]:
    """A phrase, a command or a number of a closed list has a word that the recogniser lacks."""
    not_asked: list[str] = []
    for language in subject.languages:
        phrases = _phrases(subject, language)
        unknown = subject.instruments.unknown(language, list(phrases))
        if unknown is None:
            not_asked.append(language)
        for phrase, word in dict.fromkeys(unknown or ()):
            file, where = phrases[phrase]
            what = f"the recogniser of '{language}' has no word '{word}', as in '{phrase}'"
            mend = "choose a word that it knows"
            if where:
                yield subject.fault(file, where, what, mend)
            else:
                yield Fault(file, 0, "", what, mend)
    if not_asked:
        names = ", ".join(not_asked)
        yield NotLookedAt(
            f"Words in {names} cannot be looked up here: no recogniser with a closed word list is "
            "installed for them."
        )


def _phrases(subject: Subject, language: str) -> Mapping[str, Place]:
    """Return what may have to be heard in a language, with the place that it stands in."""
    found: dict[str, Place] = {}
    for procedure in subject.procedures():
        for _, step in subject.steps(procedure):
            where = place_of(procedure, step.id)
            if isinstance(step.task, Hold) and language in step.task.phrase:
                phrase = step.task.phrase[language].lower()
                found.setdefault(phrase, (procedure.file, (*where, "hold", "phrase", language)))
            if isinstance(step.task, Measure):
                for number in _numbers(step.task, language):
                    found.setdefault(number, (procedure.file, (*where, "measure", "choices")))
    common = subject.files.get(("common", "common"), "")
    for name, problem in subject.library.common.problems.items():
        if language in problem.name:
            where = ("problems", name, "name", language)
            found.setdefault(problem.name[language].lower(), (common, where))
    for act in COMMANDS:
        for phrase in words(language).phrases(act):
            found.setdefault(phrase, (f"kiosk/languages/{language}/walk.ftl", ()))
    return found


def _numbers(task: Measure, language: str) -> list[str]:
    try:
        return list(spoken(task.choices, language, task.unit))
    except NoNumbers:
        return []

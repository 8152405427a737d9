"""Rule for the length of what is said: nobody keeps a long sentence in mind with wet hands."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.checking.rule import NotLookedAt
from kiosk.checking.subject import Subject, place_of
from kiosk.engine.prompt import prompt
from kiosk.engine.state import Mode, State
from kiosk.languages.words import words
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import Procedure, Text
from kiosk.procedure.plan import Hold, Plan, Repeat, Step
from kiosk.procedure.yaml_source import Where
from kiosk.speaking.voices import SpeechFailed

TEXT_S = 9.0
"""Seconds for one text of a step. A choice of this project; the rule's page has the figures."""

WHOLE_S = 24.0
"""Seconds for all that is said on entering a step: caution, text, and how to answer."""


def too_long_to_say(subject: Subject) -> Iterator[Fault | NotLookedAt]:
    """A text takes long to say, spoken for real with the settings of the machine kind filled in."""
    try:
        for procedure in subject.procedures():
            for plan, step in subject.steps(procedure):
                yield from _step(subject, procedure, plan, step)
    except SpeechFailed as failure:
        yield NotLookedAt(f"How long the sentences take to say was not looked at: {failure}.")


def _step(subject: Subject, procedure: Procedure, plan: Plan, step: Step) -> Iterator[Fault]:
    where = place_of(procedure, step.id)
    for field, text in _texts(step):
        for language in subject.languages:
            seconds = _seconds(subject, language, text.get(language, ""))
            if seconds > TEXT_S:
                what = f"it takes {seconds:.1f} s to say, and {TEXT_S:.0f} s is the most"
                mend = "say it shorter, or make two steps of it"
                yield subject.fault(procedure.file, (*where, *field, language), what, mend)
    if step.caution is None:
        return
    for language in subject.languages:
        asked = prompt(plan, State(mode=Mode.RUNNING, step=step.id, goal=step.id))
        seconds = _seconds(subject, language, words(language).spoken(asked))
        if seconds > WHOLE_S:
            what = (
                f"caution and step together take {seconds:.1f} s to say in '{language}', and "
                f"{WHOLE_S:.0f} s is the most"
            )
            mend = "shorten the caution or the sentence"
            yield subject.fault(procedure.file, (*where, "caution"), what, mend)


def _seconds(subject: Subject, language: str, text: str) -> float:
    """Return the seconds that a text takes; none for an empty one, which another rule reports."""
    sayable = any(mark.isalnum() for mark in text)
    return subject.instruments.seconds(language, text) if sayable else 0.0


def _texts(step: Step) -> Iterator[tuple[Where, Text]]:
    yield ("say",), step.say
    if step.corrective is not None:
        yield ("corrective",), step.corrective
    match step.task:
        case Hold(verify=verify) if verify is not None:
            yield ("hold", "verify"), verify
        case Repeat(until=until):
            yield ("repeat", "until"), until
        case _:
            return

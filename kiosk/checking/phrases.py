"""Rules for what is said to the kiosk: no two phrases of one moment may be taken for each other."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import NamedTuple

from rapidfuzz.distance import Levenshtein

from kiosk.checking.instruments import Sounds
from kiosk.checking.rule import NotLookedAt
from kiosk.checking.subject import Subject, place_of
from kiosk.engine import commands as c
from kiosk.engine.offers import offers
from kiosk.engine.state import Mode, State
from kiosk.languages.words import Words, words
from kiosk.listening.grammar import grammar
from kiosk.procedure.fault import Fault
from kiosk.procedure.plan import Hold, Plan
from kiosk.procedure.yaml_source import Where
from kiosk.speaking.voices import SpeechFailed

TOO_ALIKE = 0.3
"""Share of phonemes that must differ (edit distance over the longer phrase), in one moment.

Measured with espeak-ng 1.52's phonemes. The shipped phrases that come nearest to another one of
their moment differ by more; see the page of the rule for the figures. Pairs made to be mistaken
differ by less: `power is off` and `power is on` 0.12, `machine locked` and `machine unlocked` 0.18,
`next` and `text` 0.20, `the lock is on` and `the lid is on` 0.22.
"""

_NOW = c.Instant(0.0, 0.0, "this boot")

COMMANDS: tuple[c.Act, ...] = (
    c.Confirm(), c.Yes(), c.No(), c.SayAgain(), c.Back(), c.CallProblem(), c.Pause(), c.Resume(),
    c.HandOver("", ""), c.TakeOutOfService(), c.End(),
    *(c.Inspected(finding) for finding in c.Finding),
)  # fmt: skip
"""Every act that has words of the kiosk's own."""


OWN = ("say-language", "say-never-mind", "say-reckon", "say-remark", "say-witness")
"""Messages with the words for the walk's own questions, one way of saying each."""


class Pair(NamedTuple):
    """A phrase of a file, and another one that may be said at the same moment."""

    file: str
    where: Where
    language: str
    phrase: str
    other: str
    moment: str


def ambiguous_phrase(subject: Subject) -> Iterator[Fault]:
    """A phrase is also another phrase of the same moment."""
    for pair in pairs(subject):
        if _plain(pair.phrase) == _plain(pair.other):
            what = f"'{pair.phrase}' also means something else {pair.moment}"
            yield subject.fault(pair.file, pair.where, what, "choose other words")


def phrase_too_alike(subject: Subject) -> Iterator[Fault | NotLookedAt]:
    """A phrase sounds like another phrase of the same moment."""
    different = [one for one in pairs(subject) if _plain(one.phrase) != _plain(one.other)]
    said: dict[str, dict[str, None]] = {}
    for pair in different:
        said.setdefault(pair.language, {}).update(dict.fromkeys((pair.phrase, pair.other)))
    try:
        sounds = subject.instruments.sounds({one: list(texts) for one, texts in said.items()})
    except SpeechFailed as failure:
        yield NotLookedAt(f"Whether phrases sound alike was not looked at: {failure}.")
        return
    for pair in different:
        apart = distance(sounds, pair)
        if apart < TOO_ALIKE:
            what = (
                f"'{pair.phrase}' sounds like '{pair.other}', which can be said {pair.moment}: "
                f"{apart:.2f} of their sounds differ, and {TOO_ALIKE:.2f} must"
            )
            mend = "choose words that differ more, best in their stressed syllables"
            yield subject.fault(pair.file, pair.where, what, mend)


def distance(sounds: Sounds, pair: Pair) -> float:
    """Return the share of phonemes in which two phrases differ, 0 to 1."""
    return Levenshtein.normalized_distance(
        sounds[pair.language, pair.phrase], sounds[pair.language, pair.other]
    )


def pairs(subject: Subject) -> Iterator[Pair]:
    """Yield each phrase that a file brings, with each phrase that may be said beside it."""
    for procedure in subject.procedures():
        for plan, step in subject.steps(procedure):
            if isinstance(step.task, Hold):
                where = (*place_of(procedure, step.id), "hold", "phrase")
                asked = State(mode=Mode.RUNNING, step=step.id, goal=step.id, since=_NOW)
                for language in subject.languages:
                    own = step.task.phrase.get(language)
                    if own:
                        others = _others(plan, asked, c.GivePhrase(), words(language))
                        for other in others:
                            yield Pair(
                                procedure.file, (*where, language), language, own.lower(), other,
                                f"at '{step.id}'",
                            )  # fmt: skip
    yield from _problems(subject)


def _problems(subject: Subject) -> Iterator[Pair]:
    plan = next((one for plans in subject.plans.values() for one in plans), None)
    file = subject.files.get(("common", "common"))
    if plan is None or file is None:
        return
    asked = State(mode=Mode.HELD, because="problem", step=plan.steps[0].id, goal=plan.steps[0].id)
    for name, problem in plan.problems.items():
        for language in subject.languages:
            own = problem.name.get(language)
            for other in _others(plan, asked, c.NameReason(name), words(language)) if own else ():
                where = ("problems", name, "name", language)
                moment = "when a problem is named"
                yield Pair(file, where, language, str(own).lower(), other, moment)


def _others(plan: Plan, state: State, own: c.Act, said: Words) -> list[str]:
    """Return what may be said in a state besides `own`; with a hold, every command there is."""
    acts = [act for act in offers(plan, state, _NOW) if act != own]
    if state.mode is Mode.RUNNING:
        acts += [act for act in COMMANDS if act not in acts]
    found: dict[str, None] = {}
    for act in acts:
        found.update(dict.fromkeys(grammar(plan, state.step, (act,), said)))
    found.update(dict.fromkeys(said.say(name) for name in OWN))
    found.update(dict.fromkeys(said.ways("say-help")))
    return list(found)


def _plain(phrase: str) -> str:
    return " ".join(re.findall(r"\w+", phrase.lower()))

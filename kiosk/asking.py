"""A walk's own questions, and the answers to them: what can be said, who, in which language."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.languages.words import Words, languages, words
from kiosk.listening.numbers import NoNumbers, spoken
from kiosk.options import (
    CallWitness,
    Choice,
    ChooseLanguage,
    Help,
    LeaveRemark,
    NeverMind,
    Option,
    Reckon,
)
from kiosk.people.may import ASKED_FOR, Identified
from kiosk.procedure.site import Person, Site

Door = Callable[
    [Identified, c.Evidence, Callable[[Identified, c.Evidence], None], Callable[[c.Refusal], None]],
    None,
]
"""Asks for the PINs that an act needs. Given the act, how it came in, what to call with the act as
it may be done, and what to call when it may not."""


def help_text(offered: Sequence[Option], said: Words) -> str:
    """Tell what can be said now, and what to do when somebody is hurt."""
    labels = [one.label for one in offered if not isinstance(one.choice, c.Read | Help)]
    text = [said.say("help-say", list="; ".join(labels))]
    if any(isinstance(one.choice, c.Read) for one in offered):
        text.append(said.say("help-number"))
    if any(isinstance(one.choice, c.GivePhrase) for one in offered):
        text.append(said.say("help-hold"))
    text.append(said.say("help-hurt"))
    return " ".join(text)


def own_questions(
    said: Words, *, witness: bool, remark: bool, language: bool, reckon: bool
) -> list[Option]:
    """Return what can be asked beside the session's question; each flag tells whether one can."""
    found = list[Option]()
    if witness:
        found.append(Option(CallWitness(), said.say("say-witness")))
    if remark:
        found.append(Option(LeaveRemark(), said.say("say-remark")))
    if language:
        found.append(Option(ChooseLanguage(), said.say("say-language")))
    if reckon:
        found.append(Option(Reckon(), said.say("say-reckon")))
    first, *others = said.ways("say-help")
    return [*found, Option(Help(), first, also=tuple(others))]


def never_mind(said: Words) -> Option:
    """Return what takes a question back."""
    return Option(NeverMind(), said.say("say-never-mind"))


def language_options(site: Site, said: Words) -> tuple[Option, ...]:
    """Return the languages of a site."""
    known = [one for one in site.languages if one in languages()]
    return _numbered([(c.Speak(one), words(one).say("language-name")) for one in known], said)


def people_options(
    people: Iterable[Person],
    act_of: Callable[[Person], Identified],
    refused: Callable[[Identified], c.Refusal | None],
    said: Words,
) -> tuple[Option, ...]:
    """Return those of some people who may do an act, if need be with a PIN."""
    choices: list[tuple[c.Act, str]] = []
    for one in people:
        refusal = refused(act_of(one))
        if refusal is None or refusal.why in ASKED_FOR:
            choices.append((act_of(one), one.name))
    return _numbered(choices, said)


def _numbered(choices: list[tuple[c.Act, str]], said: Words) -> tuple[Option, ...]:
    """Give each choice a number to say, for its name may be in any language."""
    options = []
    for number, (act, detail) in enumerate(choices, 1):
        try:
            spoken_number = next(iter(spoken([Decimal(number)], said.language)))
        except NoNumbers:
            spoken_number = str(number)
        options.append(Option(act, said.say("say-number", number=spoken_number), detail))
    return (*options, never_mind(said))


def phrases(options: Iterable[Option]) -> dict[str, Choice]:
    """Return what may be said for each option."""
    return {phrase: one.choice for one in options for phrase in (one.label, *one.also)}

"""The questions of the setup about the crew: their languages, and each person."""

from __future__ import annotations

from typing import Any, Final

from kiosk.languages.words import languages, words
from kiosk.procedure.site import Role
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_page import Item, Ways
from kiosk.screens.setup_place import board_first, texts_told
from kiosk.setup.hears import can_hear
from kiosk.setup.ids import fresh_id
from kiosk.setup.questions import Question

_ADD: Final = "add"
_WHAT: Final = "people"

Person = dict[str, Any]


def crew_languages(flow: Flow, question: Question) -> None:
    """Ask which languages the crew speaks. The board begins in that of the setup."""
    say, draft = flow.words.say, flow.draft

    def chosen() -> list[str]:
        return [str(one) for one in draft.document.get(question.path) or ()]

    def spoken() -> set[str]:
        return {str(one.get("language", "")) for one in draft.document.listed(_WHAT)}

    ears = {True: say("setup-by-voice"), False: say("setup-by-touch")}
    told = {
        one: f"{texts_told(flow, one)}\n{ears[can_hear(one, draft.folder)]}" for one in languages()
    }

    def items() -> list[Item]:
        now = chosen()
        return [
            Item(one, words(one).say("language-name"), text, marked=one in now)
            for one, text in told.items()
        ]

    def taken(one: object) -> None:
        now = chosen()
        if one in now and one in spoken():
            flow.app.tell(say("setup-language-spoken"))
            return
        changed = [tag for tag in now if tag != one] if one in now else [*now, str(one)]
        draft.put(question.path, board_first(changed, draft.language))
        flow.keep()

    def done() -> None:
        if chosen():
            flow.answered(question)
            return
        flow.notice = say("setup-no-language")
        flow.ask(question)

    ways = Ways(lambda: flow.back_from(question), flow.app.stop, done)
    flow.choose(flow.asked(question), ways, items, taken, stays=True)


def people(flow: Flow, question: Question) -> None:
    """Ask for the people; with none yet, for the first one at once."""
    if not flow.draft.document.listed(_WHAT):
        _name(flow, question, None)
        return
    _list(flow, question)


def _list(flow: Flow, question: Question) -> None:
    say = flow.words.say
    listed = flow.draft.document.listed(_WHAT)

    def items() -> list[Item]:
        found = [
            Item(place, str(one.get("name", "")), person_told(flow, one))
            for place, one in enumerate(listed)
        ]
        return [*found, Item(_ADD, say("setup-add-person"))]

    def taken(one: object) -> None:
        if isinstance(one, int):
            _menu(flow, question, one)
        else:
            _name(flow, question, None)

    def done() -> None:
        roles = {str(one.get("role", Role.WORKER)) for one in listed}
        if Role.TRAINEE in roles and Role.SUPERVISOR not in roles:
            flow.notice = say("setup-trainee-alone")
            _list(flow, question)
            return
        if Role.SUPERVISOR not in roles and not flow.warned:
            flow.warned, flow.notice = True, say("setup-no-supervisor")
            _list(flow, question)
            return
        flow.answered(question)

    ways = Ways(lambda: flow.back_from(question), flow.app.stop, done)
    flow.choose(flow.asked(question), ways, items, taken)


def person_told(flow: Flow, person: Person) -> str:
    """Return the role and the language of a person."""
    role = flow.words.say(f"people-role-{_role(person)}")
    return f"{role}\n{words(str(person.get('language', ''))).say('language-name')}"


def _role(person: Person) -> str:
    given = str(person.get("role", Role.WORKER))
    return given if given in set(Role) else Role.WORKER


def _menu(flow: Flow, question: Question, place: int) -> None:
    """Ask what of a person is to be changed."""
    say = flow.words.say
    person = flow.draft.document.listed(_WHAT)[place]
    name, id_ = str(person.get("name", "")), str(person.get("id", ""))
    language = words(str(person.get("language", ""))).say("language-name")

    def off() -> None:
        flow.draft.document.remove(_WHAT, place)
        flow.keep()
        people(flow, question)

    items = [
        Item(lambda: _name(flow, question, place), say("setup-change-name"), name),
        Item(lambda: _language(flow, question, place), say("setup-change-language"), language),
        Item(lambda: _role_of(flow, question, place), say("setup-change-role"),
             say(f"people-role-{_role(person)}")),
        Item(off, say("setup-take-off"), say("setup-take-off-person", person=id_)),
    ]  # fmt: skip

    def taken(one: object) -> None:
        if callable(one):
            one()

    ways = flow.ways(question, lambda: _list(flow, question))
    asked = flow.asked(question, "person", who=name)
    flow.choose(asked, ways, lambda: items, taken)


def _name(flow: Flow, question: Question, place: int | None) -> None:
    """Ask for the name of somebody new (None), or for another name."""
    listed = flow.draft.document.listed(_WHAT)

    def taken(text: str) -> None:
        if place is None:
            _language(flow, question, None, text)
            return
        _set(flow, place, "name", text)
        _menu(flow, question, place)

    def back() -> None:
        if place is not None:
            _menu(flow, question, place)
        elif listed:
            _list(flow, question)
        else:
            flow.back_from(question)

    text = "" if place is None else str(listed[place].get("name", ""))
    asked = flow.asked(question, "person-name")
    flow.write(asked, flow.ways(question, back), taken, text=text, each_word=True)


def _language(flow: Flow, question: Question, place: int | None, name: str = "") -> None:
    tags = [str(one) for one in flow.draft.document.get(Question.LANGUAGES.path) or ()]
    items = [Item(one, words(one).say("language-name")) for one in tags]

    def taken(one: object) -> None:
        if place is None:
            _role_of(flow, question, None, name, str(one))
            return
        _set(flow, place, "language", str(one))
        _menu(flow, question, place)

    def back() -> None:
        _name(flow, question, None) if place is None else _menu(flow, question, place)

    if place is None and len(tags) == 1:
        _role_of(flow, question, None, name, tags[0])
        return
    who = name if place is None else str(flow.draft.document.listed(_WHAT)[place].get("name", ""))
    asked = flow.asked(question, "person-language", who=who)
    flow.choose(asked, flow.ways(question, back), lambda: items, taken)


def _role_of(
    flow: Flow, question: Question, place: int | None, name: str = "", language: str = ""
) -> None:
    say = flow.words.say
    items = [Item(one, say(f"people-role-{one}"), say(f"setup-role-{one}")) for one in Role]

    def taken(one: object) -> None:
        if place is not None:
            _set(flow, place, "role", str(one))
            _menu(flow, question, place)
            return
        ids = [str(person.get("id", "")) for person in flow.draft.document.listed(_WHAT)]
        person = {"id": fresh_id("p", ids, flow.draft.folder), "name": name, "language": language}
        flow.draft.add(_WHAT, {**person, "role": str(one)})
        flow.keep()
        _list(flow, question)

    def back() -> None:
        _name(flow, question, None) if place is None else _menu(flow, question, place)

    who = name if place is None else str(flow.draft.document.listed(_WHAT)[place].get("name", ""))
    asked = flow.asked(question, "person-role", who=who)
    flow.choose(asked, flow.ways(question, back), lambda: items, taken)


def _set(flow: Flow, place: int, field: str, value: str) -> None:
    flow.draft.document.change(_WHAT, place, field, value)
    flow.keep()

"""The questions of the setup about the shop itself: language, name, time, days, limits, tools."""

from __future__ import annotations

from datetime import date
from typing import Final

from kiosk.languages.signed import still_drafted
from kiosk.languages.words import languages, words
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_page import Item, Ways
from kiosk.setup import limits, zones
from kiosk.setup.questions import Question
from kiosk.setup.said import value_name, value_told

WEEK: Final = (
    "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday",
)  # fmt: skip
_ADD: Final = "add"
_LEAP_YEAR: Final = 2000


def language(flow: Flow, question: Question) -> None:
    """Ask in which language the setup speaks."""

    def items() -> list[Item]:
        return [
            Item(one, words(one).say("language-name"), marked=one == flow.draft.language)
            for one in languages()
        ]

    def taken(one: object) -> None:
        flow.draft.language = str(one)
        crew = [str(tag) for tag in flow.draft.document.get(Question.LANGUAGES.path) or ()]
        if one in crew:
            flow.draft.put(Question.LANGUAGES.path, board_first(crew, str(one)))
        flow.answered(question)

    ways = Ways(lambda: flow.back_from(question), flow.app.stop)
    flow.choose(flow.asked(question), ways, items, taken)


def board_first(tags: list[str], language: str) -> tuple[str, ...]:
    """Return languages with that of the setup first: the board begins in it."""
    return tuple(sorted(tags, key=lambda tag: tag != language))


def texts_told(flow: Flow, language: str) -> str:
    """Return, in a language, whether a fluent speaker has checked its texts."""
    written = {tag for one in flow.library.procedures.values() for tag in one.drafted}
    drafted = still_drafted(written & {language}, flow.library, flow.draft.folder)
    return words(language).say("setup-texts-drafted" if drafted else "setup-texts-checked")


def practice(flow: Flow, question: Question) -> None:
    """Ask whether the shop is real."""
    say = flow.words.say

    def items() -> list[Item]:
        now = flow.draft.document.get(question.path)
        return [
            Item(False, say("setup-real"), say("setup-real-is"), marked=now is False),
            Item(True, say("practice"), say("setup-practice-is"), marked=now is True),
        ]

    def taken(one: object) -> None:
        flow.draft.put(question.path, bool(one))
        flow.answered(question)

    flow.choose(flow.asked(question), flow.ways(question), items, taken)


def name(flow: Flow, question: Question) -> None:
    """Ask for a name: of the shop, or of the sanitizer."""

    def taken(text: str) -> None:
        flow.draft.put(question.path, text)
        flow.answered(question)

    text = str(flow.draft.document.get(question.path) or "")
    flow.write(flow.asked(question), flow.ways(question), taken, text=text)


# The time zone.


def time_zone(flow: Flow, question: Question) -> None:
    """Ask for the time zone: this machine's own, or a part of the world, then a city."""
    say, utc = flow.words.say, flow.clock.now().utc
    kept = str(flow.draft.document.get(question.path) or "")

    def items() -> list[Item]:
        own = dict.fromkeys(one for one in (kept, zones.here()) if one)
        first = [
            Item(one, zones.city(one), say("setup-zone-now", time=zones.time_in(one, utc)),
                 marked=one == kept, primary=True)
            for one in own
        ]  # fmt: skip
        utc_itself = [] if zones.UTC in own else [
            Item(zones.UTC, "UTC", say("setup-zone-now", time=zones.time_in(zones.UTC, utc)))
        ]  # fmt: skip
        regions = [Item(one, say(f"setup-zone-{one.lower()}")) for one in zones.regions()]
        return [*first, *regions, *utc_itself]

    def taken(one: object) -> None:
        if str(one) in zones.regions():
            _city(flow, question, zones.cities(str(one)))
        else:
            _take_zone(flow, question, str(one))

    flow.choose(flow.asked(question), flow.ways(question), items, taken)


def _city(flow: Flow, question: Question, listed: tuple[str, ...]) -> None:
    """Ask for a city: where there are many, for its first letter before."""
    say, utc = flow.words.say, flow.clock.now().utc
    letters = zones.by_letters(listed)
    asked = flow.asked(question, "city")

    def again() -> None:
        flow.ask(question)

    def cities(zone_names: tuple[str, ...]) -> None:
        items = [
            Item(one, zones.city(one), say("setup-zone-now", time=zones.time_in(one, utc)))
            for one in zone_names
        ]
        back = again if len(letters) == 1 else (lambda: _city(flow, question, listed))
        ways = flow.ways(question, back)
        flow.choose(asked, ways, lambda: items, lambda one: _take_zone(flow, question, str(one)))

    if len(letters) == 1:
        cities(listed)
        return
    groups = [Item(one, one) for one in letters]
    first_letter = flow.asked(question, "city-letter")
    flow.choose(
        first_letter, flow.ways(question, again), lambda: groups,
        lambda one: cities(letters[str(one)]),
    )  # fmt: skip


def _take_zone(flow: Flow, question: Question, zone: str) -> None:
    flow.draft.put(question.path, zone)
    flow.answered(question)


# Hours and days.


def hour(flow: Flow, question: Question) -> None:
    """Ask when the shop opens, or closes."""

    def fault(text: str) -> str:
        hours, _, minutes = text.partition(":")
        right = len(minutes) == 2 and int(hours) <= 23 and int(minutes) <= 59
        return "" if right else flow.words.say("setup-no-time", text=text)

    def taken(text: str) -> None:
        flow.draft.put(question.path, text)
        flow.answered(question)

    flow.count(flow.asked(question), flow.ways(question), taken, fault, is_time=True)


def closed_days(flow: Flow, question: Question) -> None:
    """Ask on which days the shop does not open."""
    say, draft = flow.words.say, flow.draft

    says = {True: say("setup-is-closed"), False: say("setup-is-open")}

    def closed() -> list[str]:
        return [str(one) for one in draft.document.get(question.path) or ()]

    def items() -> list[Item]:
        now = closed()
        week = [Item(one, day_name(flow, one), says[one in now], marked=one in now) for one in WEEK]
        dates = [
            Item(one, day_name(flow, one), say("setup-take-off"), marked=True)
            for one in now
            if one not in WEEK
        ]
        return [*week, *dates, Item(_ADD, say("setup-add-day"))]

    def taken(one: object) -> None:
        if one == _ADD:
            flow.app.pop_screen()
            _month(flow, question)
            return
        now = closed()
        changed = [day for day in now if day != one] if one in now else [*now, str(one)]
        if set(WEEK) <= set(changed):
            flow.app.tell(say("setup-never-open"))
            return
        draft.put(question.path, tuple(changed))
        flow.keep()

    def done() -> None:
        draft.put(question.path, tuple(closed()))
        flow.answered(question)

    ways = Ways(lambda: flow.back_from(question), flow.app.stop, done)
    flow.choose(flow.asked(question), ways, items, taken, stays=True)


def day_name(flow: Flow, day: str) -> str:
    """Return a closed day as it is said: a weekday, a date of every year, or one date."""
    say = flow.words.say
    if day in WEEK:
        return say("setup-weekday", day=day)
    parts = day.split("-")
    if len(parts) == 2 and all(one.isdigit() for one in parts):
        return say("setup-date", month=month_name(flow, int(parts[0])), day=str(int(parts[1])))
    return day


def month_name(flow: Flow, month: int) -> str:
    """Return the name of a month."""
    return flow.words.say("setup-month", month=f"m{month}")


def _month(flow: Flow, question: Question) -> None:
    def again() -> None:
        flow.ask(question)

    def day_of(month: int) -> None:
        def fault(text: str) -> str:
            try:
                date(_LEAP_YEAR, month, int(text))
            except ValueError:
                return flow.words.say("setup-no-day", month=month_name(flow, month), text=text)
            return ""

        def taken(text: str) -> None:
            now = [str(one) for one in flow.draft.document.get(question.path) or ()]
            day = f"{month:02}-{int(text):02}"
            flow.draft.put(question.path, tuple(dict.fromkeys([*now, day])))
            flow.keep()
            again()

        asked = flow.asked(question, "day", month=month_name(flow, month))
        flow.count(asked, flow.ways(question, again), taken, fault)

    items = [Item(number, month_name(flow, number)) for number in range(1, 13)]
    ways = flow.ways(question, again)
    flow.choose(
        flow.asked(question, "month"), ways, lambda: items, lambda one: day_of(int(str(one)))
    )


# Limits, and what is used in this place.


def limits_profile(flow: Flow, question: Question) -> None:
    """Ask by which limits readings are judged; what differs is read from their files."""
    library, said = flow.library, flow.words

    def items() -> list[Item]:
        now = flow.draft.document.get(question.path)
        found = []
        for one in library.limits.values():
            usable = len(limits.unwalkable(one, library)) < len(library.procedures)
            told = "\n".join(limits.lines(one, library, said))
            found.append(Item(one.id, said.text(one.title), told, marked=one.id == now,
                              available=usable))  # fmt: skip
        return sorted(found, key=lambda one: not one.available)

    def taken(one: object) -> None:
        flow.draft.put(question.path, str(one))
        flow.answered(question)

    flow.choose(flow.asked(question), flow.ways(question), items, taken)


def option(flow: Flow, question: Question) -> None:
    """Ask what is used in this place: an option of all its machines."""
    said = flow.words
    name = question.path.removeprefix("options.")
    kinds = flow.library.kinds.values()
    values = dict.fromkeys(value for one in kinds for value in one.options.get(name, ()))

    def items() -> list[Item]:
        now = flow.draft.document.get(question.path)
        return [
            Item(one, value_name(name, one, said), value_told(name, one, said), marked=one == now)
            for one in values
        ]

    def taken(one: object) -> None:
        flow.draft.put(question.path, str(one))
        flow.answered(question)

    flow.choose(flow.asked(question), flow.ways(question), items, taken)

"""The overview of the setup: every answer, each to be changed; then the site file is written."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from kiosk.engine.prompt import Number
from kiosk.languages.words import words
from kiosk.procedure.fault import FaultyFile
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_page import Asked, ChoicePage, Item, Ways
from kiosk.screens.setup_place import WEEK, day_name
from kiosk.setup.check import faults_of
from kiosk.setup.questions import OF_THE_PLACE, Question
from kiosk.setup.said import fault_told, value_name
from kiosk.setup.zones import city


class OverviewPage(ChoicePage):
    """Lies under all other pages of the setup."""

    def __init__(self, flow: Flow) -> None:
        self._flow = flow
        asked = Asked(("", ""), "")
        super().__init__(
            flow.clock, flow.words, asked, Ways(), self._listed, self._take, stays=True
        )

    def draw(self) -> None:
        self.words = self._flow.words
        self.asked = self._told()
        self.notice = self.notice or self.asked.notice
        super().draw()

    def _told(self) -> Asked:
        flow = self._flow
        say = flow.words.say
        notice, flow.notice = flow.notice, ""
        left = len([one for one in flow.draft.open_questions() if flow.applies(one)])
        self.ways = self._ways(left)
        question = say("setup-left", n=left) if left else say("setup-ask-overview")
        return Asked((say("setup"), str(flow.draft.folder)), question, "", notice)

    def _ways(self, left: int) -> Ways:
        flow = self._flow
        say = flow.words.say
        if left:
            return Ways(None, flow.app.stop, flow.begin, say("setup-go-on"))
        if flow.draft.changed:
            return Ways(None, flow.app.stop, flow.app.write, say("setup-write"))
        return Ways(None, None, flow.app.finish, say("setup-leave"))

    def leave(self, then: Any) -> None:
        """Nothing lies under this page: it stays."""
        then()

    def _listed(self) -> list[Item]:
        flow = self._flow
        say = flow.words.say
        found = [
            Item(one, say(f"setup-about-{one.value}"), answer_told(flow, one))
            for one in Question
            if flow.applies(one)
        ]
        if not flow.draft.changed and not flow.draft.open_questions():
            found += [
                Item(flow.app.ask_pin, say("setup-about-pin"), say("setup-pin-is")),
                Item(flow.app.try_sound, say("setup-about-sound"), say("setup-sound-is")),
            ]
        return found

    def _take(self, one: object) -> None:
        if isinstance(one, Question):
            self._flow.alone = not self._flow.draft.open_questions() or (
                one in self._flow.draft.answered
            )
            self._flow.ask(one)
        elif callable(one):
            one()


def wrong_with(flow: Flow) -> list[str]:
    """Return everything that is wrong with the answers, in plain words.

    Procedures of the site's own are looked at as they will be walked, in all its languages.
    """
    try:
        site = flow.draft.site()
        wrong = faults_of(site, flow.app.library_of(site), "site.toml")
    except FaultyFile as error:
        wrong = error.faults
    return [fault_told(one, flow.draft.document, flow.words) for one in wrong]


def answer_told(flow: Flow, question: Question) -> str:
    """Return the answer to a question as the overview shows it."""
    said, document = flow.words, flow.draft.document
    if question not in flow.draft.answered:
        return said.say("setup-not-answered")
    if question is Question.LANGUAGE:
        return said.say("language-name")
    given = document.get(question.path)
    match question:
        case Question.PRACTICE:
            return said.say("practice" if given else "setup-real")
        case Question.TIME_ZONE:
            return city(str(given)) or str(given)
        case Question.CLOSED_DAYS:
            days = [str(one) for one in given or ()]
            days.sort(key=lambda day: WEEK.index(day) if day in WEEK else len(WEEK))
            return ", ".join(day_name(flow, one) for one in days) or said.say("setup-no-day-closed")
        case Question.LIMITS:
            profile = flow.library.limits.get(str(given))
            return str(given) if profile is None else said.text(profile.title)
        case Question.LANGUAGES:
            return _few([words(str(one)).say("language-name") for one in given or ()])
        case Question.MACHINES | Question.PEOPLE:
            return _few([str(one.get("name", "")) for one in document.listed(question.path)])
        case Question.CHLORINE if isinstance(given, int | float):
            return f"{(Decimal(str(given)) * 100).normalize():f} %"
        case Question.PACKET | Question.STRENGTH if isinstance(given, int | float):
            unit = "g" if question is Question.PACKET else "mg/L"
            return said.number(Number(str(given), unit))
    if question in OF_THE_PLACE:
        return _option_told(flow, question)
    return "" if given is None else str(given)


def _few(names: list[str]) -> str:
    """Return names; of many the first ones, and how many there are."""
    most = 3
    return ", ".join(names) if len(names) <= most else f"{', '.join(names[:2])} … ({len(names)})"


def _option_told(flow: Flow, question: Question) -> str:
    """Return what is used in the place; where its file does not say, what the kinds begin with."""
    option = question.path.removeprefix("options.")
    given = flow.draft.document.get(question.path)
    kinds = flow.library.kinds.values()
    first = next((one.options[option][0] for one in kinds if option in one.options), "")
    return value_name(option, str(given or first), flow.words)

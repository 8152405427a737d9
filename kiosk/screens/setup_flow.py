"""The way through the setup: one question after the other, and back again."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from kiosk.clock import Clock
from kiosk.languages.words import Words, words
from kiosk.procedure.load import Library
from kiosk.screens.setup_page import Asked, ChoicePage, Item, Ways
from kiosk.screens.setup_typing import NumberPage, TextPage
from kiosk.setup.draft import Draft
from kiosk.setup.questions import Question
from kiosk.setup.said import note_told

if TYPE_CHECKING:
    from kiosk.screens.setup_app import SetupApp


class Flow:
    """Where the setup is, and what its pages work with."""

    def __init__(self, app: SetupApp, draft: Draft, library: Library, clock: Clock) -> None:
        self.app = app
        self.draft = draft
        self.library = library
        self.clock = clock
        self.notice = ""
        """What the next page is to say first."""
        self.warned = False
        """True once it was said that nobody is a supervisor: some shops have none."""
        self.alone = not draft.open_questions()
        """True when one answer is changed, and the overview comes after it."""

    @property
    def words(self) -> Words:
        """The words of the language that the setup speaks."""
        return words(self.draft.language or self.app.first_language)

    # From question to question.

    def begin(self) -> None:
        """Ask what is not answered yet."""
        open_questions = [one for one in self.draft.open_questions() if self.applies(one)]
        if open_questions:
            self.ask(open_questions[0])

    def ask(self, question: Question) -> None:
        """Ask one question."""
        self.app.asks[question](self, question)

    def applies(self, question: Question) -> bool:
        """True when a question has to do with the machines that are there, or that may come."""
        option = question.path.removeprefix("options.")
        if option == question.path:
            return True
        there = {str(one.get("kind", "")) for one in self.draft.document.listed("machines")}
        kinds = self.library.kinds.values()
        return any(option in one.options for one in kinds if not there or one.id in there)

    def answered(self, question: Question) -> None:
        """Write an answer down, and go on."""
        self.keep(question)
        following = self._beside(question, 1)
        if self.alone or following is None:
            self.alone = True
            self.app.to_overview()
            return
        self.ask(following)

    def keep(self, *questions: Question) -> None:
        """Write all answers down; where that fails, the next page says so."""
        try:
            self.draft.keep(*questions)
        except OSError as error:
            self.notice = self.words.say("setup-not-kept", why=str(error))

    def back_from(self, question: Question) -> None:
        """Ask the question before, or show the overview."""
        before = self._beside(question, -1)
        if self.alone or before is None:
            self.app.to_overview()
            return
        self.ask(before)

    def _beside(self, question: Question, step: int) -> Question | None:
        asked = [one for one in Question if one is question or self.applies(one)]
        place = asked.index(question) + step
        return asked[place] if 0 <= place < len(asked) else None

    # What pages are made of.

    def asked(self, question: Question, name: str = "", **args: object) -> Asked:
        """Return what a page asks; `name` where a question has several pages."""
        say = self.words.say
        own = name or question.value
        asked = [one for one in Question if one is question or self.applies(one)]
        place = say("setup-place", n=asked.index(question) + 1, all=len(asked))
        head = f"{say('setup')} · {say(f'setup-about-{question.value}')}"
        notice, self.notice = self.notice, ""
        note = note_told(own, self.words, **args)
        return Asked((head, place), say(f"setup-ask-{own}", **args), note, notice)

    def ways(self, question: Question, back: Callable[[], object] | None = None) -> Ways:
        """Return the ways out of a page: back to the one before, and to stop here."""
        return Ways(back or (lambda: self.back_from(question)), self.app.stop)

    def choose(
        self,
        asked: Asked,
        ways: Ways,
        items: Callable[[], Sequence[Item]],
        taken: Callable[[object], object],
        *,
        stays: bool = False,
    ) -> None:
        """Show a list to choose from."""
        page = ChoicePage(self.clock, self.words, asked, ways, items, taken, stays=stays)
        self.app.push_screen(page)

    def write(
        self,
        asked: Asked,
        ways: Ways,
        then: Callable[[str], object],
        *,
        text: str = "",
        each_word: bool = False,
    ) -> None:
        """Ask for a name."""
        say = self.words.say
        note = f"{asked.note} {say('setup-note-keyboard')}".strip()
        told = Asked(asked.head, asked.question, note, asked.notice)

        def fault(name: str) -> str:
            return "" if name else say("setup-nothing-typed")

        page = TextPage(
            self.clock, self.words, told, ways, then, fault, text=text, each_word=each_word
        )
        self.app.push_screen(page)

    def count(
        self,
        asked: Asked,
        ways: Ways,
        then: Callable[[str], object],
        fault: Callable[[str], str],
        *,
        is_time: bool = False,
        unit: str = "",
        text: str = "",
    ) -> None:
        """Ask for a number, or for a time of day."""
        page = NumberPage(
            self.clock, self.words, asked, ways, then, fault, is_time=is_time, unit=unit, text=text
        )
        self.app.push_screen(page)

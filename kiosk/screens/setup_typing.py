"""Pages of the setup on which something is typed: by touch, or on a real keyboard."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from typing import Final

from textual import events
from textual.app import ComposeResult
from textual.content import Content
from textual.widgets import Static

from kiosk.clock import Clock
from kiosk.engine.commands import Channel
from kiosk.languages.words import Words
from kiosk.screens.arrangement import LEAST_HEIGHT, Block, most_columns
from kiosk.screens.faces import Face, KeypadKey, Less, More
from kiosk.screens.lettering import wrapped
from kiosk.screens.reading import ENTER, RUB_OUT, Typing, decimal_mark
from kiosk.screens.setup_page import Asked, SetupPage, Ways
from kiosk.setup.keyboard import OTHER_LETTERS, SHIFT, SPACE, Keyboard

_CURSOR: Final = "▏"
_TIME_DIGITS: Final = 4
_TALLEST: Final = 5


class TypingPage(SetupPage):
    """What a page for a text and a page for a number share.

    `fault` says what is wrong with what was typed, or nothing: then it is taken.
    """

    def __init__(self, clock: Clock, words: Words, asked: Asked, ways: Ways) -> None:
        # What is said first stands with the question; a notice of the page's own is a fault.
        note = f"{asked.notice} {asked.note}".strip()
        super().__init__(clock, words, Asked(asked.head, asked.question, note), ways)

    _is_tight = False
    """True when the keys leave room for no more than the question."""
    _is_read = False
    """True once somebody goes on from the question to the keys."""

    def compose_more(self) -> ComposeResult:
        yield Static(id="typed", markup=False)

    def draw_more(self, width: int) -> int:  # noqa: ARG002
        self.query_one("#typed", Static).update(Content(self.shown() + _CURSOR))
        return 1

    def secondary(self, width: int) -> Block:  # noqa: ARG002
        """The ways out stand among the keys: there is no row to spare."""
        return Block()

    def draw(self) -> None:
        super().draw()
        if not self.is_mounted:
            return
        told = self.query_one("#told")
        told.display = told.display and not self._is_tight
        # A notice stands in place of the question, so that the keys stay where they are.
        self.query_one("#asking").display = not self.notice
        if self.notice:
            self.query_one("#notice").styles.height = "1fr"

    def _draw_notice(self, width: int) -> int:
        super()._draw_notice(width)
        return 0

    def primary(self, width: int, height: int, lines: int) -> Block:
        if self.notice:
            text = f"{self.words.say('signal-notice')}: {self.notice}"
            lines = len(wrapped(text, width - 2))
        faces = self.keys()
        columns = self.columns(width)
        rows = -(-len(faces) // columns)
        spare = height - lines - rows * LEAST_HEIGHT
        self._is_tight = spare < 0 and self._is_read
        if spare < 0 and (self.notice or not self._is_read):
            # What is asked is read first, where there is no room for it beside the keys.
            on = Face(More(), self.words.say("setup-to-the-keys"), key="enter", primary=True)
            return Block((self._back(), on), 2, LEAST_HEIGHT)
        tall = min(_TALLEST, LEAST_HEIGHT + max(0, spare) // rows)
        return Block(tuple(faces), columns, tall)

    def columns(self, width: int) -> int:
        """Return in how many columns the keys stand."""
        return most_columns(width)

    def keys(self) -> list[Face]:
        """Return the keys, with the ways out among them."""
        raise NotImplementedError

    def shown(self) -> str:
        """Return what was typed, as it is shown."""
        raise NotImplementedError

    def press(self, key: str) -> None:
        """Take a key of the screen."""
        raise NotImplementedError

    def type(self, letters: str) -> None:
        """Take letters of a real keyboard, or of a paste."""
        raise NotImplementedError

    def enter(self) -> None:
        """Take what was typed, when it is right."""
        raise NotImplementedError

    def guarded(self, face: Face) -> bool:  # noqa: ARG002
        """Every key: those under the finger change with each press."""
        return True

    def pressed(self, face: Face, channel: Channel) -> None:
        if not isinstance(face.choice, KeypadKey):
            self._is_read = True
            super().pressed(face, channel)
            return
        # A key pressed before must not take the Enter or the space of a real keyboard.
        self.set_focus(None)
        self.notice = ""
        if face.choice.name == ENTER:
            self.enter()
        else:
            self.press(face.choice.name)
        self._drawn_again()

    def _drawn_again(self) -> None:
        if self.is_current:
            self.draw()

    def on_key(self, event: events.Key) -> None:
        letter = event.character
        if event.key in (ENTER, RUB_OUT) and self._shows_keys():
            event.stop()
            event.prevent_default()
            self.notice = ""
            if event.key == ENTER:
                self.enter()
            else:
                self.press(RUB_OUT)
            self._drawn_again()
        elif letter is not None and letter.isprintable():
            event.stop()
            event.prevent_default()
            self._typed(letter)
        else:
            super().on_key(event)

    def _shows_keys(self) -> bool:
        return any(isinstance(one.face.choice, KeypadKey) for one in self.targets())

    def on_paste(self, event: events.Paste) -> None:
        event.stop()
        self._typed(event.text)

    def _typed(self, letters: str) -> None:
        self.notice, self._is_read = "", True
        self.type(letters)
        self._drawn_again()

    def _back(self) -> Face:
        return Face(Less(), self.words.say("setup-back"), key="escape")

    def _key(self, name: str, label: str, *, primary: bool = False, listed: bool = False) -> Face:
        cap = name if name in (ENTER, RUB_OUT) else ""
        return Face(KeypadKey(name), label, key=cap, primary=primary, listed=listed)


class TextPage(TypingPage):
    """Takes a name. `each_word` begins each word with a capital letter."""

    def __init__(
        self,
        clock: Clock,
        words: Words,
        asked: Asked,
        ways: Ways,
        then: Callable[[str], object],
        fault: Callable[[str], str],
        *,
        text: str = "",
        each_word: bool = False,
    ) -> None:
        super().__init__(clock, words, asked, ways)
        self._then, self._fault = then, fault
        self.keyboard = Keyboard(text, each_word=each_word)

    def shown(self) -> str:
        return self.keyboard.text

    def press(self, key: str) -> None:
        self.keyboard = self.keyboard.press(key)

    def type(self, letters: str) -> None:
        self.keyboard = self.keyboard.type(letters)

    def enter(self) -> None:
        name = self.keyboard.name
        self.notice = self._fault(name)
        if not self.notice:
            self.leave(lambda: self._then(name))

    def keys(self) -> list[Face]:
        say, board = self.words.say, self.keyboard
        keys = [self._key(one, " ".join(one), listed=True) for one in board.keys]
        shift = self._key(SHIFT, say("setup-key-small" if board.capital else "setup-key-capital"))
        rub_out = self._key(RUB_OUT, say("rub-out"))
        if board.group:
            return [*keys, self._key(OTHER_LETTERS, say("setup-key-others")), shift, rub_out]
        enter = self._key(ENTER, say("setup-take"), primary=True)
        space = self._key(SPACE, say("setup-key-space"))
        return [*keys, space, shift, rub_out, self._back(), enter]


class NumberPage(TypingPage):
    """Takes a number, or a time of day in four digits."""

    def __init__(
        self,
        clock: Clock,
        words: Words,
        asked: Asked,
        ways: Ways,
        then: Callable[[str], object],
        fault: Callable[[str], str],
        *,
        is_time: bool = False,
        unit: str = "",
        text: str = "",
    ) -> None:
        """Ask for a number; `then` is given it as digits with a point, or as 09:30."""
        super().__init__(clock, words, asked, ways)
        self._then, self._fault = then, fault
        self._is_time, self._unit = is_time, unit
        self._typing = Typing(fraction=not is_time, below_zero=False, text=text.replace(":", ""))

    @property
    def text(self) -> str:
        """What was typed so far."""
        digits = self._typing.text
        return f"{digits[:-2]}:{digits[-2:]}" if self._is_time and len(digits) > 2 else digits

    def shown(self) -> str:
        text = self.text.replace(".", decimal_mark(self.words)) or "_"
        return f"{text} {self._unit}".strip()

    def press(self, key: str) -> None:
        pressed = self._typing.press(key)
        if self._is_time and len(pressed.text) > _TIME_DIGITS:
            return
        self._typing = pressed

    def type(self, letters: str) -> None:
        for letter in letters:
            if letter.isascii():
                self.press(letter)

    def enter(self) -> None:
        text = self.text
        if self._is_time and len(self._typing.text) == _TIME_DIGITS - 1:
            text = f"0{text}"
        if not text or (not self._is_time and not _is_number(text)):
            self.notice = self.words.say("number-missing")
            return
        self.notice = self._fault(text)
        if not self.notice:
            self.leave(lambda: self._then(text))

    def columns(self, width: int) -> int:  # noqa: ARG002
        return 3

    def keys(self) -> list[Face]:
        say = self.words.say
        digit = {name: self._key(name, name, listed=True) for name in "0123456789"}
        rub_out = self._key(RUB_OUT, say("rub-out"))
        enter = self._key(ENTER, say("setup-take"), primary=True)
        mark = replace(self._key(".", decimal_mark(self.words)), available=not self._is_time)
        return [
            *(digit[name] for name in "123456789"),
            mark,
            digit["0"],
            rub_out,
            self._back(),
            enter,
        ]


def _is_number(text: str) -> bool:
    return Typing(fraction=True, below_zero=False, text=text).value() not in (None, Decimal(0))

"""A keypad whose digits are not shown: what the PIN screens share."""

from __future__ import annotations

from decimal import Decimal
from typing import Final

from textual import events
from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.content import Content
from textual.widgets import Static

from kiosk.engine.commands import Channel, Evidence, Refusal
from kiosk.languages.words import Words
from kiosk.listening.ear import Heard
from kiosk.listening.numbers import NoNumbers, spoken
from kiosk.people.pins import MOST
from kiosk.screens.arrangement import LEAST_HEIGHT, Block
from kiosk.screens.faces import Face, KeypadKey, back_face
from kiosk.screens.lettering import signalled, spread, wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.reading import ENTER, RUB_OUT
from kiosk.screens.target_screen import TargetScreen
from kiosk.shop import Shop

FORGET_S: Final = 30.0
"""Digits that were typed and not entered are forgotten after so long."""
_TALLEST: Final = 4
_KEY_ROWS: Final = 4


class HiddenDigits(TargetScreen):
    """Takes digits without showing them. What they are for, a subclass says."""

    def __init__(self, shop: Shop, words: Words) -> None:
        super().__init__(shop.clock)
        self.shop = shop
        self.words = words
        self.notice = ""
        self._digits = ""
        self._typed_at = 0.0
        self._by = Evidence(Channel.TOUCH)
        self._is_blocked = False
        self._said: dict[str, str] = {}
        """What may be said, with the key that it stands for; empty where PINs are not spoken."""

    # What a subclass says.

    def heading(self) -> str:
        """Return who is asked, and what for."""
        raise NotImplementedError

    def question(self) -> str:
        """Return what is asked."""
        raise NotImplementedError

    def blocked(self) -> Refusal | None:
        """Return why no digits are taken now; None when they are."""
        return None

    def entered(self, digits: str, by: Evidence) -> Refusal | None:
        """Take digits; return why they will not do."""
        raise NotImplementedError

    def done(self, by: Evidence) -> None:
        """Go on: the screen is closed, and the digits were right."""
        raise NotImplementedError

    # What is shown.

    def compose(self) -> ComposeResult:
        yield Static(id="head", markup=False)
        with VerticalScroll(id="asking", can_focus=False):
            yield Static(id="asked", markup=False)
        yield Static(id="dots", markup=False)
        yield Static(id="notice", markup=False)
        yield Panel(self.clock, "primary")
        yield Panel(self.clock, "secondary")

    def on_mount(self) -> None:
        self.unsteady()
        self.set_interval(1.0, self.tick)
        self._show_block()
        self._listen()
        self.query_one("#primary", Panel).focus_way_on()

    def tick(self) -> None:
        """Look at the clock: once a second."""
        if self._digits and self.clock.now().mono - self._typed_at > FORGET_S:
            self._digits = ""
            self.draw()
        if self._is_blocked:
            self._show_block()

    def _show_block(self) -> None:
        blocked = self.blocked()
        was, self._is_blocked = self._is_blocked, blocked is not None
        if blocked is not None:
            self._digits = ""
            self.notice = self.words.refusal(blocked)
        elif was:
            self.notice = ""
        self.draw()

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        mark = self.words.say("practice") if self.shop.site.practice else ""
        self.query_one("#head", Static).update(Content(spread(self.heading(), mark, width)))
        notice = signalled(self.notice, self.words)
        beside = wrapped(notice, width - 2) if notice else []
        spare = height - 2 - (_KEY_ROWS + 1) * LEAST_HEIGHT - len(beside)
        # Where no digits are taken, or no room is left, the notice stands in place of the keys.
        alone = self._is_blocked or spare < 0
        asked = beside if alone else wrapped(self.question(), width - 2)
        self._draw_lines(asked, [] if alone else beside, room=alone or spare > 0)
        tall = LEAST_HEIGHT + min(_TALLEST - LEAST_HEIGHT, max(0, spare - len(asked)) // _KEY_ROWS)
        self.query_one("#primary", Panel).show(Block() if alone else self._keys(tall))
        back = back_face(self.words)
        self.query_one("#secondary", Panel).show(Block((back,), 1, LEAST_HEIGHT))

    def _draw_lines(self, asked: list[str], notice: list[str], *, room: bool) -> None:
        self.query_one("#asking").display = room
        self.query_one("#asked", Static).update(Content("\n".join(asked)))
        self.query_one("#dots", Static).update(Content(" ".join("●" * len(self._digits)) or "_"))
        box = self.query_one("#notice", Static)
        box.display = bool(notice)
        box.update(Content("\n".join(notice)))

    def _keys(self, tall: int) -> Block:
        digit = [
            Face(KeypadKey(str(n)), str(n), listed=True) for n in (1, 2, 3, 4, 5, 6, 7, 8, 9, 0)
        ]
        say = self.words.say
        rub_out = Face(KeypadKey(RUB_OUT), say("rub-out"), key=RUB_OUT)
        enter = Face(KeypadKey(ENTER), say("enter-number"), key=ENTER, primary=True)
        return Block((*digit[:9], rub_out, digit[9], enter), 3, tall)

    # What is pressed and said.

    def guarded(self, face: Face) -> bool:
        """All but the digits, which may come twice."""
        return not isinstance(face.choice, KeypadKey) or face.choice.name == ENTER

    def pressed(self, face: Face, channel: Channel) -> None:
        match face.choice:
            case KeypadKey(name):
                self._take(name, Evidence(channel))
            case _:
                self.app.pop_screen()

    def on_key(self, event: events.Key) -> None:
        if event.key.isascii() and event.key.isdigit():
            event.stop()
            event.prevent_default()
            self._take(event.key, Evidence(Channel.KEY))
            return
        super().on_key(event)

    def hear(self, heard: Heard) -> None:
        """Take a spoken digit, where the site lets PINs be said."""
        key = None if heard.phrase is None else self._said.get(heard.phrase)
        if key == "escape":
            self.app.pop_screen()
        elif key is not None:
            self._take(key, Evidence(Channel.VOICE, ear=heard.ear))

    def _take(self, key: str, by: Evidence) -> None:
        if self._is_blocked:
            return
        self._by, self._typed_at = by, self.clock.now().mono
        self.notice = ""
        if key == ENTER:
            self._enter()
            return
        self._digits = self._digits[:-1] if key == RUB_OUT else (self._digits + key)[:MOST]
        self.draw()

    def _enter(self) -> None:
        digits, self._digits = self._digits, ""
        if not digits:
            self.notice = self.words.say("number-missing")
            self.draw()
            return
        refused = self.entered(digits, self._by)
        if refused is None:
            self.app.pop_screen()
            self.done(self._by)
            return
        self.notice = self.words.refusal(refused)
        self._show_block()

    def _listen(self) -> None:
        """Let the ear hear digits where the site says that nobody overhears, else nothing."""
        hearing = getattr(self.app, "hearing", None)
        if hearing is None:
            return
        self._said = self._words_said() if self.shop.site.pins.spoken_pins else {}
        if self._said:
            hearing.speak(self.words.language)
        hearing.allow(self._said)

    def _words_said(self) -> dict[str, str]:
        say = self.words.say
        try:
            found = {
                phrase: str(value)
                for phrase, value in spoken(map(Decimal, range(10)), self.words.language).items()
            }
        except NoNumbers:
            return {}
        others = {"enter-number": ENTER, "rub-out": RUB_OUT, "say-never-mind": "escape"}
        return found | {say(name): key for name, key in others.items()}

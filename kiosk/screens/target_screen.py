"""What all screens of targets share: keys, arrows, and a guard against bouncing presses."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Final, cast

from textual import events, on
from textual.geometry import Size
from textual.message import Message
from textual.screen import Screen

from kiosk.clock import Clock
from kiosk.engine.commands import Channel
from kiosk.languages.words import Words
from kiosk.screens.faces import Face
from kiosk.screens.panel import Panel, neighbour
from kiosk.screens.target import Target

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

BOUNCE_S: Final = 0.4
"""A press so soon after another one, or after the question changed by itself, was not meant: a wet
glove bounces, a key that is kept down repeats, a finger is under way to what stood there before."""

HELP_KEY: Final = "question_mark"

_ARROWS: Final = ("up", "down", "left", "right")


class TargetScreen(Screen[None]):
    """A screen that is worked by pressing targets."""

    class HelpAsked(Message):
        """Somebody wants to know what can be done here."""

        def __init__(self, words: Words, text: str) -> None:
            super().__init__()
            self.words = words
            self.text = text

    def __init__(self, clock: Clock) -> None:
        super().__init__()
        self.clock = clock
        self._unsteady_since = float("-inf")

    @property
    def room(self) -> Size:
        """The columns and rows that there are to draw in."""
        whole = self.app.size
        return Size(whole.width, max(1, whole.height - cast("KioskApp", self.app).foot))

    def pressed(self, face: Face, channel: Channel) -> None:
        """Do what a face stands for."""
        raise NotImplementedError

    def help(self) -> tuple[Words, str] | None:
        """Return what can be done here, in words; None where the screen tells it itself."""
        return None

    def draw(self) -> None:
        """Show what there is to show at the present size."""
        raise NotImplementedError

    def unsteady(self) -> None:
        """The screen changed by itself: presses under way are not meant for what it shows now."""
        self._unsteady_since = self.clock.now().mono

    def bounces(self) -> bool:
        """True when a press that arrives now was not meant."""
        now = self.clock.now().mono
        since, self._unsteady_since = self._unsteady_since, now
        return now - since < BOUNCE_S

    def guarded(self, face: Face) -> bool:  # noqa: ARG002
        """True when a bouncing press of it would do harm."""
        return True

    def faces(self) -> Iterable[Face]:
        """Return all faces whose keys work, shown or not."""
        return [target.face for target in self.targets()]

    def targets(self) -> list[Target]:
        """Return the targets that are shown."""
        return [one for panel in self.query(Panel) if panel.display for one in panel.targets]

    @on(Target.Pressed)
    def _on_target_pressed(self, message: Target.Pressed) -> None:
        message.stop()
        if not self.guarded(message.face) or not self.bounces():
            self.pressed(message.face, message.channel)

    def on_resize(self) -> None:
        self.draw()

    def on_key(self, event: events.Key) -> None:
        if event.key in _ARROWS:
            event.stop()
            event.prevent_default()
            self._move(event.key)
            return
        if event.key == HELP_KEY and self.ask_help():
            event.stop()
            event.prevent_default()
            return
        key = "enter" if event.key == "space" else event.key
        for face in self.faces():
            if face.key == key:
                event.stop()
                event.prevent_default()
                self._press_by_key(face)
                return

    def ask_help(self) -> bool:
        """Have it told what can be done here; False where the screen tells it itself."""
        found = self.help()
        if found is not None:
            self.post_message(self.HelpAsked(*found))
        return found is not None

    def _press_by_key(self, face: Face) -> None:
        for target in self.targets():
            if target.face == face:
                target.press_by_key()
                return
        if not self.bounces():
            self.pressed(face, Channel.KEY)

    def _move(self, key: str) -> None:
        shown = self.targets()
        focused = self.focused
        if not isinstance(focused, Target):
            if shown:
                shown[0].focus(scroll_visible=False)
            return
        found = neighbour(shown, focused, key)
        if found is not None:
            found.focus(scroll_visible=False)

"""A target: something to press with a wet glove, by touch or by key."""

from __future__ import annotations

from typing import ClassVar, Final

from rich.segment import Segment
from rich.style import Style
from textual import events
from textual.message import Message
from textual.strip import Strip
from textual.timer import Timer
from textual.widget import Widget

from kiosk.clock import Clock
from kiosk.engine.commands import Channel
from kiosk.screens.faces import Face
from kiosk.screens.kept_press import ARMED_S, KeptPress, Press
from kiosk.screens.lettering import balanced, centred, parted

_CAPS: Final = {
    "enter": "Enter",
    "escape": "Esc",
    "backspace": "⌫",
    "full_stop": ".",
    "minus": "-",
    "question_mark": "?",
}
"""What stands on the key itself."""

_FRAME_S: Final = 0.06
"""How often the bar of a kept press is drawn."""

_DOTS: Final = 5
"""How long it has been kept pressed, told without colours."""

_UPPER_HALF: Final = "▀"


class Target(Widget, can_focus=True):
    """Draws a face and reports presses of it.

    A press counts only when nothing changed between its beginning and its end: a question that
    changes under the finger is not answered by it.
    """

    COMPONENT_CLASSES: ClassVar[set[str]] = {"target--filled"}

    class Pressed(Message):
        """The target was pressed."""

        def __init__(self, face: Face, channel: Channel) -> None:
            super().__init__()
            self.face = face
            self.channel = channel

    def __init__(self, face: Face, clock: Clock) -> None:
        super().__init__()
        self.face = face
        self._clock = clock
        self._press = KeptPress()
        self._is_down = False
        self._is_click = False
        self._filling: Timer | None = None
        self._dress()

    def show(self, face: Face) -> None:
        """Show another face."""
        if face == self.face:
            return
        self.face = face
        self.let_go()
        self._dress()
        self.refresh()

    def let_go(self) -> None:
        """Forget a press under way: it was meant for what the screen showed before."""
        self._is_down = self._is_click = False
        self._press = KeptPress()
        self._stop_filling()

    def press_by_key(self) -> None:
        """Press it without a finger."""
        if not self.face.available:
            return
        if self.face.kept and self._press.tap(self._now()) is Press.NOT_YET:
            self._wait_for_second()
            return
        self.post_message(self.Pressed(self.face, Channel.KEY))

    def on_mouse_down(self, event: events.MouseDown) -> None:
        event.stop()
        self._is_down = True
        if self.face.kept:
            self._press.down(self._now())
            self.capture_mouse()
            self._filling = self.set_interval(_FRAME_S, self.refresh)

    def on_mouse_up(self, event: events.MouseUp) -> None:
        event.stop()
        self._is_click, self._is_down = self._is_down, False
        self._stop_filling()
        if self._press.down_at is None:
            return
        if not self.region.contains(event.screen_x, event.screen_y):
            self._press.let_go()
            self.refresh()
        elif self._press.up(self._now()) is Press.GIVEN:
            self.post_message(self.Pressed(self.face, Channel.TOUCH))
        else:
            self._wait_for_second()

    def on_click(self, event: events.Click) -> None:
        event.stop()
        meant, self._is_click = self._is_click, False
        if meant and self.face.available and not self.face.kept:
            self.post_message(self.Pressed(self.face, Channel.TOUCH))

    def on_key(self, event: events.Key) -> None:
        if event.key in ("enter", "space"):
            event.stop()
            event.prevent_default()
            self.press_by_key()

    def _wait_for_second(self) -> None:
        """Say that one press was too short, for as long as a second one counts."""
        self.refresh()
        self.set_timer(ARMED_S + 0.1, self.refresh)

    def _stop_filling(self) -> None:
        if self._filling is not None:
            self._filling.stop()
            self._filling = None
            self.release_mouse()

    def _now(self) -> float:
        return self._clock.now().mono

    def _dress(self) -> None:
        self.set_class(self.face.primary and not self.face.listed, "-primary")
        self.set_class(self.face.listed, "-listed")
        self.set_class(not self.face.available, "-unavailable")

    def on_focus(self) -> None:
        self.refresh()

    def on_blur(self) -> None:
        self.refresh()

    def render_line(self, y: int) -> Strip:
        """Draw one row: the key in the corner, the text in the middle, half a row free below."""
        width, height = self.size
        style = self.rich_style
        done = self.get_component_rich_style("target--filled")
        text, bold = self._rows(width, height)[y]
        if y == height - 1 and not text.strip():
            page = Style.from_color(None, self.background_colors[0].rich_color)
            style, done = _upper_half(style) + page, _upper_half(done) + page
            text = _UPPER_HALF * width
        elif bold:
            style, done = style + Style(bold=True), done + Style(bold=True)
        filled = round(width * self._press.share(self._now())) if self.face.kept else 0
        head, rest = parted(text, filled)
        return Strip([Segment(head, done), Segment(rest, style)], width)

    def _rows(self, width: int, height: int) -> list[tuple[str, bool]]:
        """Return the text of each row, and whether it is bold."""
        room = max(2, width - 2)
        face, detail = self.face, self._detail()
        label = face.label if face.available else f"({face.label})"
        lines = [(line, True) for line in balanced(label, room)]
        names = len(lines)
        for part in detail.split("\n") if detail else ():
            lines += [(line, False) for line in balanced(part, room)]
        if len(lines) > height:
            last, bold = lines[height - 1]
            lines = [*lines[: height - 1], (f"{parted(last, room - 1)[0].rstrip()}…", bold)]
        top = max(0, (height - 1 - len(lines) + 1) // 2)
        rows = [("", False)] * top + lines + [("", False)] * height
        drawn = [(centred(text, width), bold) for text, bold in rows[:height]]
        if self.has_focus:
            middle = min(top + (names - 1) // 2, height - 1)
            drawn[middle] = (_marked(drawn[middle][0]), drawn[middle][1])
        drawn[0] = (self._with_key(drawn[0][0]), drawn[0][1])
        return drawn

    def _detail(self) -> str:
        """Return the second text: that of the press under way, where it must be kept."""
        kept, now = self.face.kept, self._now()
        if kept is None:
            return self.face.detail
        share = self._press.share(now)
        if share >= 1.0:
            return kept.let_go
        if share > 0:
            full = int(share * _DOTS)
            return f"{self.face.detail} {'●' * full}{'○' * (_DOTS - full)}"
        return kept.again if self._press.armed(now) else self.face.detail

    def _with_key(self, text: str) -> str:
        """Put the key into the left corner of the first row, where it hides nothing."""
        key = self.face.key
        cap = f" {_CAPS.get(key, key.upper())} "
        hidden, rest = parted(text, len(cap))
        if not key or hidden.strip(" »"):
            return text
        mark = "»" if hidden.startswith("»") else " "
        return f"{mark}{cap[1:]}{rest}"


def _marked(text: str) -> str:
    """Put the marks of the focus at both ends of a row, where they hide nothing."""
    free = text.startswith(" ") and text.endswith(" ")
    return f"»{text[1:-1]}«" if free else text


def _upper_half(style: Style) -> Style:
    """Return a style that draws the ground of another one."""
    return Style(color=style.bgcolor)

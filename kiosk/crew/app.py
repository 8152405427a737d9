"""The kiosk's application with lines under it that tell what the crew does."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any, Final

from textual.content import Content
from textual.widgets import Static

from kiosk import screens
from kiosk.screens.app import KioskApp
from kiosk.screens.lettering import wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.target import Target

CAPTION_ROWS: Final = 2


class Caption(Static):
    """What somebody says or does, under a screen."""

    DEFAULT_CSS = f"""
    Caption {{
        dock: bottom;
        height: {CAPTION_ROWS};
        padding: 0 1;
        background: $filled-ground;
        color: $filled-text;
        text-style: bold;
    }}
    """


class CrewApp(KioskApp):
    """A kiosk that is watched: the last rows of the terminal belong to the caption."""

    CSS_PATH = str(Path(screens.__file__).with_name(KioskApp.CSS_PATH))
    foot = CAPTION_ROWS
    script: Callable[[], Awaitable[None]] | None = None
    """What happens once the board is there."""
    failure: Exception | None = None
    """What the script stopped at, if it did."""

    def on_ready(self) -> None:
        self.run_worker(self._play(), exit_on_error=False)

    async def _play(self) -> None:
        try:
            if self.script is not None:
                await self.script()
        except Exception as error:  # noqa: BLE001 (whoever runs the application raises it again)
            self.failure = error
            self.exit()

    def tell(self, text: str) -> None:
        """Show what the crew does under the screen."""
        room = max(2, self.size.width - 2)
        content = Content("\n".join(wrapped(text, room)[:CAPTION_ROWS]))
        shown = self.screen.query(Caption)
        if shown:
            shown.first().update(content)
        else:
            self.screen.mount(Caption(content))

    def target(self, what: Any) -> Target | None:
        """Return the target on the screen that stands for something, or has it as a line."""
        for one in self._targets():
            if what in (one.face.choice, one.face.label, *one.face.detail.split("\n")):
                return one
        return None

    def labels(self) -> list[str]:
        """Return what stands on the targets on the screen."""
        return [one.face.label for one in self._targets()]

    def _targets(self) -> list[Target]:
        panels = [one for one in self.screen.query(Panel) if one.display]
        return [target for panel in panels for target in panel.targets]

    def action_leave(self) -> None:
        """Close at once, from any screen: nobody is at work here."""
        self.exit()

"""Opens the application with the voice and the ear of this machine."""

from __future__ import annotations

from collections.abc import Callable

from kiosk.listening.ear import Heard
from kiosk.listening.hearing import MicrophoneHearing
from kiosk.listening.microphone import NoMicrophone, open_microphone
from kiosk.screens.app import KioskApp
from kiosk.screens.stand_in import NoHearing
from kiosk.shop import Shop
from kiosk.speaking.voice import open_voice
from kiosk.walk import Hearing


def open_kiosk(shop: Shop, *, silent: bool = False, deaf: bool = False) -> int:
    """Show the board until it is left; return the exit status. Opens no speaker when `silent`."""
    opened: list[MicrophoneHearing] = []

    def open_hearing(on_heard: Callable[[Heard], None], on_changed: Callable[[], None]) -> Hearing:
        try:
            source = open_microphone()
        except NoMicrophone as error:
            return NoHearing(str(error))
        hearing = MicrophoneHearing(source, on_heard, on_changed, shop.folder)
        opened.append(hearing)
        return hearing

    app = KioskApp(
        shop,
        None if silent else lambda: open_voice(shop.folder / "prompts"),
        None if deaf else open_hearing,
    )
    try:
        app.run()
    finally:
        for hearing in opened:
            hearing.stop()
    return app.return_code or 0

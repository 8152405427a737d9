"""Opens the application with the voice and the ear of this machine."""

from __future__ import annotations

import time
from collections.abc import Callable

from kiosk.listening.hearing import MicrophoneHearing
from kiosk.listening.microphone import NoMicrophone, open_microphone
from kiosk.procedure import site
from kiosk.push_to_talk import OnHeard, PushToTalk
from kiosk.screens.app import KioskApp
from kiosk.screens.stand_in import NoHearing
from kiosk.shop import Shop
from kiosk.speaking.voice import open_voice
from kiosk.walk import Hearing


def behind_key(
    wanted: site.Hearing,
    opened_for: Callable[[OnHeard], Hearing],
    on_heard: OnHeard,
    on_changed: Callable[[], None],
) -> Hearing:
    """Return the ear as the site wants it: open all the time, or behind the key to talk."""
    if wanted.push_to_talk:
        return PushToTalk(opened_for, on_heard, on_changed, time.monotonic, wanted.key)
    return opened_for(on_heard)


def open_kiosk(shop: Shop, *, silent: bool = False, deaf: bool = False) -> int:
    """Show the board until it is left; return the exit status. Opens no speaker when `silent`."""
    opened: list[MicrophoneHearing] = []

    def open_hearing(on_heard: OnHeard, on_changed: Callable[[], None]) -> Hearing:
        try:
            source = open_microphone()
        except NoMicrophone as error:
            return NoHearing(str(error))

        def opened_for(tell: OnHeard) -> MicrophoneHearing:
            hearing = MicrophoneHearing(source, tell, on_changed, shop.folder)
            opened.append(hearing)
            return hearing

        return behind_key(shop.site.hearing, opened_for, on_heard, on_changed)

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

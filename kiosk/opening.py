"""Opens the application with the voice and the ear of this machine."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from functools import partial

from kiosk.listening.echo import EchoFilter, NoEchoFilter
from kiosk.listening.hearing import MicrophoneHearing
from kiosk.listening.in_use import Hearing
from kiosk.listening.microphone import NoMicrophone, open_microphone
from kiosk.listening.reference import Reference
from kiosk.procedure import site
from kiosk.push_to_talk import OnHeard, PushToTalk
from kiosk.screens.app import KioskApp
from kiosk.screens.stand_in import NoHearing
from kiosk.shop import Shop
from kiosk.speaking.announced import AnnouncedVoice
from kiosk.speaking.recordings import Recordings
from kiosk.speaking.tone import tones_of
from kiosk.speaking.voice import Voice, open_voice


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


def open_kiosk(
    shop: Shop,
    *,
    silent: bool = False,
    deaf: bool = False,
    review: bool = False,
    show: Callable[[KioskApp], object] = KioskApp.run,
) -> int:
    """Show the board until it is left; return the exit status. Opens no speaker when `silent`.

    `review` begins with the supervisor's review, over the board. `show` runs the application
    elsewhere than in this terminal.
    """
    trouble = shop.mind_people()
    if trouble:
        print(f"Names and remarks cannot be kept: {trouble}", file=sys.stderr)
    opened: list[MicrophoneHearing] = []
    reference = Reference()
    echo = echo_filter(reference) if shop.site.hearing.cut_short else None

    def open_aloud() -> Voice:
        how = partial(
            open_voice,
            shop.folder / "prompts",
            tones=tones_of(shop.site),
            recordings=Recordings(shop.folder),
        )
        if echo is None:
            return how()

        def tell(text: str) -> None:
            for hearing in opened:
                hearing.saying(text)

        return AnnouncedVoice(how(tap=reference.put), tell)

    def open_hearing(on_heard: OnHeard, on_changed: Callable[[], None]) -> Hearing:
        try:
            source = open_microphone()
        except NoMicrophone as error:
            return NoHearing(str(error))

        def opened_for(tell: OnHeard) -> MicrophoneHearing:
            hearing = MicrophoneHearing(source, tell, on_changed, shop.folder, echo)
            opened.append(hearing)
            return hearing

        return behind_key(shop.site.hearing, opened_for, on_heard, on_changed)

    app = KioskApp(
        shop,
        None if silent else open_aloud,
        None if deaf else open_hearing,
        review=review,
    )
    try:
        show(app)
    finally:
        for hearing in opened:
            hearing.stop()
    return app.return_code or 0


def echo_filter(reference: Reference) -> EchoFilter | None:
    """Return what takes the kiosk's voice out of the microphone, or say why there is nothing.

    Without it no prompt can be cut short, and all else is as ever.
    """
    try:
        return EchoFilter(reference)
    except NoEchoFilter as error:
        print(f"Prompts cannot be cut short by speaking here: {error}", file=sys.stderr)
        return None

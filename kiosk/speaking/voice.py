"""The kiosk's voice: what it promises, and how it is opened on this machine."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import partial
from pathlib import Path
from typing import Protocol, runtime_checkable

from kiosk.speaking.kiosk_voice import KioskVoice
from kiosk.speaking.player import NoSpeaker, Player, Tap, open_player
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recordings import Recordings
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.shop_prompts import ShopPrompts
from kiosk.speaking.tone import Tones, usual
from kiosk.speaking.voices import SpeechFailed

__all__ = ["KioskVoice", "Plays", "SilentVoice", "Suits", "Voice", "open_voice", "suit"]


class Voice(Protocol):
    """Says one sentence at a time."""

    notice: str
    """Empty while the voice can be heard, else the plain reason why not."""

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        """Start saying `text`, cutting off what is being said; returns at once.

        `on_end` is called exactly once, from any thread: when the text ended, was cut off, or could
        not be said. It must only post.
        """
        ...

    def prepare(self, texts: Iterable[str], language: str) -> None:
        """Render texts ahead, in the background."""
        ...

    def hush(self) -> None:
        """Fall silent; what is being said ends."""
        ...

    def close(self) -> None:
        """Fall silent for good."""
        ...


@runtime_checkable
class Plays(Protocol):
    """A voice that can also play a sound from a file."""

    def play(self, sound: Path, on_end: Callable[[], None]) -> None:
        """Play a wave file in place of what is being said; the end is told as that of a text.

        Afterwards the voice's notice says why it could not be heard, if so.
        """
        ...


@runtime_checkable
class Suits(Protocol):
    """A voice that speaks to each person as they want it."""

    def suit(self, person: str) -> None:
        """Speak to this person from the next text on; '' for nobody in particular."""
        ...


class SilentVoice:
    """The voice of a kiosk that cannot be heard: every text ends at once."""

    def __init__(self, notice: str) -> None:
        self.notice = notice

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:  # noqa: ARG002
        """End at once."""
        on_end()

    def prepare(self, texts: Iterable[str], language: str) -> None:
        """There is nothing to render for."""

    def hush(self) -> None:
        """It is silent already."""

    def close(self) -> None:
        """There is nothing to give back."""


def suit(voice: Voice, person: str) -> None:
    """Have a voice speak as a person wants it, if it can."""
    if isinstance(voice, Suits):
        voice.suit(person)


def open_voice(
    cache_folder: Path,
    tap: Tap | None = None,
    tones: Tones | None = None,
    recordings: Recordings | None = None,
) -> Voice:
    """Return the kiosk's voice, or a silent one whose notice says what is missing.

    `cache_folder` keeps the rendered prompts and is made if needed; a `tap` is told what the
    loudspeaker is given. `tones` are how each person wants it, and `recordings` take the place of
    what the synthesiser would say.
    """
    reopen: Callable[[], Player] = open_player if tap is None else partial(open_player, tap=tap)
    try:
        player = reopen()
    except NoSpeaker as failure:
        return SilentVoice(str(failure))
    renderer = Renderer()
    try:
        prompts = ShopPrompts(PromptCache(cache_folder, renderer), tones or usual, recordings)
    except SpeechFailed as failure:
        player.close()
        return SilentVoice(str(failure))
    return KioskVoice(prompts, player, reopen, on_close=renderer.close)

"""Spoken remarks in the review: at their place, checked by their hash, played or why not."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

import pytest

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import KeptTimeOver, PersonErased, RemarkRecorded, ShopEvent
from kiosk.remarks.sounds import Sounds
from kiosk.screens.review_session import SessionScreen
from kiosk.speaking.announced import AnnouncedVoice
from kiosk.speaking.voice import SilentVoice
from tests.screens.review_scene import SHOP, page, reviewing, speaking, text_of
from tests.screens.scene import Kiosk
from tests.screens.test_looks import SIZES, poor_texts, small_targets

WORKER = SHOP.people[0]
TOUCH = Evidence(Channel.TOUCH)
SOUND = b"RIFF, and what was said"


class Player:
    """A voice that plays, and remembers what; each sound ends when the test says so."""

    notice = ""

    def __init__(self) -> None:
        self.played: list[Path] = []
        self.ends: list[Callable[[], None]] = []
        self.hushed = 0

    def play(self, sound: Path, on_end: Callable[[], None]) -> None:
        self.played.append(sound)
        self.ends.append(on_end)

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None: ...

    def prepare(self, texts: Iterable[str], language: str) -> None: ...

    def hush(self) -> None:
        self.hushed += 1

    def close(self) -> None: ...


def tell(it: Kiosk, at_utc: float, fact: object) -> None:
    at = Instant(at_utc, 1.0, "boot-1")
    it.app.shop.journal.append_shop([ShopEvent(at, TOUCH, fact)])


async def session_with(it: Kiosk, *seconds: float) -> list[str]:
    """Leave remarks in the newest session, half a second after its third step was entered, and
    open its page; return the hashes of their sounds."""
    desk = page(it).desk
    line = desk.ledger.lines(practice=True, limit=1)[0]
    stays = desk.ledger.record(line.session).steps
    hashes = []
    for number, length in enumerate(seconds):
        sha256 = Sounds(it.app.shop.folder).keep(SOUND + bytes([number]))
        stay = stays[2 + number]
        fact = RemarkRecorded(line.session, stay.step, WORKER.id, sha256, length, True)
        tell(it, stay.entered_utc + 0.5, fact)
        hashes.append(sha256)
    it.app.push_screen(SessionScreen(desk, line.session))
    await it.settle()
    return hashes


def player(it: Kiosk) -> Player:
    it.app.voice = made = Player()
    return made


async def test_a_remark_stands_at_its_place_with_its_length_and_hash(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        (sha256,) = await session_with(it, 12.4)
        text = text_of(it)
        at = text.index(f"Spoken remark of {WORKER.name}, 12 seconds")
        assert f"SHA-256 of its sound: {sha256[:16]} …" in text
        stays = page(it).desk.ledger.record(page(it).session).steps
        clock = page(it).desk.clock_time
        before, after = clock(stays[2].entered_utc), clock(stays[3].entered_utc)
        assert text.index(before, text.index("Timeline")) < at < text.rindex(after)


async def test_a_session_without_remarks_offers_none_to_play(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        await session_with(it)
        assert "Spoken remark" not in text_of(it)
        assert "play a remark" not in [one.label for one in page(it).ways()]


async def test_it_is_played_to_its_end(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        (sha256,) = await session_with(it, 12.4)
        assert voice.played == []
        await it.press("p")
        assert voice.played == [tmp_path / "remarks" / f"{sha256}.wav"]
        assert f"Playing the remark of {WORKER.name}, 12 seconds." in it.words()
        assert "stop playing" in [one.label for one in page(it).ways()]
        voice.ends[0]()
        await it.settle()
        assert "Playing" not in it.words()
        assert "play a remark" in [one.label for one in page(it).ways()]


async def test_it_can_be_stopped_and_stops_when_the_page_is_left(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        await session_with(it, 12.4)
        await it.press("p", "p")
        assert voice.hushed == 1
        voice.ends[0]()
        await it.press("p")
        assert len(voice.played) == 2
        assert "Playing" in it.words()
        await it.press("escape")
        assert voice.hushed == 2
        assert not isinstance(it.app.screen, SessionScreen)


async def test_of_several_it_is_asked_which(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        hashes = await session_with(it, 12.4, 3.0)
        await it.press("p")
        assert "Which remark?" in it.words()
        await it.press("2")
        assert voice.played == [tmp_path / "remarks" / f"{hashes[1]}.wav"]


async def test_a_sound_with_another_hash_is_not_played(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        (sha256,) = await session_with(it, 12.4)
        Sounds(tmp_path).file(sha256).write_bytes(b"RIFF, and what was never said")
        await it.press("p")
        assert "It cannot be played." in it.words()
        assert "its hash is another one" in it.words()
        assert voice.played == []


async def test_a_sound_that_is_gone_is_said(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        (sha256,) = await session_with(it, 12.4)
        Sounds(tmp_path).file(sha256).unlink()
        await it.press("p")
        assert "There is no sound with this hash" in it.words()
        assert voice.played == []


@pytest.mark.parametrize(
    ("fact", "told"),
    [
        (lambda sha256: PersonErased(WORKER.id, "p5", 0, (sha256,)),
         "Its sound was erased on 2026-03-21 06:00; Priya Nair asked for it."),
        (lambda sha256: KeptTimeOver((), 0, (sha256,)),
         "Its sound was erased on 2026-03-21 06:00, for remarks are kept here no longer."),
    ],
    ids=["person", "time"],
)  # fmt: skip
async def test_an_erased_remark_says_when_and_by_whom_and_keeps_its_hash(
    history, tmp_path, fact, told
):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        (sha256,) = await session_with(it, 12.4)
        tell(it, 1_774_072_800.0, fact(sha256))
        await it.press("escape")
        it.app.push_screen(SessionScreen(page(it).desk, page(it).desk.ledger.lines(
            practice=True, limit=1)[0].session))  # fmt: skip
        await it.settle()
        assert told in text_of(it)
        assert sha256[:16] in text_of(it)
        await it.press("p")
        assert f"It cannot be played. {told}" in it.words()
        assert voice.played == []


@pytest.mark.parametrize("announced", [False, True])
async def test_without_a_speaker_it_says_why(history, tmp_path, announced):
    async with reviewing(history, tmp_path) as it:
        silent = SilentVoice("no sound device was found")
        it.app.voice = AnnouncedVoice(silent, lambda _: None) if announced else silent
        await session_with(it, 12.4)
        await it.press("p")
        assert "It cannot be played. no sound device was found" in it.words()
        assert "play a remark" in [one.label for one in page(it).ways()]


async def test_a_speaker_that_breaks_while_it_plays_is_said(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        voice = player(it)
        await session_with(it, 12.4)
        await it.press("p")
        voice.notice = "the loudspeaker stopped taking sound"
        voice.ends[0]()
        await it.settle()
        assert "It cannot be played. the loudspeaker stopped taking sound" in it.words()


@pytest.mark.parametrize(
    ("size", "language"), [*((size, "en") for size in SIZES), (SIZES[0], "ko")], ids=str
)
async def test_it_is_clear_and_every_target_large(history, tmp_path, size, language):
    async with reviewing(history, tmp_path, size, speaking(language)) as it:
        player(it)
        await session_with(it, 12.4)
        await it.press("p")
        assert poor_texts(it) == []
        assert small_targets(it) == []
        assert it.app.screen.words.say("remark-stop") in it.labels()

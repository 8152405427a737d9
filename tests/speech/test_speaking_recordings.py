"""A crew's recordings: found by the exact text alone, kept whole, erased with their speaker."""

from __future__ import annotations

import random
import re
import stat
import wave
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.engine.commands import Instant, Start
from kiosk.engine.offers import offers
from kiosk.engine.prompt import prompt
from kiosk.languages.words import languages, words
from kiosk.procedure.model import Text
from kiosk.speaking.player import RATE
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recording_round import RecordingRound
from kiosk.speaking.recordings import (
    JOINED,
    Recording,
    Recordings,
    RecordingsFailed,
    standing,
)
from kiosk.speaking.sentences import said_on, sentences
from kiosk.speaking.shop_prompts import ShopPrompts
from kiosk.speaking.takes import LOUDNESS, Flaw, judged
from kiosk.speaking.tone import Tone
from kiosk.speaking.waves import PAUSE_S, Samples, as_wave, at_rate
from kiosk.speaking.waves import read as read_wave
from tests.plans import EVERY_KIND, Walker

MICROPHONE = 16_000


def hum(seconds: float, loudness: float = LOUDNESS, rate: int = RATE) -> Samples:
    """A voice of sorts: 200 Hz that rises and falls four times a second."""
    time = np.arange(round(seconds * rate)) / rate
    swell = np.abs(np.sin(2 * np.pi * 2 * time))
    tone = np.sin(2 * np.pi * 200 * time) * swell
    return (tone * loudness / np.sqrt(np.mean(tone**2))).astype(np.float32)


def taken(*parts: Samples | float, room: float = 1e-4) -> Samples:
    """A take at the microphone's rate: sounds, and seconds of a room between them."""
    chance = np.random.default_rng(1)
    whole = np.concatenate(
        [np.zeros(round(p * MICROPHONE)) if isinstance(p, float) else p for p in parts]
    )
    return (whole + chance.normal(0, room, len(whole))).astype(np.float32)


def speech(seconds: float = 2.0, loudness: float = LOUDNESS) -> Samples:
    return hum(seconds, loudness, MICROPHONE)


class Synthesiser:
    """Renders every text as half a second at 0.25, and keeps count."""

    version = "1"

    def __init__(self) -> None:
        self.asked: list[tuple[str, int, int, int]] = []

    def render(self, speech, into) -> float:
        self.asked.append((speech.text, speech.rate, speech.pitch, speech.volume))
        into.write_bytes(as_wave(np.full(RATE // 2, 0.25, dtype=np.float32)))
        return 0.5


@pytest.fixture
def recordings(tmp_path: Path) -> Recordings:
    return Recordings(tmp_path)


@pytest.fixture
def synthesiser() -> Synthesiser:
    return Synthesiser()


@pytest.fixture
def prompts(tmp_path: Path, synthesiser: Synthesiser, recordings: Recordings) -> ShopPrompts:
    cache = PromptCache(tmp_path / "prompts", synthesiser)
    return ShopPrompts(cache, recordings=recordings)


def recorded(recordings: Recordings, text: str, by: str = "p2", language: str = "en") -> Path:
    one = Recording(text=text, language=language, by=by, at_utc=1_000.0)
    return recordings.keep(one, np.full(RATE, 0.125, dtype=np.float32))


# Which sentences there are.


def dot(text: Text | None) -> Text | None:
    return None if text is None else {name: f"{said}." for name, said in text.items()}


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("Warning. Hot water. Wear gloves.", ["Warning.", "Hot water.", "Wear gloves."]),
        ("I heard 38.5 degrees. Yes or no?", ["I heard 38.5 degrees.", "Yes or no?"]),
        ("关掉机器。拔掉插头。对吗？", ["关掉机器。", "拔掉插头。", "对吗？"]),
        ("¿Está limpio? Diga sí o no.", ["¿Está limpio?", "Diga sí o no."]),
        ("no full stop", ["no full stop"]),
        ("  ", []),
    ],
)
def test_a_text_is_parted_into_its_sentences(text: str, parts: list[str]):
    assert sentences(text) == parts


@given(st.lists(st.text("abc ñ한.?!。", min_size=1), max_size=5).map(" ".join))
def test_nothing_is_lost_by_parting(text: str):
    assert "".join("".join(sentences(text)).split()) == "".join(text.split())


@pytest.mark.parametrize("language", languages())
def test_all_that_walks_of_every_kind_say_without_a_number_can_be_recorded(language: str):
    speaks, chance = words(language), random.Random(1)
    told = {
        name: replace(one, present=dot(one.present), without=dot(one.without))
        for name, one in EVERY_KIND.conditions.items()
    }
    walked = replace(EVERY_KIND, conditions=told)
    known = set(said_on(walked, speaks))
    heard: set[str] = set()
    for _ in range(30):
        walker = Walker(walked).all(Start("ana", language))
        for _ in range(80):
            heard.update(sentences(speaks.spoken(prompt(walker.plan, walker.state))))
            walker.now += 90
            at = Instant(walker.now, walker.now, walker.boot)
            open_now = offers(walker.plan, walker.state, at)
            if not open_now:
                break
            # Mostly what is offered first, which leads on.
            walker.do(open_now[0] if chance.random() < 0.6 else chance.choice(open_now))
    list_of = tuple(sentences(speaks.say(name))[-1] for name in ("aborted", "out-of-service"))
    made = {one for one in heard if one.startswith(list_of) or re.search(r"\d", one)}
    assert len(heard - made) > 35
    assert heard - made <= known
    assert not any(one.endswith((":", "：")) for one in known)


# What is kept.


def test_a_recording_is_found_by_its_exact_text_alone(recordings: Recordings):
    file = recorded(recordings, "Pull the plug.")
    assert recordings.find("Pull the plug.", "en") == file
    assert recordings.find(" Pull  the plug. ", "en") == file
    for other in ("Pull the plug", "pull the plug.", "Pull the plugs."):
        assert recordings.find(other, "en") is None
    assert recordings.find("Pull the plug.", "es") is None


def test_only_the_owner_may_read_it(recordings: Recordings):
    file = recorded(recordings, "Pull the plug.")
    for one in (file, file.with_suffix(".json")):
        assert stat.S_IMODE(one.stat().st_mode) == 0o600
    assert stat.S_IMODE(file.parent.stat().st_mode) == 0o700


def test_a_half_written_or_orphaned_wave_is_none(recordings: Recordings):
    file = recorded(recordings, "Pull the plug.")
    whole = file.read_bytes()
    file.write_bytes(whole[: len(whole) // 2])
    assert recordings.find("Pull the plug.", "en") is None
    assert recordings.listed("en") == ()
    file.write_bytes(whole)
    file.with_suffix(".json").unlink()
    assert recordings.find("Pull the plug.", "en") is None


@pytest.mark.parametrize(
    "index",
    [b"", b"[]", b"null", b'{"text": 1}', b"\xff", b"[" * 100_000,
     b'{"text": "Pull the plug.", "language": "en", "by": "p2", "at_utc": 1e99}',
     b'{"text": "Pull the plug.", "language": "es", "by": "p2", "at_utc": 1}',
     b'{"text": "Another text.", "language": "en", "by": "p2", "at_utc": 1}'],
)  # fmt: skip
def test_a_spoilt_index_is_nobodys_and_goes_with_anybodys_erasing(
    recordings: Recordings, index: bytes
):
    file = recorded(recordings, "Pull the plug.")
    file.with_suffix(".json").write_bytes(index)
    assert recordings.listed("en") == ()
    assert recordings.erase("somebody else") == 0
    assert not file.exists()
    assert not file.with_suffix(".json").exists()


def test_all_of_a_person_is_erased_and_nothing_of_another(
    recordings: Recordings, prompts: ShopPrompts
):
    recorded(recordings, "Pull the plug.")
    recorded(recordings, "Tire del enchufe.", language="es")
    stays = recorded(recordings, "Wear gloves.", by="p3")
    prompts.wave("Pull the plug. And then this.", "en")
    assert recordings.erase("p2") == 2
    left = {one for one in recordings.folder.rglob("*") if one.is_file()}
    assert left == {stays, stays.with_suffix(".json")}


def test_what_is_recorded_missing_and_stale_is_told(recordings: Recordings):
    recorded(recordings, "Pull the plug.")
    recorded(recordings, "Pull the big plug.")
    stands = standing(recordings, ["Wear gloves.", "Pull the  plug."], "en")
    assert [one.text for one in stands.recorded] == ["Pull the plug."]
    assert stands.missing == ("Wear gloves.",)
    assert [one.text for one in stands.stale] == ["Pull the big plug."]


def test_a_folder_in_the_way_is_a_sentence(tmp_path: Path, recordings: Recordings):
    recordings.folder.write_text("in the way")
    with pytest.raises(RecordingsFailed, match=r"recordings.*Make that folder writable"):
        recorded(recordings, "Pull the plug.")


# What is said.


def test_without_a_recording_the_prompt_is_rendered_in_one(
    prompts: ShopPrompts, synthesiser: Synthesiser
):
    prompts.wave("Pull the plug. Wear gloves.", "en")
    assert [text for text, *_ in synthesiser.asked] == ["Pull the plug. Wear gloves."]


def test_a_prompt_that_was_recorded_whole_is_that_file(
    prompts: ShopPrompts, recordings: Recordings, synthesiser: Synthesiser
):
    assert prompts.wave("Pull the plug.", "en") != recorded(recordings, "Pull the plug.")
    assert prompts.wave("Pull the plug.", "en") == recordings.find("Pull the plug.", "en")
    assert len(synthesiser.asked) == 1


def test_recorded_sentences_stand_among_rendered_ones(
    prompts: ShopPrompts, recordings: Recordings, synthesiser: Synthesiser
):
    recorded(recordings, "Pull the plug.")
    file = prompts.wave("I heard 38.5 degrees. Pull the plug. Yes or no?", "en")
    assert file == recordings.folder / JOINED
    assert [text for text, *_ in synthesiser.asked] == ["I heard 38.5 degrees.", "Yes or no?"]
    heard, pause = read_wave(file), round(PAUSE_S * RATE)
    levels = [0.25] * (RATE // 2) + [0] * pause + [0.125] * RATE + [0] * pause
    assert heard == pytest.approx([*levels, *[0.25] * (RATE // 2)], abs=1e-4)


def test_what_is_made_ready_leaves_what_is_being_played_alone(
    prompts: ShopPrompts, recordings: Recordings, synthesiser: Synthesiser
):
    recorded(recordings, "Pull the plug.")
    playing = prompts.wave("Pull the plug. Yes or no?", "en").read_bytes()
    prompts.ready("Pull the plug. Wear gloves.", "en")
    prompts.ready("Wash your hands. Wear gloves.", "en")
    assert (recordings.folder / JOINED).read_bytes() == playing
    rendered = ["Yes or no?", "Wear gloves.", "Wash your hands. Wear gloves."]
    assert [text for text, *_ in synthesiser.asked] == rendered


def test_an_edited_sentence_is_said_by_the_synthesiser_again(
    prompts: ShopPrompts, recordings: Recordings, synthesiser: Synthesiser
):
    recorded(recordings, "Pull the plug.")
    prompts.wave("Pull the plug out.", "en")
    assert [text for text, *_ in synthesiser.asked] == ["Pull the plug out."]


def test_no_voice_of_a_person_is_kept_among_the_rendered_prompts(
    prompts: ShopPrompts, recordings: Recordings, tmp_path: Path
):
    recorded(recordings, "Pull the plug.")
    prompts.wave("Pull the plug. Yes or no?", "en")
    for one in (tmp_path / "prompts").iterdir():
        assert set(read_wave(one).tolist()) == {np.float32(round(0.25 * 32_767) / 32_768)}


def test_what_cannot_be_joined_is_said_by_the_synthesiser(
    prompts: ShopPrompts, recordings: Recordings, synthesiser: Synthesiser
):
    file = recorded(recordings, "Pull the plug.")
    with wave.open(str(file), "wb") as other:
        other.setnchannels(1)
        other.setsampwidth(1)
        other.setframerate(RATE)
        other.writeframes(bytes(100))
    prompts.wave("Pull the plug. Wear gloves.", "en")
    assert synthesiser.asked[-1][0] == "Pull the plug. Wear gloves."


def test_a_persons_tone_shapes_both_kinds(
    tmp_path: Path, recordings: Recordings, synthesiser: Synthesiser
):
    tones = {"p2": Tone(rate=80, pitch=120, volume=50)}
    prompts = ShopPrompts(
        PromptCache(tmp_path, synthesiser),
        lambda language, person: tones.get(person, Tone()),
        recordings,
    )
    recorded(recordings, "Pull the plug.")
    heard = read_wave(prompts.wave("Pull the plug. Wear gloves.", "en", "p2"))
    assert synthesiser.asked == [("Wear gloves.", 120, 120, 50)]
    assert heard[0] == pytest.approx(0.125 / 2, abs=1e-4)
    assert read_wave(prompts.wave("Pull the plug.", "en", "p2")).max() == pytest.approx(
        0.0625, abs=1e-4
    )
    prompts.wave("Wear gloves.", "en", "p3")
    assert synthesiser.asked[1:] == [("Wear gloves.", 150, 100, 100)]


# Takes.


def test_a_good_take_is_trimmed_and_made_as_loud_as_the_voice():
    take = judged(taken(1.0, speech(loudness=0.03), 2.0), MICROPHONE, usual_s=2.0)
    assert take.flaws == ()
    assert take.seconds == pytest.approx(2.3, abs=0.1)
    assert take.level_db == pytest.approx(20 * np.log10(0.03), abs=1.0)
    middle = take.samples[RATE // 2 : -RATE // 2]
    assert np.sqrt(np.mean(middle**2)) == pytest.approx(LOUDNESS, rel=0.1)
    assert np.abs(take.samples[:3]).max() < 1e-3


@pytest.mark.parametrize(
    ("samples", "usual_s", "flaws"),
    [
        (taken(3.0), 2.0, {Flaw.SILENT}),
        (np.zeros(0, dtype=np.float32), 2.0, {Flaw.SILENT}),
        (np.zeros(48_000, dtype=np.float32), 2.0, {Flaw.SILENT}),
        (taken(3.0, room=0.05), 2.0, {Flaw.SILENT}),
        (taken(1.0, speech(loudness=0.006), 2.0), 2.0, {Flaw.QUIET}),
        (np.clip(taken(1.0, speech(loudness=0.9), 2.0), -1, 1), 2.0, {Flaw.CLIPPED}),
        (taken(speech(), 2.0), 2.0, {Flaw.BEGINS_CUT}),
        (taken(1.0, speech()), 2.0, {Flaw.ENDS_CUT}),
        (taken(1.0, speech(), 2.0, room=0.03), 2.0, {Flaw.NOISY}),
        (taken(1.0, speech(0.8), 2.0), 2.0, {Flaw.SHORT}),
        (taken(1.0, speech(7.0), 2.0), 2.0, {Flaw.LONG}),
        (taken(1.0, speech(7.0), 2.0), 0.0, set()),
    ],
)
def test_what_is_wrong_with_a_take_is_named(samples: Samples, usual_s: float, flaws: set[Flaw]):
    assert set(judged(samples, MICROPHONE, usual_s).flaws) == flaws


@pytest.mark.parametrize(("rate", "to"), [(16_000, 22_050), (22_050, 16_000), (48_000, 22_050)])
def test_another_rate_keeps_length_pitch_and_level(rate: int, to: int):
    time = np.arange(rate) / rate
    sound = (np.sin(2 * np.pi * 440 * time) * np.hanning(rate)).astype(np.float32)
    wanted = np.sin(2 * np.pi * 440 * np.arange(to) / to) * np.hanning(to)
    assert at_rate(sound, rate, to) == pytest.approx(wanted, abs=2e-3)


# A round.


def test_a_round_keeps_what_is_good_and_nothing_else(recordings: Recordings):
    asked = ["Pull the plug.", "Wear gloves.", "Wash your hands."]
    going = RecordingRound(asked, "en", "p2", recordings, lambda sentence: 2.0)
    assert (going.place, going.count, going.sentence) == (1, 3, "Pull the plug.")
    with pytest.raises(ValueError, match="no take"):
        going.keep(5.0)
    assert going.take(taken(3.0), MICROPHONE).flaws == (Flaw.SILENT,)
    with pytest.raises(ValueError, match="no take"):
        going.keep(5.0)
    with pytest.raises(ValueError, match="no take to play"):
        going.preview()
    going.take(taken(1.0, speech(), 2.0), MICROPHONE)
    assert read_wave(going.preview()) == pytest.approx(going.last.samples, abs=1e-4)
    going.keep(5.0)
    assert going.sentence == "Wear gloves."
    assert not going.usable
    going.skip()
    going.take(taken(1.0, speech(loudness=0.006), 2.0), MICROPHONE)
    going.keep(6.0)
    assert (going.sentence, going.kept) == (None, 2)
    kept = recordings.listed("en")
    assert [(one.text, one.by, one.at_utc) for one in kept] == [
        ("Pull the plug.", "p2", 5.0),
        ("Wash your hands.", "p2", 6.0),
    ]


def test_a_later_recording_takes_the_place_of_the_earlier(recordings: Recordings):
    recorded(recordings, "Pull the plug.", by="p2")
    recorded(recordings, "Pull the plug.", by="p3")
    assert [one.by for one in recordings.listed("en")] == ["p3"]
    assert recordings.erase("p2") == 0

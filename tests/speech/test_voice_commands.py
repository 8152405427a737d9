"""`kiosk voice test` and `kiosk voice teach`, from their words to their exit status."""

from __future__ import annotations

import argparse
import wave
from collections.abc import Iterator
from importlib import util
from pathlib import Path

import numpy as np
import pytest

from kiosk.cli import voice_teach, voice_test
from kiosk.cli.place import Failed
from kiosk.languages.words import words
from kiosk.listening.ear import RATE, Heard
from kiosk.listening.endpoint import FRAME_S
from kiosk.listening.microphone import NoMicrophone
from kiosk.listening.models import Missing
from kiosk.listening.own_words import TEACHABLE, taught
from kiosk.listening.sources import Samples
from kiosk.listening.taking import READING_S, SoundEnded, Taker
from tests.speech.clips import Sound, ear_or_skip
from tests.speech.kitchen import in_kitchen

pytestmark = pytest.mark.skipif(
    util.find_spec("espeakng_loader") is None, reason="espeakng-loader, which speaks, is missing"
)

PHRASES = [words("en").phrases(act)[0] for act in voice_test.ACTS]


def say(text: str, rate: int = 150, pitch: int = 50) -> Sound:
    from tests.speech.synth import speaker

    return speaker().say(text, "en-us", rate, pitch)


def still(seconds: float) -> Sound:
    return np.zeros(round(seconds * RATE), dtype=np.float32)


def lengthened(sound: Sound, seconds: float) -> Sound:
    """The sound, filled up or cut to so many seconds in whole frames."""
    count = round(seconds / FRAME_S) * round(FRAME_S * RATE)
    return np.pad(sound, (0, max(0, count - len(sound))))[:count]


def visit(phrases: list[str]) -> Sound:
    talk = np.tile(say("I speak as I speak to the kiosk"), 3)
    return np.concatenate(
        [
            lengthened(talk, voice_test.SPEAK_S),
            lengthened(still(1), voice_test.SILENT_S),
            *(np.concatenate([say(one), still(0.5)]) for one in phrases),
            still(1),
        ]
    )


def write(path: Path, sound: Sound) -> Path:
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(RATE)
        file.writeframes((np.clip(sound, -1, 1) * 32767).astype("<i2").tobytes())
    return path


def run(module, *arguments: str) -> int:
    parser = argparse.ArgumentParser()
    module.add(parser.add_subparsers(required=True))
    parsed = parser.parse_args(arguments)
    return parsed.command(parsed)


@pytest.fixture(autouse=True)
def data_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    return tmp_path


class Known:
    """An ear that hears what it was told that will be said, one after the other."""

    name, language = "known", "en"

    def __init__(self, answers: list[str | None]) -> None:
        self.answers: Iterator[str | None] = iter(answers)
        self.allowed: set[tuple[str, ...]] = set()

    def hear(self, utterance, allowed) -> Heard:
        self.allowed.add(tuple(allowed))
        phrase = next(self.answers)
        return Heard("", phrase, 0.9, self.name, "" if phrase else "nothing", 0.1, 0.0)


def loud(frame: Sound) -> float:
    """A detector that takes everything loud for speech: the speech in these files is."""
    return float(np.abs(frame).max() > 0.02)


def trial(sound: Sound, ear, detector=loud) -> tuple[bool, str]:
    told: list[str] = []
    taker = Taker(Samples(sound), detector)
    good = voice_test.Trial(taker, words("en"), told.append).run(ear)
    return good, "\n".join(told)


def test_a_good_place_is_called_good():
    ear = Known(list(PHRASES))
    good, told = trial(visit(PHRASES), ear)
    assert good, told
    assert ear.allowed == {tuple(PHRASES)}
    assert "This place is good enough" in told
    assert "Of 10, 10 were understood, 0 were not, and 0 were taken for something else." in told
    assert "10/10: close the machine" in told
    assert "The noise was not taken for speech." in told


def test_wrong_and_missed_commands_are_counted_and_called_not_good():
    answers = [*PHRASES[:6], None, None, "yes", PHRASES[9]]
    good, told = trial(visit(PHRASES), Known(answers))
    assert not good
    assert "Of 10, 7 were understood, 2 were not, and 1 were taken for something else." in told
    assert "taken for “yes”" in told
    assert "- Until then, work by touch" in told


def test_noise_while_nobody_speaks_is_told_of():
    sound = visit(PHRASES)
    start = round(voice_test.SPEAK_S * RATE)
    talk = say("somebody else is talking here")
    sound[start + RATE : start + RATE + len(talk)] = talk
    good, told = trial(sound, Known(list(PHRASES)))
    assert not good
    assert "The noise was taken for speech" in told
    assert "push_to_talk = true" in told


def test_a_kitchen_as_loud_as_the_voice_asks_for_another_place():
    sound = in_kitchen(visit(PHRASES), 5, 1)
    _, told = trial(sound, Known([*PHRASES, *PHRASES]), detector=None)
    assert "It is loud here" in told


def test_without_an_ear_it_says_what_to_do():
    good, told = trial(visit([]), Missing("en", "no speech model for 'en' is installed"))
    assert not good
    assert "no speech model for 'en' is installed" in told
    assert "The kiosk has no ear for this language" in told


def test_silence_says_that_nothing_was_heard():
    _, told = trial(still(80), Known([]))
    assert "No speech was heard" in told
    assert told.count("nothing was heard") == 10


def test_the_real_ear_hears_ten_commands_in_a_file(tmp_path: Path, capsys):
    ear_or_skip("en")
    file = write(tmp_path / "visit.wav", visit(PHRASES))
    status = run(voice_test, "test", "--language", "en", "--source", str(file))
    told = capsys.readouterr().out
    assert status == 0, told
    assert "This place is good enough" in told


def test_no_microphone_is_a_plain_sentence(monkeypatch: pytest.MonkeyPatch):
    def none() -> None:
        raise NoMicrophone("no microphone (device not found)")

    monkeypatch.setattr(voice_test, "open_microphone", none)
    with pytest.raises(Failed, match="Nothing can be heard here: no microphone"):
        run(voice_test, "test")
    with pytest.raises(Failed, match="Nothing can be heard here: no microphone"):
        run(voice_teach, "teach", "--worker", "p1")


def test_a_file_that_ends_too_soon_or_is_no_sound_says_so(tmp_path: Path):
    short = write(tmp_path / "short.wav", still(1))
    with pytest.raises(Failed, match="the sound has ended"):
        run(voice_test, "test", "--source", str(short))
    with pytest.raises(Failed, match="there is no sound file"):
        run(voice_test, "test", "--source", str(tmp_path / "none.wav"))


def test_an_unknown_language_and_an_unknown_worker_are_named():
    with pytest.raises(Failed, match=r"no words in 'zz'\. It speaks: en, es, ko"):
        run(voice_test, "test", "--language", "zz")
    with pytest.raises(Failed, match=r"no worker 'zz'\. There are: p1"):
        run(voice_teach, "teach", "--worker", "zz")


# Teaching.

OWN = ("forward march", "affirmative", "negative", "louder", "trouble", "reverse", "coffee time")
RATES = ((150, 50), (160, 46), (145, 54))


def lesson(own: tuple[str, ...] = OWN) -> list[Sound]:
    return [
        np.concatenate([say(one, *how), still(0.5)])
        for one in own
        for how in RATES
    ]  # fmt: skip


def test_seven_words_are_taught_and_kept(tmp_path: Path, capsys):
    file = write(tmp_path / "lesson.wav", np.concatenate(lesson()))
    assert run(voice_teach, "teach", "en", "--worker", "p1", "--source", str(file)) == 0
    told = capsys.readouterr().out
    assert "no recording" in told
    assert "7/7 Your word for “take a break”" in told
    assert "Of your 21 samples, 21 would have been understood" in told
    assert "A safety hold cannot be answered with them" in told
    kept = taught(tmp_path / "demo", "p1", "en")
    assert {name: len(samples) for name, samples in kept.items()} == dict.fromkeys(TEACHABLE, 3)
    assert run(voice_teach, "teach", "en", "--worker", "p1", "--forget") == 0
    assert "are removed" in capsys.readouterr().out
    assert taught(tmp_path / "demo", "p1", "en") == {}


def test_a_bad_sample_is_asked_for_again():
    sounds = lesson()
    sounds.insert(5, np.concatenate([say(OWN[0]), still(0.5)]))
    told: list[str] = []
    taken = voice_teach.Lesson(
        Taker(Samples(np.concatenate(sounds)), loud), words("en"), told.append
    ).run()
    assert all(len(samples) == 3 for samples in taken.values())
    assert any("That sound" in line for line in told)


def test_a_word_that_cannot_be_taught_keeps_nothing(tmp_path: Path):
    same = np.concatenate([*lesson()[:3], *([lesson()[0]] * voice_teach.MOST_TRIES)])
    file = write(tmp_path / "same.wav", same)
    with pytest.raises(Failed, match="“yes” could not be taught, so nothing was kept"):
        run(voice_teach, "teach", "en", "--worker", "p1", "--source", str(file))
    assert taught(tmp_path / "demo", "p1", "en") == {}


# The taking of sound.


class Live(Samples):
    """A source that counts as a microphone, with some frames piled up."""

    live = True
    piled = 5

    def waiting(self) -> int:
        return self.piled


def test_from_a_microphone_what_was_said_before_the_question_is_dropped():
    early = round(READING_S / FRAME_S) + Live.piled
    sound = np.concatenate([np.full(early * 512, 0.1, np.float32), still(1)])
    stretch = Taker(Live(sound), detector=lambda frame: 0.0).stretch(0.5)
    assert not stretch.samples.any()


def test_the_end_of_the_sound_ends_a_word_and_then_is_told():
    taker = Taker(Samples(say("yellow")[: -RATE // 2]), detector=lambda frame: 1.0)
    assert taker.utterance(5.0) is not None
    with pytest.raises(SoundEnded):
        taker.utterance(5.0)

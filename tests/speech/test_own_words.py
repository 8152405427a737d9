"""A worker's own words: how they are taught, kept, and understood. Synthetic voices speak."""

from __future__ import annotations

import stat
from collections.abc import Sequence
from functools import cache
from importlib import util
from pathlib import Path

import numpy as np
import pytest

from kiosk.engine.commands import OWN_WORDS
from kiosk.listening.ear import DOUBTFUL, NOT_ALLOWED, NOTHING, TOO_SHORT, Heard, Utterance
from kiosk.listening.ear_for import open_ear_for
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.own_words import (
    BrokenWords,
    fault_of,
    file_of,
    forget,
    keep,
    taught,
    understood,
)
from kiosk.listening.template_ear import (
    LEAST_LIMIT,
    MOST_LIMIT,
    TemplateEar,
    WithOwnWords,
    limit,
)
from kiosk.listening.templates import Sample, distances, sample_of
from tests.speech.clips import utterances
from tests.speech.kitchen import in_kitchen

pytestmark = pytest.mark.skipif(
    util.find_spec("espeakng_loader") is None, reason="espeakng-loader, which speaks, is missing"
)

OWN = {
    "next": "siguiente", "yes": "claro que si", "no": "negativo", "repeat": "otra vez",
    "problem": "ay caramba", "back": "marcha atras", "pause": "descanso",
}  # fmt: skip
"""Words of somebody who speaks another language than the kiosk does."""
VOICE = "es"
SHOWN = ("next", "yes", "no", "repeat please", "step back", "something is wrong", "take a break")


@cache
def said(text: str, rate: int = 150, pitch: int = 50, voice: str = VOICE) -> Utterance:
    from tests.speech.synth import speaker

    return utterances(speaker().say(text, voice, rate, pitch))[0]


@cache
def sample(text: str, rate: int = 150, pitch: int = 50) -> Sample:
    found = sample_of(said(text, rate, pitch).samples)
    if found is None:
        raise LookupError(f"no speech in '{text}'")
    return found


def lesson() -> dict[str, list[Sample]]:
    return {
        name: [sample(text, rate, pitch) for rate, pitch in ((150, 50), (165, 45), (140, 55))]
        for name, text in OWN.items()
    }


@pytest.fixture(scope="module")
def ear() -> TemplateEar:
    return TemplateEar(lesson(), "en")


def test_the_same_word_is_nearer_than_another(ear: TemplateEar):
    near, far = distances(sample("siguiente", 158, 42), [sample("siguiente"), sample("descanso")])
    assert near < 0.75 * far
    assert distances(sample("negativo"), [sample("negativo")])[0] < 1e-3


def test_loudness_does_not_count():
    soft = sample_of(0.1 * said("siguiente").samples)
    assert soft is not None
    assert distances(soft, [sample("siguiente")])[0] < 0.06


def test_silence_and_clicks_are_no_sample():
    assert sample_of(np.zeros(16_000, dtype=np.float32)) is None
    assert sample_of(np.zeros(0, dtype=np.float32)) is None
    click = np.zeros(16_000, dtype=np.float32)
    click[8_000:8_100] = 0.5
    assert sample_of(click) is None


@pytest.mark.parametrize(("name", "text"), OWN.items())
def test_each_own_word_is_understood_as_its_command(ear: TemplateEar, name: str, text: str):
    shown = {"repeat": "repeat please", "back": "step back", "problem": "something is wrong",
             "pause": "take a break"}.get(name, name)  # fmt: skip
    heard = ear.hear(said(text, 158, 44), SHOWN)
    assert (heard.phrase, heard.why, heard.ear) == (shown, "", OWN_WORDS)
    assert heard.confidence is not None
    assert 0 < heard.confidence <= 1


def test_what_is_not_allowed_now_is_said_to_be_that(ear: TemplateEar):
    heard = ear.hear(said("siguiente", 158, 44), ("yes", "no"))
    assert (heard.phrase, heard.text, heard.why) == (None, "next", NOT_ALLOWED)


@pytest.mark.parametrize("text", ["la paloma vuela alto", "treinta y ocho", "buenas tardes"])
def test_other_words_are_nothing(ear: TemplateEar, text: str):
    heard = ear.hear(said(text), SHOWN)
    assert (heard.phrase, heard.why) == (None, NOTHING)


def test_a_sound_between_two_taught_words_is_doubtful():
    near = {"yes": [sample("siguiente")], "no": [sample("siguiente", 152)]}
    heard = TemplateEar(near, "en").hear(said("siguiente", 158), ("yes", "no"))
    assert (heard.phrase, heard.why) == (None, DOUBTFUL)


def test_the_phrase_of_a_hold_cannot_be_heard(ear: TemplateEar):
    for text in OWN.values():
        assert ear.hear(said(text, 158, 44), ("my hands are clean",)).phrase is None


def test_no_speech_is_too_short(ear: TemplateEar):
    still = Utterance(np.zeros(8_000, dtype=np.float32), 1.0, 1.0, 0.5)
    assert ear.hear(still, SHOWN).why == TOO_SHORT


def test_an_ear_that_was_taught_nothing_hears_nothing():
    assert TemplateEar({}, "en").hear(said("siguiente"), SHOWN).phrase is None


def test_most_words_are_understood_in_a_kitchen(ear: TemplateEar):
    from tests.speech.synth import speaker

    right = 0
    for seed, text in enumerate(OWN.values()):
        noisy = utterances(in_kitchen(speaker().say(text, VOICE, 158, 44), 10, seed))
        right += any(ear.hear(one, SHOWN).phrase is not None for one in noisy)
    assert right >= 5


def test_the_limit_of_a_word_lies_between_the_two_ends():
    assert limit([sample("siguiente")]) == MOST_LIMIT
    assert limit([sample("siguiente"), sample("siguiente", 151)]) == LEAST_LIMIT
    assert limit([sample("siguiente"), sample("descanso")]) == MOST_LIMIT


# What is taken as a sample.


@pytest.mark.parametrize(
    ("alter", "fault"),
    [
        (lambda one: one, ""),
        (lambda one: replaced(one, np.clip(40 * one.samples, -1, 1)), "teach-too-loud"),
        (lambda one: replaced(one, one.samples, speech_rms=0.001), "teach-too-faint"),
        (lambda one: replaced(one, in_kitchen(one.samples, 10, 1)), "teach-too-noisy"),
        (lambda one: replaced(one, 0 * one.samples), "teach-too-short"),
        (lambda one: said("uno dos tres cuatro cinco seis siete ocho", 120), "teach-too-long"),
        (lambda one: said("descanso"), "teach-unlike"),
    ],
)
def test_a_sample_that_will_not_do_is_named(alter, fault: str):
    given = alter(said("siguiente", 160))
    taken = {"next": [sample("siguiente")]}
    assert fault_of(given, sample_of(given.samples), "next", taken) == fault


def replaced(one: Utterance, samples, speech_rms: float | None = None) -> Utterance:
    rms = one.speech_rms if speech_rms is None else speech_rms
    samples = np.asarray(samples, dtype=np.float32)
    return Utterance(samples, one.ended_at, one.decided_at, one.began_at, rms)


def test_two_commands_cannot_have_one_word():
    given = said("siguiente", 160)
    taken = {"next": [sample("siguiente")], "yes": []}
    assert fault_of(given, sample_of(given.samples), "yes", taken) == "teach-like-another"


def test_good_samples_understand_each_other():
    assert understood(lesson()) == 21
    mixed = {"next": [sample("siguiente"), sample("descanso")], "no": [sample("siguiente", 151)]}
    assert understood(mixed) == 0


# What is kept.


def test_words_are_kept_for_their_worker_and_language_as_features_only(tmp_path: Path):
    words = lesson()
    file = keep(tmp_path, "p1/../x", "es", words)
    assert file.parent == tmp_path / "own-words"
    assert stat.S_IMODE(file.stat().st_mode) & 0o077 == 0
    assert [one.name for one in file.parent.iterdir()] == [file.name]
    sound_bytes = sum(len(said(text).samples) * 2 for text in OWN.values()) * 3
    assert file.stat().st_size < 0.5 * sound_bytes
    back = taught(tmp_path, "p1/../x", "es")
    assert list(back) == list(words)
    for name, samples in words.items():
        for old, new in zip(samples, back[name], strict=True):
            assert old.core == new.core
            assert distances(new, [old])[0] < 0.01
    assert taught(tmp_path, "p1/../x", "en") == {}
    assert taught(tmp_path, "p2", "es") == {}


def test_words_can_be_forgotten(tmp_path: Path):
    keep(tmp_path, "p1", "en", lesson())
    assert forget(tmp_path, "p1", "en")
    assert taught(tmp_path, "p1", "en") == {}
    assert not forget(tmp_path, "p1", "en")


@pytest.mark.parametrize("content", [b"", b"not a zip", b"PK\x03\x04 cut off"])
def test_a_broken_file_says_how_to_mend_it(tmp_path: Path, content: bytes):
    path = file_of(tmp_path, "p1", "zz")
    path.parent.mkdir()
    path.write_bytes(content)
    with pytest.raises(BrokenWords, match="kiosk voice teach zz --worker p1"):
        taught(tmp_path, "p1", "zz")
    found = open_ear_for("zz", "p1", tmp_path)
    assert found.ear is None
    assert "cannot be read" in found.notice


def test_a_file_of_another_shape_is_broken(tmp_path: Path):
    odd = Sample(np.zeros((20, 5), np.float32), (0, 20), np.zeros(5, np.float32))
    keep(tmp_path, "p1", "en", {"next": [odd]})
    with pytest.raises(BrokenWords, match="another shape"):
        taught(tmp_path, "p1", "en")


# Which ear a worker gets.


class Model:
    """A speech model that hears one phrase, or says why not."""

    name, language = "model", "en"

    def __init__(self, phrase: str | None, why: str = "") -> None:
        self.phrase, self.why = phrase, why

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        return Heard("x", self.phrase, 0.9, self.name, self.why, 0.1, utterance.ended_at)


@pytest.mark.parametrize(
    ("model", "ear_name", "phrase"),
    [
        (Model("yes"), "model", "yes"),
        (Model(None, NOT_ALLOWED), OWN_WORDS, "next"),
        (Model(None, NOTHING), OWN_WORDS, "next"),
        (Model(None, DOUBTFUL), "model", None),
    ],
)
def test_the_model_is_asked_first(ear: TemplateEar, model: Model, ear_name: str, phrase: str):
    heard = WithOwnWords(model, ear).hear(said("siguiente", 158, 44), SHOWN)
    assert (heard.ear, heard.phrase) == (ear_name, phrase)


def test_a_language_without_a_model_is_heard_by_own_words_alone(tmp_path: Path):
    nothing = open_ear_for("zz", "p1", tmp_path)
    assert nothing.ear is None
    assert nothing.notice
    keep(tmp_path, "p1", "zz", lesson())
    found = open_ear_for("zz", "p1", tmp_path)
    assert isinstance(found.ear, TemplateEar)
    assert found.notice == ""


def test_a_worker_who_taught_words_gets_them_beside_the_model(tmp_path: Path):
    if isinstance(missing := open_ear("en"), Missing):
        pytest.skip(missing.mend)
    keep(tmp_path, "p1", "en", lesson())
    assert isinstance(open_ear_for("en", "p1", tmp_path).ear, WithOwnWords)
    assert not isinstance(open_ear_for("en", "p2", tmp_path).ear, WithOwnWords)

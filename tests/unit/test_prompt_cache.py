"""Prompts are rendered once, whole or not at all, addressed by all that shapes their sound."""

from __future__ import annotations

import os
import threading
import wave
from pathlib import Path

import pytest

from kiosk.speaking.prompt_cache import PART_AGE_S, PromptCache
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import LONGEST_TEXT, SpeechFailed, is_voice, native_voice


class FakeRenderer:
    """Writes a wave whose frames are the request, and counts."""

    def __init__(self, version: str = "1") -> None:
        self.version = version
        self.asked: list[Speech] = []
        self.failure: Exception | None = None

    def render(self, speech: Speech, into: Path) -> float:
        self.asked.append(speech)
        with wave.open(str(into), "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(22_050)
            file.writeframes(repr(speech).encode("utf-16"))
        if self.failure:
            raise self.failure
        return 1.0


@pytest.fixture
def renderer() -> FakeRenderer:
    return FakeRenderer()


@pytest.fixture
def prompts(tmp_path: Path, renderer: FakeRenderer) -> PromptCache:
    return PromptCache(tmp_path / "prompts", renderer)


def test_the_second_request_is_served_from_the_folder(
    prompts: PromptCache, renderer: FakeRenderer
) -> None:
    first = prompts.wave(Speech("Pull the plug.", "en"))
    assert prompts.wave(Speech("Pull the plug.", "en")) == first
    assert len(renderer.asked) == 1


def test_white_space_does_not_make_another_prompt(
    prompts: PromptCache, renderer: FakeRenderer
) -> None:
    loose, tight = Speech("Pull  the\nplug. ", "en"), Speech("Pull the plug.", "en")
    assert prompts.wave(loose) == prompts.wave(tight)
    assert renderer.asked == [Speech("Pull the plug.", "en", rate=150)]


def test_all_that_shapes_the_sound_makes_another_prompt(
    prompts: PromptCache, tmp_path: Path
) -> None:
    newer = PromptCache(tmp_path / "prompts", FakeRenderer("2"))
    paths = {
        prompts.wave(Speech("Rinse", "en")),
        prompts.wave(Speech("Rinse.", "en")),
        prompts.wave(Speech("Rinse", "es")),
        prompts.wave(Speech("Rinse", "en", "en-us+f3")),
        prompts.wave(Speech("Rinse", "en", None, 151)),
        prompts.wave(Speech("Rinse", "en", pitch=110)),
        prompts.wave(Speech("Rinse", "en", volume=110)),
        newer.wave(Speech("Rinse", "en")),
    }
    assert len(paths) == 8


def test_the_languages_own_rate_is_the_same_prompt_as_that_rate_asked_for(
    prompts: PromptCache, renderer: FakeRenderer
) -> None:
    own, asked_for = Speech("Rinse", "en"), Speech("Rinse", "en", rate=150)
    assert prompts.wave(own) == prompts.wave(asked_for)
    assert len(renderer.asked) == 1


def test_a_failed_rendering_leaves_nothing_behind(
    prompts: PromptCache, renderer: FakeRenderer, tmp_path: Path
) -> None:
    renderer.failure = SpeechFailed("the worker ended")
    with pytest.raises(SpeechFailed, match="the worker ended"):
        prompts.wave(Speech("Rinse", "en"))
    assert list((tmp_path / "prompts").iterdir()) == []
    renderer.failure = None
    assert prompts.wave(Speech("Rinse", "en")).exists()


def test_a_full_disk_is_a_sentence(prompts: PromptCache, renderer: FakeRenderer) -> None:
    renderer.failure = OSError(28, "No space left on device")
    with pytest.raises(SpeechFailed, match="No space left on device; free some space"):
        prompts.wave(Speech("Rinse", "en"))


@pytest.mark.parametrize("kept_bytes", [0, 20, 44, 50])
def test_a_file_cut_short_by_a_power_cut_is_rendered_again(
    prompts: PromptCache, renderer: FakeRenderer, kept_bytes: int
) -> None:
    path = prompts.wave(Speech("Rinse", "en"))
    whole = path.read_bytes()
    path.write_bytes(whole[:kept_bytes])
    assert prompts.wave(Speech("Rinse", "en")).read_bytes() == whole
    assert len(renderer.asked) == 2


def test_a_folder_that_cannot_be_made_is_a_sentence(tmp_path: Path, renderer: FakeRenderer) -> None:
    (tmp_path / "file").write_text("in the way")
    with pytest.raises(SpeechFailed, match=r"cannot be used.*make it writable"):
        PromptCache(tmp_path / "file" / "prompts", renderer)


def test_old_half_written_files_go_and_fresh_ones_stay(
    tmp_path: Path, renderer: FakeRenderer
) -> None:
    old, fresh = tmp_path / "a.part", tmp_path / "b.part"
    for part in (old, fresh):
        part.write_bytes(b"half")
    past = fresh.stat().st_mtime - PART_AGE_S - 1
    os.utime(old, (past, past))
    PromptCache(tmp_path, renderer)
    assert [part.exists() for part in (old, fresh)] == [False, True]


def test_the_oldest_prompts_go_when_the_folder_is_too_large(
    tmp_path: Path, renderer: FakeRenderer
) -> None:
    prompts = PromptCache(tmp_path, renderer)
    paths = [prompts.wave(Speech(text, "en")) for text in ("one", "two", "six")]
    for age, path in enumerate(paths):
        os.utime(path, (1_000_000 + age, 1_000_000 + age))
    PromptCache(tmp_path, renderer, most_bytes=2 * paths[0].stat().st_size)
    assert [path.exists() for path in paths] == [False, True, True]


def test_threads_that_ask_for_the_same_prompt_all_get_a_whole_one(
    prompts: PromptCache, tmp_path: Path
) -> None:
    got: list[Path] = []
    start = threading.Barrier(8)

    def ask() -> None:
        start.wait()
        got.append(prompts.wave(Speech("Rinse", "en")))

    threads = [threading.Thread(target=ask) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(got) == 8
    assert list((tmp_path / "prompts").iterdir()) == [got[0]]


@pytest.mark.parametrize("text", ["", "  \n", "...", "¿?", "\0", "—"])
def test_a_text_with_nothing_to_speak_is_refused(
    prompts: PromptCache, renderer: FakeRenderer, text: str
) -> None:
    with pytest.raises(SpeechFailed, match="empty"):
        prompts.wave(Speech(text, "en"))
    assert renderer.asked == []


def test_a_nul_does_not_cut_the_text(prompts: PromptCache, renderer: FakeRenderer) -> None:
    prompts.wave(Speech("Pull\0the plug", "en"))
    assert renderer.asked[0].text == "Pull the plug"


def test_too_long_a_text_is_refused(prompts: PromptCache) -> None:
    prompts.wave(Speech("a" * LONGEST_TEXT, "en"))
    with pytest.raises(SpeechFailed, match=f"has {LONGEST_TEXT + 1} characters; split it"):
        prompts.wave(Speech("a" * (LONGEST_TEXT + 1), "en"))


@pytest.mark.parametrize("rate", [79, 451, 0, -5])
def test_a_rate_the_driver_would_clip_is_refused(prompts: PromptCache, rate: int) -> None:
    with pytest.raises(SpeechFailed, match=f"the rate {rate} is outside 80 to 450"):
        prompts.wave(Speech("Rinse", "en", rate=rate))


def test_a_language_without_a_voice_names_those_that_have_one(prompts: PromptCache) -> None:
    with pytest.raises(SpeechFailed, match=r"'tl'; there are voices for en, es, ko"):
        prompts.wave(Speech("Rinse", "tl"))


@pytest.mark.parametrize(
    ("asked", "speaking", "same"),
    [
        ("gmw/en-us", "gmw/en-us", True),
        ("en-us+f3", "gmw/en-us+f3", True),
        ("gmw/en-US+Andrea", "gmw/en-us+andrea", True),
        ("gmw/en-us+nosuch", "gmw/en-us", False),
        ("en-us", "gmw/en-us+f3", False),
        ("us", "gmw/en-us", False),
        ("ko", "gmw/en-us", False),
    ],
)
def test_a_voice_read_back_must_be_the_one_asked_for(asked: str, speaking: str, same: bool) -> None:
    assert is_voice(asked, speaking) is same


def test_the_computers_own_voice_is_chosen_by_region_then_by_language() -> None:
    voices = [("Anna", ["de_DE"]), ("Mónica", ["es_ES"]), ("Paulina", ["es-MX"]), ("Yuna", ["ko"])]
    assert native_voice("es", voices) == "Paulina"
    assert native_voice("es", voices[:2]) == "Mónica"
    assert native_voice("ko", voices) == "Yuna"
    with pytest.raises(SpeechFailed, match="no voice for the language 'en'; add one"):
        native_voice("en", voices)

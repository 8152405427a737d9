"""The real worker speaks real waves, says what is wrong, and is replaced when it dies or hangs."""

from __future__ import annotations

import os
import platform
import shutil
import signal
import subprocess
import sys
import threading
import wave
from collections.abc import Iterator
from importlib import util
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from kiosk.speaking.brighten import brightened
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import VOICES, SpeechFailed

pytestmark = [
    pytest.mark.skipif(
        platform.system() != "Linux", reason="the voices of espeak-ng speak on Linux alone"
    ),
    pytest.mark.skipif(
        util.find_spec("espeakng_loader") is None, reason="espeakng-loader is not installed"
    ),
]

SENTENCES = {
    "en": "Switch to off. Pull the plug and keep it in your sight.",
    "es": "Apague la máquina. Desenchúfela y no pierda de vista el enchufe.",
    "ko": "전원을 끄세요. 플러그를 뽑고 눈앞에 두세요.",
    "vi": "Tắt máy. Rút phích cắm ra.",
    "zh": "关掉机器。拔掉插头。",
    "pt": "Desligue a máquina. Tire o plugue da tomada.",
}


@pytest.fixture(scope="module")
def renderer() -> Iterator[Renderer]:
    made = Renderer()
    yield made
    made.close()


@pytest.fixture
def own_renderer() -> Iterator[Renderer]:
    made = Renderer(render_limit_s=0.5)
    yield made
    made.close()


def samples(path: Path) -> NDArray[np.float64]:
    with wave.open(str(path), "rb") as file:
        assert (file.getframerate(), file.getnchannels(), file.getsampwidth()) == (22_050, 1, 2)
        return np.frombuffer(file.readframes(file.getnframes()), "<i2") / 32_768


def pitch_hz(sound: NDArray[np.float64]) -> float:
    """Median pitch of the loud 40 ms windows, by autocorrelation between 60 and 400 Hz."""
    windows = sound[: len(sound) // 882 * 882].reshape(-1, 882)
    loud = windows[np.sqrt((windows**2).mean(axis=1)) > 0.05]
    found = []
    for window in loud:
        likeness = np.correlate(window, window, "full")[881:]
        lags = np.arange(22_050 // 400, 22_050 // 60)
        found.append(22_050 / lags[np.argmax(likeness[lags])])
    return float(np.median(found))


def speak(renderer: Renderer, text: str, into: Path, voice: str | None = None) -> Path:
    renderer.render(Speech(text, "en", voice), into)
    return into


@pytest.mark.parametrize("language", VOICES)
def test_a_sentence_has_sound_of_a_plausible_length(
    renderer: Renderer, tmp_path: Path, language: str
) -> None:
    path = PromptCache(tmp_path, renderer).wave(Speech(SENTENCES[language], language))
    sound = samples(path)
    assert 1.0 < len(sound) / 22_050 < 8.0
    assert np.sqrt((sound**2).mean()) > 0.03
    assert np.abs(sound).max() <= 1.0


def test_the_length_is_told(renderer: Renderer, tmp_path: Path) -> None:
    into = tmp_path / "rinse.wav"
    told = renderer.render(Speech("Rinse the bowl.", "en"), into)
    assert told == pytest.approx(len(samples(into)) / 22_050)


def test_each_language_speaks_a_number_in_its_own_words(renderer: Renderer, tmp_path: Path) -> None:
    prompts = PromptCache(tmp_path, renderer)
    lengths = {
        len(samples(prompts.wave(Speech("72", language)))) for language in ("en", "es", "ko")
    }
    assert len(lengths) == 3


@pytest.mark.parametrize("voice", ["gmw/en-us+f3", "en-us+f3"])
def test_a_variant_is_another_voice(renderer: Renderer, tmp_path: Path, voice: str) -> None:
    plain = samples(speak(renderer, SENTENCES["en"], tmp_path / "plain.wav"))
    other = samples(speak(renderer, SENTENCES["en"], tmp_path / "other.wav", voice))
    assert pitch_hz(other) > 1.25 * pitch_hz(plain)


@pytest.mark.parametrize("voice", ["nosuch", "xx+f2", "gmw/en-us+nosuch", "ko+"])
def test_an_unknown_voice_is_named_and_nobody_speaks_instead(
    renderer: Renderer, tmp_path: Path, voice: str
) -> None:
    speak(renderer, "Before.", tmp_path / "before.wav")
    with pytest.raises(SpeechFailed) as failure:
        speak(renderer, "Rinse.", tmp_path / "rinse.wav", voice)
    assert f"'{voice}'" in str(failure.value)
    assert not (tmp_path / "rinse.wav").exists()
    assert len(samples(speak(renderer, "After.", tmp_path / "after.wav")))


def test_the_rate_of_a_request_holds_for_that_request(renderer: Renderer, tmp_path: Path) -> None:
    into = tmp_path / "rate.wav"
    rates = [80, 160, 80, 320, 160, 320] * 5
    texts = [Speech(SENTENCES["ko"], "ko", rate=rate) for rate in rates]
    seconds = [renderer.render(text, into) for text in texts]
    for rate in (80, 160, 320):
        same = [length for length, of in zip(seconds, rates, strict=True) if of == rate]
        assert max(same) < 1.05 * min(same)
    assert seconds[0] > 1.7 * seconds[1] > 1.7 * 1.7 * seconds[3]


def test_pitch_and_volume_of_a_request_hold_for_that_request(
    renderer: Renderer, tmp_path: Path
) -> None:
    made: dict[tuple[int, int], NDArray[np.float64]] = {}
    for pitch, volume in ((100, 100), (150, 100), (100, 50), (100, 140), (100, 100)):
        into = tmp_path / "tone.wav"
        renderer.render(Speech(SENTENCES["en"], "en", pitch=pitch, volume=volume), into)
        made[pitch, volume] = samples(into)
    loudness = {how: np.sqrt((sound**2).mean()) for how, sound in made.items()}
    assert pitch_hz(made[150, 100]) > 1.15 * pitch_hz(made[100, 100])
    assert loudness[100, 50] == pytest.approx(0.5 * loudness[100, 100], rel=0.05)
    assert loudness[100, 140] == pytest.approx(1.4 * loudness[100, 100], rel=0.05)


def high_share(sound: NDArray[np.float64]) -> float:
    """The share of power above 2 kHz."""
    power = np.abs(np.fft.rfft(sound)) ** 2
    return float(power[np.fft.rfftfreq(len(sound), 1 / 22_050) > 2_000].sum() / power.sum())


def test_the_languages_own_voice_is_brighter_and_parts_its_words(
    renderer: Renderer, tmp_path: Path
) -> None:
    plain = samples(speak(renderer, SENTENCES["en"], tmp_path / "plain.wav", "gmw/en-us"))
    own = samples(speak(renderer, SENTENCES["en"], tmp_path / "own.wav"))
    assert high_share(own) > 3 * high_share(plain)
    words = len(SENTENCES["en"].split())
    assert 0.02 < (len(own) - len(plain)) / 22_050 / words < 0.1
    again = samples(speak(renderer, SENTENCES["en"], tmp_path / "again.wav", "gmw/en-us"))
    assert len(again) == pytest.approx(len(plain), rel=0.01)


def test_brightening_keeps_the_power_and_raises_an_octave_by_six_decibels() -> None:
    time = np.arange(22_050) / 22_050
    low, high = (np.sin(2 * np.pi * hertz * time) for hertz in (2_000, 4_000))
    both = (0.1 * (low + high)).astype(np.float32)
    made = brightened(both)
    assert np.sum(made**2) == pytest.approx(np.sum(both**2), rel=1e-4)
    spectrum = np.abs(np.fft.rfft(made))
    assert 20 * np.log10(spectrum[4_000] / spectrum[2_000]) == pytest.approx(6.0, abs=0.7)
    assert brightened(both[:0]).size == 0
    assert not brightened(np.zeros(9, dtype=np.float32)).any()


def test_many_texts_in_a_row_are_each_whole(renderer: Renderer, tmp_path: Path) -> None:
    texts = ["Rinse.", "Rinse the bowl and the beater, then look at the water."] * 15
    told = [
        renderer.render(Speech(text, "en"), tmp_path / f"{at}.wav") for at, text in enumerate(texts)
    ]
    for at, seconds in enumerate(told):
        assert len(samples(tmp_path / f"{at}.wav")) / 22_050 == pytest.approx(seconds)
        assert seconds == pytest.approx(told[at % 2], rel=0.02)
    assert told[1] > 2 * told[0]


def test_an_empty_text_is_an_error(renderer: Renderer, tmp_path: Path) -> None:
    with pytest.raises(SpeechFailed, match="empty"):
        speak(renderer, " ... ", tmp_path / "empty.wav")


def test_a_file_that_cannot_be_written_is_an_error_and_the_next_text_is_spoken(
    renderer: Renderer, tmp_path: Path
) -> None:
    with pytest.raises(SpeechFailed, match="No such file"):
        speak(renderer, "Rinse.", tmp_path / "missing" / "rinse.wav")
    assert len(samples(speak(renderer, "Rinse.", tmp_path / "rinse.wav")))


def test_a_worker_killed_between_texts_is_replaced(own_renderer: Renderer, tmp_path: Path) -> None:
    speak(own_renderer, "Rinse.", tmp_path / "one.wav")
    first = own_renderer.worker_pid()
    assert first is not None
    os.kill(first, signal.SIGKILL)
    assert len(samples(speak(own_renderer, "Rinse.", tmp_path / "two.wav")))
    assert own_renderer.worker_pid() not in (None, first)


def test_a_worker_killed_in_the_middle_of_a_text_is_replaced_and_the_text_spoken(
    tmp_path: Path,
) -> None:
    renderer = Renderer(render_limit_s=30)
    try:
        speak(renderer, "Rinse.", tmp_path / "one.wav")
        first = renderer.worker_pid()
        assert first is not None
        os.kill(first, signal.SIGSTOP)
        asking = threading.Thread(target=speak, args=(renderer, "Rinse.", tmp_path / "two.wav"))
        asking.start()
        os.kill(first, signal.SIGKILL)
        asking.join(30)
        assert len(samples(tmp_path / "two.wav"))
        assert renderer.worker_pid() != first
    finally:
        renderer.close()


def test_a_worker_that_hangs_is_ended_and_the_next_text_spoken(
    own_renderer: Renderer, tmp_path: Path
) -> None:
    speak(own_renderer, "Rinse.", tmp_path / "one.wav")
    hung = own_renderer.worker_pid()
    assert hung is not None
    os.kill(hung, signal.SIGSTOP)
    with pytest.raises(SpeechFailed, match=r"did not answer in 0\.5 s"):
        speak(own_renderer, "Rinse.", tmp_path / "two.wav")
    with pytest.raises(ProcessLookupError):
        os.kill(hung, 0)
    assert len(samples(speak(own_renderer, "Rinse.", tmp_path / "three.wav")))


def test_close_ends_the_worker_even_in_the_middle_of_a_text(tmp_path: Path) -> None:
    renderer = Renderer(render_limit_s=60)
    speak(renderer, "Rinse.", tmp_path / "one.wav")
    worker = renderer.worker_pid()
    assert worker is not None
    os.kill(worker, signal.SIGSTOP)
    failures: list[SpeechFailed] = []

    def ask() -> None:
        try:
            speak(renderer, "Rinse.", tmp_path / "two.wav")
        except SpeechFailed as failure:
            failures.append(failure)

    asking = threading.Thread(target=ask)
    asking.start()
    renderer.close()
    asking.join(30)
    assert "closed" in str(failures[0])
    with pytest.raises(ProcessLookupError):
        os.kill(worker, 0)


STILL_BUSY = """
import sys
from pathlib import Path
from kiosk.speaking import pyttsx3_driver
from kiosk.speaking.speech import Speech
pyttsx3_driver.load_espeak()
from pyttsx3 import engine
from pyttsx3.drivers import _espeak

class BusyEngine(engine.Engine):
    def __init__(self, name):
        super().__init__(name)
        _espeak.Synth("rinse the bowl " * 300, flags=_espeak.CHARS_UTF8)

engine.Engine = BusyEngine
driver = pyttsx3_driver.Pyttsx3Driver()
driver.render(Speech("Pull the plug. " * 60, "en"), Path(sys.argv[1]))
"""


def test_the_first_text_is_whole_although_the_library_starts_out_busy(tmp_path: Path) -> None:
    into = tmp_path / "one.wav"
    ran = subprocess.run(
        [sys.executable, "-c", STILL_BUSY, str(into)],
        env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])},
        capture_output=True,
        timeout=60,
        check=False,
    )
    assert ran.returncode == 0, ran.stderr.decode()
    assert len(samples(into)) > 30 * 22_050


def test_nothing_is_printed(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> None:
    renderer = Renderer()
    speak(renderer, "Rinse.", tmp_path / "one.wav")
    with pytest.raises(SpeechFailed):
        speak(renderer, "Rinse.", tmp_path / "missing" / "two.wav")
    with pytest.raises(SpeechFailed):
        speak(renderer, "Rinse.", tmp_path / "three.wav", "nosuch")
    renderer.close()
    assert capfd.readouterr() == ("", "")


def test_the_package_may_lie_deeper_than_the_library_can_say(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    found = util.find_spec("espeakng_loader")
    assert found is not None
    assert found.submodule_search_locations is not None
    deep = tmp_path / ("d" * 120) / ("e" * 120)
    shutil.copytree(found.submodule_search_locations[0], deep / "espeakng_loader", symlinks=True)
    monkeypatch.setenv("PYTHONPATH", str(deep))
    renderer = Renderer()
    try:
        assert len(samples(speak(renderer, "Rinse.", tmp_path / "one.wav")))
    finally:
        renderer.close()


def test_a_missing_library_is_a_sentence(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "espeakng_loader.py").write_text("raise ImportError('no such wheel')\n")
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    renderer = Renderer()
    with pytest.raises(SpeechFailed, match=r"did not start.*no such wheel.*install the package"):
        speak(renderer, "Rinse.", tmp_path / "one.wav")
    assert renderer.worker_pid() is None
    renderer.close()

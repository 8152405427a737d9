"""The kiosk's own voice is taken out of the microphone, and nobody else's."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from importlib import util
from pathlib import Path

import numpy as np
import pytest

from kiosk.listening.echo import EchoFilter, NoEchoFilter, SpeechBeside
from kiosk.listening.endpoint import FRAME, Gate
from kiosk.listening.reference import Reference
from kiosk.opening import echo_filter
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.speech import Speech

needs_voice = pytest.mark.skipif(
    util.find_spec("espeakng_loader") is None, reason="espeakng-loader, which speaks, is missing"
)
needs_library = pytest.mark.skipif(
    util.find_spec("pywebrtc_audio") is None, reason="pywebrtc-audio is missing"
)
SAID = (
    "Switch to off. Pull the plug and keep it in your sight.",
    "Warning. If the power is on after all, the open drives turn. Keep hands and sleeves away.",
    "Take out the beater, and lay it into the first sink with the seal.",
)


@pytest.fixture(scope="module")
def prompts(tmp_path_factory: pytest.TempPathFactory) -> Iterator[list[Path]]:
    renderer = Renderer()
    cache = PromptCache(tmp_path_factory.mktemp("prompts"), renderer)
    yield [cache.wave(Speech(text, "en")) for text in SAID]
    renderer.close()


@needs_voice
@needs_library
@pytest.mark.parametrize(("delay_ms", "gain_db", "least_db"), [(20, -6, 20), (150, -12, 15)])
def test_an_echo_is_cancelled_once_the_room_is_learnt(prompts, delay_ms, gain_db, least_db):
    from tests.speech.echoes import Kiosk, Room, decibels

    kiosk = Kiosk(Room(delay_ms, gain_db))
    for prompt in prompts[:2]:
        list(kiosk.play(prompt))
    assert kiosk.filter.settled
    both = list(kiosk.play(prompts[2]))
    came = decibels(np.concatenate([frame for frame, _ in both]))
    for left in ([one.for_gate for _, one in both], [one.for_ear for _, one in both]):
        assert came - decibels(np.concatenate(left)) >= least_db


@needs_voice
@needs_library
@pytest.mark.parametrize("driven", [0.0, 3.0], ids=["clean", "distorting"])
def test_the_kiosks_own_voice_does_not_open_the_gate(prompts, driven):
    from tests.speech.echoes import Kiosk, Room

    kiosk = Kiosk(Room(driven=driven))
    beside, plain = SpeechBeside(), Gate()
    gate = Gate(detector=beside)
    opened = opened_plainly = 0
    for prompt in prompts:
        for frame, cleaned in kiosk.play(prompt):
            beside.listen_to(cleaned.for_gate)
            gate.feed(cleaned.for_ear)
            plain.feed(frame)
            opened += gate.speaking
            opened_plainly += plain.speaking
    assert opened == 0
    assert opened_plainly > 100


@needs_voice
@needs_library
def test_a_voice_beside_the_prompt_is_kept_whole_for_the_ear(prompts):
    from tests.speech.echoes import Kiosk, Room, decibels
    from tests.speech.synth import speaker

    kiosk = Kiosk(Room())
    for prompt in prompts[:2]:
        list(kiosk.play(prompt))
    word = speaker().say("something is wrong", "en-us+f3", 160)

    alone = np.pad(word, (16_000, 0))

    def beside(count: int) -> np.ndarray:
        return np.pad(alone, (0, max(0, count - len(alone))))[:count]

    both = list(kiosk.play(prompts[2], beside))
    came = np.concatenate([frame for frame, _ in both])
    for_ear = np.concatenate([one.for_ear for _, one in both])
    # What was played before left a part of a frame behind, so the word is looked for.
    voice = alone[16_000 + 4_800 : len(alone) - 12_800]
    at = int(np.argmax(np.correlate(for_ear, voice)))
    assert abs(at - 16_000 - 4_800) <= FRAME
    place = slice(at, at + len(voice))
    assert decibels(voice) - decibels(came[place] - voice) < 12
    assert decibels(voice) - decibels(for_ear[place] - voice) >= 15


@needs_library
def test_while_the_kiosk_is_silent_every_frame_is_left_as_it_is():
    reference = Reference()
    cleaner = EchoFilter(reference)
    chance = np.random.default_rng(1)
    for _ in range(50):
        reference.put(bytes(2 * 706))
        frame = chance.standard_normal(FRAME).astype(np.float32)
        cleaned = cleaner.clean(frame)
        assert cleaned.for_ear is frame
        assert cleaned.for_gate is frame
    assert not cleaner.settled


def test_without_the_library_there_is_none_and_the_mend_is_named(monkeypatch, capsys):
    monkeypatch.setitem(sys.modules, "pywebrtc_audio", None)
    with pytest.raises(NoEchoFilter, match="pip install"):
        EchoFilter(Reference())
    assert echo_filter(Reference()) is None
    assert "cannot be cut short by speaking here: the library" in capsys.readouterr().err

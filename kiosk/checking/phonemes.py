"""The phonemes of phrases, from espeak-ng in a process of its own.

espeak-ng has one voice for a whole process and looks for its data in the working folder; neither
may disturb the kiosk. One process answers one request: a JSON object of language to phrases in, a
JSON object of language to lists of phonemes out.
"""

from __future__ import annotations

import ctypes
import json
import os
import re
import subprocess
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path

import kiosk
from kiosk.speaking.voices import SpeechFailed, choice_for

LIMIT_S = 20.0
"""For one request; measured at 0.1 s for all shipped phrases."""

_SYNCHRONOUS = 2
"""AUDIO_OUTPUT_SYNCHRONOUS of espeak-ng's speak_lib.h: no sound device is opened."""
_UTF8 = 1
_IPA_PARTED = 0x02 | ord("_") << 8
"""espeakPHONEMES_IPA, with an underscore between phonemes."""
_STRESS = str.maketrans("", "", "ˈˌ")


def phonemes(phrases: Mapping[str, Sequence[str]]) -> dict[tuple[str, str], tuple[str, ...]]:
    """Return the phonemes of each phrase by (language, phrase), stress marks left out.

    Raises SpeechFailed where espeak-ng cannot run.
    """
    voices = {language: choice_for(language).voice for language in phrases}
    request = {language: [voices[language], list(said)] for language, said in phrases.items()}
    place = str(Path(kiosk.__file__).resolve().parent.parent)
    earlier = os.environ.get("PYTHONPATH")
    path = os.pathsep.join([place, earlier] if earlier else [place])
    try:
        done = subprocess.run(
            [sys.executable, "-P", "-m", "kiosk.checking.phonemes"],
            input=json.dumps(request).encode(),
            capture_output=True,
            timeout=LIMIT_S,
            env={**os.environ, "PYTHONPATH": path},
            check=True,
        )
        answer = json.loads(done.stdout)
    except (OSError, subprocess.SubprocessError, ValueError) as failure:
        raise SpeechFailed(
            f"espeak-ng did not give the sounds ({type(failure).__name__}); "
            "install the package espeakng-loader again"
        ) from failure
    return {
        (language, phrase): tuple(sounds)
        for language, said in phrases.items()
        for phrase, sounds in zip(said, answer[language], strict=True)
    }


def parted(written: str) -> list[str]:
    """Return the phonemes of espeak-ng's own writing, `t_ˈɛ_n m_ɪ_n`."""
    return [one for one in re.split(r"[_\s]+", written.translate(_STRESS)) if one]


def main() -> int:
    """Answer the request on standard input."""
    from kiosk.speaking.pyttsx3_driver import load_espeak

    espeak = load_espeak()
    if espeak.espeak_Initialize(_SYNCHRONOUS, 0, None, 0) < 0:
        return 1
    espeak.espeak_TextToPhonemes.restype = ctypes.c_char_p
    answer: dict[str, list[list[str]]] = {}
    for language, (voice, phrases) in json.load(sys.stdin).items():
        if espeak.espeak_SetVoiceByName(voice.encode()) != 0:
            return 1
        answer[language] = [parted(_written(espeak, phrase)) for phrase in phrases]
    json.dump(answer, sys.stdout)
    return 0


def _written(espeak: ctypes.CDLL, phrase: str) -> str:
    rest = ctypes.c_char_p(phrase.encode())
    clauses: list[str] = []
    while rest.value:
        said = espeak.espeak_TextToPhonemes(ctypes.byref(rest), _UTF8, _IPA_PARTED)
        clauses.append((said or b"").decode())
    return " ".join(clauses)


if __name__ == "__main__":
    raise SystemExit(main())

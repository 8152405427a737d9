"""How often the opposite of a hold's phrase is taken for it, and how often the phrase itself is:

`python -m tests.bench.bench_opposites` judges the shipped phrases; with `--try FILE` others as
well, from a JSON object of phrase to opposites. Every voice says everything, clean and in noise.
"""

from __future__ import annotations

import argparse
import json
from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path

from kiosk.engine import commands as c
from kiosk.listening.ear import Ear
from kiosk.listening.listener import hear_frames
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.sources import Samples
from tests.speech.clips import Sound
from tests.speech.kitchen import in_kitchen
from tests.speech.opposites import OPPOSITES
from tests.speech.voices import voices

LEVELS_DB = (None, 10)


def counts(ear: Ear, phrase: str, opposites: Sequence[str]) -> Counter[str]:
    """Return how often phrase and opposites were said, and how often each was taken for it."""
    found: Counter[str] = Counter()
    for number, voice in enumerate(voices()):
        for text in (phrase, *opposites):
            said = voice.say(text)
            for level in LEVELS_DB:
                where = "clean" if level is None else f"{level} dB"
                sound = said if level is None else in_kitchen(said, level, number)
                side = where if text == phrase else "opposite"
                found[f"{side} said"] += 1
                if _taken(ear, phrase, sound):
                    found[side] += 1
                    if text != phrase:
                        found[f"'{text}' {where} {voice.name}"] += 1
    return found


def _taken(ear: Ear, phrase: str, sound: Sound) -> bool:
    heard = hear_frames(Samples(sound).frames(), ear, {phrase: c.GivePhrase()})
    return any(one.phrase is not None for one in heard)


def main() -> None:
    """Print one line for each phrase, and one for each opposite that passed."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--try", dest="others", type=Path, help="JSON of phrase to opposites")
    asked.add_argument("--only", action="store_true", help="not the shipped ones")
    given = asked.parse_args()
    ear = open_ear("en", threads=1)
    if isinstance(ear, Missing):
        print(ear.mend)
        return
    phrases: dict[str, Sequence[str]] = {} if given.only else dict(OPPOSITES)
    if given.others:
        others: Mapping[str, Sequence[str]] = json.loads(given.others.read_text(encoding="utf-8"))
        phrases |= others
    for phrase, opposites in phrases.items():
        found = counts(ear, phrase, opposites)
        sides = ("clean", "10 dB", "opposite")
        shares = (f"{one} {found[one]}/{found[f'{one} said']}" for one in sides)
        print(f"{phrase}: {', '.join(shares)}", flush=True)
        for name, times in found.items():
            if name.startswith("'"):
                print(f"    passed: {name} ({times})", flush=True)


if __name__ == "__main__":
    main()

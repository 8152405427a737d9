"""Every English phrase in every voice, clean and in a kitchen at 10 dB; and people's yes, no, stop:

`python -m tests.bench.bench_phrases`. Numbers are sampled. What is not understood is printed; the
counts are left beside the models for the page that `bench_ears` writes. With `--letters FILE
--voice slt` other letters are judged by voices that they have not learned from, and added.
"""

from __future__ import annotations

import argparse
import json
from collections import Counter, defaultdict
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any, Final

from kiosk.engine import commands as c
from kiosk.listening.ear import Ear
from kiosk.listening.grammar import Grammar
from kiosk.listening.letters import Letters
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.second_look import SecondLook
from kiosk.listening.thresholds import POSSIBLE
from kiosk.listening.whisper_ear import WhisperEar
from tests.bench.ears_figures import hear, lists
from tests.speech.clips import RECORDINGS, Sound, of_file
from tests.speech.kitchen import in_kitchen
from tests.speech.moments import own_phrases, phrases
from tests.speech.voices import voices

COUNTS = Path(__file__).resolve().parents[2] / "models" / "phrases-en.json"
DECIBELS: Final = 10
NUMBERS_EVERY: Final = 6
NOISES_FROM: Final = 50_000
"""Other noise than that in which the limits were chosen."""
LEARNED: Final = ("slt", "rms", "awb", "slt, festival")
"""Speakers whose letters were learned, at other speeds."""
PEOPLE: Final = ("yes", "no", "stop")


def listed() -> dict[str, Grammar]:
    """Return every phrase, and the longest list that it stands in."""
    own = own_phrases("en")
    return {**dict.fromkeys(own, lists("en")["step"] | own), **phrases("en")}


def said(learned: str) -> Iterator[tuple[str, str, str, Grammar, Sound]]:
    """Yield kind, voice, phrase, its list and its sound, without noise."""
    every = listed()
    numbers = [one for one, allowed in every.items() if isinstance(allowed[one], c.Read)]
    words = [one for one in every if one not in numbers]
    for word in PEOPLE:
        # 'stop' is on no list of a step: it is judged by whether the ear would have heard it.
        allowed = every["yes"] | {"stop": c.End()}
        for path in sorted((RECORDINGS / "gsc" / word).glob("*.wav")):
            yield "people, yes, no, stop", "", word, allowed, of_file(path)
    for voice in voices():
        how = f", {learned}" if voice.name in LEARNED else ""
        for phrase in words:
            sound = voice.say(phrase)
            yield f"{voice.kind}{how}, phrases", voice.name, phrase, every[phrase], sound
        for phrase in numbers[::NUMBERS_EVERY]:
            sound = voice.say(phrase)
            yield f"{voice.kind}{how}, numbers", voice.name, phrase, every[phrase], sound


def outcome(ear: Ear, phrase: str, allowed: Grammar, sound: Sound) -> str:
    """Return `right`, `wrong` or `missed`."""
    found = hear(ear, sound, allowed)
    taken = next((one.phrase for one in found if one.phrase is not None), None)
    if taken is None:
        return "missed"
    return "right" if allowed[taken] == allowed[phrase] else "wrong"


def table(counts: dict[str, Any]) -> list[str]:
    """Return the counts as a table for a page."""
    rows = counts["rows"].items()
    return [
        f"Every phrase in every voice, made by `{counts['command']}` on {counts['date']}. Noise is",
        f"a made kitchen, {DECIBELS} dB below the loud parts. The letters have learned from other",
        "voices than these, but for the statistical ones: of those there are three speakers only,",
        "and they were learned from at other speeds. For the lines on speakers kept out, letters",
        "were trained without them (`--without slt`, `--without rms awb`), which are not shipped.",
        "",
        "| voice | clean: right | taken for another | of | 10 dB: right | taken for another | of |",
        "|---|---|---|---|---|---|---|",
        *(f"| {kind} | {_cells(row['clean'])} | {_cells(row['noise'])} |" for kind, row in rows),
    ]


def _cells(count: dict[str, int]) -> str:
    whole = sum(count.values())
    right = count.get("right", 0)
    return f"{right}, {100 * right / whole:.1f} % | {count.get('wrong', 0)} | {whole}"


def main() -> None:
    """Say everything, print what was not understood, and write the counts."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--into", type=Path, default=COUNTS)
    asked.add_argument("--voice", nargs="*", help="only these voices")
    asked.add_argument("--letters", type=Path, help="other weights than those that are shipped")
    given = asked.parse_args()
    ear = open_ear("en", threads=1)
    if isinstance(ear, Missing):
        print(ear.mend)
        return
    if given.letters and isinstance(ear, WhisperEar):
        ear._second_look = SecondLook(Letters(given.letters), POSSIBLE)
    rows: dict[str, dict[str, Counter[str]]] = defaultdict(lambda: defaultdict(Counter))
    learned = "speaker kept out of the learning" if given.letters else "learned at other speeds"
    for number, (kind, voice, phrase, allowed, sound) in enumerate(said(learned)):
        if given.voice and voice not in given.voice:
            continue
        noisy = in_kitchen(sound, DECIBELS, NOISES_FROM + number)
        for where, one in (("clean", sound), ("noise", noisy)):
            found = outcome(ear, phrase, allowed, one)
            rows[kind][where][found] += 1
            if found != "right":
                print(f"{found}: {kind} {voice} {where}: {phrase}", flush=True)
    command = "python -m tests.bench.bench_phrases"
    kept: dict[str, Any] = {}
    if given.letters and given.into.exists():
        kept = json.loads(given.into.read_text(encoding="utf-8"))["rows"]
        for kind, row in rows.items():
            for where, count in kept.get(kind, {}).items():
                row[where].update(count)
    date = str(datetime.now(UTC).date())
    counts = {"command": command, "date": date, "rows": kept | rows}
    given.into.write_text(json.dumps(counts, indent=1) + "\n", encoding="utf-8")
    print("\n".join(table(json.loads(given.into.read_text(encoding="utf-8")))))


if __name__ == "__main__":
    main()

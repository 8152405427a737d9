"""Hours of sound without phrases, and what of it is taken for one:

`python -m tests.bench.bench_tally --hours 10 --texts FILE`.

Each utterance is decoded once, and what was written down is judged by the phrases of all lists of
all shipped procedures together: a phrase counts as taken if on any list it would be. FILE keeps
what was written down, so that a run that was cut goes on where it stopped, and the same texts can
be judged again by other phrases. Only for an ear that writes down freely: the English one.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict, astuple, dataclass
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from kiosk.engine import commands as c
from kiosk.listening.ear import RATE, Ear, Fit, Heard, Utterance
from kiosk.listening.listener import hear_frames
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.settled import HARMLESS, settled
from kiosk.listening.sources import Samples
from kiosk.listening.whisper_ear import WhisperEar
from kiosk.listening.wording import NUMBER_WORDS, normal
from tests.speech.moments import moments, own_phrases
from tests.speech.negatives import KINDS, block, in_turn, unique_s

TALLY = Path(__file__).resolve().parents[2] / "models" / "tally-en.json"
ACTS = (
    ("hold", c.GivePhrase), ("next", (c.Confirm, c.Inspected, c.Resume)), ("yes", c.Yes),
    ("number", c.Read),
)  # fmt: skip
"""What confirms, the heaviest first; whatever else is said is a call."""
SHOW_EVERY = 50
REMEMBERED = 8


@dataclass(frozen=True, slots=True)
class Answer:
    """What an ear made of one utterance, given one list."""

    phrase: str
    """'' for none."""
    confidence: float | None
    at_second_look: bool
    noise_removed: bool
    fit: tuple[float, float, float, bool] | None
    """The numbers of a `Fit`, in their order."""


@dataclass(frozen=True, slots=True)
class Wrote:
    """What an ear wrote down of one utterance."""

    text: str
    answers: tuple[Answer, ...]
    """Given all phrases, and given those alone that confirm: there nothing else can fit better."""


@cache
def meanings(language: str) -> dict[str, str]:
    """Return every phrase of every list, with the heaviest that it means on any of them."""
    order = [name for name, _ in ACTS] + ["call"]
    found: dict[str, str] = {}
    for _, allowed in moments(language):
        for phrase, act in allowed.items():
            name = _weight(act)
            found[phrase] = min(found.get(phrase, name), name, key=order.index)
    return dict.fromkeys(own_phrases(language), "call") | found


def written(ear: Ear, language: str, kind: str, seed: int) -> dict[str, Any]:
    """Return what an ear writes down in one block."""
    sound = block(language, kind, seed)
    if sound is None:
        raise FileNotFoundError(f"the recordings for '{kind}' are gone")
    twice = Twice(ear, [one for one, name in meanings(language).items() if name != "call"])
    # One meaning for all: then each phrase acts as soon as it does on the shortest list.
    heard = hear_frames(Samples(sound).frames(), twice, dict.fromkeys(meanings(language), c.No()))
    wrote = [
        Wrote(one.text, (_answer(one), *map(_answer, twice.also.get(one.ended_at, ()))))
        for one in heard
        if one.text
    ]
    seconds = len(sound) / RATE
    return {"kind": kind, "seed": seed, "seconds": seconds, "wrote": [asdict(w) for w in wrote]}


class Twice:
    """An ear that hears what it wrote down of an utterance against a shorter list, too."""

    def __init__(self, ear: Ear, confirming: Sequence[str]) -> None:
        self.name, self.language = ear.name, ear.language
        self.also: dict[float, list[Heard]] = {}
        self._ear = remembering(ear)
        words = [one for one in confirming if NUMBER_WORDS.isdisjoint(normal(one).split())]
        self._lists = (tuple(words), tuple(one for one in confirming if one not in words))

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        """Return what the ear makes of it, given `allowed`."""
        heard = self._ear.hear(utterance, allowed)
        if heard.text:
            self.also[heard.ended_at] = [self._ear.hear(utterance, one) for one in self._lists]
        return heard


def remembering(ear: Ear) -> Ear:
    """Let a Whisper ear encode and write down each sound once, however many lists it is given."""
    if isinstance(ear, WhisperEar) and "_encode" not in vars(ear):
        encode, write = ear._encode, ear._write
        encoded: dict[bytes, Any] = {}
        wrote: dict[int, Any] = {}

        def encoded_once(samples: NDArray[np.float32]) -> Any:
            key = samples.tobytes()
            if key not in encoded:
                if len(encoded) >= REMEMBERED:
                    encoded.clear()
                    wrote.clear()
                encoded[key] = encode(samples)
            return encoded[key]

        def written_once(output: Any) -> Any:
            # Its sound is remembered with it, so that no other output gets its number.
            if id(output) not in wrote:
                wrote[id(output)] = write(output)
            return wrote[id(output)]

        vars(ear).update(_encode=encoded_once, _write=written_once)
    return ear


def _answer(heard: Heard) -> Answer:
    return Answer(
        heard.phrase or "", heard.confidence, heard.at_second_look, heard.noise_removed,
        None if heard.fit is None else astuple(heard.fit),
    )  # fmt: skip


def taken(wrote: Wrote, language: str) -> tuple[str, str] | None:
    """Return the phrase that a text is taken for on some list, and the heaviest that it means.

    A list is thought to hold no other phrase that fits better.
    """
    found = {}
    for one in wrote.answers:
        fit = None
        if one.fit is not None:
            a_letter, _, above_other, agreed = one.fit
            fit = Fit(a_letter, float("inf"), above_other, agreed)
        heard = Heard(
            wrote.text, one.phrase or None, one.confidence, "", "", 0.0, 0.0,
            at_second_look=one.at_second_look, noise_removed=one.noise_removed, fit=fit,
        )  # fmt: skip
        for allowed in _listing(language, one.phrase):
            if settled(heard, allowed).phrase is not None:
                found[_weight(allowed[one.phrase])] = one.phrase
    order = [*(name for name, _ in ACTS), "call"]
    heaviest = min(found, key=order.index, default=None)
    return None if heaviest is None else (found[heaviest], heaviest)


@cache
def _listing(language: str, phrase: str) -> tuple[Mapping[str, object], ...]:
    """Return the lists that a phrase stands on, one for each of its meanings."""
    listed = [*(allowed for _, allowed in moments(language)), own_phrases(language)]
    found = {_weight(one[phrase]): one for one in listed if phrase in one}
    return tuple(found.values())


def _weight(act: object) -> str:
    if isinstance(act, HARMLESS):
        return "call"
    return next((name for name, kind in ACTS if isinstance(act, kind)), "call")


def judged(rows: list[dict[str, Any]], language: str) -> dict[str, Any]:
    """Return, for each kind of sound, its hours and what was taken for a phrase."""
    seconds: Counter[str] = Counter()
    texts: Counter[str] = Counter()
    phrases: dict[str, dict[str, Counter[str]]] = defaultdict(lambda: defaultdict(Counter))
    for row in rows:
        kind = row["kind"]
        seconds[kind] += row["seconds"]
        texts[kind] += len(row["wrote"])
        for one in row["wrote"]:
            answers = (
                Answer(**(each | {"fit": each["fit"] and tuple(each["fit"])}))
                for each in one["answers"]
            )
            found = taken(Wrote(one["text"], tuple(answers)), language)
            if found is not None and (kind, found[1]) != ("digits", "number"):
                phrases[kind][found[1]][found[0]] += 1
    return {
        kind: {
            "what": KINDS[kind],
            "hours": round(seconds[kind] / 3600, 3),
            "unique_min": round(unique_s(kind) / 60, 1),
            "written": texts[kind],
            "taken": {name: dict(found) for name, found in phrases[kind].items()},
        }
        for kind in seconds
    }


def read_back(file: Path) -> list[dict[str, Any]]:
    """Return the rows of a file of texts; the last line may be cut."""
    if not file.exists():
        return []
    lines = file.read_text(encoding="utf-8").splitlines(keepends=True)
    return [json.loads(line) for line in lines if line.endswith("\n")]


def rows(language: str, hours: float, file: Path, ear: Ear) -> Iterator[list[dict[str, Any]]]:
    """Go on with the blocks that the file lacks; yield all rows after each."""
    found = read_back(file)
    have = {(row["kind"], row["seed"]) for row in found}
    made = sum(row["seconds"] for row in found)
    yield found
    with file.open("a", encoding="utf-8") as out:
        for kind, seed in in_turn(language):
            if made >= 3600 * hours:
                return
            if (kind, seed) not in have:
                row = written(ear, language, kind, seed)
                found.append(row)
                made += row["seconds"]
                out.write(json.dumps(row, ensure_ascii=False) + "\n")
                out.flush()
                yield found


def table(tally: dict[str, Any]) -> list[str]:
    """Return a tally as a table of hours and of what was taken, for a page."""
    kinds = tally["kinds"].values()
    columns = [*(name for name, _ in ACTS), "call"]
    hours = sum(one["hours"] for one in kinds)
    everything = {
        "what": "all",
        "hours": hours,
        "unique_min": sum(one["unique_min"] for one in kinds),
        "written": sum(one["written"] for one in kinds),
        "taken": {name: {"": sum(_times(one, name) for one in kinds)} for name in columns},
    }
    return [
        f"False accepts in {hours:.1f} hours of sound that holds no phrase, made by",
        f"`{tally['command']}` on {tally['date']}, ear {tally['ear']}. Each utterance is decoded",
        "once and judged by the phrases of all lists together. Recordings come again and again, at",
        "0.85 to 1.2 of their speed and in made noise at 30, 20 and 10 dB. Numbers that people say",
        "among single words are numbers.",
        "",
        f"| sound | hours | different recordings, min | texts | {' | '.join(columns)} |",
        "|---" * (4 + len(columns)) + "|",
        *(_row(one, [_times(one, name) for name in columns]) for one in (*kinds, everything)),
        "",
        *(f"- {one['what']}: {_listed(one)}" for one in kinds if one["taken"]),
    ]


def _times(one: dict[str, Any], name: str) -> int:
    return sum(one["taken"].get(name, {}).values())


def _row(one: dict[str, Any], counts: list[int]) -> str:
    unique = f"{one['unique_min']:.1f}" if one["unique_min"] else ""
    cells = [one["what"], f"{one['hours']:.2f}", unique, str(one["written"]), *map(str, counts)]
    return f"| {' | '.join(cells)} |"


def _listed(one: dict[str, Any]) -> str:
    found = [pair for name in one["taken"].values() for pair in name.items()]
    return ", ".join(f"{phrase} {times}" for phrase, times in found)


def main() -> None:
    """Decode what is lacking, judge all texts, write the tally as it grows."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--hours", type=float, default=10.0)
    asked.add_argument("--texts", type=Path, required=True, help="where texts are kept")
    asked.add_argument("--into", type=Path, default=TALLY)
    given = asked.parse_args()
    ear = open_ear("en", threads=1)
    if isinstance(ear, Missing):
        print(ear.mend)
        return
    command = f"python -m tests.bench.bench_tally --hours {given.hours:g} --texts FILE"
    begun, number, found = time.perf_counter(), 0, []
    for number, found in enumerate(rows("en", given.hours, given.texts, ear)):
        if number % SHOW_EVERY == 0:
            _write(given.into, command, ear.name, found)
    _write(given.into, command, ear.name, found)
    print(given.into.read_text(encoding="utf-8"))
    print(f"{number} blocks decoded in {time.perf_counter() - begun:.0f} s", file=sys.stderr)


def _write(into: Path, command: str, ear: str, found: list[dict[str, Any]]) -> None:
    page = {"command": command, "date": str(datetime.now(UTC).date()), "ear": ear}
    page |= {"hours": round(sum(row["seconds"] for row in found) / 3600, 3)}
    text = json.dumps(page | {"kinds": judged(found, "en")}, indent=1, ensure_ascii=False)
    into.write_text(text + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()

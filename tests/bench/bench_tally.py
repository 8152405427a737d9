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
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Any

from kiosk.engine import commands as c
from kiosk.listening.ear import RATE, Ear, Heard
from kiosk.listening.listener import hear_frames
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.settled import HARMLESS, settled
from kiosk.listening.sources import Samples
from kiosk.listening.thresholds import THRESHOLDS, doubt
from kiosk.listening.wording import normal, said_once
from tests.speech.moments import moments, own_phrases
from tests.speech.negatives import KINDS, block, in_turn, unique_s

TALLY = Path(__file__).resolve().parents[2] / "models" / "tally-en.json"
ACTS = (("hold", c.GivePhrase), ("next", c.Confirm), ("yes", c.Yes), ("number", c.Read))
"""What confirms, the heaviest first; whatever else is said is a call."""
SHOW_EVERY = 50


@dataclass(frozen=True, slots=True)
class Wrote:
    """What an ear made of one utterance."""

    text: str
    confidence: float | None
    again: str
    """The phrase that a second look found, or ''."""
    noise_removed: bool = False


@cache
def meanings(language: str) -> dict[str, str]:
    """Return every phrase of every list, with the heaviest that it means on any of them."""
    order = [name for name, _ in ACTS] + ["call"]
    found: dict[str, str] = {}
    for _, allowed in moments(language):
        for phrase, act in allowed.items():
            name = next((name for name, kind in ACTS if isinstance(act, kind)), "call")
            name = "call" if isinstance(act, HARMLESS) else name
            found[phrase] = min(found.get(phrase, name), name, key=order.index)
    return dict.fromkeys(own_phrases(language), "call") | found


def written(ear: Ear, language: str, kind: str, seed: int) -> dict[str, Any]:
    """Return what an ear writes down in one block."""
    sound = block(language, kind, seed)
    if sound is None:
        raise FileNotFoundError(f"the recordings for '{kind}' are gone")
    # One meaning for all: then each phrase acts as soon as it does on the shortest list.
    heard = hear_frames(Samples(sound).frames(), ear, dict.fromkeys(meanings(language), c.No()))
    wrote = [
        Wrote(
            one.text,
            one.confidence,
            (one.phrase or "") if one.at_second_look else "",
            one.noise_removed,
        )
        for one in heard
        if one.text
    ]
    seconds = len(sound) / RATE
    return {"kind": kind, "seed": seed, "seconds": seconds, "wrote": [asdict(w) for w in wrote]}


def taken(wrote: Wrote, language: str) -> tuple[str, str] | None:
    """Return the phrase that a text is taken for on some list, and what it means."""
    known = meanings(language)
    if wrote.again:
        return (wrote.again, known[wrote.again]) if wrote.again in _bearing(language) else None
    by_text = _by_text(language)
    phrase = by_text.get(wrote.text) or by_text.get(said_once(wrote.text))
    if phrase is None or doubt(THRESHOLDS["whisper"], wrote.confidence, None):
        return None
    is_word = len(phrase.split()) == 1
    if wrote.noise_removed and is_word and known[phrase] not in ("call", "next"):
        return None
    return phrase, known[phrase]


@cache
def _bearing(language: str) -> frozenset[str]:
    """Return the phrases that a second look may bring on some list."""
    listed = [*(allowed for _, allowed in moments(language)), own_phrases(language)]
    found = set()
    for allowed in listed:
        for phrase in allowed:
            again = Heard(phrase, phrase, 1.0, "", "", 0.0, 0.0, at_second_look=True)
            if settled(again, allowed).phrase is not None:
                found.add(phrase)
    return frozenset(found)


@cache
def _by_text(language: str) -> dict[str, str]:
    return {normal(phrase): phrase for phrase in meanings(language)}


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
            found = taken(Wrote(**one), language)
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

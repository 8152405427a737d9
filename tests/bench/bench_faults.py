"""What the kiosk withstands: every fault many times over, and the table of it in FAULTS.md.

`python -m tests.bench.bench_faults [SHARE]` takes about twenty minutes; a SHARE of 0.1 makes a
tenth of the tries, and prints without writing the page. A fault that this machine cannot make is
left out and named.
"""

from __future__ import annotations

import asyncio
import multiprocessing
import os
import random
import shutil
import sys
import tempfile
import time
from collections.abc import Callable
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from itertools import repeat
from pathlib import Path

from tests.faults import clocks, disks, files, half_a_model, power, sounds, stalls, texts
from tests.faults.judging import ROOT, Withstood

PAGE = ROOT / "kiosk" / "journal" / "FAULTS.md"
_MEMORY = "/dev/shm" if Path("/dev/shm").is_dir() else None
"""Quicker than a disk. What is synced when is seen in the recorded calls."""
_SHOWN = 3
"""Sentences that are shown of one fault."""

HEAD = """# What the kiosk withstands

This page is written by `python -m tests.bench.bench_faults`; the tests in `tests/faults` do the
same in small. Each fault was made for real where a machine allows it, as often as the table says.
What the kiosk had shown as recorded was kept apart and looked for in the journal afterwards:
**lost** counts what was not there. Every session was then judged by the monitor of `kiosk log
audit`, which reads only the plan and the events: **passed** counts the rules that it found broken,
and answers that were taken for a question nobody had seen. **Damaged** counts journals whose chain
was not whole, acts of which only a part was there, kiosks that died of it, and acts that were done
though they should not have been, or not done though they could have been.

| fault | how it was made | tries | lost | passed | damaged |
|---|---|--:|--:|--:|--:|
"""
WORDS = """
## What the worker saw

The very sentences, with `…` for the folder of the run.

"""
FOOT = """## What this does not show

- A disk that says it has written and has not. The cuts take the system at its word: what was
  synced is there.
- Memory that flips a bit, or a processor that reckons wrong.
- Two clocks: the time since switching on is believed. Waits are measured by it alone.
- That the worker reads the sentence. It is said aloud too where there is a loudspeaker.
- A database that another tool keeps locked makes the screen wait five seconds before it says so.
"""


@dataclass(frozen=True, slots=True)
class Fault:
    """One row of the table."""

    name: str
    how: str
    tries: int
    make: Callable[[Path, int, random.Random], Withstood]
    lacks: Callable[[], str] = lambda: ""


def _once(make: Callable[[Path], Withstood]) -> Callable[[Path, int, random.Random], Withstood]:
    return lambda folder, _tries, _chance: make(folder)


def _stalls(folder: Path, tries: int, _: random.Random) -> Withstood:
    found = Withstood()
    for number in range(tries):
        way = stalls.WAYS[number % len(stalls.WAYS)]
        one = asyncio.run(stalls.stalled(folder / f"stall-{number}", way))
        found.tries += one.tries
        found.lost += one.lost
        found.bypassed += one.bypassed
        found.broken += one.broken
        found.saw(*one.seen)
    return found


def _model(engine: str) -> Callable[[Path, int, random.Random], Withstood]:
    return lambda folder, tries, chance: half_a_model.half_copied(engine, folder, tries, chance)


def _no_strace() -> str:
    return "" if shutil.which("strace") else "strace is missing"


def _no_sound() -> str:
    from tests.sound_server import missing_for_a_sound_server

    return missing_for_a_sound_server()


def _no_model(engine: str) -> Callable[[], str]:
    return lambda: "" if half_a_model.whole(engine) else f"no whole {engine} model is installed"


FAULTS = (
    Fault("killed", "`kill -9` at a random moment, again and again on one journal", 1000,
          disks.killed),
    Fault("power cut in a write", "the log cut at any byte of one act's write, also where it "
          "begins anew over old bytes", 1000, power.cut_in_the_log),
    Fault("power cut while tidying", "each page of the database old, new, or torn at any byte "
          "while the log is brought into it", 200, power.cut_while_tidying),
    Fault("power cut between any two calls", "the calls that the database really made were "
          "recorded by strace, from the first opening of a journal to its closing; what was not "
          "synced is there whole, torn or not at all", 300,
          power.cut_between_recorded_calls, _no_strace),
    Fault("disk full", "a small disk filled up to any number of bytes in the middle of a walk, "
          "then freed", 200, disks.full),
    Fault("disk turned read-only", "an ext4 disk with an error, which the system turns read-only "
          "in the middle of a walk", 20, disks.turned_read_only),
    Fault("disk read-only at the start", "`kiosk demo` on a disk mounted read-only", 1,
          _once(disks.read_only_from_the_start)),
    Fault("disk that stalls", "one write takes five seconds; meanwhile the worker touches again, "
          "presses the same key or another, or is heard again", 20, _stalls),
    Fault("database locked", "another tool keeps it locked while the worker presses", 200,
          disks.locked),
    Fault("journal moved away", "the file or its log renamed while it is open, and put back", 100,
          disks.moved_away),
    Fault("log deleted", "`journal.db-wal` deleted while it is open, and the kiosk closed", 50,
          disks.log_deleted),
    Fault("second kiosk started", "`kiosk demo` where another kiosk works", 1,
          _once(disks.second_start)),
    Fault("two kiosks in one session", "the file of the lock deleted, a second kiosk started, both "
          "pressed in turn", 200, disks.two_kiosks),
    Fault("clock set", "the wall clock set back or forward in the middle of a wait, by seconds to "
          "years, or to 1970", 36, clocks.set_in_a_wait),
    Fault("loudspeaker unplugged", "the sound server taken away in the middle of a sentence", 10,
          sounds.speaker_unplugged, _no_sound),
    Fault("microphone unplugged", "the source fails or falls silent, also while the ear is loaded",
          20, sounds.microphone_unplugged),
    Fault("model half copied (Vosk)", "copying broken off in any file, with or without the rest",
          12, _model("vosk"), _no_model("vosk")),
    Fault("model half copied (Whisper)", "the same", 12, _model("whisper"), _no_model("whisper")),
    Fault("procedure spoiled", "the file cut, doubled, indented or mistyped while it is walked; "
          "the kiosk restarted", 25, files.procedure_spoiled),
    Fault("files beside the journal spoiled", "names, PINs, checkpoints, key, ledger, proofs: "
          "cut, noise, zeros, deleted", 42, files.beside_spoiled),
    Fault("hostile texts", "every text of every fact there is: control characters, lone "
          "surrogates, quotes, any characters at all, 100,000 letters", 100, texts.hostile_texts),
    Fault("very long session", "to and fro over its steps; the tries are its events", 10_000,
          texts.very_long),
)  # fmt: skip


def main() -> None:
    """Make every fault, print each row when it is there, and write the page."""
    share = float(sys.argv[1]) if len(sys.argv) > 1 else 1.0
    rows, said, left_out = list[str](), list[str](), list[str]()
    # Most of it waits for other processes and for the disk.
    workers = 2 * (os.cpu_count() or 1)
    with ProcessPoolExecutor(workers, mp_context=multiprocessing.get_context("spawn")) as pool:
        made = pool.map(_make, range(len(FAULTS)), repeat(share))
        for fault, (found, lacks, seconds) in zip(FAULTS, made, strict=True):
            if found is None:
                left_out.append(f"- {fault.name}: {lacks}")
                print(left_out[-1], flush=True)
                continue
            row = (fault.name, fault.how, found.tries, found.lost, found.bypassed, found.broken)
            rows.append(f"| {' | '.join(map(str, row))} |")
            print(f"{seconds:6.1f} s  {rows[-1]}", flush=True)
            said += [f"**{fault.name}**", "", *_quoted(found.seen), ""]
    page = HEAD + "\n".join(rows) + "\n"
    if left_out:
        page += "\nNot made on this machine:\n\n" + "\n".join(left_out) + "\n"
    page += WORDS + "\n".join(said) + "\n" + FOOT
    if share >= 1.0:
        PAGE.write_text(page, encoding="utf-8")
    else:
        print(page)


def _make(number: int, share: float) -> tuple[Withstood | None, str, float]:
    """Make one fault; return what became of it, or what this machine lacks, and the seconds."""
    fault, began = FAULTS[number], time.monotonic()
    lacks = fault.lacks()
    if lacks:
        return None, lacks, 0.0
    with tempfile.TemporaryDirectory(dir=_MEMORY) as folder:
        tries = max(1, round(fault.tries * share))
        try:
            found = fault.make(Path(folder), tries, random.Random(number))
        except disks.NoSuchDisk as error:
            return None, str(error), 0.0
    return found, "", time.monotonic() - began


def _quoted(seen: list[str]) -> list[str]:
    if not seen:
        return ["(nothing: the walk went on as ever)"]
    shown = "\n>\n".join(f"> {one}" for one in seen[:_SHOWN])
    more = len(seen) - _SHOWN
    return [shown, *(["", f"and {more} more of the kind."] if more > 0 else [])]


if __name__ == "__main__":
    main()

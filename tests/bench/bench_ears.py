"""Figures of the ears on this machine: `python -m tests.bench.bench_ears [--quick] [--hours N]`.

`--waits` measures the time from end of speech to event alone, in a minute or two: it tells the
truth on a quiet machine only. Where `bench_tally` has left its file, the English false accepts are
taken from there.
"""

from __future__ import annotations

import argparse
import json
import os
import platform
import subprocess
import sys
import time
from datetime import UTC, datetime
from pathlib import Path

from kiosk.listening.models import Missing, open_ear
from tests.bench import bench_phrases
from tests.bench.bench_tally import TALLY, table
from tests.bench.ears_figures import Figures, false_accepts, figures, resident_mb, timed

LANGUAGES = ("en", "ko")
FALSE_HEAD = (
    "| sound | list | hours | taken | an hour | confirming an hour | most often |",
    "|---|---|---|---|---|---|---|",
)
PAGE = Path(__file__).resolve().parents[2] / "models" / "EARS.md"


def main() -> None:
    """Judge every ear that can be had in a process of its own, and write the page."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--quick", action="store_true", help="a sample of everything, 5 minutes")
    asked.add_argument("--hours", type=float, help="of sound without phrases, for each language")
    asked.add_argument("--into", type=Path, default=PAGE, help="the page that is written")
    asked.add_argument("--language", choices=LANGUAGES, help="judge one, and print its figures")
    asked.add_argument("--false-accepts", action="store_true", help="nothing else, to the screen")
    asked.add_argument("--waits", action="store_true", help="nothing else, to the screen")
    given = asked.parse_args()
    hours = given.hours if given.hours is not None else (0.03 if given.quick else 0.2)
    if given.waits:
        for language in [given.language] if given.language else LANGUAGES:
            _print_waits(language)
        return
    if given.false_accepts:
        for language in [given.language] if given.language else LANGUAGES:
            ear = open_ear(language)
            rows = [] if isinstance(ear, Missing) else false_accepts(ear, language, hours)
            print("\n".join(["", language, *FALSE_HEAD, *map(_false, rows)]), flush=True)
        return
    if given.language:
        print(json.dumps(judge(given.language, hours, given.quick), ensure_ascii=False))
        return
    command = " ".join(["python -m tests.bench.bench_ears", *sys.argv[1:]])
    found = {one: _judged_apart(one, hours, given.quick) for one in LANGUAGES}
    text = page(command, found)
    print(text)
    given.into.write_text(text, encoding="utf-8")


def _print_waits(language: str) -> None:
    ear = open_ear(language)
    if isinstance(ear, Missing):
        print(ear.mend)
        return
    columns, count = timed(ear, language)
    gate, sound = (f"median {median:.0f}, p95 {p95:.0f}" for median, p95 in columns)
    print(f"{language}, {ear.name}, {count} phrases, ms from the gate's end of speech: {gate}; ")
    print(f"    from the end of the sound itself: {sound}; load {os.getloadavg()[0]:.1f}")


def _judged_apart(language: str, hours: float, quick: bool) -> Figures:
    command = [sys.executable, "-m", "tests.bench.bench_ears", "--language", language]
    command += ["--hours", str(hours), *(["--quick"] if quick else [])]
    done = subprocess.run(command, stdout=subprocess.PIPE, text=True, check=True)
    found: Figures = json.loads(done.stdout.splitlines()[-1])
    return found


def judge(language: str, hours: float, quick: bool) -> Figures:
    """Load one ear and return what it costs and what it understands."""
    before, begun = resident_mb(), time.perf_counter()
    ear = open_ear(language)
    if isinstance(ear, Missing):
        return {"missing": ear.mend}
    loaded = {
        "ear": ear.name,
        "loaded_s": time.perf_counter() - begun,
        "model_mb": resident_mb() - before,
    }
    return loaded | figures(ear, language, hours, quick)


def page(command: str, found: dict[str, Figures]) -> str:
    """Return the page of figures."""
    lines = [
        "# How well the ears hear",
        "",
        f"Made by `{command}` on {datetime.now(UTC).date()}: {platform.machine()}, "
        f"{os.cpu_count()} cores, Python {platform.python_version()}.",
        "Voices are synthetic (espeak-ng, the formant kind) unless a line says people or another",
        "kind: neural is a voice trained on a person, statistical and diphone are older ways to",
        "speak. A phrase counts as right when what was heard means the same. Noise levels are",
        "below the loud parts of the speech.",
    ]
    for language, one in found.items():
        lines += ["", f"## {language}: {one.get('ear', 'no ear')}", ""]
        lines += [one["missing"]] if "missing" in one else _of_ear(one)
        if language == "en" and bench_phrases.COUNTS.exists():
            counts = json.loads(bench_phrases.COUNTS.read_text(encoding="utf-8"))
            lines += ["", *bench_phrases.table(counts)]
        if language == "en" and TALLY.exists():
            lines += ["", *table(json.loads(TALLY.read_text(encoding="utf-8")))]
    return "\n".join(lines) + "\n"


def _of_ear(one: Figures) -> list[str]:
    gate1, sound1, gate2, sound2 = (f"{median:.0f}, p95 {p95:.0f}" for median, p95 in one["waits"])
    decode = "median {:.0f}, p95 {:.0f}".format(*one["decode"])
    return [
        "| what | figure |",
        "|---|---|",
        f"| end of speech to event, in real time, {one['timed']} phrases, run twice (ms) "
        f"| median {gate1}; {gate2} |",
        f"| the same from the end of the sound itself (ms) | median {sound1}; {sound2} |",
        f"| decoding (ms) | {decode} |",
        f"| decoding, seconds for a second of sound | {one['factor']:.3f} |",
        f"| listening to a quiet room, median of five | {100 * one['quiet']:.1f} % of one core |",
        f"| listening to constant talk | {100 * one['talk']:.1f} % of one core |",
        f"| loading | {one['loaded_s']:.2f} s, {one['model_mb']:.0f} MB |",
        f"| resident at the end, with the bench's own material | {one['resident_mb']:.0f} MB |",
        "",
        "| said | clips | right | taken for another | not understood |",
        "|---|---|---|---|---|",
        *(
            f"| {where} | {count['said']} | {_share(count, 'right')} | {_share(count, 'wrong')} "
            f"| {_share(count, 'missed')} |"
            for where, count in one["understanding"].items()
        ),
        *([] if not one["false"] else _of_false(one["false"])),
    ]


def _of_false(rows: list[Figures]) -> list[str]:
    return [
        "",
        "False accepts: sound that holds no phrase. A confirming one says next, yes, a hold's",
        "phrase or a number.",
        "",
        *FALSE_HEAD,
        *map(_false, rows),
    ]


def _share(count: dict[str, int], outcome: str) -> str:
    return f"{count.get(outcome, 0)}, {100 * count.get(outcome, 0) / count['said']:.1f} %"


def _false(row: Figures) -> str:
    most = ", ".join(f"{phrase} {times}" for phrase, times in row["most"])
    hours = row["hours"]
    return (
        f"| {row['kind']} | {row['list']} | {hours:.2f} | {row['taken']} "
        f"| {row['taken'] / hours:.1f} | {row['confirming'] / hours:.1f} | {most} |"
    )


if __name__ == "__main__":
    main()

"""How well the kiosk's voice is understood: a recogniser with free rein writes down what it says.

Run with `python -m tests.bench.bench_intelligible --write`; `--every 8` takes a part. Each sentence
is spoken with the voice, the pace and the spelling that a shop hears, and written down by a
recogniser that is given no list of phrases. Counted are words that came out otherwise, after
numbers, spelling and words that sound alike were made the same. A recogniser is no person: it lacks
trade words that a crew knows. So a voice that was trained on a person says the same (extra
`voices`), and what is lost from both is no fault of the kiosk's voice.
"""

from __future__ import annotations

import argparse
import os
import platform
import sys
import tempfile
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

import numpy as np

import kiosk
from kiosk.languages.words import languages, words
from kiosk.listening.sources import read_wave, resample
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.respelling import respellings, respelt
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import choice_for
from tests.bench.intelligible_ears import RECOGNISERS, Sound, lost_in, wrong_in
from tests.bench.intelligible_texts import REWORDED, said
from tests.speech.voices import voices

Speaks = Callable[[str], Sound]

PAGE = Path(kiosk.__file__).parent / "speaking" / "INTELLIGIBLE.md"
NOTES = {
    "ko": "This recogniser takes the Korean of espeak-ng for other words almost throughout. So"
    " nothing was respelt or worded anew by these figures, and they do not tell how people hear it."
}
"""What must be known of a language's figures."""
SILENCE = 4_800
"""Samples before and after a sentence."""
WORST = 20


@dataclass(frozen=True, slots=True)
class Case:
    """One sentence, and what was written down of it."""

    text: str
    kind: str
    wrote: str
    words: int
    wrong: int


@contextmanager
def kiosk_voice(language: str, *, as_written: bool = False, bare: bool = False) -> Iterator[Speaks]:
    """Give the voice of the kiosk; `as_written` leaves the respellings out, and `bare` the gaps
    between words and the brightness as well."""
    renderer = Renderer()
    voice = choice_for(language).voice if bare else None
    with tempfile.TemporaryDirectory() as folder:
        cache = PromptCache(Path(folder), renderer)

        def speak(text: str) -> Sound:
            file = Path(folder) / "as-written.wav"
            if as_written or bare:
                renderer.render(Speech(text, language, voice), file)
            else:
                file = cache.wave(Speech(text, language))
            samples, hertz = read_wave(file)
            return np.pad(resample(samples, hertz), SILENCE)

        try:
            yield speak
        finally:
            renderer.close()


def judged(texts: Iterable[tuple[str, str]], speak: Speaks, language: str) -> list[Case]:
    """Have texts, each with its kind, spoken and written down."""
    write, found = RECOGNISERS[language](), list[Case]()
    for text, kind in texts:
        wrote = write(speak(text))
        found.append(Case(text, kind, wrote, *wrong_in(text, wrote, language)))
        if len(found) % 100 == 0:
            print(f"{language}: {len(found)} sentences", file=sys.stderr, flush=True)
    return found


def figures(name: str, cases: Sequence[Case]) -> str:
    """Return one row of figures."""
    total, wrong = sum(one.words for one in cases), sum(one.wrong for one in cases)
    whole = sum(one.wrong == 0 for one in cases)
    share, rate = 100 * whole / len(cases), 100 * wrong / total
    return f"| {name} | {len(cases)} | {whole}, {share:.0f} % | {total} | {rate:.1f} % |"


def by_kind(cases: Sequence[Case]) -> Iterator[str]:
    """Yield a row for each kind of sentence, and one for all."""
    for kind in dict.fromkeys(one.kind for one in cases):
        yield figures(kind, [one for one in cases if one.kind == kind])
    yield figures("**all**", cases)


def report(language: str, every: int) -> list[str]:
    """Return what was measured in one language, as lines of a page."""
    unit = "syllables" if language == "ko" else "words"
    texts = list(said(language).items())[::every]
    with kiosk_voice(language) as speak:
        cases = judged(texts, speak, language)
    head = [f"| said | sentences | every {unit[:-1]} right | {unit} | wrong {unit} |",
            "|---|---|---|---|---|"]  # fmt: skip
    lines = [f"## {language}: {words(language).say('language-name')}", "", *head, *by_kind(cases)]
    return [
        *lines,
        "",
        *bare_rows(cases, language, head),
        *respelt_rows(cases, language, head),
        *reworded_rows(language, head),
        *person_rows(cases, language, every, head),
        *worst_rows(cases, language),
    ]


def bare_rows(cases: Sequence[Case], language: str, head: list[str]) -> list[str]:
    """Return every third sentence as it is said, and as espeak-ng says it when left to itself."""
    some = cases[::3]
    with kiosk_voice(language, bare=True) as speak:
        before = judged([(one.text, one.kind) for one in some], speak, language)
    rows = [figures("espeak-ng as it is", before), figures("the kiosk's voice", some)]
    return [
        "Every third of them, without and with what the kiosk does to it:",
        "",
        *head,
        *rows,
        "",
    ]


def respelt_rows(cases: Sequence[Case], language: str, head: list[str]) -> list[str]:
    """Return the sentences with a respelt word, as they are written and as they are said."""
    touched = [one for one in cases if respelt(one.text, language) != one.text]
    if not touched or not respellings(language):
        return []
    with kiosk_voice(language, as_written=True) as speak:
        before = judged([(one.text, one.kind) for one in touched], speak, language)
    rows = [figures("spelt as written", before), figures("spelt for the voice", touched)]
    return ["Sentences with a word that is spelt otherwise for the voice:", "", *head, *rows, ""]


def reworded_rows(language: str, head: list[str]) -> list[str]:
    """Return how sentences are understood that were worded anew, in both wordings."""
    pairs = REWORDED.get(language, {})
    if not pairs:
        return []
    with kiosk_voice(language, as_written=True) as speak:
        before = judged([(old, "") for old in pairs], speak, language)
    with kiosk_voice(language) as speak:
        after = judged([(new, "") for new in pairs.values()], speak, language)
    rows = [figures("the earlier wording", before), figures("the wording now", after)]
    listed = [f"- {old} → {new}" for old, new in pairs.items()]
    return ["Sentences that were worded anew:", "", *head, *rows, "", *listed, ""]


def person_rows(cases: Sequence[Case], language: str, every: int, head: list[str]) -> list[str]:
    """Return what the same recogniser makes of a voice that was trained on a person."""
    natural = [one for one in voices() if one.kind == "neural" and one.name == "joe, usual"]
    if language != "en" or not natural:
        return []
    steps = [one for one in cases if one.kind == "step"][:: max(1, 6 // every)]
    spoken = judged([(one.text, one.kind) for one in steps],
                    lambda text: natural[0].say(text.rstrip(".")), language)  # fmt: skip
    rows = [figures("a person's voice", spoken), figures("the kiosk's voice", steps)]
    return [
        "A part of the steps, said by a neural voice trained on a person:",
        "",
        *head,
        *rows,
        "",
    ]


def worst_rows(cases: Sequence[Case], language: str) -> list[str]:
    """Return the words that are lost most often, and the sentences that are lost most.

    A recogniser that loses more than half tells nothing about one word or sentence.
    """
    if 2 * sum(one.wrong for one in cases) > sum(one.words for one in cases):
        return ["More than half is lost, so no word and no sentence is listed."]
    lost: Counter[str] = Counter()
    taken: dict[str, Counter[str]] = {}
    for one in cases:
        for word, became in lost_in(one.text, one.wrote, language):
            lost[word] += 1
            taken.setdefault(word, Counter())[became or "nothing"] += 1
    most = [
        f"{word} {count} ({', '.join(name for name, _ in taken[word].most_common(3))})"
        for word, count in lost.most_common(2 * WORST)
    ]
    ordered = sorted(cases, key=lambda one: one.wrong / max(1, one.words), reverse=True)
    worst = [f"| {one.text} | {one.wrote.strip()} |" for one in ordered[:WORST] if one.wrong]
    return [
        f"Lost most often: {'; '.join(most)}.",
        "",
        "| said | written down |",
        "|---|---|",
        *worst,
    ]


def made_by(command: str) -> str:
    """Return how, when and on what a section was made."""
    machine = f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}"
    return f"Made by `{command}` on {datetime.now(UTC).date().isoformat()}: {machine}."


def head() -> str:
    """Return the head of the page."""
    others = ", ".join(one for one in languages() if one not in RECOGNISERS)
    return f"""# How well the voice is understood

The voice is espeak-ng through pyttsx3, at the pace and with the gaps of `kiosk/speaking/voices.py`,
made brighter by `kiosk/speaking/brighten.py`. English is written down by Whisper tiny.en, Korean by
the small Vosk model, both with free rein: no list of phrases. They know few trade words, and they
are no people, so the figures are good for finding what is said badly and for comparing two ways to
say it, and no more: nobody was asked. For {others} no recogniser is known that could be
installed here.
"""


def write(sections: dict[str, str]) -> None:
    """Put the sections of some languages into the page, in place of what it said of them."""
    text = PAGE.read_text("utf-8") if PAGE.exists() else ""
    there = {one[:2]: f"## {one.strip()}\n" for one in text.split("\n## ")[1:]}
    known = {**there, **sections}
    whole = [head(), *(known[one] for one in RECOGNISERS if one in known)]
    PAGE.write_text("\n".join(whole), encoding="utf-8")


def main() -> None:
    """Print what was measured, and write it into its page with `--write`."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--language", action="append", choices=RECOGNISERS)
    parser.add_argument("--every", type=int, default=1)
    parser.add_argument("--write", action="store_true")
    got = parser.parse_args()
    command = " ".join(["python -m tests.bench.bench_intelligible", *sys.argv[1:]])
    sections = {}
    for language in got.language or RECOGNISERS:
        title, *lines = report(language, got.every)
        made = f"{made_by(command)} {NOTES.get(language, '')}".strip()
        sections[language] = "\n".join([title, "", made, *lines, ""])
        print(sections[language])
    if got.write:
        write(sections)


if __name__ == "__main__":
    main()

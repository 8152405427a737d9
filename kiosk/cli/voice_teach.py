"""`kiosk voice teach`: takes the worker's own words for the kiosk's commands."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path
from typing import Final

from kiosk.cli.place import Failed, data
from kiosk.cli.voice_test import open_source, spoken_language
from kiosk.languages.words import Words, words
from kiosk.listening.own_words import SAMPLES, TEACHABLE, fault_of, forget, keep, understood
from kiosk.listening.taking import SoundEnded, Taker
from kiosk.listening.templates import Sample, sample_of
from kiosk.procedure.site import Person, Site

WORD_S: Final = 8.0
"""How long a word is waited for."""
MOST_TRIES: Final = 10
"""Of one word, good ones included."""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    teach = commands.add_parser(
        "teach",
        help="teach the kiosk a worker's own words for seven commands",
        description="Each word is said three times. What is kept is how it sounds, as numbers, and"
        " no recording. No safety hold can be answered with it.",
    )
    teach.add_argument(
        "language", nargs="?", metavar="LANG", help="language tag (default: the worker's)"
    )
    teach.add_argument("--worker", required=True, metavar="ID", help="id in the site file")
    teach.add_argument("--forget", action="store_true", help="remove the worker's words")
    teach.add_argument("--source", type=Path, metavar="FILE.wav", help="instead of the microphone")
    teach.set_defaults(command=_teach)


def _teach(parsed: argparse.Namespace) -> int:
    folder, site = data()
    worker = worker_of(site, parsed.worker)
    language = spoken_language(parsed.language or worker.language)
    say = words(language).say
    if parsed.forget:
        there = forget(folder, worker.id, language)
        print(say("teach-forgotten" if there else "teach-nothing-kept", worker=worker.name))
        return 0
    source = open_source(parsed.source)
    try:
        taken = Lesson(Taker(source), words(language), print).run()
    except SoundEnded as error:
        raise Failed(str(error)) from error
    finally:
        source.close()
    file = keep(folder, worker.id, language, taken)
    said = sum(len(samples) for samples in taken.values())
    print(say("teach-tried", right=str(understood(taken)), said=str(said)))
    print(say("teach-kept", file=str(file)))
    print(say("teach-holds"))
    return 0


def worker_of(site: Site, worker: str) -> Person:
    """Return somebody on the list by id. Raises Failed."""
    people = {one.id: one for one in site.people}
    if worker not in people:
        known = ", ".join(f"{one.id} ({one.name})" for one in site.people)
        raise Failed(f"The site file lists no worker '{worker}'. There are: {known}.")
    return people[worker]


class Lesson:
    """One lesson: asks for each word until it has three good samples of it."""

    def __init__(self, taker: Taker, said: Words, tell: Callable[[str], object]) -> None:
        self._taker = taker
        self._words = said
        self._tell = tell

    def run(self) -> dict[str, list[Sample]]:
        """Return the samples of all words. Raises Failed, SoundEnded; then nothing is kept."""
        say = self._words.say
        self._tell(say("teach-begin"))
        taken: dict[str, list[Sample]] = {}
        for place, (word, act) in enumerate(TEACHABLE.items(), 1):
            phrase = self._words.phrases(act)[0]
            self._tell(f"{place}/{len(TEACHABLE)} {say('teach-word', word=phrase)}")
            self._take(word, phrase, taken)
        return taken

    def _take(self, word: str, phrase: str, taken: dict[str, list[Sample]]) -> None:
        samples = taken.setdefault(word, [])
        for _ in range(MOST_TRIES):
            self._tell(f"   {len(samples) + 1}/{SAMPLES}")
            said = self._taker.utterance(WORD_S)
            fault = "teach-nothing-heard"
            sample = None if said is None else sample_of(said.samples)
            if said is not None:
                fault = fault_of(said, sample, word, taken)
            if fault:
                self._tell(f"      {self._words.say(fault)}")
                if fault == "teach-unlike" and len(samples) == 1:
                    samples.clear()
            elif sample is not None:
                samples.append(sample)
            if len(samples) == SAMPLES:
                return
        raise Failed(self._words.say("teach-given-up", word=phrase))

"""`kiosk voice test`: tells whether a place is good enough for walking by voice."""

from __future__ import annotations

import argparse
import statistics
import sys
from collections.abc import Callable, Mapping
from math import log10
from pathlib import Path
from typing import Final

from kiosk.cli.place import Failed, data
from kiosk.engine import commands as c
from kiosk.languages.words import Words, languages, words
from kiosk.listening.ear import Ear, Utterance
from kiosk.listening.microphone import NoMicrophone, open_microphone
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.settled import settled
from kiosk.listening.sources import Source, SourceTrouble, WaveFile
from kiosk.listening.spot import Commands, Level, Room, dbfs, level_of, rms_of, verdict
from kiosk.listening.taking import SoundEnded, Taker

SPEAK_S: Final = 4.0
SILENT_S: Final = 5.0
PHRASE_S: Final = 6.0
"""How long a phrase is waited for."""
ACTS: Final = (
    c.Confirm(), c.Yes(), c.No(), c.SayAgain(), c.Back(), c.CallProblem(), c.Pause(), c.Resume(),
    c.HandOver("", ""), c.TakeOutOfService(),
)  # fmt: skip
"""The ten commands that are said."""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    test = commands.add_parser(
        "test", help="try whether this place is good enough for walking by voice"
    )
    test.add_argument("--language", metavar="LANG", help="language tag (default: the site's first)")
    test.add_argument("--source", type=Path, metavar="FILE.wav", help="instead of the microphone")
    test.set_defaults(command=_test)


def _test(parsed: argparse.Namespace) -> int:
    folder, site = data()
    language = spoken_language(parsed.language or site.languages[0])
    with_sound = open_source(parsed.source)
    try:
        found = open_ear(language, folder)
        good = Trial(Taker(with_sound), words(language), print).run(found)
    except SoundEnded as error:
        raise Failed(str(error)) from error
    finally:
        with_sound.close()
    return 0 if good else 1


def spoken_language(language: str) -> str:
    """Return a language that the kiosk has words in. Raises Failed."""
    if language not in languages():
        known = ", ".join(languages())
        raise Failed(f"The kiosk has no words in '{language}'. It speaks: {known}.")
    return language


def open_source(file: Path | None) -> Source:
    """Open a wave file, or the microphone. Raises Failed with the plain reason."""
    try:
        return open_microphone() if file is None else WaveFile(file)
    except NoMicrophone as error:
        raise Failed(
            f"Nothing can be heard here: {error}. Plug in a microphone or headset, and try again."
        ) from error
    except SourceTrouble as error:
        raise Failed(str(error)) from error


class Trial:
    """One trial of a place: says what to do, and what came of it."""

    def __init__(self, taker: Taker, said: Words, tell: Callable[[str], object]) -> None:
        self._taker = taker
        self._words = said
        self._tell = tell

    def run(self, found: Ear | Missing) -> bool:
        """Try level, noise and commands; return whether the place is good enough."""
        self._say("voice-test-begin")
        level, room = self._level(), self._room()
        heard: Commands | None = None
        if isinstance(found, Missing):
            self._say("voice-test-no-ear", why=found.mend)
        else:
            heard = self._commands(found, room)
        judged = verdict(level, room, heard)
        self._tell("")
        self._say("voice-test-good" if judged.good else "voice-test-bad")
        for name in judged.advice:
            self._tell(f"- {self._words.say(name)}")
        return judged.good

    def _level(self) -> Level:
        self._say("voice-test-speak", seconds=f"{SPEAK_S:.0f}")
        stretch = self._taker.stretch(SPEAK_S)
        level = level_of(stretch.samples, stretch.speech_rms)
        self._say("voice-test-level", peak=_db(level.peak), rms=_db(level.speech_rms))
        return level

    def _room(self) -> Room:
        self._say("voice-test-silent", seconds=f"{SILENT_S:.0f}")
        stretch = self._taker.stretch(SILENT_S)
        room = Room(rms_of(stretch.samples), stretch.openings)
        self._say("voice-test-noise", rms=_db(room.rms), n=room.openings)
        return room

    def _commands(self, ear: Ear, room: Room) -> Commands:
        phrases = {self._words.phrases(act)[0]: act for act in ACTS}
        self._say("voice-test-say")
        counts = {"right": 0, "wrong": 0, "rejected": 0, "silent": 0}
        louder: list[float] = []
        for place, phrase in enumerate(phrases, 1):
            self._tell(f"   {place}/{len(phrases)}: {phrase}")
            said = self._taker.utterance(PHRASE_S)
            outcome, told = self._outcome(ear, said, phrase, phrases)
            counts[outcome] += 1
            over = None if said is None else above(said.speech_rms, room)
            if over is not None:
                louder.append(over)
                told = f"{told} ({over:.0f} dB)"
            self._tell(f"      {told}")
        middle = statistics.median(louder) if louder else None
        heard = Commands(**counts, above_noise_db=middle)
        self._say(
            "voice-test-count",
            right=str(heard.right), said=str(heard.said), wrong=str(heard.wrong),
            rejected=str(heard.rejected + heard.silent),
        )  # fmt: skip
        if middle is not None:
            self._say("voice-test-above", decibels=f"{middle:.0f}")
        return heard

    def _outcome(
        self, ear: Ear, said: Utterance | None, phrase: str, phrases: Mapping[str, c.Act]
    ) -> tuple[str, str]:
        if said is None:
            return "silent", self._words.say("voice-test-nothing")
        heard = settled(ear.hear(said, tuple(phrases)), phrases)
        if heard.phrase is None:
            return "rejected", self._words.say("voice-test-rejected")
        if heard.phrase != phrase:
            return "wrong", self._words.say("voice-test-wrong", text=heard.phrase)
        return "right", self._words.say("voice-test-right")

    def _say(self, name: str, **args: object) -> None:
        self._tell(self._words.say(name, **args))
        sys.stdout.flush()


def above(speech_rms: float, room: Room) -> float | None:
    """Return by how many decibels speech was louder than the room; None if that is not known."""
    return 20 * log10(speech_rms / room.rms) if speech_rms > 0 and room.rms > 0 else None


def _db(rms: float) -> str:
    return f"{dbfs(rms):.0f}"

"""`kiosk voice record`: a crew member reads the prompts aloud, and the kiosk plays them."""

from __future__ import annotations

import argparse
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

import numpy as np

from kiosk.cli.place import Failed, data
from kiosk.cli.place import library as library_of
from kiosk.cli.voice_teach import worker_of
from kiosk.cli.voice_test import open_source, spoken_language
from kiosk.clock import SystemClock
from kiosk.languages.words import Words, words
from kiosk.listening.ear import RATE
from kiosk.listening.sources import Source
from kiosk.procedure.load import Library
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Site
from kiosk.remarks.recorder import Recorder
from kiosk.setup.check import plans_of
from kiosk.speaking.kiosk_voice import OVERDUE_S
from kiosk.speaking.player import NoSpeaker, open_player, wave_seconds
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recording_round import RecordingRound
from kiosk.speaking.recordings import Recordings, RecordingsFailed, standing
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.sentences import said_on
from kiosk.speaking.speech import Speech
from kiosk.speaking.takes import Take
from kiosk.speaking.voices import SpeechFailed
from kiosk.speaking.waves import Samples

AGAIN, SKIP, STOP = "a", "s", "q"
"""What is typed; Enter alone goes on."""
FLOOR_DB: Final = -60.0
BAR: Final = 20
"""Cells of the level, from the floor to full scale."""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    record = commands.add_parser(
        "record",
        help="record prompts in a crew member's own voice, sentence by sentence",
        description="The kiosk plays a recorded sentence wherever it would say that very text; an"
        " edited sentence is said by the synthesiser again. Recordings lie in the data folder and"
        " go with 'kiosk people erase ID'.",
    )
    record.add_argument(
        "procedure", nargs="?", metavar="PROCEDURE", help="id (default: all that are walked here)"
    )
    record.add_argument("--language", metavar="LANG", help="default: the worker's, or the site's")
    record.add_argument("--worker", metavar="ID", help="who speaks: id in the site file")
    record.add_argument("--again", action="store_true", help="also what is recorded already")
    record.add_argument("--list", action="store_true", help="what is recorded, missing and stale")
    record.add_argument("--forget", action="store_true", help="remove the worker's recordings")
    record.add_argument("--source", type=Path, metavar="FILE.wav", help="instead of the microphone")
    record.set_defaults(command=_record)


def _record(parsed: argparse.Namespace) -> int:
    folder, site = data()
    recordings = Recordings(folder)
    try:
        if parsed.list:
            return _list(site, recordings, parsed.procedure, parsed.language)
        if parsed.worker is None:
            raise Failed("Name who speaks: --worker ID. 'kiosk people list' shows the ids.")
        worker = worker_of(site, parsed.worker)
        language = spoken_language(parsed.language or worker.language)
        say = words(language).say
        if parsed.forget:
            print(say("recording-erased", n=recordings.erase(worker.id)))
            return 0
        said = sentences_of(site, language, parsed.procedure)
        wanted = said if parsed.again else standing(recordings, said, language).missing
        if not wanted:
            print(say("recording-all-there"))
            return 0
        source = open_source(parsed.source)
        with lengths(folder, language) as usual_s:
            round_ = RecordingRound(wanted, language, worker.id, recordings, usual_s)
            try:
                Booth(round_, source, words(language), print, input, play).run()
            finally:
                source.close()
        return 0
    except RecordingsFailed as error:
        raise Failed(words(site.languages[0]).told(str(error))) from error


def sentences_of(site: Site, language: str, procedure: str | None = None) -> tuple[str, ...]:
    """Return what is said on the walks of a site, or on those of one procedure. Raises Failed."""
    plans = list(_plans(site, library_of(data()[0], site), procedure))
    if not plans:
        raise Failed(f"No machine here walks a procedure '{procedure}'.")
    return tuple(dict.fromkeys(one for plan in plans for one in said_on(plan, words(language))))


def _plans(site: Site, library: Library, procedure: str | None) -> Iterator[Plan]:
    for machine in site.machines:
        for plan in plans_of(site, machine, library):
            if procedure in (None, plan.procedure):
                yield plan


def _list(site: Site, recordings: Recordings, procedure: str | None, language: str | None) -> int:
    names = {one.id: one.name for one in site.people}
    for one in [spoken_language(language)] if language else site.languages:
        say = words(one).say
        stands = standing(recordings, sentences_of(site, one, procedure), one)
        print(f"{one}  {say('language-name')}")
        for kind, found in (("recorded", stands.recorded), ("stale", stands.stale)):
            for recording in found:
                day = datetime.fromtimestamp(recording.at_utc, UTC).date().isoformat()
                by = names.get(recording.by, recording.by)
                print(f"  {say(f'recording-{kind}')}  {day}  {by}  {recording.text}")
        for text in stands.missing:
            print(f"  {say('recording-missing')}  {text}")
        counts = {
            "recorded": len(stands.recorded),
            "missing": len(stands.missing),
            "stale": len(stands.stale),
        }
        print(say("recording-standing", **counts))
    return 0


@contextmanager
def lengths(folder: Path, language: str) -> Iterator[Callable[[str], float]]:
    """Give the seconds that the synthesiser needs for a sentence; 0 where it cannot speak."""
    renderer = Renderer()

    def usual_s(sentence: str) -> float:
        try:
            cache = PromptCache(folder / "prompts", renderer)
            return wave_seconds(cache.wave(Speech(sentence, language)))
        except SpeechFailed:
            return 0.0

    try:
        yield usual_s
    finally:
        renderer.close()


def play(file: Path) -> None:
    """Play a wave file to its end. Raises NoSpeaker, SpeechFailed."""
    player = open_player()
    try:
        ended = threading.Event()
        sound = player.load(file)
        player.play(sound, lambda _: ended.set())
        ended.wait(sound.seconds + OVERDUE_S)
    finally:
        player.close()


class Booth:
    """Shows the sentences of a round at the terminal, and takes what is said."""

    def __init__(
        self,
        round_: RecordingRound,
        source: Source,
        said: Words,
        tell: Callable[[str], object],
        ask: Callable[[str], str],
        play: Callable[[Path], None],
    ) -> None:
        self._round = round_
        self._source = source
        self._frames = source.frames()
        self._say = said.say
        self._told = said.told
        self._tell = tell
        self._ask = ask
        self._play = play
        self._plays = True

    def run(self) -> None:
        """Go through the round until it ends or is stopped. Raises RecordingsFailed."""
        self._tell(self._say("recording-begin", count=self._round.count))
        while self._round.sentence is not None and self._one(self._round.sentence):
            pass
        left = self._round.count - self._round.kept
        self._tell(self._say("recording-done", kept=self._round.kept, left=left))

    def _one(self, sentence: str) -> bool:
        """Record one sentence; False to stop the round."""
        self._tell(f"\n{self._round.place}/{self._round.count}  {sentence}")
        answer = self._answer("recording-ready")
        while answer not in (SKIP, STOP):
            self._tell(self._say("recording-speak"))
            taken = self._take()
            if taken is None:
                self._tell(self._say("recording-no-sound"))
                return False
            self._judge(self._round.take(taken, RATE))
            usable = self._round.usable
            answer = self._answer("recording-keep" if usable else "recording-not-kept")
            if usable and answer not in (AGAIN, SKIP, STOP):
                self._round.keep(SystemClock().now().utc)
                return True
        if answer == SKIP:
            self._round.skip()
        return answer == SKIP

    def _take(self) -> Samples | None:
        """Return what is said from now until two seconds of silence; None when no sound comes."""
        recorder = Recorder(lambda: None)
        for _ in range(self._source.waiting() if self._source.live else 0):
            next(self._frames, None)
        taken: list[Samples] = []
        for frame in self._frames:
            taken.append(frame)
            recorder.take(frame)
            if recorder.ended is not None:
                break
        return np.concatenate(taken) if taken else None

    def _judge(self, take: Take) -> None:
        level = max(FLOOR_DB, take.level_db)
        full = round((1 - level / FLOOR_DB) * BAR)
        told = self._say("recording-level", decibels=round(-level), seconds=f"{take.seconds:.1f}")
        self._tell(f"   {'▮' * full}{'▯' * (BAR - full)}  {told}")
        for flaw in take.flaws:
            self._tell(f"   ! {self._say(f'recording-flaw-{flaw}')}")
        if self._plays and len(take.samples):
            try:
                self._play(self._round.preview())
            except (NoSpeaker, SpeechFailed, OSError) as error:
                self._plays = False
                self._tell(self._say("recording-not-played", why=self._told(str(error))))

    def _answer(self, question: str) -> str:
        try:
            return self._ask(f"   {self._say(question)} ").strip().lower()
        except EOFError:
            return STOP

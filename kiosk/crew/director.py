"""Plays the evening: says and presses what the plot wants, in the time that it is to take."""

from __future__ import annotations

import asyncio
from typing import Final, cast

from kiosk.clock import LeapingClock
from kiosk.crew.app import CrewApp
from kiosk.crew.hand import PATIENCE, TURN_S, Hand, LostThread
from kiosk.crew.plot import (
    Answers,
    Beat,
    LosesPower,
    PressesShortly,
    SaysWrongWord,
    TakesOver,
    Waits,
    is_scene,
)
from kiosk.crew.story import Crew, Pace, Played
from kiosk.crew.voices import CrewHearing, CrewSpeaker, CrewVoice
from kiosk.engine import commands as c
from kiosk.engine.state import Mode
from kiosk.languages.words import words
from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.faces import Leave
from kiosk.screens.summary import SummaryScreen
from kiosk.screens.target_screen import BOUNCE_S
from kiosk.screens.walk_screen import WalkScreen
from kiosk.session import Session
from kiosk.speaking.voices import SpeechFailed

_TRIES: Final = 3
"""So often a phrase is said before it is pressed."""
_LETTERS_A_SECOND: Final = 13
"""About how fast the kiosk speaks; an estimate, used to plan the evening's length only."""
_READ_A_SECOND: Final = 30
"""About how fast a visitor reads what cannot be heard; an estimate."""
_LEAPS: Final = 8
"""In so many leaps a wait passes, so that its digits are seen to run."""
_NOTE_S: Final = 2.5
"""For reading what there is to see."""


class Director:
    """Plays one evening on one application."""

    def __init__(
        self, app: CrewApp, clock: LeapingClock, hearing: CrewHearing,
        speaker: CrewSpeaker | None, crew: Crew, played: Played, minutes: float, pace: Pace,
    ) -> None:  # fmt: skip
        """Without a `speaker` everything is pressed. 0 `minutes` takes no longer than it must."""
        self._app = app
        self._hand = Hand(app, clock, self._pause, self._tell_of)
        self._clock = clock
        self._hearing = hearing
        self._speaker = speaker
        self._crew = crew
        self._played = played
        self._minutes = minutes
        self._pace = pace
        self._words = words(crew.told_in)
        self._talking: WalkScreen | None = None

    @property
    def _voice(self) -> CrewVoice:
        return cast("CrewVoice", self._app.voice)

    def aloud(self, text: str) -> bool:
        """Tell whether the kiosk is to be heard now: at a scene, or where there is time."""
        if not self._minutes:
            return False
        walking = self._talking or self._walking()
        if walking is None:
            return True
        session = walking.walk.session
        fresh, self._played.told = text not in self._played.told, self._played.told | {text}
        scene = fresh and is_scene(session)
        return scene or self._ahead(session) > len(text) / _LETTERS_A_SECOND

    def _ahead(self, session: Session) -> float:
        """Return the seconds by which the evening is ahead of its time at the next step."""
        steps, goal = session.plan.steps, session.state.goal
        done = session.plan.index.get(goal, 0) / len(steps)
        return 60 * self._minutes * done - (self._pace.now() - self._played.began)

    @property
    def _late(self) -> bool:
        return self._talking is not None and self._ahead(self._talking.walk.session) < 0

    # The evening.

    async def play(self) -> None:
        """Play until the end, or until the power is lost. Raises LostThread, worker.Stuck."""
        await self._screen(BoardScreen)
        self._played.began = self._played.began or self._pace.now()
        await self._begin()
        while not self._played.done:
            walking = self._walking()
            if walking is None:
                break
            self._talking = walking
            beat = self._played.plot.next(walking.walk.session)
            if isinstance(beat.deed, LosesPower):
                self._tell_note(beat)
                await self._pause(_NOTE_S)
                self._played.cut = True
                self._leave()
                return
            await self._silence(walking)
            await self._beat(beat, walking)
        await self._screen(SummaryScreen)
        self._talking = None
        self._tell("crew-written")
        await self._pause(3 * _NOTE_S)
        await self._hand.press(Leave())
        await self._screen(BoardScreen)
        self._tell("crew-evening-over")
        await self._pause(2 * _NOTE_S)
        self._played.done = True
        self._leave()

    def _leave(self) -> None:
        self._played.pressed += self._hand.pressed
        self._app.exit()

    async def _begin(self) -> None:
        """Find the way from the board to the walk; after a power cut, to where it stood."""
        crew, say = self._crew, self._words.say
        board = self._app.screen
        if not isinstance(board, BoardScreen):
            raise LostThread(f"the evening begins on the board, not on {type(board).__name__}")
        opening = "crew-cut-is-over" if self._played.cut else "crew-evening"
        self._app.tell(say(opening, who=crew.first.name))
        await self._pause(2 * _NOTE_S)
        card = next(target for target in board.targets() if target.face.label == crew.machine)
        title = board.words.text(board.shop.library.procedures[crew.procedure].title)
        await self._hand.press(card.face.choice)
        for _ in range(PATIENCE):
            if self._walking() is not None:
                break
            screen = self._app.screen
            if isinstance(screen, ChooseScreen):
                for label in (title, crew.first.name):
                    if self._app.target(label) is not None:
                        await self._hand.press(label)
                        break
            await asyncio.sleep(TURN_S)
        self._played.who, self._played.cut = crew.first.name, False

    async def _beat(self, beat: Beat, walking: WalkScreen) -> None:
        session = walking.walk.session
        self._tell_note(beat)
        if beat.note:
            await self._pause(_NOTE_S)
        match beat.deed:
            case Answers(act):
                await self._answer(act, walking)
            case SaysWrongWord(act):
                await self._say(walking.walk.words.phrases(act)[0], walking, 0)
            case PressesShortly(act):
                await self._hand.press(act, short=True)
            case TakesOver():
                second = self._crew.second
                await self._hand.press(walking.walk.words.phrases(c.HandOver("", ""))[0])
                await self._hand.press(second.name)
                self._played.who = second.name
            case Waits():
                await self._let_pass(session.seconds_left() or 0.0, walking)
        await self._hand.settle()
        if self._minutes and not beat.note:
            await self._pause(min(4.0, max(0.25, self._ahead(session) / 4)))

    async def _answer(self, act: c.Act, walking: WalkScreen) -> None:
        """Say an answer until it is heard, or press it."""
        before = walking.walk.session.state
        for attempt in range(_TRIES):
            phrases = self._hearing.phrases(act)
            if self._speaker is None or self._hearing.ear is None or not phrases:
                break
            if await self._say(phrases[attempt % len(phrases)], walking, attempt):
                return
            if walking.walk.session.state != before:
                return
            await self._silence(walking)
        await self._hand.press(act, kept=isinstance(act, c.GivePhrase))

    async def _say(self, phrase: str, walking: WalkScreen, attempt: int) -> bool:
        """Say something to the kiosk; return whether it was taken."""
        self._tell_of("crew-says", phrase)
        if self._speaker is None:
            await self._pause(1.0)
            return False
        language = walking.walk.words.language
        try:
            wave = await asyncio.to_thread(self._speaker.wave, phrase, language, attempt)
        except (SpeechFailed, KeyError):
            return False
        ended = asyncio.Event()
        loop = asyncio.get_running_loop()

        def end() -> None:
            loop.call_soon_threadsafe(ended.set)

        if self._minutes:
            self._voice.play(wave, end)
            await ended.wait()
        self._clock.leap(BOUNCE_S)
        heard = await asyncio.to_thread(self._hearing.listen, wave)
        self._played.said += 1
        if heard is None:
            self._played.said_again += attempt > 0
            return False
        self._app.heard(heard)
        await self._hand.settle()
        self._played.said_again += attempt > 0
        return heard.phrase is not None

    async def _let_pass(self, seconds: float, walking: WalkScreen) -> None:
        """Let a wait pass, faster than by itself."""
        self._tell("crew-time-passes")
        for _ in range(_LEAPS):
            self._clock.leap(seconds / _LEAPS)
            walking.tick()
            await self._pause(0.25)
        self._clock.leap(0.01)
        walking.tick()

    # What is seen.

    def _tell(self, message: str, **args: str) -> None:
        who = self._played.who or self._crew.first.name
        self._app.tell(self._words.say(message, who=who, **args))

    def _tell_of(self, message: str, phrase: str) -> None:
        self._tell(message, phrase=phrase)

    def _tell_note(self, beat: Beat) -> None:
        if beat.note:
            self._tell(beat.note)

    def _walking(self) -> WalkScreen | None:
        """Return the walk on the screen, once it has begun."""
        screen = self._app.screen
        if not isinstance(screen, WalkScreen) or screen.walk.session.state.mode is Mode.IDLE:
            return None
        return screen

    async def _screen(self, kind: type) -> None:
        """Wait until a screen of a kind is shown."""
        for _ in range(PATIENCE):
            if isinstance(self._app.screen, kind):
                return
            await asyncio.sleep(TURN_S)
        raise LostThread(f"the {kind.__name__} does not come")

    async def _silence(self, walking: WalkScreen) -> None:
        """Wait until the kiosk has said what it says, or as long as it would have taken."""
        while walking.walk.intercom.speaking and self._walking() is walking:
            await asyncio.sleep(TURN_S)
        unsaid, self._voice.unsaid = self._voice.unsaid, ""
        await self._pause(len(unsaid) / _READ_A_SECOND)

    async def _pause(self, seconds: float) -> None:
        """Let the visitor look; not so long where the evening is late."""
        if self._minutes and seconds:
            await self._pace.pause(seconds / (2 if self._late else 1))

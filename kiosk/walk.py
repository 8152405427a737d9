"""A session with its voice and its ear: what the screens and the rehearsal work with."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from decimal import Decimal
from typing import Final, Protocol

from kiosk.clock import Clock
from kiosk.engine import commands as c
from kiosk.engine.effects import Say, Wake
from kiosk.engine.state import Mode
from kiosk.languages.words import Words, languages, words
from kiosk.listening.ear import DOUBTFUL, Heard
from kiosk.listening.grammar import Grammar, grammar, label
from kiosk.listening.numbers import spoken
from kiosk.options import (
    Agree,
    AskAgain,
    Choice,
    ChooseLanguage,
    Give,
    Help,
    NeverMind,
    Option,
    Reckon,
    Take,
)
from kiosk.procedure.plan import Step
from kiosk.procedure.site import Person, Site
from kiosk.reckoner import Reckoner
from kiosk.reckoning.calculator import Bench, NumberWanted
from kiosk.review.remaining import Left
from kiosk.session import Outcome, Session
from kiosk.speaking.voice import Voice


class Hearing(Protocol):
    """An ear in use: told what may be heard, and when to be deaf. Safe to call from any thread."""

    @property
    def notice(self) -> str:
        """Empty while it hears, else the plain reason why not."""

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others; a mapping tells which of them mean the same."""

    def deafen(self) -> None:
        """Hear nothing: the kiosk speaks."""

    def undeafen(self, *, at_once: bool = False) -> None:
        """Hear again; `at_once` when nothing was said that may still hang in the room."""

    def speak(self, language: str, worker: str = "") -> None:
        """Listen in another language, or to another worker; sets `notice` when it has no ear."""


DOUBTS: Final = 2
"""Doubtful hearings in a row of one question after which the worker is asked to use the screen."""


class Walk:
    """One session being walked. All calls but `_fell_silent` come from one thread."""

    def __init__(
        self,
        session: Session,
        site: Site,
        clock: Clock,
        voice: Voice,
        hearing: Hearing,
        on_change: Callable[[], None],
        caveat: str = "",
        bench: Callable[[], Bench] | None = None,
    ) -> None:
        """Take a session to walk.

        `on_change` must only post: it is called when the voice falls silent, too, and that from any
        thread. `caveat` names a message that stands in place of the question while the session is
        held, for a session that can only be ended. With a `bench`, things can be worked out on
        the way.
        """
        self.session = session
        self.site = site
        self.voice = voice
        self.hearing = hearing
        self.notice = ""
        """Why the last thing was not done; empty when it was."""
        self.heard: Heard | None = None
        """What the ear last made of an utterance."""
        self.speaking = False
        """True while the voice speaks, and the ear is deaf."""
        self.caveat = caveat
        self.left: Mapping[str, Left] = {}
        """What was left of earlier walks from each step on; empty while there are too few."""
        self._clock = clock
        self._on_change = on_change
        self._asking: tuple[str, tuple[Option, ...]] | None = None
        self._reckoner = None if bench is None else Reckoner(bench, self._step)
        self._grammar: dict[str, Choice] = {}
        self._wake_at: float | None = None
        self._saying = 0
        self._doubts = 0
        self._listening_to = ("", "")

    def _step(self) -> Step | None:
        state = self.session.state
        return self.session.plan.step(state.step) if state.step else None

    @property
    def words(self) -> Words:
        """The words of the session's language."""
        return words(self.session.state.language)

    @property
    def worker(self) -> Person | None:
        """Who walks; None when that person is no longer on the site's list."""
        found = (one for one in self.site.people if one.id == self.session.state.worker)
        return next(found, None)

    @property
    def time_left(self) -> Left | None:
        """What earlier walks still needed from the present goal on; None where it is not known."""
        state = self.session.state
        return self.left.get(state.goal) if state.mode is Mode.RUNNING else None

    @property
    def asking(self) -> bool:
        """True while a question of the walk's own is open, such as which language."""
        return self._asking is not None or self._reckoning is not None

    @property
    def _reckoning(self) -> Reckoner | None:
        return self._reckoner if self._reckoner is not None and self._reckoner.open else None

    @property
    def number(self) -> NumberWanted | None:
        """What number the keypad may enter now; None when the open question wants none."""
        if self._reckoning is not None:
            return self._reckoning.number
        wanted = None if self._asking else self.session.number()
        return None if wanted is None else NumberWanted(*wanted)

    def attend(self, voice: Voice, hearing: Hearing) -> None:
        """Speak and listen through these from now on, and ask the open question again."""
        self.close()
        self.voice, self.hearing = voice, hearing
        self._listening_to = ("", "")
        self._listen()
        self._say(" ".join(self.lines()))
        self._on_change()

    def begin(self, worker: Person) -> None:
        """Start the session."""
        self.do(c.Start(worker.id, worker.language), c.Evidence(c.Channel.TOUCH))

    def take_up(self) -> None:
        """Go on with a session that was found open."""
        self.do(c.Restart(), c.Evidence(c.Channel.KIOSK))

    def lines(self) -> list[str]:
        """Return the lines of the open question."""
        if self._asking:
            return [self._asking[0]]
        if self._reckoning is not None:
            return self._reckoning.lines(self.words)
        if self._only_ends:
            return [self.words.say(self.caveat)]
        return self.words.lines(self.session.prompt())

    @property
    def sources(self) -> tuple[str, ...]:
        """What stands under the lines and is not said: where a finding comes from."""
        return () if self._reckoning is None else self._reckoning.sources

    def options(self) -> tuple[Option, ...]:
        """Return what can be done now, in the order in which it is shown."""
        if self._asking:
            return self._asking[1]
        if self._reckoning is not None:
            return self._reckoning.options(self.words)
        plan, step = self.session.plan, self.session.state.step
        found = [Option(act, label(plan, step, act, self.words)) for act in self.session.offers()]
        if found and len(self.site.languages) > 1:
            found.append(Option(ChooseLanguage(), self.words.say("say-language")))
        if found and self._reckoner is not None and not self._only_ends:
            found.append(Option(Reckon(), self.words.say("say-reckon")))
        if found:
            first, *others = self.words.ways("say-help")
            found.append(Option(Help(), first, also=tuple(others)))
        return tuple(found)

    def do(self, choice: Choice, by: c.Evidence) -> None:
        """Do something, by touch, key or voice; show and say what follows."""
        self.notice = ""
        self._doubts = 0
        match choice:
            case ChooseLanguage():
                self._ask("which-language", self._language_options())
            case NeverMind():
                self._leave_questions()
                self._say_prompt()
            case Help():
                self._help()
            case Reckon() | Take() | Give() | Agree() | AskAgain():
                self._asking = None
                self._reckon(choice, by)
            case c.HandOver(worker=""):
                self._ask("who-takes-over", self._worker_options())
            case c.TimeUp():
                self._follow(self.session.do(choice, by))
            case _:
                self._leave_questions()
                self._follow(self.session.do(choice, by))
        self._listen()
        self._on_change()

    def read(self, value: Decimal, channel: c.Channel) -> None:
        """Enter a number from the keypad."""
        answer = Give(value) if self._reckoning is not None else c.Read(value)
        self.do(answer, c.Evidence(channel))

    def hear(self, heard: Heard) -> None:
        """Take what the ear made of an utterance."""
        self.heard = heard
        choice = None if heard.phrase is None else self._grammar.get(heard.phrase)
        if choice is None:
            self._not_understood(heard)
            self._on_change()
            return
        self.do(choice, c.Evidence(c.Channel.VOICE, heard.text, heard.confidence, heard.ear))

    def tick(self) -> None:
        """Look at the clock; to be called about once a second."""
        if self._wake_at is not None and self._clock.now().mono >= self._wake_at:
            self.do(c.TimeUp(), c.Evidence(c.Channel.KIOSK))

    def close(self) -> None:
        """Fall silent and stop listening; the session stays as it is."""
        self._saying += 1
        self.speaking = False
        self.voice.hush()
        self.hearing.allow(())

    def _not_understood(self, heard: Heard) -> None:
        """Ask for touch instead of guessing, where one question was answered doubtfully twice."""
        self._doubts = self._doubts + 1 if heard.why == DOUBTFUL else 0
        if self._doubts == DOUBTS:
            self.notice = self.words.say("press-instead")
            self._say(self.notice)

    def _follow(self, outcome: Outcome) -> None:
        """Show a refusal, or let voice and clock do what the events ask of them."""
        if outcome.trouble:
            self.notice = f"{self.words.say('not-written')} ({outcome.trouble})"
            self._say(self.words.say("not-written"))
        if outcome.refusal is not None:
            self.notice = self.words.refusal(outcome.refusal)
            self._say(self.notice)
        if outcome.events:
            self._wake_at = None
        for effect in outcome.effects:
            match effect:
                case Say():
                    self._say_prompt()
                case Wake(seconds):
                    self._wake_at = outcome.events[-1].at.mono + seconds

    def _leave_questions(self) -> None:
        self._asking = None
        if self._reckoner is not None:
            self._reckoner.close()

    def _reckon(self, choice: Choice, by: c.Evidence) -> None:
        """Go on with working something out; keep what came out in the journal."""
        if self._reckoner is None:
            return
        worked = self._reckoner.take(choice, by, self.words)
        if self._reckoner.notice is not None:
            self.notice = self.words.line(self._reckoner.notice)
        if worked is not None:
            act = c.Reckoned(worked.calculator, worked.answers, worked.finding)
            outcome = self.session.do(act, by)
            if outcome.trouble:
                self.notice = f"{self.words.say('not-written')} ({outcome.trouble})"
        self._say(" ".join([*([self.notice] if self.notice else []), *self.lines()]))

    def _ask(self, message: str, options: tuple[Option, ...]) -> None:
        self._asking = (self.words.say(message), options)
        self._say(self._asking[0])

    def _help(self) -> None:
        """Tell what can be said now, and what to do when somebody is hurt."""
        say, offered = self.words.say, self.options()
        said = [one.label for one in offered if not isinstance(one.choice, c.Read | Help)]
        text = [say("help-say", list="; ".join(said))]
        if any(isinstance(one.choice, c.Read) for one in offered):
            text.append(say("help-number"))
        if any(isinstance(one.choice, c.GivePhrase) for one in offered):
            text.append(say("help-hold"))
        text.append(say("help-hurt"))
        never_mind = Option(NeverMind(), say("say-never-mind"))
        self._asking = (" ".join(text), (never_mind,))
        self._say(self._asking[0])

    def _worker_options(self) -> tuple[Option, ...]:
        others = [one for one in self.site.people if one.id != self.session.state.worker]
        return self._numbered([(c.HandOver(one.id, one.language), one.name) for one in others])

    def _language_options(self) -> tuple[Option, ...]:
        known = [one for one in self.site.languages if one in languages()]
        return self._numbered([(c.Speak(one), words(one).say("language-name")) for one in known])

    def _numbered(self, choices: list[tuple[c.Act, str]]) -> tuple[Option, ...]:
        """Give each choice a number to say, for its name may be in any language."""
        options = []
        for number, (act, detail) in enumerate(choices, 1):
            spoken_number = next(iter(spoken([Decimal(number)], self.words.language)))
            said = self.words.say("say-number", number=spoken_number)
            options.append(Option(act, said, detail))
        return (*options, Option(NeverMind(), self.words.say("say-never-mind")))

    @property
    def _only_ends(self) -> bool:
        state = self.session.state
        return bool(self.caveat) and state.mode is Mode.HELD and not state.ending

    def _say_prompt(self) -> None:
        prompt = self.session.prompt()
        self._say(" ".join(self.lines()) if self._only_ends else self.words.spoken(prompt))

    def _say(self, text: str) -> None:
        if not text:
            return
        self._saying += 1
        number = self._saying
        self.speaking = True
        self.hearing.deafen()
        self.voice.say(text, self.words.language, lambda: self._fell_silent(number))

    def _fell_silent(self, number: int) -> None:
        if number == self._saying:
            self.hearing.undeafen()
            self.speaking = False
            self._on_change()

    def _listen(self) -> None:
        """Let the ear hear what can be done now, and nothing else."""
        speaker = (self.words.language, self.session.state.worker)
        if speaker != self._listening_to:
            self._listening_to = speaker
            self.hearing.speak(*speaker)
        if self.asking:
            self._grammar = {
                phrase: one.choice for one in self.options() for phrase in (one.label, *one.also)
            }
        else:
            plan, step = self.session.plan, self.session.state.step
            known: Grammar = grammar(plan, step, self.session.offers(), self.words)
            self._grammar = {**known}
            if known and len(self.site.languages) > 1:
                self._grammar[self.words.say("say-language")] = ChooseLanguage()
            if known and self._reckoner is not None and not self._only_ends:
                self._grammar[self.words.say("say-reckon")] = Reckon()
            if known:
                self._grammar |= dict.fromkeys(self.words.ways("say-help"), Help())
        self.hearing.allow(self._grammar)

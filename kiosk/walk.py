"""A session with its voice and its ear: what the screens and the rehearsal work with."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from decimal import Decimal

from kiosk.asking import (
    Door,
    help_text,
    language_options,
    never_mind,
    own_questions,
    people_options,
    phrases,
)
from kiosk.clock import Clock
from kiosk.doubts import Doubts
from kiosk.engine import commands as c
from kiosk.engine.effects import Say, Wake
from kiosk.engine.state import Mode, Stage
from kiosk.intercom import Intercom
from kiosk.languages.words import Words, words
from kiosk.listening.ear import Heard
from kiosk.listening.grammar import grammar, label
from kiosk.listening.in_use import Hearing, Records
from kiosk.options import (
    Agree,
    AskAgain,
    CallWitness,
    Choice,
    ChooseLanguage,
    Give,
    Help,
    LeaveRemark,
    NeverMind,
    Option,
    Reckon,
    Take,
)
from kiosk.people.may import Identified
from kiosk.procedure.plan import Step
from kiosk.procedure.site import Person, Site
from kiosk.reckoner import Reckoner
from kiosk.reckoning.calculator import Bench, NumberWanted
from kiosk.review.remaining import Left
from kiosk.session import Outcome, Session
from kiosk.speaking.voice import Voice


class Walk:
    """One session being walked. All calls come from one thread."""

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
        door: Door | None = None,
        remark: Callable[[], None] | None = None,
    ) -> None:
        """Take a session to walk.

        `on_change` must only post: it is called when the voice falls silent, too, and that from any
        thread. `caveat` names a message that stands in place of the question while the session is
        held, for a session that can only be ended. With a `bench`, things can be worked out on
        the way. Without a `door` nobody can be asked for a PIN. `remark` has a spoken remark taken.
        """
        self.session = session
        self.site = site
        self.intercom = Intercom(voice, hearing, on_change)
        self.notice = ""
        """Why the last thing was not done; empty when it was."""
        self.heard: Heard | None = None
        """What the ear last made of an utterance."""
        self.caveat = caveat
        self.asked_at = float("-inf")
        """Monotonic seconds: since when what can be said now may be said."""
        self.left: Mapping[str, Left] = {}
        """What was left of earlier walks from each step on; empty while there are too few."""
        self._clock = clock
        self._on_change = on_change
        self._door = door
        self._remark = remark
        self._asking: tuple[str, tuple[Option, ...]] | None = None
        self._reckoner = None if bench is None else Reckoner(bench, self._step)
        self._grammar: dict[str, Choice] = {}
        self._wake_at: float | None = None
        self._doubts = Doubts()

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
        self.intercom.take(voice, hearing)
        self._listen()
        self.say(" ".join(self.lines()))
        self._on_change()

    def begin(self, worker: Person) -> None:
        """Start the session."""
        self.do(c.Start(worker.id, worker.language), c.Evidence(c.Channel.TOUCH))

    def listen_again(self) -> None:
        """Let the ear hear what can be done now, after another screen had the ear."""
        self.intercom.forget()
        self._listen()

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
        return (*found, *self._own_options()) if found else ()

    def _own_options(self) -> list[Option]:
        """Return the walk's own questions that can be opened beside the session's."""
        return own_questions(
            self.words,
            witness=self._wants_witness,
            remark=self._takes_remark is not None,
            language=len(self.site.languages) > 1,
            reckon=self._reckoner is not None and not self._only_ends,
        )

    def do(self, choice: Choice, by: c.Evidence) -> None:
        """Do something, by touch, key or voice; show and say what follows."""
        self.notice = ""
        self._doubts.acted()
        match choice:
            case ChooseLanguage():
                self._ask("which-language", language_options(self.site, self.words))
            case NeverMind():
                self._leave_questions()
                self._say_prompt()
            case Help():
                self._answer(help_text(self.options(), self.words), (never_mind(self.words),))
            case LeaveRemark():
                self._leave_questions()
                if (take := self._takes_remark) is not None:
                    # Voice and ear belong to it until it has come to its end.
                    self.close()
                    take()
                    return
            case Reckon() | Take() | Give() | Agree() | AskAgain():
                self._asking = None
                self._reckon(choice, by)
            case c.HandOver(worker=""):
                others = self._others(lambda one: c.HandOver(one.id, one.language))
                self._ask("who-takes-over", others)
            case CallWitness():
                self._ask("who-witnesses", self._others(lambda one: c.Witness(one.id)))
            case c.HandOver() | c.Witness() if self._door is not None:
                self._leave_questions()
                self._door(choice, by, self._let_in, lambda why: self.tell(self.words.refusal(why)))
            case c.TimeUp():
                self._follow(self.session.do(choice, by))
            case c.GivePhrase() if by.channel is not c.Channel.VOICE and self._doubts.refused:
                # Who presses a hold after words that were not taken has been doubted.
                self._follow(self.session.do(choice, replace(by, heard=self._doubts.refused)))
            case _:
                self._leave_questions()
                self._follow(self.session.do(choice, by))
        self._listen()
        self._on_change()

    def _let_in(self, act: Identified, by: c.Evidence) -> None:
        """Do what somebody may do now, their PINs having been asked for."""
        self.notice = ""
        self._follow(self.session.do(act, by))
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
        self.intercom.close()

    def _not_understood(self, heard: Heard) -> None:
        """Ask for touch instead of guessing, where one question was answered doubtfully again."""
        if self._doubts.not_taken(heard, self._grammar):
            self.notice = self.words.say("press-instead")
            self.say(self.notice)

    def _follow(self, outcome: Outcome) -> None:
        """Show a refusal, or let voice and clock do what the events ask of them."""
        if outcome.trouble:
            self._not_recorded(outcome.trouble)
        if outcome.refusal is not None:
            self.notice = self.words.refusal(outcome.refusal)
            self.say(self.notice)
        if outcome.events:
            self._wake_at = None
            self._doubts.asked_anew()
        for effect in outcome.effects:
            match effect:
                case Say():
                    self._say_prompt()
                case Wake(seconds):
                    self._wake_at = outcome.events[-1].at.mono + seconds

    def _not_recorded(self, trouble: str) -> None:
        """Tell that nothing was written. What mends it names files, so it is shown and not said."""
        say = self.words.say
        self.notice = f"{say('not-recorded')} {self.words.told(trouble)}"
        self.say(f"{say('not-recorded')} {say('see-the-screen')}")

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
                self._not_recorded(outcome.trouble)
                return
        self.say(" ".join([*([self.notice] if self.notice else []), *self.lines()]))

    def _ask(self, message: str, options: tuple[Option, ...]) -> None:
        self._answer(self.words.say(message), options)

    def _answer(self, text: str, options: tuple[Option, ...]) -> None:
        self._asking = (text, options)
        self.say(text)

    def _others(self, act_of: Callable[[Person], Identified]) -> tuple[Option, ...]:
        """Return everybody but the worker who may do an act."""
        others = [one for one in self.site.people if one.id != self.session.state.worker]
        return people_options(others, act_of, self.session.refused, self.words)

    @property
    def _wants_witness(self) -> bool:
        state = self.session.state
        running = state.mode is Mode.RUNNING and state.stage is Stage.WITNESS
        return running and self._door is not None

    @property
    def _takes_remark(self) -> Callable[[], None] | None:
        """What takes a remark: on an open problem, with a microphone; an ear need not be there."""
        state, hearing = self.session.state, self.intercom.hearing
        problem = state.mode is Mode.HELD and state.because == "problem" and not state.ending
        hears = isinstance(hearing, Records) and hearing.microphone
        return self._remark if hears and problem and not self._only_ends else None

    @property
    def _only_ends(self) -> bool:
        state = self.session.state
        return bool(self.caveat) and state.mode is Mode.HELD and not state.ending

    def _say_prompt(self) -> None:
        prompt = self.session.prompt()
        self.say(" ".join(self.lines()) if self._only_ends else self.words.spoken(prompt))

    def tell(self, notice: str) -> None:
        """Show and say what became of something."""
        self.notice = notice
        self.say(notice)
        self._on_change()

    def say(self, text: str) -> None:
        """Say a text in place of what is being said; the ear is deaf meanwhile."""
        self.intercom.say(text, self.words.language, self.session.state.worker)

    def _listen(self) -> None:
        """Let the ear hear what can be done now, and nothing else."""
        self.asked_at = self._clock.now().mono
        if self.asking:
            self._grammar = phrases(self.options())
        else:
            plan, step = self.session.plan, self.session.state.step
            self._grammar = {**grammar(plan, step, self.session.offers(), self.words)}
            if self._grammar:
                self._grammar |= phrases(self._own_options())
        self.intercom.listen(self._grammar, self.words.language, self.session.state.worker)

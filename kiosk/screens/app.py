"""The kiosk's application: the board, the walks, and the ear and the voice that serve them."""

from __future__ import annotations

from collections.abc import Callable
from typing import ClassVar, Final

from textual import on
from textual.app import App
from textual.binding import Binding, BindingType
from textual.message import Message
from textual.worker import Worker, WorkerState

from kiosk.journal.codec import UnknownEvent
from kiosk.journal.store import JournalFailed
from kiosk.languages.words import Words, notice
from kiosk.listening.ear import Heard
from kiosk.listening.in_use import Hearing
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.plan import Plan
from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.colours import DARK, themes, variables
from kiosk.screens.pin_keypad import HiddenDigits
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.review_opening import open_review
from kiosk.screens.stand_in import NoHearing
from kiosk.screens.summary import SummaryScreen
from kiosk.screens.target_screen import TargetScreen
from kiosk.screens.walk_screen import WalkScreen
from kiosk.shop import Shop
from kiosk.speaking.voice import SilentVoice, Voice
from kiosk.unfinished import OpenSession, TakenUp

_HOUR_S: Final = 3600.0
"""How often it is looked whether something was kept long enough."""

OpenVoice = Callable[[], Voice]
OpenHearing = Callable[[Callable[[Heard], None], Callable[[], None]], Hearing]
"""Given where to post what was heard, and where to post that the ear's notice changed."""


class KioskApp(App[None]):
    """One shop's kiosk.

    Voice and ear are opened in threads of their own, after the board is on the screen. An opener
    should return a silent voice or a deaf ear with its reason; one that raises is shown as that.
    """

    TITLE = "Brushdown"
    CSS_PATH = "kiosk.tcss"
    ENABLE_COMMAND_PALETTE = False
    foot = 0
    """Rows of the terminal, under each screen, that are not the screen's."""
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("ctrl+q", "leave", show=False, priority=True),
        Binding("ctrl+c", "leave", show=False, priority=True),
    ]

    class HeardSomething(Message):
        """The ear made something of an utterance."""

        def __init__(self, heard: Heard, at: float) -> None:
            super().__init__()
            self.heard = heard
            self.at = at
            """Monotonic seconds."""

    class NoticeChanged(Message):
        """The ear or the voice has another notice."""

    def __init__(
        self,
        shop: Shop,
        open_voice: OpenVoice | None = None,
        open_hearing: OpenHearing | None = None,
        *,
        review: bool = False,
    ) -> None:
        """Serve a shop; without openers the kiosk is silent, or deaf. `review` begins with it."""
        self.shop = shop
        super().__init__()
        self._open_voice, self._open_hearing = open_voice, open_hearing
        self._review = review
        self.pairing_code = ""
        """What pairs another screen with this kiosk; empty where none can be paired."""
        self.voice: Voice = SilentVoice(notice("voice-opening" if open_voice else "voice-none"))
        self.hearing: Hearing = NoHearing(notice("ear-opening" if open_hearing else "ear-none"))

    def _words(self) -> Words:
        return BoardScreen(self.shop).words

    def get_theme_variable_defaults(self) -> dict[str, str]:
        return variables(DARK)

    def on_mount(self) -> None:
        for theme in themes():
            self.register_theme(theme)
        self.theme = "night"
        self.push_screen(BoardScreen(self.shop))
        if self._review:
            open_review(self, self._words())
        self.set_interval(_HOUR_S, self.shop.mind_people)
        self.call_after_refresh(self._open)

    def _open(self) -> None:
        """Open voice and ear, each in a thread of its own."""
        open_voice, open_hearing = self._open_voice, self._open_hearing
        if open_voice is not None:

            def voice() -> None:
                self.call_from_thread(self._serve, open_voice(), None)

            self.run_worker(voice, "voice", thread=True, exit_on_error=False)
        if open_hearing is not None:

            def ear() -> None:
                hearing = open_hearing(self.heard, self.notice_changed)
                self.call_from_thread(self._serve, None, hearing)

            self.run_worker(ear, "ear", thread=True, exit_on_error=False)

    def _serve(self, voice: Voice | None, hearing: Hearing | None) -> None:
        """Take a voice or an ear into use, in the middle of a walk too."""
        self.voice = voice or self.voice
        self.hearing = hearing or self.hearing
        walking = self._walking()
        if walking is not None:
            walking.walk.attend(self.voice, self.hearing)

    @on(Worker.StateChanged)
    def _on_opener(self, message: Worker.StateChanged) -> None:
        worker = message.worker
        if worker.state is not WorkerState.ERROR:
            return
        if worker.name == "voice":
            self._serve(SilentVoice(str(worker.error)), None)
        elif worker.name == "ear":
            self._serve(None, NoHearing(str(worker.error)))

    # From any thread.

    def heard(self, heard: Heard) -> None:
        """Take what the ear made of an utterance. May be called from any thread."""
        self.post_message(self.HeardSomething(heard, self.shop.clock.now().mono))

    def notice_changed(self) -> None:
        """Show the notices of ear and voice again. May be called from any thread."""
        self.post_message(self.NoticeChanged())

    @on(HeardSomething)
    def _on_heard(self, message: HeardSomething) -> None:
        walking = self._walking()
        if walking is not None:
            # What was heard while a slow disk kept the screen waiting was said to another question.
            if message.at >= walking.walk.asked_at:
                walking.hear(message.heard)
        elif isinstance(self.screen, ChooseScreen | HiddenDigits | RemarkScreen):
            self.screen.hear(message.heard)

    @on(NoticeChanged)
    def _on_notice_changed(self) -> None:
        walking = self._walking()
        if walking is not None:
            walking.draw()

    def _walking(self) -> WalkScreen | None:
        return self.screen if isinstance(self.screen, WalkScreen) else None

    # From the screens.

    @on(BoardScreen.Walk)
    def _on_walk(self, message: BoardScreen.Walk) -> None:
        board = message.board
        try:
            match message.what:
                case OpenSession(id=session_id):
                    found = board.shop.take_up(session_id)
                case Plan(machine=machine, procedure=procedure):
                    found = TakenUp(board.shop.fresh(machine, procedure))
        except (FaultyFile, JournalFailed, UnknownEvent) as error:
            board.notice = board.words.say("cannot-take-up", why=str(error))
            board.draw()
            return
        walking = WalkScreen(board.shop, found, message.start, message.by, self.voice, self.hearing)
        board.began(walking.walk)
        self.push_screen(walking)

    @on(WalkScreen.Over)
    def _on_over(self, message: WalkScreen.Over) -> None:
        walk = message.screen.walk
        if self.screen is not message.screen:
            return
        if message.left:
            walk.close()
            self._back_to_board()
            return
        self.switch_screen(SummaryScreen(message.screen.shop, walk.session, walk.words))

    @on(TargetScreen.HelpAsked)
    def _on_help_asked(self, message: TargetScreen.HelpAsked) -> None:
        clock = self.shop.clock
        self.push_screen(ChooseScreen(clock, message.words, message.text, [], lambda _: None))

    @on(SummaryScreen.Done)
    def _on_done(self) -> None:
        self.voice.hush()
        self._back_to_board()

    def _back_to_board(self) -> None:
        """Show the board; a board that was opened for practice closes after one session."""
        self.pop_screen()
        if isinstance(self.screen, BoardScreen) and self.screen.for_a_while:
            self.pop_screen()

    @on(BoardScreen.OtherTheme)
    def _on_other_theme(self) -> None:
        self.theme = "day" if self.theme == "night" else "night"

    def action_leave(self) -> None:
        """Close the kiosk, from the board only: a walk is not closed by accident."""
        if isinstance(self.screen, BoardScreen):
            self.exit()
        else:
            self.bell()

    def on_unmount(self) -> None:
        self.voice.close()
        self.hearing.allow(())

"""The application of the setup: asks, writes the site file, and leads on to the board."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any, ClassVar, Final

from textual.app import App
from textual.binding import Binding, BindingType

from kiosk.clock import Clock
from kiosk.people.gate import COMMAND_LINE
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load import Library
from kiosk.procedure.site import Person, Role, Site
from kiosk.screens import setup_machines, setup_people, setup_place, setup_product
from kiosk.screens.choose import ChooseScreen, Item
from kiosk.screens.colours import DARK, themes, variables
from kiosk.screens.pin_new import NewPinScreen
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_overview import OverviewPage, wrong_with
from kiosk.screens.setup_page import SetupPage
from kiosk.screens.setup_sound import Sound, SoundPage
from kiosk.setup.draft import ChangedMeanwhile, Draft
from kiosk.setup.questions import Question
from kiosk.shop import Shop

Ask = Callable[[Flow, Question], None]

_ASKS: Final[Mapping[Question, Ask]] = {
    Question.LANGUAGE: setup_place.language,
    Question.PRACTICE: setup_place.practice,
    Question.NAME: setup_place.name,
    Question.TIME_ZONE: setup_place.time_zone,
    Question.OPENS: setup_place.hour,
    Question.CLOSES: setup_place.hour,
    Question.CLOSED_DAYS: setup_place.closed_days,
    Question.LIMITS: setup_place.limits_profile,
    Question.MACHINES: setup_machines.machines,
    Question.THERMOMETER: setup_place.option,
    Question.SINK: setup_place.option,
    Question.PRODUCT: setup_place.name,
    Question.CHLORINE: setup_product.chlorine,
    Question.PACKET: setup_product.packet,
    Question.STRENGTH: setup_product.strength,
    Question.RINSE: setup_place.option,
    Question.LANGUAGES: setup_people.crew_languages,
    Question.PEOPLE: setup_people.people,
}


class SetupApp(App[bool]):
    """Asks for everything that a site needs. Its result is True when the board can follow."""

    TITLE = "Brushdown"
    CSS_PATH: ClassVar = ["kiosk.tcss", "setup.tcss"]
    ENABLE_COMMAND_PALETTE = False
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("ctrl+q", "stop", show=False, priority=True),
        Binding("ctrl+c", "stop", show=False, priority=True),
    ]
    asks = _ASKS
    foot = 0

    def __init__(
        self,
        draft: Draft,
        library: Library,
        clock: Clock,
        open_shop: Callable[[Site], Shop],
        sound: Sound,
        first_language: str = "en",
    ) -> None:
        """Go on with a draft. `open_shop` is asked for the shop once its file is written."""
        super().__init__()
        self.first_language = first_language
        self._open_shop, self._sound = open_shop, sound
        self._is_new = not draft.base
        self.flow = Flow(self, draft, library, clock)

    def get_theme_variable_defaults(self) -> dict[str, str]:
        return variables(DARK)

    def on_mount(self) -> None:
        for theme in themes():
            self.register_theme(theme)
        self.theme = "night"
        self.push_screen(OverviewPage(self.flow))
        draft = self.flow.draft
        if draft.resumed or draft.left_aside:
            told = "setup-left-aside" if draft.left_aside else "setup-resumed"
            self.flow.notice = self.flow.words.say(told)
        self.flow.begin()

    # From the pages.

    def tell(self, notice: str) -> None:
        """Have the page that is shown say something."""
        if isinstance(self.screen, SetupPage):
            self.screen.notice = notice
            self.screen.draw()

    def to_overview(self) -> None:
        """The page on top was closed; the overview lies under it."""
        self.flow.alone = True

    def stop(self) -> None:
        """Stop here: all answers are kept."""
        self.exit(False)

    def action_stop(self) -> None:
        """Stop by key."""
        self.stop()

    def write(self) -> None:
        """Write the site file when nothing is wrong with it, and go on to PIN and sound."""
        if self.flow.library.own:
            # What may take some seconds is told first.
            self.tell(self.flow.words.say("setup-checking"))
            self.call_after_refresh(self._write)
            return
        self._write()

    def _write(self) -> None:
        say = self.flow.words.say
        wrong = wrong_with(self.flow)
        if wrong:
            self.tell(say("setup-wrong", n=len(wrong)))
            self._read("\n".join(wrong))
            return
        try:
            self.flow.draft.write()
        except FaultyFile as error:
            self._read(str(error))
        except ChangedMeanwhile:
            self.tell(say("setup-changed-meanwhile"))
        except OSError as error:
            self.tell(say("setup-not-kept", why=str(error)))
        else:
            self.tell(say("setup-written"))
            if self._is_new:
                self._pin_of_new()

    def finish(self) -> None:
        """Everything is written: the board may follow."""
        self.exit(True)

    def _read(self, text: str) -> None:
        self._choose(text, [], lambda _: None)

    # PIN and sound.

    def ask_pin(self) -> None:
        """Ask whose PIN is set: whoever may run commands on the kiosk may set any."""
        words, shop = self.flow.words, self._shop()
        items = [(one, one.name, words.say(f"people-role-{one.role}")) for one in shop.site.people]

        def chosen(person: Person) -> None:
            told = words.say("pin-is-set", who=person.name)
            self._new_pin(shop, person, lambda: self.tell(told))

        self._choose(words.say("whose-pin"), items, chosen)

    def _pin_of_new(self) -> None:
        """Ask for a PIN of the first supervisor who has none, then try the sound."""
        words, shop = self.flow.words, self._shop()
        without = [
            one for one in shop.site.people
            if one.role is Role.SUPERVISOR and shop.gate.blocked(one.id) is not None
        ]  # fmt: skip
        if not without:
            self.try_sound()
            return
        person = without[0]
        items = [
            (True, words.say("setup-pin-now"), person.name),
            (False, words.say("setup-pin-later"), words.say("setup-pin-later-is")),
        ]

        def chosen(now: bool) -> None:
            if now:
                self._new_pin(shop, person, self.try_sound)
            else:
                self.try_sound()

        self._choose(words.say("setup-ask-pin", who=person.name), items, chosen)

    def _new_pin(self, shop: Shop, person: Person, then: Callable[[], None]) -> None:
        self.push_screen(NewPinScreen(shop, person, COMMAND_LINE, then))

    def try_sound(self) -> None:
        """Try loudspeaker and microphone; when the setup was new, the board comes after it."""
        words = self.flow.words
        head = f"{words.say('setup')} · {words.say('setup-about-sound')}", ""
        then = self.finish if self._is_new else self._stay
        self.push_screen(SoundPage(self.flow.clock, words, head, self._sound, then))

    def _stay(self) -> None:
        """Nothing more: the overview lies under the page that was closed."""

    def _choose(self, question: str, items: Sequence[Item], chosen: Callable[[Any], None]) -> None:
        self.push_screen(ChooseScreen(self.flow.clock, self.flow.words, question, items, chosen))

    def library_of(self, site: Site) -> Library:
        """Return the procedures as a site would have them."""
        return self._open_shop(site).library

    def _shop(self) -> Shop:
        return self._open_shop(self.flow.draft.site())

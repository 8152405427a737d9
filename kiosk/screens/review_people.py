"""Who walks what: how often, when first, and when last."""

from __future__ import annotations

from collections.abc import Sequence

from kiosk.engine.commands import Start
from kiosk.procedure.site import Person
from kiosk.review.ledger_lines import WalkedBy
from kiosk.screens.faces import Face, Pick
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import ListScreen
from kiosk.screens.review_sessions import SessionsScreen


class PeopleScreen(ListScreen):
    """Everybody of the site, and whoever is in the journal; who is new comes first."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._walked: dict[str, list[WalkedBy]] = {}

    def heading(self) -> tuple[str, str]:
        return self.words.say("review-people"), self.place()

    def on_mount(self) -> None:
        for one in self.desk.ledger.walked_by(practice=self.desk.practice):
            self._walked.setdefault(one.worker, []).append(one)
        super().on_mount()

    def items(self) -> Sequence[str]:
        named = [one.id for one in self.desk.shop.site.people]
        everybody = [*named, *(one for one in self._walked if one not in named)]
        return sorted(everybody, key=self._newest)

    def _newest(self, person: str) -> tuple[float, str]:
        first = min((one.first_utc for one in self._walked.get(person, ())), default=0.0)
        return -first, person

    def face(self, item: str) -> Face:
        desk, say = self.desk, self.words.say
        people = {one.id: one for one in desk.shop.site.people}
        known = people.get(item)
        role = say(f"review-role-{known.role}") if known else say("review-not-here-any-more")
        detail = [self._walk(one, known) for one in self._of(item)]
        return Face(
            Pick(item), f"{desk.person(item)} · {role}",
            "\n".join(detail) or say("review-no-walk"),
        )  # fmt: skip

    def _of(self, person: str) -> list[WalkedBy]:
        return sorted(self._walked.get(person, ()), key=lambda one: -one.last_utc)

    def _walk(self, one: WalkedBy, person: Person | None) -> str:
        desk, say = self.desk, self.words.say
        told = say(
            "review-walked", n=one.sessions, title=desk.full_title(one.procedure),
            first=f"{desk.local(one.first_utc):%Y-%m-%d}",
            last=f"{desk.local(one.last_utc):%Y-%m-%d}",
        )  # fmt: skip
        if person is not None:
            refused = desk.shop.may(one.procedure, Start(person.id, person.language))
            if refused is not None and refused.why == "supervisor-first":
                told += f" · {say('review-first-walks')}"
        return told

    def chosen(self, item: object) -> None:
        if isinstance(item, str):
            self.show(SessionsScreen(self.desk, worker=item))

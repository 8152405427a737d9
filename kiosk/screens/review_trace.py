"""From a bad result back to the sessions that may have led to it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from kiosk.journal.shop_facts import PartReplaced
from kiosk.review.results import Entered
from kiosk.review.trace import Suspect, Trace, trace
from kiosk.review.trace_said import signs_said
from kiosk.review.trace_walks import walks_before
from kiosk.screens.faces import Face, Pick
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_looking import LookingScreen
from kiosk.screens.review_page import ListScreen
from kiosk.screens.review_session import SessionScreen
from kiosk.screens.review_standing import result_said
from kiosk.trade.authorities import Authority


class TraceScreen(LookingScreen, ListScreen):
    """The sessions before a result, the most suspect first: a lead, not a proof."""

    def __init__(self, desk: Desk, who: Authority, result: Entered) -> None:
        super().__init__(desk)
        self._who, self._result = who, result
        self._traced: Trace | None = None

    def heading(self) -> tuple[str, str]:
        return f"{self.words.say('review-trace')} · {self._result.of.day}", self.place()

    def search(self) -> Callable[[Desk], Trace]:
        return partial(traced, who=self._who, result=self._result)

    def found(self, contents: Trace) -> None:
        self._traced = contents

    def note(self) -> str:
        said, traced = self.words.say, self._traced
        if traced is None:
            return self.wait_text()
        since, until = (self.desk.day_and_time(x) for x in (traced.from_utc, traced.until_utc))
        looked = said("review-trace-looked", begun=since, ended=until)
        return f"{result_said(traced.result, self.words)}. {said('review-trace-lead')} {looked}"

    def items(self) -> Sequence[Suspect]:
        return () if self._traced is None else self._traced.suspects

    def face(self, item: Suspect) -> Face:
        words, one = self.words, item
        place = self.items().index(item) + 1
        who = self.desk.people(one.workers) if one.session else words.say("review-no-session")
        # Of the details that are written in English only the session's timeline tells in any.
        detail = "\n".join(signs_said(one, words)) or words.say("review-no-sign")
        label = f"{place}. {self.desk.day_and_time(one.at_utc)} · {who}"
        return Face(Pick(one), label, detail, listed=bool(one.signs))

    def chosen(self, item: object) -> None:
        if isinstance(item, Suspect) and item.session:
            self.show(SessionScreen(self.desk, item.session))


def traced(desk: Desk, who: Authority, result: Entered) -> Trace:
    """Trace a result. Raises NoSuchLimit when the authority has no limit for it."""
    shop = desk.shop
    walked = walks_before(result, desk.ledger, shop.journal.events, shop.plan_of, shop.site)
    replaced = shop.journal.shop_events(PartReplaced)
    return trace(result, desk.results(), who, walked, replaced, shop.site)

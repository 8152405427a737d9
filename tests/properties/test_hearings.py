"""Whatever the ear makes of one utterance, it establishes nothing that a hold guards."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Iterable
from pathlib import Path

import hypothesis
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.state import Mode
from kiosk.journal.store import Journal
from kiosk.listening.ear import DOUBTFUL, NOT_ALLOWED, Heard
from kiosk.procedure.plan import Hold, Plan
from kiosk.session import Session
from kiosk.walk import Walk
from tests.plans import hold, plan, step
from tests.properties.machine_clock import MEMORY, FakeClock
from tests.unit.test_walk import ANA, SITE, TOUCH

HOLDS = (
    plan(hold("isolate", "isolated"), step("open")),
    plan(hold("isolate", "isolated", verify=True), step("open")),
    plan(step("wash"), hold("isolate", "isolated", verify=True), hold("lock", "locked")),
)
LEAST = {False: 2, True: 3}
"""Utterances that a hold takes: the phrase and a yes, and one more where it is tried out."""


class Quiet:
    """A voice and an ear without devices; the voice ends at once."""

    notice = ""
    allowed: tuple[str, ...] = ()

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        on_end()

    def prepare(self, texts: Iterable[str], language: str) -> None: ...

    def hush(self) -> None: ...

    def close(self) -> None: ...

    def allow(self, phrases: Iterable[str]) -> None:
        self.allowed = tuple(phrases)

    def deafen(self) -> None: ...

    def undeafen(self, *, at_once: bool = False) -> None: ...

    def speak(self, language: str, worker: str = "") -> None: ...


TEXTS = st.sampled_from(
    ["yes", "no", "next", "isolated now", "locked now", "repeat", ""]
) | st.text(max_size=8)
OF_THE_LIST = st.integers(0, 2) | st.integers(0, 30)
"""The number of a phrase that may be heard at that moment: an ear mistakes words for these."""
WHY = st.sampled_from(["", "", "", "", DOUBTFUL, NOT_ALLOWED])


@settings(max_examples=150, deadline=None)
@given(
    st.sampled_from(HOLDS),
    st.lists(st.tuples(OF_THE_LIST | OF_THE_LIST | TEXTS, WHY), max_size=20),
    st.booleans(),
)
def test_no_single_utterance_establishes_a_hold(of: Plan, said: list, touched: bool) -> None:
    with tempfile.TemporaryDirectory(dir=MEMORY) as folder:
        journal = Journal(Path(folder))
        clock = FakeClock()
        session = Session.fresh(of, journal, clock)
        quiet = Quiet()
        walk = Walk(session, SITE, clock, quiet, quiet, lambda: None)
        walk.begin(ANA)
        if touched and session.state.mode is Mode.RUNNING:
            walk.do(c.SayAgain(), TOUCH)
        established = False
        heard_in: dict[str, int] = {}
        for what, why in said:
            text = what
            if isinstance(what, int):
                text = quiet.allowed[what % len(quiet.allowed)] if quiet.allowed else ""
            before = session.state.step
            count = len(journal.events(session.id))
            heard_in[before] = heard_in.get(before, 0) + 1
            walk.hear(Heard(text, None if why else text, 1.0, "fake", why, 0.0, 0.0))
            for event in journal.events(session.id)[count:]:
                if isinstance(event.fact, e.StepEntered):
                    heard_in[event.fact.step] = 0
                if isinstance(event.fact, e.StepConfirmed):
                    task = of.step(event.fact.step).task
                    if isinstance(task, Hold):
                        assert heard_in[event.fact.step] >= LEAST[task.verify is not None]
                        established = True
        hypothesis.event("a hold was established" if established else "no hold was established")
        journal.close()

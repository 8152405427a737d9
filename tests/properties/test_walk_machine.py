"""Random walks of the running kiosk: engine, real journal, and what drives the screen.

A walk is moved as people move it: by phrases out of those that the ear may hear now, by other talk,
by what stands on the buttons, by numbers typed, by time, by power cuts. After every act the journal
is judged by the monitor, which reads the plan and the events and nothing else.

KIOSK_TEST_SEQUENCES says how many walks; .ci/run asks for ten thousand.
"""

from __future__ import annotations

import os
import shutil
import tempfile
from collections import Counter
from collections.abc import Callable, Iterable
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import ClassVar

import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    initialize,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)

from kiosk.engine import commands as c
from kiosk.engine import holds
from kiosk.engine.state import Mode, fold
from kiosk.journal.store import Journal
from kiosk.listening.ear import NOT_ALLOWED, Heard
from kiosk.procedure.fit import fit
from kiosk.procedure.load import load_library
from kiosk.procedure.plan import Hold, Plan, Wait
from kiosk.procedure.site import Site, load_site
from kiosk.proof.audit import audit
from kiosk.session import Session
from kiosk.shipped import shipped
from kiosk.walk import Walk
from tests.plans import EVERY_KIND
from tests.proof.walks import TOUCH, right_act
from tests.properties.machine_clock import MEMORY, FakeClock
from tests.screens.scene import FakeHearing

PLANS = ("every kind", "close-twin-gravity", "open-single-pump")
HOLD_ACTS = (c.GivePhrase, c.Yes, c.No)


@cache
def site() -> Site:
    return load_site(shipped("demo") / "site.toml")


@cache
def plan_of(name: str) -> Plan:
    if name == "every kind":
        return EVERY_KIND
    library = load_library(shipped("procedures"))
    procedure = library.procedures[name]
    machine = next(one for one in site().machines if one.kind == procedure.machine_kind)
    return fit(library, procedure, machine, site(), lambda amount, _: str(amount))


class Voice:
    """Speaks until the machine lets it end."""

    notice = ""

    def __init__(self) -> None:
        self.end: Callable[[], None] | None = None

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        assert text.strip()
        self.end = on_end

    def prepare(self, texts: Iterable[str], language: str) -> None: ...

    def hush(self) -> None:
        self.end = None

    def close(self) -> None: ...


class Running(RuleBasedStateMachine):
    """The kiosk with one session open, its journal in a folder of its own."""

    @initialize(name=st.sampled_from(PLANS), worker=st.integers(0, 9))
    def begin(self, name: str, worker: int) -> None:
        self.folder = Path(tempfile.mkdtemp(prefix="walk", dir=MEMORY))
        self.journal = Journal(self.folder)
        self.clock = FakeClock()
        self.plan = plan_of(name)
        self.open(Session.fresh(self.plan, self.journal, self.clock))
        people = site().people
        self.walk.begin(people[worker % len(people)])

    def open(self, session: Session) -> None:
        self.voice, self.ear = Voice(), FakeHearing()
        self.changes = 0
        self.walk = Walk(session, site(), self.clock, self.voice, self.ear, self.changed)

    def changed(self) -> None:
        self.changes += 1

    ends: ClassVar[Counter[Mode]] = Counter()
    """How the walks ended."""

    def teardown(self) -> None:
        if hasattr(self, "journal"):
            self.ends[self.state.mode] += 1
            assert self.journal.verify().whole
            self.journal.close()
            shutil.rmtree(self.folder)

    @property
    def state(self):
        return self.walk.session.state

    @rule()
    def the_voice_ends(self) -> None:
        if self.voice.end is not None:
            self.voice.end()
            assert not self.ear.deaf

    @precondition(lambda self: not self.walk.session.over)
    @rule(times=st.integers(1, 12), by=st.sampled_from(["voice", "touch"]))
    def go_on(self, times: int, by: str) -> None:
        """Do what is right, some times in a row, so that walks come far."""
        for _ in range(times):
            if self.walk.session.over:
                return
            state = self.state
            waits = bool(state.step) and isinstance(self.plan.step(state.step).task, Wait)
            self.clock.pass_by(10_000 if waits else 2)
            right = right_act(self.plan, state)
            if by == "voice":
                self.hear(right)
            else:
                self.walk.do(right, TOUCH)

    def hear(self, act: c.Act) -> None:
        """Say an act if there is a phrase for it, and touch it else."""
        phrase = next((p for p, a in self.walk._grammar.items() if a == act), None)
        if phrase is None:
            self.walk.do(act, TOUCH)
        else:
            self.say(phrase)

    def say(self, phrase: str) -> None:
        """Whatever the ear may hear is accepted when it is heard."""
        self.the_voice_ends()
        assert phrase in self.ear.allowed
        self.walk.hear(Heard(phrase, phrase, 0.9, "ear", "", 0.1, 1.0))
        assert self.walk.notice == ""

    @rule(which=st.integers(0, 200), seconds=st.sampled_from([1, 30, 61]))
    def a_phrase_that_may_be_heard(self, which: int, seconds: int) -> None:
        self.clock.pass_by(seconds)
        if self.ear.allowed:
            self.say(self.ear.allowed[which % len(self.ear.allowed)])

    @rule(text=st.sampled_from(["", "the weather is fine", "power", "네네네", "38.5"]))
    def other_talk(self, text: str) -> None:
        """What was rejected, or is no phrase of now, changes nothing but what is shown."""
        before, changes = self.state, self.changes
        self.walk.hear(Heard(text, None, None, "ear", NOT_ALLOWED, 0.1, 1.0))
        self.walk.hear(Heard(text, f"{text} and no phrase", 0.9, "ear", "", 0.1, 1.0))
        assert self.state == before
        assert self.changes > changes

    @rule(which=st.integers(0, 20), seconds=st.sampled_from([1, 30, 61]))
    def a_button(self, which: int, seconds: int) -> None:
        """Whatever is offered is accepted."""
        self.clock.pass_by(seconds)
        options = self.walk.options()
        if options:
            self.walk.do(options[which % len(options)].choice, TOUCH)
            assert self.walk.notice == ""

    @rule(value=st.decimals(-5, 150, places=1))
    def a_number(self, value: Decimal) -> None:
        self.walk.read(value, c.Channel.TOUCH)

    @rule(seconds=st.sampled_from([1, 61, 10_000]))
    def time_passes(self, seconds: int) -> None:
        self.clock.pass_by(seconds)
        self.walk.tick()

    @rule(power=st.booleans())
    def crash(self, power: bool) -> None:
        """Drop the kiosk and start it again, after a power cut or within one boot."""
        session = self.walk.session.id
        self.walk.close()
        self.journal.close()
        if power:
            self.clock.cut_power()
        self.journal = Journal(self.folder)
        self.open(Session(self.plan, self.journal, self.clock, session))
        self.clock.pass_by(1)
        self.walk.take_up()

    @invariant()
    def judged(self) -> None:
        if not hasattr(self, "walk"):
            return
        events = self.journal.events(self.walk.session.id)
        assert fold(events) == self.state
        assert audit(self.plan, events) == []
        if self.state.mode is Mode.RUNNING:
            step = self.plan.step(self.state.step)
            assert self.state.in_force.issuperset(step.requires)
            if isinstance(step.task, Hold):
                assert c.Confirm() not in self.walk._grammar.values()
        assert not self.ear.deaf or self.walk.intercom.speaking
        assert all(line.strip() for line in self.walk.lines()) or self.walk.session.over


SEQUENCES = int(os.environ.get("KIOSK_TEST_SEQUENCES", "1000"))

STATEFUL = settings(
    max_examples=SEQUENCES,
    stateful_step_count=20,
    deadline=None,
    derandomize=True,
    database=None,
    suppress_health_check=[HealthCheck.too_slow],
)


def test_random_walks_of_the_running_kiosk_break_no_rule():
    Running.ends.clear()
    run_state_machine_as_test(Running, settings=STATEFUL)
    print(f"{Running.ends.total()} walks: {dict(Running.ends)}")
    assert Running.ends.total() >= SEQUENCES
    few = {mode for mode in Mode if Running.ends[mode] < SEQUENCES / 100} - {Mode.IDLE}
    assert not few, "the walks come to too little"


def test_random_walks_find_a_guard_that_lets_everyone_through(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(holds, "missing", lambda step, in_force: ())
    found = settings(STATEFUL, max_examples=200, phases=[Phase.generate])
    with pytest.raises(AssertionError, match="required-in-force"):
        run_state_machine_as_test(Running, settings=found)

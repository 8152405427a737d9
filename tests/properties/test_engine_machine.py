"""Random sessions on a real journal, with power cuts among them, judged after every act."""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, given, settings
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
from kiosk.engine import decide as rules
from kiosk.engine import holds
from kiosk.engine.decide import decide
from kiosk.engine.events import Event
from kiosk.engine.state import Mode, State, fold
from kiosk.journal.store import Journal
from kiosk.procedure.plan import Plan, Wait
from kiosk.proof.account import Account
from kiosk.proof.audit import audit
from kiosk.proof.monitor import Monitor
from kiosk.session import Session
from tests.plans import hold, plan, step
from tests.proof.plans import chain, every_kind
from tests.proof.walks import TOUCH, VOICE, right_act
from tests.properties.machine_clock import MEMORY, FakeClock

SHORT = plan(
    step("tools"),
    hold("isolate", "isolated", verify=True),
    step("open", requires=["isolated"], establishes=["open"]),
    step("reach in", requires=["isolated", "open"]),
    hold("close", "guarded", ends=["open"]),
    hold("restore", "powered", requires=["guarded"], ends=["isolated"]),
    step("run", requires=["guarded", "powered"]),
    hazards=["powered"],
    warned=["guarded"],
)
PLANS = (SHORT, every_kind(), chain(12))

NUMBERS = st.decimals(-5, 150, places=1) | st.sampled_from(["NaN", "Infinity"]).map(c.Decimal)

ACTS = st.one_of(
    st.sampled_from(
        [
            c.Confirm(),
            c.GivePhrase(),
            c.Yes(),
            c.No(),
            c.SayAgain(),
            c.Back(),
            c.CallProblem(),
            c.Pause(),
            c.Resume(),
            c.TakeOutOfService(),
            c.End(),
            c.TimeUp(),
            c.Restart(),
            *(c.Inspected(one) for one in c.Finding),
            *(c.NameReason(one) for one in ("leak", "hurt", "moonlight")),
            *(c.Witness(one) for one in ("ana", "ben")),
            *(c.HandOver(one, "es") for one in ("ana", "ben")),
            c.Speak("ko"),
        ]
    ),
    NUMBERS.map(c.Read),
)
CHANNELS = st.sampled_from([VOICE, TOUCH])
SECONDS = st.sampled_from([1, 30, 61, 10_000])


class Walking(RuleBasedStateMachine):
    """A session, its journal in a folder of its own, and everything that can come in between."""

    @initialize(made=st.sampled_from(PLANS))
    def begin(self, made: Plan) -> None:
        self.folder = Path(tempfile.mkdtemp(prefix="walk", dir=MEMORY))
        self.journal = Journal(self.folder)
        self.clock = FakeClock()
        self.plan = made
        self.session = Session.fresh(made, self.journal, self.clock)
        self.written: list[Event] = []
        self.do(c.Start("ana", "en"), TOUCH, 1)

    def teardown(self) -> None:
        if hasattr(self, "journal"):
            assert self.journal.verify().whole
            self.journal.close()
            shutil.rmtree(self.folder)

    def do(self, act: c.Act, by: c.Evidence, seconds: int) -> None:
        self.clock.pass_by(seconds)
        before = self.session.state
        outcome = self.session.do(act, by)
        assert not outcome.trouble
        self.written += outcome.events
        if outcome.refusal is not None:
            assert outcome.events == ()
            assert self.session.state == before

    @precondition(lambda self: not self.session.over)
    @rule(by=CHANNELS, times=st.integers(1, 6))
    def go_on(self, by: c.Evidence, times: int) -> None:
        """Do what is right, some times in a row, so that walks come far."""
        for _ in range(times):
            if self.session.over:
                return
            state = self.session.state
            waits = bool(state.step) and isinstance(self.plan.step(state.step).task, Wait)
            self.do(right_act(self.plan, state), by, 10_000 if waits else 1)

    @rule(act=ACTS, by=CHANNELS, seconds=SECONDS)
    def anything(self, act: c.Act, by: c.Evidence, seconds: int) -> None:
        self.do(act, by, seconds)

    @rule(power=st.booleans(), noticed=st.booleans())
    def crash(self, power: bool, noticed: bool) -> None:
        """Drop the session and take it up from the disk, after a power cut or within one boot."""
        self.journal.close()
        if power:
            self.clock.cut_power()
        self.journal = Journal(self.folder)
        self.session = Session(self.plan, self.journal, self.clock, self.session.id)
        if noticed or not power:
            self.do(c.Restart(), c.Evidence(c.Channel.KIOSK), 1)

    @invariant()
    def judged(self) -> None:
        if not hasattr(self, "session"):
            return
        events = self.journal.events(self.session.id)
        state = self.session.state
        assert events == self.written
        assert fold(events) == state
        assert audit(self.plan, events) == []
        if state.mode is Mode.RUNNING:
            required = self.plan.step(state.step).requires
            assert state.in_force.issuperset(required)


STATEFUL = settings(
    max_examples=200,
    stateful_step_count=25,
    deadline=None,
    derandomize=True,
    database=None,
    suppress_health_check=[HealthCheck.too_slow],
)


def test_random_sessions_on_a_real_journal_break_no_rule():
    run_state_machine_as_test(Walking, settings=STATEFUL)


def test_random_sessions_find_a_guard_that_lets_everyone_through(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(holds, "missing", lambda step, in_force: ())
    found = settings(STATEFUL, phases=[Phase.generate])
    with pytest.raises(AssertionError, match="required-in-force"):
        run_state_machine_as_test(Walking, settings=found)


def test_random_sessions_find_a_crash_that_nobody_notices(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(rules._Ruling, "_in_another_boot", lambda ruling: False)
    found = settings(STATEFUL, phases=[Phase.generate])
    with pytest.raises(AssertionError, match="entered"):
        run_state_machine_as_test(Walking, settings=found)


def _walk(made: Plan, acts: list[tuple[c.Act | int, c.Evidence, int]]) -> None:
    """Run acts on the pure rules; a number stands for so many right acts, none for a power cut."""
    monitor, account, state, clock = Monitor(made), Account(), State(), FakeClock()
    wanted: list[tuple[c.Act | None, c.Evidence, int]]
    for act, by, seconds in [(1, TOUCH, 1), *acts]:
        if act == 0:
            clock.cut_power()
            continue
        wanted = [(None, by, 10_000)] * act if isinstance(act, int) else [(act, by, seconds)]
        for one, channel, passing in wanted:
            clock.pass_by(passing)
            command = c.Command(one or right_act(made, state), clock.now(), channel)
            if state.mode in (Mode.COMPLETE, Mode.ABORTED) and one is None:
                return
            decided = decide(made, state, command)
            if isinstance(decided, c.Refusal):
                continue
            account, broken = monitor.judge(account, decided)
            state = fold(decided, state)
            assert broken == ()
            assert account.in_force == state.in_force
            if state.mode is Mode.RUNNING:
                assert state.in_force.issuperset(made.step(state.step).requires)


@settings(max_examples=2000, deadline=None, derandomize=True, database=None)
@given(
    made=st.sampled_from(PLANS),
    acts=st.lists(
        st.tuples(st.one_of(st.integers(0, 8), ACTS), CHANNELS, SECONDS), min_size=5, max_size=60
    ),
)
def test_random_acts_on_the_pure_rules_break_no_rule(
    made: Plan, acts: list[tuple[c.Act | int, c.Evidence, int]]
):
    _walk(made, acts)

"""Breadth-first search over every state that a session of a plan can reach.

Every move of the alphabet is tried in every state, offered or not. A node is the engine's state
with the account of the independent judge; the first broken rule ends the search, and since it goes
breadth first, no shorter way leads there.
"""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Callable, Hashable, Iterable
from dataclasses import dataclass, field

from kiosk.engine import commands as c
from kiosk.engine import decide as engine
from kiosk.engine import events as e
from kiosk.engine.state import Mode, State, fold
from kiosk.procedure.plan import Plan
from kiosk.proof.account import Account
from kiosk.proof.alphabet import TIME_PASSES, Alphabet, Move
from kiosk.proof.monitor import Monitor
from kiosk.proof.quotient import Node, Quotient

Decide = Callable[[Plan, State, c.Command], tuple[e.Event, ...] | c.Refusal]

MOST_STATES = 300_000
"""Where the search gives up, loudly: at 0.2 ms and 1.2 kB a state, a minute and 0.4 GB."""

_NO_WAY_ON = (c.SayAgain, c.Speak, c.Restart, c.TimeUp)
"""Acts that offer a worker no way on."""


class TooManyStates(Exception):
    """The search was cut off: nothing is proven. The message says at what count."""


@dataclass(frozen=True, slots=True)
class Proof:
    """Every reachable state was visited, and no rule was broken in any."""

    states: int
    transitions: int
    """Moves that were tried, refused ones included."""
    taken: int
    """Moves that were not refused."""
    seconds: float
    """By the wall clock; how long the search took when it was made."""


@dataclass(frozen=True, slots=True)
class Counterexample:
    """The shortest way to a broken rule."""

    rule: str
    sentence: str
    path: tuple[Move, ...]
    state: State
    """Where the path ends."""
    states: int
    """How many states were visited."""


@dataclass(slots=True)
class _Graph:
    """What was visited, in the order in which it was found."""

    nodes: list[Node] = field(default_factory=list)
    parents: list[tuple[int, Move] | None] = field(default_factory=list)
    backward: list[list[int]] = field(default_factory=list)
    number: dict[Hashable, int] = field(default_factory=dict)

    def add(self, key: Hashable, node: Node, parent: tuple[int, Move] | None) -> int:
        """Return the number of a node, new or not."""
        found = len(self.nodes)
        known = self.number.setdefault(key, found)
        if known == found:
            self.nodes.append(node)
            self.parents.append(parent)
            self.backward.append([])
        return known

    def path(self, number: int) -> tuple[Move, ...]:
        """Return the moves from the beginning to a node."""
        moves: list[Move] = []
        step = self.parents[number]
        while step is not None:
            number, move = step
            moves.append(move)
            step = self.parents[number]
        return tuple(reversed(moves))

    def leading_to(self, goals: Iterable[int]) -> set[int]:
        """Return the nodes from which one of the goals can be reached."""
        found = set(goals)
        queue = deque(found)
        while queue:
            for before in self.backward[queue.popleft()]:
                if before not in found:
                    found.add(before)
                    queue.append(before)
        return found


def search(
    plan: Plan,
    decide: Decide = engine.decide,
    *,
    most_states: int = MOST_STATES,
    exact: bool = False,
) -> Proof | Counterexample:
    """Visit every reachable state of `decide` over a plan.

    With `exact`, conditions that no step requires tell states apart as well: up to nine times
    the work for the same verdict.

    Raises TooManyStates rather than call a search done that was cut off.
    """
    return _Search(plan, decide, most_states, Quotient(plan, exact=exact)).outcome()


class _Search:
    """One search."""

    def __init__(self, plan: Plan, decide: Decide, most_states: int, quotient: Quotient) -> None:
        self.plan, self.decide, self.most_states = plan, decide, most_states
        self.monitor, self.alphabet, self.quotient = Monitor(plan), Alphabet(plan), quotient
        self.graph = _Graph()
        self.tried = self.taken = 0

    def outcome(self) -> Proof | Counterexample:
        begun = time.perf_counter()
        graph = self.graph
        self._reach(None, (State(), Account()))
        visited = 0
        while visited < len(graph.nodes):
            found = self._visit(visited)
            if found is not None:
                return found
            visited += 1
            if len(graph.nodes) > self.most_states:
                raise TooManyStates(
                    f"{self.plan.procedure}: more than {self.most_states} states; nothing is proven"
                )
        return self._dead_end() or Proof(
            len(graph.nodes), self.tried, self.taken, time.perf_counter() - begun
        )

    def _visit(self, number: int) -> Counterexample | None:
        """Try every move in one state."""
        node = self.graph.nodes[number]
        state, account = node
        offered = False
        for move in self.alphabet.moves(state.step):
            command = move.command
            if command is None:
                continue
            self.tried += 1
            events = self.decide(self.plan, state, command)
            if isinstance(events, c.Refusal):
                continue
            self.taken += 1
            offered = offered or not isinstance(command.act, _NO_WAY_ON)
            heard, broken = self.monitor.judge(account, events)
            after = fold(events, state)
            if broken:
                one = broken[0]
                return self._against(one.rule, one.sentence, number, move, after)
            if heard.in_force != after.in_force:
                what = "the session and its events differ in what is in force"
                return self._against("one-account", what, number, move, after)
            following = self.quotient.node(after, heard, command.at.boot)
            self._reach((number, move), following)
        later = self.quotient.later(node)
        if later is not None:
            self._reach((number, TIME_PASSES), later)
        if self.graph.number.get(self.quotient.key(node)) != number:
            return self._stuck(number, "refusals", "an act changed the state that it was asked in")
        live = state.mode not in (Mode.COMPLETE, Mode.ABORTED)
        if live and not offered:
            return self._stuck(number, "something-offered", "nothing can be done any more")
        return None

    def _reach(self, parent: tuple[int, Move] | None, node: Node) -> None:
        number = self.graph.add(self.quotient.key(node), node, parent)
        if parent is not None and number != parent[0]:
            self.graph.backward[number].append(parent[0])

    def _against(
        self, rule: str, sentence: str, before: int, move: Move, after: State
    ) -> Counterexample:
        path = (*self.graph.path(before), move)
        return Counterexample(rule, sentence, path, after, len(self.graph.nodes))

    def _stuck(self, number: int, rule: str, sentence: str) -> Counterexample:
        state = self.graph.nodes[number][0]
        return Counterexample(rule, sentence, self.graph.path(number), state, len(self.graph.nodes))

    def _dead_end(self) -> Counterexample | None:
        """Look for a state that cannot be completed, or not be ended, and for a step left out."""
        graph, plan = self.graph, self.plan
        modes = [state.mode for state, _ in graph.nodes]
        complete = graph.leading_to(n for n, mode in enumerate(modes) if mode is Mode.COMPLETE)
        ended = graph.leading_to(n for n, mode in enumerate(modes) if mode is Mode.ABORTED)
        for number, (state, account) in enumerate(graph.nodes):
            if state.mode in (Mode.COMPLETE, Mode.ABORTED):
                continue
            if number not in complete and not account.stopped:
                goal = state.goal or plan.steps[0].id
                what = f"from here '{goal}' cannot be passed whatever the worker does"
                return self._stuck(number, "can-complete", what)
            if number not in ended and state.mode is not Mode.IDLE:
                return self._stuck(number, "can-end", "from here the session cannot be ended")
        stood = {state.step for state, _ in graph.nodes if state.mode is Mode.RUNNING}
        for step in plan.steps:
            if step.id not in stood:
                return self._stuck(0, "can-enter", f"no way leads into the step '{step.id}'")
        return None

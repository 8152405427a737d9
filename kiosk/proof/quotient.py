"""What two states must share to be one for the search: everything that can decide what follows.

Three things never decide anything. Names and languages do not: the present worker always has the
same name here. The past of an instant does not, beyond whether it is recent, long ago or in another
boot, nor do passes beyond the most. And a condition that no step requires does not: the guard never
asks for it, so states that differ in nothing else are visited once; that engine and judge agree on
such conditions too is kept from move to move, whichever of them were in force before.
Of a session that is over, there is left how it ended.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import fields, replace
from operator import attrgetter, itemgetter

from kiosk.engine.commands import Instant
from kiosk.engine.state import Mode, State
from kiosk.procedure.plan import Plan, Repeat, Wait
from kiosk.proof.account import OVER, RUNNING, Account
from kiosk.proof.alphabet import BEFORE_BOOT, EARLIER, LANGUAGE, LONG_AGO, NOW, WORKER

Node = tuple[State, Account]

_LIVE_CLOCK = (Mode.RUNNING, Mode.HELD)

_OF_STATE = attrgetter(*(one.name for one in fields(State) if one.name != "in_force"))
_OF_ACCOUNT = itemgetter(
    *(n for n, name in enumerate(Account._fields) if name not in ("in_force", "owed"))
)
"""What the judge holds in force is left out, for the search ends where it differs."""


class Quotient:
    """Brings a state and the judge's account to their representative."""

    def __init__(self, plan: Plan, *, exact: bool = False) -> None:
        """With `exact`, conditions that no step requires tell states apart as well."""
        self._required = frozenset(name for step in plan.steps for name in step.requires)
        self._exact = exact
        self._most = {s.id: s.task.most + 1 for s in plan.steps if isinstance(s.task, Repeat)}
        self._waits = frozenset(s.id for s in plan.steps if isinstance(s.task, Wait))

    def node(self, state: State, account: Account, boot: str) -> Node:
        """Return the representative of what follows an act in `boot`."""
        changed: dict[str, object] = {}
        if state.language != LANGUAGE:
            changed["language"] = LANGUAGE
        if state.worker == account.worker != WORKER:
            changed["worker"] = WORKER
            account = account._replace(worker=WORKER)
        if state.mode in _LIVE_CLOCK:
            since = self._instant(state.since, state.step, boot, state.mode is Mode.RUNNING)
            if since is not state.since:
                changed["since"] = since
            most = self._most.get(state.step, state.passes)
            if state.passes > most:
                changed["passes"] = most
        if changed:
            state = replace(state, **changed)  # type: ignore[arg-type]
        return state, self._account(account, boot)

    def key(self, node: Node) -> Hashable:
        """Return what tells a node apart from others."""
        state, account = node
        if state.mode not in _LIVE_CLOCK:
            return state.mode, state.out_of_service, account.phase
        if self._exact:
            return node
        in_force, owed = state.in_force & self._required, account.owed & self._required
        return _OF_STATE(state), _OF_ACCOUNT(account), in_force, owed

    def _account(self, account: Account, boot: str) -> Account:
        if account.phase == OVER:
            return account
        since = self._instant(account.since, account.step, boot, account.phase == RUNNING)
        told_at = None if account.told_at is None else EARLIER
        passes = min(account.passes, self._most.get(account.step, account.passes))
        where = account.boot
        if where:
            where = NOW.boot if where == boot else BEFORE_BOOT.boot
        if (since, told_at, passes, where) == (
            account.since, account.told_at, account.passes, account.boot,
        ):  # fmt: skip
            return account
        return account._replace(since=since, told_at=told_at, passes=passes, boot=where)

    def _instant(
        self, instant: Instant | None, step: str, boot: str, running: bool
    ) -> Instant | None:
        if instant is None:
            return None
        if not running and step not in self._waits and step not in self._most:
            return BEFORE_BOOT
        if instant.boot != boot:
            return BEFORE_BOOT
        if instant.boot == NOW.boot:
            return instant
        return NOW

    def later(self, node: Node) -> Node | None:
        """Return the node after a long time in the step it waits in; None where no clock runs."""
        state, account = node
        if state.step not in self._waits or state.mode not in _LIVE_CLOCK:
            return None
        older = replace(state, since=LONG_AGO) if state.since == NOW else state
        since = LONG_AGO if account.since == NOW else account.since
        after = (older, account._replace(since=since))
        return None if after == node else after

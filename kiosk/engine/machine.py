"""A machine's standing: the fold of the first and last facts of its sessions."""

from __future__ import annotations

from collections.abc import Iterable

from kiosk.engine import events as e
from kiosk.procedure.model import Standing


def standing(facts: Iterable[e.Fact], at_first: Standing = Standing.IN_SERVICE) -> Standing:
    """Return the standing after all facts of one machine's sessions, in order."""
    now, during, leaves = at_first, at_first, at_first
    for fact in facts:
        match fact:
            case e.SessionStarted():
                during, leaves = Standing(fact.during), Standing(fact.leaves)
                now = during
            case e.SessionHeld(because="problem"):
                now = Standing.HELD
            case e.SessionResumed():
                now = during
            case e.SessionCompleted():
                now = leaves
            case e.SessionAborted(out_of_service=True):
                now = Standing.OUT_OF_SERVICE
            case e.SessionAborted():
                # What is walked while the machine serves leaves nothing of it undone.
                now = during if during is Standing.IN_SERVICE else Standing.UNFINISHED
            case _:
                pass
    return now

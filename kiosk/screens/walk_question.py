"""What stands with the lines of a walk: the part they point at, the time, the unit."""

from __future__ import annotations

from functools import lru_cache, partial

from kiosk.engine.state import Mode, Stage
from kiosk.pictures.cells import Row, cells
from kiosk.pictures.gallery import part_of, picture
from kiosk.procedure.plan import Count
from kiosk.screens.reading import unit_name
from kiosk.screens.type_sizes import Draw
from kiosk.walk import Walk


def main_line(walk: Walk) -> int:
    """Return which of the lines tells what to do: before it stands that it is confirmed again."""
    state = walk.session.state
    again = state.mode is Mode.RUNNING and state.stage is Stage.ASK and state.step != state.goal
    return int(again and not walk.asking)


def picture_of(walk: Walk) -> Draw | None:
    """Return what draws the part that the step points at, if it points at one."""
    state = walk.session.state
    if walk.asking or state.mode is not Mode.RUNNING:
        return None
    name = part_of(walk.session.plan.step(state.step))
    return None if name is None else partial(_drawn, name)


@lru_cache(maxsize=16)
def _drawn(name: str, width: int, height: int) -> tuple[Row, ...]:
    return cells(picture(name), width, height)


def number_of(walk: Walk) -> str:
    """Return what the number to enter is of: the name of a part, or the unit in words."""
    task = None if walk.asking else walk.session.plan.step(walk.session.state.step).task
    if isinstance(task, Count):
        return walk.words.text(task.name)
    return "" if walk.number is None else unit_name(walk.number, walk.words)


def wait_of(walk: Walk) -> str:
    """Return what a wait still needs, in minutes and seconds; '' when nothing is waited for."""
    left = walk.session.seconds_left()
    whole = 0 if left is None else int(-(-left // 1))
    return f"{whole // 60}:{whole % 60:02}" if whole else ""

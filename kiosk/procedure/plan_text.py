"""A plan as text and back, so that what was walked can be read when its files have changed."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any, Final, get_args

from pydantic import TypeAdapter

from kiosk.procedure.fit import digest_of
from kiosk.procedure.plan import Plan, Task

_TASKS: Final[dict[str, TypeAdapter[Any]]] = {
    one.__name__: TypeAdapter(one) for one in get_args(Task)
}
_PLAN: Final = TypeAdapter(Plan)


def as_text(plan: Plan) -> str:
    """Return a plan as JSON."""
    record = _PLAN.dump_python(plan, mode="json")
    for written, step in zip(record["steps"], plan.steps, strict=True):
        written["task"] = {"is": type(step.task).__name__, **written["task"]}
    return json.dumps(record, ensure_ascii=False, separators=(",", ":"))


def from_text(text: str, digest: str) -> Plan | None:
    """Read a plan that was written as text.

    Returns None for a text that this version cannot read, and for one whose steps are not those of
    the digest: it was altered. The digest covers the steps; names and titles beside them it does
    not.
    """
    try:
        record = json.loads(text)
        tasks = []
        for step in record["steps"]:
            task = dict(step["task"])
            tasks.append(_TASKS[task.pop("is")].validate_python(task))
            step["task"] = {}
        plan: Plan = _PLAN.validate_python(record)
    except (AttributeError, KeyError, TypeError, ValueError, RecursionError):
        return None
    steps = tuple(replace(step, task=task) for step, task in zip(plan.steps, tasks, strict=True))
    plan = replace(plan, steps=steps)
    same = digest == plan.digest == digest_of(plan.procedure, plan.version, steps)
    return plan if same else None

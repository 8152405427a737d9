"""The engine is pure: seen in what it loads, and in what its text calls."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

import kiosk

PACKAGE = Path(kiosk.__file__).parent
PURE = sorted((PACKAGE / "engine").glob("*.py")) + sorted((PACKAGE / "trade").glob("*.py"))
WORLD = (
    "textual", "vosk", "pyttsx3", "sqlite3", "sqlite_utils", "numpy", "pydantic", "yaml", "fluent",
    "miniaudio", "socket", "asyncio", "threading", "subprocess",
)  # fmt: skip


def test_the_engine_loads_nothing_of_the_world():
    modules = [f"kiosk.engine.{path.stem}" for path in (PACKAGE / "engine").glob("[a-z]*.py")]
    program = (
        f"import sys; before = set(sys.modules); import {', '.join(modules)}; "
        f"print(*sorted(set({WORLD!r}) & (set(sys.modules) - before)))"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-c", f"sys_path = {str(PACKAGE.parent)!r}\n"
         f"import sys; sys.path.insert(0, sys_path)\n{program}"],
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    assert done.stdout.split() == []


@pytest.mark.parametrize("path", PURE, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_the_engine_and_the_arithmetic_read_no_clock_and_touch_no_file(path):
    forbidden = {"open", "print", "input", "now", "today", "time", "monotonic", "sleep", "random"}
    tree = ast.parse(path.read_text(encoding="utf-8"))
    calls = {
        call.func.id if isinstance(call.func, ast.Name) else call.func.attr
        for call in ast.walk(tree)
        if isinstance(call, ast.Call) and isinstance(call.func, ast.Name | ast.Attribute)
    }
    assert calls.isdisjoint(forbidden)

"""The program printed in VERIFY.md, taken out of the page and run as an outsider would."""

from __future__ import annotations

import contextlib
import io
import sys
from pathlib import Path
from unittest.mock import patch

PAGE = Path(__file__).parents[1] / "kiosk" / "journal" / "VERIFY.md"


def block(mark: str) -> str:
    """Return the code block that follows a mark in the page."""
    after = PAGE.read_text(encoding="utf-8").split(f"<!-- {mark} -->", 1)[1]
    return after.split("```", 2)[1].split("\n", 1)[1]


PROGRAM = block("program")
_COMPILED = compile(PROGRAM, "verify.py", "exec")


def judged(*arguments: Path) -> str:
    """Run the program in this process; return what it said last."""
    told = io.StringIO()
    argv = ["verify.py", *map(str, arguments)]
    with patch.object(sys, "argv", argv), contextlib.redirect_stdout(told):
        try:
            exec(_COMPILED, {"__name__": "__main__"})
        except SystemExit as ended:
            return str(ended.code)
    return told.getvalue().splitlines()[-1]

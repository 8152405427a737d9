"""`kiosk check`: loads, fits and proves what is shipped, and machine kinds of this site's own."""

from __future__ import annotations

import argparse
from pathlib import Path

from kiosk import home
from kiosk.cli.place import spoken_in
from kiosk.procedure.load import load_library
from kiosk.procedure.own_kinds import OwnKind, find
from kiosk.shipped import shipped


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    check = commands.add_parser(
        "check",
        help="load, fit and prove the procedures",
        description="Checks what is shipped, and kinds of machine of this site's own.",
    )
    check.add_argument("files", nargs="*", type=Path, help="procedure files (default: all)")
    check.add_argument("--explain", default="", metavar="RULE", help="print the page of one rule")
    check.set_defaults(command=run)


def run(parsed: argparse.Namespace) -> int:
    """Check files; return 1 when an error was found, else 0."""
    from kiosk.checking.check import check
    from kiosk.checking.own_kinds import check_own

    if parsed.explain:
        return check((), shipped("procedures"), print, parsed.explain)
    folder = home.home_folder()
    found = find(folder, load_library(shipped("procedures")))
    given = [one.resolve() for one in parsed.files]
    asked = [kind for kind in found.kinds if not given or any(_is_of(one, kind) for one in given)]
    left = [one for one in parsed.files if not any(_is_of(one.resolve(), kind) for kind in asked)]
    failed = bool(left or not given) and check(left, shipped("procedures"), print) != 0
    for kind in asked:
        print(f"\n{kind.file}")
        failed |= check_own(kind, spoken_in(folder), print) != 0
    for fault in found.faults if not given else ():
        print(f"\nerror: {fault}")
        failed = True
    return 1 if failed else 0


def _is_of(file: Path, kind: OwnKind) -> bool:
    return file in {one.resolve() for one in kind.all}

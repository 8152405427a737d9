"""`kiosk fleet`: the head office's side: its tables, its shops, and what they sent."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from kiosk.cli.place import Failed
from kiosk.cli.ship import head_office, takes_address
from kiosk.procedure.authorities import load_authorities
from kiosk.trade.authorities import NoSuchLimit, authority

_ASKED = {
    "late": "who did not close or open in time in the last 24 hours",
    "notice": "machines that stand under notice or action by their laboratory results",
    "holds": "safety holds that took longest in the last 30 days",
    "heard": "each kiosk, and when it was last heard of",
    "trouble": "journals that parted, fell behind or have gaps: to be looked at by people",
}
_NO_ANSWER = "The head office does not answer"


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    fleet = commands.add_parser("fleet", help="the head office: a thousand shops").add_subparsers(
        required=True, metavar="COMMAND"
    )
    migrating = fleet.add_parser("migrate", help="make its tables, or bring them up to date")
    migrating.set_defaults(command=_migrate)

    admitting = fleet.add_parser("admit", help="admit a shop, with a login of its own")
    admitting.add_argument("shop", help="its id: small letters, digits, hyphens")
    admitting.add_argument("--name", required=True)
    admitting.add_argument(
        "--authority", default="", help="whose limits its results are judged by, as usda"
    )
    admitting.set_defaults(command=_admit)

    appointing = fleet.add_parser("appoint", help="make a login that reads what all shops sent")
    appointing.add_argument("login")
    appointing.set_defaults(command=_appoint)

    for name, what in _ASKED.items():
        asking = fleet.add_parser(name, help=what)
        asking.set_defaults(command=_ask, question=name)

    settling = fleet.add_parser("settle", help="say that a trouble was looked at")
    settling.add_argument("trouble", type=int)
    settling.add_argument("--by", required=True)
    settling.add_argument("--remark", required=True, help="what was found and done")
    settling.set_defaults(command=_settle)

    verifying = fleet.add_parser("verify", help="check every journal's chain as it lies there")
    verifying.set_defaults(command=_verify)
    for one in fleet.choices.values():
        takes_address(one)


def _migrate(parsed: argparse.Namespace) -> int:
    with head_office(parsed.to, "Nothing was changed") as line:
        from kiosk.fleet.migrate import Changed, migrate
        from kiosk.fleet.office import put_limits

        try:
            done = migrate(line)
        except Changed as error:
            raise Failed(f"Nothing was changed: {error}") from error
        put_limits(line, load_authorities())
    print(f"Applied: {', '.join(done)}." if done else "The tables are up to date.")
    return 0


def _admit(parsed: argparse.Namespace) -> int:
    if parsed.authority:
        try:
            authority(load_authorities(), parsed.authority)
        except NoSuchLimit as error:
            raise Failed(str(error)) from error
    with head_office(parsed.to, "The shop was not admitted") as line:
        from kiosk.fleet.office import admit

        login, password = admit(line, parsed.shop, parsed.name, parsed.authority)
    print(f"Admitted. It ships as {login}, with this password, which is shown once: {password}")
    return 0


def _appoint(parsed: argparse.Namespace) -> int:
    with head_office(parsed.to, "No login was made") as line:
        from kiosk.fleet.office import appoint

        password = appoint(line, parsed.login)
    print(f"{parsed.login} may read, with this password, which is shown once: {password}")
    return 0


def _ask(parsed: argparse.Namespace) -> int:
    with head_office(parsed.to, _NO_ANSWER) as line:
        from kiosk.fleet.office import ask, plain

        answer = ask(line, parsed.question)
        cells = [[plain(cell) for cell in row] for row in answer.rows]
    if cells:
        _print_table([answer.columns, *cells])
    else:
        print("None.")
    return 0


def _settle(parsed: argparse.Namespace) -> int:
    with head_office(parsed.to, "It was not settled") as line:
        from kiosk.fleet.office import settle

        settled = settle(line, parsed.trouble, parsed.by, parsed.remark)
    if not settled:
        raise Failed(f"No open trouble has the number {parsed.trouble}. See 'kiosk fleet trouble'.")
    print("Settled. It stays in the table, with the remark.")
    return 0


def _verify(parsed: argparse.Namespace) -> int:
    bad = 0
    with head_office(parsed.to, _NO_ANSWER) as line:
        from kiosk.fleet.office import bad_rows

        for kiosk, rows, first_bad in bad_rows(line):
            what = "whole" if first_bad is None else f"NOT whole, from row {first_bad} on"
            print(f"{kiosk}: {rows} rows, {what}")
            bad += first_bad is not None
    return 1 if bad else 0


def _print_table(rows: Sequence[Sequence[str]]) -> None:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row in rows:
        print(
            "  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip()
        )

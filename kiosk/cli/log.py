"""`kiosk log`: the journal, whole or not, its sessions, one session."""

from __future__ import annotations

import argparse
from contextlib import closing

from kiosk.cli.place import Failed, data
from kiosk.cli.place import journal as open_journal
from kiosk.cli.place import shop as shop_of
from kiosk.journal.shop_facts import STREAM


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    log = commands.add_parser("log", help="read the journal").add_subparsers(
        required=True, metavar="COMMAND"
    )
    verifying = log.add_parser("verify", help="check the journal's chain from first row to last")
    verifying.set_defaults(command=_verify)
    auditing = log.add_parser(
        "audit", help="judge every session by the monitor that proves procedures"
    )
    auditing.set_defaults(command=_audit)
    listed = log.add_parser("list", help="list the sessions")
    listed.set_defaults(command=_list)
    shown = log.add_parser("show", help="print one session, or the shop's own facts: show shop")
    shown.add_argument("session")
    shown.set_defaults(command=_show)


def verdict_line(rows: int, head: str, bad_seq: int | None, what: str) -> str:
    """Return the verdict on a journal in one sentence."""
    if bad_seq is None:
        return f"The journal is whole: {rows} rows, head {head[:16]}."
    return f"The journal is NOT whole. Row {bad_seq}: {what}."


def _verify(_: argparse.Namespace) -> int:
    with closing(open_journal()) as journal:
        verdict = journal.verify()
    print(verdict_line(verdict.rows, verdict.head, verdict.bad_seq, verdict.what))
    return 0 if verdict.whole else 1


def _audit(_: argparse.Namespace) -> int:
    from kiosk.proof.audit import audit

    folder, site = data()
    found = 0
    with closing(open_journal()) as journal:
        shop = shop_of(folder, site, journal)
        for session in journal.sessions():
            plan = shop.plan_of(session)
            if plan is None:
                print(f"{session}: its procedure's text has changed since; it cannot be judged")
                continue
            violations = audit(plan, journal.events(session))
            found += len(violations)
            print(f"{session}: {'; '.join(map(str, violations)) or 'no rule broken'}")
    return 1 if found else 0


def _list(_: argparse.Namespace) -> int:
    from kiosk.journal.telling import session_line

    with closing(open_journal()) as journal:
        for session in journal.sessions():
            print(session_line(session, journal.events(session)))
    return 0


def _show(parsed: argparse.Namespace) -> int:
    from kiosk.journal.telling import event_line

    with closing(open_journal()) as journal:
        shop_facts = parsed.session == STREAM
        events = journal.shop_events() if shop_facts else journal.events(parsed.session)
    if not events:
        raise Failed(f"No session is called '{parsed.session}'. 'kiosk log list' names them.")
    for event in events:
        print(event_line(event))
    return 0

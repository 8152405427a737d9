"""`kiosk log`: the journal as evidence, its sessions, one session."""

from __future__ import annotations

import argparse
from contextlib import closing

from kiosk.cli import keeping
from kiosk.cli.place import Failed, data
from kiosk.cli.place import journal as open_journal
from kiosk.cli.place import shop as shop_of
from kiosk.journal.shop_facts import STREAM


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    log = commands.add_parser("log", help="read the journal").add_subparsers(
        required=True, metavar="COMMAND"
    )
    keeping.add(log)
    auditing = log.add_parser(
        "audit", help="judge every session by the monitor that proves procedures"
    )
    auditing.set_defaults(command=_audit)
    listed = log.add_parser("list", help="list the sessions")
    listed.set_defaults(command=_list)
    shown = log.add_parser("show", help="print one session, or the shop's own facts: show shop")
    shown.add_argument("session")
    shown.set_defaults(command=_show)


def _audit(_: argparse.Namespace) -> int:
    from kiosk.journal.shop_facts import PinGiven
    from kiosk.people.vouched import unvouched
    from kiosk.proof.audit import audit

    folder, site = data()
    found = 0
    with closing(open_journal()) as journal:
        shop = shop_of(folder, site, journal)
        pins = journal.shop_events(PinGiven)
        for session in journal.sessions():
            plan = shop.plan_of(session)
            if plan is None:
                print(f"{session}: its procedure's text has changed since; it cannot be judged")
                continue
            events = journal.events(session)
            violations = [*audit(plan, events), *unvouched(events, pins)]
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

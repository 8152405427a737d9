"""What the head office's own people do: admit shops, appoint readers, ask, look at troubles."""

from __future__ import annotations

import secrets
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final

from psycopg import sql

from kiosk.fleet.connection import Line
from kiosk.trade.authorities import Authorities

QUESTIONS: Final = {
    "late": "select shop, name, machine, duty, day, until_at, stand, session, practice from "
    "fleet.late_tonight",
    "notice": "select shop, machine, barrel, analysis, state, over_of_four, over_of_five, "
    "average_least, average_most, last_day, practice from fleet.under_notice "
    "order by state, shop, machine, barrel",
    "holds": "select procedure, step, times, shops, median_s, ninth_of_ten_s, longest_s, practice "
    "from fleet.longest_holds",
    "heard": "select shop, kiosk, head_seq, last_heard, whole_until, troubles, practice from "
    "fleet.heard order by last_heard",
    "trouble": "select id, kiosk, kind, seq, times, last_seen, what from fleet.trouble "
    "where settled_at is null order by last_seen desc",
}
"""Name of a question to its SQL."""


@dataclass(frozen=True, slots=True)
class Answer:
    """What the head office answers, as a table."""

    columns: tuple[str, ...]
    rows: tuple[tuple[Any, ...], ...]


def ask(line: Line, question: str) -> Answer:
    """Answer one of QUESTIONS. Raises psycopg.Error."""
    cursor = line.execute(QUESTIONS[question])
    columns = tuple(one.name for one in cursor.description or ())
    return Answer(columns, tuple(cursor.fetchall()))


def admit(line: Line, shop: str, name: str, authority: str = "") -> tuple[str, str]:
    """Admit a shop, with a login of its own; return that login and its password.

    The password is kept nowhere, and the server is given its hash alone. Raises psycopg.Error.
    """
    with line.transaction():
        role = f"shop_{shop}"
        password = _login(line, role, "fleet_shop")
        line.execute(
            "insert into fleet.shop (id, role, name, authority) values (%s, %s, %s, %s)",
            [shop, role, name, authority],
        )
    return role, password


def appoint(line: Line, role: str) -> str:
    """Make a login for someone who reads what all shops sent; return its password."""
    with line.transaction():
        return _login(line, role, "fleet_reader")


def _login(line: Line, role: str, group: str) -> str:
    password = secrets.token_urlsafe(24)
    hashed = line.pgconn.encrypt_password(password.encode(), role.encode(), b"scram-sha-256")
    line.execute(
        sql.SQL("create role {} login password {} in role {}").format(
            sql.Identifier(role), sql.Literal(hashed.decode()), sql.Identifier(group)
        )
    )
    return password


def put_limits(line: Line, table: Authorities) -> int:
    """Put the authorities' limits where the questions find them; return how many there are.

    Where an authority has two limits for a test of a product it has none here: none is guessed.
    """
    limits = [
        (who.id, who.enforcing.value, limit.test.value, product.value, limit.per, limit.most)
        for who in table.authorities
        for limit in who.limits
        for product in limit.products
    ]
    times = Counter((who, test, product) for who, _, test, product, _, _ in limits)
    sole = [one for one in limits if times[one[0], one[2], one[3]] == 1]
    with line.transaction(), line.cursor() as cursor:
        cursor.execute("delete from fleet.lab_limit")
        cursor.executemany("insert into fleet.lab_limit values (%s, %s, %s, %s, %s, %s)", sole)
    return len(sole)


def settle(line: Line, trouble: int, by: str, remark: str) -> bool:
    """Say that someone has looked at a trouble; False when there is no such open one."""
    row = line.execute("select fleet.settle(%s, %s, %s)", [trouble, by, remark]).fetchone()
    return row is not None and bool(row[0])


def bad_rows(line: Line) -> Iterator[tuple[str, int, int | None]]:
    """Check every journal again: yield (kiosk, rows, first bad seq), the last None when whole."""
    kiosks = line.execute(
        "select id, head_seq - begins_after from fleet.kiosk order by id"
    ).fetchall()
    for kiosk, rows in kiosks:
        row = line.execute("select fleet.first_bad_row(%s)", [kiosk]).fetchone()
        yield kiosk, rows, None if row is None else row[0]


def plain(value: object) -> str:
    """Return a cell as it is printed: times to the minute, nothing for null."""
    if value is None:
        return ""
    return f"{value:%Y-%m-%d %H:%M %Z}" if isinstance(value, datetime) else str(value)

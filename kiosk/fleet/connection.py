"""The line to the head office's PostgreSQL."""

from __future__ import annotations

from ipaddress import ip_address
from typing import Any

import psycopg
from psycopg.conninfo import conninfo_to_dict, make_conninfo

Line = psycopg.Connection[tuple[Any, ...]]

_PATIENCE = {
    "connect_timeout": "10",
    "keepalives_idle": "30",
    "keepalives_interval": "10",
    "keepalives_count": "3",
    "tcp_user_timeout": "60000",
    "application_name": "kiosk",
}
"""So that a line that was cut is noticed within a minute, and not in two hours."""


class NotPrivate(Exception):
    """The line leaves this machine unencrypted; the message says how to mend it."""


def connect(address: str) -> Line:
    """Open a line to a `postgresql://` address. Each statement is a transaction of its own.

    Raises NotPrivate where the line leaves the machine without TLS, psycopg.Error.
    """
    given = conninfo_to_dict(address)
    wanted = {name: value for name, value in _PATIENCE.items() if name not in given}
    line = psycopg.connect(make_conninfo(address, **wanted), autocommit=True)
    if not (line.pgconn.ssl_in_use or _stays_here(line.info.hostaddr)):
        where = line.info.host
        line.close()
        raise NotPrivate(
            f"{where} offers no encrypted line. Turn TLS on at the head office, and add "
            "'sslmode=verify-full' to the address, so that nobody else can answer in its name."
        )
    return line


def _stays_here(address: str) -> bool:
    """Return whether an address is this machine's own; a socket in a folder has none."""
    return not address or ip_address(address).is_loopback

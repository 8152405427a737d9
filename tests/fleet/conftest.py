"""A real server, with a head office that is empty at the beginning of each test."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from dataclasses import dataclass, field

import pytest

from kiosk.fleet import office
from kiosk.fleet.connection import Line, connect
from kiosk.fleet.migrate import migrate
from kiosk.procedure.authorities import load_authorities
from tests.fleet.server import Server, why_not

_NUMBER = itertools.count(1)
_EMPTIED = (
    "journal", "branch", "trouble", "session", "hold_time", "result", "machine", "due", "kiosk",
    "shop",
)  # fmt: skip


@dataclass
class Office:
    """The head office as one test sees it."""

    server: Server
    number: int
    database: str = "fleet_test"
    lines: list[Line] = field(default_factory=list)
    addresses: dict[str, str] = field(default_factory=dict)

    def line(self, address: str) -> Line:
        """Open a line that is closed with the test."""
        self.lines.append(connect(address))
        return self.lines[-1]

    @property
    def admin(self) -> Line:
        return self.line(self.server.admin(self.database))

    def admit(self, shop: str, authority: str = "") -> str:
        """Admit a shop; return the address that it ships to."""
        # Logins belong to the whole server, so that each test has names of its own.
        name = f"{shop}_{self.number}"
        role, password = office.admit(self.admin, name, f"{shop} (invented)", authority)
        self.addresses[shop] = self.server.address(role, password, self.database)
        return self.addresses[shop]

    def one(self, sql: str, *values: object) -> object:
        """Return a single value, as the superuser sees it."""
        row = self.admin.execute(sql, values).fetchone()
        return None if row is None else row[0]

    def rows(self, sql: str, *values: object) -> list[tuple[object, ...]]:
        return self.admin.execute(sql, values).fetchall()


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    if reason := why_not():
        pytest.skip(reason)
    one = Server()
    # A killed server loses nothing that the system has; only a killed system would.
    one.begin("fsync = off")
    with connect(one.admin(one.database("fleet_test"))) as line:
        migrate(line)
        office.put_limits(line, load_authorities())
    yield one
    one.end()


@pytest.fixture
def head_office(server: Server) -> Iterator[Office]:
    one = Office(server, next(_NUMBER))
    yield one
    for line in one.lines:
        line.close()
    with connect(server.admin(one.database)) as line, line.transaction():
        # The superuser's way round the triggers that keep the journal.
        line.execute("set local session_replication_role = replica")
        for table in _EMPTIED:
            line.execute(f"delete from fleet.{table}")

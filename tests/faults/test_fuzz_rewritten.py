"""A journal whose rows were rewritten, chain and all, by one who knows how: the chain is whole, and
what the rows say is not what a kiosk writes."""

from __future__ import annotations

import json
import shutil
import sqlite3
from contextlib import closing

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from kiosk.journal.codec import FACTS, SHOP_FACTS
from kiosk.journal.guards import TRIGGERS
from kiosk.journal.store import FILE
from tests.faults.fuzzing import EXAMPLES
from tests.faults.test_fuzz_commands import put, run
from tests.histories import FIRST, history
from tests.tampering import COLUMNS, rechain

KINDS = sorted({*FACTS, *SHOP_FACTS, "Nonsense", ""})
VALUES = (
    None, True, -1, 0, 1 << 62, 1e308, float("nan"), float("inf"), "", "x" * 300, "\x1b[2J",
    "\ud800", "\u202e", "shop", "../..", "2026-13-41", [], {}, [None], ["a", 1], {"a": []},
    [["power isolated"]], "[@click=app.bell]x[/]",
)  # fmt: skip
TEXTS = (
    "", "{}", "[]", "null", "[" * 5000, '{"by":[],"fact":{}}',
    '{"by":{"channel":"touch"},"fact":[]}',
    '{"by":{"channel":"touch","confidence":"x","heard":[]},"fact":{}}', "not JSON",
    '{"by":{"channel":"voice","heard":1},"fact":{"step":{}}}', "9" * 5000,
)  # fmt: skip
COLUMN_VALUES = ("", "shop", "x\ny", "\x1b]0;x\x07", "2026-11-25T22:15:00.000000Z", "tomorrow",
                 "0000-00-00T00:00:00.000000Z", "9999-12-31T23:59:59.999999Z")  # fmt: skip

EDITS = st.lists(
    st.one_of(
        st.tuples(st.just("fact"), st.integers(0), st.integers(0), st.sampled_from(VALUES)),
        st.tuples(st.just("lose"), st.integers(0), st.integers(0), st.none()),
        st.tuples(st.just("body"), st.integers(0), st.just(0), st.sampled_from(TEXTS)),
        st.tuples(st.just("kind"), st.integers(0), st.just(0), st.sampled_from(KINDS)),
        st.tuples(
            st.sampled_from(["session", "utc", "boot", "kiosk"]), st.integers(0), st.just(0),
            st.sampled_from(COLUMN_VALUES),
        ),
        st.tuples(st.just("mono_us"), st.integers(0), st.just(0),
                  st.sampled_from([-1, 0, (1 << 63) - 1, -(1 << 63)])),
    ),
    min_size=1, max_size=4,
)  # fmt: skip

COMMANDS = (
    ["log", "verify"], ["log", "list"], ["log", "show", "shop"], ["log", "show", "{session}"],
    ["log", "audit"], ["log", "export"], ["lab", "list"],
    ["lab", "standing", "--authority", "usda"], ["parts", "list"],
    ["report", "day", FIRST.isoformat()], ["report", "session", "{session}"],
)  # fmt: skip


@pytest.fixture(scope="module")
def written(tmp_path_factory):
    """The rows of a day of the invented shop."""
    folder = tmp_path_factory.mktemp("written")
    made = history(folder, 3, [])
    made.run(FIRST, 2)
    rows = [dict(row) for row in made.journal.rows()]
    made.journal.close()
    with closing(sqlite3.connect(folder / FILE)) as db:
        db.execute("pragma journal_mode = delete")
    return folder / FILE, rows


def rewrite(rows, edits):
    """Change rows in place, and write the hashes from the first changed one on anew."""
    first = len(rows)
    for what, place, which, value in edits:
        place %= len(rows)
        first, row = min(first, place), rows[place]
        if what in ("fact", "lose"):
            try:
                record = json.loads(row["body"])
                where = record["fact"] if which % 4 else record["by"]
                name = sorted(where)[which // 4 % len(where)]
            except (ValueError, RecursionError, TypeError, KeyError, ZeroDivisionError, IndexError):
                continue
            if what == "lose":
                del where[name]
            else:
                where[name] = value
            row["body"] = json.dumps(record)
        else:
            row[what] = value
    rechain(rows, first)


@pytest.mark.parametrize("words", COMMANDS, ids=lambda one: "-".join(one[:2]))
def test_a_rewritten_journal_is_read_or_refused_in_words(written, words, tmp_path, monkeypatch):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    monkeypatch.chdir(tmp_path)
    source, rows = written
    session = next(row["session"] for row in rows if row["session"] != "shop")
    words = [word.format(session=session) for word in words]

    @settings(
        max_examples=max(3, EXAMPLES // 4), deadline=None, database=None,
        suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    @given(EDITS)
    def spoil(edits):
        other = [dict(row) for row in rows]
        rewrite(other, edits)
        file = put(tmp_path, "journal in use", b"")
        _write(source, file, rows, other)
        status, said = run(words)
        assert status in (0, 1)
        assert status == 0 or said.strip()
        assert all(line.isprintable() for line in said.split("\n")), said

    spoil()


def _write(source, file, rows, other):
    shutil.copyfile(source, file)
    with closing(sqlite3.connect(file)) as db, db:
        db.execute("pragma synchronous = off")
        for trigger in TRIGGERS:
            db.execute(f"drop trigger {trigger}")
        names = ", ".join(f"{name} = ?" for name in COLUMNS)
        changed = [b for a, b in zip(rows, other, strict=True) if a != b]
        # The indexes look into the bodies, and refuse what is no JSON.
        like = "select name from sqlite_master where type = 'index' and sql like '%json%'"
        indexes = db.execute(like).fetchall()
        for (name,) in indexes:
            db.execute(f"drop index {name}")
        db.executemany(
            f"update journal set {names} where seq = ?",
            [[*(_plain(row[x]) for x in COLUMNS), row["seq"]] for row in changed],
        )


def _plain(value):
    return (
        value.encode("utf-8", "surrogatepass").decode("utf-8", "replace")
        if isinstance(value, str)
        else value
    )

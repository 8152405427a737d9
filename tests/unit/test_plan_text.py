"""The text that was walked, kept beside the rows that name it."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from dataclasses import replace
from functools import lru_cache
from pathlib import Path

import pytest

from kiosk.engine import commands as c
from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.plan import Plan
from kiosk.procedure.plan_text import as_text, from_text
from kiosk.procedure.site import load_site
from kiosk.review.recording import record_of
from kiosk.shipped import shipped
from tests.screens.scene import StillClock, shop


@lru_cache
def library() -> Library:
    return load_library(shipped("procedures"))


def shipped_plan(procedure_id: str) -> Plan:
    site = load_site(shipped("demo") / "site.toml")
    procedure = library().procedures[procedure_id]
    machine = next(one for one in site.machines if one.kind == procedure.machine_kind)
    return fit(library(), procedure, machine, site, lambda amount, tag: words(tag).quantity(amount))


@pytest.mark.parametrize("procedure_id", sorted(library().procedures))
def test_a_plan_comes_back_as_it_was(procedure_id):
    plan = shipped_plan(procedure_id)
    assert from_text(as_text(plan), plan.digest) == plan


def test_a_text_that_was_altered_is_none():
    plan = shipped_plan("check-single-pump")
    record = json.loads(as_text(plan))
    record["steps"][0]["say"]["en"] = "Do nothing."
    assert from_text(json.dumps(record), plan.digest) is None
    assert from_text(as_text(plan), "0" * 64) is None
    for text in ("", "[]", "{}", '{"steps": 1}', '{"steps": [{"task": {"is": "Nothing"}}]}'):
        assert from_text(text, plan.digest) is None


def test_a_session_keeps_its_wording_when_the_file_has_changed(tmp_path):
    made = shop(tmp_path, StillClock())
    session = made.fresh("m1", "short")
    session.do(c.Start("ana", "en"))
    asked = session.plan.steps[0].say["en"]
    procedure = made.library.procedures["short"]
    first, *rest = procedure.phases
    other = replace(first.steps[0], say={**first.steps[0].say, "en": "Another sentence."})
    phases = (replace(first, steps=(other, *first.steps[1:])), *rest)
    procedures = {**made.library.procedures, "short": replace(procedure, phases=phases)}
    made.journal.close()
    again = shop(tmp_path, StillClock(), replace(made.library, procedures=procedures))
    assert again.fresh("m1", "short").plan.steps[0].say["en"] == "Another sentence."
    plan = again.plan_of(session.id)
    record = record_of(session.id, again.journal.events(session.id), plan)
    assert record.text_known
    assert record.steps[0].asked == asked
    again.journal.close()


def test_a_kept_text_is_never_changed(tmp_path: Path):
    with closing(Journal(tmp_path)) as journal:
        journal.keep_text("d", "one")
        journal.keep_text("d", "two")
        assert journal.text("d") == "one"
        assert journal.text("e") is None
        with closing(sqlite3.connect(journal.file)) as other:
            for sql in ("update walked set text = 'x'", "delete from walked"):
                with pytest.raises(sqlite3.IntegrityError, match="append-only"):
                    other.execute(sql)

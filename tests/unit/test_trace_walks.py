"""A trace over the ledger: the same as over every session read whole."""

from __future__ import annotations

from contextlib import closing

import pytest

from kiosk.journal.shop_facts import PartReplaced
from kiosk.rehearsal.planting import Plant
from kiosk.review import trace_walks
from kiosk.review.clues import Clue
from kiosk.review.results import FACTS, results
from kiosk.review.signs import walked
from kiosk.review.trace import trace
from kiosk.review.trace_walks import walks_before
from tests.histories import FIRST, history, plans, site, usda
from tests.unit.ledger_shop import ledger


@pytest.mark.parametrize("cause", [Clue.WORN_PART, Clue.NEW_WORKER])
def test_it_blames_the_same_sessions(tmp_path, monkeypatch, cause):
    monkeypatch.setattr(trace_walks, "_MARGIN_DAYS", 2)
    window = 4
    texts = {one.digest: one for pair in plans().values() for one in pair}
    made = history(tmp_path, 5, [Plant(cause, "patio", 20)])
    with closing(made.journal) as journal:
        made.run(FIRST, 22)
        plan_of = {s: texts[journal.events(s)[0].fact.digest] for s in journal.sessions()}
        everything = [walked(s, journal.events(s), plan_of[s]) for s in journal.sessions()]
        known = results(journal.shop_events(*FACTS), practice=True)
        result = next(one for one in reversed(known) if one.of.machine == "patio")
        replaced = journal.shop_events(PartReplaced)
        with closing(ledger(journal, tmp_path)) as read:
            read.catch_up()
            few = walks_before(result, read, journal.events, plan_of.__getitem__, site(), window)
    whole = sum(bool(one.record.steps) for one in few)
    assert 0 < whole < len(everything) / 4
    found = trace(result, [result], usda(), few, replaced, site(), window)
    assert found == trace(result, [result], usda(), everything, replaced, site(), window)
    assert any(sign.clue is cause for one in found.suspects for sign in one.signs)

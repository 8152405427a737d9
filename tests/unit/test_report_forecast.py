"""What a report says of parts to come and of bad results, held against the journal's rows."""

from __future__ import annotations

import shutil
from contextlib import closing
from datetime import timedelta

import pytest

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import PartReplaced, PartsReceived, ShopEvent
from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.rehearsal.planting import wearing
from kiosk.report.as_html import as_html
from kiosk.report.papers import day_paper, folder_paper, month_paper
from kiosk.review.results import FACTS, Sample, entry, results
from kiosk.review.signs import walked
from kiosk.review.trace import closing as closing_time
from kiosk.review.trace import trace
from kiosk.trade.authorities import Analysis, Product
from kiosk.trade.rounding import read_amount
from tests.histories import FIRST, library, plans, usda
from tests.unit.report_shop import DAYS, LAST, Page, desk, make, site, sql

SAMPLED = FIRST + timedelta(days=DAYS - 2)
AT = Instant(closing_time(site(), LAST) + 7200, 0.0, "b")


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """The ten days, and after them bad results, spare parts and a part replaced."""
    made = tmp_path_factory.mktemp("shop")
    make(made)
    facts = [
        entry(
            Sample("patio", head, SAMPLED, Product.PLAIN, Analysis.TOTAL_COUNT,
                   read_amount(amount), "g", "Lab", f"bad-{head}"),
            "p4", practice=True, result=f"bad-{head}",
        )
        # 50,000 per gram: 7 CFR 58.648 (READ).
        for head, amount in (("left", "60000"), ("right", "700000"), ("twist", "900"))
    ]  # fmt: skip
    facts += [
        PartsReceived("twin-gravity", "o-rings", 24, "p4", practice=True),
        PartReplaced("patio", "o-rings", LAST.isoformat(), "p4", "", True),
    ]
    with closing(Journal(made)) as journal:
        journal.append_shop([ShopEvent(AT, Evidence(Channel.KEY), fact) for fact in facts])
    return made


@pytest.fixture(scope="module")
def page(folder):
    with desk(folder) as at:
        return Page(as_html(folder_paper(FIRST, LAST, at)))


def kinds(folder, seqs) -> set[str]:
    marks = ", ".join("?" * len(seqs))
    found = sql(folder, f"select kind from journal where seq in ({marks})", *seqs)
    assert len(found) == len(seqs)
    return {kind for (kind,) in found}


def test_every_wearing_part_is_told_with_the_rows_that_it_is_known_from(folder, page):
    looked_at = {
        (machine, part)
        for machine, of_machine in plans().items()
        for plan in of_machine
        for part in wearing(plan)
    }
    assert [line.cells[:2] for line in page.tables["wear"]] == [
        [machine.name, part.name["en"]]
        for machine in site().machines
        for id_, part in library().kinds[machine.kind].parts.items()
        if (machine.id, id_) in looked_at and part.wears
    ]
    for line in page.tables["wear"]:
        assert kinds(folder, line.seqs) <= {"StepConfirmed", "PartReplaced"}
    ours = next(line for line in page.tables["wear"] if line.cells[0] == "Patio twin"
                and line.cells[1] == "O-rings")  # fmt: skip
    assert "PartReplaced" in kinds(folder, ours.seqs)
    assert f"{LAST}" in ours.cells[2]
    # Two or fewer lives that ended tell nothing of the next.
    assert words("en").say("parts-too-little") in ours.cells[2]


def test_the_shelf_has_what_came_less_what_was_replaced(folder, page):
    takes = library().kinds["twin-gravity"].parts["o-rings"].count
    row = next(x for x in page.tables["shelf"] if x.cells[1] == "O-rings" and x.seqs)
    assert kinds(folder, row.seqs) >= {"PartsReceived"}
    came = sql(folder, "select seq from journal where kind = 'PartsReceived'")
    assert came[0][0] in row.seqs
    # The replacement was entered for the beginning of its day, before the pieces came.
    assert words("en").say("parts-shelf", pieces=24, takes=takes, n=24 // takes) in row.cells[2]


def test_the_worst_result_of_a_machine_and_day_is_traced_as_over_all_sessions(folder, page):
    traced = [name for name in page.tables if name.startswith("trace-")]
    assert traced == ["trace-bad-right"]
    assert "A lead, not a proof" in " ".join(page.said)
    with desk(folder) as at:
        known = results(at.journal.shop_events(*FACTS), practice=True)
        every = [
            walked(one, at.journal.events(one), at.plan_of(one)) for one in at.journal.sessions()
        ]
        bad = next(one for one in known if one.id == "bad-right")
        replaced = at.journal.shop_events(PartReplaced)
        whole = trace(bad, known, usda(), every, replaced, site())
    suspects = [one for one in whole.suspects[:5] if one.signs]
    shown = page.tables["trace-bad-right"]
    assert [line.cells[1] for line in shown] == [one.session or "no session" for one in suspects]
    for line, one in zip(shown, suspects, strict=True):
        assert line.cells[3].splitlines()[0].endswith(one.signs[0].told)
        ends = sql(folder, "select min(seq), max(seq) from journal where session = ?", one.session)
        assert line.seqs == ([] if not one.session else list(ends[0]))


@pytest.mark.parametrize("language", languages())
def test_a_month_has_both_in_every_language(folder, language):
    with desk(folder, language) as at:
        page = Page(as_html(month_paper(FIRST.year, FIRST.month, at)))
    said = " ".join(page.said)
    assert words(language).say("review-trace-lead") in said
    assert words(language).say("parts-how-foretold") in said
    assert {"trace-bad-right", "wear", "shelf"} <= set(page.tables)


def test_without_an_authority_no_result_is_bad(folder):
    with desk(folder, judged=False) as at:
        page = Page(as_html(folder_paper(FIRST, LAST, at)))
    assert not [name for name in page.tables if name.startswith("trace-")]


def test_a_day_tells_of_that_day_alone(folder):
    with desk(folder) as at:
        page = Page(as_html(day_paper(LAST, at)))
    assert not {"wear", "shelf"} & set(page.tables)


def test_a_history_without_bad_results_has_no_trace(tmp_path, folder):
    copied = tmp_path / "copy"
    shutil.copytree(folder, copied)
    with desk(copied) as at:
        page = Page(as_html(folder_paper(FIRST, SAMPLED - timedelta(days=3), at)))
    assert not [name for name in page.tables if name.startswith("trace-")]

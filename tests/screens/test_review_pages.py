"""The review's other pages: laboratory, what led to a result, dates, parts, pictures, people."""

from __future__ import annotations

import json
import shutil
import sqlite3
from collections import Counter
from contextlib import closing
from dataclasses import replace
from datetime import date

import pytest

from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import ShopEvent
from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.site import Role
from kiosk.review import results as r
from kiosk.review.barrels import barrels
from kiosk.review.signs import walked
from kiosk.review.trace import trace
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.review_dates import DatesScreen
from kiosk.screens.review_laboratory import BarrelScreen, LaboratoryScreen
from kiosk.screens.review_parts import PartsScreen
from kiosk.screens.review_people import PeopleScreen
from kiosk.screens.review_pictures import PictureScreen
from kiosk.screens.review_session import SessionScreen
from kiosk.screens.review_timeline import limit_said, value_said
from kiosk.screens.review_trace import TraceScreen
from kiosk.screens.review_write import WriteScreen
from kiosk.trade.authorities import Analysis, Product, authority
from kiosk.trade.rounding import read_amount
from tests.screens.review_scene import (
    PROCEDURES,
    SHOP,
    Morning,
    enter,
    page,
    pages,
    reviewing,
    rows,
    speaking,
    text_of,
)
from tests.screens.scene import kiosk
from tests.screens.test_looks import poor_in_a_theme, small_targets

TODAY = date(2026, 3, 21)
OVER, WITHIN = "60000", "900"
"""Either side of 50,000 per gram, USDA, 7 CFR 58.648 (READ)."""


def put_results(folder, *amounts: str) -> None:
    """Enter total counts of the counter's head, one a day up to yesterday."""
    with closing(Journal(folder)) as journal:
        for place, amount in enumerate(amounts):
            day = date(2026, 3, 21 - len(amounts) + place)
            sample = r.Sample(
                "counter", "single", day, Product.PLAIN, Analysis.TOTAL_COUNT,
                read_amount(amount), "g", "Test laboratory", str(place),
            )  # fmt: skip
            fact = r.entry(sample, "p5", practice=True)
            event = ShopEvent(Morning().now(), Evidence(Channel.KEY), fact)
            journal.append_shop([event])


def without_results(history, folder):
    """A copy of the history whose results are those of the test alone."""
    shutil.copytree(history, folder, dirs_exist_ok=True)
    site = replace(SHOP, machines=tuple(one for one in SHOP.machines if one.id == "counter"))
    known = {row["fact"]["result"] for row in rows(folder, "ResultEntered")}
    with closing(Journal(folder)) as journal:
        for one in known:
            fact = r.ResultStruck(one, "test", "p5")
            journal.append_shop([ShopEvent(Morning().now(), Evidence(Channel.KEY), fact)])
    return site


# Laboratory.


async def test_no_authority_is_taken_by_itself(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        await it.press("l")
        assert isinstance(it.app.screen, ChooseScreen)
        assert "Whose limits?" in it.words()
        await it.touch("department of agriculture")
        assert isinstance(it.app.screen, LaboratoryScreen)
        assert "7 CFR 58.648" in it.words()
        await it.press("escape", "l")
        assert isinstance(it.app.screen, LaboratoryScreen)
        await it.touch("other authority", "kansas")
        assert "7 CFR 58.648" not in it.words()


@pytest.mark.parametrize(
    ("amounts", "said"),
    [
        # Notice at 2 of the last 4 and action at 3 of the last 5 results over the limit:
        # Tex. Admin. Code 25-217.45(c) (READ).
        ((WITHIN, WITHIN, OVER), "● Clear: 1 of the last 3 results"),
        ((WITHIN, OVER, WITHIN, OVER), "▲ Notice: 2 of the last 4 results"),
        ((OVER, WITHIN, OVER, WITHIN, OVER), "■ Action: 3 of the last 5 results"),
    ],
)
async def test_a_barrel_stands_as_the_rule_says(history, tmp_path, amounts, said):
    site = without_results(history, tmp_path)
    put_results(tmp_path, *amounts)
    async with kiosk(tmp_path, (80, 24), Morning(), PROCEDURES, site) as it:
        await enter(it)
        await it.press("l")
        await it.touch("department of agriculture")
        assert said in it.words()
        await it.press("1")
        text = text_of(it)
        assert "The limit is 50,000 per gram." in text
        assert text.count("over the limit · ") + text.count("▲ over the limit") >= amounts.count(
            OVER
        )


async def test_a_result_is_entered_by_touch_and_keys_and_read_back(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        await it.press("l")
        await it.touch("department of agriculture", "enter a result")
        await it.touch("Counter single", "single head", "2026-03-20", "plain ice cream")
        await it.touch("coliform germs")
        assert isinstance(it.app.screen, WriteScreen)
        await it.press(*"many", "enter")
        assert "is no result" in it.words()
        await it.press(*["backspace"] * 4, *"12", "enter")
        await it.touch("per gram")
        if "write it" in it.labels():
            await it.touch("write it")
        await it.press(*"Lab", "enter")
        await it.touch("no number")
        for told in ("Counter single · single head", "coliform germs", "12 per gram", "Lab"):
            assert told in it.words()
        await it.touch("yes, enter it")
        assert "The result is in the journal." in it.words()
    fact = rows(tmp_path)[-1]["fact"]
    assert fact | {"result": ""} == {
        "result": "", "machine": "counter", "barrel": "single", "day": "2026-03-20",
        "product": "plain", "analysis": "coliform", "amount": "12", "per": "g",
        "laboratory": "Lab", "sample": "", "entered_by": "p5", "practice": True,
    }  # fmt: skip


async def test_a_result_is_entered_once_and_never_with_two_numbers(history, tmp_path):
    site = without_results(history, tmp_path)
    put_results(tmp_path, WITHIN)
    before = len(rows(tmp_path, "ResultEntered"))
    async with kiosk(tmp_path, (80, 24), Morning(), PROCEDURES, site) as it:
        await enter(it)
        await it.press("l")
        await it.touch("department of agriculture")
        for amount, told in ((WITHIN, "in the journal already"), ("70", "another number")):
            await it.touch("enter a result", "Counter single", "single head", "2026-03-20")
            await it.touch("plain ice cream", "total count")
            await it.press(*amount, "enter")
            await it.touch("per gram", "Test laboratory", "write it")
            await it.press("0", "enter")
            await it.touch("yes, enter it")
            assert told in it.words()
    assert len(rows(tmp_path, "ResultEntered")) == before


async def test_a_day_to_come_is_refused(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        await it.press("l")
        await it.touch("department of agriculture", "enter a result")
        await it.touch("Counter single", "single head", "write it")
        await it.press(*"2026-03-22", "enter")
        assert "That is no day up to today." in it.words()
        await it.press("escape")
        assert isinstance(it.app.screen, LaboratoryScreen)


async def test_a_bad_result_leads_back_to_the_same_sessions_as_reading_them_all(history, tmp_path):
    site = without_results(history, tmp_path)
    put_results(tmp_path, WITHIN, OVER)
    async with kiosk(tmp_path, (80, 24), Morning(), PROCEDURES, site) as it:
        await enter(it)
        await it.press("l")
        await it.touch("department of agriculture")
        await it.press("1", "t")
        assert isinstance(it.app.screen, TraceScreen)
        assert "A lead, not a proof" in it.words()
        journal = it.app.shop.journal
        known = r.results(journal.shop_events(), practice=True)
        who = authority(load_authorities(), "usda")
        every = [
            walked(one, journal.events(one), it.app.shop.plan_of(one)) for one in journal.sessions()
        ]
        whole = trace(known[-1], known, who, every, journal.shop_events(), site)
        shown = [face.choice.item async for one in pages(it) for face in one]
        assert [one.session for one in shown] == [one.session for one in whole.suspects]
        assert [one.signs for one in shown] == [one.signs for one in whole.suspects]
        await it.press("1")
        assert isinstance(it.app.screen, SessionScreen)


async def test_the_standing_is_told_in_the_supervisors_language(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    put_results(tmp_path, WITHIN, OVER, WITHIN, OVER)
    site = speaking("es")
    async with kiosk(tmp_path, (80, 24), Morning(), PROCEDURES, site) as it:
        await enter(it)
        await it.press("l")
        await it.touch(words("es").say("pick-usda"))
        known = r.results(it.app.shop.journal.shop_events(), practice=True)
        judged = barrels(known, authority(load_authorities(), "usda"), TODAY)
        assert len(page(it).items()) == len(judged)
        await it.press("1")
        assert isinstance(it.app.screen, BarrelScreen)
        text = text_of(it)
        for one in judged[:1]:
            assert "sobre el límite" in text or one.state == "clear"
        assert "limit is" not in text


# Dates, parts, pictures, people.


async def test_what_was_missed_stands_above_what_is_due(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    clock = Morning()
    clock.seconds += 2 * 86_400
    async with kiosk(tmp_path, (80, 24), clock, PROCEDURES, SHOP) as it:
        await enter(it)
        await it.press("d")
        assert isinstance(it.app.screen, DatesScreen)
        text = text_of(it)
        heads = [text.index(head) for head in ("Overdue", "Due now", "To come")]
        assert heads == sorted(heads)
        missed = text[heads[0] : heads[1]]
        # Nobody worked on the 21st and the 22nd: of two machines an opening and a close.
        assert missed.count("missed") >= 8
        # A machine that was not in use has no day check to miss, and the page says so.
        done = text[text.index("Done in the last days") :]
        assert "Day check: Counter single" in done
        assert done.count("machine not used that day") == 4
        assert "A day check counts as missed only on a day on which the machine was walked" in text
        # The sample of the invented history's day 6, from 0, is known by its result alone.
        head = "Laboratory sample: Counter single · single head"
        assert head in text
        assert "last sampled 2026-03-18: known by the result" in text[text.index(head) :]


async def test_each_wearing_part_is_told_with_its_age_and_its_shelf(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        await it.press("x")
        assert isinstance(it.app.screen, PartsScreen)
        text = text_of(it)
        for machine in SHOP.machines:
            for part in PROCEDURES.kinds[machine.kind].parts.values():
                if part.wears:
                    assert part.name["en"] in text
        assert text.index("In the machines") < text.index("On the shelf")


async def test_every_picture_can_be_looked_at_one_after_the_other(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        await it.press("p", "1")
        first = it.words()
        count = len(page(it)._pictures)
        seen = set()
        for _ in range(count):
            assert isinstance(it.app.screen, PictureScreen)
            seen.add(page(it).heading()[1])
            await it.press("m")
        assert len(seen) == count
        assert it.words() == first
        await it.press("pageup", "escape")
        await it.press("t")
        assert "last 365 days" in it.words()


async def test_people_are_counted_as_the_journal_has_them(history, tmp_path):
    async with reviewing(history, tmp_path, size=(100, 30)) as it:
        await it.press("w")
        assert isinstance(it.app.screen, PeopleScreen)
        shown = {face.choice.item: face async for one in pages(it) for face in one}
    walked: Counter[tuple[str, str]] = Counter()
    with closing(sqlite3.connect(tmp_path / "journal.db")) as db:
        found = db.execute(
            "select distinct session, "
            "json_extract(body, '$.fact.worker') from journal where kind in "
            "('SessionStarted', 'HandedOver')"
        ).fetchall()
        bodies = db.execute("select session, body from journal where kind = 'SessionStarted'")
        procedure = {one: json.loads(body)["fact"]["procedure"] for one, body in bodies}
    for session, worker in found:
        walked[worker, procedure[session]] += 1
    for (worker, _), count in walked.items():
        if count > 1:
            assert f": {count} times" in shown[worker].detail
    assert set(shown) == {one.id for one in SHOP.people}


async def test_a_trainee_is_shown_with_the_walks_that_need_a_supervisor(history, tmp_path):
    people = [replace(one, role=Role.TRAINEE) if one.id == "p3" else one for one in SHOP.people]
    site = replace(SHOP, people=tuple(people), trainee_walks=1000)
    async with reviewing(history, tmp_path, (100, 30), site) as it:
        await it.press("w")
        shown = {face.choice.item: face async for one in pages(it) for face in one}
        assert "first walks, with a supervisor" in shown["p3"].detail
        assert "first walks" not in shown["p1"].detail


# Words.


def test_journaled_limits_are_told_in_words_with_their_source():
    en = words("en")
    source = "4-501.114(A), FDA Food Code 2022 (READ (state))"
    told = limit_said(f"sanitizer temperature 13 to None: {source}", "°C", en)
    assert told == f"limit: 13 degrees Celsius or more; {source}"
    told = limit_said(f"mix temperature None to 5: {source}", "°C", en)
    assert told == f"limit: 5 degrees Celsius or less; {source}"
    assert "100" in limit_said(f"sanitizer strength 100 to 200: {source}", "mg/L", en)
    assert limit_said("at least 20 s", "s", en) == "limit: 20 seconds or more"
    assert limit_said("parts list: 4", "", en) == "parts list: 4"
    assert limit_said("something else", "", en) == "something else"


def test_values_are_told_in_words():
    en = words("en")
    assert value_said("2", "passes", en) == "2 passes"
    assert value_said("good", "", en) == "good"
    assert value_said("4.5", "°C", en) == "4.5 degrees Celsius"
    assert value_said("7", "furlongs", en) == "7 furlongs"
    assert value_said("", "", en) == ""


# Looks.


async def every_page(it):
    """Go through every kind of page; yield its name."""
    yield "first page"
    await it.press("m", "m")
    yield "sessions"
    await it.press("1")
    yield "session"
    await it.press("m")
    yield "timeline"
    await it.press("s")
    yield "remarks"
    digit = next(one.face.key for one in it.targets() if one.face.choice.item == "")
    await it.press(digit)
    yield "writing"
    await it.press("enter")
    yield "nothing written"
    await it.press("escape", "escape")
    for key in "fldxpw":
        await it.press(key)
        yield f"page {key}"
        if key == "l":
            await it.press("1")
            yield "laboratory"
            await it.press("1")
            yield "barrel"
            await it.press("p")
            yield "picture of a barrel"
            await it.press("escape", "escape")
        if key == "p":
            await it.press("1")
            yield "picture"
            await it.press("escape")
        await it.press("escape")


@pytest.mark.parametrize(
    ("size", "language"), [((60, 18), "es"), ((80, 24), "ko"), ((100, 30), "en")], ids=str
)
async def test_every_text_is_clear_and_every_target_large(history, tmp_path, size, language):
    async with reviewing(history, tmp_path, size, speaking(language)) as it:
        seen = 0
        async for name in every_page(it):
            assert await poor_in_a_theme(it) == [], name
            assert small_targets(it) == [], f"{name}\n{it.seen()}"
            seen += 1
        assert seen == 17

"""Working something out beside a step, by touch and by ear: the answer of the command."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from kiosk.cli import main
from kiosk.options import Give, NeverMind, Take
from kiosk.procedure.site import load_site
from tests.screens.scene import NO, YES, Kiosk, kiosk

ROOT = Path(__file__).parents[2]
SHIPPED = ROOT / "procedures"
SIZE = (100, 30)


def shop(folder: Path):
    site = load_site(ROOT / "demo" / "site.toml")
    return kiosk(folder / "walk", SIZE, library=SHIPPED, site=site)


async def to_the_list(it: Kiosk) -> None:
    await it.touch("Patio twin", "Evening breakdown", "Dale Whitcomb")
    await it.press("w")
    assert "What do you want to work out?" in it.words()


def command(capsys, monkeypatch, folder: Path, *words: str) -> list[str]:
    monkeypatch.setenv("KIOSK_HOME", str(folder / "home"))
    main(["calc", *words, "--json"])
    return json.loads(capsys.readouterr().out)["lines"]


def worked_out(it: Kiosk) -> list[dict[str, object]]:
    rows = it.app.shop.journal.rows()
    return [json.loads(row["body"])["fact"] for row in rows if row["kind"] == "WorkedOut"]


async def test_a_dose_by_touch(tmp_path, capsys, monkeypatch):
    async with shop(tmp_path) as it:
        await to_the_list(it)
        before = it.state
        await it.touch("how much to mix", "in gallons")
        await it.press("2")
        await it.touch("enter", "100")
        said = it.walk.lines()
        assert said[0].startswith("Put one packet into 2 gallons of water.")
        assert "Put one packet into 2 gallons of water." in it.words()
        assert "READ (state)" in it.words()
        assert "READ (state)" not in " ".join(said)
        assert it.state == before
        (kept,) = worked_out(it)
        await it.touch("back to the step")
        assert not it.walk.asking
        assert it.state == before
    given = ("dose", "unit=in-gallons", "water=2", "wanted=100")
    assert said == command(capsys, monkeypatch, tmp_path, *given)
    assert kept["calculator"] == "dose"
    assert kept["answers"] == "unit in-gallons; water 2; wanted 100"
    assert kept["finding"].startswith(" ".join(said))
    assert "READ (state)" in kept["finding"]


async def test_a_dose_by_ear(tmp_path, capsys, monkeypatch):
    async with shop(tmp_path) as it:
        await it.touch("Patio twin", "Evening breakdown", "Dale Whitcomb")
        before = it.state
        await it.hear("work it out")
        await it.hear("how much to mix")
        await it.hear("in liters")
        await it.hear("eight liters")
        assert "I heard 8 litres. Yes or no?" in it.words()
        await it.say(NO)
        await it.hear("ten liters")
        await it.say(YES)
        await it.hear("one hundred parts per million")
        await it.say(YES)
        said = it.walk.lines()
        assert it.state == before
        assert len(worked_out(it)) == 1
        await it.hear("back to the step")
        assert not it.walk.asking
    given = ("dose", "unit=in-litres", "water=10", "wanted=100")
    assert said == command(capsys, monkeypatch, tmp_path, *given)


async def to_the_small_list(it: Kiosk) -> None:
    await it.begin()
    await it.press("w")


async def test_cold_holding_by_ear_asks_on_only_where_it_must(tmp_path):
    async with kiosk(tmp_path, SIZE) as it:
        await to_the_small_list(it)
        await it.hear("was it cold")
        for number in ("three hours", "nine degrees"):
            await it.hear(number)
            await it.say(YES)
        await it.hear("it was out")
        await it.hear("we have both")
        said = it.walk.lines()
        assert said[0] == "It may still be served for 1 hour. Then throw it away."
        assert said[0] in it.words()


async def test_korean_by_ear(tmp_path):
    async with kiosk(tmp_path, SIZE) as it:
        await it.begin("Mina")
        await it.hear("계산해 주세요")
        await it.hear("줄곧 차가웠나요")
        for number in ("세 시간", "사 도"):
            await it.hear(number)
            await it.say(YES)
        await it.hear("전기는 켜져 있었어요")
        assert it.walk.lines()[0].startswith("두 번 모두 차가웠고 지금은 섭씨 4 도이며")
        assert len(worked_out(it)) == 1


async def test_what_may_be_heard_stands_on_the_screen(tmp_path):
    async with kiosk(tmp_path, SIZE) as it:
        await to_the_small_list(it)
        for name in ("lot", "authority"):
            while not it.offers(Take(name)):
                await it.touch("something else")
            await it.touch(Take(name))
            assert set(it.app.hearing.allowed) <= {label.lower() for label in it.labels()}
            assert any(isinstance(one, Give) for one in it.first(1))
            await it.touch(NeverMind())
            await it.press("w")


async def test_the_last_answer_can_be_taken_back_after_the_finding(tmp_path):
    async with kiosk(tmp_path, SIZE) as it:
        await to_the_small_list(it)
        await it.touch("how much to mix", "in liters")
        await it.press("8", "enter")
        await it.touch("100")
        assert "Put 2 packets" in it.words()
        await it.touch("last answer again")
        assert "How strong shall it be" in it.words()
        await it.touch("125")
        assert [one["answers"] for one in worked_out(it)] == [
            "unit in-litres; water 8; wanted 100",
            "unit in-litres; water 8; wanted 125",
        ]


async def test_a_number_out_of_range_is_refused_and_stays_to_be_mended(tmp_path):
    async with kiosk(tmp_path, SIZE) as it:
        await to_the_small_list(it)
        await it.touch("how much to mix", "in liters")
        await it.press(*"800", "enter")
        assert "it must lie between 0.1 litres and 500 litres" in it.words()
        assert worked_out(it) == []
        await it.press("backspace", "enter")
        assert "How strong shall it be" in it.words()


@pytest.mark.parametrize("size", [(80, 24), (60, 30)])
async def test_the_list_has_room_on_a_small_screen(tmp_path, size):
    async with kiosk(tmp_path, size) as it:
        await to_the_small_list(it)
        for _ in range(3):
            labels = it.labels()
            assert "something else" in labels
            assert "never mind" in labels
            await it.touch("something else")


async def test_a_count_below_detection_by_touch_and_by_ear_is_the_one_that_is_typed(
    tmp_path, capsys, monkeypatch
):
    async with shop(tmp_path) as it:
        await to_the_list(it)
        while not it.offers(Take("lot")):
            await it.touch("something else")
        await it.touch(Take("lot"))
        await it.touch("intestinal germs")
        await it.touch("below detection")
        assert "the report says less than how many?" in it.words()
        await it.press("1", "0", "enter")
        for _ in range(4):
            await it.hear("below detection")
            await it.hear("two hundred and fifty colonies")
            await it.hear("yeah")
        said = it.walk.lines()
        assert "The samples leave it open. Test them again." in it.words()
        (kept,) = worked_out(it)
    assert "count-1 below-detection; bound-1 10; count-2 below-detection; bound-2 250" in str(
        kept["answers"]
    )
    counts = [f"count-{place}=<{bound}" for place, bound in enumerate((10, 250, 250, 250, 250), 1)]
    given = ("lot", "plan=eu-ice-cream-enterobacteriaceae", *counts)
    assert said == command(capsys, monkeypatch, tmp_path, *given)


async def test_a_ph_that_nobody_measured_is_one_more_target(tmp_path):
    async with shop(tmp_path) as it:
        await to_the_list(it)
        await it.touch("strong enough")
        await it.press("1", "0", "0", "enter")
        await it.touch("nobody measured it")
        await it.press("2", "4", "enter")
        assert it.walk.lines()[0] == "It is strong enough. Leave it on for 10 seconds or longer."
        assert "The pH was not measured" in it.words()


async def test_a_digit_key_types_the_number_and_picks_none_from_the_list(tmp_path):
    async with kiosk(tmp_path, SIZE) as it:
        await to_the_small_list(it)
        while not it.offers(Take("mpn")):
            await it.touch("something else")
        await it.touch(Take("mpn"))
        for number in "310":
            await it.press(number, "enter")
        assert it.walk.lines()[0] == "The most probable number is 43 per gram."

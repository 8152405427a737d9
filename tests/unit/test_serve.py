"""Screens that watch and one that holds, pairing by a code, and what a browser may say."""

from __future__ import annotations

import json
import re
import stat
from pathlib import Path

import pytest
from aiohttp import WSServerHandshakeError
from aiohttp.test_utils import TestClient, TestServer
from hypothesis import given
from hypothesis import strategies as st

from kiosk.engine import commands as c
from kiosk.languages.words import words
from kiosk.people.lockout import FIRST_WAIT_S, MOST_TRIES
from kiosk.serve import server
from kiosk.serve.hub import Hub, Viewer
from kiosk.serve.messages import (
    LEAST_SIZE,
    MOST_SIZE,
    Away,
    Finger,
    Fit,
    Key,
    Scroll,
    TakeOver,
    Touch,
    read,
)
from kiosk.serve.pairing import FILE, Paired, Pairing, PairingFailed
from kiosk.serve.server import Door, Pages
from kiosk.serve.serving import Place

PAGES = Path(server.__file__).parent / "pages"


class StillClock:
    seconds = 1000.0

    def now(self) -> c.Instant:
        return c.Instant(self.seconds, self.seconds, "boot-1")


# What a browser may say.


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        (["fit", 80, 24], Fit(80, 24)),
        (["fit", 0, 9999], Fit(LEAST_SIZE[0], MOST_SIZE[1])),
        (["down", 0, 59], Touch(Finger.DOWN, 0, 59)),
        (["away"], Away()),
        (["scroll", 3, 4, True], Scroll(3, 4, down=True)),
        (["key", "Enter"], Key("enter", "")),
        (["key", "é"], Key("", "é")),
        (["take"], TakeOver()),
    ],
)
def test_what_may_be_said_is_understood(said, meant):
    assert read(json.dumps(said)) == meant


@pytest.mark.parametrize(
    "said",
    [
        "", "null", "[]", '["down", 1]', '["down", -1, 2]', '["down", 1.5, 2]', '["down", true, 2]',
        '["down", 1, 60]', '["fit", 1e9, 2]', '["key", "ctrl+q"]', '["key", "\\u0011"]',
        '["key", ""]', '["stdin", "x"]', '{"down": [1, 2]}', '["scroll", 1, 2, 1]', "[" * 190,
        json.dumps(["key", "a"]) + " " * 300,
    ],
)  # fmt: skip
def test_anything_else_is_nothing(said):
    assert read(said) is None


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(), lambda one: st.lists(one, max_size=4)
)


@given(st.text() | JSON.map(json.dumps))
def test_no_text_breaks_it(text):
    found = read(text)
    assert found is None or json.loads(text)[0] in {
        "fit", "down", "move", "up", "away", "scroll", "key", "take",
    }  # fmt: skip


# Who holds the kiosk.


class Desk:
    """A hub with an application that remembers what was done to it."""

    def __init__(self, trouble: str = "") -> None:
        self.done: list[object] = []
        self.taken: list[tuple[str, str]] = []
        self.repainted = 0
        self.columns_and_rows = (80, 24)
        self.trouble = trouble
        self.private = False
        self.hub = Hub(self._repaint, self._taken_over, lambda: self.private)
        self.hub.attach(self)

    def _repaint(self) -> None:
        self.repainted += 1

    def _taken_over(self, screen: str, before: str) -> str:
        self.taken.append((screen, before))
        return self.trouble

    def resize(self, columns: int, rows: int) -> bool:
        before, self.columns_and_rows = self.columns_and_rows, (columns, rows)
        return before != (columns, rows)

    def send(self, said: object) -> None:
        self.done.append(said)

    def open(self, screen: str, fit: Fit) -> tuple[Viewer, list[dict]]:
        told: list[dict] = []
        viewer = Viewer(screen, lambda message: told.append(json.loads(message)))
        self.hub.join(viewer)
        self.hub.hear(viewer, fit)
        return viewer, told


DOWN = Touch(Finger.DOWN, 1, 2)


def test_the_first_screen_holds_and_the_second_watches():
    it = Desk()
    first, told_first = it.open("a", Fit(90, 30))
    second, told_second = it.open("b", Fit(60, 40))
    it.done.clear()
    it.hub.hear(second, DOWN)
    assert it.done == []
    it.hub.hear(first, DOWN)
    assert it.done == [DOWN]
    it.hub.paint("x")
    assert told_first[-1] == told_second[-1] == {"paint": "x"}
    # Both draw the cells of the one that holds.
    assert told_first[-2] == {"columns": 90, "rows": 30, "holds": True, "hidden": False}
    assert told_second[-2] == {"columns": 90, "rows": 30, "holds": False, "hidden": False}
    assert it.taken == []


def test_taking_over_is_told_first_and_lets_go_of_a_press():
    it = Desk()
    first, told_first = it.open("a", Fit(90, 30))
    second, told_second = it.open("b", Fit(60, 40))
    it.hub.hear(first, DOWN)
    it.hub.hear(second, TakeOver())
    assert it.taken == [("b", "a")]
    assert it.done[-1] == Away()
    assert told_first[-1] == {"columns": 60, "rows": 40, "holds": False, "hidden": False}
    assert told_second[-1] == {"columns": 60, "rows": 40, "holds": True, "hidden": False}
    it.hub.hear(first, DOWN)
    assert it.done[-1] == Away()


def test_what_a_pin_guards_is_not_watched():
    it = Desk()
    _, told_first = it.open("a", Fit(90, 30))
    second, told_second = it.open("b", Fit(60, 40))
    it.private = True
    it.hub.paint("digit")
    assert told_first[-1] == {"paint": "digit"}
    assert told_second[-1]["hidden"] is True
    _, told_third = it.open("c", Fit(60, 40))
    it.hub.paint("digit")
    # Nor is it by who takes over, before it is closed.
    it.hub.hear(second, TakeOver())
    it.hub.paint("digit")
    assert {"paint": "digit"} not in told_second + told_third
    it.private, before = False, it.repainted
    it.hub.paint("board")
    assert told_second[-2]["hidden"] is False
    assert told_second[-1] == told_third[-1] == {"paint": "board"}
    assert it.repainted == before + 1


def test_what_cannot_be_journaled_is_not_taken_over():
    it = Desk(trouble="the disk is full")
    first, _ = it.open("a", Fit(90, 30))
    second, told = it.open("b", Fit(60, 40))
    it.hub.hear(second, TakeOver())
    assert told[-1] == {"trouble": "the disk is full"}
    it.done.clear()
    it.hub.hear(second, DOWN)
    it.hub.hear(first, DOWN)
    assert it.done == [DOWN]


def test_a_screen_that_went_away_comes_back_to_what_it_held():
    it = Desk()
    first, _ = it.open("a", Fit(90, 30))
    second, _ = it.open("b", Fit(60, 40))
    it.hub.hear(first, DOWN)
    it.hub.leave(first)
    assert it.done[-1] == Away()
    it.hub.hear(second, DOWN)
    assert it.done[-1] == Away()
    again, told = it.open("a", Fit(90, 30))
    assert told[-1]["holds"] is True
    it.hub.hear(again, DOWN)
    assert it.done[-1] == DOWN
    assert it.taken == []


# Pairing.


class Codes:
    def __init__(self, folder) -> None:
        self.clock, self.shown = StillClock(), []
        self.paired = Paired(folder)
        self.pairing = Pairing(self.paired, self.clock, self.shown.append)
        self.pairing.renew()

    @property
    def wrong(self) -> str:
        return f"{(int(self.shown[-1].replace(' ', '')) + 1) % 10**6:06}"


def test_a_code_pairs_one_screen_and_is_then_another(tmp_path):
    it = Codes(tmp_path)
    code = it.shown[0]
    token = it.pairing.give(code)
    assert it.paired.screen(token).startswith("screen-")
    assert len(it.shown) == 2
    if it.shown[1] != code:
        assert it.pairing.give(code) == ""


def test_the_file_holds_no_token_and_is_for_the_kiosk_alone(tmp_path):
    it = Codes(tmp_path)
    token = it.pairing.give(it.shown[-1])
    file = tmp_path / FILE
    assert token not in file.read_text()
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert Paired(tmp_path).screen(token) == it.paired.screen(token)
    it.paired.forget()
    assert it.paired.screen(token) == ""


def test_wrong_codes_make_everybody_wait_and_are_closed_in_the_end(tmp_path):
    it = Codes(tmp_path)
    for _ in range(3):
        assert it.pairing.give(it.wrong) == ""
    assert it.pairing.wait() == FIRST_WAIT_S
    assert it.pairing.give(it.shown[-1]) == ""
    it.clock.seconds += FIRST_WAIT_S
    for _ in range(MOST_TRIES - 3):
        assert it.pairing.wait() == 0.0
        assert it.pairing.give(it.wrong) == ""
        it.clock.seconds += it.pairing.wait()
    assert it.shown[-1] == ""
    assert it.pairing.give(it.shown[-2]) == it.pairing.give("") == ""
    assert not (tmp_path / FILE).exists()


@pytest.mark.parametrize("text", ["", "[]", '{"a": 1}', '{"a": "é"}', "[" * 5000])
def test_a_damaged_file_is_named_with_its_mend(tmp_path, text):
    (tmp_path / FILE).write_text(text)
    with pytest.raises(PairingFailed, match="move it away"):
        Paired(tmp_path).screen("x")


# The pages.


@pytest.fixture
async def served(tmp_path):
    it = Codes(tmp_path)
    pages = Pages(Desk().hub, Door(it.paired, it.pairing), words("en"), "<Shop>")
    async with TestClient(TestServer(pages.application())) as client:
        it.client = client
        yield it


def here(client) -> dict[str, str]:
    return {"Origin": str(client.make_url("")).rstrip("/")}


async def test_nothing_but_the_code_is_asked_of_a_stranger(served):
    page = await served.client.get("/")
    text = await page.text()
    assert 'name="code"' in text
    assert "&lt;Shop&gt;" in text
    assert "default-src 'none'" in page.headers["Content-Security-Policy"]
    assert (await served.client.get("/files/..%2fserver.py")).status == 404
    with pytest.raises(WSServerHandshakeError, match="403"):
        await served.client.ws_connect("/screen", headers=here(served.client))


async def test_a_paired_screen_is_let_in_and_another_site_is_not(served):
    client, code = served.client, served.shown[-1]
    for origin in ({}, {"Origin": "http://elsewhere.example"}, {"Origin": "null"}):
        assert (await client.post("/pair", data={"code": code}, headers=origin)).status == 403
    assert served.shown[-1] == code
    answer = await client.post("/pair", data={"code": code}, headers=here(client))
    assert 'id="cells"' in await answer.text()
    with pytest.raises(WSServerHandshakeError, match="403"):
        await client.ws_connect("/screen", headers={"Origin": "http://elsewhere.example"})
    async with client.ws_connect("/screen", headers=here(client)) as line:
        await line.send_json(["fit", 80, 24])
        assert (await line.receive_json())["holds"] is True


async def test_the_cookie_is_out_of_reach_of_scripts_and_of_other_sites(served):
    answer = await served.client.post(
        "/pair", data={"code": served.shown[-1]}, headers=here(served.client), allow_redirects=False
    )
    cookie = answer.headers["Set-Cookie"]
    assert "HttpOnly" in cookie
    assert "SameSite=Strict" in cookie


async def test_wrong_codes_are_told_and_then_the_wait(served):
    client = served.client
    said = []
    for _ in range(4):
        answer = await client.post("/pair", data={"code": served.wrong}, headers=here(client))
        said.append(answer.status)
    assert said == [403, 403, 403, 429]
    assert "Wait 30 seconds" in await answer.text()


@pytest.mark.parametrize(
    ("host", "only_here"),
    [("127.0.0.1", True), ("::1", True), ("localhost", True), ("0.0.0.0", False), ("box", False)],
)
def test_a_place_knows_whether_others_reach_it(host, only_here):
    assert Place(host, 1).only_here is only_here


@pytest.mark.parametrize("file", sorted(PAGES.iterdir()), ids=lambda one: one.name)
def test_no_page_names_an_address_elsewhere(file):
    text = file.read_text("utf-8")
    assert re.findall(r"//[\w-]+(?:\.[\w-]+)*[/.:]", text) == []
    assert "@import" not in text
    assert "url(" not in text
    named = re.findall(r"(?:src|href|action)=\"([^\"]*)\"", text)
    assert [one for one in named if not one.startswith(("/files/", "/pair", "data:,"))] == []

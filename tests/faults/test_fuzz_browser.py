"""What a browser sends, made up at random: only the holder's plain touches and keys get through."""

from __future__ import annotations

import json
from dataclasses import astuple

from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.serve.hub import Hub, Viewer
from kiosk.serve.messages import (
    LEAST_SIZE,
    LONGEST,
    MOST_SIZE,
    NAMED_KEYS,
    Away,
    Fit,
    Key,
    Scroll,
    TakeOver,
    Touch,
    read,
)
from tests.faults.fuzzing import EXAMPLES, TOKENS

ODD = st.one_of(
    st.none(), st.booleans(), st.integers(), st.floats(), st.text(max_size=6),
    st.sampled_from([one.decode("utf-8", "surrogateescape") for one in TOKENS]),
    st.lists(st.integers(), max_size=2),
    st.dictionaries(st.text(max_size=2), st.none(), max_size=1),
)  # fmt: skip
VERBS = st.sampled_from(["fit", "down", "move", "up", "away", "scroll", "key", "take", "paint", ""])
KEYS = st.sampled_from([*NAMED_KEYS, "ctrl+c", "F1", "q", "\x03", "\x1b"])
HONEST = st.one_of(
    st.tuples(st.sampled_from(["down", "move", "up"]), st.integers(0, 200), st.integers(0, 80)),
    st.tuples(st.just("fit"), st.integers(0, 9999), st.integers(0, 9999)),
    st.tuples(st.just("scroll"), st.integers(0, 99), st.integers(0, 50), st.booleans()),
    st.tuples(st.just("key"), KEYS),
    st.tuples(st.sampled_from(["away", "take"])),
).map(list)
SAID = st.one_of(
    st.text(max_size=300), st.binary(max_size=50).map(lambda one: one.decode("latin-1")),
    HONEST.map(json.dumps), st.lists(st.one_of(VERBS, ODD), max_size=5).map(json.dumps),
    st.sampled_from(["[" * LONGEST, "9" * LONGEST, '["key","\\ud800"]', '["down",1e3,2]']),
)  # fmt: skip


class Application:
    """What the hub works: keeps what it was sent."""

    columns_and_rows = (80, 24)

    def __init__(self) -> None:
        self.sent: list[object] = []

    def resize(self, columns: int, rows: int) -> bool:
        assert LEAST_SIZE[0] <= columns <= MOST_SIZE[0]
        assert LEAST_SIZE[1] <= rows <= MOST_SIZE[1]
        return False

    def send(self, said: object) -> None:
        self.sent.append(said)


@settings(max_examples=EXAMPLES * 20, deadline=None)
@given(SAID)
def test_a_browser_can_say_only_what_may_be_said(text):
    match read(text):
        case None | Away() | TakeOver():
            pass
        case Fit(columns, rows):
            assert LEAST_SIZE[0] <= columns <= MOST_SIZE[0]
            assert LEAST_SIZE[1] <= rows <= MOST_SIZE[1]
        case Touch(_, x, y) | Scroll(x, y, _):
            assert 0 <= x < MOST_SIZE[0]
            assert 0 <= y < MOST_SIZE[1]
        case Key(name, character):
            assert name in NAMED_KEYS.values() or (len(character) == 1 and character.isprintable())


@settings(max_examples=EXAMPLES * 4, deadline=None)
@given(st.lists(st.tuples(st.integers(0, 2), SAID), max_size=30), st.booleans(), st.booleans())
def test_only_the_screen_that_holds_the_kiosk_works_it(sayings, refused, private):
    application, taken = Application(), []

    def taken_over(by: str, whose: str) -> str:
        taken.append((by, whose))
        return "not now" if refused else ""

    hub = Hub(lambda: None, taken_over, lambda: private)
    hub.attach(application)
    told: list[tuple[str, object]] = []
    viewers = [
        Viewer(name, lambda text, name=name: told.append((name, json.loads(text))))
        for name in ("one", "two", "two")
    ]
    for viewer in viewers:
        hub.join(viewer)
    for who, text in sayings:
        before, holder = len(application.sent), hub.held_by
        said = read(text)
        if said is not None:
            hub.hear(viewers[who], said)
        new = [one for one in application.sent[before:] if one != Away()]
        assert all(viewers[who].screen == holder for _ in new)
        assert all(not isinstance(value, bytes) for one in new for value in astuple(one))
    hub.paint("a PIN")
    shown_to = {name for name, message in told if message == {"paint": "a PIN"}}
    assert not private or shown_to <= {hub.held_by}
    assert not refused or hub.held_by == "one"
    assert bool(taken) >= (hub.held_by == "two")

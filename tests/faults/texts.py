"""Hostile bytes in every text that the journal takes, and very long sessions."""

from __future__ import annotations

import json
import random
import unicodedata
from collections.abc import Iterator
from contextlib import closing
from dataclasses import MISSING, fields
from decimal import Decimal
from enum import Enum
from pathlib import Path
from types import UnionType
from typing import Any, Union, get_args, get_origin, get_type_hints

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine import commands as c
from kiosk.engine.events import Event, ReadBackAgreed
from kiosk.engine.state import Stage
from kiosk.journal import chain
from kiosk.journal.codec import FACTS, SHOP_FACTS
from kiosk.journal.shop_facts import KioskMoved, KioskRetired, ShopEvent
from kiosk.journal.store import FILE, Journal
from kiosk.journal.telling import event_line
from kiosk.journal.verify import export
from tests.faults.judging import Withstood, Worker

HOSTILE = (
    "\x00", "a\x00b", "\n", "\r\nforged row", "\x1b[2J\x1b[H", "\x1b]0;title\x07", "\x9b31m",
    "\ud800", "\udcff", "\ufeff", "\u202e", "\u2028", "\U0010ffff", "\ufffe", "\\", "{ $n }",
    "'; drop table journal; --", "%s%n", "$(reboot)", "`", "=1+1", "../../etc", "<script>",
    '"', '{"by":{}}', "x" * 100_000, "e\u0301" * 50, "\t", "\x7f", "",
)  # fmt: skip


def hostile(chance: random.Random) -> str:
    """Return one of the known ones, or some of any characters at all."""
    if chance.random() < 0.7:
        return chance.choice(HOSTILE)
    return "".join(chr(chance.randrange(0x110000)) for _ in range(chance.randrange(1, 40)))


def hostile_texts(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Journal every fact there is with hostile texts in all its fields, and read it back."""
    found = Withstood()
    clock = SystemClock()
    with closing(Journal(folder)) as journal:
        for number in range(tries):
            by = c.Evidence(c.Channel.VOICE, hostile(chance), 0.5, hostile(chance))
            facts = [made(kind, chance) for kind in FACTS.values()]
            session = f"s{number}"
            said = [Event(clock.now(), by, fact) for fact in facts]
            journal.append(session, said)
            found.lost += sum(a != b for a, b in zip(said, journal.events(session), strict=True))
            shop = [
                ShopEvent(clock.now(), by, made(kind, chance))
                for kind in SHOP_FACTS.values()
                if kind not in (KioskMoved, KioskRetired)
            ]
            since = journal.mark()[0]
            journal.append_shop(shop)
            back = [one for _, one in journal.numbered_shop_events(since=since)]
            found.lost += sum(a != b for a, b in zip(shop, back, strict=True))
            found.broken += sum(_harms_a_terminal(event_line(one)) for one in (*said, *shop))
            found.tries += 1
        found.broken += not journal.verify().whole
        found.broken += not _whole_by_the_export(folder)
    return found


def _harms_a_terminal(line: str) -> bool:
    """Tell whether a line holds what a terminal obeys, or what turns the reading around."""
    return any(unicodedata.category(one) in ("Cc", "Cf", "Cs", "Zl", "Zp") for one in line)


def _whole_by_the_export(folder: Path) -> bool:
    """Verify the chain from the exported lines alone."""
    rows = [json.loads(line) for line in export(folder / FILE, 1)]
    return chain.verify(rows).whole


def made(kind: type, chance: random.Random) -> Any:
    """Return a fact with hostile texts in every field that takes a text."""
    hints = get_type_hints(kind)
    given = {one.name: _value(hints[one.name], one, chance) for one in fields(kind)}
    if kind is ReadBackAgreed:
        # The one text that is a name of ours: any other is refused when it is read.
        given["next"] = str(chance.choice(list(Stage)))
    return kind(**given)


def _value(hint: Any, of: Any, chance: random.Random) -> Any:
    if get_origin(hint) in (Union, UnionType):
        hint = get_args(hint)[0]
    if hint is str:
        return hostile(chance)
    if get_origin(hint) is tuple:
        inner = get_args(hint)[0]
        return tuple(_value(inner, None, chance) for _ in range(2))
    if isinstance(hint, type) and issubclass(hint, Enum):
        return next(iter(hint)).value
    if of is not None and of.default is not MISSING:
        return of.default
    return {bool: False, int: 1, float: 1.0, Decimal: "1"}.get(hint, hostile(chance))


# Very long sessions.


def very_long(folder: Path, answers: int, _: random.Random) -> Withstood:
    """A session that goes back and forth over its steps for thousands of answers."""
    found = Withstood()
    with closing(Worker(folder, LeapingClock(SystemClock()))) as worker:
        for act in _to_and_fro(worker, answers):
            found.saw(worker.press(act))
        worker.to_the_end()
        shown = worker.shown
    with closing(Worker(folder)) as again:
        again.on(2)
    found.judge(folder, shown)
    found.tries = sum(map(len, shown.values()))
    return found


def _to_and_fro(worker: Worker, answers: int) -> Iterator[c.Act]:
    for _ in range(answers // 2):
        yield c.Confirm()
        yield c.Back()

"""Files that are spoiled while the kiosk works: procedures, and what lies beside the journal."""

from __future__ import annotations

import random
import shutil
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine import commands as c
from kiosk.journal.checkpoints import Checkpoints
from kiosk.languages.words import words
from kiosk.people.may import Purpose
from kiosk.procedure.load import load_library
from kiosk.shop import Shop
from kiosk.unfinished import TEXT_CHANGED
from tests.faults.judging import SITE, TOUCH, Withstood
from tests.faults.shops import PROCEDURE, PROCEDURES, begin, press, read_all, shop, walk_on

_ODD = ("\t", "{", "- ", ": ", "\x00", "&a", "*a", "!!python/object:os.system ", "%", "'", "…", "}")


def spoil(text: str, chance: random.Random) -> str:
    """Spoil a text file as a slip of the hand, a broken copy or an odd editor would."""
    at = chance.randrange(len(text))
    lines = text.splitlines(keepends=True)
    line = chance.randrange(len(lines))
    match chance.randrange(6):
        case 0:
            return text[:at]
        case 1:
            return text[:at] + chance.choice(_ODD) + text[at:]
        case 2:
            return "".join(lines[:line] + lines[line + 1 :])
        case 3:
            lines[line] = chance.choice(("  ", " ")) + lines[line]
            return "".join(lines)
        case 4:
            return text[:at] + text[at + chance.randrange(1, 40) :]
        case _:
            return text[:at] + text[at : at + 200] + text[at:]


def procedure_spoiled(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Spoil a procedure file while it is walked; walk on; restart; walk on or end the session.

    A spoiled file is still a procedure at times. It may be walked only as what it says then, or
    not at all where it says something else than when the session began.
    """
    found, clock = Withstood(), LeapingClock(SystemClock())
    for number in range(tries):
        procedures = Path(shutil.copytree(PROCEDURES, folder / "procedures", dirs_exist_ok=True))
        file = procedures / f"{PROCEDURE}.yaml"
        home = folder / f"home-{number}"
        with closing((of := shop(home, clock)).journal):
            session = begin(of)
            walk_on(session, clock, chance.randrange(1, 30))
            file.write_text(spoil(file.read_text("utf-8"), chance), "utf-8", newline="")
            walk_on(session, clock, chance.randrange(1, 30))
            shown, plan = {session.id: of.journal.events(session.id)}, session.plan
        with closing((of := shop(home, clock, known=load_library(procedures))).journal):
            found.saw(*(_short(one, folder) for one in of.faults()))
            of.cards()
            taken = of.take_up(session.id)
            press(taken.session, c.Restart())
            if taken.caveat:
                found.saw(words("en").say(TEXT_CHANGED))
                refused = taken.session.do(c.Resume(), TOUCH)
                found.broken += refused.refusal is None
                press(taken.session, c.End())
                press(taken.session, c.Yes())
            else:
                walk_on(taken.session, clock)
        found.judge(home, shown, [plan])
    return found


def _short(said: str, folder: Path) -> str:
    return said.replace(str(folder), "…").splitlines()[0][:300]


# What lies beside the journal.


def beside_spoiled(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Cut short, fill with noise or take away any file beside the journal; then use all of them."""
    found, clock = Withstood(), LeapingClock(SystemClock())
    whole = folder / "whole"
    site = replace(SITE, pins=replace(SITE.pins, invented=""))
    with closing((of := shop(whole, clock, site)).journal):
        _use(of)
        session = begin(of)
        walk_on(session, clock)
        shown, plan = {session.id: of.journal.events(session.id)}, session.plan
    names = sorted(
        one.relative_to(whole)
        for one in whole.rglob("*")
        if one.is_file() and not one.name.startswith("journal.db")
    )
    for number in range(tries):
        home = Path(shutil.copytree(whole, folder / f"home-{number}"))
        name = names[number % len(names)]
        _damage(home / name, chance)
        with closing((of := shop(home, clock, site)).journal):
            found.saw(*(f"{name}: {_short(one, folder)}" for one in _use(of)))
            again = begin(of)
            walk_on(again, clock, 12)
            shown_here = {**shown, again.id: of.journal.events(again.id)}
            read_all(of)
        found.judge(home, shown_here, [plan])
        shutil.rmtree(home)
    return found


def _damage(file: Path, chance: random.Random) -> None:
    data = file.read_bytes()
    at = chance.randrange(len(data) + 1)
    ways: list[Callable[[], object]] = [
        lambda: file.write_bytes(data[:at]),
        lambda: file.write_bytes(chance.randbytes(len(data) or 7)),
        lambda: file.write_bytes(data[:at] + chance.randbytes(8) + data[at + 8 :]),
        lambda: file.write_bytes(bytes(len(data))),
        file.unlink,
    ]
    chance.choice(ways)()


def _use(of: Shop) -> list[str]:
    """Use names, PINs and checkpoints; return what is said of those that cannot be used."""
    said = [of.mind_people()]
    for person in of.site.people[:1]:
        refused = of.gate.give(person.id, "2580", Purpose.REVIEW, TOUCH)
        if refused is not None and refused.why == "no-pin-set":
            of.gate.put(person.id, "2580", "command line", TOUCH)
        elif refused is not None:
            said.append(words("en").refusal(refused))
    made = Checkpoints(of.journal, of.clock)
    made.begin()
    made.close()
    said += [made.trouble]
    if of.journal.trouble:
        said.append(words("en").say(of.journal.trouble))
    with closing(of.ledger()) as ledger:
        ledger.catch_up()
    return [one for one in said if one]

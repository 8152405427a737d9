"""The evening that plays by itself: the real application, engine and journal, and the real ears."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

import pytest

from kiosk.cli.place import demo_site
from kiosk.crew.app import CrewApp
from kiosk.crew.stage import film, play
from kiosk.crew.story import Played
from kiosk.engine import events as e
from kiosk.engine.commands import Channel
from kiosk.engine.events import Event
from kiosk.journal.store import Journal
from kiosk.listening.models import Missing, open_ear
from kiosk.procedure.load import load_library
from kiosk.proof.audit import audit
from kiosk.shipped import shipped
from kiosk.shop import Shop
from tests.screens.scene import StillClock


def unseen(app: CrewApp) -> None:
    app.run(headless=True, size=(100, 30))


def walked(folder: Path) -> list[Event]:
    """The events of the only session, which the monitor finds sound."""
    with closing(Journal(folder)) as journal:
        (session,) = journal.sessions()
        shop = Shop(demo_site(), load_library(shipped("procedures")), journal, StillClock(), folder)
        plan, found = shop.plan_of(session), list(journal.events(session))
    assert plan is not None
    assert audit(plan, found) == []
    return found


def check_story(played: Played, found: list[Event]) -> None:
    """All that a visitor is to see has happened, and nothing of it is left over."""
    facts = [one.fact for one in found]
    kinds = [type(one) for one in facts]
    assert played.done
    assert played.plot.left() == frozenset()
    assert played.journal is not None
    assert played.journal.whole
    assert kinds[-1] is e.SessionCompleted
    held = [one.because for one in facts if isinstance(one, e.SessionHeld)]
    assert held == ["restart", "problem"]
    assert e.HandedOver in kinds
    isolated = [
        n for n, one in enumerate(facts)
        if isinstance(one, e.StepConfirmed) and one.step == "isolate-plug"
    ]  # fmt: skip
    # After the cut, after the problem and after the hand-over it is asked again.
    assert len(isolated) == 4
    assert any(isinstance(one, e.ReadingOff) and one.step == "count-o-rings" for one in facts)


def test_a_crew_that_only_presses_comes_to_the_end_and_is_filmed(tmp_path: Path) -> None:
    file = tmp_path / "evening.svg"
    played, made = film(file, demo_site(), minutes=0.1, deaf=True, folder=tmp_path / "shop")
    found = walked(tmp_path / "shop")
    check_story(played, found)
    assert played.said == 0
    assert {one.by.channel for one in found} <= {Channel.TOUCH, Channel.KIOSK}
    text = file.read_text(encoding="utf-8")
    assert len(made) > 60
    assert made.seconds > 60 * 0.1
    for seen in ("Patio twin", "invented", "safety hold", "전원"):
        assert seen in text


def test_a_crew_that_talks_is_heard_by_the_real_ears(tmp_path: Path) -> None:
    for language in ("en", "ko"):
        if isinstance(ear := open_ear(language), Missing):
            pytest.skip(ear.mend)
    played = play(demo_site(), minutes=0, silent=True, show=unseen, folder=tmp_path)
    found = walked(tmp_path)
    check_story(played, found)
    spoken = [one for one in found if one.by.channel is Channel.VOICE]
    assert len({one.by.ear for one in spoken}) == 2
    assert len(spoken) > 50

"""Sets a rehearsal up: the session, the voice that is rendered, and the ear of the language."""

from __future__ import annotations

from typing import cast

from kiosk.clock import LeapingClock
from kiosk.listening.ear import Ear
from kiosk.listening.models import Missing, open_ear
from kiosk.procedure.site import Person
from kiosk.rehearsal.rehearse import By, Print, Rehearsal
from kiosk.rehearsal.worker import Stuck
from kiosk.session import Session
from kiosk.shop import Shop
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.voices import SpeechFailed


def rehearse(shop: Shop, machine: str, procedure: str, worker: Person, by: By, show: Print) -> bool:
    """Walk one procedure to its end, printing the dialogue. True when it was completed."""
    ear: Ear | None = None
    if by == "voice":
        found = open_ear(worker.language)
        if isinstance(found, Missing):
            show(f"No ear for '{worker.language}': {found.mend}")
            return False
        ear = found
    renderer = Renderer()
    try:
        # A simulated worker is on nobody's list and has no PIN.
        session = Session.fresh(shop.fresh(machine, procedure).plan, shop.journal, shop.clock)
        cache = PromptCache(shop.folder / "prompts", renderer)
        clock = cast(LeapingClock, shop.clock)
        rehearsal = Rehearsal(session, shop.site, clock, cache, ear, show)
        completed = rehearsal.run(worker, by)
    except (Stuck, SpeechFailed) as error:
        show(f"The rehearsal stops: {error}")
        return False
    finally:
        renderer.close()
    steps = len(session.plan.steps)
    outcome = "complete" if completed else "NOT complete"
    show(f"Session {session.id}: {outcome}, {steps} steps, {rehearsal.tally.sentence()}.")
    return completed

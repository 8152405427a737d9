"""Keeping a remark: first its sound on the disk, then the fact in the journal."""

from __future__ import annotations

import contextlib
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine.commands import Evidence
from kiosk.journal.shop_facts import RemarkRecorded, ShopEvent
from kiosk.journal.store import Journal, JournalFailed
from kiosk.languages.notice import Told
from kiosk.remarks.recorder import Recorder
from kiosk.remarks.sounds import Sounds, SoundsFailed


class NotKept(Told):
    """The remark could not be kept, and nothing is left of it; the message says why."""


def keep(
    recorder: Recorder, folder: Path, journal: Journal, clock: Clock, by: Evidence, *,
    session: str, step: str, worker: str, practice: bool,
) -> RemarkRecorded:  # fmt: skip
    """Keep what was recorded in a data folder, and tell of it in the journal. Raises NotKept."""
    sounds = Sounds(folder)
    try:
        sha256 = sounds.keep(recorder.wave())
    except SoundsFailed as error:
        raise NotKept(str(error)) from error
    seconds = round(recorder.seconds, 1)
    fact = RemarkRecorded(session, step, worker, sha256, seconds, practice)
    try:
        journal.append_shop([ShopEvent(clock.now(), by, fact)])
    except JournalFailed as error:
        with contextlib.suppress(SoundsFailed):
            sounds.erase({sha256})
        raise NotKept(str(error)) from error
    return fact

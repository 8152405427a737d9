"""Backups: taken while the kiosk works, checked, and gone on with as a new kiosk."""

from __future__ import annotations

import os
import secrets
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.chain import Verdict
from kiosk.journal.shop_facts import KioskMoved, ShopEvent
from kiosk.journal.store import FILE, Journal
from kiosk.journal.verify import check, is_journal, open_read_only

Work = Callable[[Path], None]
"""What else is done with a copy before it gets its name; it may raise what ends the copying."""


def nothing_else(_: Path) -> None:
    """Leave a copy as it is."""


class BackupFailed(Exception):
    """A backup cannot be taken or restored; the message says why and how to mend it."""


def back_up(file: Path, target: Path, also: Work = nothing_else) -> Verdict:
    """Copy a journal that may be in use into a new file; return the verdict on the copy.

    The copy gets its name when it is whole and on the disk, not before. Raises BackupFailed.
    """
    with _half_written(target) as half:
        _copy(file, half)
        verdict = _whole(half)
        also(half)
        return verdict


def restore(backup: Path, folder: Path, clock: Clock, also: Work = nothing_else) -> KioskMoved:
    """Put a backup into a folder without a journal, and go on with it as a new kiosk.

    Under its old id it would give out numbers that its kiosk may have used since. The backup
    stays as it is. Raises BackupFailed, JournalFailed.
    """
    if not backup.is_file() or not is_journal(backup):
        raise BackupFailed(f"{backup} is no backup of a journal. 'kiosk log backup' makes one.")
    _whole(backup)
    with _half_written(folder / FILE) as half:
        _copy(backup, half)
        also(half)
        moved = _moved(half, clock)
        _whole(half)
    return moved


def _moved(file: Path, clock: Clock) -> KioskMoved:
    """Give a copied journal a new kiosk, and journal that."""
    with closing(Journal(file.parent, file.name)) as journal:
        seq, head = journal.mark()
        fact = KioskMoved(journal.kiosk, seq, head)
        journal.begin_kiosk(secrets.token_hex(8))
        journal.append_shop([ShopEvent(clock.now(), Evidence(Channel.KEY), fact)])
    _alone(file)
    return fact


@contextmanager
def _half_written(target: Path) -> Iterator[Path]:
    """Give a file to write beside the target, which takes its name once nothing failed."""
    if target.exists():
        raise BackupFailed(f"{target} is there already. Move it away, or take another name.")
    half = target.with_name(f"{target.name}.{os.getpid()}.half")
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        yield half
        with half.open("rb+") as written:
            os.fsync(written.fileno())
        half.rename(target)
    except (OSError, sqlite3.Error, UnicodeDecodeError) as error:
        raise BackupFailed(f"{target}: {error}") from error
    finally:
        for name in (half.name, f"{half.name}-wal", f"{half.name}-shm"):
            half.with_name(name).unlink(missing_ok=True)


def _copy(file: Path, target: Path) -> None:
    with closing(open_read_only(file)) as source, closing(sqlite3.connect(target)) as copy:
        source.backup(copy)
    _alone(target)


def _alone(file: Path) -> None:
    """Leave nothing of a journal beside its file."""
    with closing(sqlite3.connect(file)) as copy:
        copy.execute("pragma journal_mode = delete")


def _whole(file: Path) -> Verdict:
    verdict = check(file).verdict
    if not verdict.whole:
        raise BackupFailed(
            f"{file} is NOT whole. Row {verdict.bad_seq}: {verdict.what}. Nothing was put in its "
            "place; keep it, and try an older backup."
        )
    return verdict

"""`kiosk log verify, backup, restore, retire, export, key`: the journal as evidence."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Collection, Iterator
from contextlib import closing, contextmanager
from datetime import datetime
from functools import partial
from pathlib import Path
from zoneinfo import ZoneInfo

from kiosk import home
from kiosk.cli.place import Failed, data
from kiosk.cli.place import journal as open_journal
from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal import checkpoints as cp
from kiosk.journal import keys
from kiosk.journal.backup import BackupFailed, Work, back_up, nothing_else, restore
from kiosk.journal.codec import UnknownEvent, stamp
from kiosk.journal.shop_facts import KioskRetired, ShopEvent
from kiosk.journal.store import FILE, Journal
from kiosk.journal.verify import export, is_journal, kiosks, open_read_only
from kiosk.journal.witness import Testimony, judge
from kiosk.procedure.fault import harmless
from kiosk.procedure.site import Site
from kiosk.remarks import carried
from kiosk.remarks.sounds import Lies, Sounds, SoundsFailed

_WITHOUT = "Which remarks were erased cannot be told; it can be done --without-remarks."


def add(log: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the commands under `kiosk log`."""
    verifying = log.add_parser(
        "verify", help="check the journal's chain from first row to last, and its checkpoints"
    )
    verifying.add_argument("file", nargs="?", type=Path, help="a backup or an export instead")
    verifying.add_argument(
        "--checkpoints", type=Path, action="append", default=[], metavar="FILE",
        help="checkpoints kept elsewhere (default: those in the data folder and the second place)",
    )  # fmt: skip
    verifying.add_argument(
        "--key", type=Path, action="append", default=[], metavar="FILE",
        help="trust this public key alone (default: the keys that the journal names)",
    )  # fmt: skip
    verifying.set_defaults(command=_verify)

    backing = log.add_parser(
        "backup", help="copy the journal with its spoken remarks, while the kiosk works"
    )
    backing.add_argument("file", type=Path)
    backing.add_argument(
        "--without-remarks", action="store_true", help="leave the sounds of spoken remarks out"
    )
    backing.set_defaults(command=_backup)

    restoring = log.add_parser(
        "restore", help="go on with a backup, as a new kiosk, where there is no journal"
    )
    restoring.add_argument("file", type=Path)
    restoring.add_argument("--new-device", action="store_true", help="a new kiosk: always")
    restoring.add_argument(
        "--without-remarks", action="store_true", help="leave the sounds of spoken remarks there"
    )
    restoring.set_defaults(command=_restore)

    retiring = log.add_parser("retire", help="end this kiosk's journal: it takes no more rows")
    retiring.add_argument("kiosk", help="the id of this kiosk, to be sure")
    retiring.set_defaults(command=_retire)

    exporting = log.add_parser("export", help="write rows as lines of JSON, as they were hashed")
    exporting.add_argument("--since", default="1", metavar="SEQ|DATE", help="first row, or its day")
    exporting.add_argument("--to", type=Path, metavar="FILE", help="(default: standard output)")
    exporting.set_defaults(command=_export)

    showing = log.add_parser("key", help="print the public key that checkpoints are signed with")
    showing.set_defaults(command=_key)


# Checking.


def _verify(parsed: argparse.Namespace) -> int:
    folder, site = data()
    own = parsed.file is None
    file: Path = folder / FILE if own else parsed.file
    if not file.exists():
        raise Failed(f"There is no journal at {file}.")
    named: list[Path] = parsed.checkpoints
    places = named or (_places(folder, site) if own else [])
    said: list[cp.Checkpoint] = []
    for place in places:
        found, none = cp.read(place)
        said += found
        for number in none:
            print(f"{place}, line {number}: no checkpoint; a power cut may have left it half.")
    trusted = {keys.from_pem(one) for one in parsed.key}
    if own and not trusted:
        trusted = _own_key(folder)
    testimony = judge(file, said, trusted, believe_journal=not parsed.key)
    _tell(testimony, said)
    altered = testimony.verdict.whole and _altered(file, Sounds(folder) if own else None)
    return 0 if testimony.sound and not altered else 1


def _places(folder: Path, site: Site) -> list[Path]:
    """Return the files of checkpoints here, and those of this journal's kiosks on the stick."""
    here = list(cp.files(folder))
    if not site.checkpoints_to:
        return here
    second = Path(site.checkpoints_to)
    if not second.is_dir():
        print(f"{second} is not there: the checkpoints kept there were not looked at.")
    ours = {one.name for one in here} | {cp.name_of(one) for one in kiosks(folder / FILE)}
    there = cp.files(second)
    for one in there:
        if one.name not in ours:
            print(f"{one} is of a kiosk that this journal does not name; it was not looked at.")
    return [*here, *(one for one in there if one.name in ours)]


def _own_key(folder: Path) -> set[str]:
    if not (folder / keys.KEY_FILE).exists():
        return set()
    return {keys.signing_key(folder)[0].public}


def _tell(of: Testimony, said: Collection[cp.Checkpoint]) -> None:
    print(verdict_line(of.verdict.rows, of.verdict.head, of.verdict.bad_seq, of.verdict.what))
    if of.verdict.wrong:
        print(f"What is wrong with it: {of.verdict.wrong}.")
    for lost in of.lost:
        print(harmless(f"Lost with a move: {lost}."))
    for doubt in of.doubts:
        print(harmless(f"In doubt: {doubt}."))
    if of.vouched is not None:
        print(f"Row {of.vouched.seq} was signed on {of.vouched.utc}: up to it nothing was changed.")
    elif said:
        print("No checkpoint that a trusted key signed agrees with it.")
    else:
        print("There are no checkpoints: rows taken off the end would not be noticed.")
    if of.checked.unguarded:
        print(f"Guards missing in the file: {', '.join(of.checked.unguarded)}.")


def _altered(file: Path, sounds: Sounds | None) -> bool:
    """Tell what became of the sounds of remarks here or in a backup; True when one was altered."""
    if not is_journal(file):
        return False
    tally = carried.within(file) if sounds is None else carried.beside(sounds, file)
    if tally:
        where = "in it" if sounds is None else "here"
        print(*_sounds_said(tally, where), sep="\n")
    return tally[Lies.ALTERED] > 0


def _sounds_said(tally: carried.Tally, where: str) -> list[str]:
    """Return how many sounds of spoken remarks there are, and what is wrong with others."""
    said = [f"Spoken remarks {where}: {tally[Lies.HERE]}, each with the hash that its row has."]
    wrong = {one: tally[one] for one in Lies if one is not Lies.HERE and tally[one]}
    said += [f"NOT {where}, though not erased: {n} {one}." for one, n in wrong.items()]
    return said


def verdict_line(rows: int, head: str, bad_seq: int | None, what: str) -> str:
    """Return the verdict on a journal in one sentence."""
    if bad_seq is None:
        return f"The journal is whole: {rows} rows, head {head[:16]}."
    return harmless(f"The journal is NOT whole. Row {bad_seq}: {what}.")


# Keeping.


def _backup(parsed: argparse.Namespace) -> int:
    folder, _ = data()
    if not (folder / FILE).exists():
        raise Failed(f"There is no journal in {folder} yet: nothing was walked.")
    tally = carried.Tally()
    pack = partial(carried.pack, Sounds(folder), tally)
    also: Work = nothing_else if parsed.without_remarks else pack
    try:
        verdict = back_up(folder / FILE, parsed.file, also)
    except BackupFailed as error:
        raise Failed(str(error)) from error
    except UnknownEvent as error:
        raise Failed(f"{error} {_WITHOUT}") from error
    print(f"{parsed.file}: {verdict.rows} rows, whole, head {verdict.head[:16]}.")
    if tally:
        print(*_sounds_said(tally, "in it"), sep="\n")
        print("Voices are in it. For whoever shall only read the journal: --without-remarks.")
    print("Put it where no fire and no thief takes both.")
    return 0


def _restore(parsed: argparse.Namespace) -> int:
    if not parsed.new_device:
        raise Failed(
            "A journal is restored as a new kiosk only: under its old id it would give out row "
            "numbers that may have been used since. Say so with --new-device."
        )
    folder, site = data()
    tally = carried.Tally()
    sounds = None if parsed.without_remarks else Sounds(folder)
    unpack = partial(carried.unpack, sounds, tally)
    with home.take(folder):
        try:
            moved = restore(parsed.file, folder, SystemClock(), unpack)
        except (BackupFailed, SoundsFailed) as error:
            raise Failed(str(error)) from error
        except UnknownEvent as error:
            raise Failed(f"{error} {_WITHOUT}") from error
        with closing(Journal(folder)) as journal:
            with kept_signed(journal, site):
                pass
            print(f"Kiosk {journal.kiosk} goes on after row {moved.seq} of kiosk {moved.kiosk}.")
    if tally:
        print(*_sounds_said(tally, "here"), sep="\n")
        print("Whoever was erased after the backup was made is heard again: erase them anew.")
    print("If the old device still works, retire it: 'kiosk log retire' there.")
    return 0


def _retire(parsed: argparse.Namespace) -> int:
    folder, site = data()
    with home.take(folder), closing(open_journal()) as journal:
        if parsed.kiosk != journal.kiosk:
            raise Failed(f"This is kiosk {journal.kiosk}, not '{parsed.kiosk}'. Nothing was done.")
        if journal.retired:
            raise Failed(f"Kiosk {journal.kiosk} is retired already.")
        # The first time signs what is there and makes the key, while it can still be journaled.
        with kept_signed(journal, site):
            pass
        with kept_signed(journal, site):
            at = SystemClock().now()
            journal.append_shop([ShopEvent(at, Evidence(Channel.KEY), KioskRetired())])
        seq, head = journal.mark()
    print(f"Kiosk {parsed.kiosk} is retired. Its last row is {seq}, head {head}.")
    print("Take a backup now, and go on with it: 'kiosk log restore FILE --new-device' there.")
    return 0


def not_retired(journal: Journal) -> None:
    """Refuse to work on with a journal that was ended. Raises Failed."""
    if journal.retired:
        raise Failed(
            f"Kiosk {journal.kiosk} is retired. Go on with its backup on the new device, or "
            f"here: move {journal.file} away, then 'kiosk log restore FILE --new-device'."
        )


@contextmanager
def kept_signed(journal: Journal, site: Site) -> Iterator[None]:
    """Sign the journal at the end of each session and at last, and say what went wrong then."""
    second = Path(site.checkpoints_to) if site.checkpoints_to else None
    made = cp.Checkpoints(journal, SystemClock(), second)
    made.begin()
    journal.after_end = made.make
    try:
        yield
    finally:
        made.close()
        if made.trouble:
            print(f"Checkpoints could not be written everywhere: {made.trouble}", file=sys.stderr)


# Giving out.


def _export(parsed: argparse.Namespace) -> int:
    folder, site = data()
    file = folder / FILE
    if not file.exists():
        raise Failed(f"There is no journal in {folder} yet: nothing was walked.")
    since = _seq(file, parsed.since, site)
    target: Path | None = parsed.to
    if target is None:
        for line in export(file, since):
            print(line)
        return 0
    if target.exists():
        raise Failed(f"{target} is there already. Move it away, or take another name.")
    with target.open("w", encoding="utf-8", newline="\n") as out:
        for line in export(file, since):
            out.write(f"{line}\n")
    return 0


def _seq(file: Path, since: str, site: Site) -> int:
    """Return the first row to export: a number, or the first row of a local day."""
    if since.isdigit():
        return int(since)
    try:
        day = datetime.fromisoformat(since).replace(tzinfo=ZoneInfo(site.time_zone))
    except ValueError as error:
        mend = "Write a row's number, or a day as 2026-11-25"
        raise Failed(f"'{since}' is no row and no day. {mend}.") from error
    with closing(open_read_only(file)) as connection:
        sql = "select min(seq) from journal where utc >= ?"
        found: int | None = connection.execute(sql, [stamp(day.timestamp())]).fetchone()[0]
    if found is None:
        raise Failed(f"Nothing was journaled since {since}.")
    return found


def _key(_: argparse.Namespace) -> int:
    own = _own_key(data()[0])
    if not own:
        raise Failed("There is no signing key yet: it is made when the first session ends.")
    for public in own:
        print(keys.as_pem(public), end="")
        print(f"Ed25519 {public}", file=sys.stderr)
    return 0

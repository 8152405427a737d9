"""Hostile bytes for every file that a kiosk reads: what is read, from which seeds, and what may
be said of it."""

from __future__ import annotations

import io
import os
import re
import sqlite3
import wave
import zipfile
from collections.abc import Callable
from contextlib import closing, suppress
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from decimal import Decimal
from functools import cache, partial
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
from hypothesis import strategies as st

from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal import checkpoints as cp
from kiosk.journal.backup import BackupFailed, back_up, restore
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.keys import KEY_FILE, NoKey, as_pem, from_pem, signing_key
from kiosk.journal.shop_facts import RemarkRecorded, ShopEvent
from kiosk.journal.store import FILE, Journal, JournalFailed
from kiosk.journal.verify import check, export
from kiosk.journal.witness import judge
from kiosk.languages.signed import FILE as SIGNED
from kiosk.languages.signed import SignedFailed, drafts, sign, signatures
from kiosk.languages.words import words
from kiosk.listening.ear import RATE, Utterance
from kiosk.listening.model_files import lacking
from kiosk.listening.model_list import BadList, known_models
from kiosk.listening.own_words import TEACHABLE, BrokenWords, file_of, keep, taught
from kiosk.listening.sources import SourceTrouble, WaveFile
from kiosk.listening.template_ear import TemplateEar
from kiosk.listening.templates import BANDS, Sample
from kiosk.listening.unpack import BadArchive, unpack
from kiosk.people.beside import Beside, BesideFailed
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library, load_procedure, load_record
from kiosk.procedure.load_review import (
    load_deviation_rules,
    load_kind_schedule,
    load_schedule,
)
from kiosk.procedure.model import Common, LimitsProfile, MachineKind
from kiosk.procedure.site import Site, load_site
from kiosk.remarks import carried
from kiosk.remarks.sounds import Sounds
from kiosk.review.result_file import read_csv
from kiosk.review.schedule import opening_hours
from kiosk.setup.draft import DRAFT_FILE, Draft
from kiosk.shipped import shipped
from kiosk.speaking.player import wave_seconds
from kiosk.speaking.prompt_cache import is_whole
from kiosk.speaking.pyttsx3_driver import checked_length
from kiosk.speaking.recordings import Recording, Recordings
from kiosk.speaking.voices import SpeechFailed
from tests.own_kind import DUE, NAME
from tests.tampering import evident

EXAMPLES = int(os.environ.get("KIOSK_FUZZ_EXAMPLES", "12"))
"""Spoilt files of each kind in a test; a long run sets thousands."""

DAY = date(2026, 11, 26)

TOKENS = (
    b"", b"null", b"true", b"-1", b"0", b"1e999", b"-0.0", b"1e-9999", b"9" * 5000, b"nan", b"inf",
    b"\0", b"\x1b[2J", b"\x07", b"\xff", b"\xed\xa0\x80", "\u202e".encode(), "\u2028".encode(),
    b"\r", b"\n", b"\t", b"'", b'"', b"{}", b"[]", b"{packets}", b"{0}", b"%s", b"{", b"}",
    b"[" * 3000,
    b"- " * 2000, b"&a [*a]", b"*a", b"<<: 1", b"? [a]",
    b"!!python/object/apply:os.system [ls]", b"---",
    b"../../etc/passwd", b"/dev/zero", b"$(touch /tmp/x)", b"; drop table journal", b"=1+1",
    b"=HYPERLINK(0)", b"[@click=app.bell]x[/]", b"2026-02-30", b"99:99", b"x" * 3000, b"\\u0000",
    b"\\ud800", b"9223372036854775808", b"-9223372036854775809", b",", b";", b":",
)  # fmt: skip
"""What spoils readers: limits of numbers, controls, references, paths, and other languages."""

_WORD = re.compile(rb"[^\s:,\[\]{}\"'=|]+")
OPS = ("word", "put", "over", "cut", "lose", "double", "flip", "swap")

Edit = tuple[str, int, int, bytes]
EDITS = st.lists(
    st.tuples(
        st.sampled_from(OPS), st.integers(0, 1 << 30), st.integers(0, 64),
        st.one_of(st.sampled_from(TOKENS), st.binary(max_size=8)),
    ),
    min_size=1, max_size=5,
)  # fmt: skip


def spoilt(data: bytes, edits: list[Edit]) -> bytes:
    """Return data after some edits; the places are taken round its length."""
    for how, place, length, token in edits:
        at = place % (len(data) + 1)
        match how:
            case "word":
                found = list(_WORD.finditer(data))
                if found:
                    word = found[place % len(found)]
                    data = data[: word.start()] + token + data[word.end() :]
            case "put":
                data = data[:at] + token + data[at:]
            case "over":
                data = data[:at] + token + data[at + len(token) :]
            case "cut":
                data = data[:at]
            case "lose":
                data = data[:at] + data[at + length :]
            case "double":
                data = data[:at] + data[at : at + length] * 2 + data[at + length :]
            case "flip" if data:
                at %= len(data)
                data = data[:at] + bytes([data[at] ^ (1 << length % 8)]) + data[at + 1 :]
            case "swap":
                lines = data.split(b"\n")
                one, other = place % len(lines), (place // 7 + length) % len(lines)
                lines[one], lines[other] = lines[other], lines[one]
                data = b"\n".join(lines)
    return data


@dataclass(frozen=True, slots=True)
class Target:
    """One kind of file: seeds that can be read, the reader, and the refusals that it may raise."""

    name: str
    file: str
    seeds: Callable[[Path], list[bytes]]
    """Made in a folder, where they must be made."""
    read: Callable[[Path], object]
    refusals: tuple[type[Exception], ...]
    names_file: bool = True
    """True where a refusal must name the file."""


# Procedures and what they lean on.

_PROCEDURES = shipped("procedures")


@cache
def library() -> Library:
    return load_library(_PROCEDURES)


@cache
def demo() -> Site:
    return load_site(shipped("demo") / "site.toml")


def _shipped_files(*names: str) -> Callable[[Path], list[bytes]]:
    return lambda _: [(_PROCEDURES / name).read_bytes() for name in names]


def _told(well: bool) -> None:
    """A refusal that does not say what it must is as bad as none."""
    assert well


def _fit_all(of: Library, site: Site, *procedures: str) -> None:
    """Fit procedures to the machines of a site; each that does not fit may say so."""
    say = words("en").quantity
    for name in procedures:
        for machine in site.machines:
            try:
                fit(of, of.procedures[name], machine, site, lambda amount, _: say(amount))
            except FaultyFile as error:
                _told(all(one.what and one.mend for one in error.faults))


def _procedure(path: Path) -> None:
    found = load_procedure(path)
    _fit_all(replace(library(), procedures={found.id: found}), demo(), found.id)


def _common(path: Path) -> None:
    of = replace(library(), common=load_record(path, Common))
    _fit_all(of, demo(), "check-twin-gravity")


def _kind(path: Path) -> None:
    found = load_record(path, MachineKind)
    of = replace(library(), kinds={**library().kinds, found.id: found})
    _fit_all(of, demo(), "check-twin-gravity", "open-twin-gravity")


def _limits(path: Path) -> None:
    found = load_record(path, LimitsProfile)
    of = replace(library(), limits={found.id: found})
    _fit_all(of, replace(demo(), limits=found.id), "check-twin-gravity", "open-twin-gravity")


def _site(path: Path) -> None:
    found = load_site(path)
    opening_hours(found, DAY)
    _fit_all(library(), found, "open-twin-gravity")


def _set_up(path: Path) -> None:
    """Change a site file, or go on with a draft, as the setup does."""
    draft = Draft.of(path.parent)
    draft.put("name", "Other")
    draft.put("options.sink", "two")
    draft.put("sanitizer.target", Decimal(100))
    draft.add("people", {"id": "p99", "name": "New", "language": "en"})
    draft.document.remove("people", 0)
    draft.keep()
    with suppress(FaultyFile):
        draft.site()
    (path.parent / DRAFT_FILE).unlink()


def _draft(folder: Path) -> list[bytes]:
    draft = Draft.of(folder)
    draft.put("name", "Begun")
    draft.add("machines", {"id": "m1", "name": "First", "kind": "single-pump"})
    draft.keep()
    return [(folder / DRAFT_FILE).read_bytes()]


def _models(path: Path) -> None:
    for model in known_models(site=path.parent):
        lacking(path.parent / model.name, model.engine)


# Sound.


def _waves(_: Path) -> list[bytes]:
    made = []
    for rate, width, channels in ((16_000, 2, 1), (44_100, 1, 2), (8_000, 3, 1)):
        out = io.BytesIO()
        with wave.open(out, "wb") as file:
            file.setframerate(rate)
            file.setsampwidth(width)
            file.setnchannels(channels)
            file.writeframes(bytes(range(1, 241)))
        made.append(out.getvalue())
    return made


def _wave(path: Path) -> None:
    is_whole(path)
    for prompt in (wave_seconds, checked_length):
        try:
            prompt(path)
        except SpeechFailed as error:
            _told(path.name in str(error) or "silence" in str(error))
    list(WaveFile(path).frames())


def _own(folder: Path) -> list[bytes]:
    chance = np.random.default_rng(1)
    sample = [
        Sample(chance.normal(-20, 5, (40, BANDS)).astype(np.float32), (5, 35),
               np.full(BANDS, -50, dtype=np.float32))
        for _ in TEACHABLE
    ]  # fmt: skip
    made = keep(folder / "own", "w", "en", dict.fromkeys(TEACHABLE, sample[:3])).read_bytes()
    plain = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(made)) as packed, zipfile.ZipFile(plain, "w") as stored:
        for one in packed.namelist():
            stored.writestr(one, packed.read(one))
    return [made, plain.getvalue()]


def _own_words(path: Path) -> None:
    place = file_of(path.parent, "w", "en")
    place.parent.mkdir(exist_ok=True)
    path.replace(place)
    found = taught(path.parent, "w", "en")
    if any(found.values()):
        said = np.sin(np.arange(RATE // 2, dtype=np.float32) / 9)
        TemplateEar(found, "en").hear(Utterance(said, 0.0, 0.5, 0.5), ["next"])


def _recording(folder: Path) -> list[bytes]:
    one = Recording(text="Pull the plug.", language="en", by="p2", at_utc=1_774_000_000.0)
    silence = np.zeros(100, dtype=np.float32)
    return [Recordings(folder).keep(one, silence).with_suffix(".json").read_bytes()]


def _recordings(path: Path) -> None:
    kept = Recordings(path.parent)
    path.replace(kept.file("Pull the plug.", "en").with_suffix(".json"))
    for one in kept.listed("en"):
        assert datetime.fromtimestamp(one.at_utc, UTC)
        assert one.text == "Pull the plug."


def _zip(_: Path) -> list[bytes]:
    made = []
    for kind in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
        out = io.BytesIO()
        with zipfile.ZipFile(out, "w", kind) as packed:
            packed.writestr("model/am/final.mdl", b"am" * 50)
            packed.writestr("model/conf/model.conf", b"x")
        made.append(out.getvalue())
    return made


def _unpack(path: Path) -> None:
    into = path.parent / "unpacked"
    before = {one.name for one in path.parent.iterdir()}
    try:
        unpack(path, into)
    finally:
        assert {one.name for one in path.parent.iterdir()} <= before | {"unpacked"}
        _remove(into)


# The laboratory.


def _csv(_: Path) -> list[bytes]:
    head = "machine,barrel,day,product,analysis,amount,laboratory,per,sample\n"
    rows = (
        "m1,left,2026-11-01,mix,total count,1200,Example Lab,g,1\n"
        "m1,right,2026-11-01,mix,coliform,< 10,Example Lab,g,2\n"
    )
    made = (head + rows).encode()
    return [made, b"\xef\xbb\xbf" + made.replace(b",", b";").replace(b"\n", b"\r\n")]


def _results(path: Path) -> None:
    for row in read_csv(path, {"m1": ("left", "right")}, DAY).values():
        assert str(row).isprintable()


# The journal.


@cache
def _evident(folder: Path) -> tuple[bytes, bytes, bytes, frozenset[str]]:
    """Return a journal, its checkpoints, its export, and its key."""
    made = evident(folder / "evident", sessions=2)
    exported = "".join(f"{line}\n" for line in export(made.file, 1)).encode()
    key = frozenset({made.checkpoints[0].key})
    return made.file.read_bytes(), made.checkpoints_file.read_bytes(), exported, key


def _checkpoints(path: Path) -> None:
    found, _ = cp.read(path)
    journal = path.with_name("whole.db")
    if not journal.exists():
        journal.write_bytes(_evident(path.parent)[0])
    judge(journal, found, {one.key for one in found} | _evident(path.parent)[3])
    print(*found, file=io.TextIOWrapper(io.BytesIO(), encoding="utf-8"))


def _check(path: Path) -> None:
    found = check(path)
    assert found.verdict.whole or found.verdict.what
    judge(path, (), frozenset())


def _journal(path: Path) -> None:
    _check(path)
    # In a place of its own: a database that could not be opened may still hold its log.
    with TemporaryDirectory(dir=path.parent) as place:
        own = path.rename(Path(place) / FILE)
        try:
            with closing(Journal(own.parent)) as journal:
                for session in journal.sessions():
                    journal.events(session)
                journal.shop_events()
                journal.open_sessions()
        except sqlite3.Error as error:
            # The command itself turns it into a sentence.
            _told(bool(str(error)))


def _backup(folder: Path) -> list[bytes]:
    """Return a backup that carries the sound of a remark."""
    made = evident(folder / "backed-up", sessions=1)
    sounds = Sounds(made.folder)
    with closing(Journal(made.folder)) as journal:
        fact = RemarkRecorded("s0", "step-1", "ana", sounds.keep(b"RIFF" * 500), 2.0, True)
        journal.append_shop([ShopEvent(SystemClock().now(), Evidence(Channel.TOUCH), fact)])
    target = folder / "with-remarks.db"
    back_up(made.file, target, partial(carried.pack, sounds, carried.Tally()))
    return [target.read_bytes()]


def _restore(path: Path) -> None:
    into = path.parent / "restored"
    try:
        restore(path, into, SystemClock(), partial(carried.unpack, Sounds(into), carried.Tally()))
        with closing(Journal(into)) as journal:
            assert journal.verify().whole
    finally:
        _remove(into)


def _beside(folder: Path) -> list[bytes]:
    with closing(Beside(folder / "people")) as beside:
        beside.meet(demo().people, 1.0)
        beside.keep("left the tap open", "ana", 2.0)
        return [beside.file.read_bytes()]


def _signed(folder: Path) -> list[bytes]:
    at = datetime(2026, 11, 25, 9, 30, tzinfo=UTC)
    sign("es", drafts("es", library())[:3], "Ana", at, folder)
    sign("ko", drafts("ko", library())[:1], "Mina", at, folder)
    return [(folder / SIGNED).read_bytes()]


_DUE = DUE.replace(NAME, "twin-gravity").replace("part: door", "part: o-rings").encode()
"""As if the kind were a site's own."""


def _people(path: Path) -> None:
    with closing(Beside(path.parent)) as beside:
        beside.name("ana")
        beside.names_before(5.0)
        beside.text("kept:" + "0" * 64)
        beside.erase("ana")


def _public(folder: Path) -> list[bytes]:
    return [as_pem(signing_key(folder)[0].public).encode()]


def _private(folder: Path) -> list[bytes]:
    signing_key(folder)
    return [(folder / KEY_FILE).read_bytes()]


def _remove(folder: Path) -> None:
    if folder.exists():
        for one in sorted(folder.rglob("*"), reverse=True):
            one.rmdir() if one.is_dir() else one.unlink()
        folder.rmdir()


FAULTY = (FaultyFile,)
TARGETS = (
    Target("procedure", "check-twin-gravity.yaml",
           _shipped_files("check-twin-gravity.yaml"), _procedure, FAULTY),
    Target("long procedure", "open-twin-gravity.yaml",
           _shipped_files("open-twin-gravity.yaml"), _procedure, FAULTY),
    Target("common", "common.yaml", _shipped_files("common.yaml"), _common, FAULTY),
    Target("machine kind", "twin-gravity.yaml",
           _shipped_files("machines/twin-gravity.yaml"), _kind, FAULTY),
    Target("limits", "food-code-2022.yaml",
           _shipped_files("limits/food-code-2022.yaml"), _limits, FAULTY),
    Target("rules for deviations", "deviations.yaml",
           _shipped_files("review/deviations.yaml"), load_deviation_rules, FAULTY),
    Target("schedule", "schedule.yaml", _shipped_files("review/schedule.yaml"),
           lambda path: load_schedule(path, library()), FAULTY),
    Target("what is due on an own kind", "twin-gravity.yaml",
           lambda _: [_DUE], lambda path: load_kind_schedule(path, library()), FAULTY),
    Target("authorities", "authorities.yaml",
           _shipped_files("laboratory/authorities.yaml"), load_authorities, FAULTY),
    Target("site", "site.toml",
           lambda _: [(shipped("demo") / "site.toml").read_bytes()], _site, FAULTY),
    Target("site to set up", "site.toml",
           lambda _: [(shipped("demo") / "site.toml").read_bytes()], _set_up, FAULTY),
    Target("begun setup", DRAFT_FILE, _draft, _set_up, ()),
    Target("list of models", "models.toml",
           lambda _: [(shipped("models") / "models.toml").read_bytes()], _models, (BadList,)),
    Target("wave file", "said.wav", _waves, _wave, (SourceTrouble,)),
    Target("recording", "index.json", _recording, _recordings, ()),
    Target("own words", "words.npz", _own, _own_words, (BrokenWords,), names_file=False),
    Target("model archive", "model.zip", _zip, _unpack, (BadArchive,), names_file=False),
    Target("laboratory results", "results.csv", _csv, _results, FAULTY),
    Target("checkpoints", "checkpoints.jsonl", lambda folder: [_evident(folder)[1]],
           _checkpoints, ()),
    Target("export", "export.jsonl", lambda folder: [_evident(folder)[2]], _check, ()),
    Target("journal", "spoilt.db", lambda folder: [_evident(folder)[0]], _journal,
           (JournalFailed, UnknownEvent), names_file=False),
    Target("backup", "backup.db", lambda folder: [_evident(folder)[0]], _restore,
           (BackupFailed, JournalFailed), names_file=False),
    Target("backup with remarks", "backup.db", _backup, _restore,
           (BackupFailed, JournalFailed, UnknownEvent), names_file=False),
    Target("names and remarks", "people.db", _beside, _people, (BesideFailed,)),
    Target("signed texts", SIGNED, _signed, lambda path: signatures(path.parent), (SignedFailed,)),
    Target("public key", "key.pem", _public, from_pem, (NoKey,)),
    Target("signing key", KEY_FILE, _private, lambda path: signing_key(path.parent), (NoKey,)),
)  # fmt: skip


def read_spoilt(target: Target, folder: Path, data: bytes) -> str:
    """Have a target read data from a file of its own; return the refusal, empty when it was read.

    Whatever else it raises is a fault of the reader.
    """
    path = folder / target.file
    path.write_bytes(data)
    try:
        target.read(path)
    except target.refusals as error:
        said = str(error)
        assert said
        assert not target.names_file or target.file in said, said
        return said
    return ""

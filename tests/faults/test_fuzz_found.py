"""What fuzzing and reading have found: each once brought a traceback, a hang, or a silent loss."""

from __future__ import annotations

import base64
import io
import json
import re
import sqlite3
import struct
import zipfile
from contextlib import closing
from datetime import date

import numpy as np
import pytest
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from kiosk.clock import SystemClock
from kiosk.journal import checkpoints as cp
from kiosk.journal import codec
from kiosk.journal.keys import NoKey, from_pem
from kiosk.journal.store import FILE, Journal, JournalFailed
from kiosk.journal.verify import check
from kiosk.listening.model_list import BadList, known_models
from kiosk.listening.own_words import BrokenWords, file_of, taught
from kiosk.listening.sources import SourceTrouble, read_wave
from kiosk.listening.unpack import BadArchive, unpack
from kiosk.people.pins import Pins, PinsFailed
from kiosk.procedure.fault import FaultyFile, harmless
from kiosk.procedure.site import load_site
from kiosk.procedure.yaml_source import read_yaml
from kiosk.review.result_file import read_csv
from kiosk.shipped import shipped
from kiosk.speaking.player import wave_seconds
from kiosk.speaking.prompt_cache import is_whole
from kiosk.speaking.voices import SpeechFailed
from tests.faults.test_fuzz_commands import put, run
from tests.tampering import evident, write_sessions

DEEP = "[" * 100_000
LAUGHS = "a: &a [x, x, x, x, x, x, x, x, x]\n" + "".join(
    f"{b}: &{b} [{', '.join([f'*{a}'] * 9)}]\n" for a, b in zip("abcdefgh", "bcdefghi", strict=True)
)
DEMO = (shipped("demo") / "site.toml").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("&a [*a]", "alias"),
        (LAUGHS, "alias"),
        (DEEP, "is not YAML"),
        ("a: 1\nb: " + "9" * 5000, ":2: b: '99999999999999999999...' is too long a number"),
        ("a: 1e99999999999999999999", "is too long a number"),
        ('a: "\\e[2J"\n"\\e[2J": 1\n"\\e[2J": 2', "\\x1b[2J"),
    ],
)
def test_a_yaml_file_that_is_made_to_harm(text, said, tmp_path):
    file = tmp_path / "harm.yaml"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(FaultyFile, match="To mend") as refused:
        read_yaml(file)
    assert said in str(refused.value)
    assert str(refused.value).isprintable()


@pytest.mark.parametrize(
    ("field", "value", "said"),
    [
        ("trainee_walks", "9" * 5000, "is not TOML"),
        ("trainee_walks", DEEP, "is not TOML"),
        ("time_zone", '"Etc"', "time_zone: 'Etc' is no time zone"),
        ("time_zone", f'"{"a" * 5000}"', "is no time zone"),
        ("opens", '"soon"', "opens: 'soon' is no time of day"),
        ("closes", '"9:30"', "closes: '9:30' is no time of day"),
        ("name", '"\\u001b]0;x\\u0007"', "name: '\\x1b]0;x\\x07' is empty or holds"),
        ("id", '"two\\nlines"', "machines.id: 'two\\nlines' is empty or holds"),
    ],
)
def test_a_site_file_that_no_shop_can_have(field, value, said, tmp_path):
    file = tmp_path / "site.toml"
    wrong = re.sub(f"(?m)^{field} = .*", lambda _: f"{field} = {value}", DEMO, count=1)
    file.write_text(wrong, encoding="utf-8")
    with pytest.raises(FaultyFile) as refused:
        load_site(file)
    assert said in str(refused.value)


@pytest.mark.parametrize(
    "text",
    ['model = ["x"]', f"a = {DEEP}", "a = " + "9" * 5000,
     '[[model]]\nlanguage = "a"\nengine = "vosk"\nname = "b"\nlicence = "c"\nurl = "d"'],
)  # fmt: skip
def test_a_list_of_models_that_is_none(text, tmp_path):
    (tmp_path / "models.toml").write_text(text, encoding="utf-8")
    with pytest.raises(BadList, match=r"models\.toml"):
        known_models(site=tmp_path)


# Sound.


def wave_of(rate=16_000, channels=1, bits=16, size=16, data=b"\1\2" * 8):
    head = struct.pack("<HHIIHH", 1, channels, rate, 0, 0, bits)
    return (
        b"RIFF" + struct.pack("<I", 4 + 8 + size + 8 + len(data)) + b"WAVEfmt "
        + struct.pack("<I", size) + head + b"data" + struct.pack("<I", len(data)) + data
    )  # fmt: skip


@pytest.mark.parametrize(
    "odd",
    [{"rate": 1}, {"rate": (1 << 32) - 1}, {"rate": 0}, {"bits": 272}, {"channels": 0},
     {"size": 17}, {"size": 1 << 30}],
    ids=str,
)  # fmt: skip
def test_a_wave_file_with_an_odd_header(odd, tmp_path):
    file = tmp_path / "odd.wav"
    file.write_bytes(wave_of(**odd))
    with pytest.raises(SourceTrouble, match=r"odd\.wav"):
        read_wave(file)


@pytest.mark.parametrize("odd", [{"rate": 0}, {"size": 17}], ids=str)
def test_a_prompt_with_an_odd_header_is_rendered_anew(odd, tmp_path):
    file = tmp_path / "odd.wav"
    file.write_bytes(wave_of(**odd))
    with pytest.raises(SpeechFailed, match=r"odd\.wav"):
        wave_seconds(file)
    assert "size" not in odd or not is_whole(file)


def npy(array):
    out = io.BytesIO()
    np.save(out, array)
    return out.getvalue()


def npz(**arrays):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as packed:
        for name, data in arrays.items():
            packed.writestr(name.replace("_", ".") + ".npy", data)
    return out.getvalue()


ONE = npy(np.array(1))
HUGE = npy(np.zeros(3)).replace(b"(3,), }", b"(1000000000000,), }")
BANDS = npy(np.full((20, 32), np.nan, dtype=np.float16))
ROOM, CORE = npy(np.zeros(32)), npy(np.array([0, 20]))


@pytest.mark.parametrize(
    "data",
    [ONE, npz(format=npy(np.array([1, 2]))), npz(format=HUGE), npz(format=b"no array"),
     npz(format=ONE, next_0_core=npy(np.zeros(2_000_000))),
     npz(format=ONE, next_0_core=CORE, next_0_bands=BANDS, next_0_room=ROOM)],
    ids=["an-array", "two-formats", "a-trillion", "text", "a-bomb", "no-numbers"],
)  # fmt: skip
def test_own_words_that_nobody_said(data, tmp_path):
    file = file_of(tmp_path, "ana", "en")
    file.parent.mkdir()
    file.write_bytes(data)
    with pytest.raises(BrokenWords, match="teach them again"):
        taught(tmp_path, "ana", "en")


@pytest.mark.parametrize("how", ["a byte is lost", "another version"])
def test_a_zip_whose_list_lies(how, tmp_path):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as packed:
        packed.writestr("a", b"b")
    data = bytearray(out.getvalue())
    if how == "a byte is lost":
        del data[0]
    else:
        data[data.index(b"PK\1\2") + 6] = 108
    (tmp_path / "lies.zip").write_bytes(data)
    with pytest.raises(BadArchive):
        unpack(tmp_path / "lies.zip", tmp_path / "into")


# The laboratory.


def test_a_result_that_would_work_on_the_terminal(tmp_path):
    file = tmp_path / "results.csv"
    file.write_text(
        "machine,barrel,day,product,analysis,amount,laboratory\n"
        "m1,left,2026-11-01,mix,total count,1200,Example \x1b]0;x\x07 Lab\n",
        encoding="utf-8",
    )
    with pytest.raises(FaultyFile, match=r"laboratory: 'Example .* holds what cannot be printed"):
        read_csv(file, {"m1": ("left",)}, date(2026, 11, 26))


# The journal, and what lies beside it.


@pytest.mark.parametrize(
    "odd",
    [{"seq": 1 << 70}, {"seq": -1}, {"kiosk": "\ud800"}, {"utc": "\x1b[2J"}, {"hash": ["a"]}],
    ids=str,
)
def test_a_checkpoint_that_no_kiosk_wrote_stops_no_kiosk(odd, tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write_sessions(journal, 1)
        made = cp.Checkpoints(journal, SystemClock())
        made.make()
        file = tmp_path / cp.name_of(journal.kiosk)
        honest = json.loads(file.read_text(encoding="utf-8"))
        with file.open("a", encoding="utf-8") as out:
            out.write(f"{json.dumps(honest | odd)}\n{DEEP}\n")
        found, none = cp.read(file)
        assert [one.seq for one in found] == [honest["seq"]]
        assert none == (2, 3)
        again = cp.Checkpoints(journal, SystemClock())
        again.begin()
        again.close()
        assert not again.trouble


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        ("StepEntered", DEEP),
        ("StepEntered", "9" * 5000),
        ("StepEntered", "[]"),
        ("StepEntered", '{"by":{"channel":"touch"},"fact":[]}'),
        ("StepEntered", '{"by":{"channel":"touch"},"fact":{"step":null,"goal":"a"}}'),
        ("SessionHeld", '{"by":{"channel":"voice","heard":1},"fact":{"because":"problem"}}'),
        ("ConditionsLapsed", '{"by":{"channel":"touch"},"fact":{"conditions":[["a"]]}}'),
        ("ReadBackAgreed", '{"by":{"channel":"touch"},"fact":{"step":"a","next":"released"}}'),
    ],
)
def test_a_body_that_is_no_fact(kind, text):
    """The engine believes what it folds, so a fact is made of what a kiosk can have written."""
    with pytest.raises(codec.UnknownEvent, match=kind):
        codec.event(kind, "2026-11-25T22:15:00.000000Z", 1, "boot", text)


@pytest.mark.parametrize("text", [DEEP, '{"ana": "\\ud800"}', '{"ana": "$argon2é"}'])
def test_a_file_of_pins_that_is_none(text, tmp_path):
    (tmp_path / "pins.json").write_text(text, encoding="utf-8")
    with pytest.raises(PinsFailed, match=r"pins\.json"):
        Pins(tmp_path).right("ana", "2468")


def test_a_key_of_a_kind_that_is_not_known(tmp_path, monkeypatch):
    known = ec.generate_private_key(ec.SECP256R1()).public_key()
    der = known.public_bytes(Encoding.DER, PublicFormat.SubjectPublicKeyInfo)
    # Another curve's number, which stands for none.
    strange = der.replace(bytes.fromhex("2a8648ce3d030107"), bytes.fromhex("2a8648ce3d03017f"))
    pem = tmp_path / "key.pem"
    pem.write_bytes(
        b"-----BEGIN PUBLIC KEY-----\n"
        + base64.encodebytes(strange)
        + b"-----END PUBLIC KEY-----\n"
    )
    with pytest.raises(NoKey, match=r"key\.pem"):
        from_pem(pem)
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path / "home"))
    made = evident(tmp_path / "made", sessions=1)
    status, said = run(["log", "verify", str(made.file), "--key", str(pem)])
    assert status == 1
    assert "key.pem" in said


def test_an_export_that_begins_far_out_is_judged_all_the_same(tmp_path):
    row = dict.fromkeys(("kiosk", "session", "kind", "utc", "boot", "body", "prev", "hash"), "x")
    file = tmp_path / "far.jsonl"
    file.write_text(json.dumps(row | {"seq": 10**15, "mono_us": 0}), encoding="utf-8")
    assert check(file).verdict.bad_seq == 10**15


def test_an_endless_view_is_no_journal(tmp_path):
    file = tmp_path / FILE
    with closing(sqlite3.connect(file)) as db:
        db.execute(
            "create view journal as with recursive n(seq) as (select 1 union all select seq + 1 "
            "from n) select seq, '' as kiosk, '' as session, '' as kind, '' as utc, 0 as mono_us, "
            "'' as boot, '' as body, '' as prev, '' as hash from n"
        )
    verdict = check(file).verdict
    assert not verdict.whole
    assert "holds no table" in verdict.what


def test_a_trigger_that_swallows_a_row_is_noticed_before_anything_moves(tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write_sessions(journal, 1)
        before = journal.mark()
    with closing(sqlite3.connect(tmp_path / FILE)) as db, db:
        db.execute(
            "create trigger swallow before insert on journal begin select raise(ignore); end"
        )
    with closing(Journal(tmp_path)) as journal:
        with pytest.raises(JournalFailed, match="what was written is not there"):
            write_sessions(journal, 1)
        assert journal.mark() == before


def test_a_damaged_journal_is_told_of_by_every_command(tmp_path, monkeypatch):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path / "home"))
    (tmp_path / "home").mkdir()
    data = bytearray(evident(tmp_path / "made", sessions=4).file.read_bytes())
    # All pages but the first two: the tables are there, and what they hold is not.
    data[8192:] = bytes(len(data) - 8192)
    put(tmp_path / "home", "journal in use", bytes(data))
    status, said = run(["log", "list"])
    assert status == 1
    assert said.strip()


def test_what_a_terminal_would_obey_is_escaped():
    assert harmless("a\x1b[2J\nb\u202ec\ud800") == "a\\x1b[2J\\nb\\u202ec\\ud800"
    assert harmless("안미나 ¡sí!") == "안미나 ¡sí!"


def test_a_journal_whose_own_description_is_damaged_is_refused(tmp_path):
    data = evident(tmp_path / "made", sessions=1).file.read_bytes()
    # SQLite quotes the damaged words in its error, and Python cannot decode them.
    for at in [one.start() for one in re.finditer(b"create ", data)]:
        (tmp_path / FILE).write_bytes(data[: at + 2] + b"\xf0" + data[at + 3 :])
        with pytest.raises(JournalFailed, match=FILE):
            Journal(tmp_path)

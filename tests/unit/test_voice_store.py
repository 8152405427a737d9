"""A speech model is added whole or not at all, whatever the network, the file or the disk do."""

from __future__ import annotations

import hashlib
import io
import json
import os
import random
import shutil
import signal
import stat
import subprocess
import sys
import zipfile
from dataclasses import replace
from pathlib import Path

import pytest

from kiosk.listening.download import DiskFull, Download, NotFetched
from kiosk.listening.model_list import BadList, Model, known_models
from kiosk.listening.model_store import (
    State,
    StoreFailed,
    Watcher,
    add,
    addable,
    remove,
    shelf,
)
from kiosk.listening.models import Missing, broken, open_ear
from kiosk.listening.unpack import BadArchive, unpack
from tests.file_server import serving

NAME = "vosk-model-small-es-0.42"
FILES = ("am/final.mdl", "conf/model.conf", "conf/mfcc.conf", "graph/HCLr.fst", "graph/Gr.fst")
BODY = random.Random(1).randbytes(3_000_000)


def zipped(entries: dict[str, bytes], **kinds: int) -> bytes:
    """Return a zip; `kinds` gives the file type of entries, as in `link=stat.S_IFLNK`."""
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as file:
        for name, content in entries.items():
            entry = zipfile.ZipInfo(name)
            entry.external_attr = (kinds.get(name, stat.S_IFREG) | 0o644) << 16
            entry.compress_type = zipfile.ZIP_DEFLATED
            file.writestr(entry, content)
    return packed.getvalue()


def model_zip(size: int = 3_000_000, top: str = f"{NAME}/", without: str = "") -> bytes:
    parts = {name: b"x" * 50 for name in FILES if name != without}
    if "am/final.mdl" in parts:
        parts["am/final.mdl"] = BODY[:size]
    return zipped({f"{top}{name}": content for name, content in parts.items()})


def sha(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()


ZIP = model_zip()
SPANISH = next(one for one in known_models("es") if one.name == NAME)


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch) -> Path:
    folder = tmp_path / "home"
    monkeypatch.setenv("KIOSK_HOME", str(folder))
    monkeypatch.setenv("no_proxy", "127.0.0.1")
    return folder


def put(home: Path, source: str, content: bytes = ZIP, **more) -> Path:
    more.setdefault("sha256", sha(content))
    more.setdefault("keep_free", 0)
    watcher = more.pop("watcher", Watcher())
    return add(replace(SPANISH, bytes=0), home, watcher, source, **more)


def standing(home: Path) -> list[str]:
    """Return what stands in the models folder, the lock apart."""
    return sorted(one.name for one in (home / "models").iterdir() if one.name != ".lock")


def on_stick(tmp_path: Path, content: bytes) -> str:
    stick = tmp_path / "stick.zip"
    stick.write_bytes(content)
    return str(stick)


# Fetching.


def test_a_model_is_fetched_checked_unpacked_and_found(home):
    with serving(ZIP) as served:
        place = put(home, served.address)
    assert standing(home) == [NAME]
    assert (place / "am/final.mdl").read_bytes() == BODY
    [found] = [one for one in shelf(home) if one.model.name == NAME]
    assert (found.state, found.place) == (State.INSTALLED, place)


def test_after_a_cut_only_the_rest_is_fetched(home):
    with serving(ZIP, cuts=[1_000_000]) as served:
        put(home, served.address)
    assert served.asked == [None, "bytes=1000000-"]
    assert served.sent == [1_000_000, len(ZIP) - 1_000_000]


def test_the_next_run_goes_on_where_the_last_gave_up(home):
    with serving(ZIP, cuts=[900_000, 0, 0, 0]) as served:
        with pytest.raises(StoreFailed, match=r"900,000 bytes of it are kept.*again to go on"):
            put(home, served.address)
        assert not (home / "models" / NAME).exists()
        served.asked.clear()
        put(home, served.address)
    assert served.asked == ["bytes=900000-"]
    assert sum(served.sent) == len(ZIP)


def test_a_server_that_cannot_go_on_sends_it_all_again_and_this_is_said(home):
    said: list[str] = []
    with serving(ZIP, cuts=[1_000_000], ranges=False) as served:
        put(home, served.address, watcher=Watcher(say=said.append))
    assert served.sent == [1_000_000, len(ZIP)]
    assert "from its beginning" in said[0]


def test_a_file_that_changed_is_fetched_from_its_beginning(home):
    newer = model_zip(2_500_000)
    with serving(ZIP, cuts=[1_000_000, 0, 0, 0]) as served:
        with pytest.raises(StoreFailed):
            put(home, served.address)
        served.body, served.etag = newer, '"two"'
        place = put(home, served.address, newer)
    assert served.asked[-1] == "bytes=1000000-"
    assert served.sent[-1] == len(newer)
    assert (place / "am/final.mdl").read_bytes() == BODY[:2_500_000]


def test_without_a_validator_nothing_is_pieced_together(home):
    with serving(ZIP, cuts=[1_000_000], etag="") as served:
        put(home, served.address)
    assert served.asked == [None, None]


def test_a_weak_validator_is_not_trusted(home):
    with serving(ZIP, cuts=[1_000_000], etag='W/"one"') as served:
        put(home, served.address)
    assert served.asked == [None, None]


def test_a_part_longer_than_the_file_is_thrown_away(home):
    part = home / "part.zip"
    with serving(ZIP, cuts=[1_000_000, 0, 0, 0]) as served:
        fetch = Download(served.address, part, keep_free=0)
        with pytest.raises(NotFetched):
            fetch.run()
        served.body = ZIP[:500_000]
        assert fetch.run().read_bytes() == ZIP[:500_000]
    assert served.asked[-2:] == ["bytes=1000000-", None]


def test_a_server_that_sends_another_part_is_refused(home):
    lying = serving(ZIP, cuts=[1_000_000], says_start=999_999)
    with lying as served, pytest.raises(StoreFailed, match="another part"):
        put(home, served.address)


def test_a_part_of_another_address_is_not_gone_on_with(home):
    with serving(BODY, cuts=[1_000_000, 0, 0, 0]) as served, pytest.raises(StoreFailed):
        put(home, served.address)
    with serving(ZIP) as served:
        put(home, served.address)
    assert served.asked == [None]


def test_a_listed_size_tells_a_cut_where_the_server_tells_no_length(home):
    with serving(ZIP, length=False, cuts=[1_000_000]) as served:
        model = replace(SPANISH, url=served.address, sha256=sha(ZIP), bytes=len(ZIP))
        add(model, home, Watcher(), keep_free=0)
    assert served.asked == [None, "bytes=1000000-"]


def test_a_length_that_is_not_told_is_judged_by_the_checksum(home):
    with serving(ZIP, length=False) as served:
        put(home, served.address)
    with serving(ZIP, length=False, cuts=[1_000_000]) as served:
        with pytest.raises(StoreFailed, match="checksum"):
            put(home / "other", served.address)
        put(home / "other", served.address)


@pytest.mark.parametrize("length", [True, False])
def test_a_file_of_another_size_than_listed_is_refused(home, length):
    with serving(ZIP, length=length) as served:
        model = replace(SPANISH, url=served.address, sha256=sha(ZIP), bytes=len(ZIP) - 5)
        with pytest.raises(StoreFailed, match="should be"):
            add(model, home, Watcher(), keep_free=0)
    assert not (home / "models" / NAME).exists()


def test_a_server_that_refuses_is_quoted(home):
    with serving(ZIP, status=404) as served, pytest.raises(StoreFailed, match="404 Not Found"):
        put(home, served.address)
    assert len(served.asked) == 1


def test_no_network_is_a_sentence(home):
    with serving(ZIP) as served:
        closed = served.address
    with pytest.raises(StoreFailed, match="could not be fetched"):
        put(home, closed)


def test_an_address_without_encryption_wants_a_checksum(home):
    vietnamese = addable("vi", home)
    with pytest.raises(StoreFailed, match="not encrypted"):
        add(vietnamese, home, Watcher(accept=lambda _: True), "http://127.0.0.1:1/x.zip")


# Checksums.


def test_a_wrong_checksum_installs_nothing_and_the_file_is_not_used_again(home):
    with serving(ZIP) as served:
        with pytest.raises(StoreFailed, match=f"(?s)wrong checksum.*{sha(ZIP)}.*{'0' * 64}"):
            put(home, served.address, sha256="0" * 64)
        assert standing(home) == []
        put(home, served.address)
    assert served.asked == [None, None]


def test_a_checksum_that_is_none_is_named(home):
    with pytest.raises(StoreFailed, match="64 digits"):
        put(home, "x.zip", sha256="abc")


def test_without_a_known_checksum_the_user_is_shown_it_and_decides(home, tmp_path):
    source = on_stick(tmp_path, ZIP)
    model = replace(SPANISH, sha256="")
    with pytest.raises(StoreFailed, match=f"not accepted.*--sha256 {sha(ZIP)}"):
        add(model, home, Watcher(), source)
    assert standing(home) == []
    shown: list[str] = []
    add(model, home, Watcher(accept=lambda digest: not shown.append(digest)), source)
    assert shown == [sha(ZIP)]
    assert standing(home) == [NAME]


def test_the_listed_checksum_also_holds_for_a_file_from_a_stick(home, tmp_path):
    with pytest.raises(StoreFailed, match=SPANISH.sha256):
        add(SPANISH, home, Watcher(accept=lambda _: True), on_stick(tmp_path, ZIP))


# The disk.


@pytest.fixture
def small_disk(tmp_path):
    if os.name != "posix" or os.geteuid() != 0:
        pytest.skip("only root can mount a small file system")
    folder = tmp_path / "small"
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", str(folder)]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode:
        pytest.skip(f"a small file system cannot be mounted here: {done.stderr.strip()}")
    yield folder
    subprocess.run(["umount", str(folder)], check=True)


def test_a_disk_without_room_is_told_before_anything_is_fetched(small_disk):
    with serving(ZIP) as served, pytest.raises(StoreFailed, match=r"MB free and .* are wanted"):
        put(small_disk, served.address, keep_free=2_000_000)
    assert served.sent[0] <= len(ZIP)
    assert standing(small_disk) == []


def test_a_disk_that_has_room_for_the_zip_only_is_told_before_unpacking(small_disk):
    with serving(ZIP) as served, pytest.raises(StoreFailed, match="make room"):
        put(small_disk, served.address)
    assert not (small_disk / "models" / NAME).exists()


@pytest.mark.parametrize("looked", [True, False], ids=["seen coming", "at the write"])
def test_a_disk_that_fills_while_writing_is_told_and_given_back(small_disk, monkeypatch, looked):
    if not looked:
        plenty = shutil._ntuple_diskusage(10**12, 0, 10**12)
        monkeypatch.setattr(shutil, "disk_usage", lambda _: plenty)
    part = small_disk / "part"
    long = random.Random(2).randbytes(6_000_000)
    with serving(long, length=False) as served, pytest.raises(DiskFull):
        Download(served.address, part, keep_free=0).run()
    assert list(small_disk.iterdir()) == []


def test_a_disk_that_fills_while_unpacking_leaves_no_model(small_disk, tmp_path, monkeypatch):
    from kiosk.listening import model_store

    monkeypatch.setattr(model_store, "unpacked_bytes", lambda _: 0)
    big = zipped({f"{NAME}/{name}": bytes(2_000_000) for name in FILES})
    with pytest.raises(StoreFailed, match="No space left"):
        put(small_disk, on_stick(tmp_path, big), big)
    assert standing(small_disk) == []


# Unpacking.


@pytest.mark.parametrize(
    "name",
    ["../evil", "a/../../evil", "/evil", "..\\evil", "C:/evil", "a/b:c", "a/../b"],
)
def test_an_entry_that_leads_out_of_the_folder_is_refused_before_anything_is_written(
    home, tmp_path, name
):
    bad = zipped({**{f"m/{one}": b"x" for one in FILES}, name: b"evil"})
    with pytest.raises(StoreFailed, match="out of its folder"):
        put(home, on_stick(tmp_path, bad), bad)
    assert standing(home) == []
    assert not list(tmp_path.rglob("evil"))


@pytest.mark.parametrize("kind", [stat.S_IFLNK, stat.S_IFCHR, stat.S_IFIFO, stat.S_IFSOCK])
def test_links_and_devices_are_refused(tmp_path, kind):
    bad = on_stick(tmp_path, zipped({"m/ok": b"x", "m/link": b"/etc/passwd"}, **{"m/link": kind}))
    with pytest.raises(BadArchive, match="no plain file"):
        unpack(Path(bad), tmp_path / "into")
    assert not (tmp_path / "into").exists()


def test_a_bomb_is_not_unpacked(tmp_path):
    bomb = on_stick(tmp_path, zipped({"m/zeros": bytes(40_000_000)}))
    assert Path(bomb).stat().st_size < 100_000
    with pytest.raises(BadArchive, match="40,000,000 bytes"):
        unpack(Path(bomb), tmp_path / "into")
    assert not (tmp_path / "into").exists()


def test_an_entry_under_a_password_and_a_crowd_of_entries_are_refused(tmp_path):
    locked = bytearray(zipped({"m/a": b"1"}))
    locked[locked.index(b"PK\x01\x02") + 8] |= 1
    with pytest.raises(BadArchive, match="password"):
        unpack(Path(on_stick(tmp_path, bytes(locked))), tmp_path / "into")
    crowd = zipped({f"m/{number}": b"" for number in range(2_001)})
    with pytest.raises(BadArchive, match="2,001 entries"):
        unpack(Path(on_stick(tmp_path, crowd)), tmp_path / "into")
    assert not (tmp_path / "into").exists()


def test_two_entries_of_one_name_are_refused(tmp_path):
    two = on_stick(tmp_path, zipped({"m/A": b"1", "m/a": b"2"}))
    with pytest.raises(BadArchive, match="one name"):
        unpack(Path(two), tmp_path / "into")
    under = on_stick(tmp_path, zipped({"m/a": b"1", "m/a/b": b"2", "m/c": b"3"}))
    with pytest.raises(BadArchive, match="one name"):
        unpack(Path(under), tmp_path / "into")


def test_a_damaged_entry_is_named(tmp_path):
    packed = bytearray(zipped({"m/part": BODY[:100_000]}))
    packed[50_000] ^= 0xFF
    with pytest.raises(BadArchive, match="m/part is damaged"):
        unpack(Path(on_stick(tmp_path, bytes(packed))), tmp_path / "into")


def test_what_is_no_zip_or_half_a_zip_is_told(home, tmp_path):
    for content in (b"<html>not here</html>", ZIP[: len(ZIP) // 2], b""):
        with pytest.raises(StoreFailed, match="not a whole zip"):
            put(home, on_stick(tmp_path, content), content)
    assert standing(home) == []


def test_a_zip_of_no_model_says_what_is_missing_and_is_fetched_anew_next_time(home):
    wrong = zipped({"cookbook/soup.txt": b"salt"})
    with serving(wrong) as served:
        for _ in range(2):
            with pytest.raises(StoreFailed, match=r"no speech model.*am/final\.mdl"):
                put(home, served.address, wrong)
    assert served.asked == [None, None]
    assert standing(home) == []


@pytest.mark.parametrize("top", ["", "other-name/"])
def test_the_folder_has_the_listed_name_whatever_the_zip_calls_it(home, tmp_path, top):
    content = model_zip(1000, top)
    assert put(home, on_stick(tmp_path, content), content).name == NAME


KILLED = """
import os, signal, sys
from pathlib import Path
from dataclasses import replace
from kiosk.listening.model_list import known_models
from kiosk.listening.model_store import Watcher, add
def progress(what, done, in_all):
    if what == "unpack" and done > int(sys.argv[3]):
        os.kill(os.getpid(), signal.SIGKILL)
[model] = known_models("es")
add(model, Path(sys.argv[1]), Watcher(progress=progress), sys.argv[2], sys.argv[4], keep_free=0)
"""


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="this platform has no SIGKILL")
@pytest.mark.parametrize("after", [0, 2_000_000, 3_000_150])
def test_a_kill_while_unpacking_leaves_no_half_model(home, tmp_path, after):
    stick = on_stick(tmp_path, ZIP)
    command = [sys.executable, "-c", KILLED, str(home), stick, str(after), sha(ZIP)]
    done = subprocess.run(command, check=False, capture_output=True, text=True)
    assert done.returncode == -signal.SIGKILL, done.stderr
    assert standing(home) == [f".adding-{NAME}"]
    assert {one.state for one in shelf(home) if one.model.language == "es"} == {State.ADDABLE}
    assert "is installed" in open_ear("es").mend
    put(home, stick)
    assert standing(home) == [NAME]


# What stands.


@pytest.mark.parametrize("gap", FILES)
def test_a_folder_that_is_not_whole_is_said_on_the_list_and_where_ears_are_looked_for(home, gap):
    place = home / "models" / NAME
    for name in FILES:
        (place / name).parent.mkdir(parents=True, exist_ok=True)
        (place / name).write_bytes(b"" if name == gap else b"x")
    [found] = [one for one in shelf(home) if one.model.name == NAME]
    assert found.state is State.BROKEN
    assert f"{gap} is missing" in found.trouble
    assert "remove that folder, then kiosk voice add es" in found.trouble
    ear = open_ear("es")
    assert isinstance(ear, Missing)
    assert ear.mend == found.trouble
    with pytest.raises(StoreFailed, match="remove it yourself"):
        put(home, "whatever.zip")


def test_a_file_that_lost_bytes_since_it_was_added_is_noticed_and_mended(home, tmp_path):
    stick = on_stick(tmp_path, ZIP)
    place = put(home, stick)
    (place / "am/final.mdl").write_bytes(BODY[:1000])
    assert "am/final.mdl (cut short)" in broken(SPANISH, place)
    assert "To mend: kiosk voice add es" in broken(SPANISH, place)
    put(home, stick)
    assert broken(SPANISH, place) == ""
    assert standing(home) == [NAME]


def test_what_stands_whole_is_not_fetched_again(home, tmp_path):
    put(home, on_stick(tmp_path, ZIP))
    with pytest.raises(StoreFailed, match="installed already"):
        put(home, "no such file")


def test_a_model_brought_whole_by_hand_is_used_but_not_removed(home):
    unpack_by_hand = home / "models" / NAME
    for name in FILES:
        (unpack_by_hand / name).parent.mkdir(parents=True, exist_ok=True)
        (unpack_by_hand / name).write_bytes(b"x")
    assert broken(SPANISH, unpack_by_hand) == ""
    with pytest.raises(StoreFailed, match="not put there by this command"):
        remove("es", home)
    assert unpack_by_hand.is_dir()


def test_what_was_added_is_removed_and_nothing_else(home, tmp_path):
    place = put(home, on_stick(tmp_path, ZIP))
    (home / "models" / "mine").mkdir()
    assert remove("es", home) == [place]
    assert standing(home) == ["mine"]
    with pytest.raises(StoreFailed, match="nothing was added for 'es'"):
        remove("es", home)


def test_two_at_once_do_not_meet(home, tmp_path):
    stick = on_stick(tmp_path, ZIP)
    refused: list[str] = []

    def progress(what: str, done: int, in_all: int) -> None:
        with pytest.raises(StoreFailed, match="wait for its end") as error:
            remove("es", home)
        refused.append(str(error.value))

    put(home, stick, watcher=Watcher(progress=progress))
    assert refused
    assert standing(home) == [NAME]


def test_the_receipt_tells_source_checksum_and_licence(home, tmp_path):
    stick = on_stick(tmp_path, ZIP)
    receipt = json.loads((put(home, stick) / "added-by-kiosk.json").read_text())
    assert receipt["source"] == stick
    assert receipt["sha256"] == sha(ZIP)
    assert receipt["licence"] == SPANISH.licence
    assert receipt["files"]["am/final.mdl"] == len(BODY)


# The list.


def test_an_unknown_language_names_the_known(home):
    for command in (addable, remove):
        with pytest.raises(StoreFailed, match=r"'tlh'\. Known are: en, es, zh, vi, fr, pt, ko"):
            command("tlh", home)


def test_a_model_that_comes_by_pip_is_not_fetched(home):
    with pytest.raises(StoreFailed, match=r"brushdown\[korean\]"):
        addable("ko", home)


def test_a_tag_falls_back_to_its_language():
    assert [one.language for one in known_models("pt-BR")] == ["pt"]
    assert known_models("p") == []


def test_english_is_heard_by_whisper_unless_the_site_prefers_another(home):
    site = home / "models"
    assert [one.engine for one in known_models("en", site)] == ["whisper", "vosk"]
    site.mkdir(parents=True)
    (site / "models.toml").write_text('[prefer]\nen = "vosk-model-small-en-us-0.15"\n')
    assert [one.engine for one in known_models("en", site)] == ["vosk", "whisper"]


def test_a_site_may_list_a_model_of_its_own(home):
    site = home / "models"
    site.mkdir(parents=True)
    (site / "models.toml").write_text(
        '[[model]]\nlanguage = "it"\nengine = "vosk"\nname = "own"\nlicence = "MIT"\n'
        'url = "https://example.invalid/own.zip"\n'
    )
    assert addable("it", home) == Model(
        "it", "vosk", "own", "MIT", url="https://example.invalid/own.zip"
    )


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("[[model]", "TOML"),
        ('model = "x"', "[[model]]"),
        ('[[model]]\nname = "x"', "language is missing"),
        ('[[model]]\nname = "x"\ncolour = "red"', "unknown key colour"),
        ('[[model]]\nlanguage="it"\nengine="abacus"\nname="x"\nlicence="MIT"', "whisper, vosk"),
        ('[[model]]\nlanguage="it"\nengine="vosk"\nname="../x"\nlicence="MIT"', "a folder's"),
        ('[[model]]\nlanguage="it"\nengine="vosk"\nname="x"\nlicence="MIT"\nbytes="9"', "number"),
        (
            '[[model]]\nlanguage="it"\nengine="vosk"\nname="x"\nlicence="MIT"\nletters="x.npz"',
            "whisper",
        ),
        (
            '[[model]]\nlanguage="it"\nengine="whisper"\nname="x"\nlicence="MIT"\nletters="../x"',
            "shipped",
        ),
    ],
)
def test_a_bad_list_names_its_file_and_what_to_mend_and_stops_no_kiosk(home, text, said):
    site = home / "models"
    site.mkdir(parents=True)
    (site / "models.toml").write_text(text)
    with pytest.raises(BadList) as error:
        known_models("it", site)
    assert said in str(error.value)
    assert str(site / "models.toml") in str(error.value)
    found = open_ear("it")
    assert isinstance(found, Missing)
    assert said in found.mend

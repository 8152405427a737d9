"""The page for outsiders, held against tools that are not ours, and against our own verdicts.

SHA-256: coreutils' sha256sum. Ed25519: openssl, and RFC 8032, section 7.1, tests 1 and 2 (recalled
from memory; openssl agrees with the same signatures).
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from contextlib import closing

import pytest
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

from kiosk.clock import SystemClock
from kiosk.journal import keys
from kiosk.journal.backup import back_up, restore
from kiosk.journal.chain import COVERED, FIRST, row_hash
from kiosk.journal.checkpoints import Checkpoints, name_of
from kiosk.journal.store import FILE, Journal
from kiosk.journal.verify import export
from tests import tampering
from tests.verify_page import PAGE, PROGRAM, block, judged


@pytest.fixture(scope="module")
def one(tmp_path_factory):
    made = tampering.evident(tmp_path_factory.mktemp("one"))
    (made.folder / "key.pem").write_text(keys.as_pem(made.checkpoints[0].key))
    return made


def sha256sum(text: str) -> str:
    if shutil.which("sha256sum") is None:
        pytest.skip("sha256sum is not installed")
    done = subprocess.run(["sha256sum"], input=text.encode(), capture_output=True, check=True)
    return done.stdout.split()[0].decode()


def test_the_row_of_the_page_has_the_hash_that_the_page_gives():
    text = block("row")
    said = PAGE.read_text(encoding="utf-8").split("<!-- hash -->", 1)[1].split("`")[1]
    before, *fields = text.splitlines()
    assert sha256sum(text) == said
    assert row_hash(before, dict(zip(COVERED, fields, strict=True))) == said


def test_sha256sum_gives_the_hashes_of_a_real_journal(one):
    before = FIRST
    for row in one.rows[:5]:
        text = "".join(f"{value}\n" for value in (before, *(row[name] for name in COVERED)))
        before = sha256sum(text)
        assert before == row["hash"]


def alone(folder, *arguments) -> subprocess.CompletedProcess[str]:
    """Run the program in a folder and a process of its own, without the kiosk's code in reach."""
    (folder / "verify.py").write_text(PROGRAM, encoding="utf-8")
    return subprocess.run(
        [sys.executable, "-I", "verify.py", *map(str, arguments)],
        cwd=folder, capture_output=True, text=True, check=False, env={**os.environ, "LANG": "C"},
    )  # fmt: skip


def test_the_program_finds_a_journal_whole_and_names_its_head(one, tmp_path):
    done = alone(tmp_path, one.file, one.checkpoints_file, one.folder / "key.pem")
    assert done.returncode == 0, done.stderr
    assert done.stdout.splitlines()[-1] == f"WHOLE. 43 rows, head {one.rows[-1]['hash']}"
    assert done.stdout.count("is the one that was signed on") == len(one.checkpoints) == 6
    assert "kiosk" not in PROGRAM.split("import sys")[0]


def test_the_program_names_a_row_that_was_altered(one, tmp_path):
    rows = [dict(row) for row in one.rows]
    rows[11]["body"] = rows[11]["body"].replace("touch", "voice")
    tampering.put_in_place(one, tmp_path / "bad.db", rows)
    done = alone(tmp_path, tmp_path / "bad.db")
    assert done.returncode == 1
    assert done.stderr.startswith("NOT WHOLE. Row 12: ")


def test_the_program_reads_an_export_from_the_middle(one, tmp_path):
    file = tmp_path / "rows.jsonl"
    file.write_text("".join(f"{line}\n" for line in export(one.file, 20)), encoding="utf-8")
    assert judged(file, one.checkpoints_file, one.folder / "key.pem").startswith("WHOLE. 24 rows")
    file.write_text(file.read_text(encoding="utf-8").replace("step-2", "step-9", 1))
    assert judged(file).startswith("NOT WHOLE")


def test_the_program_follows_a_journal_to_another_device(one, tmp_path):
    back_up(one.file, tmp_path / "backup.db")
    restore(tmp_path / "backup.db", tmp_path / "new", SystemClock())
    with closing(Journal(tmp_path / "new")) as journal:
        made = Checkpoints(journal, SystemClock())
        tampering.write_sessions(journal, 1)
        made.close()
        points = tmp_path / "new" / name_of(journal.kiosk)
        key = keys.signing_key(tmp_path / "new")[0].public
    (tmp_path / "new.pem").write_text(keys.as_pem(key))
    assert judged(tmp_path / "new" / FILE, points, tmp_path / "new.pem").startswith("WHOLE. 52")
    assert judged(tmp_path / "new" / FILE, one.checkpoints_file, one.folder / "key.pem").startswith(
        "WHOLE. 52"
    )


def test_the_program_leaves_out_what_another_key_signed(one, tmp_path):
    stranger, _ = keys.signing_key(tmp_path)
    (tmp_path / "key.pem").write_text(keys.as_pem(stranger.public))
    done = alone(tmp_path, one.file, one.checkpoints_file, tmp_path / "key.pem")
    assert done.stdout.count("signed with another key") == 6


def test_the_program_refuses_a_forged_signature(one, tmp_path):
    forged = tmp_path / "points.jsonl"
    forged.write_text(one.checkpoints_file.read_text().replace('"seq":8,', '"seq":7,'))
    done = alone(tmp_path, one.file, forged, one.folder / "key.pem")
    assert done.returncode == 1
    assert "InvalidSignature" in done.stderr


def openssl_agrees(folder, pem: str, message: bytes, signature: str) -> bool:
    if shutil.which("openssl") is None:
        pytest.skip("openssl is not installed")
    (folder / "key.pem").write_text(pem)
    (folder / "message").write_bytes(message)
    (folder / "signature").write_bytes(bytes.fromhex(signature))
    done = subprocess.run(
        ["openssl", "pkeyutl", "-verify", "-pubin", "-inkey", "key.pem", "-rawin", "-in",
         "message", "-sigfile", "signature"],
        cwd=folder, capture_output=True, check=False,
    )  # fmt: skip
    return done.returncode == 0


def test_openssl_verifies_a_checkpoint_as_the_page_says(one, tmp_path):
    point = one.checkpoints[-1]
    lines = ("brushdown checkpoint 1", point.kiosk, point.seq, point.hash, point.utc)
    message = "".join(f"{line}\n" for line in lines).encode()
    pem = keys.as_pem(point.key)
    assert openssl_agrees(tmp_path, pem, message, point.signature)
    assert not openssl_agrees(tmp_path, pem, message.replace(b"43", b"44"), point.signature)


RFC_8032 = [
    (
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
        "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
        "",
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9"
        "b46bd25bf5f0595bbe24655141438e7a100b",
    ),
    (
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
        "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
        "72",
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f1"
        "1d8c387b2eaeb4302aeeb00d291612bb0c00",
    ),
]


@pytest.mark.parametrize(("secret", "public", "message", "signature"), RFC_8032)
def test_the_key_signs_as_rfc_8032_has_it(tmp_path, secret, public, message, signature):
    private = Ed25519PrivateKey.from_private_bytes(bytes.fromhex(secret))
    (tmp_path / keys.KEY_FILE).write_bytes(
        private.private_bytes(
            serialization.Encoding.PEM,
            serialization.PrivateFormat.PKCS8,
            serialization.NoEncryption(),
        )
    )
    key, made = keys.signing_key(tmp_path)
    assert not made
    assert (key.public, key.sign(bytes.fromhex(message))) == (public, signature)
    assert keys.signed_by(public, bytes.fromhex(message), signature)
    assert not keys.signed_by(public, bytes.fromhex(message) + b"x", signature)

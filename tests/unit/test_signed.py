"""Signing drafted texts: what was signed stays signed, what changed does not."""

from __future__ import annotations

import json
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime
from hashlib import sha256

import pytest

from kiosk.journal.store import Journal
from kiosk.languages.signed import (
    FILE,
    NOT_REVIEWED,
    REVIEWED,
    SignedFailed,
    drafts,
    sign,
    signatures,
    still_drafted,
    unsigned,
    withdraw,
)
from kiosk.languages.words import SOURCE, files_of, languages, message_text
from kiosk.procedure.load import load_library
from kiosk.procedure.site import load_site
from kiosk.shipped import shipped
from kiosk.shop import Shop
from tests.screens.scene import StillClock

LIBRARY = load_library(shipped("procedures"))
AT = datetime(2026, 11, 25, 9, 30, tzinfo=UTC)
CLOSE = "close-twin-gravity"
OTHERS = [one for one in languages() if one != SOURCE]


@pytest.mark.parametrize("language", OTHERS)
def test_each_file_of_messages_says_whether_it_was_reviewed(language):
    for file in files_of(language):
        lines = file.read_text("utf-8").splitlines()
        assert (REVIEWED in lines) != (NOT_REVIEWED in lines), file.name


@pytest.mark.parametrize("language", OTHERS)
def test_every_message_and_every_sentence_of_a_drafted_language_waits(language):
    found = drafts(language, LIBRARY)
    names = {one.name for one in found if one.part.endswith(".ftl")}
    told = {line.split(" = ")[0] for line in message_text(language).splitlines() if " = " in line}
    assert {one for one in told if one[0].islower()} <= names
    sentences = {(one.part, one.name): one for one in found}
    gloves = sentences[f"{CLOSE}.yaml", "phases/ready/steps/gloves/say"]
    assert gloves.english == "Put on clean gloves, an apron and eye protection."
    problems = {("common.yaml", f"problems/{one}/name") for one in LIBRARY.common.problems}
    assert problems <= set(sentences)
    assert all(one.english and one.text for one in found)
    assert drafts(SOURCE, LIBRARY) == ()


def test_a_text_is_known_by_the_sha_256_of_both_languages():
    """Against the hash itself, worked out beside."""
    one = drafts("es", LIBRARY)[0]
    both = one.english.encode() + b"\0" + one.text.encode()
    assert one.digest == sha256(both).hexdigest()[:16]


def test_signing_leaves_nothing_open_and_is_kept_with_date_and_name(tmp_path):
    texts = unsigned("es", LIBRARY, tmp_path)
    made = sign("es", texts, "Ana Prueba", AT, tmp_path)
    assert unsigned("es", LIBRARY, tmp_path) == ()
    assert signatures(tmp_path) == (made,)
    assert (made.by, made.at) == ("Ana Prueba", "2026-11-25T09:30:00+00:00")
    assert made.digest == sha256("\n".join(made.texts).encode()).hexdigest()
    assert still_drafted(("es", "ko"), LIBRARY, tmp_path) == ("ko",)
    assert (tmp_path / FILE).stat().st_mode & 0o077 == 0


def changed(language: str):
    """The library with another sentence in one step, in one language."""
    one = LIBRARY.procedures[CLOSE]
    phase = one.phases[0]
    step = phase.steps[1]
    say = {**step.say, language: step.say[language] + "!"}
    steps = (phase.steps[0], replace(step, say=say), *phase.steps[2:])
    phases = (replace(phase, steps=steps), *one.phases[1:])
    return replace(LIBRARY, procedures={**LIBRARY.procedures, CLOSE: replace(one, phases=phases)})


@pytest.mark.parametrize("language", ["es", SOURCE], ids=["its own text", "the English one"])
def test_a_text_that_changed_drops_out_and_is_listed(tmp_path, language):
    sign("es", unsigned("es", LIBRARY, tmp_path), "Ana", AT, tmp_path)
    (left,) = unsigned("es", changed(language), tmp_path)
    assert (left.part, left.name) == (f"{CLOSE}.yaml", "phases/ready/steps/gloves/say")
    assert still_drafted(("es",), changed(language), tmp_path, CLOSE) == ("es",)
    assert still_drafted(("es",), changed(language), tmp_path, "open-twin-gravity") == ()
    sign("es", (left,), "Beto", AT, tmp_path)
    assert unsigned("es", changed(language), tmp_path) == ()
    assert [one.by for one in signatures(tmp_path)] == ["Ana", "Beto"]


def test_a_changed_text_of_another_language_matters_to_nobody_else(tmp_path):
    sign("es", unsigned("es", LIBRARY, tmp_path), "Ana", AT, tmp_path)
    assert unsigned("es", changed("ko"), tmp_path) == ()


def test_signatures_can_be_taken_back(tmp_path):
    for language in ("es", "ko"):
        sign(language, unsigned(language, LIBRARY, tmp_path), "Ana", AT, tmp_path)
    assert withdraw("es", tmp_path) == 1
    assert withdraw("es", tmp_path) == 0
    assert still_drafted(("es", "ko"), LIBRARY, tmp_path) == ("es",)


def test_a_file_that_was_meddled_with_counts_for_nothing(tmp_path):
    sign("es", unsigned("es", LIBRARY, tmp_path)[:5], "Ana", AT, tmp_path)
    file = tmp_path / FILE
    told = json.loads(file.read_text(encoding="utf-8"))
    told[0]["texts"].append(unsigned("es", LIBRARY, tmp_path)[0].digest)
    for spoilt in (json.dumps(told), "[{}]", "no list", ""):
        file.write_text(spoilt, encoding="utf-8")
        with pytest.raises(SignedFailed, match=f"{FILE} counts for nothing.*To mend"):
            signatures(tmp_path)
        assert len(unsigned("es", LIBRARY, tmp_path)) == len(drafts("es", LIBRARY))
        assert still_drafted(("es",), LIBRARY, tmp_path) == ("es",)
        with pytest.raises(SignedFailed):
            sign("es", (), "Ana", AT, tmp_path)
        assert file.read_text(encoding="utf-8") == spoilt


def test_the_mark_goes_from_the_plans_of_a_shop_and_their_digest_stays(tmp_path):
    site = load_site(shipped("demo") / "site.toml")

    def plan():
        with closing(Journal(tmp_path)) as journal:
            return Shop(site, LIBRARY, journal, StillClock(), tmp_path).cards()[0].due[0]

    before = plan()
    assert "es" in before.drafted
    sign("es", unsigned("es", LIBRARY, tmp_path), "Ana", AT, tmp_path)
    assert set(before.drafted) - set(plan().drafted) == {"es"}
    assert plan().digest == before.digest

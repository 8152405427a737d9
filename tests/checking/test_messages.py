"""A message that a language lacks is found, with its file and its name."""

from __future__ import annotations

from pathlib import Path

import pytest

from kiosk.checking import messages
from kiosk.checking.messages import Files, lacking
from kiosk.languages.words import languages
from tests.checking.shop import SPOKEN, Told, shop

ENGLISH = {"walk.ftl": "left = Not yet. { $time } left.\nwait = Wait.\n"}


def told(text: str) -> list[str]:
    return [str(one) for one in lacking("es", {"walk.ftl": text}, ENGLISH)]


def test_the_same_messages_with_the_same_places_are_no_fault() -> None:
    assert told("wait = Espere.\nleft = Todavía no. Faltan { $time }.\n") == []
    counted = "left = { $time ->\n   *[other] Faltan { $time }\n}\nwait = Espere.\n"
    assert told(counted) == []


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("left = { $time }\n", "es/walk.ftl: wait: the message is not there in 'es'"),
        ("left = No.\nwait = x\n", "es/walk.ftl:1: left: 'es' fills in nothing, and 'en' $time"),
        ("left = { $time }\nwait = x\nold = y\n", "es/walk.ftl:3: old: there is no such message"),
        ("left = { $time }\nwait = x\n}\n", "es/walk.ftl:3: a message cannot be read"),
    ],
)
def test_each_fault_is_told_with_its_place(text: str, fault: str) -> None:
    (found,) = told(text)
    assert f"kiosk/languages/{fault}" in found


@pytest.mark.parametrize("language", [one for one in languages() if one != "en"])
def test_one_message_taken_out_of_a_shipped_file_is_found(
    language: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = messages._files

    def without(one: str) -> Files:
        found = dict(real(one))
        if one == language:
            found["walk.ftl"] = found["walk.ftl"].replace("\ntime-up = ", "\ntime-ups = ")
        return found

    monkeypatch.setattr(messages, "_files", without)
    names = {one.field for one in lacking(language, without(language), real("en"))}
    assert names == {"time-up", "time-ups"}


def test_the_check_of_procedures_tells_it_and_fails(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = shop(tmp_path)
    assert "missing-message" not in Told(folder).text
    english = {"walk.ftl": "gone = Gone.\n"}
    monkeypatch.setattr(messages, "_files", lambda one: english if one == "en" else {})
    found = Told(folder)
    assert found.status == 1
    assert found.errors == {"missing-message"}
    assert found.text.count("gone: the message is not there") == len(SPOKEN) - 1


def test_a_sentence_that_lacks_a_language_of_the_kiosk_is_told(tmp_path: Path) -> None:
    folder = shop(tmp_path, evening=(", es: Desenchufe.", ""))
    found = Told(folder)
    assert "isolate-plug.say: the sentence is not there in: es." in found.text
    assert "missing-translation" in found.errors

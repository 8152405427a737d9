"""The site's setting of the ear: off by default, and a key that no button uses."""

from __future__ import annotations

from pathlib import Path

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.site import TAKEN_KEYS, Hearing, load_site
from kiosk.screens import faces
from kiosk.shipped import shipped


def site_with(folder: Path, table: str) -> Path:
    path = folder / "site.toml"
    text = (shipped("demo") / "site.toml").read_text("utf-8")
    path.write_text(f"{text}\n{table}\n", encoding="utf-8")
    return path


def test_the_ear_listens_all_the_time_where_nothing_is_said():
    site = load_site(shipped("demo") / "site.toml")
    assert site.hearing == Hearing(push_to_talk=False, key="t")


@pytest.mark.parametrize("key", ["t", "f9", "pagedown"])
def test_push_to_talk_is_a_setting(tmp_path: Path, key: str):
    path = site_with(tmp_path, f'[hearing]\npush_to_talk = true\nkey = "{key}"')
    assert load_site(path).hearing == Hearing(push_to_talk=True, key=key)


@pytest.mark.parametrize(
    ("table", "says"),
    [
        ('key = "y"', "the key 'y' is that of a button"),
        ('key = "pedal"', "'pedal' is no key to talk with"),
        ('key = "T"', "'T' is no key to talk with"),
        ('pedal = "t"', "hearing.pedal"),
    ],
)
def test_a_key_that_will_not_do_is_named(tmp_path: Path, table: str, says: str):
    with pytest.raises(FaultyFile) as caught:
        load_site(site_with(tmp_path, f"[hearing]\n{table}"))
    assert says in str(caught.value)


def test_no_button_uses_the_key_and_every_button_letter_is_known():
    letters = {key for key in faces._KEYS.values() if len(key) == 1}
    assert letters <= TAKEN_KEYS
    assert Hearing().key not in TAKEN_KEYS

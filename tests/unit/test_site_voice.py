"""The site's setting of the voice: as shipped by default, each person's own before all else."""

from __future__ import annotations

from pathlib import Path

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.site import Site, load_site
from kiosk.procedure.site_voice import Manner, Voice
from kiosk.shipped import shipped
from kiosk.speaking.tone import Tone, tones_of


def site_with(folder: Path, table: str, person: str = "") -> Site:
    path = folder / "site.toml"
    text = (shipped("demo") / "site.toml").read_text("utf-8")
    text = text.replace('id = "p2"', f'id = "p2"\n{person}')
    path.write_text(f"{text}\n{table}\n", encoding="utf-8")
    return load_site(path)


def test_nothing_said_leaves_the_voice_as_it_is():
    site = load_site(shipped("demo") / "site.toml")
    assert site.voice == Voice()
    assert tones_of(site)("es", "p2") == Tone(rate=100, pitch=100, volume=100)


def test_a_person_goes_before_a_language_and_a_language_before_the_place(tmp_path: Path):
    table = "[voice]\nrate = 110\nvolume = 150\npitch = 90\n[voice.es]\nrate = 80\nvolume = 120"
    tones = tones_of(site_with(tmp_path, table, "voice = { rate = 70 }"))
    assert tones("en", "p3") == Tone(rate=110, pitch=90, volume=150)
    assert tones("es", "p3") == Tone(rate=80, pitch=90, volume=120)
    assert tones("es", "p2") == Tone(rate=70, pitch=90, volume=120)
    assert tones("es", "") == tones("es", "nobody on the list") == tones("es", "p3")


def test_the_tables_are_read(tmp_path: Path):
    site = site_with(tmp_path, "[voice]\nrate = 110\n[voice.ko]\npitch = 120")
    assert site.voice == Voice(everywhere=Manner(rate=110), languages={"ko": Manner(pitch=120)})


@pytest.mark.parametrize(
    ("table", "person", "says"),
    [
        ("[voice]\nrate = 59", "", r"voice\.rate.*59 is not from 60 to 160"),
        ("[voice]\nrate = 161", "", r"voice\.rate.*161 is not from 60 to 160"),
        ("[voice.ko]\npitch = 151", "", r"voice\.ko\.pitch.*151"),
        ("[voice.fr]\npitch = 100", "", r"voice\.fr.*not among the site's languages"),
        ("", "voice = { volume = 5 }", r"people\.p2\.voice\.volume.*5 is not from 20 to 200"),
        ("[voice]\nspeed = 90", "", "'speed' is not known here"),
        ('[voice.es]\nrate = "slow"', "", "must be a whole number"),
        ("[voice]\nrate = 90.5", "", "must be a whole number"),
    ],
)
def test_a_wrong_figure_is_named_with_its_place(tmp_path: Path, table: str, person: str, says: str):
    with pytest.raises(FaultyFile, match=says):
        site_with(tmp_path, table, person)

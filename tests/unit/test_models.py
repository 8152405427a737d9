"""An ear is opened when its model is there; when it is not, the worker is told what to do."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from kiosk.listening.model_list import Model, known_models
from kiosk.listening.models import MODELS, Missing, model_folders, open_ear, place_of
from kiosk.shipped import shipped

LISTED = known_models()
WHOLE = ("am/final.mdl", "conf/model.conf", "conf/mfcc.conf", "graph/HCLG.fst")


@pytest.fixture(autouse=True)
def data_folder(tmp_path, monkeypatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path / "data"))
    return tmp_path / "data"


def vosk_model(**more: str) -> Model:
    parts = {"language": "en", "engine": "vosk", "name": "small", "licence": "MIT"}
    return Model(**{**parts, **more})


def make_whole(folder: Path) -> None:
    for name in WHOLE:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(b"x")


@pytest.mark.parametrize("model", LISTED, ids=lambda model: f"{model.language}-{model.engine}")
def test_every_listed_model_says_where_it_comes_from_and_what_it_may_be_used_for(model):
    assert bool(model.wheel) != bool(model.url)
    assert bool(model.wheel) == bool(model.extra)
    assert model.licence
    assert model.bytes > 1_000_000
    assert model.tag in ("SEEN", "PUB", "MEM")
    if model.url:
        assert model.url.startswith("https://")
        assert model.url.endswith(f"/{model.name}.zip")
        assert re.fullmatch(r"[0-9a-f]{64}|", model.sha256)


def test_the_listed_languages_each_have_a_model():
    assert {model.language for model in LISTED} >= {"en", "es", "zh", "vi", "fr", "pt", "ko"}


@pytest.mark.parametrize("model", [one for one in LISTED if one.wheel], ids=lambda one: one.name)
def test_the_size_of_a_model_from_pip_is_that_of_its_folder(model):
    place = place_of(model, ())
    if place is None:
        pytest.skip(f"{model.name} is not installed")
    files = (one for one in place.rglob("*") if one.is_file() and "__pycache__" not in one.parts)
    assert sum(one.stat().st_size for one in files) == model.bytes


def test_a_folder_model_is_looked_for_in_each_place_in_turn(tmp_path):
    model = vosk_model()
    places = (tmp_path / "shipped", tmp_path / "home")
    assert place_of(model, places) is None
    make_whole(tmp_path / "home" / "small")
    assert place_of(model, places) == tmp_path / "home" / "small"
    make_whole(tmp_path / "shipped" / "small")
    assert place_of(model, places) == tmp_path / "shipped" / "small"


def test_a_whole_folder_goes_before_a_broken_one(tmp_path):
    places = (tmp_path / "shipped", tmp_path / "home")
    (places[0] / "small").mkdir(parents=True)
    assert place_of(vosk_model(), places) == places[0] / "small"
    make_whole(places[1] / "small")
    assert place_of(vosk_model(), places) == places[1] / "small"


def test_what_was_added_serves_another_data_folder_too(tmp_path, data_folder):
    demo = data_folder / "demo"
    assert model_folders(demo) == (shipped(MODELS), demo / MODELS, data_folder / MODELS)
    assert model_folders() == (shipped(MODELS), data_folder / MODELS)


def test_a_wheel_that_is_not_installed_is_no_place():
    assert place_of(vosk_model(wheel="no-such-wheel-anywhere", inside="model"), ()) is None


def test_a_wheel_is_found_by_its_metadata_without_importing_it():
    found = place_of(vosk_model(wheel="pytest", inside="pytest"), ())
    assert found is not None
    assert (found / "__init__.py").is_file()


def test_a_language_that_is_not_listed_is_a_sentence():
    found = open_ear("xx")
    assert isinstance(found, Missing)
    assert "'xx'" in found.mend


def test_a_language_without_its_model_says_what_to_install(tmp_path: Path):
    found = open_ear("es", tmp_path)
    if not isinstance(found, Missing):
        pytest.skip("a Spanish model is unpacked here")
    assert "'es'" in found.mend
    assert "kiosk voice add es" in found.mend


@pytest.mark.parametrize("inside", ["", "conf", "am", "graph"])
def test_a_model_unpacked_by_half_is_named_and_nothing_is_written_over_the_screen(
    tmp_path, inside, capfd
):
    [model] = known_models("es")
    if place_of(model, (shipped(MODELS),)) is not None:
        pytest.skip("a Spanish model is unpacked here")
    (tmp_path / MODELS / model.name / inside).mkdir(parents=True)
    found = open_ear("es", tmp_path)
    assert isinstance(found, Missing)
    assert model.name in found.mend
    assert "am/final.mdl" in found.mend
    assert capfd.readouterr() == ("", "")


def test_a_model_that_looks_whole_and_cannot_be_loaded_is_named(tmp_path):
    [model] = known_models("es")
    make_whole(tmp_path / MODELS / model.name)
    found = open_ear("es", tmp_path)
    assert isinstance(found, Missing)
    assert f"{model.name} cannot be loaded" in found.mend

"""An ear is opened when its model is there; when it is not, the worker is told what to do."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from kiosk.listening.models import Missing, Model, known_models, open_ear, place_of
from kiosk.shipped import shipped

LISTED = tomllib.loads((shipped("models") / "models.toml").read_text(encoding="utf-8"))["model"]


def folder_model(**more: str) -> Model:
    parts = {"language": "en", "engine": "vosk", "name": "small", "mend": "unpack it"}
    return Model(**{**parts, **more})


@pytest.mark.parametrize(
    "table", LISTED, ids=lambda table: f"{table['language']}-{table['engine']}"
)
def test_every_listed_model_says_where_it_comes_from_and_what_it_may_be_used_for(table):
    assert table["engine"] in ("whisper", "vosk")
    assert bool(table.get("wheel")) != bool(table.get("folder"))
    assert table["mend"]
    assert table["licence"]
    assert table["size_mb"] > 0


def test_models_are_found_by_language_in_the_order_of_the_list(tmp_path):
    listed = tmp_path / "models.toml"
    listed.write_text(
        "".join(
            f'[[model]]\nlanguage="{language}"\nengine="vosk"\nfolder="{folder}"\nmend="m"\n'
            for language, folder in [("en", "one"), ("es", "two"), ("en", "three")]
        )
    )
    assert [model.name for model in known_models("en", listed)] == ["one", "three"]
    assert known_models("ko", listed) == []


def test_a_folder_model_is_looked_for_in_each_place_in_turn(tmp_path):
    model = folder_model(folder="small")
    places = (tmp_path / "shipped", tmp_path / "home")
    assert place_of(model, places) is None
    (tmp_path / "home" / "small").mkdir(parents=True)
    assert place_of(model, places) == tmp_path / "home" / "small"
    (tmp_path / "shipped" / "small").mkdir(parents=True)
    assert place_of(model, places) == tmp_path / "shipped" / "small"


def test_a_wheel_that_is_not_installed_is_no_place():
    assert place_of(folder_model(wheel="no-such-wheel-anywhere", inside="model"), ()) is None


def test_a_wheel_is_found_by_its_metadata_without_importing_it():
    found = place_of(folder_model(wheel="pytest", inside="pytest"), ())
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
    assert "unpack the folder" in found.mend


@pytest.mark.parametrize("inside", ["", "conf", "am", "graph"])
def test_a_model_unpacked_by_half_is_named_and_nothing_is_written_over_the_screen(
    tmp_path, inside, capfd
):
    [model] = known_models("es")
    if place_of(model, (shipped("models"),)) is not None:
        pytest.skip("a Spanish model is unpacked here")
    (tmp_path / "models" / model.folder / inside).mkdir(parents=True)
    found = open_ear("es", tmp_path)
    assert isinstance(found, Missing)
    assert model.name in found.mend
    assert "unpack" in found.mend
    assert capfd.readouterr() == ("", "")

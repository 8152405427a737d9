"""The schemas beside the procedures: fresh, met by every shipped file, and as strict as the loader.

The judge here is the `jsonschema` library, which knows nothing of the typed records.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from copy import deepcopy
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load import load_procedure
from kiosk.procedure.schema import FOLDER, schemas, write
from kiosk.procedure.yaml_source import read_yaml

PROCEDURES = Path(__file__).parents[2] / "procedures"
SHIPPED = sorted(PROCEDURES.glob("**/*.yaml"))
KIND_OF_FILE = {
    "machines": "machine-kind.schema.json",
    "limits": "limits.schema.json",
    "laboratory": "authorities.schema.json",
}
SCHEMAS = schemas()
CLOSING = PROCEDURES / "close-twin-gravity.yaml"


def schema_name(path: Path) -> str:
    if path.name == "common.yaml":
        return "common.schema.json"
    if path.parent.name == "review":
        return f"{path.stem}.schema.json"
    return KIND_OF_FILE.get(path.parent.name, "procedure.schema.json")


def errors(data: Any, name: str) -> list[str]:
    found = Draft202012Validator(SCHEMAS[name]).iter_errors(data)
    return [f"{one.json_path}: {one.message}" for one in found]


@pytest.mark.parametrize("name", sorted(SCHEMAS))
def test_the_kept_schema_is_the_one_that_the_records_give(name):
    kept = json.loads((PROCEDURES / FOLDER / name).read_text(encoding="utf-8"))
    assert kept == SCHEMAS[name], "stale: run 'python -m kiosk.procedure.schema'"


def test_no_other_schema_is_kept():
    assert {path.name for path in (PROCEDURES / FOLDER).iterdir()} == set(SCHEMAS)


def test_the_files_are_written_where_they_are_wanted(tmp_path):
    written = write(tmp_path / "new")
    assert {path.name for path in written} == set(SCHEMAS)
    assert all(json.loads(path.read_text(encoding="utf-8")) for path in written)


@pytest.mark.parametrize("name", sorted(SCHEMAS))
def test_each_is_a_schema_of_its_draft(name):
    schema = SCHEMAS[name]
    assert schema["$schema"] == Draft202012Validator.META_SCHEMA["$id"]
    Draft202012Validator.check_schema(schema)


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_every_shipped_file_meets_its_schema(path):
    assert errors(read_yaml(path).data, schema_name(path)) == []


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_every_shipped_file_leads_an_editor_to_its_schema(path):
    first = path.read_text(encoding="utf-8").splitlines()[0]
    found = re.fullmatch(r"# yaml-language-server: \$schema=(\S+)", first)
    assert found is not None
    named = (path.parent / found[1]).resolve()
    assert named == (PROCEDURES / FOLDER / schema_name(path)).resolve()


def test_no_file_may_say_what_the_loader_fills_in():
    schema = SCHEMAS["procedure.schema.json"]
    assert "file" not in schema["properties"]
    assert "line" not in schema["$defs"]["StepBlock"]["properties"]


def test_docstrings_of_fields_are_what_an_editor_shows():
    schema = SCHEMAS["procedure.schema.json"]
    when = schema["$defs"]["StepBlock"]["properties"]["when"]
    assert when["description"].startswith("Options that this step belongs to")
    corrective = schema["$defs"]["StepBlock"]["properties"]["corrective"]
    assert "out of its limit" in corrective["description"]
    assert "hazard statement" in schema["$defs"]["Caution"]["description"]


Damage = Callable[[dict[str, Any]], None]


def misspelt_field(step: dict[str, Any]) -> None:
    step["requiers"] = step.pop("requires")


def no_sentence(step: dict[str, Any]) -> None:
    del step["say"]


def wrong_signal_word(step: dict[str, Any]) -> None:
    step["caution"]["signal"] = "careful"


def bare_sentence(step: dict[str, Any]) -> None:
    step["say"] = "Lift off the lid."


def requirement_not_in_a_list(step: dict[str, Any]) -> None:
    step["requires"] = "guards on"


def line_of_its_own(step: dict[str, Any]) -> None:
    step["caution"]["line"] = 3


@pytest.mark.parametrize(
    ("damage", "told"),
    [
        (misspelt_field, "requiers"),
        (no_sentence, "say"),
        (wrong_signal_word, "careful"),
        (bare_sentence, "Lift off the lid."),
        (requirement_not_in_a_list, "guards on"),
        (line_of_its_own, "line"),
    ],
)
def test_what_the_loader_refuses_the_schema_refuses(tmp_path, damage: Damage, told: str):
    whole = read_yaml(CLOSING).data
    damaged = deepcopy(whole)
    steps = [step for phase in damaged["phases"] for step in phase["steps"]]
    damage(next(step for step in steps if "caution" in step and "requires" in step))

    assert load(tmp_path, whole) == []
    assert load(tmp_path, damaged)
    # A wrong value inside a caution is told by the branch of the schema that names it.
    found = Draft202012Validator(SCHEMAS["procedure.schema.json"]).iter_errors(damaged)
    assert any(told in told_by for one in found for told_by in messages(one))


def messages(error: Any) -> list[str]:
    return [error.message, *(text for inner in error.context for text in messages(inner))]


def load(folder: Path, data: dict[str, Any]) -> list[str]:
    """Load the data as a file; return the loader's faults. JSON is YAML 1.2."""
    file = folder / f"{data['id']}.yaml"
    file.write_text(json.dumps(data, default=float), encoding="utf-8")
    try:
        load_procedure(file)
    except FaultyFile as error:
        return [str(fault) for fault in error.faults]
    return []

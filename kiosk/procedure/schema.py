"""JSON Schemas of the YAML files, made from the typed records, for editors and other tools.

The loader stays the judge. Where it reads a bare number as text, or a quoted number as a number,
the schema asks for the plain form.
"""

from __future__ import annotations

import ast
import inspect
import json
import sys
from pathlib import Path
from typing import Any

from pydantic import TypeAdapter
from pydantic.json_schema import GenerateJsonSchema, JsonSchemaValue

from kiosk.procedure import model, review_rules
from kiosk.shipped import shipped
from kiosk.trade import authorities, sampling_plan, solution_table

DIALECT = "https://json-schema.org/draft/2020-12/schema"

FOLDER = "schemas"
"""Folder of the schema files, beside the procedures."""

_RECORDS: dict[str, type] = {
    "procedure.schema.json": model.Procedure,
    "machine-kind.schema.json": model.MachineKind,
    "limits.schema.json": model.LimitsProfile,
    "common.schema.json": model.Common,
    "authorities.schema.json": authorities.Authorities,
    "deviations.schema.json": review_rules.DeviationRules,
    "schedule.schema.json": review_rules.Schedule,
    "kind-schedule.schema.json": review_rules.KindSchedule,
}
_FILLED_IN = ("line", "file")
"""Fields that the loader fills in; no file may have them."""
_TEXT = "Text"


class _Plain(GenerateJsonSchema):
    """Numbers as numbers, and no titles that only repeat a field's name."""

    def decimal_schema(self, schema: Any) -> JsonSchemaValue:  # noqa: ARG002
        """Return the schema of a Decimal: YAML has one kind of number."""
        return {"type": "number"}

    def field_title_should_be_set(self, schema: Any) -> bool:  # noqa: ARG002
        """Return False: a field's key is its title."""
        return False


def schemas() -> dict[str, dict[str, Any]]:
    """Return the schema of each kind of file, by the schema's file name (draft 2020-12)."""
    notes = _notes()
    return {name: _schema(record, notes) for name, record in _RECORDS.items()}


def write(folder: Path) -> list[Path]:
    """Write the schema files into `folder`; return their paths. Raises OSError."""
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for name, schema in schemas().items():
        path = folder / name
        path.write_text(text(schema), encoding="utf-8")
        written.append(path)
    return written


def text(schema: dict[str, Any]) -> str:
    """Return a schema as its file has it."""
    return json.dumps(schema, indent=2, ensure_ascii=False) + "\n"


Notes = dict[str, dict[str, tuple[str, str]]]
"""Class name to field name to (annotation, docstring), as the source of the records has them."""


def _notes() -> Notes:
    found: Notes = {"": {}}
    body = [
        node
        for module in (model, review_rules, solution_table, authorities, sampling_plan)
        for node in ast.parse(inspect.getsource(module)).body
    ]
    for place, node in enumerate(body):
        if isinstance(node, ast.ClassDef):
            found[node.name] = {
                field.target.id: (ast.unparse(field.annotation), _string_after(node.body, i))
                for i, field in enumerate(node.body)
                if isinstance(field, ast.AnnAssign) and isinstance(field.target, ast.Name)
            }
        elif isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name):
            found[""][node.targets[0].id] = ("", _string_after(body, place))
    return found


def _string_after(body: list[ast.stmt], place: int) -> str:
    """Return the docstring that stands below the statement at `place`, on one line, or ''."""
    below = body[place + 1] if place + 1 < len(body) else None
    if isinstance(below, ast.Expr) and isinstance(below.value, ast.Constant):
        return " ".join(str(below.value.value).split())
    return ""


def _schema(record: type, notes: Notes) -> dict[str, Any]:
    made = TypeAdapter(record).json_schema(schema_generator=_Plain)
    shared = made.pop("$defs", {})
    for name, one in {record.__name__: made, **shared}.items():
        if "properties" in one:
            _annotate(one, notes[name])
    shared[_TEXT] = {
        "type": "object",
        "additionalProperties": {"type": "string"},
        "description": notes[""][_TEXT][1],
    }
    return {"$schema": DIALECT, **made, "$defs": dict(sorted(shared.items()))}


def _annotate(record: dict[str, Any], fields: dict[str, tuple[str, str]]) -> None:
    """Drop what the loader fills in, name the sentences, and carry over the docstrings."""
    for name in _FILLED_IN:
        record["properties"].pop(name, None)
    for name, one in record["properties"].items():
        annotation, description = fields[name]
        if annotation.split(" | ")[0] == _TEXT:
            default = {key: one[key] for key in ("default",) if key in one}
            optional = "None" in annotation
            sentence = {"$ref": f"#/$defs/{_TEXT}"}
            one.clear()
            one.update({"anyOf": [sentence, {"type": "null"}]} if optional else sentence, **default)
        if description:
            one["description"] = description


if __name__ == "__main__":
    for path in write(shipped("procedures") / FOLDER):
        sys.stdout.write(f"{path}\n")

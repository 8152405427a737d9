"""What is wrong with one field of a site file, and how to mend it, from what the reader found."""

from __future__ import annotations

import difflib
from collections.abc import Mapping
from dataclasses import Field, fields, is_dataclass
from typing import Any, Final, get_args, get_type_hints

from kiosk.procedure.fault import Fault

MISSING: Final = "missing"
SHAPE: Final = "shape"
_ENDS: Final = "the product's label, the machine's manual or demo/site.toml show what belongs here"


def site_fault(file: str, record: type, error: Mapping[str, Any]) -> Fault:
    """Return the fault that one error of the reader means; `record` is what the file holds.

    Its rule is MISSING where something is left out, else SHAPE.
    """
    where = tuple(error["loc"])
    name = str(where[-1]) if where else "the file"
    given, context = error.get("input"), error.get("ctx", {})
    place = ".".join(str(part + 1) if isinstance(part, int) else part for part in where)
    what, mend, rule = str(error["msg"]).lower(), _ENDS, SHAPE
    match error["type"]:
        case "missing" | "missing_argument" | "missing_keyword_only_argument":
            what, rule = f"'{name}' is missing", MISSING
            mend = f"add {_line_for(record, where)}, or answer it in 'kiosk setup'"
        case "extra_forbidden" | "unexpected_keyword_argument":
            known = [one.name for one in _fields_at(record, where[:-1])]
            near = difflib.get_close_matches(name, known, 1)
            what = f"'{name}' is not known here"
            mend = f"write '{near[0]}'" if near else f"use one of: {', '.join(sorted(known))}"
        case "enum" | "literal_error":
            what = f"'{given}' is not one of the allowed words"
            mend = f"use {context.get('expected', 'an allowed word')}"
        case "dataclass_type" | "dict_type" | "mapping_type":
            what, mend = f"'{name}' must be a table", f"write a [{name}] table, with fields below"
        case "tuple_type" | "list_type":
            what = f"'{name}' must be a list"
            mend = f'write {name} = ["one", "two"], or a [[{name}]] table for each'
        case "string_type":
            what, mend = f"'{name}' must be text", "put it in quotation marks"
        case "bool_type" | "bool_parsing":
            what = f"'{name}' must be true or false"
            mend = "write true or false, without quotation marks"
        case "int_type" | "int_parsing" | "int_from_float" | "int_parsing_size":
            what, mend = f"'{name}' must be a whole number", "write it in digits, as 3"
        case "decimal_type" | "decimal_parsing" | "is_instance_of":
            what, mend = f"'{name}' must be a number", "write it in digits, as 0.554"
    return Fault(file, 0, place, what, mend, rule)


def _line_for(record: type, where: tuple[Any, ...]) -> str:
    """Return how a missing field is written."""
    name = str(where[-1])
    field = next((one for one in _fields_at(record, where[:-1]) if one.name == name), None)
    kind = "" if field is None else str(field.type)
    if kind.startswith("tuple[str"):
        return f'{name} = ["..."]'
    if kind.startswith("tuple["):
        return f"a [[{name}]] table"
    if kind.startswith("Decimal"):
        return f"{name} = and a number"
    return f'{name} = "..."' if kind.startswith("str") else f"a [{name}] table"


def _fields_at(record: Any, where: tuple[Any, ...]) -> list[Field[Any]]:
    """Return the fields that may stand at a path."""
    for part in where:
        if isinstance(part, int):
            continue
        hint = get_type_hints(record).get(part)
        record = next((one for one in (hint, *get_args(hint)) if is_dataclass(one)), None)
        if record is None:
            return []
    return list(fields(record))

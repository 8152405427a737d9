"""Rules for a copied file: what was changed of it since, beside the file as it was copied."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, NamedTuple

from kiosk.checking.subject import Subject, blocks
from kiosk.languages.words import SOURCE
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import load_procedure
from kiosk.procedure.own_kinds import twin
from kiosk.procedure.yaml_source import Where, YamlSource


class _Said(NamedTuple):
    """A sentence in its languages, and its path into the file."""

    where: Where
    text: Mapping[str, str]


def translation_behind(subject: Subject) -> Iterator[Fault]:
    """The English of a copied sentence was changed, and another language was left as it was."""
    for file, source, before in _copies(subject):
        then = _sentences(before.data)
        for name, said in _sentences(source.data).items():
            old = then.get(name)
            if old is None or old.text[SOURCE] == said.text[SOURCE]:
                continue
            for language in subject.languages:
                text = said.text.get(language)
                if language != SOURCE and text is not None and text == old.text.get(language):
                    what = f"the English was changed, and '{language}' still says what it said"
                    mend = f"say in '{language}' what the English says now"
                    yield subject.fault(file, (*said.where, language), what, mend)


def hold_taken_out(subject: Subject) -> Iterator[Fault]:
    """A hold that was copied is a hold no more."""
    for procedure in subject.procedures():
        before = twin(Path(procedure.file))
        if not before.is_file():
            continue
        try:
            copied = load_procedure(before)
        except FaultyFile:
            continue
        held = {block.id for _, block in blocks(procedure) if block.hold}
        for _, block in blocks(copied):
            if block.hold and block.id not in held:
                what = f"the hold '{block.id}', which was copied, is not here any more"
                mend = f"put it back as it stands in {before}, unless the machine needs none here"
                yield subject.fault(procedure.file, ("phases",), what, mend)


def _copies(subject: Subject) -> Iterator[tuple[str, YamlSource, YamlSource]]:
    """Yield each file that was copied: its path, as it is, and as it was."""
    for (sort, _), file in subject.files.items():
        before = twin(Path(file))
        if sort in ("procedure", "kind") and before.is_file():
            try:
                yield file, subject.sources[file], subject.sources[str(before)]
            except FaultyFile:
                continue


def _sentences(data: Any, where: Where = (), name: tuple[str, ...] = ()) -> dict[object, _Said]:
    """Return the sentences of a file by their names: a step's by its id, wherever it stands."""
    if isinstance(data, dict):
        if isinstance(data.get(SOURCE), str):
            return {name: _Said(where, data)}
        inner = [(str(key), key, one) for key, one in data.items()]
    elif isinstance(data, list):
        inner = [
            (str(one.get("id", n)) if isinstance(one, dict) else str(n), n, one)
            for n, one in enumerate(data)
        ]
    else:
        return {}
    found: dict[object, _Said] = {}
    for called, key, one in inner:
        # Steps are moved from phase to phase: of where one stands its own id is enough.
        own = isinstance(one, dict) and isinstance(key, int) and "id" in one
        found |= _sentences(one, (*where, key), (called,) if own else (*name, called))
    return found

"""Which texts a fluent speaker has signed in this shop, and which nobody has checked yet."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import asdict, dataclass, fields, is_dataclass
from datetime import datetime
from functools import lru_cache
from hashlib import sha256
from pathlib import Path
from typing import Any, Final

from fluent.syntax import FluentParser
from fluent.syntax.ast import Message
from pydantic import TypeAdapter, ValidationError

from kiosk.home import write_private
from kiosk.languages.words import SOURCE, files_of
from kiosk.procedure.load import Library
from kiosk.procedure.load_review import DEVIATIONS, SCHEDULE, load_deviation_rules, load_schedule

FILE: Final = "signed-texts.json"

REVIEWED: Final = "### reviewed: yes"
NOT_REVIEWED: Final = "### reviewed: no"
"""What a file of messages says of itself; one that says neither is taken for a draft."""

_SHORT: Final = 16
"""Hexadecimal digits by which a text is known; 64 bits tell a hundred thousand texts apart."""


class SignedFailed(Exception):
    """The signatures cannot be read or written; the message says why and how to mend it."""


@dataclass(frozen=True, slots=True)
class Draft:
    """One text that was drafted by machine, beside the English one that it renders."""

    part: str
    """The file that it stands in: `walk.ftl`, `close-twin-gravity.yaml`, `common.yaml`."""
    name: str
    """The message, or the place in the file."""
    english: str
    text: str

    @property
    def digest(self) -> str:
        """What both texts are known by: when either changes, nobody has checked the pair."""
        return sha256(f"{self.english}\0{self.text}".encode()).hexdigest()[:_SHORT]


@dataclass(frozen=True, slots=True)
class Signature:
    """One person's word that texts of a language are right."""

    language: str
    by: str
    """The name of the fluent speaker."""
    at: str
    """When, in ISO 8601 with the offset."""
    digest: str
    """SHA-256 of the sorted digests of the texts."""
    texts: tuple[str, ...]
    """The digests of the very texts that were signed, sorted."""

    @property
    def holds(self) -> bool:
        """True when the list is the one that was signed."""
        return self.digest == _digest(self.texts)


def drafts(language: str, library: Library, procedure: str = "") -> tuple[Draft, ...]:
    """Return every text of a language that was drafted by machine, file after file.

    With the id of a procedure, other procedures and the supervisor's rules are left out.
    """
    if language == SOURCE:
        return ()
    return (*_messages(language), *_sentences(language, library, procedure))


def unsigned(
    language: str, library: Library, folder: Path, procedure: str = ""
) -> tuple[Draft, ...]:
    """Return the drafts that nobody has signed as they stand, as `drafts` does.

    `folder` is the shop's data folder. Signatures that cannot be read count for nothing.
    """
    try:
        found = signatures(folder)
    except SignedFailed:
        found = ()
    kept = {text for one in found if one.language == language for text in one.texts}
    return tuple(one for one in drafts(language, library, procedure) if one.digest not in kept)


def still_drafted(
    languages: Iterable[str], library: Library, folder: Path, procedure: str = ""
) -> tuple[str, ...]:
    """Return those of the drafted languages in which some text was not signed."""
    try:
        signed = {one.language for one in signatures(folder)}
    except SignedFailed:
        signed = set()
    return tuple(
        one for one in languages if one not in signed or unsigned(one, library, folder, procedure)
    )


def signatures(folder: Path) -> tuple[Signature, ...]:
    """Return the signatures of a data folder, the oldest first. Raises SignedFailed."""
    file = folder / FILE
    try:
        found = _FILE.validate_json(file.read_bytes())
    except FileNotFoundError:
        return ()
    except (OSError, ValidationError, RecursionError) as error:
        raise _failed(file, "it cannot be read") from error
    if not all(one.holds for one in found):
        raise _failed(file, "its list of texts is not the one that was signed")
    return found


def sign(language: str, texts: Iterable[Draft], by: str, at: datetime, folder: Path) -> Signature:
    """Keep somebody's word that texts are right. Raises SignedFailed."""
    known = tuple(sorted({one.digest for one in texts}))
    made = Signature(language, by, at.isoformat(timespec="seconds"), _digest(known), known)
    _write(folder, (*signatures(folder), made))
    return made


def withdraw(language: str, folder: Path) -> int:
    """Forget the signatures of a language; return how many there were. Raises SignedFailed."""
    found = signatures(folder)
    left = tuple(one for one in found if one.language != language)
    if len(left) < len(found):
        _write(folder, left)
    return len(found) - len(left)


_FILE: Final = TypeAdapter(tuple[Signature, ...])


def _failed(file: Path, why: str) -> SignedFailed:
    mend = "put a backup of it back, or move it away and sign anew with 'kiosk texts sign'"
    return SignedFailed(f"{file} counts for nothing: {why}. To mend: {mend}.")


def _write(folder: Path, found: tuple[Signature, ...]) -> None:
    try:
        text = json.dumps([asdict(one) for one in found], ensure_ascii=False, indent=1)
        write_private(folder / FILE, text)
    except OSError as error:
        raise SignedFailed(f"{folder / FILE} cannot be written: {error}") from error


def _digest(texts: tuple[str, ...]) -> str:
    return sha256("\n".join(texts).encode()).hexdigest()


# The kiosk's own messages.


@lru_cache
def _messages(language: str) -> tuple[Draft, ...]:
    """Return the messages of the files that do not say of themselves that they were reviewed."""
    english = {
        name: text for one in files_of(SOURCE) for name, text in _entries(one.read_text("utf-8"))
    }
    return tuple(
        Draft(one.name, name, english.get(name, ""), text)
        for one in files_of(language)
        if REVIEWED not in (whole := one.read_text("utf-8")).splitlines()
        for name, text in _entries(whole)
    )


def _entries(text: str) -> Iterator[tuple[str, str]]:
    """Yield each message's name, and its value as it is written."""
    for entry in FluentParser().parse(text).body:
        if isinstance(entry, Message) and entry.value is not None and entry.value.span is not None:
            yield entry.id.name, text[entry.value.span.start : entry.value.span.end].strip()


# The sentences of the procedures, and of what they lean on.


def _sentences(language: str, library: Library, procedure: str) -> Iterator[Draft]:
    for part, record, languages in _records(library, procedure):
        if language in languages:
            for name, text in _texts(record, ()):
                if language in text:
                    yield Draft(part, name, text.get(SOURCE, ""), text[language])


def _records(library: Library, procedure: str) -> Iterator[tuple[str, Any, tuple[str, ...]]]:
    """Yield each file's name, its record and its drafted languages.

    A file that does not name its drafted languages was drafted as the procedures were.
    """
    shared = tuple({tag for one in library.procedures.values() for tag in one.drafted})
    yield "common.yaml", library.common, shared
    for kind in library.kinds.values():
        yield f"machines/{kind.id}.yaml", kind, shared
    for profile in library.limits.values():
        yield f"limits/{profile.id}.yaml", profile, shared
    for one in library.procedures.values():
        if procedure in ("", one.id):
            yield f"{one.id}.yaml", one, one.drafted
    if not procedure:
        rules, schedule = load_deviation_rules(), load_schedule(library=library)
        yield str(DEVIATIONS), rules, rules.drafted
        yield str(SCHEDULE), schedule, schedule.drafted


def _texts(found: Any, place: tuple[str, ...]) -> Iterator[tuple[str, Mapping[str, str]]]:
    """Yield each sentence of a record with its place, as `steps/gloves/say`."""
    if isinstance(found, Mapping):
        if isinstance(found.get(SOURCE), str):
            yield "/".join(place), found
            return
        inner = [(str(key), one) for key, one in found.items()]
    elif is_dataclass(found):
        inner = [(field.name, getattr(found, field.name)) for field in fields(found)]
    elif isinstance(found, tuple | list):
        inner = [(str(getattr(one, "id", n)), one) for n, one in enumerate(found)]
    else:
        return
    for name, one in inner:
        yield from _texts(one, (*place, name))

"""The answers given so far, kept in a file of their own until the site file is written whole."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Final

from kiosk.home import SITE_FILE, write_private
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.site import Site, read_site
from kiosk.procedure.site_fault import SHAPE
from kiosk.setup.document import Document, NotToml, Value
from kiosk.setup.questions import COMMENTS, Question

DRAFT_FILE: Final = "site.draft.toml"
_OWN: Final = "setup"
"""The table in which the draft keeps what is no part of a site."""

_HEAD: Final = """\
# The site of this kiosk. 'kiosk setup' asks for all of it on the screen. It may be changed here as
# well, with any editor for plain text; 'kiosk setup --check' then tells what is wrong and how to
# mend it.
"""


class ChangedMeanwhile(Exception):
    """The site file is no longer what the answers began from; nothing was written over it."""


@dataclass(slots=True)
class Draft:
    """A site that is being set up. Each answer is on the disk before the next question."""

    folder: Path
    document: Document
    language: str = ""
    """The language that the setup speaks; empty until it is chosen."""
    answered: set[Question] = field(default_factory=set)
    base: str = ""
    """SHA-256 of the site file that was begun from; empty where there was none."""
    resumed: bool = False
    """True when somebody stopped before the end, and goes on now."""
    left_aside: bool = False
    """True when answers were kept that began from another site file than the present one."""

    @classmethod
    def of(cls, folder: Path) -> Draft:
        """Take up the draft of a data folder, or begin from its site file, or from nothing.

        A draft that was begun from another site file than the present one is left aside. Raises
        FaultyFile for a site file that is not TOML, or in which a field is of a wrong kind: what is
        left out, and what is wrong in itself, is asked.
        """
        site_text = _read(folder / SITE_FILE)
        base = _hash(site_text)
        found = cls._taken_up(folder)
        if found is not None and found.base == base:
            return found
        if site_text is None:
            return cls(folder, Document(_HEAD), left_aside=found is not None)
        document = _document(site_text, folder / SITE_FILE)
        wrong = _wrong_shape(document)
        if wrong:
            raise FaultyFile(wrong)
        languages = document.get("languages")
        first = str(languages[0]) if isinstance(languages, list) and languages else ""
        draft = cls(folder, document, first, base=base, left_aside=found is not None)
        draft.answered = draft._answered_by_file()
        return draft

    @classmethod
    def _taken_up(cls, folder: Path) -> Draft | None:
        """Return the draft that a folder holds; None where none can be read."""
        try:
            document = Document(_read(folder / DRAFT_FILE) or "")
        except (FaultyFile, NotToml):
            return None
        own = document.get(_OWN)
        if not isinstance(own, dict):
            return None
        known = {str(one): one for one in Question}
        answered = own.get("answered", [])
        found = {known[one] for one in answered if one in known} if isinstance(
            answered, list
        ) else set()  # fmt: skip
        document.drop(_OWN)
        if _wrong_shape(document):
            return None
        language, base = str(own.get("language", "")), str(own.get("base", ""))
        return cls(folder, document, language, found, base, resumed=True)

    def _answered_by_file(self) -> set[Question]:
        """Return the questions to which a site file has the answer; a sound one answers all."""
        try:
            self.site()
        except FaultyFile:
            there = {one for one in Question if one.path and self.document.get(one.path)}
            return there | {Question.LANGUAGE, Question.PRACTICE, Question.CLOSED_DAYS}
        return set(Question)

    # What was answered.

    def put(self, path: str, value: Value) -> None:
        """Set a field; `keep` writes it down."""
        table = path.rpartition(".")[0]
        self.document.put(path, value, COMMENTS.get(table or path, ""))

    def add(self, what: str, record: Mapping[str, Value]) -> None:
        """Add a machine or a person."""
        self.document.add(what, record, COMMENTS.get(what, ""))

    def keep(self, *answered: Question) -> None:
        """Write all answers down, and that these questions are answered. Raises OSError."""
        self.answered.update(answered)
        document = Document(self.document.text)
        document.put(f"{_OWN}.language", self.language, "Where the setup was left off.")
        document.put(f"{_OWN}.base", self.base)
        document.put(f"{_OWN}.answered", tuple(sorted(self.answered)))
        self.folder.mkdir(parents=True, exist_ok=True)
        write_private(self.folder / DRAFT_FILE, document.text)

    def open_questions(self) -> tuple[Question, ...]:
        """Return what is not answered yet, in the order in which it is asked."""
        return tuple(one for one in Question if one not in self.answered)

    @property
    def changed(self) -> bool:
        """True when the answers are not what the site file says."""
        return _hash(self.document.text) != self.base

    # The site.

    def site(self) -> Site:
        """Return the site as it would be written. Raises FaultyFile."""
        return read_site(self.document.text, SITE_FILE)

    def write(self) -> Site:
        """Write the site file, whole, and forget the draft; return the site.

        Raises FaultyFile, OSError, and ChangedMeanwhile when somebody else wrote the file.
        """
        site = self.site()
        file = self.folder / SITE_FILE
        if _hash(_read(file)) != self.base:
            raise ChangedMeanwhile
        # What a link leads to is written, and who could read it still can.
        target = file.resolve()
        mode = target.stat().st_mode & 0o777 if target.exists() else None
        write_private(target, self.document.text)
        if mode is not None:
            target.chmod(mode)
        self.base = _hash(self.document.text)
        (self.folder / DRAFT_FILE).unlink(missing_ok=True)
        return site


def _read(file: Path) -> str | None:
    """Return the text of a file; None when it is not there. Raises FaultyFile."""
    try:
        return file.read_text(encoding="utf-8")
    except FileNotFoundError:
        return None
    except (OSError, UnicodeDecodeError) as error:
        mend = "make the file readable, as UTF-8 text, or move it away"
        what = f"cannot be read ({error})"
        raise FaultyFile([Fault(str(file), 0, "", what, mend)]) from error


def _document(text: str, file: Path) -> Document:
    try:
        return Document(text)
    except NotToml as error:
        mend = "look at the quotes, brackets and equal signs at this place, or move the file away"
        what = f"is not TOML: {error}"
        raise FaultyFile([Fault(str(file), 0, "", what, mend)]) from error


def _wrong_shape(document: Document) -> list[Fault]:
    """Return the faults of fields that hold something of a wrong kind, or have a wrong name."""
    try:
        read_site(document.text, SITE_FILE)
    except FaultyFile as error:
        return [one for one in error.faults if one.rule == SHAPE]
    return []


def _hash(text: str | None) -> str:
    return "" if text is None else hashlib.sha256(text.encode()).hexdigest()

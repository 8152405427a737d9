"""The models that can be had: what stands on the shelf, adding one, and taking it away again."""

from __future__ import annotations

import hashlib
import re
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import StrEnum
from pathlib import Path
from typing import Final

from filelock import FileLock, Timeout

from kiosk.listening.download import KEEP_FREE, DiskFull, Download, NotFetched
from kiosk.listening.model_files import RECEIPT_FILE, Receipt, lacking, receipt_of
from kiosk.listening.model_list import Model, known_models, languages
from kiosk.listening.models import MODELS, broken, model_folders, place_of
from kiosk.listening.unpack import BadArchive, clear, flush, unpack, unpacked_bytes

_GUESSED_TIMES: Final = 3
"""Unpacked to packed size of a small model, for the look at the disk before a download."""
_SHA256: Final = re.compile(r"[0-9a-f]{64}")


class StoreFailed(Exception):
    """A model is not added or removed; the message says why and what to do."""


class State(StrEnum):
    """How a model stands."""

    INSTALLED = "installed"
    BROKEN = "broken"
    ADDABLE = "can be added"
    BY_PIP = "comes with pip"


@dataclass(frozen=True, slots=True)
class Shelved:
    """A known model, and how it stands on this machine."""

    model: Model
    state: State
    place: Path | None
    trouble: str = ""


@dataclass(frozen=True, slots=True)
class Watcher:
    """Who is told how an addition goes on, and who is asked."""

    progress: Callable[[str, int, int], None] = lambda _what, _done, _all: None
    """What is done (`fetch`, `unpack`), bytes done, bytes in all or 0."""
    say: Callable[[str], None] = lambda _text: None
    accept: Callable[[str], bool] = lambda _sha256: False
    """Whether a download of this SHA-256 may be used, when no checksum is known for it."""


@dataclass(frozen=True, slots=True)
class Origin:
    """Where a zip came from, and its SHA-256."""

    source: str
    sha256: str


def shelf(home: Path) -> list[Shelved]:
    """Return every known model and how it stands. Raises BadList."""
    folders = model_folders(home)
    return [_shelved(model, folders) for model in known_models(site=home / MODELS)]


def addable(language: str, home: Path) -> Model:
    """Return the model that `add` brings for a language. Raises StoreFailed, BadList."""
    models = _known(language, home)
    for model in models:
        if model.url:
            return model
    raise StoreFailed(f"{models[0].name} is not fetched by this command. Use: {models[0].mend}")


def add(
    model: Model,
    home: Path,
    watcher: Watcher,
    source: str = "",
    sha256: str = "",
    keep_free: int = KEEP_FREE,
) -> Path:
    """Fetch or take a model's zip, check it and unpack it; return the model's folder.

    `source` is an address or a zip file (default: the address of the list), `sha256` what it must
    have (default: that of the list). Until everything is on the disk, nothing stands under the
    model's name. Raises StoreFailed.
    """
    wanted = (sha256 or model.sha256).strip().lower()
    if wanted and not _SHA256.fullmatch(wanted):
        raise StoreFailed(f"'{wanted}' is no SHA-256: it has 64 digits of 0-9 and a-f")
    source = source or model.url
    store = home / MODELS
    try:
        store.mkdir(parents=True, exist_ok=True)
        with _locked(store):
            _sweep(store)
            place = store / model.name
            _may_stand_at(model, place)
            archive, download = _archive(model, source, wanted, store, watcher, keep_free)
            try:
                found = _checked(archive, wanted, source, watcher)
                _has_room(store, unpacked_bytes(archive) + keep_free)
                _stand(model, archive, Origin(source, found), place, watcher)
            except BadArchive:
                if download is not None:
                    download.forget()
                raise
            if download is not None:
                download.forget()
            return place
    except (BadArchive, NotFetched, DiskFull) as error:
        raise StoreFailed(str(error)) from error
    except OSError as error:
        raise StoreFailed(f"{model.name} was not added: {error}") from error


def remove(language: str, home: Path) -> list[Path]:
    """Remove what `add` brought for a language; return the folders. Raises StoreFailed, BadList."""
    store = home / MODELS
    gone: list[Path] = []
    others: list[str] = []
    try:
        store.mkdir(parents=True, exist_ok=True)
        with _locked(store):
            _sweep(store)
            for model in _known(language, home):
                _part(store, model).unlink(missing_ok=True)
                place = place_of(model, (store,))
                if place is None:
                    continue
                if model.wheel:
                    others.append(f"{model.name} came by pip: pip uninstall {model.wheel}")
                elif receipt_of(place) is None:
                    others.append(f"{place} was not put there by this command: remove it yourself")
                else:
                    _take_away(place)
                    gone.append(place)
    except OSError as error:
        raise StoreFailed(f"The model could not be removed: {error}") from error
    if not gone:
        why = "; ".join(others) or f"nothing was added for '{language}'"
        raise StoreFailed(f"Nothing is removed: {why}.")
    return gone


def _known(language: str, home: Path) -> list[Model]:
    models = known_models(language, home / MODELS)
    if not models:
        known = ", ".join(languages(known_models(site=home / MODELS)))
        raise StoreFailed(f"No speech model is known for '{language}'. Known are: {known}.")
    return models


def _shelved(model: Model, folders: tuple[Path, ...]) -> Shelved:
    place = place_of(model, folders)
    if place is None:
        return Shelved(model, State.BY_PIP if model.wheel else State.ADDABLE, None)
    trouble = broken(model, place)
    return Shelved(model, State.BROKEN if trouble else State.INSTALLED, place, trouble)


@contextmanager
def _locked(store: Path) -> Iterator[None]:
    lock = FileLock(store / ".lock")
    try:
        lock.acquire(timeout=0)
    except Timeout as error:
        raise StoreFailed(f"another 'kiosk voice' works in {store}; wait for its end") from error
    try:
        yield
    finally:
        lock.release()


def _part(store: Path, model: Model) -> Path:
    return store / f".part-{model.name}.zip"


def _sweep(store: Path) -> None:
    """Remove what a killed run left half done. Only under the lock."""
    for folder in (*store.glob(".adding-*"), *store.glob(".removing-*")):
        clear(folder)


def _may_stand_at(model: Model, place: Path) -> None:
    if not place.exists():
        return
    if not lacking(place, model.engine):
        raise StoreFailed(f"{model.name} is installed already, in {place}.")
    if receipt_of(place) is None:
        raise StoreFailed(
            f"{place} is not whole, and was not put there by this command: remove it yourself, "
            "then run the command again"
        )


def _archive(
    model: Model, source: str, sha256: str, store: Path, watcher: Watcher, keep_free: int
) -> tuple[Path, Download | None]:
    if not source.startswith(("http://", "https://")):
        path = Path(source)
        if not path.is_file():
            raise StoreFailed(f"There is no file {path}. Give a .zip file or an http(s) address.")
        return path, None
    if source.startswith("http://") and not sha256:
        raise StoreFailed(
            f"{source} is not encrypted: give the checksum too (--sha256), or an https address"
        )
    listed = sha256 == model.sha256 and bool(sha256)
    download = Download(
        url=source,
        part=_part(store, model),
        expected=model.bytes if listed else 0,
        room=model.bytes * _GUESSED_TIMES if listed or source == model.url else 0,
        keep_free=keep_free,
        progress=lambda done, in_all: watcher.progress("fetch", done, in_all),
        say=watcher.say,
    )
    return download.run(), download


def _checked(archive: Path, wanted: str, source: str, watcher: Watcher) -> str:
    """Return the SHA-256 of a zip. Raises BadArchive when it is wrong, StoreFailed."""
    with archive.open("rb") as file:
        found = hashlib.file_digest(file, "sha256").hexdigest()
    if wanted and found != wanted:
        raise BadArchive(
            f"{source} has the wrong checksum: its SHA-256 is {found} and should be {wanted}. "
            "Nothing was installed."
        )
    if not wanted and not watcher.accept(found):
        raise StoreFailed(
            f"No checksum is known for {source}, and the one it has was not accepted. Nothing was "
            f"installed. Compare it with a source you trust, then add --sha256 {found}"
        )
    return found


def _stand(model: Model, archive: Path, origin: Origin, place: Path, watcher: Watcher) -> None:
    """Unpack beside the model's place, and move it there when it is whole and on the disk."""
    beside = place.with_name(f".adding-{model.name}")
    try:
        files = unpack(archive, beside, lambda done, all_: watcher.progress("unpack", done, all_))
        files.pop(RECEIPT_FILE, None)
        gaps = lacking(beside, model.engine)
        if gaps:
            raise BadArchive(f"{origin.source} holds no speech model: {', '.join(gaps)} is missing")
        now = datetime.now(UTC).isoformat(timespec="seconds")
        receipt = Receipt(model.name, origin.source, origin.sha256, model.licence, now, files)
        receipt.write(beside)
        flush(beside)
        if place.exists():
            _take_away(place)
        beside.rename(place)
        flush(place.parent)
    finally:
        clear(beside)


def _has_room(store: Path, wanted: int) -> None:
    free = shutil.disk_usage(store).free
    if free < wanted:
        raise DiskFull(
            f"{store} has {free / 1e6:,.1f} MB free and {wanted / 1e6:,.1f} MB are wanted; make "
            "room and run the command again"
        )


def _take_away(place: Path) -> None:
    """Remove a folder; from the first moment on, nothing stands under its name."""
    aside = place.with_name(f".removing-{place.name}")
    clear(aside)
    place.rename(aside)
    clear(aside)

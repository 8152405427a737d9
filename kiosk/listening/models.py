"""Which ears can be had for a language, and how the best one is opened."""

from __future__ import annotations

from dataclasses import dataclass
from functools import reduce
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path
from typing import Final

from kiosk.home import home_folder
from kiosk.languages.words import notice
from kiosk.listening.ear import Ear
from kiosk.listening.model_files import lacking, receipt_of
from kiosk.listening.model_list import BadList, Model, known_models
from kiosk.shipped import shipped

MODELS: Final = "models"
"""The name of the folder for models, under the data folder and among what is shipped."""


@dataclass(frozen=True, slots=True)
class Missing:
    """No ear can be opened for a language."""

    language: str
    mend: str
    """A sentence that says what to install, or what is broken."""


def model_folders(home: Path | None = None) -> tuple[Path, ...]:
    """Return the folders that are looked into for unpacked models, in turn.

    `home` is the data folder in use. The one that KIOSK_HOME names is looked into as well: what
    was added once serves the invented shop and the rehearsals too.
    """
    added = home_folder() / MODELS
    given = () if home is None else (home / MODELS,)
    return tuple(dict.fromkeys((shipped(MODELS), *given, added)))


def place_of(model: Model, folders: tuple[Path, ...]) -> Path | None:
    """Return the folder of a model: from its wheel's metadata, or under one of `folders`.

    A whole folder goes before a broken one.
    """
    if model.wheel:
        try:
            found = Path(str(distribution(model.wheel).locate_file(model.inside)))
        except PackageNotFoundError:
            return None
        return found if found.is_dir() else None
    there = [one / model.name for one in folders if (one / model.name).is_dir()]
    whole = [one for one in there if not lacking(one, model.engine)]
    return next(iter(whole or there), None)


def broken(model: Model, place: Path) -> str:
    """Say what is wrong with a model's folder and how to mend it; nothing when it is whole."""
    gaps = lacking(place, model.engine)
    if not gaps:
        return ""
    if model.wheel:
        mend = f"pip install --force-reinstall {model.wheel}"
    elif receipt_of(place) is not None:
        mend = f"kiosk voice add {model.language}"
    else:
        mend = notice("ear-mend-remove", mend=model.mend)
    return notice(
        "ear-not-whole", model=model.name, place=str(place), missing=", ".join(gaps[:3]),
        more=max(0, len(gaps) - 3), mend=mend,
    )  # fmt: skip


def open_ear(language: str, home: Path | None = None, threads: int = 2) -> Ear | Missing:
    """Open the best ear that can be had, or say what is missing. Takes seconds; fetches nothing.

    `home` is the data folder in use; see `model_folders`. `threads` is how many one decoding may
    use, where the engine lets that be chosen.
    """
    folders = model_folders(home)
    try:
        models = known_models(language, folders[-1])
    except BadList as error:
        return Missing(language, str(error))
    troubles: list[str] = []
    for model in models:
        place = place_of(model, folders)
        if place is None:
            continue
        trouble = broken(model, place)
        if trouble:
            troubles.append(trouble)
            continue
        try:
            return _opened(model, place, threads)
        except ImportError as error:
            package = str(error.name)
            trouble = notice(
                "ear-needs-package", model=model.name, package=package, mend=model.mend
            )
        except Exception as error:  # noqa: BLE001 (engines raise what they like on a broken model)
            trouble = notice("ear-not-loaded", model=model.name, reason=str(error), mend=model.mend)
        troubles.append(trouble)
    if troubles:
        return Missing(language, reduce(_and, troubles))
    if not models:
        return Missing(language, notice("ear-none-listed", language=language))
    mend = reduce(_or, (model.mend for model in models))
    return Missing(language, notice("ear-none-installed", language=language, mend=mend))


def _and(one: str, other: str) -> str:
    return notice("notice-and", one=one, other=other)


def _or(one: str, other: str) -> str:
    return notice("ear-mend-or", one=one, other=other)


def _opened(model: Model, place: Path, threads: int) -> Ear:
    if model.engine == "whisper":
        from kiosk.listening.whisper_ear import WhisperEar

        letters = shipped(MODELS) / model.letters if model.letters else None
        return WhisperEar(place, model.name, threads, letters)
    from kiosk.listening.vosk_ear import VoskEar

    return VoskEar(place, model.language, model.name)

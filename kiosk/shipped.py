"""Where shipped files lie: beside the package in a checkout, inside it in a wheel."""

from __future__ import annotations

from pathlib import Path


def shipped(name: str) -> Path:
    """Return the folder `name` (`procedures`, `models`, `demo`) that ships with the kiosk.

    Raises FileNotFoundError with a mend when neither place has it.
    """
    package = Path(__file__).resolve().parent
    for folder in (package / "_shipped" / name, package.parent / name):
        if folder.is_dir():
            return folder
    raise FileNotFoundError(
        f"the folder '{name}' that ships with the kiosk is missing; install the package again"
    )

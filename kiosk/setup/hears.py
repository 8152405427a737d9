"""Whether a language has an ear on this machine."""

from __future__ import annotations

from pathlib import Path

from kiosk.listening.model_list import BadList, known_models
from kiosk.listening.models import broken, model_folders, place_of


def can_hear(language: str, folder: Path) -> bool:
    """True when a whole speech model for a language is there; nothing is loaded."""
    folders = model_folders(folder)
    try:
        models = known_models(language, folders[-1])
    except BadList:
        return False
    places = ((one, place_of(one, folders)) for one in models)
    return any(place is not None and not broken(one, place) for one, place in places)

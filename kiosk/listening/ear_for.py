"""The ear for one worker: the model of the language, and the words that the worker has taught."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from kiosk.languages.words import notice
from kiosk.listening.ear import Ear
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.own_words import BrokenWords, taught
from kiosk.listening.template_ear import TemplateEar, WithOwnWords


@dataclass(frozen=True, slots=True)
class Found:
    """What there is to hear a worker with."""

    ear: Ear | None
    notice: str
    """Empty when all is well, else the plain reason why not everything is heard."""


def open_ear_for(language: str, worker: str, home: Path | None = None) -> Found:
    """Open the ear for a worker in a language. Takes seconds; fetches nothing.

    `home` is the data folder, with models and the workers' own words.
    """
    model = open_ear(language, home)
    gap = model.mend if isinstance(model, Missing) else ""
    own: TemplateEar | None = None
    if home is not None and worker:
        try:
            words = taught(home, worker, language)
        except BrokenWords as error:
            gap = notice("notice-and", one=gap, other=str(error)) if gap else str(error)
        else:
            own = TemplateEar(words, language) if words else None
    if isinstance(model, Missing):
        return Found(own, "" if own is not None else gap)
    return Found(model if own is None else WithOwnWords(model, own), gap)

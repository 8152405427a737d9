"""What a setup asks for, in the order in which it is asked, and where each answer is written."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import Final


class Question(StrEnum):
    """One question of the setup; its value is also a part of its messages' names."""

    LANGUAGE = "language"
    PRACTICE = "practice"
    NAME = "name"
    TIME_ZONE = "time-zone"
    OPENS = "opens"
    CLOSES = "closes"
    CLOSED_DAYS = "closed-days"
    LIMITS = "limits"
    MACHINES = "machines"
    THERMOMETER = "thermometer"
    SINK = "sink"
    PRODUCT = "product"
    CHLORINE = "chlorine"
    PACKET = "packet"
    STRENGTH = "strength"
    RINSE = "rinse"
    LANGUAGES = "languages"
    PEOPLE = "people"

    @property
    def path(self) -> str:
        """Where the site file has the answer; empty for what is not written."""
        return _PATHS.get(self, "")


_PATHS: Final[Mapping[Question, str]] = {
    Question.PRACTICE: "practice",
    Question.NAME: "name",
    Question.TIME_ZONE: "time_zone",
    Question.OPENS: "opens",
    Question.CLOSES: "closes",
    Question.CLOSED_DAYS: "closed_days",
    Question.LIMITS: "limits",
    Question.MACHINES: "machines",
    Question.THERMOMETER: "options.thermometer",
    Question.SINK: "options.sink",
    Question.PRODUCT: "sanitizer.name",
    Question.CHLORINE: "sanitizer.available_chlorine",
    Question.PACKET: "sanitizer.packet_grams",
    Question.STRENGTH: "sanitizer.target",
    Question.RINSE: "options.label_rinse",
    Question.LANGUAGES: "languages",
    Question.PEOPLE: "people",
}

OF_THE_PLACE: Final = (Question.THERMOMETER, Question.SINK, Question.RINSE)
"""Options in which places differ, and not the machines of one place."""

COMMENTS: Final[Mapping[str, str]] = {
    "practice": "true: every session is marked as practice, and kept apart from real work.",
    "name": "The name of the shop, as it stands on the board and on reports.",
    "time_zone": "A name of the IANA time zone list.",
    "opens": "Local time at which the shop opens, as 09:30.",
    "closes": "Local time at which it closes, as 21:30.",
    "closed_days": 'Days on which it does not open: "monday", "12-25" in every year, "2026-12-26".',
    "languages": "Languages of the crew. The board begins in the first one.",
    "limits": "The limits by which readings are judged; the choices are in procedures/limits.",
    "sanitizer": "The sanitizer in use. All of it stands on the product's label, and comes from\n"
    "nowhere else. available_chlorine is a share by weight: 0.05 for 5 %.\n"
    "packet_grams is what one packet or tablet weighs; target is in mg/L (ppm).",
    "options": "What is so for all machines of this place. A machine may have options of its own.",
    "machines": "Each machine. An id stands in the record and is never given to another machine.",
    "people": "Everyone who walks. An id stands in the record, and is given to nobody else later.\n"
    "role: worker, trainee or supervisor.",
}
"""What is written above a field, or above a table."""

"""A day as it is said: weekday, day, month and year."""

from __future__ import annotations

from datetime import date

from kiosk.languages.words import languages, words
from kiosk.procedure.model import Text

_WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")


def day_said(day: date) -> Text:
    """Return a day in every language that the kiosk has."""
    args = {
        "weekday": _WEEKDAYS[day.weekday()],
        "day": str(day.day),
        "month": _MONTHS[day.month - 1],
        "year": str(day.year),
    }
    return {language: words(language).say("day-said", **args) for language in languages()}

"""A verdict on a sanitizing solution in plain English; other languages put its data in words."""

from __future__ import annotations

from kiosk.trade.solution import Kind, Need, Verdict, Why
from kiosk.trade.solution_table import Cap, ContactRow, SolutionRow

_WHY = {
    Why.NO_ROW: "The code lists no such combination, so it does not pass.",
    Why.OVER_CAP: "It is too strong to be used without a rinse.",
    Why.OFF_LABEL: "The code lists it, but the product's label does not allow it.",
    Why.NO_CONTACT: "Nothing says how long it must stay on, so it does not pass.",
}
_NEED = {
    Kind.STRONGER: "make it {value} or stronger",
    Kind.WEAKER: "dilute it to {value} or less",
    Kind.WARMER: "warm it to {value} or more",
    Kind.LOWER_PH: "bring it to {value} or less",
    Kind.SOFTER: "use water of {value} hardness or less",
    Kind.MEASURE_STRENGTH: "measure the strength",
    Kind.MEASURE_PH: "measure the pH",
    Kind.MEASURE_TEMPERATURE: "measure the temperature",
    Kind.MEASURE_HARDNESS: "measure the hardness of the water",
    Kind.READ_LABEL: "enter what the product's label says",
}


def english(verdict: Verdict) -> str:
    """Return the verdict, what would make it pass, and where that stands."""
    if verdict.why is Why.LISTED:
        time = f"{verdict.seconds} seconds or longer" if verdict.seconds else "no time is set"
        told = f"It is strong enough. Contact time: {time}."
    else:
        told = _WHY[verdict.why]
    if not verdict.passes:
        ways = "; or ".join(" and ".join(map(_need, way)) for way in verdict.ways)
        told += f" To mend: {ways}, then test it again." if ways else " Ask your supervisor."
    where = [one for one in (verdict.row, verdict.contact, verdict.cap) if one is not None]
    return " ".join([told, *(f"[{source(one)}]" for one in where)])


def source(one: SolutionRow | ContactRow | Cap, edition: str = "the profile's edition") -> str:
    """Return clause, edition and tag of a row. `edition` is the profile's."""
    return f"{one.clause}, {one.edition or edition} ({one.tag})"


def _need(need: Need) -> str:
    value = "" if need.value is None else str(need.value)
    if need.value is not None and need.value.unit == "pH":
        value = f"pH {need.value.value}"
    return _NEED[need.kind].format(value=value)

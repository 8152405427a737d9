"""The figures of a report on some days."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.plots import of_closings, of_readings, of_sessions
from kiosk.plots.reader import reader
from kiosk.report.desk import Desk
from kiosk.report.gathered import Gathered
from kiosk.report.paper import Block, Heading, Picture


def pictures(of: Gathered, desk: Desk) -> Iterator[Block]:
    """Yield how long sessions took, what was found in them, and what was measured."""
    who = reader(desk.site, desk.words)
    everything = desk.words.say("all-machines")
    figures = [
        of_sessions.lengths(of.lines, who, what=everything),
        of_sessions.deviations(of.lines, who, what=everything),
        of_closings.closings(of.kept, of.lines, who),
    ]
    for quantity in (of_readings.MIX_TEMPERATURE, of_readings.SANITIZER_STRENGTH):
        found = [one for one in of.readings if one.quantity == quantity]
        figures.append(of_readings.readings(found, who, what=everything))
    drawn = [Picture(one) for one in figures if one is not None]
    if drawn:
        yield Heading(desk.say("figures"))
        yield from drawn

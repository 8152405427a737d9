"""What was answered at a step, and how: the actual values and the words that were heard."""

from __future__ import annotations

import re
from typing import Final

from kiosk.engine.commands import Channel
from kiosk.report.desk import Desk
from kiosk.review.record import Asked, Left, Part, Said, StepRecord

_LIMIT: Final = re.compile(r".+? (?P<least>\S+) to (?P<most>\S+): (?P<source>.*)", re.S)
_NO_END: Final = "None"
_ON_LIST: Final = "parts list: "
"""How the limit of a count is journaled."""

_SHOWS_VALUE = frozenset({Said.NUMBER, Said.OFF})


def answer(stay: StepRecord, desk: Desk) -> str:
    """Return what was accepted at a step: a value with its unit, a finding, or a word for done."""
    if stay.left is not Left.CONFIRMED:
        return desk.say("left", how=stay.left.replace(" ", "-"))
    if stay.needed_s is not None:
        waited = stay.waited_wall_s if stay.waited_s is None else stay.waited_s
        return desk.say(
            "waited", waited=desk.length(waited or 0.0), needed=desk.length(stay.needed_s)
        )
    if stay.kind is Asked.INSPECT and stay.answer:
        return desk.say("finding", finding=stay.answer.replace(" ", "-"), other=stay.answer)
    if stay.kind is Asked.HOLD:
        return desk.say("hold-confirmed")
    if stay.kind is Asked.REPEAT:
        return desk.say("passes", number=stay.answer)
    if stay.answer:
        return " ".join((stay.answer, stay.unit)).strip()
    return desk.say("done")


def limit(journaled: str, unit: str, desk: Desk) -> str:
    """Return a limit with its source, as it was journaled, its ends in the signs of arithmetic."""
    if journaled.startswith(_ON_LIST):
        return desk.say("on-list", expected=journaled.removeprefix(_ON_LIST))
    found = _LIMIT.fullmatch(journaled)
    if found is None:
        return journaled or desk.say("limit-none")
    least, most, source = found["least"], found["most"], found["source"]
    if least == _NO_END:
        ends = f"≤ {most}"
    elif most == _NO_END:
        ends = f"≥ {least}"
    else:
        ends = f"{least} – {most}"
    return f"{ends} {unit}\n{source}"


def how(stay: StepRecord, desk: Desk) -> str:
    """Return each thing that was said or pressed at a step, in order."""
    told = [_told(part, desk) for part in stay.parts]
    if stay.asked_again:
        told.append(desk.say("asked-again", count=stay.asked_again))
    if stay.witness:
        told.append(desk.say("witnessed", person=desk.person(stay.witness)))
    return "; ".join(told)


def _told(part: Part, desk: Desk) -> str:
    said = desk.say("said", said=part.said.replace(" ", "-"))
    if part.said in _SHOWS_VALUE:
        said = f"{said} {part.value} {part.unit}".strip()
    return f"{said}: {_channel(part, desk)}"


def _channel(part: Part, desk: Desk) -> str:
    if part.channel is not Channel.VOICE:
        return desk.say("channel", channel=part.channel.value)
    if part.confidence is None:
        return desk.say("heard", heard=part.heard, ear=part.ear)
    return desk.say("heard-sure", heard=part.heard, ear=part.ear, sure=f"{part.confidence:.2f}")

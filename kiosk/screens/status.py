"""The lines around a question: who walks what, how far it has come, what ear and voice do."""

from __future__ import annotations

from typing import Final

from rich.cells import cell_len

from kiosk.languages.words import Words
from kiosk.listening.ear import DOUBTFUL, NOT_ALLOWED, NOTHING, TOO_SHORT
from kiosk.listening.in_use import Metered
from kiosk.procedure.model import Caution
from kiosk.push_to_talk import PushToTalk
from kiosk.walk import Walk

_WHY_MESSAGES: Final = {
    NOTHING: "heard-nothing",
    NOT_ALLOWED: "heard-not-allowed",
    TOO_SHORT: "heard-too-short",
    DOUBTFUL: "heard-doubtful",
}

_BAR: Final = 20
_SHORTEST_BAR: Final = 5

LEVEL_CELLS: Final = 8
_STEPS: Final = "▁▂▃▄▅▆▇█"
_QUIET_DBFS: Final = -60.0
_LOUD_DBFS: Final = -12.0
"""Ends of the meter: a quiet room with a cheap microphone, and somebody speaking up close."""


def ear_line(walk: Walk) -> str:
    """Return what the ear does, and what it made of the last utterance."""
    words = walk.words
    if walk.intercom.hearing.notice:
        return words.say("ear-off", why=walk.intercom.hearing.notice)
    now = _now(walk)
    heard = walk.heard
    if heard is None:
        return now
    if heard.phrase is not None:
        return f"{now} · {words.say('heard', text=heard.text)}"
    why = words.say(_WHY_MESSAGES.get(heard.why, "heard-not-allowed"), text=heard.text)
    return f"{now} · {why}"


def level_bar(walk: Walk) -> str:
    """Return how loud it is at the open ear; '' while it is shut, or when it cannot be told.

    In silence one cell is left; a cross where no sound comes in at all.
    """
    hearing = walk.intercom.hearing
    shut = walk.intercom.speaking or (isinstance(hearing, PushToTalk) and not hearing.open)
    if hearing.notice or shut or not isinstance(hearing, Metered):
        return ""
    level = hearing.level
    if level is None:
        return "×" + "·" * (LEVEL_CELLS - 1)
    share = (level - _QUIET_DBFS) / (_LOUD_DBFS - _QUIET_DBFS)
    full = min(LEVEL_CELLS, max(1, round(share * LEVEL_CELLS)))
    return _STEPS[:full] + "·" * (LEVEL_CELLS - full)


def no_sound(walk: Walk) -> bool:
    """True when the microphone gives no sound at all, as one that is unplugged or switched off."""
    hearing = walk.intercom.hearing
    return not hearing.notice and isinstance(hearing, Metered) and hearing.level is None


def _now(walk: Walk) -> str:
    say, hearing = walk.words.say, walk.intercom.hearing
    if walk.intercom.speaking:
        return say("ear-deaf")
    if no_sound(walk):
        return say("ear-no-sound")
    if not isinstance(hearing, PushToTalk):
        return say("ear-hears")
    key = hearing.key.upper() if len(hearing.key) <= 3 else hearing.key.capitalize()
    return say("ear-pressed" if hearing.open else "ear-press-to-talk", key=key)


def voice_line(walk: Walk) -> str:
    """Return whether the voice can be heard, and in which language it speaks."""
    words, notice = walk.words, walk.intercom.voice.notice
    state = words.say("voice-off", why=notice) if notice else words.say("voice-on")
    parts = [state, words.say("language-name")]
    if walk.session.state.language in walk.session.plan.drafted:
        parts.append(words.say("drafted"))
    return " · ".join(parts)


def header(walk: Walk) -> tuple[str, str]:
    """Return the machine and the procedure; and the worker, and whether it is practice."""
    plan, words = walk.session.plan, walk.words
    worker = walk.worker
    name = walk.session.state.worker if worker is None else worker.name
    right = f"{name} · {words.say('practice')}" if plan.practice else name
    return f"{plan.machine_name} · {words.text(plan.title)}", right


def progress(walk: Walk, width: int) -> tuple[str, str]:
    """Return the phase, and how far the walk has come: a number, and a bar where there is room."""
    plan, words = walk.session.plan, walk.words
    goal = walk.session.state.goal
    if goal not in plan.index:
        return "", ""
    index, last = plan.index[goal], len(plan.steps)
    phase = words.text(plan.phases[plan.step(goal).phase])
    place = words.say("place", place=index + 1, last=last)
    for one in time_left(walk):
        if cell_len(f"{one} · {place}") <= width - cell_len(phase) - 2:
            place = f"{one} · {place}"
            break
    room = min(_BAR, width - cell_len(phase) - cell_len(place) - 3)
    if room < _SHORTEST_BAR:
        return phase, place
    done = round(room * index / last)
    return phase, f"{place} {'━' * done}{'─' * (room - done)}"


def time_left(walk: Walk) -> tuple[str, ...]:
    """Return what is left of the walk, in a longer and a shorter form; none while it is not known.

    The longer one has the spread of earlier walks.
    """
    left = walk.time_left
    if left is None:
        return ()
    seconds = (left.median_s, left.least_s, left.most_s)
    minutes, least, most = (max(1, round(one / 60)) for one in seconds)
    short = walk.words.say("time-left", n=minutes)
    spread = walk.words.say("time-left-spread", n=minutes, least=least, most=most)
    return (short,) if least == most else (spread, short)


def caution_line(caution: Caution, words: Words, *, short: bool) -> str:
    """Return the signal word in capitals and the hazard statement.

    The short form leaves out the consequence, as the spoken one does.
    """
    parts = [caution.hazard, caution.avoid]
    if not short:
        parts.insert(1, caution.consequence)
    signal = words.say(f"signal-{caution.signal}").upper()
    return f"▲ {signal}  {' '.join(words.text(part) for part in parts)}"

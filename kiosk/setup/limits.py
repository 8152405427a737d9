"""In what one limits profile differs from the others, as sentences made from the files."""

from __future__ import annotations

from collections.abc import Collection
from decimal import Decimal

from kiosk.engine.prompt import Number
from kiosk.languages.words import Words
from kiosk.procedure.load import Library
from kiosk.procedure.model import Limit, LimitsProfile, Procedure
from kiosk.setup.said import limit_name


def differing(profiles: Collection[LimitsProfile]) -> tuple[str, ...]:
    """Return the names of the limits that are not the same in all profiles which have them."""
    kept: dict[str, set[object]] = {}
    for profile in profiles:
        for name, limit in profile.limits.items():
            kept.setdefault(name, set()).add(_key(limit))
    return tuple(name for name, bounds in kept.items() if len(bounds) > 1)


def lines(profile: LimitsProfile, library: Library, words: Words) -> tuple[str, ...]:
    """Return what is particular about a profile: the bounds in which it differs from the others, of
    what it says nothing, and what cannot be walked with it."""
    say, profiles = words.say, library.limits.values()
    found = [
        say(
            "setup-limit-line",
            what=limit_name(name, words),
            bounds=bounds_told(profile.limits[name], words),
        )
        for name in differing(profiles)
        if name in profile.limits
    ]
    everywhere = dict.fromkeys(name for one in profiles for name in one.limits)
    missing = [limit_name(name, words) for name in everywhere if name not in profile.limits]
    if missing:
        found.append(say("setup-limit-silent", names=", ".join(missing)))
    lost = unwalkable(profile, library)
    if lost:
        found.append(say("setup-limit-unwalkable", n=len(lost), all=len(library.procedures)))
    return tuple(found)


def unwalkable(profile: LimitsProfile, library: Library) -> tuple[Procedure, ...]:
    """Return the procedures that are judged by a limit which a profile does not have."""
    return tuple(
        one for one in library.procedures.values() if not _needs(one) <= set(profile.limits)
    )


def bounds_told(limit: Limit, words: Words) -> str:
    """Return the bounds of a limit in the first unit in which it may be read."""
    unit, bounds = next(iter(limit.bounds.items()))
    least, most = _number(bounds.least, unit, words), _number(bounds.most, unit, words)
    if least and most:
        return words.say("setup-bounds", least=least, most=most)
    return words.say("setup-least", least=least) if least else words.say("setup-most", most=most)


def _number(value: Decimal | None, unit: str, words: Words) -> str:
    return "" if value is None else words.number(Number(str(value), unit))


def _key(limit: Limit) -> object:
    return tuple((unit, one.least, one.most) for unit, one in sorted(limit.bounds.items()))


def _needs(procedure: Procedure) -> set[str]:
    blocks = [
        block
        for phase in procedure.phases
        for step in phase.steps
        for block in (step.measure, step.mix, step.wait)
    ]
    return {one.limit for one in blocks if one is not None and one.limit}

"""From what a label prints of chlorine to the milligrams that a gram or a millilitre brings."""

from __future__ import annotations

from decimal import Decimal

from kiosk.trade.keyed import Keyed

CHLORINE_PER_HYPOCHLORITE = Decimal("70.906") / Decimal("74.44")
"""Grams of available chlorine in a gram of NaOCl: molar mass of Cl2 over that of NaOCl. READ in
water-treatment texts, with the pairs 5.25 to 5.0, 6 to 5.7, 8.25 to 7.86."""

STOICHIOMETRIC = {
    "sodium dichloroisocyanurate": Decimal("64.5"),
    "sodium dichloroisocyanurate dihydrate": Decimal("55.4"),
    "trichloroisocyanuric acid": Decimal("91.5"),
    "calcium hypochlorite": Decimal("99.2"),
}
"""The most percent available chlorine by weight that a pure compound can have (CALC, Cl 35.453).
A label runs lower: ask for its figure, and use these only to doubt one that lies above."""

_SAYS = {
    "bad-percent": "{percent} % cannot be; write the label's percent, above 0 and up to 100",
    "share-not-percent": (
        "{percent} % is too little for a solid product; if the label's share is {percent}, "
        "write {mend} %"
    ),
    "bad-gravity": "a specific gravity of {gravity} cannot be; write the label's, as 1.08",
    "too-strong": (
        "no chlorine solution has {percent} trade percent; write grams of available chlorine "
        "per litre, divided by 10"
    ),
    "bad-dilution": "a label's dilution needs more than nothing of product and of strength",
    "bad-packet": "the grams in a packet must be more than nothing",
}

_MOST_TRADE_PERCENT = Decimal(30)
"""Hypochlorite is not sold stronger (MEM)."""


class NotALabel(Keyed, ValueError):
    """A figure cannot stand on a label; the message says what to mend."""

    says = _SAYS


def from_hypochlorite(percent: Decimal) -> Decimal:
    """Return weight percent available chlorine from weight percent NaOCl. Raises NotALabel."""
    return _percent(percent) * CHLORINE_PER_HYPOCHLORITE


def trade_percent(weight_percent: Decimal, specific_gravity: Decimal) -> Decimal:
    """Return grams of available chlorine per litre over 10, from weight percent. READ.

    `specific_gravity` is kg per litre, from the label. Raises NotALabel.
    """
    if not (specific_gravity.is_finite() and Decimal("0.7") <= specific_gravity <= 2):
        raise NotALabel("bad-gravity", gravity=specific_gravity)
    return _percent(weight_percent) * specific_gravity


def liquid_strength(trade: Decimal) -> Decimal:
    """Return mg of available chlorine per mL of liquid, from trade percent. Raises NotALabel."""
    if _percent(trade) > _MOST_TRADE_PERCENT:
        raise NotALabel("too-strong", percent=trade)
    return trade * 10


def solid_strength(percent: Decimal) -> Decimal:
    """Return mg of available chlorine per gram of solid, from weight percent. Raises NotALabel.

    Below 1 % it is taken for a share that was written where a percent belongs, and refused.
    """
    if _percent(percent) < 1:
        raise NotALabel("share-not-percent", percent=percent, mend=f"{percent * 100:f}")
    return percent * 10


def _percent(percent: Decimal) -> Decimal:
    if not (percent.is_finite() and 0 < percent <= 100):
        raise NotALabel("bad-percent", percent=percent)
    return percent

"""A sanitizer as its label has it: how much agent a gram or a millilitre brings."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from kiosk.trade.available_chlorine import (
    NotALabel,
    from_hypochlorite,
    liquid_strength,
    solid_strength,
    trade_percent,
)
from kiosk.trade.solution_table import Agent


@dataclass(frozen=True, slots=True)
class Product:
    """A product for use; make one with the functions below, from what its label prints."""

    agent: Agent
    strength: Decimal
    """Milligrams of agent per `unit`; for chlorine, of available chlorine."""
    unit: str
    """`g` for a solid, `mL` for a liquid."""
    packet_grams: Decimal | None = None
    """Grams in one packet; None when it does not come in packets."""


def solid(percent: Decimal) -> Product:
    """Return a powder with a weight percent of available chlorine. Raises NotALabel."""
    return Product(Agent.CHLORINE, solid_strength(percent), "g")


def packets(packet_grams: Decimal, percent: Decimal) -> Product:
    """Return packets or tablets of `packet_grams` with a weight percent of available chlorine."""
    if not (packet_grams.is_finite() and packet_grams > 0):
        raise NotALabel("bad-packet")
    return Product(Agent.CHLORINE, solid_strength(percent), "g", packet_grams)


def liquid_by_trade_percent(percent: Decimal) -> Product:
    """Return a liquid with a trade percent (g available chlorine per litre, over 10)."""
    return Product(Agent.CHLORINE, liquid_strength(percent), "mL")


def liquid_by_weight(percent: Decimal, specific_gravity: Decimal) -> Product:
    """Return a liquid with a weight percent of available chlorine. Raises NotALabel."""
    return liquid_by_trade_percent(trade_percent(percent, specific_gravity))


def hypochlorite(percent: Decimal, specific_gravity: Decimal) -> Product:
    """Return a liquid with a weight percent of sodium hypochlorite. Raises NotALabel."""
    return liquid_by_weight(from_hypochlorite(percent), specific_gravity)


def label_dilution(agent: Agent, millilitres_per_litre: Decimal, gives: Decimal) -> Product:
    """Return a liquid of which a label says: so many mL per litre give so many mg/L."""
    figures = (millilitres_per_litre, gives)
    if not all(one.is_finite() and one > 0 for one in figures):
        raise NotALabel("bad-dilution")
    return Product(agent, gives / millilitres_per_litre, "mL")

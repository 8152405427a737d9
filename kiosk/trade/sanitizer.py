"""How much chlorine sanitizer goes into a volume of water."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_CEILING, Decimal


class NoDose(ValueError):
    """No dose fits the wanted strength; the message says why and what to change."""


@dataclass(frozen=True, slots=True)
class Packets:
    """A dose in whole packets, and the strength that it really gives."""

    count: int
    strength: Decimal
    """Available chlorine in mg/L (ppm)."""


def powder_grams(strength: Decimal, volume: Decimal, available: Decimal) -> Decimal:
    """Return grams of powder for a wanted strength.

    `strength` in mg/L available chlorine, `volume` in litres, `available` the share of available
    chlorine by weight from the product's label, above 0 and up to 1. Raises NoDose otherwise.
    Mass balance: grams = mg/L x L / (1000 x share).
    """
    if not 0 < available <= 1:
        raise NoDose("the label's share of available chlorine must lie between 0 and 1, as 0.554")
    if strength <= 0 or volume <= 0:
        raise NoDose("the strength and the volume must be more than nothing")
    return strength * volume / (1000 * available)


def whole_packets(
    target: Decimal, volume: Decimal, available: Decimal, packet: Decimal, cap: Decimal
) -> Packets:
    """Return the fewest whole packets that reach `target` mg/L in `volume` litres.

    `packet` is the grams in one packet, `cap` the strength in mg/L that must not be passed.
    Raises NoDose when the fewest packets that reach the target would pass the cap.
    """
    if packet <= 0:
        raise NoDose("the grams in a packet must be more than nothing")
    grams = powder_grams(target, volume, available)
    count = int((grams / packet).to_integral_value(rounding=ROUND_CEILING))
    strength = count * packet * available * 1000 / volume
    if strength > cap:
        raise NoDose(
            f"{count} packets in {volume} L give {strength:.0f} mg/L, above the cap of {cap} mg/L;"
            " use more water or smaller packets"
        )
    return Packets(count, strength)

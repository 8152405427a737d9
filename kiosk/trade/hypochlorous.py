"""How much of the free chlorine is hypochlorous acid, by pH and temperature."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from kiosk.trade.keyed import Keyed
from kiosk.trade.units import Quantity, degrees_celsius

FITTED = (Decimal(0), Decimal(35))
"""°C within which the fit is taken to hold (MEM)."""

EXTRAPOLATED_TO = Decimal(49)
"""°C up to which the fit is stretched and flagged: the warmest row of 4-501.114(A)."""

_SAYS = {
    "bad-ph": "a pH of {ph} cannot be; it lies between 0 and 14, read the strip again",
    "no-number": "{temperature} cannot be a temperature; read it again",
    "too-cold": "{temperature} is below {least} °C, where nothing is known of the balance",
    "too-warm": "{temperature} is above {most} °C, where nothing is known of the balance; let it "
    "cool",
}


class NoShare(Keyed, ValueError):
    """No share can be told; the message says what to mend."""

    says = _SAYS


@dataclass(frozen=True, slots=True)
class HypochlorousShare:
    """The share of free chlorine (HOCl and OCl-, what a strip reads) that is HOCl."""

    share: Decimal
    """0 to 1."""
    dissociation: Decimal
    """pKa of HOCl at this temperature."""
    extrapolated: bool
    """True above 35 °C, outside the range of the fit."""
    at_most: bool
    """True for isocyanurates: part of the chlorine is bound to cyanurate, and the true share of the
    total is lower than this (MEM)."""

    @property
    def english(self) -> str:
        """The share in one plain sentence, with what to doubt in it."""
        percent = f"{self.share * 100:.1f}"
        doubts = []
        if self.at_most:
            doubts.append("the product binds part of its chlorine to cyanurate, so it is less")
        if self.extrapolated:
            doubts.append("the water is warmer than the formula was fitted for")
        told = f"{'At most ' if self.at_most else ''}{percent} % of the free chlorine is HOCl"
        return f"{told}{': ' if doubts else ''}{'; '.join(doubts)}."


def dissociation(temperature: Quantity) -> Decimal:
    """Return the pKa of HOCl at a temperature in °C or °F.

    pKa = 3000/T - 10.0686 + 0.0253 T with T in kelvin: Morris 1966, READ in several unrelated
    public source files. Raises NoShare outside 0 to 49 °C, NotAQuantity for another unit.
    """
    celsius = degrees_celsius(temperature)
    if not temperature.value.is_finite():
        raise NoShare("no-number", temperature=temperature)
    if celsius < FITTED[0]:
        raise NoShare("too-cold", temperature=temperature, least=FITTED[0])
    if celsius > EXTRAPOLATED_TO:
        raise NoShare("too-warm", temperature=temperature, most=EXTRAPOLATED_TO)
    kelvin = celsius + Decimal("273.15")
    return 3000 / kelvin - Decimal("10.0686") + Decimal("0.0253") * kelvin


def share(ph: Decimal, pka: Decimal) -> Decimal:
    """Return HOCl / (HOCl + OCl-), 1 / (1 + 10^(pH - pKa)). Raises NoShare for a pH that cannot be.

    READ with the formula above.
    """
    if not (ph.is_finite() and 0 <= ph <= 14):
        raise NoShare("bad-ph", ph=ph)
    return 1 / (1 + Decimal(10) ** (ph - pka))


def hypochlorous(
    ph: Decimal, temperature: Quantity, isocyanurate: bool = False
) -> HypochlorousShare:
    """Return the share of HOCl at a pH and a temperature in °C or °F. Raises NoShare.

    `isocyanurate` is true for NaDCC and TCCA products.
    """
    pka = dissociation(temperature)
    warm = degrees_celsius(temperature) > FITTED[1]
    return HypochlorousShare(share(ph, pka), pka, warm, isocyanurate)

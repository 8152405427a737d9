"""How long nobody may try a person's PIN after wrong tries. Pure: told the time."""

from __future__ import annotations

from typing import Final

FREE_TRIES: Final = 2
"""Wrong tries in a row that cost nothing: wet gloves slip. Common practice, no source."""
FIRST_WAIT_S: Final = 30.0
LONGEST_WAIT_S: Final = 3600.0
"""NIST SP 800-63B-3, 5.2.2: waits that grow from 30 seconds up to an hour (MEM)."""
MOST_TRIES: Final = 100
"""NIST SP 800-63B-3, 5.2.2: at most 100 failed tries in a row, then the PIN is closed (READ in a
quotation)."""


def closed(wrong: int) -> bool:
    """True when so many wrong tries in a row close a PIN until it is set anew."""
    return wrong >= MOST_TRIES


def wait_s(wrong: int) -> float:
    """Return the seconds to wait after `wrong` tries in a row: 30, and twice as long each time."""
    over = wrong - FREE_TRIES - 1
    if over < 0:
        return 0.0
    # Beyond ten doublings the longest wait is reached anyway.
    return float(min(LONGEST_WAIT_S, FIRST_WAIT_S * 2 ** min(over, 10)))

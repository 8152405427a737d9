"""What a hold's phrase must not be taken from: sentences near to it that say the opposite."""

from __future__ import annotations

from typing import Final

OPPOSITES: Final = {
    "i found the power disconnected": (
        "i didn't find the power disconnected", "i found the power connected",
        "i never found the power disconnected",
    ),
    "i found everything in place": (
        "i didn't find everything in place", "i found nothing in place",
        "i never found everything in place",
    ),
    "the machine does not respond": (
        "the machine does respond", "the machine responds", "the machine does not stop",
    ),
    "i see everyone standing clear": (
        "i don't see everyone standing clear", "i see someone standing near",
        "i can't see everyone standing clear",
    ),
}  # fmt: skip
"""By phrase, with the word that denies it put in or taken out, and with its nearest sounding
neighbour of another meaning.

Each opposite was said by 14 voices, clean and in a kitchen at 10 dB: of 84 for each phrase none was
taken for it (`python -m tests.bench.bench_opposites`). In eight other noises at 10 dB, 112
hearings, 'does respond' was written down as 'does not respond' once, from a robotic voice. What was
given up, with the opposites that passed:

    everything is in place        isn't in place        10 of 28
    the power is disconnected     isn't disconnected     5 of 28
    everyone is standing clear    isn't standing clear   3 of 28
    the machine does not start    does not stop          1 of 28
    ready to turn on              ready to turn off      1 of 28

So no phrase of a hold says 'is': no ear can tell it from 'isn't' before every word. A verb that
changes its form when it is denied ('found', 'did not find') can be told.
"""

"""A device opened within a time limit: a sound server may never answer."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Protocol, TypeVar


class Device(Protocol):
    """What can be given back."""

    def close(self) -> None:
        """Give it back."""


D = TypeVar("D", bound=Device)


def opened_in_time(
    make: Callable[[], D], limit_s: float, name: str, failed: type[Exception]
) -> D | None:
    """Open a device in a thread of its own, called `name`; None when it took too long.

    What opens later is closed at once. Raises what `make` raised, where that is `failed`.
    """
    opened: list[D | Exception] = []
    lock = threading.Lock()
    given_up = False

    def attempt() -> None:
        found: D | Exception
        try:
            found = make()
        except failed as failure:
            found = failure
        with lock:
            if not given_up:
                opened.append(found)
                return
        if not isinstance(found, Exception):
            found.close()

    thread = threading.Thread(target=attempt, name=name, daemon=True)
    thread.start()
    thread.join(limit_s)
    with lock:
        given_up = not opened
    if given_up:
        return None
    if isinstance(opened[0], Exception):
        raise opened[0]
    return opened[0]

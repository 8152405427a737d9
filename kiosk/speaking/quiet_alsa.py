"""Keeps ALSA from writing its complaints over the screen."""

from __future__ import annotations

import contextlib
import ctypes
import platform

_HANDLER = ctypes.CFUNCTYPE(
    None, ctypes.c_char_p, ctypes.c_int, ctypes.c_char_p, ctypes.c_int, ctypes.c_char_p
)


# Stands in for snd_lib_error_handler_t; that one is variadic, and its further arguments go unread.
# Kept for the life of the process, since libasound keeps calling it.
_SAY_NOTHING = _HANDLER(lambda *_complaint: None)


def quiet_alsa() -> None:
    """Silence libasound for this process; without the library there is nothing to silence.

    With no sound card libasound writes some thirty lines to the standard error, where a terminal
    screen is being drawn.
    """
    if platform.system() != "Linux":
        return
    with contextlib.suppress(OSError, AttributeError):
        ctypes.CDLL("libasound.so.2").snd_lib_error_set_handler(_SAY_NOTHING)

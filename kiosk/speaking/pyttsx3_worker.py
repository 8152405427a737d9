"""The worker that speaks into wave files, in a process of its own: JSON lines in, JSON lines out.

A request is `{"id", "speech", "into"}`, the speech with the fields of `Speech`; its answer is
`{"id", "seconds"}` or `{"id", "error"}`. The first line out is `{"ready": true}` or
`{"ready": false, "error"}`. The worker ends when its input ends, so it never outlives the kiosk.
"""

from __future__ import annotations

import json
import os
import sys
from pathlib import Path
from typing import Any, BinaryIO

from kiosk.speaking.pyttsx3_driver import Pyttsx3Driver
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import SpeechFailed


def take_output() -> BinaryIO:
    """Return the real standard output and give everything else that prints an empty one."""
    real = os.fdopen(os.dup(1), "wb")
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.dup2(nowhere, 2)
    os.close(nowhere)
    return real


def answer(driver: Pyttsx3Driver, request: dict[str, Any]) -> dict[str, Any]:
    """Carry out one request; every failure becomes an answer."""
    try:
        seconds = driver.render(Speech(**request["speech"]), Path(request["into"]))
    except SpeechFailed as failure:
        return {"id": request["id"], "error": str(failure)}
    except Exception as failure:  # noqa: BLE001 (the drivers raise anything; the client is told)
        return {"id": request["id"], "error": f"the speech driver failed: {failure!r}"}
    return {"id": request["id"], "seconds": seconds}


def main() -> int:
    """Serve requests until the input ends."""
    out = take_output()

    def tell(message: dict[str, Any]) -> None:
        out.write(json.dumps(message).encode() + b"\n")
        out.flush()

    try:
        driver = Pyttsx3Driver()
    except Exception as failure:  # noqa: BLE001 (the drivers raise anything; the client is told)
        tell({"ready": False, "error": f"the speech driver did not start: {failure!r}"})
        return 1
    tell({"ready": True})
    for line in sys.stdin.buffer:
        tell(answer(driver, json.loads(line)))
    return 0


if __name__ == "__main__":
    raise SystemExit(main())

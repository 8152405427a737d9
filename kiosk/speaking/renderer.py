"""The client of the speaking worker: starts it when needed, bounds its time, replaces it."""

from __future__ import annotations

import json
import os
import platform
import queue
import subprocess
import sys
import threading
from dataclasses import asdict
from importlib import metadata
from pathlib import Path
from typing import IO, Any

import kiosk
from kiosk.languages.words import notice
from kiosk.speaking.brighten import brightened
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import SpeechFailed
from kiosk.speaking.waves import as_wave, read

START_LIMIT_S = 20.0
"""For the worker's first line; measured well under a second on a desktop. Generous for a first
start from a slow memory card (an estimate)."""
RENDER_LIMIT_S = 8.0
"""For one text; a prompt takes tens of milliseconds on a desktop, so this is a hang."""
ANSWER_FORMAT = 4
"""Raised when the same request would make another wave."""


_SPEAKS_ESPEAK = platform.system() == "Linux"


class WorkerLost(Exception):
    """The worker ended in the middle of a request."""


class Renderer:
    """Speaks texts into wave files through one worker process; safe to use from any thread."""

    def __init__(
        self, start_limit_s: float = START_LIMIT_S, render_limit_s: float = RENDER_LIMIT_S
    ) -> None:
        self.version = renderer_version()
        """Changes whenever the same text may come out as another sound."""
        self._start_limit_s = start_limit_s
        self._render_limit_s = render_limit_s
        self._lock = threading.Lock()
        self._worker: _Worker | None = None
        self._requests = 0
        self._closed = False

    def render(self, speech: Speech, into: Path) -> float:
        """Speak into the wave file `into`; return its length in seconds.

        A language's own voice is made brighter where it is espeak-ng's. A worker that died is
        replaced and asked once more; one that hangs is ended. Raises SpeechFailed.
        """
        request = {"speech": asdict(speech.checked()), "into": str(into.absolute())}
        with self._lock:
            seconds = self._ask_twice(request)
        if speech.voice is None and _SPEAKS_ESPEAK:
            into.write_bytes(as_wave(brightened(read(into))))
        return seconds

    def _ask_twice(self, request: dict[str, Any]) -> float:
        try:
            return self._ask(request)
        except WorkerLost:
            pass
        try:
            return self._ask(request)
        except WorkerLost as lost:
            raise SpeechFailed(notice("speech-ended-twice", reason=str(lost))) from lost

    def worker_pid(self) -> int | None:
        """Return the process id of the worker, None while there is none."""
        worker = self._worker
        return worker.pid if worker else None

    def close(self) -> None:
        """End the worker, in the middle of a text if need be; later requests fail."""
        self._closed = True
        worker = self._worker
        if worker is not None:
            worker.kill()
        with self._lock:
            self._end_worker()

    def _ask(self, request: dict[str, Any]) -> float:
        if self._closed:
            raise SpeechFailed("the speech worker was closed")
        worker = self._worker or self._start()
        self._requests += 1
        try:
            answer = worker.ask({"id": self._requests, **request}, self._render_limit_s)
        except TimeoutError as failure:
            self._end_worker()
            limit = f"{self._render_limit_s:g}"
            raise SpeechFailed(notice("speech-no-answer", seconds=limit)) from failure
        except WorkerLost:
            self._end_worker()
            raise
        if "error" in answer:
            raise SpeechFailed(notice("speech-failed", reason=str(answer["error"])))
        return float(answer["seconds"])

    def _start(self) -> _Worker:
        try:
            worker = self._worker = _Worker()
            first = worker.read(self._start_limit_s)
        except OSError as failure:
            # A TimeoutError is an OSError as well.
            self._end_worker()
            why = str(failure) or f"no answer in {self._start_limit_s:g} s"
            raise SpeechFailed(notice("speech-not-started", reason=why)) from failure
        except WorkerLost as failure:
            self._end_worker()
            raise SpeechFailed(notice("speech-not-started", reason=str(failure))) from failure
        if not first.get("ready"):
            self._end_worker()
            raise SpeechFailed(notice("speech-install-again", reason=str(first.get("error"))))
        return worker

    def _end_worker(self) -> None:
        if self._worker is not None:
            self._worker.end()
            self._worker = None


class _Worker:
    """One process of `kiosk.speaking.pyttsx3_worker` and its two pipes."""

    def __init__(self) -> None:
        environment = dict(os.environ)
        place = str(Path(kiosk.__file__).resolve().parent.parent)
        earlier = environment.get("PYTHONPATH")
        environment["PYTHONPATH"] = os.pathsep.join([place, earlier] if earlier else [place])
        # -P: a module in the working folder must not take the place of an installed one. A session
        # of its own keeps the terminal's Ctrl+C from it.
        self._process = subprocess.Popen(
            [sys.executable, "-P", "-m", "kiosk.speaking.pyttsx3_worker"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            env=environment,
            start_new_session=True,
            bufsize=0,
        )
        self.pid = self._process.pid
        self._lines: queue.SimpleQueue[bytes] = queue.SimpleQueue()
        self._reader = threading.Thread(
            target=self._read_lines, args=(self._process.stdout,), name="speech-worker", daemon=True
        )
        self._reader.start()

    def ask(self, request: dict[str, Any], limit_s: float) -> dict[str, Any]:
        """Send one request and return its answer; raises TimeoutError or WorkerLost."""
        if self._process.stdin is None:
            raise WorkerLost("it has no input")
        try:
            self._process.stdin.write(json.dumps(request).encode() + b"\n")
        except OSError as failure:
            raise WorkerLost(f"{failure}") from failure
        answer = self.read(limit_s)
        if answer.get("id") != request["id"]:
            raise WorkerLost("it answered another request")
        return answer

    def read(self, limit_s: float) -> dict[str, Any]:
        """Return the next line, parsed; raises TimeoutError or WorkerLost."""
        try:
            line = self._lines.get(timeout=limit_s)
        except queue.Empty as failure:
            raise TimeoutError from failure
        if not line:
            raise WorkerLost(f"it ended with {self._process.wait()}")
        try:
            parsed = json.loads(line)
        except ValueError as failure:
            raise WorkerLost(f"it wrote a broken line: {failure}") from failure
        if not isinstance(parsed, dict):
            raise WorkerLost("it wrote a line that is no object")
        return parsed

    def kill(self) -> None:
        """Kill the process; it holds nothing that needs an orderly end."""
        self._process.kill()

    def end(self) -> None:
        """Kill the process, wait for it and close its pipes."""
        self.kill()
        self._process.wait()
        self._reader.join()
        for pipe in (self._process.stdin, self._process.stdout):
            if pipe is not None:
                pipe.close()

    def _read_lines(self, stdout: IO[bytes]) -> None:
        for line in iter(stdout.readline, b""):
            self._lines.put(line)
        self._lines.put(b"")


def renderer_version() -> str:
    """Return what the sound of a text depends on: the packages, the platform, the worker."""
    packages = ["pyttsx3", "espeakng-loader"] if _SPEAKS_ESPEAK else ["pyttsx3"]
    try:
        parts = [f"{package} {metadata.version(package)}" for package in packages]
    except metadata.PackageNotFoundError:
        parts = ["packages missing"]
    return "; ".join([platform.system(), *parts, f"worker {ANSWER_FORMAT}"])

"""A web server on this machine with one file, which can be told to misbehave."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread


@dataclass
class Served:
    """What the server has, how it behaves, and what was asked of it."""

    body: bytes
    etag: str = '"one"'
    cuts: list[int] = field(default_factory=list)
    """After how many bytes each of the next answers breaks off."""
    ranges: bool = True
    length: bool = True
    """Whether the answer tells its length."""
    says_start: int = 0
    """Where a partial answer wrongly says that it starts."""
    status: int = 0
    """Answer with this and nothing else."""
    asked: list[str | None] = field(default_factory=list)
    """The Range of each request."""
    sent: list[int] = field(default_factory=list)
    """Bytes of body in each answer."""
    address: str = ""

    def answer(self, request: BaseHTTPRequestHandler) -> None:
        self.asked.append(request.headers["Range"])
        self.sent.append(0)
        request.close_connection = True
        if self.status:
            request.send_error(self.status)
            return
        start = self._start(request)
        if start >= len(self.body):
            request.send_error(416)
            return
        rest = self.body[start:]
        request.send_response(206 if start else 200)
        if start:
            whole = len(self.body)
            first = self.says_start or start
            request.send_header("Content-Range", f"bytes {first}-{whole - 1}/{whole}")
        if self.length:
            request.send_header("Content-Length", str(len(rest)))
        if self.etag:
            request.send_header("ETag", self.etag)
        request.end_headers()
        rest = rest[: self.cuts.pop(0)] if self.cuts else rest
        request.wfile.write(rest)
        self.sent[-1] = len(rest)

    def _start(self, request: BaseHTTPRequestHandler) -> int:
        wanted = request.headers["Range"]
        if not self.ranges or wanted is None or request.headers["If-Range"] != self.etag:
            return 0
        return int(wanted.removeprefix("bytes=").rstrip("-"))


@contextmanager
def serving(body: bytes, **more: object) -> Iterator[Served]:
    """Serve one file on a free port of the loopback until the block ends."""
    served = Served(body, **more)  # type: ignore[arg-type]

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            served.answer(self)

        def log_message(self, format: str, *args: object) -> None:
            """Say nothing."""

    with ThreadingHTTPServer(("127.0.0.1", 0), Handler) as server:
        served.address = f"http://127.0.0.1:{server.server_port}/model.zip"
        thread = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01})
        thread.start()
        try:
            yield served
        finally:
            server.shutdown()
            thread.join()

"""A network between a kiosk and the head office that can be cut after so many bytes."""

from __future__ import annotations

import contextlib
import socket
import threading


class CuttingLine:
    """Passes bytes on to a port; a connection whose share of bytes has gone by is cut."""

    def __init__(self, to: int) -> None:
        self.there: int | None = None
        """Bytes that may pass towards the server on each connection; None for any number."""
        self.back: int | None = None
        """Bytes that may pass from the server."""
        self._to = to
        self._listening = socket.create_server(("127.0.0.1", 0), backlog=128)
        self.port = int(self._listening.getsockname()[1])
        threading.Thread(target=self._accept, daemon=True).start()

    def shares(self) -> tuple[int | None, int | None]:
        """Return the shares of the next connection, there and back."""
        return self.there, self.back

    def _accept(self) -> None:
        with contextlib.suppress(OSError):
            while True:
                near, _ = self._listening.accept()
                try:
                    far = socket.create_connection(("127.0.0.1", self._to))
                except OSError:
                    near.close()
                    continue
                there, back = self.shares()
                for way in ((near, far, there), (far, near, back)):
                    threading.Thread(target=_pass_on, args=way, daemon=True).start()

    def close(self) -> None:
        self._listening.close()


def _pass_on(source: socket.socket, sink: socket.socket, share: int | None) -> None:
    with contextlib.suppress(OSError):
        while data := source.recv(65536):
            if share is not None:
                data, share = data[:share], share - len(data)
            sink.sendall(data)
            if share is not None and share <= 0:
                break
    for one in (source, sink):
        with contextlib.suppress(OSError):
            one.shutdown(socket.SHUT_RDWR)
        one.close()

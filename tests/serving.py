"""A folder served over HTTP as a plain web host would: no rules, and 404.html for what is lost."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from http import HTTPStatus
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread


class PlainHost(SimpleHTTPRequestHandler):
    """Answers with the files of its folder, and keeps quiet about it."""

    protocol_version = "HTTP/1.1"  # connections stay open, which makes hundreds of visits quick
    extensions_map = SimpleHTTPRequestHandler.extensions_map | {
        ".avif": "image/avif",
        ".woff2": "font/woff2",
        ".js": "text/javascript",
    }

    def do_GET(self) -> None:
        """Nothing more once the server has gone, not by a line that is still open either."""
        if self.server.gone:  # type: ignore[attr-defined]
            self.close_connection = True
            return
        super().do_GET()

    def end_headers(self) -> None:
        """Let styles and fonts be kept for the next page, as hosts do."""
        self.send_header("Cache-Control", "max-age=600")
        super().end_headers()

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        """The site's own page for what is lost, as static hosts send it."""
        lost = Path(self.directory) / "404.html"
        if code != HTTPStatus.NOT_FOUND or not lost.is_file():
            super().send_error(code, message, explain)
            return
        page = lost.read_bytes()
        self.send_response(code)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Length", str(len(page)))
        self.end_headers()
        self.wfile.write(page)

    def log_message(self, format: str, *args: object) -> None:
        """Says nothing: what goes wrong is seen by the browser."""


class QuietServer(ThreadingHTTPServer):
    """A browser that closes a connection early, as they do when a page is left, is no news."""

    gone = False

    def handle_error(self, request: object, client_address: object) -> None:
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)  # type: ignore[arg-type]


@contextmanager
def served(folder: Path, port: int = 0) -> Iterator[str]:
    """Serve `folder` for as long as it is needed, on a free port if none is named; its address."""
    with QuietServer(("127.0.0.1", port), partial(PlainHost, directory=str(folder))) as server:
        Thread(target=server.serve_forever, daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.gone = True
        server.shutdown()

"""How do the live sites reach the browser? A small web server for this computer alone.

Open pages listen at one address for news (server-sent events, HTML Living Standard 9.2).
"""

from __future__ import annotations

import errno
import json
import os
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread

from corymb.site.live.answers import EVENTS, answer, page_asked
from corymb.site.live.live_site import LiveSite, News
from corymb.site.policy import BY_A_HOST

HOST = "127.0.0.1"
OWN_NAMES = ("127.0.0.1", "localhost")
BREATH_SECONDS = 15.0  # a sign of life to an open page, and how a closed one is noticed
PATIENCE_SECONDS = 60.0  # with someone who opened a line and says nothing


class PortBusyError(Exception):
    """Another program listens on the port already."""


class LiveServer(ThreadingHTTPServer):
    """Serves a `LiveSite` until it is closed. Raises PortBusyError when the port is taken."""

    daemon_threads = True
    # Elsewhere it lets a port be used again right after a server has stopped; Windows would let
    # two servers answer at one port.
    allow_reuse_address = os.name != "nt"
    allow_reuse_port = False  # some versions of Python would share it

    def __init__(self, live: LiveSite, port: int) -> None:
        self.live = live
        try:
            super().__init__((HOST, port), _Handler)
        except OSError as error:
            if error.errno in (errno.EADDRINUSE, errno.EACCES):
                raise PortBusyError(port) from error
            raise

    @property
    def address(self) -> str:
        """Where a browser finds the sites."""
        return f"http://{HOST}:{self.server_port}/"

    def start(self) -> None:
        """Answer in the background, so that building goes on beside it."""
        Thread(target=self.serve_forever, daemon=True).start()

    def stop(self) -> None:
        """Answer no more, and free the port."""
        self.shutdown()
        self.server_close()


class _Handler(BaseHTTPRequestHandler):
    server: LiveServer
    server_version = "Corymb"
    sys_version = ""
    timeout = PATIENCE_SECONDS

    def do_GET(self) -> None:
        if not self._asked_by_own_name() or self._asked_by_another_site():
            self.send_error(403, "This server answers to its own computer alone.")
        elif self.path.partition("?")[0] == EVENTS:
            name, address = page_asked(self.server.live, self.path.partition("?")[2])
            with self.server.live.looked_at(name, address):
                self._tell_news()
        else:
            self._send()

    def do_HEAD(self) -> None:
        self.do_GET()

    def log_message(self, format: str, *args: object) -> None:
        """Nothing: the terminal is for what the builds say."""

    def _asked_by_own_name(self) -> bool:
        """Guards the staff's pages: another site's script can't reach them by a borrowed name."""
        hosts = self.headers.get_all("Host", [])
        return [host.partition(":")[0].lower() in OWN_NAMES for host in hosts] == [True]

    def _asked_by_another_site(self) -> bool:
        """Not by someone who follows a link: by a script, which would hold lines for nothing.

        Browsers say so themselves (W3C, Fetch Metadata Request Headers).
        """
        elsewhere = self.headers.get("Sec-Fetch-Site") in ("cross-site", "same-site")
        return elsewhere and self.headers.get("Sec-Fetch-Mode") != "navigate"

    def end_headers(self) -> None:
        """With every answer: pages of other sites can neither frame these nor take from them."""
        for name, value in BY_A_HOST.items():
            self.send_header(name, value)
        super().end_headers()

    def _send(self) -> None:
        given = answer(self.server.live, self.path)
        self.send_response(given.status)
        self.send_header("Location" if given.status == 302 else "Content-Type", given.kind)
        self.send_header("Content-Length", str(len(given.body)))
        self.send_header("Cache-Control", "no-store")
        self.end_headers()
        if self.command != "HEAD":
            self._write(given.body)

    def _tell_news(self) -> None:
        self.send_response(200)
        self.send_header("Content-Type", "text/event-stream")
        self.send_header("Cache-Control", "no-store")
        self.end_headers()
        news = self.server.live.news
        while self.command != "HEAD" and self._write(_event(news)):
            news = self.server.live.wait(news, BREATH_SECONDS)

    def _write(self, data: bytes) -> bool:
        """Whether it could be sent: a page that was closed meanwhile is no fault."""
        try:
            self.wfile.write(data)
            self.wfile.flush()
        except OSError:
            return False
        return True


def _event(news: News) -> bytes:
    return f"data: {json.dumps({'build': news.build, 'trouble': news.trouble})}\n\n".encode()

"""Which bytes answer a browser's question while the sites are served live?

Each site stands under its own name (`/clients/`, `/staff/`). Pages are sent with one line more
than the published file has: the script that listens for a newer build.
"""

from __future__ import annotations

import mimetypes
import re
from dataclasses import dataclass
from html import escape
from importlib import resources
from pathlib import Path, PurePosixPath
from urllib.parse import unquote, urlsplit

from corymb.site.live.live_site import LiveSite, News

SCRIPT = "/live.js"
EVENTS = "/live-events"
TYPES = {".avif": "image/avif", ".js": "text/javascript", ".woff2": "font/woff2"}
UNKNOWN = "application/octet-stream"
THEME_ADDRESS = re.compile(rb'="(?P<base>/[^"]*?)assets/theme/')
TEXTS = ("text/html", "text/css", "text/javascript", "text/plain", "application/json")


@dataclass(frozen=True)
class Answer:
    """A status, a media type (for 302, the address to go to) and the bytes."""

    status: int
    kind: str
    body: bytes = b""


def answer(live: LiveSite, address: str) -> Answer:
    """The answer to a GET of `address`, the path as the browser sent it."""
    try:
        path = unquote(urlsplit(address).path)
    except ValueError:  # square brackets where a host's name would be
        return _elsewhere(live, address)
    if path == SCRIPT:
        return Answer(200, _header("text/javascript"), _script())
    name, slash, inside = path.lstrip("/").partition("/")
    if name not in live.folders:
        return _elsewhere(live, path)
    if not slash:
        return Answer(302, f"/{name}/")
    news = live.news  # before what it tells of: a page may be newer than it says, never older
    made = live.made_at(name, _page_at(inside))
    if isinstance(made, bytes):
        return _sent_as(_kind_of(_page_at(inside)), made, news)
    root = live.folders[name].resolve()
    file = made or _file_at(root, inside)
    if file is not None:
        return _sent(file, news)
    return _lost(live, root, news, name)


def page_asked(live: LiveSite, query: str) -> tuple[str, str]:
    """The site and the address in it of the page whose own path is the `query`."""
    path = unquote(query)
    name, _, inside = path.lstrip("/").partition("/")
    return (name, _page_at(inside)) if name in live.folders else ("", "")


def _page_at(inside: str) -> str:
    """A folder's own page is the one that stands for it."""
    return f"{inside}index.html" if inside.endswith("/") or not inside else inside


def _elsewhere(live: LiveSite, path: str) -> Answer:
    if path == "/":
        return Answer(302, f"/{next(iter(live.folders))}/")
    return Answer(404, _header("text/plain"), b"There is no such page.\n")


def _file_at(root: Path, inside: str) -> Path | None:
    """The file for an address inside a site; nothing outside its folder is ever sent."""
    if "\0" in inside:
        return None
    try:
        file = (root / inside).resolve()
        if not file.is_relative_to(root):
            return None
        if file.is_dir():
            file /= "index.html"
        return file if file.is_file() else None
    except (OSError, RuntimeError):  # a name too long for any file, a link that leads to itself
        return None


def _sent(file: Path, news: News) -> Answer:
    try:
        body = file.read_bytes()
    except OSError:  # it went with the last build while we looked
        return Answer(404, _header("text/plain"), b"This page has just gone.\n")
    return _sent_as(_kind_of(file.name), body, news)


def _kind_of(name: str) -> str:
    return TYPES.get(PurePosixPath(name).suffix) or mimetypes.guess_type(name)[0] or UNKNOWN


def _sent_as(kind: str, body: bytes, news: News) -> Answer:
    if kind == "text/html":
        body = _listening(body, news)
    return Answer(200, _header(kind), body)


def _lost(live: LiveSite, root: Path, news: News, name: str) -> Answer:
    """The site's own page for an address that leads nowhere."""
    made = live.made_at(name, "404.html")
    try:
        page = made if isinstance(made, bytes) else (root / "404.html").read_bytes()
    except OSError:
        return _waiting(news, name)
    return Answer(404, _header("text/html"), _listening(_moved_under(name, page), news))


def _moved_under(name: str, page: bytes) -> bytes:
    """The page with the addresses that begin at the root of its host beginning at `/name/`.

    Where the site begins on that host is seen from where its theme lies.
    """
    theme = THEME_ADDRESS.search(page)
    if theme is None:
        return page
    rooted = rb'="' + re.escape(theme["base"]) + rb"(?!/)"
    return re.sub(rooted, f'="/{name}/'.encode(), page)


def _waiting(news: News, name: str) -> Answer:
    """What stands in for a site that was never built: it shows what is wrong once that is known."""
    page = f"<!doctype html><meta charset=utf-8><title>{escape(name)}</title><body></body>"
    return Answer(404, _header("text/html"), _listening(page.encode(), news))


def _listening(page: bytes, news: News) -> bytes:
    """The page with the listening script at its end."""
    script = f'<script src="{SCRIPT}" data-build="{news.build}" data-events="{EVENTS}"></script>'
    head, end, tail = page.rpartition(b"</body>")
    return head + script.encode() + end + tail if end else page + script.encode()


def _header(kind: str) -> str:
    return f"{kind}; charset=utf-8" if kind in TEXTS else kind


def _script() -> bytes:
    return resources.files("corymb.site.live").joinpath("live.js").read_bytes()

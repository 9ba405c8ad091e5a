"""The live sites: what a browser is sent, when it refreshes, and what counts as a change."""

import json
import os
from collections.abc import Callable, Iterator
from http.client import HTTPConnection
from pathlib import Path
from socket import SHUT_WR, create_connection
from threading import Event, Thread, Timer

import pytest

from corymb.site.live.answers import answer, page_asked
from corymb.site.live.live_site import LiveSite
from corymb.site.live.server import LiveServer, PortBusyError
from corymb.site.live.watch import Watched, changes
from corymb.studio.problems import Problem

SECONDS = 5.0
HTML = "text/html; charset=utf-8"
TEXT = "text/plain; charset=utf-8"


@pytest.fixture
def live(tmp_path: Path) -> LiveSite:
    clients, staff = tmp_path / "out" / "clients", tmp_path / "out" / "staff"
    for folder in (clients, staff):
        (folder / "flowers").mkdir(parents=True)
        (folder / "index.html").write_text(f"<html><body>{folder.name}</body></html>")
        (folder / "404.html").write_text("<body>not here</body>")
    (clients / "flowers" / "index.html").write_text("<body>all flowers</body>")
    (clients / "head.svg").write_text("<svg/>")
    (clients / "photo.avif").write_bytes(b"avif")
    (tmp_path / "out" / "secret.txt").write_text("secret")
    if os.name != "nt":
        (clients / "round").symlink_to("round")
        (clients / "out").symlink_to(tmp_path / "out")
    return LiveSite({"clients": clients, "staff": staff})


@pytest.fixture
def server(live: LiveSite) -> Iterator[LiveServer]:
    server = LiveServer(live, 0)
    server.start()
    yield server
    server.stop()


@pytest.mark.parametrize(
    ("address", "status", "kind", "holds"),
    [
        pytest.param("/", 302, "/clients/", b"", id="the first site is the way in"),
        pytest.param("/staff", 302, "/staff/", b"", id="a site's name leads into it"),
        pytest.param("/staff/", 200, HTML, b"staff", id="its front page"),
        pytest.param("/clients/index.html?x=1", 200, HTML, b"clients", id="?"),
        pytest.param("/clients/flowers/", 200, HTML, b"all", id="a folder"),
        pytest.param("/clients/head.svg", 200, "image/svg+xml", b"<svg/>", id="a drawing"),
        pytest.param("/clients/photo.avif", 200, "image/avif", b"avif", id="a photo"),
        pytest.param("/clients/gone.html", 404, HTML, b"not here", id="gone"),
        pytest.param("/clients/../secret.txt", 404, HTML, b"not", id="up"),
        pytest.param("/clients/%2e%2e/secret.txt", 404, HTML, b"not", id="%"),
        pytest.param("/clients//etc/passwd", 404, HTML, b"not", id="root"),
        pytest.param("/clients/a%00b", 404, HTML, b"not here", id="nul"),
        pytest.param("/clients/" + "n" * 300, 404, HTML, b"not here", id="too long a name"),
        pytest.param("/clients/" + "n/" * 5000, 404, HTML, b"not here", id="too deep"),
        pytest.param("/clients/..%2f..%5c..%2fsecret.txt", 404, HTML, b"not", id="up by escapes"),
        pytest.param("/clients/round", 404, HTML, b"not here", id="a link to itself"),
        pytest.param("/clients/out/secret.txt", 404, HTML, b"not here", id="a link out"),
        pytest.param("/clients/\xff%ff%fe", 404, HTML, b"not here", id="no letters"),
        pytest.param("http://[elsewhere/", 404, TEXT, b"no such page", id="no address"),
        pytest.param("*", 404, TEXT, b"no such page", id="*"),
        pytest.param("/other/", 404, TEXT, b"no such page", id="elsewhere"),
        pytest.param("/live.js", 200, "text/javascript; charset=utf-8", b"EventSource", id="js"),
    ],
)
def test_an_address_is_answered_from_its_own_site_alone(
    live: LiveSite, address: str, status: int, kind: str, holds: bytes
) -> None:
    given = answer(live, address)
    assert (given.status, given.kind) == (status, kind)
    assert holds in given.body


@pytest.mark.parametrize(
    ("written", "sent"),
    [
        pytest.param(
            '<link href="/assets/theme/a.css"><a href="/care.html">',
            '<link href="/staff/assets/theme/a.css"><a href="/staff/care.html">',
            id="a site at the root of its host",
        ),
        pytest.param(
            '<link href="/shop/assets/theme/a.css"><a href="/shop/care.html">',
            '<link href="/staff/assets/theme/a.css"><a href="/staff/care.html">',
            id="a site in a folder of its host",
        ),
        pytest.param(
            '<script src="/assets/theme/a.js"></script><a href="//x.example/"><a href="#main">',
            '<script src="/staff/assets/theme/a.js"></script>'
            '<a href="//x.example/"><a href="#main">',
            id="addresses elsewhere and on the page",
        ),
    ],
)
def test_the_page_for_a_lost_address_finds_its_style_and_links_at_any_depth(
    live: LiveSite, written: str, sent: str
) -> None:
    (live.folders["staff"] / "404.html").write_text(f"{written}</body>")
    given = answer(live, "/staff/a/b/nope.html")
    assert given.status == 404
    assert given.body.decode().startswith(f"{sent}<script ")


def test_a_page_is_sent_with_the_listening_script_before_its_end(live: LiveSite) -> None:
    page = answer(live, "/clients/").body.decode()
    assert page.startswith("<html><body>clients<script ")
    assert page.endswith("</script></body></html>")
    assert f'data-build="{live.news.build}"' in page


def test_the_published_file_itself_holds_no_script(live: LiveSite) -> None:
    answer(live, "/clients/")
    assert "script" not in (live.folders["clients"] / "index.html").read_text()


def test_a_site_that_was_never_built_still_listens(tmp_path: Path) -> None:
    given = answer(LiveSite({"clients": tmp_path / "none"}), "/clients/")
    assert given.status == 404
    assert b"/live.js" in given.body


def test_errors_are_told_over_the_last_good_site_until_a_build_succeeds(live: LiveSite) -> None:
    first = live.news
    live.refused(
        [
            Problem(Path("studio.yml"), 3, 1, "`tax` is missing.", "money:"),
            Problem(Path("studio.yml"), 4, 1, "a thought.", advice=True),
        ]
    )
    assert live.news.build == first.build
    assert live.news.trouble == "studio.yml:3:1: `tax` is missing.\n    3 | money:\n        ^"
    live.published()
    assert live.news.build != first.build
    assert live.news.trouble == ""


def test_an_open_page_hears_of_a_new_build_at_once(server: LiveServer) -> None:
    first = server.live.news
    connection = HTTPConnection("127.0.0.1", server.server_port, timeout=SECONDS)
    connection.request("GET", "/live-events")
    events = connection.getresponse()
    assert _next_event(events) == {"build": first.build, "trouble": ""}
    server.live.published()
    assert _next_event(events) == {"build": server.live.news.build, "trouble": ""}
    connection.close()


OPEN = {
    "/clients/": ("clients", "index.html"),
    "/clients/flowers.html": ("clients", "flowers.html"),
    "/clients/a%20b.html": ("clients", "a b.html"),
    "": None,
    "/": None,
    "/elsewhere/": None,
    "/clients": ("clients", "index.html"),
    "/" + "x" * 60_000: None,
}


@pytest.mark.parametrize(("asked", "page"), OPEN.items(), ids=lambda value: str(value)[:24])
def test_a_page_counts_as_open_while_it_listens_and_one_of_no_site_never(
    live: LiveSite, asked: str, page: tuple[str, str] | None
) -> None:
    with live.looked_at(*page_asked(live, asked)), live.looked_at(*page_asked(live, asked)):
        assert live.open_pages() == ([page] if page else [])
    assert live.open_pages() == []


def _next_event(events: Iterator[bytes]) -> dict[str, str]:
    line = next(line for line in events if line.startswith(b"data: "))
    return dict(json.loads(line.removeprefix(b"data: ")))


HOSTS = {
    "its number": (["127.0.0.1:1"], 200),
    "its name": (["localhost:1"], 200),
    "its name in capitals": (["LOCALHOST"], 200),
    "another": (["elsewhere.example"], 403),
    "one that begins like it": (["localhost.elsewhere.example"], 403),
    "one behind it": (["localhost@elsewhere.example"], 403),
    "two": (["localhost", "elsewhere.example"], 403),
    "none": ([], 403),
}


@pytest.mark.parametrize(("hosts", "status"), HOSTS.values(), ids=HOSTS)
def test_only_this_computer_is_answered(server: LiveServer, hosts: list[str], status: int) -> None:
    connection = HTTPConnection("127.0.0.1", server.server_port, timeout=SECONDS)
    connection.putrequest("GET", "/staff/", skip_host=True)
    for host in hosts:
        connection.putheader("Host", host)
    connection.endheaders()
    given = connection.getresponse()
    assert given.status == status
    assert (b"This server answers to its own computer alone." in given.read()) is (status == 403)
    connection.close()


SITES = {
    "a page of its own": ("same-origin", "cors", 200),
    "a link elsewhere": ("cross-site", "navigate", 200),
    "a script elsewhere": ("cross-site", "cors", 403),
    "a picture elsewhere": ("cross-site", "no-cors", 403),
    "a server beside it": ("same-site", "cors", 403),
}


@pytest.mark.parametrize(("site", "mode", "status"), SITES.values(), ids=SITES)
@pytest.mark.parametrize("address", ["/live-events", "/staff/"])
def test_scripts_of_other_sites_hold_no_line(
    server: LiveServer, address: str, site: str, mode: str, status: int
) -> None:
    connection = HTTPConnection("127.0.0.1", server.server_port, timeout=SECONDS)
    connection.request("HEAD", address, headers={"Sec-Fetch-Site": site, "Sec-Fetch-Mode": mode})
    assert connection.getresponse().status == status
    connection.close()


@pytest.mark.parametrize("address", ["/staff/", "/gone", "/live.js", "/staff/head.svg"])
def test_every_answer_forbids_other_sites_to_frame_it_or_take_from_it(
    server: LiveServer, address: str
) -> None:
    connection = HTTPConnection("127.0.0.1", server.server_port, timeout=SECONDS)
    connection.request("GET", address, headers={"Host": "localhost"})
    given = connection.getresponse()
    assert str(given.getheader("Content-Security-Policy")).endswith("; frame-ancestors 'self'")
    assert given.getheader("Cross-Origin-Resource-Policy") == "same-origin"
    assert given.getheader("X-Content-Type-Options") == "nosniff"
    connection.close()


@pytest.mark.parametrize(
    "line", [b"GET " + b"/" * 70_000, b"\x16\x03\x01\r\n", b"GET\r\n", b"\r\n"]
)
def test_a_line_that_no_browser_sends_is_refused_and_the_server_stands(
    server: LiveServer, line: bytes
) -> None:
    with create_connection(("127.0.0.1", server.server_port), SECONDS) as raw:
        raw.sendall(line + b" HTTP/1.1\r\n\r\n")
        raw.shutdown(SHUT_WR)
        assert b" 200 " not in raw.makefile("rb").readline()
    connection = HTTPConnection("127.0.0.1", server.server_port, timeout=SECONDS)
    connection.request("GET", "/clients/")
    assert connection.getresponse().status == 200
    connection.close()


def test_a_port_in_use_is_refused(server: LiveServer) -> None:
    assert not LiveServer.allow_reuse_port
    assert LiveServer.allow_reuse_address is (os.name != "nt")
    with pytest.raises(PortBusyError):
        LiveServer(server.live, server.server_port)


@pytest.mark.parametrize(
    ("path", "counts"),
    [
        ("content/studio.yml", True),
        ("content/recipes/posy/jar.yml", True),
        ("content/photos/jar.jpg", True),
        ("content/recipes/posy/.jar.yml.swp", False),
        ("content/recipes/posy/jar.yml~", False),
        ("content/recipes/posy/4913", False),
        ("content/.git/index", False),
        ("content/__pycache__/x.pyc", False),
        ("content/out/clients/index.html", False),
    ],
)
def test_only_what_a_page_is_made_from_counts_as_a_change(
    tmp_path: Path, path: str, counts: bool
) -> None:
    content = tmp_path / "content"
    watched = Watched((content,), tmp_path / "mkdocs.yml", (content / "out",))
    assert watched.matters(tmp_path / path) is counts


def test_a_save_is_noticed_and_a_look_is_not(tmp_path: Path) -> None:
    recipe, settings = tmp_path / "content" / "jar.yml", tmp_path / "mkdocs.yml"
    recipe.parent.mkdir()
    recipe.write_text("name: Jar")
    settings.write_text("site_name: x")
    stop, seen = Event(), Event()
    watched = Watched((recipe.parent,), settings)
    built = watched.state()
    count = 0

    acts: list[tuple[Callable[[], object], bool]] = [
        (recipe.read_text, False),
        (lambda: recipe.write_text("name: A jar"), True),
        (lambda: (tmp_path / "other.txt").write_text("beside"), False),
        (lambda: settings.write_text("site_name: another"), True),
    ]

    def listen() -> None:
        nonlocal count
        for _ in changes(watched, built, stop):
            count += 1
            seen.set()

    thread = Thread(target=listen)
    thread.start()
    try:
        for act, noticed in acts:
            stop.wait(0.2)  # let the watcher begin, and what came before come to rest
            seen.clear()
            act()
            assert seen.wait(SECONDS if noticed else 0.6) is noticed
    finally:
        stop.set()
        thread.join(SECONDS)
    assert count == 2


def test_a_save_during_the_first_build_is_not_lost(tmp_path: Path) -> None:
    recipe = tmp_path / "content" / "jar.yml"
    recipe.parent.mkdir()
    recipe.write_text("name: Jar")
    watched = Watched((recipe.parent,), tmp_path / "mkdocs.yml")
    built = watched.state()
    recipe.write_text("name: A jar, saved while the first build ran")
    stop = Event()
    giving_up = Timer(SECONDS, stop.set)
    giving_up.start()
    assert next(changes(watched, built, stop), "nothing") is None
    giving_up.cancel()

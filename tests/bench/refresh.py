"""How long from saving a recipe to its page in the browser, by `corymb serve`, among many recipes?

Run `python -m tests.bench.refresh [RECIPES] [SAVES] [FOLDER]`. It makes a studio (or takes the one
in FOLDER), serves it as the command does, keeps the recipe's page open as a browser would, saves
the recipe again and again, and waits for each new page. It prints times; it asserts none.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from queue import Queue
from statistics import median
from tempfile import TemporaryDirectory
from threading import Event, Thread
from urllib.request import urlopen

from corymb.site.live.building import LiveBuilding
from corymb.site.live.live_site import LiveSite
from corymb.site.live.server import LiveServer
from corymb.site.live.watch import Watched, changes
from corymb.site.settings import read_settings
from corymb.views.pieces import AUDIENCES
from tests.bench.studios import make_studio

RECIPE = "beekeepers-jug"
ADDRESS = f"clients/arrangements/{RECIPE}.html"
EDITS: dict[str, Callable[[str, int], str]] = {
    "a sentence": lambda text, n: text.replace(
        "method:\n  - ", f"method:\n  - Said {n} times. ", 1
    ),
    "a count": lambda text, n: text.replace("stems:\n  - ", f"stems:\n  - {n % 3 + 1}", 1),
}


@contextmanager
def served(settings_file: Path) -> Iterator[tuple[str, Callable[[], None]]]:
    """The address of a studio that is served live, and a way to wait for both sites whole."""
    settings = read_settings(settings_file)
    live = LiveSite({who: settings.output(who) for who in AUDIENCES})
    whole, stop = Queue[float](), Event()
    building = LiveBuilding(live, AUDIENCES, lambda report: whole.put(time.perf_counter()))
    server = LiveServer(live, 0)
    server.start()
    watched = Watched.of(settings, AUDIENCES)
    before = watched.state()
    report = building.begin(settings)
    assert not report.errors, report.errors[:3]

    def keep_up() -> None:
        for _ in changes(watched, before, stop):
            building.keep_up(settings)

    watcher = Thread(target=keep_up, daemon=True)
    watcher.start()
    try:
        yield server.address, lambda: whole.get() and None
    finally:
        stop.set()
        watcher.join()
        building.end()
        server.stop()


def listen(address: str, news: Queue[tuple[float, float, bytes]]) -> None:
    """As a page does that is open: at each piece of news, fetch it again."""
    with urlopen(f"{address}live-events?/{ADDRESS}") as events:
        for line in events:
            if line.startswith(b"data"):
                told = time.perf_counter()
                with urlopen(address + ADDRESS) as page:
                    body = page.read()
                news.put((told, time.perf_counter(), body))


def main(recipes: int, saves: int, folder: Path) -> None:
    """Make, serve, save, and tell."""
    settings_file = folder / "mkdocs.yml"
    if not settings_file.exists():
        make_studio(folder, recipes)
    recipe = next((folder / "content" / "recipes").rglob(f"{RECIPE}.yml"))
    was = recipe.read_text("utf-8")
    print(f"{datetime.now():%H:%M}  making both sites of {folder} for the first time")
    with served(settings_file) as (address, both_whole):
        news: Queue[tuple[float, float, bytes]] = Queue()
        Thread(target=listen, args=(address, news), daemon=True).start()
        news.get()
        try:
            for what, edit in EDITS.items():
                tell(what, [save(recipe, edit(was, n), news, both_whole) for n in range(saves)])
        finally:
            recipe.write_text(was, "utf-8")
            both_whole()


def save(
    recipe: Path,
    text: str,
    news: Queue[tuple[float, float, bytes]],
    both_whole: Callable[[], None],
) -> tuple[float, float, float]:
    """Seconds from the save to the news, to the page, and to both sites whole."""
    began = time.perf_counter()
    recipe.write_text(text, "utf-8")
    told, there, _ = news.get()
    both_whole()
    whole = time.perf_counter()
    time.sleep(0.2)
    while not news.empty():
        news.get()
    return told - began, there - began, whole - began


def tell(what: str, times: list[tuple[float, float, float]]) -> None:
    """Medians, in milliseconds."""
    told, there, whole = (1000 * median(column) for column in zip(*times, strict=True))
    print(
        f"{what:<12} told {told:6.0f} ms   page there {there:6.0f} ms   "
        f"both sites whole {whole:7.0f} ms"
    )


if __name__ == "__main__":
    asked = sys.argv[1:]
    number, often = (int(asked[0]) if asked else 500), (int(asked[1]) if asked[1:] else 9)
    if asked[2:]:
        main(number, often, Path(asked[2]))
    else:
        with TemporaryDirectory() as place:
            main(number, often, Path(place))

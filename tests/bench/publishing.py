"""How long until a site stands in its folder? Run as `python -m tests.bench.publishing`.

2,000 pages with flat names, 1,000 drawn pictures and 1,000 photos, all made already. Beside each
time stands that of writing every file into an empty folder, which is neither safe nor spared.
Publishing what stands there already must take less than 0.1 s; so must one page that is told of.
"""

from __future__ import annotations

import random
import shutil
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from corymb.site.publishing import ToldFolder, Wanted, publish

PAGES, DRAWN, PHOTOS, ROUNDS = 2000, 1000, 1000, 5
PAGE_BYTES, DRAWN_BYTES, PHOTO_BYTES = 20_000, 12_000, 60_000  # as in the demo, on average
MOST_SECONDS = 0.1
EDITED = "arrangements/7.html"


class Bench:
    """A site, and the ways to get it into its folder."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.chance = random.Random(1)
        photos = [folder / "kept" / f"{number}.jpg" for number in range(PHOTOS)]
        (folder / "kept").mkdir()
        for photo in photos:
            photo.write_bytes(self.chance.randbytes(PHOTO_BYTES))
        self.copies = {f"assets/photos/{photo.name}": photo for photo in photos}
        self.written: dict[str, bytes] = {}
        self.all_new()
        self.told = ToldFolder(folder / "told")

    def all_new(self) -> None:
        """Every page and drawing with other contents."""
        for number in range(PAGES):
            self.written[f"arrangements/{number}.html"] = self.chance.randbytes(PAGE_BYTES)
        for number in range(DRAWN):
            self.written[f"assets/pictures/{number}.svg"] = self.chance.randbytes(DRAWN_BYTES)

    def one_new(self) -> None:
        """One page with other contents."""
        self.written[EDITED] = self.chance.randbytes(PAGE_BYTES)

    def nothing_new(self) -> None:
        """As it was."""

    def plainly(self) -> None:
        """Every file written, into an empty folder."""
        out = self.folder / "plain"
        for path, content in self.written.items():
            (out / path).write_bytes(content)
        for path, source in self.copies.items():
            shutil.copyfile(source, out / path)

    def emptied(self) -> None:
        """Ready for `plainly`; not timed."""
        shutil.rmtree(self.folder / "plain", ignore_errors=True)
        for path in {(self.folder / "plain" / path).parent for path in self.wanted()}:
            path.mkdir(parents=True, exist_ok=True)

    def wanted(self) -> Wanted:
        """All of it."""
        return Wanted(self.written, self.copies)

    def published(self) -> None:
        """As a build does it, which doesn't know what has changed."""
        publish(self.written, self.copies, self.folder / "clients")

    def published_as_told(self) -> None:
        """As a program does it that knows."""
        self.told.publish(self.wanted(), {EDITED})


def timed(work: Callable[[], None]) -> float:
    """In seconds."""
    began = time.perf_counter()
    work()
    return time.perf_counter() - began


def medians(
    bench: Bench, change: Callable[[], None], publishing: Callable[[], None]
) -> tuple[float, float]:
    """Of publishing after the change, and of plain writing; the two take turns."""
    ours, plain = [], []
    for _ in range(ROUNDS):
        change()
        ours.append(timed(publishing))
        bench.emptied()
        plain.append(timed(bench.plainly))
    return statistics.median(ours), statistics.median(plain)


def main() -> int:
    """Prints a line for each change; fails where it takes too long."""
    too_long = []
    with tempfile.TemporaryDirectory() as folder:
        bench = Bench(Path(folder))
        first = timed(bench.published)
        bench.told.publish(bench.wanted())
        bench.told.publish(bench.wanted(), ())
        sys.stdout.write(f"{'the first time':<24}{first:>9.3f} s\n")
        for told, change, publishing, most in (
            ("nothing changed", bench.nothing_new, bench.published, MOST_SECONDS),
            ("one page changed, told", bench.one_new, bench.published_as_told, MOST_SECONDS),
            ("one page changed", bench.one_new, bench.published, None),
            ("all pages changed", bench.all_new, bench.published, None),
        ):
            ours, plain = medians(bench, change, publishing)
            too_long += [told] if most is not None and ours > most else []
            sys.stdout.write(f"{told:<24}{ours:>9.3f} s   written plainly {plain:.3f} s\n")
    return int(bool(too_long))


if __name__ == "__main__":
    sys.exit(main())

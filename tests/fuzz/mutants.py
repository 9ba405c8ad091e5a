"""Is every slip in the demo's own files told in its place, or a site built of it all the same?

    python -m tests.fuzz.mutants                    10,000 slips, told by number where one fails
    python -m tests.fuzz.mutants --mutants 500      fewer
    python -m tests.fuzz.mutants --read-only        read and checked alone: no site is made
    python -m tests.fuzz.mutants --only 1234        one alone, with what it changes

Each file of the demo gets as many slips as the next, in a little studio around it. Slips depend on
the seed and their number alone, so one that failed can be tried again.
"""

# ruff: noqa: T201 - it prints what it finds
from __future__ import annotations

import argparse
import difflib
import gc
import os
import sys
from collections import Counter
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor, as_completed
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path, PurePosixPath
from random import Random
from shutil import rmtree
from tempfile import TemporaryDirectory

from corymb.checks import read_and_check
from corymb.files.sharing import SharedUse
from corymb.site.live.workshop import Workshop
from corymb.site.settings import read_settings
from corymb.studio.studio import Studio
from corymb.views.pieces import AUDIENCES
from tests.fuzz.judging import DAY, Verdict, judge
from tests.fuzz.little import SETTINGS, Demo
from tests.slips.commands import ASKED, answer
from tests.slips.drawn import Drawn, draw
from tests.slips.files import Change, Files

ROOT = Path(__file__).parent.parent.parent
SEED = 7
GOOD_ENDS = ("told", "built")
KEPT = ("pictures", "photos", "links", "benches")
ANEW = 10
"""One site in so many is built anew; the others from what still holds of the one before."""
ALL_COMMANDS = 50
"""One in so many is asked of by every command, too."""
BEFORE_TIDYING = 20
"""Builds between two looks for what is no longer needed: looking costs more than it frees."""


@dataclass(frozen=True)
class Mutant:
    """One slip, and what became of the studio."""

    number: int
    told: str
    shown: str
    verdict: Verdict


@dataclass
class Bench:
    """A folder with one little studio in it, laid out as the demo is."""

    folder: Path
    files: Files
    good: Studio | None = None
    makes: bool = True
    workshop: Workshop | None = None

    @property
    def studio(self) -> Path:
        """The studio's folder."""
        return self.folder / "content"

    @property
    def settings(self) -> Path:
        """Its mkdocs.yml."""
        return self.folder / "site_demo" / SETTINGS

    def _file(self, path: str) -> Path:
        return self.settings if path == SETTINGS else self.studio / path

    def lay_out(self) -> None:
        """Everything as it was."""
        for path, text in self.files.items():
            self._write(path, text)
        self.good = read_and_check(self.studio)[0]

    def _write(self, path: str, text: bytes | None) -> None:
        file = self._file(path)
        if text is None:
            file.unlink(missing_ok=True)
            return
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(text)

    @contextmanager
    def with_slip(self, change: Change) -> Iterator[None]:
        """The studio with a slip, and as it was again afterwards."""
        for path, text in change.items():
            self._write(path, text)
        try:
            yield
        finally:
            for path in change:
                self._write(path, self.files.get(path))
            if SETTINGS in change:  # which may have led elsewhere
                rmtree(self.studio)
                self.lay_out()

    def try_out(self, number: int, drawn: Drawn) -> Mutant:
        """What becomes of the studio with a slip."""
        with self.with_slip(drawn.change):
            was = " ".join(self.files[path].decode("utf-8", "replace") for path in self._had(drawn))
            change = {path: text for path, text in drawn.change.items() if path != SETTINGS}
            in_place = (
                all(text is not None for text in change.values()) and SETTINGS not in drawn.change
            )
            good = self.good if in_place and change.keys() <= self.files.keys() else None
            followed = self._workshop() if number % ANEW and SETTINGS not in drawn.change else None
            verdict = judge(self.studio, self.settings, change, was, good, self.makes, followed)
            if verdict.came not in GOOD_ENDS:
                self.workshop = None
            if number % ALL_COMMANDS == 0 and verdict.came in GOOD_ENDS:
                verdict = self._asked(verdict)
        shown = "" if verdict.came in GOOD_ENDS else self.shown(drawn)
        return Mutant(number, drawn.told, shown, verdict)

    def _workshop(self) -> Workshop:
        """What makes the sites from one slip to the next."""
        if self.workshop is None:
            kept = (self.folder / ".cache" / "corymb").resolve()
            settings = replace(read_settings(self.settings), cache_folder=kept)
            self.workshop = Workshop(settings, AUDIENCES, DAY)
        return self.workshop

    def _asked(self, verdict: Verdict) -> Verdict:
        """The same, or the traceback of a command that stumbled."""
        for command in ASKED:
            traceback = answer(command, self.settings, **self._names())[2]
            if traceback:
                return replace(verdict, came="traceback", why=f"corymb {command}\n{traceback}")
        return verdict

    def _names(self) -> dict[str, str]:
        """What a command can be asked of."""
        first = {path.split("/")[0]: PurePosixPath(path).stem for path in sorted(self.files)}
        photo = next((path for path in self.files if path.startswith("photos/")), "none.jpg")
        return {
            "recipe": first.get("recipes", "none"),
            "order": first.get("orders", "none"),
            "photo": str(self.studio / photo),
            "out": str(self.folder / "out.html"),
        }

    def _had(self, drawn: Drawn) -> list[str]:
        return [path for path in drawn.change if path in self.files]

    def shown(self, drawn: Drawn) -> str:
        """What a slip changes, line by line."""
        lines: list[str] = []
        for path, text in drawn.change.items():
            was, now = (
                (each or b"").decode("utf-8", "backslashreplace").split("\n")
                for each in (self.files.get(path), text)
            )
            lines += difflib.unified_diff(was, now, path, path, n=0, lineterm="")
        return "\n".join(repr(line)[1:-1][:200] for line in lines[:16])


def demo() -> Demo:
    """The demo as it stands in the repository."""
    return Demo(ROOT / "content", ROOT / "site_demo" / SETTINGS)


def drawn_for(files: Files, file: str, seed: int, number: int) -> Drawn:
    """The slip of a number."""
    return draw(files, file, Random(f"{seed} {number}"))


def try_all(
    file: str, numbers: list[int], seed: int, folder: Path, makes: bool = True
) -> list[Mutant]:
    """Every slip of some numbers in one file."""
    little = demo().around(file)
    bench = Bench(folder / f"{numbers[0]}", little, makes=makes)
    bench.lay_out()
    (bench.folder / ".cache").symlink_to(folder / "cache")
    tried: list[Mutant] = []
    for at, number in enumerate(numbers):
        tried.append(bench.try_out(number, drawn_for(little, file, seed, number)))
        if at % BEFORE_TIDYING == BEFORE_TIDYING - 1:
            gc.collect()
    rmtree(bench.folder)
    return tried


def run(mutants: int, seed: int, processes: int, cache: Path, makes: bool) -> list[Mutant]:
    """So many slips over all files; those that fail are told as they come."""
    files = demo().files
    by_file = {file: list(range(at, mutants, len(files))) for at, file in enumerate(files)}
    done: list[Mutant] = []
    with (
        TemporaryDirectory() as name,
        ProcessPoolExecutor(processes, initializer=gc.disable) as pool,
    ):
        folder = Path(name)
        cache.mkdir(parents=True, exist_ok=True)
        (folder / "cache").symlink_to(cache)
        uses = [SharedUse(kept_in(folder, kind) / "in-use") for kind in KEPT]
        trying = [pool.submit(try_all, f, n, seed, folder, makes) for f, n in by_file.items() if n]
        for one in as_completed(trying):
            done += one.result()
            tell(one.result(), len(done), mutants)
        for use in uses:  # until here, no build forgot what another had made
            use.end()
    return done


def kept_in(folder: Path, kind: str) -> Path:
    """Where builds keep one kind of picture for each other."""
    kept = folder / "cache" / "corymb" / kind
    kept.mkdir(parents=True, exist_ok=True)
    return kept


def tell(tried: list[Mutant], done: int, of: int) -> None:
    """What failed among those that were just tried, and how far the run is."""
    for mutant in tried:
        if mutant.verdict.came not in GOOD_ENDS:
            print(f"\n#{mutant.number} {mutant.verdict.came}: {mutant.told}")
            print(mutant.shown, mutant.verdict.why, sep="\n")
    if done // 100 > (done - len(tried)) // 100:
        print(f"{done}/{of}", flush=True)


def tell_sums(done: list[Mutant]) -> None:
    """How many came to which end, and what took longest."""
    for came, number in Counter(mutant.verdict.came for mutant in done).most_common():
        print(f"{number:>6} {came}")
    slowest = max(done, key=lambda mutant: mutant.verdict.reading)
    print(f"slowest read and checked: {slowest.verdict.reading:.2f} s, {slowest.told}")
    slowest = max(done, key=lambda mutant: mutant.verdict.building)
    print(f"slowest built: {slowest.verdict.building:.2f} s, {slowest.told}")


def main() -> None:
    """The command."""
    asked = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    asked.add_argument("--mutants", type=int, default=10_000)
    asked.add_argument("--seed", type=int, default=SEED)
    asked.add_argument("--processes", type=int, default=os.cpu_count() or 1)
    asked.add_argument("--read-only", action="store_true")
    asked.add_argument("--cache", type=Path, default=ROOT / ".cache" / "mutants")
    asked.add_argument("--only", type=int, nargs="*", default=[])
    given = asked.parse_args()
    if given.only:
        files = demo().files
        with TemporaryDirectory() as folder:
            (Path(folder) / "cache").mkdir()
            for number in given.only:
                tried = try_all(files[number % len(files)], [number], given.seed, Path(folder))
                tell(tried, 1, 1)
                print(tried)
        return
    done = run(
        given.mutants, given.seed, given.processes, given.cache.resolve(), not given.read_only
    )
    tell_sums(done)
    sys.exit(any(mutant.verdict.came not in GOOD_ENDS for mutant in done))


if __name__ == "__main__":
    main()

"""Is a site that is edited step by step as a new build makes it? `python -m tests.fuzz.edits`.

A copy of the whole demo is edited, one edit after the other, with a workshop open beside it. Most
edits are slips (`tests/slips`), many of which are true edits as well; others are undone, or take
away, bring back, copy and swap whole files, photos too. After each, a new process that knows
nothing of what was before reads everything anew. Both must tell the same problems. Every few edits,
where nothing is wrong, both make the sites whole, and these must be the same, byte for byte, as
must the pages that were asked for just before. The first number asks for so many edits (300), a
second one for another course; `little` after it, for a little studio around one of the demo's
orders in place of the whole, another one for each course.
"""

from __future__ import annotations

import re
import shutil
import sys
import tempfile
import traceback
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from random import Random

from corymb.site.build import BuildReport
from corymb.site.live.workshop import Workshop
from corymb.site.settings import SiteSettings, read_settings
from corymb.site.site import AddressTakenError
from corymb.views.pieces import AUDIENCES, Audience
from tests.fuzz.anew import DAY, Anew, Made, Sites, is_wrong
from tests.fuzz.little import SETTINGS as DEMO_SETTINGS
from tests.fuzz.little import Demo
from tests.site.sites_made import differences
from tests.slips.drawn import draw
from tests.slips.files import Change
from tests.slips.values import OF_VALUES

ROOT = Path(__file__).parents[2]
SEED = 20260916
EDITS = 300
WHOLE_AFTER = 4
"""Sites are made whole after so many edits that left nothing wrong: that takes longest."""
BAD_IN_A_ROW = 3
"""So often something may be wrong before all of it is undone."""
PAGES_ASKED = 4
ID = re.compile(r"[a-z]+(?:-[a-z]+)+")
STEM = re.compile(r"(?m)^  ([a-z0-9-]+):$")
SETTINGS = """\
site_name: The studio
docs_dir: content/pages
site_url: https://teaselandrook.example/
use_directory_urls: false
theme: {name: corymb}
plugins:
  - corymb: {studio: content, cache: {cache}, staff_url: https://bench.example/}
"""


def _write_little(folder: Path, random: Random) -> None:
    demo = Demo(ROOT / "content", ROOT / "site_demo" / "mkdocs.yml")
    around = random.choice([name for name in demo.files if name.startswith("orders/")])
    for name, data in demo.around(around).items():
        if name != DEMO_SETTINGS:
            file = folder / name
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(data)


class Bench:
    """The copy that is edited, what it was to begin with, and how the edits are drawn."""

    def __init__(self, folder: Path, random: Random, little: bool) -> None:
        self.folder = folder / "content"
        if little:
            _write_little(self.folder, random)
        else:
            shutil.copytree(ROOT / "content", self.folder)
        self.settings_file = folder / "mkdocs.yml"
        cache = ROOT / ".cache" / "edits"
        self.settings_file.write_text(SETTINGS.replace("{cache}", str(cache)), "utf-8")
        self.random = random
        self.first = self._read()
        self.now = dict(self.first)
        self.known = dict(self._ids())
        self.photos = sorted(name for name in self.first if name.startswith("photos/"))

    def _read(self) -> dict[str, bytes]:
        files = (file for file in sorted(self.folder.rglob("*")) if file.is_file())
        return {file.relative_to(self.folder).as_posix(): file.read_bytes() for file in files}

    def _ids(self) -> Iterator[tuple[str, str]]:
        """The ids of stems, recipes, lessons, and of what kind each is."""
        for name, data in self.first.items():
            kind = name.partition("/")[0]
            if kind == "stems":
                yield from ((known_as, kind) for known_as in STEM.findall(data.decode()))
            elif kind in ("recipes", "techniques"):
                yield Path(name).stem, kind

    def save(self, change: Change) -> Change:
        """Write it; what would undo it."""
        undo: Change = {name: self.now.get(name) for name in change}
        for name, data in change.items():
            file = self.folder / name
            if data is None:
                file.unlink(missing_ok=True)
                self.now.pop(name, None)
                continue
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_bytes(data)
            self.now[name] = data
        return undo

    def edit(self) -> tuple[str, Change]:
        """One edit, or several at once."""
        told, change = self._one()
        while not self.random.randrange(4):
            more, other = self._one()
            told, change = f"{told}; {more}", {**change, **other}
        return told, change

    def _one(self) -> tuple[str, Change]:
        random = self.random
        drawn = random.randrange(20)
        if drawn == 0:
            one, other = random.choice(self.photos), random.choice(self.photos)
            return f"{other} in place of {one}", {one: self.first[other]}
        if drawn == 1:
            one = random.choice(self.photos)
            return f"{one} as it was, or saved anew", {one: self.first[one]}
        if drawn < 5 and (back := self._unlike_the_first()):
            one = random.choice(back)
            return f"{one} as it was", {one: self.first.get(one)}
        texts = {name: data for name, data in self.now.items() if not name.startswith("photos/")}
        if drawn < 13:
            return self._meant(texts)
        slip = draw(texts, random.choice(sorted(texts)), random)
        return slip.told, slip.change

    def _meant(self, texts: dict[str, bytes]) -> tuple[str, Change]:
        """What someone might well want: another number, another stem or recipe, another word."""
        random = self.random
        name = random.choice(sorted(texts))
        lines = texts[name].decode(errors="replace").split("\n")
        at = random.choice([at for at, line in enumerate(lines) if line.strip()] or [0])
        found = [each for each in ID.findall(lines[at]) if each in self.known]
        if found:
            out, come = random.choice(found), random.choice(self.known_beside(found[0]))
            lines[at] = lines[at].replace(out, come)
        elif re.search(r"\d", lines[at]):
            lines[at] = OF_VALUES["a number by a hair"](lines[at], random)
        else:
            lines[at] += " again"
        return f"{name}: {lines[at]}", {name: "\n".join(lines).encode()}

    def known_beside(self, known_as: str) -> list[str]:
        """All ids from files of the same kind."""
        kind = self.known[known_as]
        return sorted(each for each, of in self.known.items() if of == kind)

    def _unlike_the_first(self) -> list[str]:
        names = sorted(self.first.keys() | self.now.keys())
        return [name for name in names if self.first.get(name) != self.now.get(name)]


class Run:
    """Edits, one after the other, and what went wrong with them."""

    def __init__(self, bench: Bench) -> None:
        self.bench = bench
        self.settings: SiteSettings = read_settings(bench.settings_file)
        self.workshop = Workshop(self.settings, AUDIENCES, DAY)
        self.whole: Sites = {}
        self.edits: list[str] = []
        self.undo: list[Change] = []
        self.good = self.bad = 0
        self.came: Counter[str] = Counter()

    def step(self) -> Iterator[str]:
        """One edit; every fault that is found."""
        if self.undo and (self.bad >= BAD_IN_A_ROW or self.bench.random.random() < 0.5):
            told, change = "what was wrong undone", self._undone()
        else:
            told, change = self.bench.edit()
            self.undo.append(self.bench.save(change))
        self.edits.append(f"{told} {sorted(change)}")
        try:
            yield from self._compare([*change])
        except Exception:
            yield traceback.format_exc(limit=-6)
            self.came["stumbled"] += 1
            self._begin_again()

    def _undone(self) -> Change:
        change: Change = {}
        while self.undo:
            change |= self.undo.pop()
            self.bench.save(change)
        return change

    def _begin_again(self) -> None:
        self.workshop = Workshop(self.settings, AUDIENCES, DAY)

    def _compare(self, changed: list[str]) -> Iterator[str]:
        whole = self.good >= WHOLE_AFTER or not self.whole
        anew = Anew(self.bench.settings_file, whole)
        told = self.workshop.look()
        pages = {} if is_wrong(told) else self._asked(changed)
        made = anew.made()
        if told != made.told:
            yield _first_of("told otherwise", [*map(str, told)], [*map(str, made.told)])
            self.came["told otherwise"] += 1
            self._begin_again()
        elif is_wrong(told):
            self.bad += 1
            self.came["wrong"] += 1
        elif not whole:
            self.good, self.bad, self.undo = self.good + 1, 0, []
            self.came["good"] += 1
        else:
            self.good, self.bad, self.undo = 0, 0, []
            yield from self._compare_whole(made, pages)
            self.edits = []

    def _asked(self, changed: list[str]) -> dict[tuple[Audience, str], bytes | None]:
        """Some pages before the whole: those called like a file that was saved, and others."""
        asked: dict[tuple[Audience, str], bytes | None] = {}
        for who, site in self.whole.items():
            ids = {Path(name).stem for name in changed}
            own = [page for page in site.pages if Path(page).stem.partition("--")[0] in ids]
            others = self.bench.random.choices(sorted(site.pages), k=PAGES_ASKED)
            # A style link's own drawings are made with the whole, which refreshes it once more.
            for page in [each for each in [*own[:PAGES_ASKED], *others] if "links/" not in each]:
                asked[who, page] = self.workshop.page(who, page)
        return asked

    def _compare_whole(
        self, made: Made, pages: dict[tuple[Audience, str], bytes | None]
    ) -> Iterator[str]:
        try:
            sites = self.workshop.sites(BuildReport())
        except AddressTakenError as error:
            if str(error) != made.refused:
                yield f"refused: {error}, but anew: {made.refused or 'made'}"
            return
        self.came["whole and the same"] += 1
        found = differences(sites, made.sites)
        asked = [
            f"{who}/{page} was asked for and is another in the whole"
            for (who, page), data in pages.items()
            if data and data != sites[who].pages.get(page, data)
        ]
        if found or asked:
            self.came["whole and the same"] -= 1
            self.came["whole and different"] += 1
            yield "\n".join([*found[:20], *asked, *_looked_into(found, sites, made.sites)])
            self._begin_again()
        self.whole = made.sites


def _looked_into(found: list[str], one: Sites, other: Sites) -> Iterator[str]:
    for each in found[:3]:
        who, _, address = each.partition("/")
        if who in one and who in other:
            here, there = (sites[who].pages.get(address, b"") for sites in (one, other))
            yield _first_of(each, here.decode().split("\n"), there.decode().split("\n"))


def _first_of(what: str, here: list[str], there: list[str]) -> str:
    """The first few lines that only one of the two has."""
    only, missing = Counter(here) - Counter(there), Counter(there) - Counter(here)
    shown = [f"  + {line[:400]}" for line in [*only][:4]]
    shown += [f"  - {line[:400]}" for line in [*missing][:4]]
    return "\n".join([f"{what}:", *(shown or ["  in another order"])])


def _tell(lines: list[str]) -> None:
    sys.stdout.write("\n  ".join(lines) + "\n")
    sys.stdout.flush()


def main(edits: int = EDITS, seed: int = SEED, little: bool = False) -> int:
    """The command."""
    faults = 0
    with tempfile.TemporaryDirectory() as folder:
        run = Run(Bench(Path(folder), Random(seed), little))
        for number in range(edits):
            for fault in run.step():
                faults += 1
                _tell([f"edit {number} of seed {seed}:", *run.edits, *fault.split("\n")])
            if number % 10 == 9:
                _tell([f"{number + 1} edits: {dict(run.came)}, {faults} faults"])
    return 1 if faults else 0


if __name__ == "__main__":
    words = sys.argv[1:]
    numbers = [int(word) for word in words if word.isdigit()]
    course = dict(zip(("edits", "seed"), numbers, strict=False))
    sys.exit(main(**course, little="little" in words))

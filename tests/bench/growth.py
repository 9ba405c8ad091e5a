"""Does all take as much longer as the studio is larger? Run as `python -m tests.bench.growth`.

Studios of 50, 500 and 5,000 recipes, or of as many as are told, each recipe with stems and a photo
of its own. Photos are made beforehand and kept. Each build is a new process, and so is the
workshop in which one recipe is edited. Seconds are those of the processors, of all processes
together, for the machine may have other work. Beside each size but the first stands how much a
recipe costs there, beside one of the first: 1.0 is linear, less is better. `--in FOLDER` keeps the
studios there for the next time.
"""

from __future__ import annotations

import argparse
import json
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from functools import partial
from pathlib import Path
from statistics import median

from corymb.site.build import BuildReport
from corymb.site.live.workshop import Workshop
from corymb.site.settings import SiteSettings, read_settings
from corymb.views.pieces import AUDIENCES
from tests.bench.measuring import Took, peak_mb, size_of, took
from tests.bench.pages import DAY, build
from tests.bench.studios import make_studio

SIZES = (50, 500, 5000)
KEPT_DRAWN = ("pictures", "links", "benches")
EDITS = 3
Found = dict[str, float]


def built(settings: SiteSettings) -> Found:
    """One build in this process."""
    return {"s": took(partial(build, settings)).busy, "MB": peak_mb()}


def edited(settings: SiteSettings) -> Found:
    """A workshop: the whole of both sites, and then after each edit of one recipe."""
    shop = Workshop(settings, AUDIENCES, DAY)
    first = took(lambda: (shop.look(), shop.sites(BuildReport())))
    file, text = a_recipe(settings)
    looks, pages, wholes = list[Took](), list[Took](), list[Took]()
    for number in range(EDITS):
        file.write_text(with_edit(text, number), "utf-8")
        looks.append(took(shop.look))
        pages.append(took(lambda: shop.page("clients", f"arrangements/{file.stem}.html")))
        wholes.append(took(lambda: shop.sites(BuildReport())))
    file.write_text(text, "utf-8")
    return {
        "whole at first s": first.busy,
        "look s": median(each.busy for each in looks),
        "page s": median(each.busy for each in pages),
        "whole after s": median(each.busy for each in wholes),
        "MB": peak_mb(),
    }


def a_recipe(settings: SiteSettings) -> tuple[Path, str]:
    """The file that is edited, and what is in it."""
    file = sorted(settings.studio_folder.glob("recipes/*/*.yml"))[7]
    return file, file.read_text("utf-8")


def with_edit(text: str, number: int) -> str:
    """Another sentence in its summary."""
    return text.replace("summary: ", f"summary: Edited {number}. ", 1)


def alone(work: str, settings: SiteSettings) -> Found:
    """What `work` finds in a process of its own."""
    command = [sys.executable, "-m", "tests.bench.growth", "--work", work]
    told = subprocess.run(
        [*command, str(settings.config_file)], check=True, capture_output=True, text=True
    )
    found: Found = json.loads(told.stdout.splitlines()[-1])
    return found


def measured(folder: Path, recipes: int) -> Found:
    """Everything of one size."""
    if not (folder / "mkdocs.yml").exists():
        folder.mkdir(parents=True, exist_ok=True)
        make_studio(folder, recipes)
    settings = read_settings(folder / "mkdocs.yml")
    alone("build", settings)  # photos and drawings are there from here on
    found: Found = {}
    _tell(found, "cold pages", _fresh(settings, drawn=False))
    _tell(found, "cold pages and drawings", _fresh(settings, drawn=True))
    _tell(found, "nothing changed", alone("build", settings))
    file, text = a_recipe(settings)
    file.write_text(with_edit(text, EDITS), "utf-8")
    _tell(found, "one edited, built", alone("build", settings))
    file.write_text(text, "utf-8")
    _tell(found, "workshop", alone("edits", settings))
    files, size = size_of(*map(settings.output, AUDIENCES))
    return {**found, "files": files, "output MB": size / 1e6}


def _fresh(settings: SiteSettings, drawn: bool) -> Found:
    for audience in AUDIENCES:
        shutil.rmtree(settings.output(audience), ignore_errors=True)
    for kept in KEPT_DRAWN if drawn else ():
        shutil.rmtree(settings.cache_folder / kept, ignore_errors=True)
    return alone("build", settings)


def _tell(found: Found, name: str, more: Found) -> None:
    found.update((f"{name}, {what}", value) for what, value in more.items())


WORKS: dict[str, Callable[[SiteSettings], Found]] = {"build": built, "edits": edited}


def main() -> int:
    """Prints a line for each measure, with a column for each size."""
    asked = argparse.ArgumentParser(prog="tests.bench.growth")
    asked.add_argument("recipes", nargs="*", default=SIZES)
    asked.add_argument("--in", dest="folder", type=Path)
    asked.add_argument("--work", choices=WORKS)
    told = asked.parse_args()
    if told.work:
        found = WORKS[told.work](read_settings(Path(told.recipes[0])))
        sys.stdout.write(json.dumps(found) + "\n")
        return 0
    sizes = [int(each) for each in told.recipes]
    with tempfile.TemporaryDirectory() as temporary:
        folder = told.folder or Path(temporary)
        _table(sizes, [measured(folder / f"{size}", size) for size in sizes])
    return 0


def _table(sizes: list[int], found: list[Found]) -> None:
    write = sys.stdout.write
    write(f"{'recipes':<34}{sizes[0]:>10}" + "".join(f"{size:>19}" for size in sizes[1:]) + "\n")
    for name, first in found[0].items():
        write(f"{name:<34}{first:>10.3f}")
        for size, one in zip(sizes[1:], found[1:], strict=True):
            a_recipe_costs = (one[name] / size) / (first / sizes[0]) if first else 0.0
            write(f"{one[name]:>11.3f} ({a_recipe_costs:4.2f})")
        write("\n")


if __name__ == "__main__":
    sys.exit(main())

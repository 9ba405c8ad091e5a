"""How much more than rendering does a build take? Run as `python -m tests.bench.pages`.

Of a studio of 500 recipes (or as many as are told). The floor is what no build can do without: the
same templates rendered by plain Jinja2 with their views ready, and the files written. Beside it a
whole build with its photos in the cache, read, checked, composed, rendered and published into
folders that aren't there yet: with the drawings kept, and with every drawing made anew. Then 2,000
of the pages, rendered as a build does it. `--in FOLDER` keeps the studio there for the next time.
"""

from __future__ import annotations

import argparse
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator
from datetime import date
from functools import partial
from itertools import cycle, islice
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined, pass_context
from jinja2.runtime import Context

from corymb.language import gettext, in_language, ngettext, pgettext
from corymb.photos import PhotoCache
from corymb.site.build import BuildReport, Images, build_sites, make_images, read_checked
from corymb.site.pages import Making, Page, all_pages
from corymb.site.quick_templates import typeset
from corymb.site.render import TEMPLATES, environment, render, url_from
from corymb.site.settings import SiteSettings, read_settings
from corymb.site.site import SiteMaker
from corymb.studio.studio import Studio
from corymb.views.compose.catalogue import Catalogue
from corymb.views.pieces import AUDIENCES, Audience
from tests.bench.measuring import Took, took
from tests.bench.studios import make_studio

RECIPES, PAGES = 500, 2000
DAY = date(2026, 9, 19)
Ready = list[tuple[Making, Page]]


def bare() -> Environment:
    """Jinja2 as it comes, with the settings, filters and functions that the templates need."""
    ours = environment()
    plain = Environment(
        loader=FileSystemLoader(TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
        finalize=typeset,
        extensions=["jinja2.ext.i18n"],
        auto_reload=False,
    )
    plain.policies |= ours.policies
    plain.globals = {**ours.globals}
    plain.filters |= ours.filters
    plain.install_gettext_callables(  # type: ignore[attr-defined]
        gettext, ngettext, newstyle=True, pgettext=pgettext
    )
    words: dict[str, Any] = plain.globals
    words |= {name: typeset_within(words[name]) for name in ("gettext", "ngettext", "pgettext")}
    words["_"] = words["gettext"]
    return plain


def typeset_within(say: Callable[..., Any]) -> Callable[..., Any]:
    """The same sentence, with what is put into it typeset."""

    @pass_context
    def said(context: Context, *words: Any, **put_in: object) -> Any:
        return say(context, *words, **{name: typeset(value) for name, value in put_in.items()})

    return said


def studio_in(folder: Path, recipes: int) -> SiteSettings:
    """A studio of so many recipes, made where there is none, and built once."""
    if not (folder / "mkdocs.yml").exists():
        folder.mkdir(parents=True, exist_ok=True)
        make_studio(folder, recipes)
    settings = read_settings(folder / "mkdocs.yml")
    build(settings)
    return settings


def build(settings: SiteSettings) -> None:
    """Both sites."""
    report = build_sites(settings, AUDIENCES, DAY)
    assert not report.errors, report.errors[0]


def built_anew(settings: SiteSettings, drawn: bool) -> Took:
    """A build into new folders; with everything `drawn` once more, if wanted."""
    for audience in AUDIENCES:
        shutil.rmtree(settings.output(audience), ignore_errors=True)
    if drawn:
        for kept in ("pictures", "links", "benches"):
            shutil.rmtree(settings.cache_folder / kept, ignore_errors=True)
    return took(partial(build, settings))


def ready_pages(settings: SiteSettings) -> tuple[Studio, Ready]:
    """Every page of both sites with its view made, ready to be rendered."""
    report = BuildReport()
    studio = read_checked(settings.studio_folder, report)
    assert studio is not None
    with PhotoCache(settings.cache_folder / "photos") as cache:
        images = make_images(studio, settings, cache, report)
    with in_language(studio.house.language):
        makings = [making_of(studio, audience, settings, images) for audience in AUDIENCES]
        return studio, [(making, page) for making in makings for page in all_pages(making)]


def making_of(studio: Studio, audience: Audience, settings: SiteSettings, images: Images) -> Making:
    """What an audience's pages are made from, once its site was made whole."""
    pictures = images.pictures
    catalogue = Catalogue(
        studio,
        audience,
        DAY,
        photos=images.photos,
        drawings=pictures.drawings,
        heads=pictures.heads,
        plans=pictures.plans,
        sizes=pictures.sizes,
    )
    maker = SiteMaker(catalogue, settings)
    maker.whole(pictures)
    return maker.making


def rendered_plainly(pages: Ready, into: Path) -> None:
    """Every page by plain Jinja2, and written."""
    plain = bare()
    for making, page in pages:
        file = into / making.catalogue.audience / page.frame.path
        file.parent.mkdir(parents=True, exist_ok=True)
        shown: dict[str, Any] = {"site": making.site, "page": page.frame, "view": page.view}
        template = plain.get_template(page.frame.template)
        file.write_bytes(template.render(**shown, url=url_from(page.frame.path)).encode())


def written_alike(pages: Ready, into: Path) -> bool:
    """Whether plain Jinja2 made the pages that a build makes."""
    return all(
        (into / making.catalogue.audience / page.frame.path).read_bytes()
        == render(making.site, page.frame, page.view)
        for making, page in pages
    )


def some(pages: Ready) -> Iterator[tuple[Making, Page]]:
    """2,000 of them, taken from all kinds alike; again and again where there are fewer."""
    return islice(cycle(pages[:: max(1, len(pages) // PAGES)]), PAGES)


def main() -> int:
    """Prints the times and how many times the floor they are."""
    asked = argparse.ArgumentParser(prog="tests.bench.pages")
    asked.add_argument("recipes", type=int, nargs="?", default=RECIPES)
    asked.add_argument("--in", dest="folder", type=Path)
    told = asked.parse_args()
    with tempfile.TemporaryDirectory() as temporary:
        folder = Path(temporary)
        measure(told.folder or folder / "studio", told.recipes, folder)
    return 0


def measure(where: Path, recipes: int, folder: Path) -> None:
    """One run: everything that is compared is measured in it."""
    settings = studio_in(where, recipes)
    kept = built_anew(settings, drawn=False)
    anew = built_anew(settings, drawn=True)
    studio, pages = ready_pages(settings)
    with in_language(studio.house.language):
        floor = took(lambda: rendered_plainly(pages, folder / "plain"))
        assert written_alike(pages, folder / "plain")
        chosen = list(some(pages))
        sizes = [len(render(making.site, page.frame, page.view)) for making, page in chosen]
        ours = took(lambda: [render(making.site, page.frame, page.view) for making, page in chosen])
    write = sys.stdout.write
    write(f"{recipes} recipes, {len(pages)} pages\n")
    write(f"plain Jinja2, files written    {floor}\n")
    for name, build_took in (("kept", kept), ("made anew", anew)):
        write(
            f"whole build, drawings {name:<9}{build_took}: {build_took.busy / floor.busy:.2f} x "
            f"busy, {build_took.clock / floor.clock:.2f} x by the clock\n"
        )
    mean = sum(sizes) / len(sizes) / 1000
    write(f"{PAGES} pages of {mean:.1f} kB rendered: {ours}, ")
    write(f"{sum(sizes) / 1e6 / ours.busy:.1f} MB a second\n")


if __name__ == "__main__":
    sys.exit(main())

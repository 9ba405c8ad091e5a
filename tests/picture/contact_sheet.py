"""How do all the pictures look side by side? `python -m tests.picture.contact_sheet FILE.png`.

Every look's picture; with `--stems` the single stems by form; with `--plans` the looks' plans from
above, in grey as a printer makes them; with `--forms` every form from each of its sides, large
and small. `--only WORDS` keeps those whose name begins so.
"""

from __future__ import annotations

import argparse
from base64 import b64encode
from collections.abc import Callable
from html import escape
from pathlib import Path
from random import Random

from playwright.sync_api import sync_playwright

from corymb.picture import draw_stem
from corymb.picture.arrangement import colour_hex
from corymb.picture.colour import Palette
from corymb.picture.forms import FORMS, Drawn, Head
from corymb.picture.plan import draw_plan, plan_of
from corymb.site.drawn.pictured import picture_stem
from tests.browser.chromium import start_chromium
from tests.picture.demo import arrangement, demo, demo_looks, picture
from tests.picture.samples import BY_FORM

LOOK, SMALL = 260, 40  # dots wide: a card of a look, and the smallest a head is shown
CM = 40.0
STYLE = """body{margin:8px;font:11px sans-serif;display:flex;flex-wrap:wrap;gap:8px;background:#fff}
figure{margin:0}img{object-fit:contain;vertical-align:bottom;margin-right:8px}"""


def looks() -> dict[str, str]:
    return {look_id: picture(look_id) for look_id in demo_looks()}


def stems() -> dict[str, str]:
    """Stems of one form beside each other."""
    found = sorted(demo().stems.items(), key=lambda pair: (pair[1].form, pair[0]))
    return {f"{stem.form}: {key}": draw_stem(picture_stem(key, stem)) for key, stem in found}


def plans() -> dict[str, str]:
    return {look_id: draw_plan(plan_of(arrangement(look_id))) for look_id in demo_looks()}


def forms() -> dict[str, str]:
    return {
        f"{form}, view {view + 1}": alone(head_of(form, view))
        for form in FORMS
        for view in range(FORMS[form].cuts)
    }


def head_of(form: str, view: int) -> Drawn:
    """The sample stem's head, as wide and long as it is."""
    stem = BY_FORM[form]
    long = stem.head_length_cm or stem.head_cm * FORMS[form].length
    palette, green = Palette.of(stem.colours), colour_hex(stem.green)
    dice = Random(f"{form}{view}")
    return FORMS[form].draw(
        Head(stem.head_cm * CM, long * CM, palette, green, dice, CM, stem.heads_per_stem, view)
    )


def alone(head: Drawn) -> str:
    """A head without anything about it."""
    box, edge = head.box, 8
    wide, high = box.width + 2 * edge, box.height + 2 * edge
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide:.0f}" height="{high:.0f}" '
        f'viewBox="{box.left - edge:.0f} {box.top - edge:.0f} {wide:.0f} {high:.0f}">'
        f"{head.pieces}</svg>"
    )


def sheet(pictures: dict[str, str], *wides: int, grey: bool = False) -> str:
    """A page with every picture, in all the widths asked for, over its name."""
    colour = "img{filter:grayscale(1)}" if grey else ""
    figures = "".join(
        f"<figure>{''.join(_image(svg, wide) for wide in wides)}"
        f"<figcaption>{escape(name)}</figcaption></figure>"
        for name, svg in pictures.items()
    )
    return f"<!doctype html><style>{STYLE}{colour}</style>{figures}"


def _image(svg: str, wide: int) -> str:
    source = f"data:image/svg+xml;base64,{b64encode(svg.encode()).decode()}"
    return f'<img src="{source}" width="{wide}" height="{round(wide * 1.1)}" alt="">'


KINDS: dict[str, Callable[[], dict[str, str]]] = {"stems": stems, "plans": plans, "forms": forms}


def main() -> None:
    """Writes one PNG of all."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("file", type=Path)
    kind = parser.add_mutually_exclusive_group()
    for name in KINDS:
        kind.add_argument(f"--{name}", dest="kind", action="store_const", const=name)
    parser.add_argument("--only", default="", metavar="WORDS")
    parser.add_argument("--wide", type=int, default=LOOK)
    asked = parser.parse_args()
    every = KINDS.get(asked.kind, looks)()
    pictures = {name: svg for name, svg in every.items() if name.startswith(asked.only)}
    wides = (asked.wide, SMALL) if asked.kind == "forms" else (asked.wide,)
    with sync_playwright() as playwright, start_chromium(playwright) as browser:
        page = browser.new_page(viewport={"width": 1640, "height": 900})
        page.set_content(sheet(pictures, *wides, grey=asked.kind == "plans"))
        page.screenshot(path=asked.file, full_page=True)


if __name__ == "__main__":
    main()

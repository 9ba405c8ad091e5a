"""How do all the pictures look side by side? `python -m tests.picture.contact_sheet FILE.png`.

With `--stems` the single stems by form; with `--plans` the plans from above.
"""

from __future__ import annotations

import argparse
from base64 import b64encode
from html import escape
from pathlib import Path

from playwright.sync_api import sync_playwright

from corymb.picture import draw_stem
from corymb.site.pictured import picture_stem
from tests.browser.chromium import start_chromium
from tests.picture.demo import demo, demo_looks, picture

STYLE = """body{margin:8px;font:11px sans-serif;display:flex;flex-wrap:wrap;gap:8px;background:#fff}
figure{margin:0;width:WIDEpx}img{width:100%;height:TALLpx;object-fit:contain;display:block}"""


def looks() -> dict[str, str]:
    return {look_id: picture(look_id) for look_id in demo_looks()}


def stems() -> dict[str, str]:
    """Stems of one form beside each other."""
    found = sorted(demo().stems.items(), key=lambda pair: (pair[1].form, pair[0]))
    return {f"{stem.form}: {key}": draw_stem(picture_stem(key, stem)) for key, stem in found}


def sheet(pictures: dict[str, str], wide: int) -> str:
    """A page with every picture over its name."""
    style = STYLE.replace("WIDE", str(wide)).replace("TALL", str(round(wide * 1.1)))
    figures = [
        f'<figure><img src="data:image/svg+xml;base64,{b64encode(svg.encode()).decode()}" alt="">'
        f"<figcaption>{escape(name)}</figcaption></figure>"
        for name, svg in pictures.items()
    ]
    return f"<!doctype html><style>{style}</style>{''.join(figures)}"


def main() -> None:
    """Writes one PNG of all."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("file", type=Path)
    parser.add_argument("--stems", action="store_true")
    parser.add_argument("--wide", type=int, default=260)
    asked = parser.parse_args()
    pictures = stems() if asked.stems else looks()
    with sync_playwright() as playwright, start_chromium(playwright) as browser:
        page = browser.new_page(viewport={"width": 1640, "height": 900})
        page.set_content(sheet(pictures, asked.wide))
        page.screenshot(path=asked.file, full_page=True)


if __name__ == "__main__":
    main()

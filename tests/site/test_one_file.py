"""A page as one file: what goes in, what is left out, and that nothing is asked for."""

from __future__ import annotations

import base64
import hashlib
import io
import re

import pytest
from bs4 import BeautifulSoup
from PIL import Image

from corymb.site.one_file import TooLargeError, one_file
from corymb.site.one_file.scripts import one_script
from corymb.site.one_file.styles import needed
from corymb.site.render import THEME

SVG = '<svg viewBox="0 0 120 140"><rect width="120" height="140" fill="#804020"/></svg>'


def jpeg(width: int) -> bytes:
    out = io.BytesIO()
    Image.new("RGB", (width, width), "#456789").save(out, "JPEG")
    return out.getvalue()


PAGE = """<!doctype html>
<html><head>
<meta http-equiv="Content-Security-Policy" content="default-src 'self'">
<meta property="og:image" content="https://studio.example/card.jpg">
<link rel="preload" href="../fonts/a.woff2" as="font">
<link rel="icon" href="../icon.svg">
<link rel="canonical" href="https://studio.example/links/x.html">
<link rel="stylesheet" href="../css/all.css">
<script type="application/ld+json">{"@id": "https://studio.example/"}</script>
<script type="module" src="../js/main.js"></script>
</head><body>
<p class="here">Quoted: ‘“&amp;”’ &lt;b&gt;</p>
<a href="../other.html">Other</a> <a href="mailto:a@b.example?x=1&amp;y=2">Mail</a>
<picture><source type="image/avif" srcset="../photos/a-480.avif 480w" sizes="50vw">
<img class="photo-under" src="data:image/gif;base64,AAAA" alt="">
<img src="../photos/a-480.jpg" srcset="../photos/a-480.jpg 480w, ../photos/a-960.jpg 960w"
  sizes="50vw" loading="lazy" alt="A &quot;jar&quot;"></picture>
<img class="drawn" src="../pictures/jar.svg" alt="Drawn">
</body></html>
"""

FILES = {
    "links/x.html": PAGE.encode(),
    "css/all.css": b'/* a */ @font-face { font-family: A; src: url("../fonts/a.woff2"); }\n'
    b".here { color: red; } .gone { color: blue; }",
    "fonts/a.woff2": b"wOF2 the font",
    "js/main.js": b'import { hi } from "./other.js";\nhi("main");\n',
    "js/other.js": b"export function hi(who) {\n  document.title = who;\n}\n",
    "photos/a-480.jpg": jpeg(480),
    "photos/a-960.jpg": jpeg(960),
    "pictures/jar.svg": SVG.encode(),
}


@pytest.fixture(scope="module")
def made() -> str:
    return one_file("links/x.html", FILES).decode()


def test_it_names_no_other_file_and_no_host(made: str) -> None:
    soup = BeautifulSoup(made, "html5lib")
    named = [tag.get(key) for tag in soup.find_all(True) for key in ("src", "href", "srcset")]
    assert {str(address).partition(":")[0] for address in named if address} == {"data", "mailto"}
    assert "https://" not in made
    assert "http://" not in made


def test_what_it_says_is_as_it_was(made: str) -> None:
    soup = BeautifulSoup(made, "html5lib")
    assert soup.p is not None
    assert soup.p.text == "Quoted: ‘“&”’ <b>"
    assert [a.get("href") for a in soup.find_all("a")] == [None, "mailto:a@b.example?x=1&y=2"]
    assert [image["alt"] for image in soup.find_all("img")] == ['A "jar"', "Drawn"]


def test_its_policy_lets_in_its_own_style_and_script_and_nothing_else(made: str) -> None:
    soup = BeautifulSoup(made, "html5lib")
    (policy,) = soup.find_all("meta", attrs={"http-equiv": True})
    allowed = dict(part.strip().split(" ", 1) for part in policy["content"].split(";"))
    for name, within in (("style-src", soup.style), ("script-src", soup.script)):
        assert within is not None
        digest = hashlib.sha256(within.decode_contents().encode()).digest()
        assert allowed.pop(name) == f"'sha256-{base64.b64encode(digest).decode()}'"
    assert allowed.pop("img-src") == allowed.pop("font-src") == "data:"
    assert set(allowed.values()) == {"'none'"}
    assert "default-src" in allowed


def images_in(page: str) -> list[Image.Image]:
    found = re.findall(r'src="data:image/jpeg;base64,([^"]+)"', page)
    return [Image.open(io.BytesIO(base64.b64decode(data))) for data in found]


def test_a_photo_and_a_drawing_come_as_wide_as_a_phone_needs(made: str) -> None:
    assert [image.width for image in images_in(made)] == [960, 960]


def test_images_grow_narrower_until_the_file_is_small_enough() -> None:
    small = one_file("links/x.html", FILES, most_bytes=20_000).decode()
    assert len(small.encode()) <= 20_000
    assert max(image.width for image in images_in(small)) < 960


def test_what_no_file_can_hold_is_said_with_its_weight() -> None:
    with pytest.raises(TooLargeError, match=r"comes to \d+ kB.*show fewer looks"):
        one_file("links/x.html", FILES, most_bytes=2_000)


@pytest.mark.parametrize(
    ("css", "kept"),
    [
        ("p { a: b; }", "p {a: b;}"),
        (".on { a: b; }", ".on {a: b;}"),
        (".off { a: b; }", ""),
        (".on, .off { a: b; }", ".on {a: b;}"),
        ("p.off { a: b; }", ""),
        ("p:not(.off) { a: b; }", "p:not(.off) {a: b;}"),
        (".on:has(.off:checked) b, #id::before { a: b; }", "#id::before {a: b;}"),
        ("[data-x] p { a: b; }", "[data-x] p {a: b;}"),
        ("* { a: b; }", "* {a: b;}"),
        (":root { --a: b; }", ":root {--a: b;}"),
        ("@media print { .off { a: b; } }", ""),
        ("@media print { .off { a: b; } p { c: d; } }", "@media print {\np {c: d;}\n}"),
        ("@view-transition { navigation: auto; }", ""),
        ("/* p { x: y; } */ p { a: b; }", "p {a: b;}"),
        ("@page { margin: 10mm; }", "@page {margin: 10mm;}"),
    ],
)
def test_only_the_rules_that_something_on_the_page_may_go_by_are_kept(css: str, kept: str) -> None:
    assert needed(css, '<p class="on other" id="id" data-x>Words</p>') == kept


def test_a_module_is_put_behind_those_it_imports_once_each() -> None:
    files = {
        "js/a.js": b'import { b } from "./b.js";\nimport { c } from "./c.js";\nlog(b, c);\n',
        "js/b.js": b'import * as all from "./c.js";\nexport const b = all.c + 1;\n',
        "js/c.js": b"export const c = 1;\nexport { d, e as f };\nexport async function x() {}\n",
    }
    script = one_script(["js/a.js", "js/c.js"], files)
    assert re.findall(r"const (module\d) = ", script) == ["module0", "module1", "module2"]
    assert (
        script.index("const c = 1")
        < script.index("const b = all.c + 1")
        < script.index("log(b, c)")
    )
    assert "return { c, x, d, f: e };" in script
    assert "const all = module0;" in script
    assert "const { c } = module0;" in script
    assert not re.search(r"^(import|export)\b", script, re.MULTILINE)


@pytest.mark.parametrize(
    ("source", "says"),
    [
        (b'import x from "./b.js";\n', "in a way that isn't known"),
        (b"export default 1;\n", "in a way that isn't known"),
        (b'import { a } from "./a.js";\nexport const a = 1;\n', "imports itself"),
    ],
)
def test_a_module_that_would_not_run_in_one_script_is_refused(source: bytes, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        one_script(["js/a.js"], {"js/a.js": source, "js/b.js": b"export const x = 1;\n"})


def test_every_script_of_the_theme_can_be_put_into_one_file() -> None:
    scripts = THEME / "assets" / "js"
    files = {f"js/{file.name}": file.read_bytes() for file in scripts.glob("*.js")}
    assert len(files) > 10
    for path in files:
        assert one_script([path], files)

"""A page and what it is made of, put together into one file."""

from __future__ import annotations

import re
from base64 import b64encode
from hashlib import sha256

from corymb.site.one_file.images import WIDTHS, with_images
from corymb.site.one_file.scripts import one_script
from corymb.site.one_file.styles import needed, with_typefaces
from corymb.site.one_file.tags import Attributes, Files, attributes_of, each_tag, path_of, tag_of

MOST_BYTES = 1_000_000
"""What a message may weigh without being refused or left on a phone's host: our own choice."""

SCRIPT = re.compile(r'<script type="module"(?P<rest>[^<>]*)></script>\n?')
DATA = re.compile(r'<script type="application/ld\+json">.*?</script>\n?', re.DOTALL)
LINK = re.compile(r"<link(?P<rest>[^<>]*)>\n?")
TOLD = re.compile(r'<meta (?:property="og:|name="twitter:)[^<>]*>\n?')
POLICY = "Content-Security-Policy"
NONE = "'none'"
LEADS_ON = ("mailto:", "tel:", "#", "https:", "http:")


class TooLargeError(ValueError):
    """A page with so many images that one file can't hold them."""


def one_file(page: str, files: Files, most_bytes: int = MOST_BYTES) -> bytes:
    """The page at a path as one file, its images as wide as fits. Raises TooLargeError."""
    plain = _with_code(page, files)
    for width in WIDTHS:
        made = with_images(plain, page, files, width).encode()
        if len(made) <= most_bytes:
            return made
    raise TooLargeError(
        f"With its images it comes to {len(made) // 1000} kB, and a message should stay below "
        f"{most_bytes // 1000} kB: show fewer looks."
    )


def _with_code(page: str, files: Files) -> str:
    """The page with its styles and scripts, the policy that lets in these and nothing else."""
    html = files[page].decode()
    style, script = _style(html, page, files), _script(html, page, files)
    html = LINK.sub("", SCRIPT.sub("", DATA.sub("", TOLD.sub("", html))))
    html = each_tag(html, "meta", lambda attributes: _policy(attributes, style, script))
    html = each_tag(html, "a", _lead)
    html = html.replace("</head>", f"<style>{style}</style>\n</head>")
    return html.replace("</body>", f"<script>{script}</script>\n</body>") if script else html


def _style(html: str, page: str, files: Files) -> str:
    styles = []
    for link in LINK.finditer(html):
        attributes = attributes_of(link["rest"])
        if attributes.get("rel") == "stylesheet":
            path = path_of(attributes["href"] or "", page)
            styles.append(with_typefaces(needed(files[path].decode(), html), path, files))
    return "\n".join(styles)


def _script(html: str, page: str, files: Files) -> str:
    sources = (attributes_of(script["rest"])["src"] for script in SCRIPT.finditer(html))
    return one_script([path_of(source or "", page) for source in sources], files)


def _policy(attributes: Attributes, style: str, script: str) -> str | None:
    if attributes.get("http-equiv") != POLICY:
        return None
    content = (
        "default-src 'none'; img-src data:; font-src data:; base-uri 'none'; form-action 'none'; "
        f"style-src {_hash(style)}; script-src {_hash(script) if script else NONE}"
    )
    return tag_of("meta", {"http-equiv": POLICY, "content": content})


def _hash(text: str) -> str:
    """As a policy names what may stand in a page (CSP Level 3): by the digest of its bytes."""
    return f"'sha256-{b64encode(sha256(text.encode()).digest()).decode()}'"


def _lead(attributes: Attributes) -> str | None:
    """What leads to another page of the site leads nowhere from a file."""
    address = attributes.get("href")
    if address is None or address.startswith(LEADS_ON):
        return None
    return tag_of("a", {key: value for key, value in attributes.items() if key != "href"})

"""The worker that keeps the staff's site on a phone, the list it goes by, and the manifest.

What does someone in a field with one bar of signal want? The page at once, and to know how old it
is. So whatever is kept is shown as it is kept, without asking the network, and all of it is from
one build: a new list of counts never meets old styles or scripts. Beside it the worker asks for a
newer build, which takes one small file, and fetches of it only what has changed; when that is
there, the page offers to show it, and the next page that is opened is the new one in any case. To
ask the network first, with a time limit, would make every page as slow as that limit just where
the signal is poorest. Only pages that are not on the list are asked for first, for they may be of
any age, and shown as last visited when no answer comes in three seconds.

The list names every file with a digest of what is in it. The build is known by a digest of all its
files, so that a phone sees a newer one exactly where something is different.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from hashlib import blake2b
from importlib import resources
from pathlib import Path
from urllib.parse import quote

from corymb.site.offline.chosen import FRAME, kept_first, looked_up, shown_on
from corymb.site.offline.manifest import MANIFEST, icons, manifest
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.frame import SiteFrame

WORKER = "field-worker.js"
LIST = "field-list.json"
BESIDE = ("assets/tints.css",)
NAMED_BY_CONTENT = "assets/photos/"
DIGEST_BYTES = 6

Listed = dict[str, list[tuple[str, str]]]


def offline_files(
    catalogue: Catalogue,
    site: SiteFrame,
    pages: Mapping[str, bytes],
    files: Mapping[str, bytes],
    copies: Mapping[str, Path],
) -> dict[str, bytes]:
    """What the staff's site gets for the field, once all else of it is made."""
    found = {**icons(), MANIFEST: manifest(site)}
    digests = digests_of({**pages, **files, **found}, copies)
    carried = [path for path in kept_first(catalogue) if path in pages]
    frame = [path for path in digests if _of_the_frame(path)]
    first = [*frame, *carried, *shown_on(carried, pages)]
    sought = looked_up(pages)
    later = [*sought, "search.json", *shown_on(sought, pages)]
    return {**found, **worker_and_list(first, later, digests)}


def _of_the_frame(path: str) -> bool:
    return path in BESIDE or (path.startswith(FRAME) and not path.endswith(".txt"))


def digests_of(written: Mapping[str, bytes], copies: Mapping[str, Path]) -> dict[str, str]:
    """A digest for each of a site's files; the names of photos' files are digests already."""
    known = {path: digest(content) for path, content in written.items()}
    for path, source in copies.items():
        named = path.startswith(NAMED_BY_CONTENT)
        known[path] = digest(path.encode() if named else source.read_bytes())
    return dict(sorted(known.items()))


def digest(content: bytes) -> str:
    """A few letters that differ where the content does."""
    return blake2b(content, digest_size=DIGEST_BYTES).hexdigest()


def worker_and_list(
    first: Iterable[str], later: Iterable[str], digests: Mapping[str, str]
) -> dict[str, bytes]:
    """The worker and its list; `digests` are those of all the build's files."""
    version = digest(json.dumps(sorted(digests.items())).encode())
    known: set[str] = set()
    listed: Listed = {}
    for part, paths in (("first", first), ("later", later)):
        new = [path for path in dict.fromkeys(paths) if path in digests and path not in known]
        known.update(new)
        listed[part] = [(quote(path), digests[path]) for path in new]
    told = {"version": version, **listed}
    return {
        LIST: json.dumps(told, separators=(",", ":")).encode(),
        WORKER: _source().replace("{{version}}", version).encode(),
    }


def _source() -> str:
    names = {"list": LIST, "no_signal": addresses.NO_SIGNAL}
    source = resources.files("corymb.site.offline").joinpath("worker.js").read_text("utf-8")
    for name, value in names.items():
        source = source.replace(f"{{{{{name}}}}}", value)
    return source

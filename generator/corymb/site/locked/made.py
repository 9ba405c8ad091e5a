"""The staff's site, locked: what may tell anything is sealed, and a door stands before it.

What hasn't changed since the site that stands is taken from there, sealed as it is, so that a
publish stays small and phones fetch little. (That way a host can tell which files have changed, as
from any site.) Photos are sealed one by one into files, and never lie in memory together.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from importlib import resources
from pathlib import Path
from urllib.parse import unquote

from corymb.site.locked.keys import name_of
from corymb.site.locked.lock import Lock
from corymb.site.locked.places import DOOR, FOR_ANYONE, LOCK, SEALED, is_for_anyone, sealed_at
from corymb.site.locked.sealing import SealBrokenError, seal, unseal
from corymb.site.offline import LIST, MANIFEST, WORKER
from corymb.site.offline.files import digests_of, worker_and_list
from corymb.site.site import Site

TELLING = ("description",)
"""What a manifest says of a studio beyond its name."""


class Sealer:
    """Seals the files of one site, or finds them sealed in the site that stands."""

    def __init__(self, lock: Lock, standing: Path) -> None:
        self.lock, self.standing = lock, standing

    def address(self, path: str) -> str:
        """Where a file of the site stands, sealed."""
        return sealed_at(name_of(self.lock.keys, path))

    def sealed(self, path: str, content: bytes) -> bytes:
        """The content sealed: as it was, where that is what stands there already."""
        try:
            before = (self.standing / self.address(path)).read_bytes()
            if unseal(self.lock.keys.files, path, before) == content:
                return before
        except (OSError, SealBrokenError):
            pass
        return seal(self.lock.keys.files, path, content)


def locked_site(
    site: Site, lock: Lock, doors: Mapping[str, bytes], standing: Path, scratch: Path
) -> Site:
    """The site as anyone may fetch it; `standing` is the folder it will be put into.

    Sealed copies lie in `scratch` until then.
    """
    sealer = Sealer(lock, standing)
    made = Site(files={**doors, LOCK: lock.file()})
    made.pages = {
        sealer.address(path): sealer.sealed(path, page) for path, page in site.pages.items()
    }
    for path, content in site.files.items():
        if path == MANIFEST:
            made.files[path] = _manifest(content)
        elif is_for_anyone(path):
            made.files[path] = content
        elif path != WORKER:
            made.files[sealer.address(path)] = sealer.sealed(path, content)
    for path, source in site.copies.items():
        if is_for_anyone(path):
            made.copies[path] = source
        else:
            address = sealer.address(path)
            made.copies[address] = file = scratch / Path(address).name
            file.write_bytes(sealer.sealed(path, source.read_bytes()))
    if LIST in site.files:
        made.files.update(_for_phones(site.files[LIST], sealer, made))
    return made


def _manifest(content: bytes) -> bytes:
    told = {key: value for key, value in json.loads(content).items() if key not in TELLING}
    return (json.dumps(told, ensure_ascii=False, indent=1) + "\n").encode()


def _for_phones(listed: bytes, sealer: Sealer, made: Site) -> dict[str, bytes]:
    """The worker, which opens what it has kept, and its list, by the names of sealed files.

    The list by true names is one of them, and so is the page for what isn't there.
    """
    told = json.loads(listed)
    first, later = ([unquote(path) for path, _ in told[part]] for part in ("first", "later"))
    here = [DOOR, *_stand((*first, LIST, "404.html"), sealer)]
    files = worker_and_list(here, _stand(later, sealer), _digests(made))
    files[WORKER] = _opener(sealer.lock).encode() + files[WORKER]
    return files


def _stand(paths: Iterable[str], sealer: Sealer) -> list[str]:
    return [path if is_for_anyone(path) else sealer.address(path) for path in paths]


def _digests(made: Site) -> dict[str, str]:
    """Of what is sealed: one of what is in it would let a guess at a page be proved."""
    return digests_of(made.written, made.copies)


def _opener(lock: Lock) -> str:
    source = resources.files("corymb.site.locked").joinpath("opener.js").read_text("utf-8")
    told = {**lock.told, "door": DOOR, "sealed": SEALED, "forAnyone": FOR_ANYONE}
    return source.replace('"{{told}}"', json.dumps(told))

"""What does someone see who reads the sites all the while, as a server would?

In each folder stands one of the sites that were built, whole: every file of it is there and holds
what it should, and there is nothing else. As those have no dead links, every link resolves.
"""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from hashlib import blake2b
from pathlib import Path

from corymb.site.publishing.keeping import MARK

Site = Mapping[str, bytes]
"""The digest of every file by its path."""


def site_in(folder: Path | int) -> Site:
    """Every file in a folder, or in one that was opened and may be moved meanwhile."""
    found = {}
    top, at = (".", folder) if isinstance(folder, int) else (str(folder), None)
    for here, _, names, opened in os.fwalk(top, dir_fd=at):
        inside = Path(os.path.relpath(here, top))
        for name in names:
            if name != MARK:
                file = os.open(name, os.O_RDONLY, dir_fd=opened)
                with os.fdopen(file, "rb") as reading:
                    digest = blake2b(reading.read(), digest_size=16).digest()
                found[(inside / name).as_posix()] = digest
    return found


def difference(found: Site, sites: Sequence[Site]) -> str:
    """Where it differs from the nearest of these sites; empty where it is one of them."""
    told = [
        sorted(path for path in {*found, *site} if found.get(path) != site.get(path))
        for site in sites
    ]
    nearest = min(told, key=len)
    return f"{len(nearest)} files, such as {nearest[0]}" if nearest else ""


def trouble_in_one_look(folder: Path, sites: Sequence[Site]) -> str:
    """What is wrong with the site as it stands; '' when nothing is, or it changed meanwhile."""
    try:
        opened = os.open(folder, os.O_RDONLY)
    except OSError as error:
        return f"the folder is not there: {error}"
    try:
        found = site_in(opened)
        wrong = difference(found, sites)
    except OSError as error:
        wrong = str(error)
    finally:
        still = os.path.samestat(os.fstat(opened), folder.stat())
        os.close(opened)
    return wrong if still else ""


def trouble_with_a_visit(folder: Path, sites: Sequence[Site], some: int) -> str:
    """Whether the pages that all sites have are there, one after the other by their addresses."""
    everywhere = sorted(set.intersection(*(set(site) for site in sites)))
    for path in everywhere[some % 17 :: 17]:
        try:
            digest = blake2b((folder / path).read_bytes(), digest_size=16).digest()
        except OSError as error:
            return f"{path} can't be opened: {error}"
        if digest not in {site[path] for site in sites}:
            return f"{path} is neither the old one nor the new one"
    return ""

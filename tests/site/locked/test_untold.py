"""Nobody learns from a locked site's files what the studio has, or what its pages are called."""

from __future__ import annotations

import json
from urllib.parse import unquote

import pytest
from lxml.html import document_fromstring

from corymb.site.locked.made import Sealer
from corymb.site.locked.places import SEALED
from corymb.site.locked.sealing import unseal
from corymb.site.offline import LIST, MANIFEST, WORKER
from tests.site.locked.locked_studio import FIRST, ORDER_PAGE, SECRET, locked_builds, sealer_of

SHORT = 12  # letters; a shorter path is said by chance, or stands for a page that is open


def test_nothing_that_is_published_tells_a_name_a_title_or_an_address(
    tmp_path_factory: pytest.TempPathFactory,
) -> None:
    staff = locked_builds(tmp_path_factory)["first"] / "staff"
    sealer = sealer_of(staff, FIRST)
    listed = json.loads(opened(sealer, LIST))
    paths = [unquote(path) for part in ("first", "later") for path, _ in listed[part]]
    secret = [path for path in paths if (staff / sealer.address(path)).exists()]
    pages = [path for path in secret if path.endswith(".html")]
    assert len(pages) > 30 and ORDER_PAGE in pages
    told = {SECRET, "ottoline", "Kitchen jug", "kitchen-jug", "scabious", "cut-2026"}
    told |= {path for path in secret if "/" in path}
    of_any_site = {path for path in secret if "/" not in path and len(path) > SHORT}
    of_any_site |= {title_of(opened(sealer, path)) for path in pages} - {""}
    there = [file for file in staff.rglob("*") if file.is_file()]
    for file in there:
        path = file.relative_to(staff).as_posix()
        content = path.encode() + file.read_bytes()
        programs_own = path in (MANIFEST, WORKER) or path.startswith("assets/theme/")
        told_here = told if programs_own else told | of_any_site
        assert [words for words in told_here if words.encode() in content] == [], file
    assert sum(file.parent.name == SEALED.rstrip("/") for file in there) > len(secret)


def opened(sealer: Sealer, path: str) -> bytes:
    return unseal(
        sealer.lock.keys.files, path, (sealer.standing / sealer.address(path)).read_bytes()
    )


def title_of(page: bytes) -> str:
    """Without the studio's name, which the door says too."""
    title = str(document_fromstring(page.decode()).findtext(".//title"))
    return title.rpartition(" · ")[0]

"""What is published of a site: all of it as it is, or for the staff's the same behind a lock."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from hashlib import blake2b
from pathlib import Path

from corymb.language import in_language
from corymb.site.locked.doors import doors
from corymb.site.locked.keys import Passphrase
from corymb.site.locked.lock import is_locked, lock_for
from corymb.site.locked.made import locked_site
from corymb.site.locked.places import LOCK
from corymb.site.settings import SiteSettings
from corymb.site.site import Site
from corymb.studio.models import StudioFile
from corymb.views.pieces import Audience

NO_PASSPHRASE = (
    "the staff's site is to be locked (`lock_staff`), and there is no passphrase to lock it with. "
    "Run `corymb build` where it can ask for one, or put it into the variable CORYMB_PASSPHRASE."
)
LOCKED_THERE = (
    "the staff's site here is locked, and now it would be published open. To lock it again, write "
    "`lock_staff: true` under the plugin in mkdocs.yml, or build with --lock-staff. To have it "
    "open, take {lock} away first."
)


def refusal(
    settings: SiteSettings, audiences: Sequence[Audience], passphrase: Passphrase | None
) -> str | None:
    """Why nothing is built: nobody publishes by mistake what was to be locked."""
    if "staff" not in audiences:
        return None
    if settings.lock_staff:
        return None if passphrase else NO_PASSPHRASE
    folder = settings.output("staff")
    return LOCKED_THERE.format(lock=f"{folder.name}/{LOCK}") if is_locked(folder) else None


@contextmanager
def as_published(
    site: Site,
    audience: Audience,
    settings: SiteSettings,
    house: StudioFile,
    passphrase: Passphrase | None,
) -> Iterator[Site]:
    """The site to publish; what it copies is there as long as this lasts."""
    if audience != "staff" or not settings.lock_staff or passphrase is None:
        yield site
        return
    folder = settings.output(audience)
    with in_language(house.language):
        asking = doors(house.name, house.language, settings.base_path(audience))
    with _scratch(settings.cache_folder, folder) as scratch:
        yield locked_site(site, lock_for(passphrase, folder), asking, folder, scratch)


@contextmanager
def _scratch(cache: Path, folder: Path) -> Iterator[Path]:
    """A place for one folder's builds: what a killed one left there, the next one clears."""
    place = cache / f"locked-{blake2b(os.fsencode(folder), digest_size=6).hexdigest()}"
    shutil.rmtree(place, ignore_errors=True)
    place.mkdir(parents=True)
    try:
        yield place
    finally:
        shutil.rmtree(place, ignore_errors=True)

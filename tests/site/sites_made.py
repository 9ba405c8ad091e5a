"""Both sites of a studio as a new build makes them, and where two makings of them differ."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from corymb.checks import read_and_check
from corymb.photos import PhotoCache
from corymb.site.build import BuildReport, make_images, site_of
from corymb.site.settings import SiteSettings
from corymb.site.site import Site
from corymb.studio.problems import Problem
from corymb.views.pieces import AUDIENCES, Audience

Sites = Mapping[Audience, Site]


def made_anew(settings: SiteSettings, day: date) -> tuple[list[Problem], Sites]:
    """What is wrong with a studio, and its sites where nothing is."""
    studio, problems = read_and_check(settings.studio_folder)
    if studio is None or any(not problem.advice for problem in problems):
        return problems, {}
    with PhotoCache(settings.cache_folder / "photos") as cache:
        images = make_images(studio, settings, cache, BuildReport())
        return problems, {who: site_of(studio, who, settings, day, images) for who in AUDIENCES}


def differences(one: Sites, other: Sites) -> list[str]:
    """Every address at which the sites don't hold the same, and what isn't in the same order."""
    found = []
    for who in one.keys() | other.keys():
        for shelf in ("pages", "files", "copies"):
            here, there = getattr(one.get(who), shelf, {}), getattr(other.get(who), shelf, {})
            found += [
                f"{who}/{address}"
                for address in here.keys() | there.keys()
                if here.get(address) != there.get(address)
            ]
            if list(here) != list(there):
                found.append(f"the order of {who}'s {shelf}")
    return sorted(found)

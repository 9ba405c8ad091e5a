"""What a site is said to have is what it has."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.studio.load import read_studio
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.links import standing_links
from corymb.views.compose.reach import pages_of, pages_of_the_day
from corymb.views.pieces import AUDIENCES, Audience
from tests.conftest import DAY, STUDIO


def of_one_client(catalogue: Catalogue) -> set[str]:
    """Style links on the clients' site: they are there, and nothing may lead to them."""
    links = () if catalogue.staff else standing_links(catalogue)
    return (
        {addresses.NO_LINKS, *(addresses.of_link(each.code) for each in links)} if links else set()
    )


@pytest.mark.parametrize("audience", AUDIENCES)
def test_every_page_of_a_site_can_be_led_to_and_no_other(
    demo_sites: dict[Audience, Path], audience: Audience
) -> None:
    studio, _ = read_studio(STUDIO)
    assert studio is not None
    built = demo_sites[audience].rglob("*.html")
    catalogue = Catalogue(studio, audience, DAY)
    told = pages_of(catalogue) | pages_of_the_day(catalogue) | of_one_client(catalogue)
    assert told == {file.relative_to(demo_sites[audience]).as_posix() for file in built}

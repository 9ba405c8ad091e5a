"""What a site is said to have is what it has."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.site.settings import AUDIENCES
from corymb.studio.load import read_studio
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.reach import pages_of, pages_of_one_client, pages_of_the_day
from corymb.views.pieces import Audience
from tests.conftest import DAY, STUDIO


@pytest.mark.parametrize("audience", AUDIENCES)
def test_every_page_of_a_site_can_be_led_to_and_no_other(
    demo_sites: dict[Audience, Path], audience: Audience
) -> None:
    studio, _ = read_studio(STUDIO)
    assert studio is not None
    built = demo_sites[audience].rglob("*.html")
    catalogue = Catalogue(studio, audience, DAY)
    told = pages_of(catalogue) | pages_of_the_day(catalogue) | pages_of_one_client(catalogue)
    assert told == {
        file.relative_to(demo_sites[audience]).as_posix() for file in built
    }

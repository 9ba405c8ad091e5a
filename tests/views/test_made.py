"""A piece of made work stands beside the look it was made from."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace

import pytest

from corymb.photos import PreparedPhoto
from corymb.views.compose.bands import band_of
from corymb.views.compose.catalogue import Drawing
from corymb.views.compose.made import made_view
from corymb.views.pieces import Audience
from tests.views.making import catalogue_of, demo
from tests.views.test_photo_colours import prepared

LUNCH = demo().made["orchard-lunch"]
LOOK = "orchard-bowl--under-the-pear"


@pytest.mark.parametrize("audience", ["clients", "staff"])
def test_made_work_of_a_variant_shows_that_variant(audience: Audience) -> None:
    plain = catalogue_of(demo(), audience)
    photos: dict[str, PreparedPhoto] = defaultdict(lambda: prepared([("#ffffff", 1.0)]))
    drawings = {
        look.id: Drawing(f"{look.id}.svg", 1200, 1400)
        for looks in plain.looks.values()
        for look in looks.values()
    }
    catalogue = replace(plain, drawings=drawings, photos=photos)
    view = made_view(catalogue, LUNCH)
    look = catalogue.looks["orchard-bowl"]["under-the-pear"]
    assert view.variant_name == "Under the pear tree"
    assert view.recipe.image.picture.href == f"{LOOK}.svg"
    assert view.recipe.href == f"arrangements/{LOOK}.html"
    assert view.recipe.band == band_of(catalogue, look)
    assert view.recipe.stems_total == look.stems_total

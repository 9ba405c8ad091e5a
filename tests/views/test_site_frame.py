"""What the menu of each site leads to."""

from __future__ import annotations

import pytest

from corymb.views.compose.site_frame import site_frame
from corymb.views.pieces import Audience
from tests.views.making import catalogue_of, demo

OF_ALL = ["Arrangements", "In season", "Your date", "Flowers", "Made here"]
MENUS: dict[Audience, list[str]] = {
    "clients": [*OF_ALL, "Care", "How to order", "About"],
    "staff": [
        *OF_ALL,
        "This week",
        "Orders",
        "Style links",
        "Weeks ahead",
        "Learning",
        "Lessons",
        "House rules",
    ],
}


@pytest.mark.parametrize("audience", MENUS)
def test_the_menu_leads_to_what_its_readers_come_for(audience: Audience) -> None:
    frame = site_frame(catalogue_of(demo(), audience), "/")
    assert [item.label for item in frame.menu] == MENUS[audience]


@pytest.mark.parametrize("audience", MENUS)
def test_every_page_of_text_is_in_the_foot(audience: Audience) -> None:
    frame = site_frame(catalogue_of(demo(), audience), "/")
    labels = {link.label for link in frame.foot}
    assert {"Caring for your flowers", "How to order", "About Teasel & Rook"} <= labels
    assert ("House rules" in labels) == (audience == "staff")

"""What would mend the lack of a stem: a variant written by hand, or something grown or bought?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import and_list
from corymb.trade.season.uncovered import Lack
from corymb.trade.swaps.beyond import Nearest
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.swaps import swap_view, swap_words
from corymb.views.pieces import Link
from corymb.views.weeks_ahead import LackView

FARTHEST = 30.0
"""A colour farther off (CIEDE2000) isn't near."""

MOST_FOR_ONE = 4
"""Nor are more stems for one, or one for more."""

MOST_AGAINST = 2
"""Nor is what breaks more limits. All three are house values: common practice, no source."""


def lack_view(catalogue: Catalogue, lack: Lack, weeks: int) -> LackView:
    """A stem that is lacking for so many weeks, and what would mend that."""
    stem, near = catalogue.stem(lack.stem), _near(lack)
    return LackView(
        stem=Link(stem.name, addresses.of_stem(stem.id)),
        mend=mend(catalogue, lack, weeks),
        careful=swap_view(catalogue, near.swap).careful if near else (),
    )


def mend(catalogue: Catalogue, lack: Lack, weeks: int) -> str:
    """What comes nearest, what speaks against it, and what to do."""
    near = _near(lack)
    if near is None:
        return _("Nothing near it stands then. Grow or buy something like it.")
    words = _WAYS[_way(lack, near), near.weeks < weeks]
    return _(words).format(
        swap=_swap(catalogue, near),
        against=and_list(near.against),
        covered=near.weeks,
        weeks=weeks,
    )


def _way(lack: Lack, near: Nearest) -> str:
    return "outside" if near.against else "essential" if lack.essential else "variant"


_WAYS = {
    ("outside", False): noted(
        "The nearest is {swap}, outside the limits: {against}. Grow or buy something nearer, or "
        "write a variant with it."
    ),
    ("outside", True): noted(
        "The nearest in {covered} of the {weeks} weeks is {swap}, outside the limits: {against}. "
        "Grow or buy something nearer, or write a variant with it."
    ),
    ("essential", False): noted(
        "It is essential, so only a variant can change it. One with {swap} would do."
    ),
    ("essential", True): noted(
        "It is essential, so only a variant can change it. One with {swap} would do in {covered} "
        "of the {weeks} weeks."
    ),
    ("variant", False): noted("A variant with {swap} would do."),
    ("variant", True): noted("A variant with {swap} would do in {covered} of the {weeks} weeks."),
}
"""By what speaks against it, and whether it covers only some of the weeks."""


def _near(lack: Lack) -> Nearest | None:
    """What comes nearest, if a florist would call it near at all."""
    near = lack.nearest
    if near is None or near.swap.colour_distance > FARTHEST or len(near.against) > MOST_AGAINST:
        return None
    least, most = sorted((near.swap.in_count, near.swap.out_count))
    return near if most <= MOST_FOR_ONE * least else None


def _swap(catalogue: Catalogue, nearest: Nearest) -> str:
    return swap_words(swap_view(catalogue, nearest.swap))

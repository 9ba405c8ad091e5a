"""What would mend the lack of a stem: a variant written by hand, or something grown or bought?"""

from __future__ import annotations

from corymb.studio.saying import and_list
from corymb.trade.season.uncovered import Lack
from corymb.trade.swaps.beyond import Nearest
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.swaps import swap_view, swap_words
from corymb.views.pieces import Link
from corymb.views.season import LackView


def lack_view(catalogue: Catalogue, lack: Lack, weeks: int) -> LackView:
    """A stem that is lacking for so many weeks, and what would mend that."""
    stem = catalogue.stem(lack.stem)
    near = lack.nearest
    return LackView(
        stem=Link(stem.name, addresses.of_stem(stem.id)),
        mend=mend(catalogue, lack, weeks),
        careful=swap_view(catalogue, near.swap).careful if near else (),
    )


def mend(catalogue: Catalogue, lack: Lack, weeks: int) -> str:
    """What comes nearest, what speaks against it, and what to do."""
    use = catalogue.stem(lack.stem).use
    if lack.nearest is None:
        return f"Nothing that could stand here as {use} stands then. Grow or buy something near it."
    swap, when = _swap(catalogue, lack.nearest), _when(lack.nearest, weeks)
    if lack.nearest.against:
        against = and_list(lack.nearest.against)
        return (
            f"The nearest{when} is {swap}, outside the limits: {against}. Grow or buy something "
            "nearer, or write a variant with it."
        )
    if lack.essential:
        return f"It is essential, so only a variant can change it. One with {swap} would do{when}."
    return f"A variant with {swap} would do{when}."


def _swap(catalogue: Catalogue, nearest: Nearest) -> str:
    return swap_words(swap_view(catalogue, nearest.swap))


def _when(nearest: Nearest, weeks: int) -> str:
    return f" in {nearest.weeks} of the {weeks} weeks" if nearest.weeks < weeks else ""

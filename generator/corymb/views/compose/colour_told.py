"""What is there to say about the colours of a look, and what would mend it this week?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.studio.words import ROLES
from corymb.trade.colour.advice import Advised, Piece
from corymb.trade.colour.findings import BEHIND
from corymb.trade.colour.mixture import mixture
from corymb.trade.colour.role_check import role_advice
from corymb.trade.looks import Look
from corymb.views.colour import ColourView, FindingView, PartShare
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.trade_words import trade_word


def colour_view(catalogue: Catalogue, look: Look) -> ColourView:
    """For the people who make it, in the week of the build."""
    studio = catalogue.studio
    recipe = studio.recipes[look.recipe]
    piece = Piece(
        look.lines,
        catalogue.style_of(recipe),
        catalogue.week,
        recipe.against.hex if recipe.against else None,
        recipe.against.name if recipe.against else BEHIND,
    )
    return ColourView(
        shares=tuple(_shares(catalogue, look)),
        roles=tuple(
            f"{advice.words} {_work(advice.better)}"
            for advice in role_advice(look.lines, studio.stems, studio.house.colour)
        ),
        findings=tuple(_finding(told) for told in catalogue.adviser.on(piece)),
        week=_("week {number}").format(number=catalogue.week),
    )


def _shares(catalogue: Catalogue, look: Look) -> Iterator[PartShare]:
    if not look.lines:
        return
    studio = catalogue.studio
    mix = mixture(look.lines, studio.stems, limits=studio.house.colour)
    for role in ROLES:
        yield PartShare(role, round(100 * mix.roles[role], 1), round(100 * mix.parts[role], 1))


def _work(role: str) -> str:
    return _("It does the work of {role}.").format(role=trade_word("role", role))


def _finding(told: Advised) -> FindingView:
    return FindingView(told.finding.words, tuple(advice.words for advice in told.advice))

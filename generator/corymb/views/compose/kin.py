"""What goes with an arrangement, and why, in words?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.trade.kinship import Kin
from corymb.trade.looks import Look
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import images_of
from corymb.views.compose.plants import plant_words
from corymb.views.recipe import KinView

CLOSE, NOT_FAR = 10.0, 18.0  # distances of palettes (CIEDE2000): our own choice, no source


def kin_of(catalogue: Catalogue, look: Look) -> tuple[KinView, ...]:
    """The nearest few of a recipe; none on a variant's page, for they are found by its recipe."""
    if look.variant:
        return ()
    return tuple(_kin_view(catalogue, kin) for kin in catalogue.kin[look.recipe])


def _kin_view(catalogue: Catalogue, kin: Kin) -> KinView:
    recipe, own = catalogue.studio.recipes[kin.recipe], catalogue.looks[kin.recipe][""]
    return KinView(
        name=recipe.name,
        href=addresses.of_look(own),
        style_name=catalogue.style_of(recipe).name,
        image=images_of(catalogue, own),
        why=why(catalogue, kin),
    )


def why(catalogue: Catalogue, kin: Kin) -> str:
    """`shares white cosmos and 3 more; close in colour`."""
    reasons = []
    if kin.shared:
        first, more = plant_words(catalogue.stem(kin.shared[0])), len(kin.shared) - 1
        reasons.append(_shares(more).format(stem=first, number=more))
    if kin.palette <= NOT_FAR:
        close = kin.palette <= CLOSE
        reasons.append(_("close in colour") if close else _("not far in colour"))
    return "; ".join(reasons)


def _shares(more: int) -> str:
    if not more:
        return _("shares {stem}")
    return ngettext("shares {stem} and {number} more", "shares {stem} and {number} more", more)

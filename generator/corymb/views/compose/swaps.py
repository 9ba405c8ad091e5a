"""How is a swap told: to a client in a few words, to staff with its counts and all its reasons?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.trade.swaps.reasons import colour_reason, new_hazards, reasons
from corymb.trade.swaps.standing_in import StandIn
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench, take_home
from corymb.views.compose.plants import plant_words
from corymb.views.pieces import Link
from corymb.views.season import SwapView


def swap_view(catalogue: Catalogue, swap: StandIn) -> SwapView:
    """A swap in words, with why, and with what to be careful of where that is new."""
    going, coming = catalogue.stem(swap.out), catalogue.stem(swap.in_)
    return SwapView(
        words=_words(catalogue, swap),
        coming=Link(coming.name, addresses.of_stem(swap.in_)),
        going=Link(going.name, addresses.of_stem(swap.out)),
        reasons=_reasons(catalogue, swap),
        careful=_careful(catalogue, swap),
    )


def swap_words(view: SwapView) -> str:
    """A swap and its reasons in one line of text."""
    return f"{view.words} ({'; '.join(view.reasons)})" if view.reasons else view.words


def _words(catalogue: Catalogue, swap: StandIn) -> str:
    """What goes in is named first."""
    coming, going = (plant_words(catalogue.stem(stem)) for stem in (swap.in_, swap.out))
    if catalogue.staff:
        told = _("{number} {coming} in place of {number_before} {going}")
        counts = {"number": swap.in_count, "number_before": swap.out_count}
        return told.format(coming=coming, going=going, **counts)
    return _("{coming} in place of {going}").format(coming=coming, going=going)


def _reasons(catalogue: Catalogue, swap: StandIn) -> tuple[str, ...]:
    """All of them for whoever makes it; for a client how the colour differs."""
    stems = catalogue.studio.stems
    if catalogue.staff:
        return reasons(swap, stems)
    return tuple(filter(None, [colour_reason(swap, stems)]))


def _careful(catalogue: Catalogue, swap: StandIn) -> tuple[str, ...]:
    coming = catalogue.stem(swap.in_)
    if not new_hazards(swap, catalogue.studio.stems):
        return ()
    return at_the_bench([coming]) if catalogue.staff else take_home([coming], written=False)

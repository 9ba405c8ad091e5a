"""What are a photo's colours, and which stems are like them? The lines of `corymb colours`."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.cli.wrapping import hyphened
from corymb.language import gettext as _
from corymb.studio.studio import Studio
from corymb.trade.colour.likeness import Palette
from corymb.trade.colour.nearest import Near, first_recipe, nearest_stems
from corymb.trade.colour.words import colour_word
from corymb.trade.season.beds import Beds
from corymb.views.compose.season_words import window_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import percent_words, third_of

WORD = 8
"""So wide is the column of colours' words, with the space behind."""

NEAREST = 3
"""So many stems are named for each colour."""


def colour_sheet(studio: Studio, name: str, colours: Palette, count: int) -> Iterator[str]:
    """The lines to print; `colours` are the photo's, the largest share first."""
    beds = Beds.of(studio)
    head = _("Colours of {photo}, as far as they can be told from what lies behind")
    yield head.format(photo=name)
    yield _("Behind each stem: how far its colour is (1 is just seen, 20 is another colour).")
    for hex_, share in colours:
        yield ""
        word = trade_word("colour", colour_word(hex_))
        yield f"{word:<{WORD}}{hex_}  {percent_words(round(100 * share))}"
        near = nearest_stems(hex_, studio.stems)[:NEAREST]
        yield from _stems(studio, beds, near) if near else ["  " + _("nothing of yours comes near")]
    yield from _first_recipe(studio, beds, colours, count)


def _stems(studio: Studio, beds: Beds, near: list[Near]) -> Iterator[str]:
    wide = max(len(studio.stems[each.stem].name) for each in near)
    for each in near:
        stem = studio.stems[each.stem]
        hazards = ", ".join(trade_word("hazard", hazard) for hazard in stem.hazards)
        told = "; ".join(filter(None, [hyphened(window_words(beds.season(each.stem))), hazards]))
        yield f"  {stem.name:<{wide}}  {each.distance:>4.0f}  {told}"


def _first_recipe(studio: Studio, beds: Beds, colours: Palette, count: int) -> Iterator[str]:
    weeks = {stem_id: beds.weeks(stem_id) for stem_id in studio.stems}
    first = first_recipe(colours, studio.stems, count, weeks)
    if first.lines:
        told = _("To begin a recipe with; all of it stands in {when}:")
        yield from ("", told.format(when=third_of(first.week)), "")
        yield "stems:"
        yield from (f"  - {line.count} {line.stem}, {line.role}" for line in first.lines)

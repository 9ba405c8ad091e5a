"""What are a photo's colours, and which stems are like them? The lines of `corymb colours`."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.studio import Studio
from corymb.trade.colour.likeness import Palette
from corymb.trade.colour.nearest import Near, first_recipe, nearest_stems
from corymb.trade.colour.words import colour_word
from corymb.trade.season.beds import Beds
from corymb.views.compose.wording import third_of

NEAREST = 3
"""So many stems are named for each colour."""


def colour_sheet(studio: Studio, name: str, colours: Palette, count: int) -> Iterator[str]:
    """The lines to print; `colours` are the photo's, the largest share first."""
    beds = Beds.of(studio)
    yield f"Colours of {name}, as far as they can be told from what lies behind"
    yield "Behind each stem: how far its colour is (1 is just seen, 20 is another colour)."
    for hex_, share in colours:
        yield ""
        yield f"{colour_word(hex_):<8}{hex_}  {100 * share:.0f} %"
        near = nearest_stems(hex_, studio.stems)[:NEAREST]
        yield from _stems(studio, beds, near) if near else ["  nothing of yours comes near"]
    yield from _first_recipe(studio, beds, colours, count)


def _stems(studio: Studio, beds: Beds, near: list[Near]) -> Iterator[str]:
    wide = max(len(studio.stems[each.stem].name) for each in near)
    for each in near:
        stem = studio.stems[each.stem]
        hazards = f"; {', '.join(stem.hazards)}" if stem.hazards else ""
        season = f"{beds.season(each.stem)}{hazards}"
        yield f"  {stem.name:<{wide}}  {each.distance:>4.0f}  {season}"


def _first_recipe(studio: Studio, beds: Beds, colours: Palette, count: int) -> Iterator[str]:
    weeks = {stem_id: beds.weeks(stem_id) for stem_id in studio.stems}
    first = first_recipe(colours, studio.stems, count, weeks)
    if first.lines:
        yield from ("", f"To begin a recipe with; all of it stands in {third_of(first.week)}:", "")
        yield "stems:"
        yield from (f"  - {line.count} {line.stem}, {line.role}" for line in first.lines)

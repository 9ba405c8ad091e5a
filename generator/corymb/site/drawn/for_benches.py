"""The drawings that bench sheets alone need: pieces that are not as their look's page shows them.

A line that is smaller or larger than the regular size, or whose cut put other stems in, is drawn
as it will be made, from the front and from above. All others have their look's drawings.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from corymb.picture import Arrangement
from corymb.site.drawn.hands import all_drawn
from corymb.site.drawn.pictures import kept_pictures, sheet_size
from corymb.site.drawn.plans import key_lines
from corymb.site.drawn.sized import arrangement_in_size
from corymb.site.drawn.to_draw import Drawn, LookToDraw
from corymb.trade.looks import Look
from corymb.trade.orders.as_cut import as_cut
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.one_made import one_made
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing, PlanDrawing
from corymb.views.compose.orders.bench_drawn import DrawnLine, DrawnLines
from corymb.views.compose.orders.cuts import cut_for, with_papers


@dataclass
class BenchPictures:
    """Drawings (SVG) by address, and what is drawn of which line of which order."""

    drawn: dict[str, str] = field(default_factory=dict)
    lines: DrawnLines = field(default_factory=dict)


def draw_for_benches(catalogue: Catalogue, folder: Path) -> BenchPictures:
    """The drawings of all bench sheets; kept between builds in `folder`."""
    pictures = BenchPictures()
    if not catalogue.staff:
        return pictures
    kept = kept_pictures(folder)
    asked = [
        (due, line, arrangement)
        for due, line in _made_up(catalogue)
        if (arrangement := _not_shown_yet(catalogue, due, line))
    ]
    drawn = all_drawn(kept, [LookToDraw(arrangement) for *_, arrangement in asked])
    for (due, line, arrangement), one in zip(asked, drawn, strict=True):
        pictures.lines[due.id, line.number] = _line_drawn(pictures, arrangement, due, line, one)
    kept.forget_the_rest()
    return pictures


def _not_shown_yet(catalogue: Catalogue, due: Due, line: DueLine) -> Arrangement | None:
    """A line as it will be made, where no page shows it so."""
    made = one_made(line, as_cut(due, line, cut_for(catalogue, due)))
    if _shown_already(line, made.look) or not made.look.lines:
        return None
    recipe, studio = line.piece.recipe, catalogue.studio
    told_in = studio.house.lengths_in
    return arrangement_in_size(recipe, made.look, line.piece.size, studio.stems, told_in)


def _made_up(catalogue: Catalogue) -> Iterator[tuple[Due, DueLine]]:
    for due in with_papers(catalogue):
        for line in due.lines:
            if not line.piece.in_buckets:
                yield due, line


def _shown_already(line: DueLine, look: Look) -> bool:
    """Whether the page of the look shows it with the same stems and in the same size."""
    same = [(each.stem, each.count) for each in look.lines] == [
        (each.stem, each.count) for each in line.piece.look.lines
    ]
    return same and line.piece.scale == 1


def _line_drawn(
    pictures: BenchPictures, arrangement: Arrangement, due: Due, line: DueLine, drawn: Drawn
) -> DrawnLine:
    href = addresses.of_bench_picture(due.id, line.number)
    plan_href = addresses.of_bench_plan(due.id, line.number)
    pictures.drawn.update({href: drawn.svg, plan_href: drawn.plan})
    return DrawnLine(
        Drawing(href, *sheet_size(drawn.svg)),
        PlanDrawing(Drawing(plan_href, *sheet_size(drawn.plan)), key_lines(arrangement)),
    )

"""The drawings that bench sheets alone need: pieces that are not as their look's page shows them.

A line that is smaller or larger than the regular size, or whose cut put other stems in, is drawn
as it will be made, from the front and from above. All others have their look's drawings.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from corymb.code_digest import code_digest
from corymb.picture import Arrangement, draw
from corymb.site.kept_pictures import Kept
from corymb.site.pictures import DRAWS, sheet_size
from corymb.site.plans import drawn_plan, key_lines
from corymb.site.sized import arrangement_in_size
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
    kept = Kept(folder, code_digest(DRAWS))
    for due, line in _made_up(catalogue):
        made = one_made(line, as_cut(due, line, cut_for(catalogue, due)))
        if _shown_already(line, made.look) or not made.look.lines:
            continue
        recipe, stems = line.piece.recipe, catalogue.studio.stems
        told_in = catalogue.studio.house.lengths_in
        arrangement = arrangement_in_size(recipe, made.look, line.piece.size, stems, told_in)
        pictures.lines[due.id, line.number] = _drawn(pictures, kept, arrangement, due, line)
    kept.forget_the_rest()
    return pictures


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


def _drawn(
    pictures: BenchPictures, kept: Kept, arrangement: Arrangement, due: Due, line: DueLine
) -> DrawnLine:
    href = addresses.of_bench_picture(due.id, line.number)
    svg = kept.or_drawn(repr(arrangement), lambda: draw(arrangement))
    plan_href = addresses.of_bench_plan(due.id, line.number)
    plan = kept.or_drawn(f"plan {arrangement}", lambda: drawn_plan(arrangement))
    pictures.drawn.update({href: svg, plan_href: plan})
    return DrawnLine(
        Drawing(href, *sheet_size(svg)),
        PlanDrawing(Drawing(plan_href, *sheet_size(plan)), key_lines(arrangement)),
    )

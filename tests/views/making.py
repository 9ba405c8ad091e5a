"""The demo's catalogue, and years of weeks made up for it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from datetime import date
from functools import cache

from corymb.studio.load import read_studio
from corymb.studio.studio import Studio
from corymb.trade.looks import Look
from corymb.trade.season.best import Best, BestState
from corymb.trade.season.makeable import Answer, State
from corymb.trade.season.weeks import WEEKS
from corymb.trade.swaps.standing_in import StandIn
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.pieces import Audience
from tests import conftest


@cache
def demo() -> Studio:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio
    return studio


def catalogue_of(
    studio: Studio, audience: Audience = "clients", day: date = date(2026, 9, 16)
) -> Catalogue:
    """A studio's catalogue; each picture the same."""
    no_picture: dict[str, Drawing] = defaultdict(lambda: Drawing("picture.svg", 1200, 1400))
    return Catalogue(studio, audience, day, drawings=no_picture)


def swap(out: str, in_: str, out_count: int = 3, in_count: int = 5) -> StandIn:
    """So many of one stem for so many of another, nearly the same."""
    return StandIn(out, in_, "depth", out_count, in_count, 5.0, 0.6, 0, True, 5.0)


def best(
    week: int,
    look: Look,
    state: BestState = "pictured",
    chance: float = 1.0,
    swaps: Sequence[StandIn] = (),
    blocks: Sequence[str] = (),
    too_much: bool = False,
    nearest: int | None = None,
) -> Best:
    """A week's best answer, as made up."""
    of_look: State = "pictured" if state == "variant" else state
    answer = Answer(week, of_look, chance, tuple(swaps), tuple(blocks), too_much, nearest)
    return Best(week, look, answer, state)


def year_of(bests: Sequence[Best], otherwise: Best) -> list[Best]:
    """A year in which every week that isn't told of is like `otherwise`."""
    told = {each.week: each for each in bests}
    rest = {week: Best(week, otherwise.look, otherwise.answer, otherwise.state) for week in WEEKS}
    return [told.get(week, rest[week]) for week in WEEKS]

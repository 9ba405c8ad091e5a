"""A photo against the recipe: the advice a build gives, and what the staff's page says."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import pytest

from corymb.checks.photo_colours import unlike_their_looks
from corymb.photos import PhotoColour, PhotoFile, PreparedPhoto
from corymb.trade.colour.areas import colour_areas
from corymb.trade.colour.shown import Missing, Shown
from corymb.trade.looks import looks_of
from corymb.views.compose.made import made_view
from corymb.views.compose.photo_colours import how_far, lacking
from corymb.views.pages import StaffMade
from tests.views.making import catalogue_of, demo

JAR = "photos/hedgerow-jar-on-linen.jpg"
GOLD = "photos/snow-light-bowl-on-oak.jpg"  # of a variant
BLUE = [("#2a52be", 1.0)]


def prepared(colours: Sequence[tuple[str, float]]) -> PreparedPhoto:
    """A finished photo of flowers that are all there is in it."""
    card = PhotoFile("card.jpg", "jpeg", 1200, 630, Path("card.jpg"))
    parts = tuple(PhotoColour(hex_, share) for hex_, share in colours)
    return PreparedPhoto(1200, 900, "#ffffff", "#ffffff", (card,), card, parts, parts)


def as_said(recipe_id: str, variant: str = "") -> PreparedPhoto:
    """A photo that shows a look exactly as it is written."""
    studio = demo()
    look = looks_of(studio.recipes[recipe_id], studio.recipes)[variant]
    return prepared([(a.hex, a.share) for a in colour_areas(look.lines, studio.stems)])


def test_a_photo_of_something_else_is_told_at_each_place_that_names_it() -> None:
    problems = unlike_their_looks(demo(), {JAR: prepared(BLUE)})
    assert [problem.file.name for problem in problems] == ["garden-tea.yml", "hedgerow-jar.yml"]
    assert all(problem.advice for problem in problems)
    for problem in problems:
        assert f"file: {JAR}" in problem.source
        assert problem.message.startswith(
            "This photo doesn't show much of what ‘Hedgerow jar’ says: no white "
            "(‘Cosmos, white’ and ‘Scabious, white’) where the recipe has "
        )
        assert problem.message.endswith(
            "If it shows another recipe or variant, name that one. "
            "(By its colours alone, which is a guess.)"
        )


def test_a_photo_whose_colours_are_there_in_quite_other_parts_is_told_of() -> None:
    studio = demo()
    parts = as_said("hedgerow-jar").flowers
    least = min(parts, key=lambda part: part.share)
    others = [(part.hex, 0.001) for part in parts if part is not least]
    (problem, _) = sorted(unlike_their_looks(studio, {JAR: prepared([(least.hex, 1.0), *others])}))
    assert "says: its colours are far from the recipe's (" in problem.message
    assert "where 1 is just seen). If it shows another" in problem.message


def test_a_photo_of_a_variant_is_held_against_the_variant() -> None:
    (problem,) = unlike_their_looks(demo(), {GOLD: prepared(BLUE)})
    assert problem.file.name == "shortest-day.yml"
    variant = demo().recipes["snow-light-bowl"].variants["gold"].name
    assert f"what ‘Snow-light bowl: {variant}’ says" in problem.message


@pytest.mark.parametrize(
    "photos",
    [{JAR: as_said("hedgerow-jar")}, {GOLD: as_said("snow-light-bowl", "gold")}, {}],
    ids=["a recipe", "a variant", "no photos made"],
)
def test_a_photo_of_what_is_said_needs_no_advice(photos: dict[str, PreparedPhoto]) -> None:
    assert unlike_their_looks(demo(), photos) == []


def test_a_photo_without_colours_is_not_judged() -> None:
    assert unlike_their_looks(demo(), {JAR: prepared([])}) == []


@pytest.mark.parametrize(
    ("apart", "words"),
    [
        (0.0, "Close to the recipe's colours (0, where 1 is just seen)."),
        (9.0, "Close to the recipe's colours (9, where 1 is just seen)."),
        (13.4, "Not far from the recipe's colours (13, where 1 is just seen)."),
        (18.0, "Some way from the recipe's colours (18, where 1 is just seen)."),
        (31.0, "Far from the recipe's colours (31, where 1 is just seen)."),
    ],
)
def test_the_distance_is_told_in_words(apart: float, words: str) -> None:
    assert how_far(Shown(apart, ())) == words


@pytest.mark.parametrize(
    ("missing", "words"),
    [
        ([], ""),
        ([Missing("plum", 0.09, ("smoke-bush",))], ""),
        (
            [Missing("plum", 0.304, ("smoke-bush", "scabious-plum"))],
            "no plum (‘Smoke bush, plum’ and ‘Scabious, plum’) where the recipe has 30 %",
        ),
    ],
    ids=["nothing", "too little to be named", "two stems"],
)
def test_what_is_missing_is_named_with_its_stems(missing: list[Missing], words: str) -> None:
    assert lacking(demo(), missing) == words


def test_only_staff_see_the_photo_beside_the_recipe() -> None:
    made = demo().made["garden-tea"]
    photos = {JAR: as_said("hedgerow-jar")}
    view = made_view(replace(catalogue_of(demo(), "staff"), photos=photos), made)
    assert isinstance(view, StaffMade)
    (photo,) = view.beside
    assert photo.how_far.startswith("Close to the recipe's colours (0,")
    assert photo.lacking == ""
    words = [colour.word for colour in photo.colours]
    assert len(words) == len(set(words)) > 1
    assert sum(colour.percent for colour in photo.colours) == pytest.approx(100, abs=0.1)
    assert sum(part.percent for part in view.band) == pytest.approx(100, abs=0.3)
    for_clients = made_view(replace(catalogue_of(demo()), photos=photos), made)
    assert not hasattr(for_clients, "beside")

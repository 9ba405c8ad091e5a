"""Every week of every look of the demo, against an answer worked out apart from the code.

Here nothing is clever: book dates are carried to the garden in a thousand small steps, the log is
averaged as its rule says, every day of the year is asked one by one, colours are compared by
ColorAide, and all ways of giving stand-ins to missing stems are tried.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from itertools import pairwise, product
from math import pi
from pathlib import Path

import pytest
from coloraide import Color

from corymb.studio.load import read_studio
from corymb.studio.models import Recipe, Stem, Style
from corymb.studio.studio import Studio
from corymb.studio.values.season import Season, Window
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import FILLED
from corymb.trade.colour.words import colour_word
from corymb.trade.looks import Look, looks_of, sized
from corymb.trade.season.best import best_of
from corymb.trade.season.makeable import Answer, Makeable
from corymb.trade.swaps.made import with_swaps

DEMO = Path(__file__).parents[3] / "content"
YEAR, WEEKS = 365, range(1, 53)


def _read() -> Studio:
    studio, _ = read_studio(DEMO)
    assert studio is not None
    return studio


STUDIO = _read()
MAKEABLE = Makeable.of(STUDIO)
LOOKS = [
    look for recipe in STUDIO.recipes.values() for look in looks_of(recipe, STUDIO.recipes).values()
]
"""Drafts too."""


# The garden's dates, by steps.


def rule(day: float) -> float:
    """How much of Hopkins' rule holds on a day: the corners of its line, looked up."""
    corners = ((-32, -1), (31, 1), (180, 1), (243, -1), (333, -1), (396, 1))
    for (a, low), (b, high) in pairwise(corners):
        if a <= day <= b:
            return low + (high - low) * (day - a) / (b - a)
    raise AssertionError(day)


def days_later() -> float:
    place, book = STUDIO.house.place, STUDIO.house.reference_place
    return (
        4 * (place.latitude - book.latitude)
        + 4 * (place.height.metres - book.height.metres) / 121.92
    )


def carried(day: float) -> float:
    steps = 2000
    for _ in range(steps):
        half = day + rule((day - 1) % YEAR) * days_later() / steps / 2
        day += rule((half - 1) % YEAR) * days_later() / steps
    return day


def around(day: float) -> float:
    return (day + YEAR / 2) % YEAR - YEAR / 2


def first_last(window: Window) -> tuple[int, int]:
    first, last = window.first.day_of_year, window.last.day_of_year
    return first, last if last >= first else last + YEAR


@cache
def days_of(stem_id: str) -> frozenset[int]:
    """The days of a plain year on which a stem stands here."""
    book: Season = STUDIO.stems[stem_id].in_season
    if len(book.days()) == YEAR:
        return frozenset(range(1, YEAR + 1))
    flushes = [(carried(a), carried(b)) for a, b in map(first_last, book.windows)]
    told: list[list[tuple[float, float]]] = [[] for _ in flushes]
    for log in STUDIO.logs.values():
        for window in log.cuts[stem_id].windows if stem_id in log.cuts else ():
            first, last = first_last(window)
            middle = (first + last) / 2
            near = min(range(len(flushes)), key=lambda n: abs(around(middle - sum(flushes[n]) / 2)))
            told[near].append((first, last))
    days: set[int] = set()
    for (first, last), years in zip(flushes, told, strict=True):
        weight = len(years) / (len(years) + 2)
        if years:
            first += weight * sum(around(y[0] - first) for y in years) / len(years)
            last += weight * sum(around(y[1] - last) for y in years) / len(years)
        days |= {(day - 1) % YEAR + 1 for day in range(round(first), round(last) + 1)}
    return frozenset(days)


# What may stand in.


def area(stem: Stem) -> float:
    long = (
        stem.head_length.cm
        if stem.head_length and stem.form in FILLED and _is_long(stem)
        else stem.head.cm
    )
    return pi / 4 * stem.head.cm * long * stem.heads_per_stem * FILLED[stem.form]


def area_in(recipe: Recipe, stem: Stem) -> float:
    """No longer than what stands clear of the rim; on a wire or a ring a sprig, and one head."""
    across, high, vessel = recipe.across.cm, recipe.high.cm, recipe.vessel
    if vessel.kind == "wire":
        long, wide, bud = 0.55 * high, 0.42 * across, 0.52 * across
    elif vessel.kind == "ring":
        long, wide, bud = 0.25 * across, 0.2 * across, 0.3 * across
    else:
        rim = vessel.high.cm if vessel.high else high * (0.3 if vessel.kind == "hand" else 0.42)
        wide = bud = 1000
        long = 0.84 * max(high - min(rim, 0.68 * high), across / 2)
    whole = stem.form in ("rosette", "daisy", "globe", "cup", "trumpet", "bell", "pod")
    shown = min(stem.head.cm, bud if whole else wide)
    tall = stem.head_length.cm if stem.head_length and _is_long(stem) else shown
    tall = min(tall, max(long, shown))
    heads = 1 if vessel.kind in ("wire", "ring") else stem.heads_per_stem
    return pi / 4 * shown * tall * heads * FILLED[stem.form]


def _is_long(stem: Stem) -> bool:
    long = ("spike", "plume", "tassel", "trail", "blade", "twig", "bell")
    return stem.form in long or stem.form.endswith("-spray")


@cache
def far(a: str, b: str) -> float:
    return Color(a).delta_e(Color(b), method="2000")


@cache
def apart(a: str, b: str) -> float:
    """A hundredth part after another carried over, the likest colours first."""
    one, two = (
        {part.hex: round(float(part.share or 0) * 100) for part in STUDIO.stems[each].colours}
        for each in (a, b)
    )
    way = 0.0
    for _ in range(100):
        near, mine, its = min((far(x, y), x, y) for x in one for y in two if one[x] and two[y])
        one[mine] -= 1
        two[its] -= 1
        way += near / 100
    return way


def pale(stem: Stem) -> float:
    return sum(
        float(part.share or 0) * Color(part.hex).convert("lab-d65")["l"] for part in stem.colours
    )


def kind(stem: Stem) -> str:
    """Flower, green, wood, fruit or hanging; a plume by whether it drinks as flowers do."""
    if stem.form == "plume":
        drinks = stem.use == "focal" or stem.conditioning.hours > 3
        return "flower" if drinks else "green"
    kinds = {
        "green": ("blade", "leaf-spray", "needle-spray"),
        "fruit": ("berry", "pod"),
        "hanging": ("trail", "tassel"),
        "wood": ("twig",),
    }
    return next((kind for kind, forms in kinds.items() if stem.form in forms), "flower")


def dry(stem: Stem) -> bool:
    return stem.conditioning.hours == 0 and stem.vase_life.most >= 60


def same_plant(one: str, other: str) -> bool:
    """Such as statice beside dried statice: of one botanical name, and one word for the colour."""
    a, b = STUDIO.stems[one], STUDIO.stems[other]
    return a.botanical == b.botanical and _mostly(a) == _mostly(b)


def _mostly(stem: Stem) -> str:
    most = max(float(part.share or 0) for part in stem.colours)
    return colour_word(min(part.hex for part in stem.colours if float(part.share or 0) == most))


def allowed(line: LookLine, style: Style, other: Stem) -> bool:
    """Every rule of the house for one stem in place of a line, one after another."""
    own = STUDIO.stems[line.stem]
    wanted = line.count * area(own) / area(other)
    count = max(1, int(wanted + 0.5))
    lighter = pale(other) - pale(own)
    return (
        other.id != own.id
        and other.use == (line.use or own.use)
        and not set(other.hazards) & set(style.excludes)
        and other.weight.grams <= style.heaviest_stem.grams
        and other.length.longest_cm >= style.stem_length.shortest_cm
        and other.length.longest_cm
        >= 0.7 * min(own.length.longest_cm, style.stem_length.longest_cm)
        and 1 / 3 <= area(own) / area(other) <= 3
        and count <= 2.5 * line.count
        and not (line.count >= 3 and count < (3 if line.role == "accent" else 2))
        and kind(other) == kind(own)
        and dry(other) == dry(own)
        and 1 / 1.6 <= count / wanted <= 1.6
        and not (line.role == "depth" and lighter > 12)
        and not (line.role == "light" and lighter < -12)
        and apart(own.id, other.id) <= STUDIO.house.swaps.colour_within
    )


@cache
def might(line: LookLine, style_id: str) -> frozenset[str]:
    style = STUDIO.house.styles[style_id]
    return frozenset(each.id for each in STUDIO.stems.values() if allowed(line, style, each))


def state(look: Look, day: int) -> str:
    """As pictured, with swaps, or not then: by trying every way."""
    style = STUDIO.recipes[look.recipe].style
    here = {line.stem for line in look.lines}
    missing = [line for line in look.lines if day not in days_of(line.stem)]
    if not missing:
        return "pictured"
    if any(line.essential for line in missing):
        return "none"
    recipe = STUDIO.recipes[look.recipe]
    whole = sum(line.count * area_in(recipe, STUDIO.stems[line.stem]) for line in look.lines)
    changed = sum(line.count * area_in(recipe, STUDIO.stems[line.stem]) for line in missing)
    if len(missing) > 3 or changed / whole > float(STUDIO.house.swaps.most_of_a_piece.fraction):
        return "none"
    choices = [
        [
            each
            for each in sorted(might(line, style))
            if each not in here
            and day in days_of(each)
            and not any(same_plant(each, other) for other in here - {line.stem})
        ]
        for line in missing
    ]
    return "swaps" if any(_all_differ(way) for way in _ways(choices)) else "none"


def _ways(choices: list[list[str]]) -> Iterator[tuple[str, ...]]:
    """Every way; where a line has many choices, more than there are lines make no difference."""
    return product(*(each[: len(choices)] for each in choices))


def _all_differ(way: tuple[str, ...]) -> bool:
    return len(set(way)) == len(way)


def thursday(week: int) -> int:
    return 7 * week - 3


@pytest.mark.parametrize("look", LOOKS, ids=lambda look: look.id)
def test_every_week_is_what_trying_every_day_and_every_way_says(look: Look) -> None:
    expected = [state(look, thursday(week)) for week in WEEKS]
    assert [answer.state for answer in MAKEABLE.answers(look)] == expected


@pytest.mark.parametrize("look", LOOKS, ids=lambda look: look.id)
def test_every_swap_would_itself_pass_what_the_style_leaves_out(look: Look) -> None:
    style = STUDIO.recipes[look.recipe].style
    for answer in MAKEABLE.answers(look):
        for swap in answer.swaps:
            line = next(
                line for line in look.lines if (line.stem, line.role) == (swap.out, swap.role)
            )
            assert swap.in_ in might(line, style)
            others = {each.stem for each in look.lines} - {line.stem}
            assert not any(same_plant(swap.in_, other) for other in others)
            assert thursday(answer.week) in days_of(swap.in_)
        assert len({swap.in_ for swap in answer.swaps}) == len(answer.swaps)


@pytest.mark.parametrize("look", LOOKS, ids=lambda look: look.id)
def test_in_every_size_each_swap_comes_in_exactly_where_its_line_would_stand(look: Look) -> None:
    for size in STUDIO.recipes[look.recipe].sizes.values():
        for answer in MAKEABLE.answers(look):
            made = with_swaps(look, answer.swaps)
            pairs = zip(sized(look, size), sized(made, size), look.lines, made.lines, strict=True)
            for own, now, was, line in pairs:
                assert (own == 0) == (now == 0)
                assert own == now or was.stem != line.stem


@pytest.mark.parametrize("recipe_id", STUDIO.recipes)
def test_no_recipe_lacks_an_answer_in_any_week(recipe_id: str) -> None:
    best = best_of(looks_of(STUDIO.recipes[recipe_id], STUDIO.recipes), MAKEABLE)
    assert [each.week for each in best] == list(WEEKS)
    assert all(_says_something(each.answer) for each in best)


def _says_something(answer: Answer) -> bool:
    """A reason where it can't be made, the swaps where it can with some, and how sure it is."""
    if answer.state == "none":
        return bool(answer.blocks) and answer.nearest is not None
    return answer.chance > 0 and bool(answer.swaps) == (answer.state == "swaps")

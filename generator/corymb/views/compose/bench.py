"""How a look is made and what it costs: the part of its page that only staff see."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from corymb.studio.models import Recipe, Stem, StudioFile, Sundry
from corymb.trade.looks import Look
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.hazards import at_the_bench
from corymb.views.compose.look_words import Words
from corymb.views.compose.plan import plan_key, plan_view
from corymb.views.compose.price import price_view
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import money, number
from corymb.views.pieces import Link
from corymb.views.recipe import BenchView, CostLine


def bench_view(catalogue: Catalogue, look: Look) -> BenchView:
    """Method, cautions, costs and price of a look."""
    recipe = catalogue.studio.recipes[look.recipe]
    variant = recipe.variants.get(look.variant)
    words = Words.of(catalogue.studio, look)
    stems = [catalogue.stem(line.stem) for line in look.lines]
    house = catalogue.studio.house
    counts = [line.count for line in look.lines]
    draft = recipe.draft or bool(variant and variant.draft)
    sundries = sum((sundry.cost for sundry in recipe.sundries), Decimal(0))
    return BenchView(
        difficulty=trade_word("level", recipe.difficulty),
        time=time_words(words.told("time").minutes),
        techniques=bench_lessons(catalogue, recipe.techniques),
        method=words.steps("method"),
        looks_right=words.steps("looks_right_when"),
        careful=tuple(dict.fromkeys([*words.cautions(), *at_the_bench(stems)])),
        conditioning=conditioning(stems),
        costs=_costs(catalogue, look),
        sundries=tuple(_sundry(catalogue, sundry) for sundry in recipe.sundries),
        stems_grown=_together(counts, [stem.grown for stem in stems], house),
        stems_bought=_together(counts, [stem.bought for stem in stems], house),
        sundries_cost=money(sundries, house),
        price=price_view(catalogue, look),
        notes=recipe.notes,
        draft=draft,
        plan=plan_view(catalogue, look),
        plan_key=plan_key(catalogue, look),
        recipe_id=recipe.id,
        practice_href="" if draft else addresses.of_practice(look),
    )


def conditioning(stems: Sequence[Stem]) -> tuple[str, ...]:
    """What to do with the stems overnight, those together that are treated alike."""
    alike: dict[str, list[str]] = {}
    for stem in stems:
        hours = stem.conditioning.hours
        time = time_words(60 * hours)
        treatment = f"{stem.conditioning.do} ({time})" if hours else stem.conditioning.do
        alike.setdefault(treatment, []).append(stem.name)
    return tuple(
        f"{'; '.join(dict.fromkeys(names))}: {treatment}" for treatment, names in alike.items()
    )


def _together(counts: list[int], each: list[Decimal | None], house: StudioFile) -> str:
    """What all stems cost; empty when one of them has no price."""
    if None in each:
        return ""
    costs = [count * (one or Decimal(0)) for count, one in zip(counts, each, strict=True)]
    return money(sum(costs, Decimal(0)), house)


def bench_lessons(catalogue: Catalogue, wanted: Sequence[str]) -> tuple[Link, ...]:
    """The lessons to have had before."""
    return tuple(
        Link(catalogue.studio.techniques[known_as].heading.title, addresses.of_lesson(known_as))
        for known_as in wanted
    )


def _costs(catalogue: Catalogue, look: Look) -> tuple[CostLine, ...]:
    house = catalogue.studio.house
    lines = []
    for line in look.lines:
        stem = catalogue.stem(line.stem)
        bought = money(stem.bought * line.count, house) if stem.bought is not None else ""
        lines.append(CostLine(stem.name, line.count, money(stem.grown * line.count, house), bought))
    return tuple(lines)


def bench_sundries(catalogue: Catalogue, recipe: Recipe) -> tuple[str, ...]:
    """What goes into one piece beside stems: `0.3 m jute twine`."""
    return tuple(_sundry_words(catalogue, sundry) for sundry in recipe.sundries)


def _sundry_words(catalogue: Catalogue, sundry: Sundry) -> str:
    amount = f"{number(sundry.count, catalogue.studio.house)} {sundry.unit}".strip()
    return f"{amount} {sundry.name}"


def _sundry(catalogue: Catalogue, sundry: Sundry) -> CostLine:
    cost = money(sundry.cost, catalogue.studio.house)
    return CostLine(_sundry_words(catalogue, sundry), 1, "", cost)

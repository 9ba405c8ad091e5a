"""Which looks does someone mean who types `hedgerow-jar, later, small`?"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import click

from corymb.cli.telling import few_of
from corymb.studio.models import Recipe
from corymb.studio.saying import and_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.order_lines import LinkItemText, parse_link_item
from corymb.trade.order_lines import sizes_of


def looks_asked(studio: Studio, texts: Iterable[str]) -> tuple[LinkItemText, ...]:
    """The looks, each there in the studio. Raises ClickException with the nearest known word."""
    return tuple(_look(studio, text) for text in texts)


def refuse_drafts(studio: Studio, asked: Sequence[LinkItemText]) -> None:
    """Raises ClickException where each look is a draft: its page would show a client nothing."""
    if not all(_is_draft(studio.recipes[each.recipe], each) for each in asked):
        return
    names = and_list(dict.fromkeys(f"‘{each}’" for each in asked))
    what = f"{names} is a draft" if len(asked) == 1 else f"{names} are all drafts"
    raise click.ClickException(
        f"{what}, which no client sees, so the page would be empty: take `draft: yes` out of what "
        "is ready, or give another look. Nothing was written."
    )


def _is_draft(recipe: Recipe, asked: LinkItemText) -> bool:
    variant = next((word for word in asked.words if word in recipe.variants), None)
    return recipe.draft or bool(variant and recipe.variants[variant].draft)


def _look(studio: Studio, text: str) -> LinkItemText:
    by_name = {recipe.name.casefold(): recipe.id for recipe in studio.recipes.values()}
    head, comma, rest = text.partition(",")
    known = by_name.get(head.strip().casefold(), head)
    try:
        asked = parse_link_item(f"{known}{comma}{rest}")
    except ValueError as error:
        told = _misspelt(studio, text) or f"‘{text}’: {error}"
        raise click.ClickException(told) from error
    recipe = studio.recipes.get(asked.recipe)
    if recipe is None:
        there = f" There are {few_of(studio.recipes)}." if studio.recipes else " There are none."
        guess = did_you_mean(asked.recipe, studio.recipes) or there
        raise click.ClickException(f"There is no recipe called ‘{asked.recipe}’.{guess}")
    _known_words(recipe, asked)
    return asked


def _misspelt(studio: Studio, text: str) -> str:
    """What to type where a comma or the quotes are missing; '' where it is something else."""
    for recipe in studio.recipes.values():
        for known in (recipe.id, recipe.name):
            if text.casefold().startswith(f"{known.casefold()} "):
                rest = text[len(known) :].strip()
                return f'Put a comma behind the recipe: "{recipe.id}, {rest}".'
        if recipe.name.casefold().startswith(f"{text.casefold()} "):
            return f'Put a name of several words in quotes: "{recipe.name}", or write {recipe.id}.'
    return ""


def _known_words(recipe: Recipe, asked: LinkItemText) -> None:
    """A single word is a variant or a size; of two the first is the variant."""
    variants, sizes = tuple(recipe.variants), sizes_of(recipe)
    places = [(*variants, *sizes)] if len(asked.words) == 1 else [variants, sizes]
    for word, known in zip(asked.words, places, strict=False):
        if word not in known:
            guess = did_you_mean(word, known) or f" It has {few_of(known)}."
            what = (
                "variant or size" if len(places) == 1 else "size" if known == sizes else "variant"
            )
            raise click.ClickException(f"{recipe.name} has no {what} called ‘{word}’.{guess}")

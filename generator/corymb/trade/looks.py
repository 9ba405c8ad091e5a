"""What does a recipe come to, and each of its variants, once all changes are made?

A *look* is one of them worked out: its lines in whole stems, and what changed from its parent.
Changes are made in a fixed order: swaps, drops, additions, then the scale. Changing a stem that
isn't there is an error with its place, since it is always a slip of the pen.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from corymb.studio.models import Drop, Recipe, RecipeLine, Swap
from corymb.studio.models.recipe import Changes, Scales
from corymb.studio.suggest import and_list, did_you_mean
from corymb.studio.values.share import Scale
from corymb.trade.counts import Counted, scaled


@dataclass(frozen=True)
class LookLine:
    """One line of a look: whole stems of one material, and what they are there for."""

    stem: str
    count: int
    role: str
    use: str | None  # when it plays another part than its own
    essential: bool
    note: str


@dataclass(frozen=True)
class Look:
    """A recipe (variant is '') or one of its variants, worked out."""

    recipe: str
    variant: str
    lines: tuple[LookLine, ...]
    parent_lines: tuple[LookLine, ...]

    @property
    def id(self) -> str:
        """`hedgerow-jar`, or `hedgerow-jar--later` for a variant."""
        return f"{self.recipe}--{self.variant}" if self.variant else self.recipe

    @property
    def stems_total(self) -> int:
        """Whole stems in one piece."""
        return sum(line.count for line in self.lines)


class ChangeError(ValueError):
    """A change that can't be made, with its place below the variant or recipe."""

    def __init__(self, message: str, *path: str | int) -> None:
        super().__init__(message)
        self.path = path


def looks_of(recipe: Recipe, recipes: Mapping[str, Recipe]) -> dict[str, Look]:
    """The recipe's own look under '', and one for each variant.

    `recipes` holds those it may be based on. Raises ChangeError; its path starts at the
    recipe's file.
    """
    start = base_lines(recipe, recipes)
    own = changed(start, recipe) if recipe.based_on else start
    looks = {"": Look(recipe.id, "", own, start)}
    for variant_id in recipe.variants:
        lines, parent = _variant_lines(recipe, variant_id, own)
        looks[variant_id] = Look(recipe.id, variant_id, lines, parent)
    return looks


def base_lines(recipe: Recipe, recipes: Mapping[str, Recipe]) -> tuple[LookLine, ...]:
    """The lines a recipe starts from: its own, or the whole of the recipe it is based on."""
    if recipe.stems or recipe.based_on is None:
        return tuple(_line(line) for line in recipe.stems)
    base = recipes.get(recipe.based_on)
    if base is None:
        return ()
    start = base_lines(base, recipes)
    return changed(start, base) if base.based_on else start


def _variant_lines(
    recipe: Recipe, variant_id: str, own: tuple[LookLine, ...]
) -> tuple[tuple[LookLine, ...], tuple[LookLine, ...]]:
    parent = own
    way = variant_path(recipe, variant_id)
    for step in way[:-1]:
        parent = changed(parent, recipe.variants[step], "variants", step)
    return changed(parent, recipe.variants[variant_id], "variants", variant_id), parent


def variant_path(recipe: Recipe, variant_id: str) -> list[str]:
    """From the first variant that stands on the recipe itself to `variant_id`.

    Raises ChangeError when one builds on a variant that isn't there, or on itself.
    """
    way = [variant_id]
    while (below := recipe.variants[way[0]].builds_on) is not None:
        here = ("variants", way[0], "builds on")
        if below not in recipe.variants:
            guess = did_you_mean(below, list(recipe.variants))
            raise ChangeError(f"This recipe has no variant called ‘{below}’.{guess}", *here)
        if below in way:
            circle = " → ".join([*way, below][way.index(below) :])
            raise ChangeError(f"These variants build on each other: {circle}.", *here)
        way.insert(0, below)
    return way


def changed(
    lines: tuple[LookLine, ...], changes: Changes, *path: str | int
) -> tuple[LookLine, ...]:
    """The lines after `changes`; lines that came to nothing are gone."""
    for i, swap in enumerate(changes.swap):
        lines = _swapped(lines, swap, (*path, "swap", i))
    for i, drop in enumerate(changes.drop):
        lines = _dropped(lines, drop, (*path, "drop", i))
    for line in changes.add:
        lines = _with(lines, _line(line))
    if changes.scale is not None:
        lines = _scaled(lines, changes.scale)
    return tuple(line for line in lines if line.count > 0)


def _line(line: RecipeLine) -> LookLine:
    return LookLine(line.stem, line.count, line.role, line.use, line.essential, line.note)


def _swapped(
    lines: tuple[LookLine, ...], swap: Swap, path: tuple[str | int, ...]
) -> tuple[LookLine, ...]:
    at = _find(lines, swap.out, swap.out_count, path)
    out = lines[at]
    going = out.count if swap.out_count is None else swap.out_count
    coming = LookLine(
        swap.in_,
        going if swap.in_count is None else swap.in_count,
        swap.role or out.role,
        out.use,
        out.essential and going == out.count,
        "",
    )
    kept = (replace(out, count=out.count - going),) if out.count > going else ()
    rest = (*lines[:at], *kept, *lines[at + 1 :])
    return _with(rest, coming, at + len(kept))


def _dropped(
    lines: tuple[LookLine, ...], drop: Drop, path: tuple[str | int, ...]
) -> tuple[LookLine, ...]:
    at = _find(lines, drop.stem, drop.count, path)
    left = 0 if drop.count is None else lines[at].count - drop.count
    return (*lines[:at], replace(lines[at], count=left), *lines[at + 1 :])


def _find(
    lines: tuple[LookLine, ...], stem: str, wanted: int | None, path: tuple[str | int, ...]
) -> int:
    """Where the stem stands; the line with the most of it, should there be two."""
    places = [i for i, line in enumerate(lines) if line.stem == stem and line.count > 0]
    if not places:
        here = list(dict.fromkeys(line.stem for line in lines))
        guess = did_you_mean(stem, here) or f" It has {and_list(here)}." if here else ""
        raise ChangeError(f"‘{stem}’ isn't in what this changes.{guess}", *path)
    at = max(places, key=lambda i: lines[i].count)
    if wanted is not None and wanted > lines[at].count:
        has = lines[at].count
        message = (
            f"Only {has} of ‘{stem}’ {'is' if has == 1 else 'are'} in what this changes: "
            f"write {has}{' or fewer' if has > 1 else ''}, or no number for all of it."
        )
        raise ChangeError(message, *path)
    return at


def _with(
    lines: tuple[LookLine, ...], new: LookLine, at: int | None = None
) -> tuple[LookLine, ...]:
    """The lines with a new one, joined to a line of the same stem and role where there is one."""
    for i, line in enumerate(lines):
        if (line.stem, line.role) == (new.stem, new.role):
            joined = replace(
                line, count=line.count + new.count, essential=line.essential or new.essential
            )
            return (*lines[:i], joined, *lines[i + 1 :])
    at = len(lines) if at is None else at
    return (*lines[:at], new, *lines[at:])


def _scaled(lines: tuple[LookLine, ...], scales: Scales) -> tuple[LookLine, ...]:
    by_role = {"depth": scales.depth, "light": scales.light, "accent": scales.accent}
    for role, own in by_role.items():
        scale = _factor(own) * _factor(scales.all)
        members = [i for i, line in enumerate(lines) if line.role == role]
        counts = scaled([Counted(lines[i].count, role, lines[i].essential) for i in members], scale)
        new = dict(zip(members, counts, strict=True))
        lines = tuple(replace(x, count=new.get(i, x.count)) for i, x in enumerate(lines))
    return lines


def _factor(scale: Scale | None) -> Fraction:
    return Fraction(1) if scale is None else Fraction(scale.factor)

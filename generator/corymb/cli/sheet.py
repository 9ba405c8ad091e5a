"""What does one look at a recipe need? The lines of `corymb show`."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from corymb.cli.strip import season_strip
from corymb.studio.models import Recipe
from corymb.studio.saying import counted
from corymb.studio.studio import Studio
from corymb.studio.words import ROLES
from corymb.trade.changes import LookLine
from corymb.trade.counts import times
from corymb.trade.differences import Difference, differences
from corymb.trade.looks import Look, looks_of, sized
from corymb.trade.order_lines import REGULAR
from corymb.trade.season.beds import Beds
from corymb.trade.season.weeks import weeks_added, weeks_of_look
from corymb.views.compose.look_words import Words
from corymb.views.compose.wording import price_guide, sentence, spans_of

WIDE = 84
SIGNS = str.maketrans(
    {"█": "#", "▒": "+", "·": ".", "→": "->", "–": "-", "×": "x", "‘": "'", "’": "'"}
    | {"€": "EUR ", "£": "GBP "}
)
SAID = {"dropped": "without", "added": "with", "more": "more", "fewer": "fewer"}


@dataclass(frozen=True)
class Asked:
    """Which variant, in which size, how many."""

    variant: str = ""
    size: str = REGULAR
    quantity: int = 1


def sheet(studio: Studio, recipe: Recipe, asked: Asked, plain: bool = False) -> Iterator[str]:
    """The lines to print; `plain` keeps to ASCII."""
    looks = looks_of(recipe, studio.recipes)
    lines = _lines(studio, recipe, asked, looks[asked.variant], looks)
    for line in lines:
        yield line.translate(SIGNS).encode("ascii", "replace").decode() if plain else line


def _lines(
    studio: Studio, recipe: Recipe, asked: Asked, look: Look, looks: dict[str, Look]
) -> Iterator[str]:
    beds = Beds.of(studio)
    yield from _head(studio, recipe, look, asked)
    yield from _stems(studio, beds, look, _counts(recipe, look, asked))
    yield from _year(beds, look, looks)
    if not asked.variant and recipe.variants:
        yield from _variants(studio, beds, recipe, looks)
    if asked.variant or recipe.based_on:
        yield from ("", "Changed", *_changes(studio, look))
    yield from _how(Words.of(studio, look))


def _head(studio: Studio, recipe: Recipe, look: Look, asked: Asked) -> Iterator[str]:
    variant = recipe.variants.get(asked.variant)
    style = studio.house.styles[recipe.style].name
    name = f"{recipe.name}: {variant.name}" if variant else recipe.name
    price = price_guide((variant and variant.price) or recipe.price, studio.house)
    draft = "draft" if recipe.draft or (variant and variant.draft) else ""
    time = Words.of(studio, look).told("time")
    facts = (style, recipe.difficulty, f"{time} to make", price, draft)
    yield f"{name}  ({asked.quantity} × {asked.size})" if _more(asked) else name
    yield " · ".join(filter(None, facts))
    yield from textwrap.wrap(variant.about if variant else recipe.summary, WIDE)
    yield f"{recipe.across} across, {recipe.high} high; {recipe.vessel.name}"
    if asked.size != REGULAR:
        yield "Width, height, time and price are those of the regular size."


def _more(asked: Asked) -> bool:
    return asked.quantity > 1 or asked.size != REGULAR


def _stems(studio: Studio, beds: Beds, look: Look, counts: list[int]) -> Iterator[str]:
    yield ""
    yield f"Stems {sum(counts):>5}"
    width = max(len(studio.stems[line.stem].name) for line in look.lines)
    for role in ROLES:
        members = [(n, x) for n, x in zip(counts, look.lines, strict=True) if x.role == role]
        if members:
            yield f"{role:<7} {sum(count for count, _ in members):>3}"
        for count, line in members:
            yield f"{count:>9}  {_line(studio, beds, line, width)}".rstrip()


def _counts(recipe: Recipe, look: Look, asked: Asked) -> list[int]:
    """Whole stems of each line, in the size and as often as asked."""
    return times(sized(look, recipe.sizes.get(asked.size)), asked.quantity)


def _line(studio: Studio, beds: Beds, line: LookLine, width: int) -> str:
    stem = studio.stems[line.stem]
    remarks = ", ".join(filter(None, ("essential" if line.essential else "", line.note)))
    return f"{stem.name:<{width}}  {beds.season(line.stem)!s:<32}  {remarks}"


def _year(beds: Beds, look: Look, looks: dict[str, Look]) -> Iterator[str]:
    own = weeks_of_look(look, beds)
    others = [] if look.variant else [weeks_of_look(x, beds) for x in looks.values()]
    more = weeks_added(own, others)
    yield ""
    yield from season_strip(own, more)
    yield f"As pictured: {spans_of(own) or 'never'}."
    if more:
        yield f"With a variant: {spans_of(more)}."


def _variants(studio: Studio, beds: Beds, recipe: Recipe, looks: dict[str, Look]) -> Iterator[str]:
    yield ""
    yield "Variants"
    for variant_id, variant in recipe.variants.items():
        look = looks[variant_id]
        weeks = spans_of(weeks_of_look(look, beds)) or "never"
        told = f"{variant_id}: {sentence(variant.name)} {sentence(variant.about)}"
        yield from textwrap.wrap(told, WIDE, initial_indent="  ", subsequent_indent="    ")
        yield from _changes(studio, look)
        yield f"    {counted(look.stems_total, 'stem', 'stems')}; {weeks}"


def _changes(studio: Studio, look: Look) -> Iterator[str]:
    for change in differences(look.parent_lines, look.lines):
        yield f"    {SAID[change.kind]:<8} {_change(change)} {studio.stems[change.stem].name}"


def _change(change: Difference) -> str:
    if change.before and change.after:
        return f"{change.before} → {change.after}"
    return str(change.before or change.after)


def _how(words: Words) -> Iterator[str]:
    method = [f"{step.text} {step.note}".strip() for step in words.steps("method")]
    signs = [f"{sign.text} {sign.note}".strip() for sign in words.steps("looks_right_when")]
    yield from _list("Method", method, [f"{number}." for number in range(1, len(method) + 1)])
    yield from _list("Looks right when", signs)
    yield from _list("Careful", list(words.cautions()))


def _list(heading: str, items: list[str], marks: Iterable[str] = ()) -> Iterator[str]:
    if not items:
        return
    yield ""
    yield heading
    for mark, item in zip(list(marks) or ["-"] * len(items), items, strict=True):
        yield from textwrap.wrap(
            item, WIDE, initial_indent=f"{mark:>4} ", subsequent_indent=" " * 5
        )

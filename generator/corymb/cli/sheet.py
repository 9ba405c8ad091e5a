"""What does one look at a recipe need? The lines of `corymb show`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date

from corymb.cli.strip import season_strip
from corymb.cli.then import Then
from corymb.cli.wrapping import hyphened, wrapped
from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.studio.models import Recipe
from corymb.studio.studio import Studio
from corymb.studio.words import ROLES
from corymb.trade.changes import LookLine
from corymb.trade.counts import times
from corymb.trade.differences import Difference, differences
from corymb.trade.looks import Look, guide_of, looks_of, name_of, sized
from corymb.trade.order_lines import REGULAR
from corymb.trade.season.beds import Beds
from corymb.trade.season.best import BestState, best_of
from corymb.trade.season.makeable import Makeable
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.lengths import length_words
from corymb.views.compose.look_words import Words
from corymb.views.compose.season_words import window_words
from corymb.views.compose.states import words_of_states
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import price_guide, sentence, spans_of

SAID = {
    "dropped": noted("without"),
    "added": noted("with"),
    "more": noted("more"),
    "fewer": noted("fewer"),
}


@dataclass(frozen=True)
class Asked:
    """Which variant, in which size, how many, and on which day if that is told."""

    variant: str = ""
    size: str = REGULAR
    quantity: int = 1
    day: date | None = None


def sheet(studio: Studio, recipe: Recipe, asked: Asked) -> Iterator[str]:
    """The lines to print."""
    looks = looks_of(recipe, studio.recipes)
    makeable = Makeable.of(studio)
    if asked.day:
        catalogue = Catalogue(studio, "staff", asked.day)
        then = Then.on(catalogue, makeable, looks, asked.variant, asked.day)
        yield from _sheet_then(studio, recipe, asked, makeable, then)
        return
    look = looks[asked.variant]
    yield from _head(studio, recipe, look, asked)
    yield from _stems(studio, makeable.beds, look, _counts(recipe, look, asked))
    yield from _year(makeable, {"": look} if asked.variant else looks)
    if not asked.variant and recipe.variants:
        yield from _variants(studio, makeable, recipe, looks)
    if asked.variant or recipe.based_on:
        yield from ("", _("Changed"), *_changes(studio, _in_size(recipe, look, asked)))
    yield from _how(Words.of(studio, look))


def _sheet_then(
    studio: Studio, recipe: Recipe, asked: Asked, makeable: Makeable, then: Then
) -> Iterator[str]:
    """As it would be in the week of a day; only why not, where it can't be made then."""
    yield from _head(studio, recipe, then.shown, asked)
    yield ""
    yield from then.lines(recipe.sizes.get(asked.size), asked.quantity)
    if not then.can:
        return
    counts = _counts(recipe, then.made, asked)
    yield from _stems(studio, makeable.beds, then.made, counts)
    if then.best.look.variant or then.best.answer.swaps:
        changed = replace(then.made, parent_lines=then.best.look.parent_lines)
        yield from ("", _("Changed"), *_changes(studio, _in_size(recipe, changed, asked)))
    yield from _how(Words.of(studio, then.best.look, then.best.answer.swaps))


def _head(studio: Studio, recipe: Recipe, look: Look, asked: Asked) -> Iterator[str]:
    variant = recipe.variants.get(look.variant)
    style = studio.house.styles[recipe.style].name
    name = name_of(recipe, look.variant)
    price = price_guide(guide_of(recipe, look.variant), studio.house)
    draft = _("draft") if recipe.draft or (variant and variant.draft) else ""
    time = time_words(Words.of(studio, look).told("time").minutes)
    level = trade_word("level", recipe.difficulty)
    facts = (style, level, _("{time} to make").format(time=time), price, draft)
    size = trade_word("size", asked.size)
    yield f"{name}  ({asked.quantity} × {size})" if _more(asked) else name
    yield " · ".join(filter(None, facts))
    yield from wrapped(variant.about if variant else recipe.summary, "", "")
    measures = _("{across} across, {high} high; {vessel}")
    across, high = (length_words(each, studio.house) for each in (recipe.across, recipe.high))
    yield measures.format(across=across, high=high, vessel=recipe.vessel.name)
    if asked.size != REGULAR:
        yield _("Width, height, time and price are those of the regular size.")


def _more(asked: Asked) -> bool:
    return asked.quantity > 1 or asked.size != REGULAR


def _stems(studio: Studio, beds: Beds, look: Look, counts: list[int]) -> Iterator[str]:
    yield ""
    words = {role: trade_word("role", role) for role in ROLES}
    wide = max(7, *(len(word) for word in (*words.values(), _("Stems"))))
    yield f"{_('Stems'):<{wide}} {sum(counts):>3}"
    width = max(len(studio.stems[line.stem].name) for line in look.lines)
    for role in ROLES:
        members = [(n, x) for n, x in zip(counts, look.lines, strict=True) if x.role == role]
        if members:
            yield f"{words[role]:<{wide}} {sum(count for count, __ in members):>3}"
        for count, line in members:
            yield f"{count:>9}  {_line(studio, beds, line, width)}".rstrip()


def _counts(recipe: Recipe, look: Look, asked: Asked) -> list[int]:
    """Whole stems of each line, in the size and as often as asked."""
    return times(sized(look, recipe.sizes.get(asked.size)), asked.quantity)


def _in_size(recipe: Recipe, look: Look, asked: Asked) -> Look:
    """A look and what it comes from, with the counts of all that is asked for."""
    parent = Look(look.recipe, "", look.parent_lines, look.parent_lines)
    return Look(
        look.recipe,
        look.variant,
        *(
            tuple(
                replace(line, count=count)
                for line, count in zip(each.lines, _counts(recipe, each, asked), strict=True)
            )
            for each in (look, parent)
        ),
    )


def _line(studio: Studio, beds: Beds, line: LookLine, width: int) -> str:
    stem = studio.stems[line.stem]
    remarks = ", ".join(filter(None, (_("essential") if line.essential else "", line.note)))
    return f"{stem.name:<{width}}  {hyphened(window_words(beds.season(line.stem))):<32}  {remarks}"


def _year(makeable: Makeable, looks: dict[str, Look]) -> Iterator[str]:
    states = {best.week: best.state for best in best_of(looks, makeable)}
    yield ""
    yield from season_strip(states)
    yield _("As pictured: {when}.").format(when=_when(states, "pictured") or _("never"))
    for state in ("variant", "swaps"):
        if when := _when(states, state):
            yield from wrapped(sentence(f"{words_of_states()[state]}: {when}"))


def _when(states: Mapping[int, BestState], state: BestState) -> str:
    return spans_of(frozenset(week for week, found in states.items() if found == state))


def _variants(
    studio: Studio, makeable: Makeable, recipe: Recipe, looks: dict[str, Look]
) -> Iterator[str]:
    yield ""
    yield _("Variants")
    for variant_id, variant in recipe.variants.items():
        look = looks[variant_id]
        weeks = spans_of(makeable.weeks_pictured(look)) or _("never as pictured")
        told = f"{variant_id}: {sentence(variant.name)} {sentence(variant.about)}"
        yield from wrapped(told, "  ")
        yield from _changes(studio, look)
        stems = ngettext("{number} stem; {weeks}", "{number} stems; {weeks}", look.stems_total)
        yield f"    {stems.format(number=look.stems_total, weeks=weeks)}"


def _changes(studio: Studio, look: Look) -> Iterator[str]:
    for change in differences(look.parent_lines, look.lines):
        said = _(SAID[change.kind])
        yield f"    {said:<8} {_change(change)} {studio.stems[change.stem].name}"


def _change(change: Difference) -> str:
    if change.before and change.after:
        return f"{change.before} → {change.after}"
    return str(change.before or change.after)


def _how(words: Words) -> Iterator[str]:
    method = [f"{step.text} {step.note}".strip() for step in words.steps("method")]
    signs = [f"{sign.text} {sign.note}".strip() for sign in words.steps("looks_right_when")]
    yield from _list(_("Method"), method, [f"{number}." for number in range(1, len(method) + 1)])
    yield from _list(_("Looks right when"), signs)
    yield from _list(_("Careful"), list(words.cautions()))


def _list(heading: str, items: list[str], marks: Iterable[str] = ()) -> Iterator[str]:
    if not items:
        return
    yield ""
    yield heading
    for mark, item in zip(list(marks) or ["-"] * len(items), items, strict=True):
        yield from wrapped(item, f"{mark:>4} ", " " * 5)

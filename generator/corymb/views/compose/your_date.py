"""What can be made on a day? Every recipe's few answers, and which of them each week has.

The page chooses among them when a day is named, so that it needs nobody to ask.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import month_names
from corymb.ledger import kept
from corymb.studio.models import Recipe
from corymb.studio.words import MONTHS
from corymb.trade.looks import guide_of
from corymb.trade.season.best import Best
from corymb.trade.season.sureness import MEANS
from corymb.trade.season.weeks import WEEKS
from corymb.views.compose import addresses
from corymb.views.compose.answers import answer_of, answer_view
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import price_guide, sentence
from corymb.views.pieces import Fact, Link
from corymb.views.season import (
    AnswerView,
    DatedImage,
    DatedRecipe,
    DatedStyle,
    YourDateView,
)

DOUBT = noted(
    "Our dates are worked out from those of a place far from here, further than that can be done "
    "well: so nothing is called sure."
)


def your_date_view(catalogue: Catalogue) -> YourDateView:
    """The page that answers for a day."""
    styles = (
        DatedStyle(
            style.plural,
            addresses.of_style(style.id),
            tuple(_dated(catalogue, r.id) for r in catalogue.recipes() if r.style == style.id),
        )
        for style in catalogue.studio.styles.values()
    )
    return YourDateView(
        today=catalogue.today.isoformat(),
        months=_months(),
        sure_means=tuple(
            Fact(sentence(trade_word("sureness", word)).rstrip("."), _(means))
            for word, means in MEANS
        ),
        doubt=_(DOUBT) if catalogue.beds.shift.stretched else "",
        styles=tuple(style for style in styles if style.recipes),
    )


@kept
def _dated(catalogue: Catalogue, recipe_id: str) -> DatedRecipe:
    return dated(catalogue, catalogue.studio.recipes[recipe_id])


def dated(catalogue: Catalogue, recipe: Recipe) -> DatedRecipe:
    """A recipe's answers, each once, in the order in which the year first needs them."""
    bests = catalogue.best[recipe.id]
    can = [best.week for best in bests if best.state != "none"]
    near = [_toward(catalogue, bests, best, best.answer.nearest) for best in bests]
    next_ = [_toward(catalogue, bests, best, _next(best.week, can)) for best in bests]
    each = {_same(best): best for best in reversed([*near, *next_])}
    firsts = sorted(each.values(), key=lambda best: best.week)
    answers = tuple(answer_view(catalogue, best) for best in firsts)
    places = {_same(best): place for place, best in enumerate(firsts)}
    return DatedRecipe(
        name=recipe.name,
        href=addresses.of_look(catalogue.looks[recipe.id][""]),
        images=_images(answers),
        answers=answers,
        prices=tuple(_price(catalogue, best) for best in firsts),
        weeks=tuple(places[_same(best)] for best in near),
        next=tuple(places[_same(best)] for best in next_),
        sure=tuple(trade_word("sureness", best.sure) for best in bests),
    )


def _months() -> tuple[Link, ...]:
    names = zip(month_names(), MONTHS, strict=True)
    return tuple(Link(name, addresses.of_month(english)) for name, english in names)


def _toward(catalogue: Catalogue, bests: Sequence[Best], best: Best, week: int | None) -> Best:
    """A week in which it can't be made, told by what the look of another week lacks in it."""
    if best.state != "none" or week is None:
        return best
    look = bests[week - 1].look
    return replace(best, look=look, answer=answer_of(catalogue, best, look))


def _next(week: int, can: Sequence[int]) -> int | None:
    """The next of some weeks, round the year."""
    return min(can, key=lambda other: (other - week) % len(WEEKS), default=None)


def _same(best: Best) -> tuple[object, ...]:
    """What makes one answer: weeks that are alike in this share it.

    The nearest week isn't part of it: the page itself finds the day that is nearest to a day.
    """
    answer = best.answer
    return best.look.id, best.state, answer.swaps, answer.blocks, answer.too_much


def _price(catalogue: Catalogue, best: Best) -> str:
    guide = guide_of(catalogue.studio.recipes[best.look.recipe], best.look.variant)
    return price_guide(guide, catalogue.studio.house)


def _images(answers: Sequence[AnswerView]) -> tuple[DatedImage, ...]:
    """Each image once, with the answers that it goes with."""
    found: dict[str, list[int]] = {}
    for place, answer in enumerate(answers):
        if answer.image:
            found.setdefault(answer.image.picture.href, []).append(place)
    return tuple(
        DatedImage(image, tuple(places))
        for places in found.values()
        if (image := answers[places[0]].image)
    )

"""How is a recipe made in the week of a day, how sure is that, or what keeps it from being made?"""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Answer, Makeable
from corymb.trade.season.watch import cell_of
from corymb.trade.swaps.made import with_swaps
from corymb.views.compose.answers import names_of, swap_view
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.week_words import week_words
from corymb.views.compose.wording import sentence, third_of

WIDE = 84


@dataclass(frozen=True)
class Then:
    """A recipe in one week: the look to make, and its answer."""

    catalogue: Catalogue
    week: IsoWeek
    best: Best

    @classmethod
    def on(
        cls, studio: Studio, makeable: Makeable, looks: Mapping[str, Look], variant: str, day: date
    ) -> Then:
        """In the week of a day: the best look of all, or the variant that is asked for."""
        week = IsoWeek.of(day)
        asked = {"": looks[variant]} if variant else looks
        best = best_of(asked, makeable)[cell_of(week) - 1]
        return cls(Catalogue(studio, "staff", day), week, best)

    @property
    def can(self) -> bool:
        """Whether it can be made then at all."""
        return self.best.state != "none"

    @property
    def look(self) -> Look:
        """The look with its swaps made."""
        return with_swaps(self.best.look, self.best.answer.swaps)

    def lines(self) -> Iterator[str]:
        """The week and the answer, and the swaps with why and what to be careful of."""
        yield from _wrapped(f"{sentence(week_words(self.week))} {self._answer()}")
        for swap in self.best.answer.swaps:
            view = swap_view(self.catalogue, swap)
            why = f" ({'; '.join(view.reasons)})" if view.reasons else ""
            yield from _wrapped(f"{view.words}{why}", "  ")
            for caution in view.careful:
                yield from _wrapped(caution, "    ")

    def _answer(self) -> str:
        if not self.can:
            return not_then(self.catalogue, self.best.answer)
        return sentence(f"{HOW[self.best.answer.state]}: {self.best.sure}")


HOW = {"pictured": "as pictured", "swaps": "with swaps"}


def not_then(catalogue: Catalogue, answer: Answer) -> str:
    """What keeps a look from being made in a week, and the nearest week in which it can be."""
    week = answer.nearest
    near = f" The nearest is week {week}, {third_of(week)}." if week else ""
    return f"Not then: {why_not(catalogue, answer)}.{near}"


def why_not(catalogue: Catalogue, answer: Answer) -> str:
    """What keeps a look from being made in a week."""
    names = names_of(catalogue, answer.blocks)
    if answer.too_much:
        return f"too much would change without {names}"
    return f"nothing stands in for {names}"


def _wrapped(text: str, indent: str = "") -> list[str]:
    return textwrap.wrap(text, WIDE, initial_indent=indent, subsequent_indent=f"{indent}  ")

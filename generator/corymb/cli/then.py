"""How is a recipe made in the week of a day, how sure is that, or what keeps it from being made?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date

from corymb.cli.wrapping import wrapped
from corymb.studio.values.dates import IsoWeek
from corymb.studio.values.share import Scale
from corymb.trade.looks import Look, sized
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.watch import cell_of
from corymb.trade.swaps.made import with_swaps
from corymb.trade.swaps.standing_in import StandIn
from corymb.views.compose.answers import not_then, state_words
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.swaps import swap_view, swap_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.week_words import week_words
from corymb.views.compose.wording import sentence


@dataclass(frozen=True)
class Then:
    """A recipe in one week: the look to make, and its answer."""

    catalogue: Catalogue
    week: IsoWeek
    bests: tuple[Best, ...]
    """The answers of the year."""
    asked: Look
    """The recipe's own look, or the variant that is asked for."""

    @classmethod
    def on(
        cls,
        catalogue: Catalogue,
        makeable: Makeable,
        looks: Mapping[str, Look],
        variant: str,
        day: date,
    ) -> Then:
        """In the week of a day: the best look of all, or the variant that is asked for."""
        asked = {"": looks[variant]} if variant else looks
        return cls(catalogue, IsoWeek.of(day), best_of(asked, makeable), looks[variant])

    @property
    def best(self) -> Best:
        """The answer of the week."""
        return self.bests[cell_of(self.week) - 1]

    @property
    def can(self) -> bool:
        """Whether it can be made then at all."""
        return self.best.state != "none"

    @property
    def shown(self) -> Look:
        """The look to tell of: where none can be made, the one that was asked for."""
        return self.best.look if self.can else self.asked

    @property
    def made(self) -> Look:
        """The look with its swaps made."""
        return with_swaps(self.best.look, self.best.answer.swaps)

    def lines(self, scale: Scale | None, quantity: int) -> Iterator[str]:
        """The week and the answer, and the swaps with why and what to be careful of.

        The swaps are told in the counts of so many pieces of that size.
        """
        yield from wrapped(f"{sentence(week_words(self.week))} {self._answer()}")
        for swap in self._swaps(scale, quantity):
            view = swap_view(self.catalogue, swap)
            yield from wrapped(swap_words(view), "  ")
            for caution in view.careful:
                yield from wrapped(caution, "    ")

    def _swaps(self, scale: Scale | None, quantity: int) -> Iterator[StandIn]:
        """As they are made in a size; one whose line the size leaves out isn't made."""
        look, made = self.best.look, self.made
        sizes = zip(look.lines, made.lines, sized(look, scale), sized(made, scale), strict=True)
        counts = [(out, into) for was, line, out, into in sizes if was.stem != line.stem]
        for swap, (out, into) in zip(self.best.answer.swaps, counts, strict=True):
            if out:
                yield replace(swap, out_count=out * quantity, in_count=into * quantity)

    def _answer(self) -> str:
        if not self.can:
            return not_then(self.catalogue, self.bests, self.week)
        how = state_words(self.catalogue, self.best, self.asked)
        return sentence(f"{how}: {trade_word('sureness', self.best.sure)}")

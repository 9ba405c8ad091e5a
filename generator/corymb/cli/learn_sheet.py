"""What `corymb learn` tells: where to write what, and what speaks for it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from corymb.cli.days import long_day
from corymb.cli.telling import path_from_here
from corymb.studio.saying import and_list, counted
from corymb.studio.studio import Studio
from corymb.studio.values.time import Duration
from corymb.trade.reality import Correction, Evidence
from corymb.trade.written_places import Place
from corymb.views.compose.reality import evidence_words, look_words
from corymb.views.compose.wording import number


@dataclass(frozen=True)
class Learnt:
    """A correction and where it goes; None where no line says the number by itself."""

    correction: Correction
    place: Place | None

    @property
    def recipe(self) -> str:
        """The recipe whose file it is written in, or goes for."""
        look = self.correction.written.looks[0]
        return self.place.recipe if self.place else look.partition("--")[0]


def learn_sheet(studio: Studio, learnt: Learnt) -> Iterator[str]:
    """One correction: file, line and change; then the orders that speak for it."""
    written, correction = learnt.correction.written, learnt.correction
    yield f"{_where(studio, learnt)}: {_change(correction)}"
    if learnt.place is None:
        yield (
            "  No line says this by itself, since some of it is dropped, added or scaled: change "
            "it by hand."
        )
    looks = [look_words(studio, look) for look in written.looks]
    if len(looks) > 1 or learnt.place is None:
        yield f"  Goes for {and_list(looks)}."
    for evidence in correction.evidence:
        yield f"  {_told(studio, evidence, written.stem)}"
    if len(correction.evidence) > 1:
        yield f"  Together {_times(studio, correction)} times what was asked."


def _where(studio: Studio, learnt: Learnt) -> str:
    source = studio.sources["recipe", learnt.recipe]
    file = path_from_here(source.file).as_posix()
    return f"{file}:{source.tree.place(learnt.place.path)[0]}" if learnt.place else file


def _change(correction: Correction) -> str:
    written, proposed = correction.written, correction.proposed
    if written.stem is None:
        return f"time {Duration(written.number)} -> {Duration(proposed)}"
    return f"{written.number} {written.stem} -> {proposed}"


def _told(studio: Studio, evidence: Evidence, stem: str | None) -> str:
    order = studio.orders[evidence.order]
    pieces = counted(evidence.pieces, "piece", "pieces")
    others = [look_words(studio, look) for look in evidence.shared_with]
    shared = f", shared with {and_list(others)}" if others else ""
    day = long_day(order.date)
    return f"{order.name}, {day}: {pieces}{shared}; {evidence_words(evidence, stem)}."


def _times(studio: Studio, correction: Correction) -> str:
    return number(round(float(correction.ratio), 2), studio.house)

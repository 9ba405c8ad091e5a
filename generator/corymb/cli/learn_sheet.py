"""What `corymb learn` tells: where to write what, and what speaks for it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from corymb.cli.telling import path_from_here
from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list
from corymb.studio.studio import Studio
from corymb.studio.values.time import Duration
from corymb.trade.reality import Correction, Evidence
from corymb.trade.written_places import Place
from corymb.views.compose.orders.when import day_in_full
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
        yield "  " + _(
            "No line says this by itself, since some of it is dropped, added or scaled: change it "
            "by hand."
        )
    looks = [look_words(studio, look) for look in written.looks]
    if len(looks) > 1 or learnt.place is None:
        yield "  " + _("Goes for {looks}.").format(looks=and_list(looks))
    for evidence in correction.evidence:
        yield f"  {_told(studio, evidence, written.stem)}"
    if len(correction.evidence) > 1:
        told = _("Together {number} times what was asked.")
        yield "  " + told.format(number=_times(studio, correction))


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
    number = evidence.pieces
    others = [look_words(studio, look) for look in evidence.shared_with]
    told = ngettext(
        "{order}, {day}: {number} piece; {evidence}.",
        "{order}, {day}: {number} pieces; {evidence}.",
        number,
    )
    if others:
        told = ngettext(
            "{order}, {day}: {number} piece, shared with {others}; {evidence}.",
            "{order}, {day}: {number} pieces, shared with {others}; {evidence}.",
            number,
        )
    return told.format(
        order=order.name,
        day=day_in_full(order.date),
        number=number,
        others=and_list(others),
        evidence=evidence_words(evidence, stem),
    )


def _times(studio: Studio, correction: Correction) -> str:
    return number(round(float(correction.ratio), 2), studio.house)

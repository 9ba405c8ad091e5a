"""What is missing from an order, what would mend it, and what do its pieces from the mix get?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from decimal import Decimal

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.trade.cut import Cut, Filled
from corymb.trade.cut.gaps import Gap, ShortStandIn, gaps
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.from_mix import Mixed
from corymb.trade.orders.needs import Key
from corymb.trade.season.weeks import week_on
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.lines import line_words
from corymb.views.compose.wording import money, spans_of
from corymb.views.cut import GapView, MixView


def gap_views(catalogue: Catalogue, day: CutDay, due: Due) -> tuple[GapView, ...]:
    """What its pieces lack, and what would mend it; nothing for those from the mix."""
    by_stem = {gap.stem: gap for gap in gaps(day.problem, day.plan)}
    return tuple(
        GapView(_short(catalogue, due, each), mends_of(catalogue, by_stem[each.stem], day.day))
        for each in day.of(due)
        if each.short
    )


def mix_views(catalogue: Catalogue, day: CutDay, due: Due) -> tuple[MixView, ...]:
    """What each line from the mix gets of what is left over and of spare, and what it lacks."""
    lines = {line.number: line for line in due.lines}
    return tuple(
        _mix(catalogue, day, due, lines[each.line], each)
        for each in day.mixed
        if each.order == due.id
    )


def _short(catalogue: Catalogue, due: Due, each: Filled) -> str:
    number = Key.of(each.key).line
    line = next(line for line in due.lines if line.number == number)
    return _("{number} {stem}, for {pieces}").format(
        number=each.short,
        stem=catalogue.stem(each.stem).name,
        pieces=line_words(catalogue, line),
    )


def mends_of(catalogue: Catalogue, gap: Gap, on: date | None = None) -> tuple[str, ...]:
    """What would help with all of a stem that is short that day, the least trouble first."""
    ways = (
        *_still_there(gap),
        _buy_in(catalogue, gap.missing, gap.cost) if not gap.bought else "",
        *(_would_do(catalogue, each) for each in gap.stand_ins),
        _more_standing(catalogue, gap, on),
    )
    return tuple(filter(None, ways))


def _still_there(gap: Gap) -> Iterator[str]:
    """What stands and the plan leaves, by the studio's own rules."""
    if more := gap.by_breaking_step:
        told = ngettext(
            "{number} may be cut if the step is broken.",
            "{number} may be cut if the step is broken.",
            more,
        )
        yield told.format(number=more)
    if more := gap.by_leaving_less:
        told = ngettext(
            "{number} more stand, left for seed and bees.",
            "{number} more stand, left for seed and bees.",
            more,
        )
        yield told.format(number=more)


def _more_standing(catalogue: Catalogue, gap: Gap, on: date | None) -> str:
    """Counting again helps nothing where the stem is out of season."""
    if not gap.more_standing:
        return ""
    weeks = catalogue.beds.weeks(gap.stem)
    if on and week_on(on) not in weeks:
        return _("It is out of season: it stands {weeks}.").format(weeks=spans_of(weeks))
    told = ngettext(
        "The walk would have to count {number} more.",
        "The walk would have to count {number} more.",
        gap.more_standing,
    )
    return told.format(number=gap.more_standing)


def _would_do(catalogue: Catalogue, each: ShortStandIn) -> str:
    told = _("{number} more {stem} would do ({why}).")
    if not each.why:
        told = _("{number} more {stem} would do.")
    stem = catalogue.stem(each.stem).name
    return told.format(number=each.count, stem=stem, why="; ".join(each.why))


def _mix(catalogue: Catalogue, day: CutDay, due: Due, line: DueLine, mix: Mixed) -> MixView:
    gaps = [
        GapView(
            _("{number} {stem} short").format(number=count, stem=catalogue.stem(stem).name),
            _mends(catalogue, day, due, stem, count),
        )
        for stem, count in mix.missing.items()
    ]
    return MixView(
        piece=line_words(catalogue, line),
        gets=" ".join([_gets(mix), *_instead(catalogue, line, mix)]),
        gaps=tuple(gaps),
    )


def _gets(mix: Mixed) -> str:
    """`Gets 14 of its 16 stems: 10 left over of the cut; 4 of the spare.`"""
    wanted, over, spare = (
        sum(counts.values()) for counts in (mix.wanted, mix.left_over, mix.spare)
    )
    sources = [
        _("{number} left over of the cut").format(number=over) if over else "",
        _("{number} of the spare").format(number=spare) if spare else "",
    ]
    of = "; ".join(filter(None, sources))
    told = ngettext("Gets {got} of its {wanted} stem.", "Gets {got} of its {wanted} stems.", wanted)
    if of:
        told = ngettext(
            "Gets {got} of its {wanted} stem: {sources}.",
            "Gets {got} of its {wanted} stems: {sources}.",
            wanted,
        )
    return told.format(got=wanted - sum(mix.missing.values()), wanted=wanted, sources=of)


def _instead(catalogue: Catalogue, line: DueLine, mix: Mixed) -> Iterator[str]:
    for look_line, fills in zip(line.piece.look.lines, mix.fills, strict=True):
        for fill in fills:
            if fill.stem != look_line.stem:
                told = _("{number} {stem} go in for {of} {other}, as that day.")
                yield told.format(
                    number=fill.count,
                    stem=catalogue.stem(fill.stem).name,
                    of=fill.of,
                    other=catalogue.stem(look_line.stem).name,
                )


def _mends(catalogue: Catalogue, day: CutDay, due: Due, stem: str, count: int) -> tuple[str, ...]:
    """Cut them too, if so many stand; let other pieces be a stem lighter; or buy in."""
    price = catalogue.stem(stem).bought
    ways = [
        _cut_too(day, stem, count),
        _lighter(catalogue, due, stem, count),
        _buy_in(catalogue, count, price * count if price else None),
    ]
    return tuple(filter(None, ways))


def _cut_too(day: CutDay, stem: str, count: int) -> str:
    standing = {each.stem: each for each in day.problem.standing}.get(stem)
    cuts: Mapping[str, Cut] = {each.stem: each for each in day.plan.cuts}
    if standing is None:
        return ""
    cut = cuts[stem].cut if stem in cuts else 0
    more = -(-count // standing.by) * standing.by
    if cut + more > standing.most_steps * standing.by:
        return ""
    if more == count:
        return _("Cut them too.")
    told = _("Cut {number} more: they are cut by {step}.")
    return told.format(number=more, step=standing.by)


def _buy_in(catalogue: Catalogue, count: int, cost: Decimal | None) -> str:
    if cost is None:
        return ""
    told = _("Buy {number} in, {cost}.")
    return told.format(number=count, cost=money(cost, catalogue.studio.house))


def _lighter(catalogue: Catalogue, due: Due, stem: str, count: int) -> str:
    """The other line that has the most pieces with that stem."""
    lines = [line for line in due.lines if line.wanted.get(stem)]
    most = max(lines, key=lambda line: line.quantity, default=None)
    if most is None or most.quantity < count:
        return ""
    name = catalogue.studio.recipes[most.piece.look.recipe].name
    if most.quantity == 1:
        return _("Make the {name} a stem lighter.").format(name=name)
    told = ngettext(
        "Make {number} of the {all} {name} a stem lighter.",
        "Make {number} of the {all} {name} a stem lighter.",
        count,
    )
    return told.format(number=count, all=most.quantity, name=name)

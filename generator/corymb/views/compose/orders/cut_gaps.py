"""What is missing from an order, what would mend it, and what do its pieces from the mix get?"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date

from corymb.studio.saying import counted
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
    return f"{each.short} {catalogue.stem(each.stem).name}, for {line_words(catalogue, line)}"


def mends_of(catalogue: Catalogue, gap: Gap, on: date | None = None) -> tuple[str, ...]:
    """What would help with all of a stem that is short that day, the least trouble first."""
    house = catalogue.studio.house
    cost = money(gap.cost, house) if gap.cost is not None else ""
    ways = (
        f"{gap.by_breaking_step} may be cut if the step is broken." if gap.by_breaking_step else "",
        f"{gap.by_leaving_less} more stand, left for seed and bees." if gap.by_leaving_less else "",
        f"Buy {gap.missing} in, {cost}." if cost and not gap.bought else "",
        *(_would_do(catalogue, each) for each in gap.stand_ins),
        _more_standing(catalogue, gap, on),
    )
    return tuple(filter(None, ways))


def _more_standing(catalogue: Catalogue, gap: Gap, on: date | None) -> str:
    """Counting again helps nothing where the stem is out of season."""
    if not gap.more_standing:
        return ""
    weeks = catalogue.beds.weeks(gap.stem)
    if on and week_on(on) not in weeks:
        return f"It is out of season: it stands {spans_of(weeks)}."
    return f"The walk would have to count {gap.more_standing} more."


def _would_do(catalogue: Catalogue, each: ShortStandIn) -> str:
    why = f" ({'; '.join(each.why)})" if each.why else ""
    return f"{each.count} more {catalogue.stem(each.stem).name} would do{why}."


def _mix(catalogue: Catalogue, day: CutDay, due: Due, line: DueLine, mix: Mixed) -> MixView:
    wanted, got = sum(mix.wanted.values()), sum(mix.wanted.values()) - sum(mix.missing.values())
    over, spare = sum(mix.left_over.values()), sum(mix.spare.values())
    sources = [
        f"{over} left over of the cut" if over else "",
        f"{spare} of the spare" if spare else "",
    ]
    of = "; ".join(filter(None, sources))
    gaps = [
        GapView(
            f"{count} {catalogue.stem(stem).name} short",
            _mends(catalogue, day, due, stem, count),
        )
        for stem, count in mix.missing.items()
    ]
    instead = "".join(
        f" {fill.count} {catalogue.stem(fill.stem).name} go in for {fill.of} "
        f"{catalogue.stem(look_line.stem).name}, as that day."
        for look_line, fills in zip(line.piece.look.lines, mix.fills, strict=True)
        for fill in fills
        if fill.stem != look_line.stem
    )
    gets = f"Gets {got} of its {counted(wanted, 'stem', 'stems')}{f': {of}' if of else ''}."
    return MixView(
        piece=line_words(catalogue, line),
        gets=f"{gets}{instead}",
        gaps=tuple(gaps),
    )


def _mends(catalogue: Catalogue, day: CutDay, due: Due, stem: str, count: int) -> tuple[str, ...]:
    """Cut them too, if so many stand; let other pieces be a stem lighter; or buy in."""
    ways = [
        _cut_too(day, stem, count),
        _lighter(catalogue, due, stem, count),
        _buy(catalogue, stem, count),
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
    return "Cut them too." if more == count else f"Cut {more} more: they are cut by {standing.by}."


def _buy(catalogue: Catalogue, stem: str, count: int) -> str:
    price = catalogue.stem(stem).bought
    return f"Buy {count} in, {money(count * price, catalogue.studio.house)}." if price else ""


def _lighter(catalogue: Catalogue, due: Due, stem: str, count: int) -> str:
    """The other line that has the most pieces with that stem."""
    lines = [line for line in due.lines if line.wanted.get(stem)]
    most = max(lines, key=lambda line: line.quantity, default=None)
    if most is None or most.quantity < count:
        return ""
    name = catalogue.studio.recipes[most.piece.look.recipe].name
    if most.quantity == 1:
        return f"Make the {name} a stem lighter."
    return f"Make {count} of the {most.quantity} {name} a stem lighter."

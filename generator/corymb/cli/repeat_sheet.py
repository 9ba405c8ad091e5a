"""What must a studio know of an order on its new day? The lines that `corymb repeat` tells."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from corymb.cli.days import long_day
from corymb.cli.wrapping import wrapped
from corymb.studio.models import Order
from corymb.studio.saying import and_list, counted
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.studio.words import WEEKDAYS
from corymb.trade.looks import look_by_id
from corymb.trade.orders.again import LineAgain
from corymb.trade.orders.pieces import words_of
from corymb.trade.orders.repeated import Repeated
from corymb.trade.orders.repriced import Sums
from corymb.views.compose.answers import look_name, not_then, year_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.swaps import swap_view, swap_words
from corymb.views.compose.wording import money, price_guide


def repeat_sheet(studio: Studio, told: Repeated) -> Iterator[str]:
    """The lines to print."""
    catalogue = Catalogue(studio, "staff", told.day)
    yield f"{told.old.name}: {long_day(told.day)}, week {told.week.week}"
    yield from _beside(told)
    yield from ("", "What can be made then")
    for line in told.lines:
        yield from _line(catalogue, told.week, line)
    yield from _money(catalogue, told)
    yield from _sent(catalogue, told)
    yield from _lasting(catalogue, told)
    if told.old.learnt:
        yield from ("", "Learnt last time" if isinstance(told.old, Order) else "Learnt so far")
        yield from wrapped(told.old.learnt, "  ", "  ")
    yield from _took(told)


def _took(told: Repeated) -> Iterator[str]:
    """How long the making really took, where the old order says so."""
    before = told.money.before
    if isinstance(told.old, Order) and told.old.minutes and before:
        yield ""
        yield from wrapped(
            f"Making it took {told.old.minutes} min; the recipes reckon {before.minutes} for what "
            f"it was, and {told.money.now.minutes} for what it would be."
        )


def _beside(told: Repeated) -> Iterator[str]:
    """What differs about the day itself, and what else is due on it."""
    if isinstance(told.old, Order) and told.old.date.weekday() != told.day.weekday():
        yield f"The old one was on a {WEEKDAYS[told.old.date.weekday()]}."
    others = [due.name for due in told.others]
    if others:
        yield from wrapped(f"Due that day as well: {'; '.join(others)}.")


def _line(catalogue: Catalogue, week: IsoWeek, line: LineAgain) -> Iterator[str]:
    name = f"{line.quantity:>4} {words_of(line.piece)}"
    if line.taken:
        old = catalogue.studio.recipes[line.old.look.recipe].variants.get(line.old.look.variant)
        name = f"{name}, in place of {old.name if old else 'the recipe itself'}"
    if not line.can:
        why = not_then(catalogue, year_of(catalogue, line.piece.look), week)
        yield from wrapped(f"{name}. {why}", "", " " * 5)
        if line.instead:
            names = "; ".join(look_name(catalogue, look) for look in line.instead)
            yield from wrapped(f"Of its style stands then: {names}.", " " * 5, " " * 5)
        return
    how = "with swaps" if line.best.answer.swaps else "as pictured"
    yield from wrapped(f"{name}: {how}, {line.best.sure}.", "", " " * 5)
    for swap in line.best.answer.swaps:
        yield from wrapped(swap_words(swap_view(catalogue, swap)), " " * 5)
    if line.best.answer.swaps:
        yield "     The swaps are offered, for one regular piece: the walk decides."


def _money(catalogue: Catalogue, told: Repeated) -> Iterator[str]:
    before, now = told.money.before, told.money.now
    yield from ("", "Money, at today's costs: stems with their waste, and what is asked")
    for place, line in enumerate(told.lines):
        stems = _change(catalogue, before, now, "stems", place)
        asked = _change(catalogue, before, now, "asked", place)
        told_line = f"{line.quantity:>4} {words_of(line.piece)}: {stems}; {asked}"
        yield from wrapped(f"{told_line}{_guide(catalogue, line)}", "", " " * 5)
    cost = _two(catalogue, before.cost if before else None, now.cost)
    quote = _two(catalogue, before.quote if before else None, now.quote)
    yield f"     All of it: costs {cost}; quote {quote}"


def _guide(catalogue: Catalogue, line: LineAgain) -> str:
    """The guide price that clients read, where another variant has another."""
    house = catalogue.studio.house
    old, new = (price_guide(piece.guide, house) for piece in (line.old, line.piece))
    return f"; guide price {old or 'none'} → {new or 'none'}" if old != new else ""


def _change(catalogue: Catalogue, before: Sums | None, now: Sums, what: str, place: int) -> str:
    """One line's sum, beside what it was where the order had as many lines."""
    alike = before is not None and len(before.stems) == len(now.stems)
    old = getattr(before, what)[place] if alike else None
    return _two(catalogue, old, getattr(now, what)[place])


def _two(catalogue: Catalogue, before: Decimal | None, now: Decimal) -> str:
    """`€45.35 → €50.91`, or one sum where nothing changes."""
    said = money(now, catalogue.studio.house)
    if before is None or before == now:
        return said
    return f"{money(before, catalogue.studio.house)} → {said}"


def _sent(catalogue: Catalogue, told: Repeated) -> Iterator[str]:
    yield ""
    if not told.sent:
        yield "Sent before: nothing that the studio's files know of."
        return
    yield "Sent before"
    for sent in told.sent:
        names = "; ".join(_named(catalogue, look) for look in sent.looks)
        yield from wrapped(f"{long_day(sent.day)}: {names}", "  ", "    ")
    if told.running:
        names = and_list(_named(catalogue, look) for look in told.running)
        yield from wrapped(_running(catalogue, told, names), "  ", "  ")


def _running(catalogue: Catalogue, told: Repeated, names: str) -> str:
    if not told.standing:
        return f"As last time: {names}. Ask whether they want the same again."
    if told.laid is None:
        return f"Twice running: {names}."
    if told.laid.id in told.running:
        return f"Twice running: {names}. Nothing else of the rotation can be made that week."
    other = look_name(catalogue, told.laid)
    return f"Twice running: {names}. The rotation would send {other}."


def _named(catalogue: Catalogue, look: str) -> str:
    return look_name(catalogue, look_by_id(look, catalogue.studio.recipes))


def _lasting(catalogue: Catalogue, told: Repeated) -> Iterator[str]:
    lasting = told.lasting
    if lasting.cut is None:
        return
    days = counted(lasting.days, "day", "days")
    until = (
        f"the next visit, {long_day(lasting.next_visit)}"
        if lasting.next_visit
        else f"the end, {lasting.until:%H:%M} on {long_day(lasting.until.date())}"
    )
    yield ""
    yield from wrapped(
        f"From a cut on {long_day(lasting.cut.date())} to {until}: {days}. "
        f"{_short(catalogue, lasting.short)}"
    )


def _short(catalogue: Catalogue, short: Sequence[tuple[str, int]]) -> str:
    if not short:
        return "All stems keep so long."
    names = "; ".join(
        f"{catalogue.stem(stem).name}, {counted(days, 'day', 'days')}" for stem, days in short
    )
    return (
        f"Not sure to keep so long: {names}. Cut these later, change them in between, or take "
        "what keeps longer."
    )

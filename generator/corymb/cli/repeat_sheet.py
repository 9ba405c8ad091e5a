"""What must a studio know of an order on its new day? The lines that `corymb repeat` tells."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from corymb.cli.wrapping import wrapped
from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list, clock_words, weekday_name
from corymb.studio.models import Order
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.studio.values.time import DayRange
from corymb.trade.looks import look_by_id
from corymb.trade.orders.again import LineAgain
from corymb.trade.orders.pieces import words_of
from corymb.trade.orders.repeated import Repeated
from corymb.trade.orders.repriced import Sums
from corymb.views.compose.answers import look_name, not_then, year_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import days_words
from corymb.views.compose.orders.when import day_in_full
from corymb.views.compose.states import words_of_states
from corymb.views.compose.swaps import swap_view, swap_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import money, price_guide


def repeat_sheet(studio: Studio, told: Repeated) -> Iterator[str]:
    """The lines to print."""
    catalogue = Catalogue(studio, "staff", told.day)
    head = _("{order}: {day}, week {week}")
    yield head.format(order=told.old.name, day=day_in_full(told.day), week=told.week.week)
    yield from _beside(told)
    yield from ("", _("What can be made then"))
    if told.cut_week != told.week:
        cut = _("As of the cut: {day}, week {week}.")
        yield cut.format(day=day_in_full(told.cut), week=told.cut_week.week)
    for line in told.lines:
        yield from _line(catalogue, told.cut_week, line)
    yield from _money(catalogue, told)
    yield from _sent(catalogue, told)
    yield from _lasting(catalogue, told)
    if told.old.learnt:
        once = isinstance(told.old, Order)
        yield from ("", _("Learnt last time") if once else _("Learnt so far"))
        yield from wrapped(told.old.learnt, "  ", "  ")
    yield from _took(told)


def _took(told: Repeated) -> Iterator[str]:
    """How long the making really took, where the old order says so."""
    before = told.money.before
    if isinstance(told.old, Order) and told.old.minutes and before:
        yield ""
        took = _("Making it took {took} min; the recipes reckon {before} for what it was.")
        if told.able == told.lines:
            took = _(
                "Making it took {took} min; the recipes reckon {before} for what it was, and {now} "
                "for what it would be."
            )
        yield from wrapped(
            took.format(took=told.old.minutes, before=before.minutes, now=told.money.now.minutes)
        )


def _beside(told: Repeated) -> Iterator[str]:
    """What differs about the day itself, and what else is due on it."""
    if isinstance(told.old, Order) and told.old.date.weekday() != told.day.weekday():
        weekday = weekday_name(told.old.date.weekday())
        yield _("The old one was on a {weekday}.").format(weekday=weekday)
    others = "; ".join(due.name for due in told.others)
    if others:
        yield from wrapped(_("Due that day as well: {orders}.").format(orders=others))


def _line(catalogue: Catalogue, week: IsoWeek, line: LineAgain) -> Iterator[str]:
    name = f"{line.quantity:>4} {words_of(line.piece)}"
    if line.taken:
        old = catalogue.studio.recipes[line.old.look.recipe].variants.get(line.old.look.variant)
        instead = (
            _("{name}, in place of {other}") if old else _("{name}, in place of the recipe itself")
        )
        name = instead.format(name=name, other=old.name if old else "")
    if not line.can:
        why = not_then(catalogue, year_of(catalogue, line.piece.look), week)
        yield from wrapped(f"{name}. {why}", "", " " * 5)
        if line.instead:
            names = "; ".join(look_name(catalogue, look) for look in line.instead)
            told = _("Of its style stands then: {looks}.").format(looks=names)
            yield from wrapped(told, " " * 5, " " * 5)
        if line.put:
            put = _("In the new file put ‘{look}’ in its place.").format(look=line.put.in_a_line)
            yield from wrapped(put, " " * 5, " " * 5)
        return
    how = words_of_states()["swaps" if line.best.answer.swaps else "pictured"]
    sure = trade_word("sureness", line.best.sure)
    yield from wrapped(f"{name}: {how}, {sure}.", "", " " * 5)
    for swap in line.best.answer.swaps:
        yield from wrapped(swap_words(swap_view(catalogue, swap)), " " * 5)
    if line.best.answer.swaps:
        yield " " * 5 + _("The swaps are offered, for one regular piece: the walk decides.")


def _money(catalogue: Catalogue, told: Repeated) -> Iterator[str]:
    before, now = told.money.before, told.money.now
    if not told.able:
        yield from ("", _("Nothing is quoted: none of it can be made then."))
        return
    yield from ("", _("Money, at today's costs: stems with their waste, and what is asked"))
    for place, line in enumerate(told.able):
        stems = _change(catalogue, before, now, "stems", place)
        asked = _change(catalogue, before, now, "asked", place)
        told_line = f"{line.quantity:>4} {words_of(line.piece)}: {stems}; {asked}"
        yield from wrapped(f"{told_line}{_guide(catalogue, line)}", "", " " * 5)
    if told.able != told.lines:
        yield from wrapped(_without(catalogue, told), " " * 5, " " * 5)
        return
    cost = _two(catalogue, before.cost if before else None, now.cost)
    quote = _two(catalogue, before.quote if before else None, now.quote)
    yield " " * 5 + _("All of it: costs {cost}; quote {quote}").format(cost=cost, quote=quote)


def _without(catalogue: Catalogue, told: Repeated) -> str:
    """The sums of what can be made, where something can't."""
    house, now = catalogue.studio.house, told.money.now
    out = and_list(words_of(line.piece) for line in told.lines if not line.can)
    words = _("Without what can't be made, {pieces}: costs {cost}; quote {quote}")
    return words.format(pieces=out, cost=money(now.cost, house), quote=money(now.quote, house))


def _guide(catalogue: Catalogue, line: LineAgain) -> str:
    """The guide price that clients read, where another variant has another."""
    house = catalogue.studio.house
    old, new = (price_guide(piece.guide, house) for piece in (line.old, line.piece))
    if old == new:
        return ""
    told = _("guide price {old} → {new}").format(old=old or _("none"), new=new or _("none"))
    return f"; {told}"


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
        yield _("Sent before: nothing that the studio's files know of.")
        return
    yield _("Sent before")
    for sent in told.sent:
        names = "; ".join(_named(catalogue, look) for look in sent.looks)
        yield from wrapped(f"{day_in_full(sent.day)}: {names}", "  ", "    ")
    if told.running:
        names = and_list(_named(catalogue, look) for look in told.running)
        yield from wrapped(_running(catalogue, told, names), "  ", "  ")


def _running(catalogue: Catalogue, told: Repeated, names: str) -> str:
    if not told.standing:
        again = _("As last time: {looks}. Ask whether they want the same again.")
        return again.format(looks=names)
    if told.laid is None:
        return _("Twice running: {looks}.").format(looks=names)
    if told.laid.id in told.running:
        never = _("Twice running: {looks}. Nothing else of the rotation can be made that week.")
        return never.format(looks=names)
    better = _("Twice running: {looks}. The rotation would send {other}.")
    return better.format(looks=names, other=look_name(catalogue, told.laid))


def _named(catalogue: Catalogue, look: str) -> str:
    return look_name(catalogue, look_by_id(look, catalogue.studio.recipes))


def _lasting(catalogue: Catalogue, told: Repeated) -> Iterator[str]:
    lasting = told.lasting
    if lasting.cut is None:
        return
    words = ngettext(
        "From a cut on {cut} to the end, {hour} on {until}: {number} day.",
        "From a cut on {cut} to the end, {hour} on {until}: {number} days.",
        lasting.days,
    )
    if lasting.next_visit:
        words = ngettext(
            "From a cut on {cut} to the next visit, {until}: {number} day.",
            "From a cut on {cut} to the next visit, {until}: {number} days.",
            lasting.days,
        )
    span = words.format(
        cut=day_in_full(lasting.cut.date()),
        until=day_in_full(lasting.next_visit or lasting.until.date()),
        hour=clock_words(lasting.until),
        number=lasting.days,
    )
    yield ""
    yield from wrapped(f"{span} {_short(catalogue, lasting.short)}")


def _short(catalogue: Catalogue, short: Sequence[tuple[str, int]]) -> str:
    if not short:
        return _("All stems keep so long.")
    names = "; ".join(
        f"{catalogue.stem(stem).name}, {days_words(DayRange(days, days))}" for stem, days in short
    )
    told = _(
        "Not sure to keep so long: {stems}. Cut these later, change them in between, or take what "
        "keeps longer."
    )
    return told.format(stems=names)

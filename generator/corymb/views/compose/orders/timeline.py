"""How is an order's work drawn and told, step by step, and who makes what?"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from corymb.language import gettext as _
from corymb.language import ngettext, noted, pgettext
from corymb.language.locales import clock_words, weekday_and_number
from corymb.trade.hours.people import Share
from corymb.trade.hours.timeline import Name, Step
from corymb.trade.orders.due import Due
from corymb.trade.orders.timed import Timed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import days_words, time_words
from corymb.views.compose.orders.lines import number_of, piece_words
from corymb.views.compose.orders.when import weekday_and_day, work_span
from corymb.views.orders import StepView, TimelineView, WorkerView, WorkView

STEPS = {
    "cut": noted("Cut"),
    "condition": noted("Condition"),
    "make": noted("Make"),
    "hand over": noted("Hand over"),
    "use": noted("In use"),
}

WIDE = 1000
"""The drawing's width in its own units."""

SHORTEST = 6
"""A quarter of an hour has to be seen, too."""


def timeline_view(catalogue: Catalogue, due: Due, of_due: Timed) -> TimelineView:
    """The steps, each a bar of a drawing that runs from midnight to midnight."""
    steps = of_due.timeline.steps
    days = _days(steps[0].start.date(), steps[-1].end.date())
    return TimelineView(
        days=tuple(weekday_and_number(day) for day in days),
        steps=tuple(_step(step, days) for step in steps),
        flags=tuple(flags_of(catalogue, of_due)),
        note=_note(due, of_due),
    )


def flags_of(catalogue: Catalogue, of_due: Timed) -> Iterator[str]:
    """What won't do: too late, too much, and the stems that don't surely keep, told together."""
    flags = of_due.timeline.flags
    yield from (flag.words for flag in flags if flag.kind == "too late")
    if of_due.too_much:
        yield _(
            "This is more than a fortnight's work for the people you have: nothing keeps so long."
        )
    short = [catalogue.stem(flag.stem) for flag in flags if flag.kind == "vase life"]
    if short:
        short.sort(key=lambda stem: (stem.vase_life.fewest, stem.name))
        keep = "; ".join(f"{stem.name}, {days_words(stem.vase_life)}" for stem in short)
        change = ngettext(
            "Change it in between, or take what keeps longer.",
            "Change them in between, or take what keeps longer.",
            len(short),
        )
        yield f"{_wanted(of_due, keep)} {change}"


def work_view(catalogue: Catalogue, due: Due, of_due: Timed) -> WorkView:
    """How long making takes, for one and for the studio's people, and what each makes."""
    names = {f"{line.number}": piece_words(catalogue, line) for line in due.lines}
    return WorkView(
        words=tuple(_work_words(catalogue, of_due)),
        people=tuple(_worker(share, names) for share in of_due.shares if share.pieces),
    )


def _days(first: date, last: date) -> list[date]:
    return [first + timedelta(days=n) for n in range((last - first).days + 1)]


def _step(step: Step, days: list[date]) -> StepView:
    start, end = _place(step.start, days), _place(step.end, days)
    return StepView(
        name=step_name(step.name),
        day=weekday_and_day(step.start.date()),
        hours=work_span(step.start, step.end),
        note=step.note,
        start=min(start, WIDE - SHORTEST),
        length=max(end - start, SHORTEST),
    )


def step_name(name: Name) -> str:
    """What a step is called at the head of its line."""
    return _(STEPS[name])


def _place(at: datetime, days: list[date]) -> int:
    """Where a moment lies by the clock, so that every day is drawn as long as another."""
    of_day = (at.hour + at.minute / 60) / 24
    return round(WIDE * ((at.date() - days[0]).days + of_day) / len(days))


def _note(due: Due, of_due: Timed) -> str:
    notes = []
    if not due.order.hours:
        told = _("The order gives no hours; these are reckoned back from {hour}.")
        notes.append(told.format(hour=clock_words(of_due.hours.start)))
    if due.next_visit:
        told = _("It has to keep until the next visit, on {day}.")
        notes.append(told.format(day=weekday_and_day(due.next_visit)))
    return " ".join(notes)


def _wanted(of_due: Timed, keep: str) -> str:
    """How long flowers have to keep, from the first cut, and which may not."""
    until = of_due.keeps_until
    told = ngettext(
        "Wanted for {number} day, to {day} at {hour}, and may not keep so long: {stems}.",
        "Wanted for {number} days, to {day} at {hour}, and may not keep so long: {stems}.",
        of_due.days,
    )
    return told.format(
        number=of_due.days,
        day=weekday_and_day(until.date()),
        hour=clock_words(until),
        stems=keep,
    )


def _work_words(catalogue: Catalogue, of_due: Timed) -> Iterator[str]:
    people = catalogue.studio.house.work.people
    if of_due.stems:
        told = ngettext(
            "{number} stem to cut, spare among them: {time} for one person.",
            "{number} stems to cut, spare among them: {time} for one person.",
            of_due.stems,
        )
        yield told.format(number=of_due.stems, time=time_words(of_due.cut_minutes))
    if not of_due.minutes:
        return
    told = _("Making: {alone} for one practised hand, {helper} for a helper.")
    yield told.format(alone=time_words(of_due.minutes), helper=time_words(of_due.helper_minutes))
    yield _people_words(of_due.people)
    if sum(bool(share.pieces) for share in of_due.shares) > 1:
        longest = max(share.minutes for share in of_due.shares)
        told = ngettext(
            "The {number} of you are done after {time} at the bench.",
            "The {number} of you are done after {time} at the bench.",
            people,
        )
        yield told.format(number=people, time=time_words(longest))


def _people_words(people: int | None) -> str:
    if people is None:
        return _("No number of people is done with it in one day: spread it over several.")
    if people == 1:
        return _("To be done in a day, one person is enough.")
    told = ngettext(
        "To be done in a day, {number} person is enough.",
        "To be done in a day, {number} people are enough.",
        people,
    )
    return told.format(number=people)


def _worker(share: Share, names: dict[str, str]) -> WorkerView:
    makes = tuple(number_of(count, names[job]) for job, count in share.pieces)
    who = pgettext("hand", "Helper")
    if share.hand.name == "experienced":
        who = pgettext("hand", "Practised hand")
    return WorkerView(who, makes, time_words(share.minutes))

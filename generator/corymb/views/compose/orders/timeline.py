"""How is an order's work drawn and told, step by step, and who makes what?"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from corymb.studio.saying import counted
from corymb.trade.hours.people import Share
from corymb.trade.hours.timeline import Step
from corymb.trade.orders.due import Due
from corymb.trade.orders.timed import Timed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.lines import line_words
from corymb.views.compose.orders.when import long_time, short_day, weekday_and_day, work_span
from corymb.views.orders import StepView, TimelineView, WorkerView, WorkView

STEPS = {
    "cut": "Cut",
    "condition": "Condition",
    "make": "Make",
    "hand over": "Hand over",
    "use": "In use",
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
        days=tuple(short_day(day) for day in days),
        steps=tuple(_step(step, days) for step in steps),
        flags=tuple(flags_of(catalogue, of_due)),
        note=_note(due, of_due),
    )


def flags_of(catalogue: Catalogue, of_due: Timed) -> Iterator[str]:
    """What won't do: too late, too much, and the stems that don't surely keep, told together."""
    flags = of_due.timeline.flags
    yield from (flag.words for flag in flags if flag.kind == "too late")
    if of_due.too_much:
        yield "This is more than a fortnight's work for the people you have: nothing keeps so long."
    short = [catalogue.stem(flag.stem) for flag in flags if flag.kind == "vase life"]
    if short:
        short.sort(key=lambda stem: (stem.vase_life.fewest, stem.name))
        keep = "; ".join(f"{stem.name}, {stem.vase_life}" for stem in short)
        yield (
            f"Wanted for {_wanted(of_due)}, and may not keep so long: {keep}. "
            f"Change {'them' if len(short) > 1 else 'it'} in between, or take what keeps longer."
        )


def work_view(catalogue: Catalogue, due: Due, of_due: Timed) -> WorkView:
    """How long making takes, for one and for the studio's people, and what each makes."""
    names = {f"{line.number}": line_words(catalogue, line) for line in due.lines}
    return WorkView(
        words=tuple(_work_words(catalogue, of_due)),
        people=tuple(_worker(share, names) for share in of_due.shares if share.pieces),
    )


def _days(first: date, last: date) -> list[date]:
    return [first + timedelta(days=n) for n in range((last - first).days + 1)]


def _step(step: Step, days: list[date]) -> StepView:
    start, end = _place(step.start, days), _place(step.end, days)
    return StepView(
        name=STEPS[step.name],
        day=weekday_and_day(step.start.date()),
        hours=work_span(step.start, step.end),
        note=step.note,
        start=min(start, WIDE - SHORTEST),
        length=max(end - start, SHORTEST),
    )


def _place(at: datetime, days: list[date]) -> int:
    """Where a moment lies by the clock, so that every day is drawn as long as another."""
    of_day = (at.hour + at.minute / 60) / 24
    return round(WIDE * ((at.date() - days[0]).days + of_day) / len(days))


def _note(due: Due, of_due: Timed) -> str:
    told = "" if due.order.hours else "The order gives no hours; these are reckoned back from "
    note = f"{told}{of_due.hours.start:%H:%M}." if told else ""
    visit = due.next_visit
    until = f"It has to keep until the next visit, on {weekday_and_day(visit)}." if visit else ""
    return " ".join(filter(None, [note, until]))


def _wanted(of_due: Timed) -> str:
    """How long flowers have to keep, from the first cut: `10 days, to 22 September`."""
    until = of_due.keeps_until
    days = counted(of_due.days, "day", "days")
    return f"{days}, to {weekday_and_day(until.date())} at {until:%H:%M}"


def _work_words(catalogue: Catalogue, of_due: Timed) -> Iterator[str]:
    people = catalogue.studio.house.work.people
    if of_due.stems:
        yield (
            f"{counted(of_due.stems, 'stem', 'stems')} to cut, spare among them: "
            f"{long_time(of_due.cut_minutes)} for one person."
        )
    if not of_due.minutes:
        return
    alone, helper = long_time(of_due.minutes), long_time(of_due.helper_minutes)
    yield f"Making: {alone} for one practised hand, {helper} for a helper."
    if of_due.people is None:
        yield "No number of people is done with it in one day: spread it over several."
    else:
        needed = "one person is" if of_due.people == 1 else f"{of_due.people} people are"
        yield f"To be done in a day, {needed} enough."
    if sum(bool(share.pieces) for share in of_due.shares) > 1:
        longest = max(share.minutes for share in of_due.shares)
        yield f"The {people} of you are done after {long_time(longest)} at the bench."


def _worker(share: Share, names: dict[str, str]) -> WorkerView:
    makes = tuple(_share_words(names[job], count) for job, count in share.pieces)
    who = "Practised hand" if share.hand.name == "experienced" else "Helper"
    return WorkerView(who, makes, long_time(share.minutes))


def _share_words(words: str, count: int) -> str:
    """A line's words with the number of pieces that one person makes of it."""
    return f"{count} {words.partition(' ')[2]}"

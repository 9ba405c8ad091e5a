"""How is it told what a cut goes by, and how sure its plan is?"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from corymb.studio.saying import and_list, counted
from corymb.studio.values.dates import IsoWeek
from corymb.trade.cut import Cut, CutPlan
from corymb.trade.orders.cut_days import CutDay
from corymb.views.compose.orders.when import weekday_and_day
from corymb.views.compose.week_words import week_words

UNCOUNTED = (
    "Nothing is counted for this day, so the list says only what is wanted: a stem in season is "
    "taken to stand in any number."
)
PROVEN = (
    "No other plan leaves less missing, or costs less in stems bought, colour and waste: "
    "that is proven."
)
GLOVES = {
    "burns in sun": "its sap burns in sunlight",
    "irritant sap": "irritant sap",
    "heart poison": "poison to the heart",
    "irritant hairs": "irritant hairs",
    "skin allergy": "skin allergy",
    "thorns": "thorns",
}
OTHERS = {
    "eye irritant": "keep its sap from your eyes",
    "irritant dust": "don't breathe its dust",
    "poisonous if eaten": "poisonous: wash hands",
}
"""A few words for whoever cuts; the whole sentences stand below the list. Common practice, no
source."""


def walk_words(day: CutDay) -> str:
    """The walk it goes by, and how old that is on the day."""
    week = day.week
    if week is None:
        return UNCOUNTED
    weeks = (IsoWeek.of(day.day).monday() - week.monday()).days // 7
    age = "counted the same week" if not weeks else f"{counted(weeks, 'week', 'weeks')} old"
    less = ", less what is cut before this day" if _was_cut_before(day) else ""
    look = " Look at the beds again before you go by it." if weeks else ""
    return f"By the walk of {week_words(week)}, {age}{less}.{look}"


def mornings_of(days: Sequence[date]) -> str:
    """`Friday 12 June`, `… and Saturday 13 June`, or from the first to the last of more."""
    first, last = weekday_and_day(days[0]), weekday_and_day(days[-1])
    between = " and " if len(days) == 2 else " to "
    return first if len(days) == 1 else f"{first}{between}{last}"


def mornings_words(day: CutDay) -> str:
    """That a list is for several mornings; nothing for one."""
    count = len(day.days)
    return f"For {count} mornings, {mornings_of(day.days)}." if count > 1 else ""


def proof_words(plan: CutPlan) -> str:
    """Whether the plan is the best there is, or how far from it it may be."""
    if plan.proven and plan.gap == 0:
        return PROVEN
    if plan.proven:
        return (
            "No other plan leaves less missing: that is proven. Another may cost less in stems "
            f"bought, colour and waste, by at most {plan.gap:.2%}.".replace("%", " %")
        )
    return (
        "The best plan that was found in the time; another may be better, by at most "
        f"{plan.gap:.1%} of what is missing, bought, off colour and wasted.".replace("%", " %")
    )


def steps_words(cut: Cut) -> str:
    """`3 × 25`; for what is cut by ones, that."""
    if cut.step == 1:
        return "one by one" if cut.cut > 1 else ""
    return f"{cut.steps} × {cut.step}"


def careful_words(hazards: Iterable[str]) -> tuple[str, ...]:
    """A few words each on how a stem can hurt whoever cuts it: what to wear for, then the rest."""
    hands = [words for hazard, words in GLOVES.items() if hazard in hazards]
    if "burns in sun" in hazards and "irritant sap" in hazards:
        hands.remove(GLOVES["irritant sap"])  # said already
    gloves = "gloves and sleeves" if "burns in sun" in hazards else "gloves"
    rest = [words for hazard, words in OTHERS.items() if hazard in hazards]
    return (*([f"{gloves}: {and_list(hands)}"] if hands else []), *rest)


def _was_cut_before(day: CutDay) -> bool:
    counts = day.walked.counts
    return any(
        each.standing < counts[each.stem] for each in day.problem.standing if each.stem in counts
    )

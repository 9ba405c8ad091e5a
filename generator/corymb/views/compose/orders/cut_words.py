"""How is it told what a cut goes by, and how sure its plan is?"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from corymb.language import gettext as _
from corymb.language import ngettext, noted, pgettext
from corymb.language.locales import and_list, rounded
from corymb.studio.values.dates import IsoWeek
from corymb.trade.cut import Cut, CutPlan
from corymb.trade.orders.cut_days import CutDay
from corymb.views.compose.orders.when import weekday_and_day
from corymb.views.compose.week_words import week_words
from corymb.views.compose.wording import percent_words

UNCOUNTED = noted(
    "Nothing is counted for this day, so the list says only what is wanted: a stem in season is "
    "taken to stand in any number."
)
PROVEN = noted(
    "No other plan leaves less missing, or costs less in stems bought, colour and waste: "
    "that is proven."
)
PROVEN_SHORT = noted(
    "No other plan leaves less missing: that is proven. Another may cost less in stems bought, "
    "colour and waste, by at most {share}."
)
UNPROVEN = noted(
    "The best plan that was found in the time; another may be better, by at most {share} of what "
    "is missing, bought, off colour and wasted."
)
GLOVES = {
    "burns in sun": noted("its sap burns in sunlight"),
    "irritant sap": noted("irritant sap"),
    "heart poison": noted("poison to the heart"),
    "irritant hairs": noted("irritant hairs"),
    "skin allergy": noted("skin allergy"),
    "thorns": noted("thorns"),
}
OTHERS = {
    "eye irritant": noted("keep its sap from your eyes"),
    "irritant dust": noted("don't breathe its dust"),
    "poisonous if eaten": noted("poisonous: wash hands"),
}
"""A few words for whoever cuts; the whole sentences stand below the list. Common practice, no
source."""


def walk_words(day: CutDay) -> str:
    """The walk it goes by, and how old that is on the day."""
    week = day.week
    if week is None:
        return _(UNCOUNTED)
    weeks = (IsoWeek.of(day.day).monday() - week.monday()).days // 7
    age = _("counted the same week")
    if weeks:
        age = ngettext("{number} week old", "{number} weeks old", weeks).format(number=weeks)
    # L10N: {age}: counted the same week, or 2 weeks old.
    told = _("By the walk of {week}, {age}.")
    if _was_cut_before(day):
        told = _("By the walk of {week}, {age}, less what is cut before this day.")
    look = [_("Look at the beds again before you go by it.")] if weeks else []
    return " ".join([told.format(week=week_words(week), age=age), *look])


def mornings_of(days: Sequence[date]) -> str:
    """`Friday 12 June`, `… and Saturday 13 June`, or from the first to the last of more."""
    first, last = weekday_and_day(days[0]), weekday_and_day(days[-1])
    if len(days) <= 2:
        return and_list([first, last][: len(days)])
    return pgettext("mornings", "{first} to {last}").format(first=first, last=last)


def mornings_words(day: CutDay) -> str:
    """That a list is for several mornings; nothing for one."""
    count = len(day.days)
    if count <= 1:
        return ""
    told = ngettext("For {number} morning, {days}.", "For {number} mornings, {days}.", count)
    return told.format(number=count, days=mornings_of(day.days))


def proof_words(plan: CutPlan) -> str:
    """Whether the plan is the best there is, or how far from it it may be."""
    if plan.proven and plan.gap == 0:
        return _(PROVEN)
    told, places = (PROVEN_SHORT, 2) if plan.proven else (UNPROVEN, 1)
    return _(told).format(share=percent_words(rounded(100 * plan.gap, places)))


def steps_words(cut: Cut) -> str:
    """`3 × 25`; for what is cut by ones, that."""
    if cut.step == 1:
        return _("one by one") if cut.cut > 1 else ""
    return f"{cut.steps} × {cut.step}"


def careful_words(hazards: Iterable[str]) -> tuple[str, ...]:
    """A few words each on how a stem can hurt whoever cuts it: what to wear for, then the rest."""
    hands = {hazard: words for hazard, words in GLOVES.items() if hazard in hazards}
    if "burns in sun" in hands:
        hands.pop("irritant sap", None)  # said already
    # L10N: what to wear, and why: gloves: thorns and irritant sap.
    gloves = _("gloves: {why}")
    if "burns in sun" in hands:
        gloves = _("gloves and sleeves: {why}")
    why = and_list(_(words) for words in hands.values())
    rest = [_(words) for hazard, words in OTHERS.items() if hazard in hazards]
    return (*([gloves.format(why=why)] if hands else []), *rest)


def _was_cut_before(day: CutDay) -> bool:
    counts = day.walked.counts
    return any(
        each.standing < counts[each.stem] for each in day.problem.standing if each.stem in counts
    )

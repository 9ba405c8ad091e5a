"""What the staff read of the weeks ahead."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from corymb.studio.studio import Studio
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.weeks_ahead import OPEN_WEEKS, weeks_ahead_view
from corymb.views.weeks_ahead import WeeksAheadView
from tests.trade.making import recipe, stem
from tests.trade.season.studio import small_studio
from tests.views.making import catalogue_of, demo

SEPTEMBER = date(2026, 9, 16)  # week 38


def staff(studio: Studio, day: date = SEPTEMBER) -> Catalogue:
    return catalogue_of(studio, "staff", day)


def ahead(day: date = SEPTEMBER) -> WeeksAheadView:
    return weeks_ahead_view(staff(demo(), day))


@pytest.mark.parametrize(
    ("day", "first", "last", "count"),
    [
        (SEPTEMBER, "2026-W38", "2027-W37", 53),
        (date(2027, 1, 3), "2026-W53", "2027-W52", 53),
        (date(2027, 3, 10), "2027-W10", "2028-W09", 52),
    ],
    ids=["in a long year", "in its 53rd week", "in a year of 52"],
)
def test_the_weeks_of_a_year_follow_each_other_eight_open_and_the_rest_by_month(
    day: date, first: str, last: str, count: int
) -> None:
    view = ahead(day)
    folded = [week for month in view.months for week in month.weeks]
    weeks = [*view.next_weeks, *folded]
    assert len(view.next_weeks) == OPEN_WEEKS
    assert (weeks[0].id, weeks[-1].id, len(weeks)) == (first, last, count)
    assert len({week.id for week in weeks}) == count
    assert len({month.name for month in view.months}) == len(view.months)


def test_a_week_names_what_comes_and_goes_with_the_way_to_its_page() -> None:
    week = ahead().next_weeks[0]
    assert (week.title, week.when) == ("Week 38", "14 to 20 September 2026")
    coming = {stem.label: stem.href for stem in week.coming_on}
    # The book's late September is 25 September here, with nothing in the log.
    assert coming["Nerine, pink"] == "flowers/nerine-pink.html"


def test_after_the_first_week_only_what_changes_is_told_and_evergreens_once() -> None:
    always = stem("bay", in_season="all year", at_best="all year")
    rose = stem("rose", in_season="W20 - W45", at_best="W30 - W42")
    poppy = stem("poppy", in_season="W20 - W45", at_best="W39 - W42")
    view = weeks_ahead_view(staff(small_studio(always, rose, poppy)))
    told = [([s.href for s in w.at_best], [s.href for s in w.to_best]) for w in view.next_weeks[:3]]
    assert [each.href for each in view.best_always] == ["flowers/bay.html"]
    assert told == [
        (["flowers/rose.html"], []),
        ([], ["flowers/poppy.html"]),
        ([], []),
    ]


def test_a_last_chance_is_told_with_how_why_not_and_when_again() -> None:
    (chance,) = (c for c in ahead().last_chances if c.recipe.label == "Plum button")
    assert chance.recipe.href == "arrangements/plum-button.html"
    assert chance.last == "week 41, 5 to 11 October 2026"
    assert chance.how.words == "With the variant ‘Last dahlias’"
    # An early frost on 8 October in the log of 2025 brought the end of the dahlias forward.
    assert chance.why.startswith("Nothing stands in for plum pompon dahlia")
    assert chance.again.endswith(" 2027")


def test_every_style_is_either_covered_or_told_with_its_thin_weeks() -> None:
    view = ahead()
    thin = [style.style.label for style in view.uncovered]
    covered = [style.label for style in view.covered]
    assert sorted(thin + covered) == sorted(each.plural for each in demo().styles.values())
    for style in view.uncovered:
        for spell in style.spells:
            assert spell.weeks > 0 and spell.lacks


@pytest.mark.parametrize(
    ("season", "when", "weeks"),
    [
        # Week 2 has 11 January in its middle, week 24 14 June, week 52 27 December.
        ("W1 - W23, W25 - W52", "in mid June", 1),
        ("W1 - W23", "from mid June to late December", 29),
        ("W3 - W50", "from mid December to mid January", 4),
    ],
    ids=["one week", "to the end of the year", "over the new year"],
)
def test_a_thin_spell_is_told_by_its_parts_of_months(season: str, when: str, weeks: int) -> None:
    rose = stem("rose", in_season=season)
    studio = small_studio(rose, recipe(stems=["6 rose, light, essential"]))
    ((thin,),) = (each.spells for each in weeks_ahead_view(staff(studio)).uncovered)
    assert (thin.when, thin.weeks) == (when, weeks)


def test_a_style_that_can_never_be_made_is_told_so() -> None:
    rose, ivy = stem("rose", in_season="W1 - W20"), stem("ivy", in_season="W30 - W40")
    lines = ["6 rose, light, essential", "3 ivy, depth, essential"]
    view = weeks_ahead_view(staff(small_studio(rose, ivy, recipe(stems=lines))))
    ((thin,),) = (each.spells for each in view.uncovered)
    assert (thin.when, thin.weeks) == ("in any week of the year", 52)
    assert view.covered == ()


def test_a_variant_that_is_a_draft_counts_for_the_staff() -> None:
    recipe = demo().recipes["plum-button"]
    variants = {k: v.model_copy(update={"draft": True}) for k, v in recipe.variants.items()}
    drafts = {recipe.id: recipe.model_copy(update={"variants": variants})}
    studio = replace(demo(), recipes=demo().recipes | drafts)
    view = weeks_ahead_view(staff(studio))
    assert "Plum button" in [chance.recipe.label for chance in view.last_chances]

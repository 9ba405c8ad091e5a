"""What a style link's page says: the looks as they will be on the day, and nothing private."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta
from typing import Any
from urllib.parse import parse_qs, urlsplit

import pytest

from corymb.studio.models.link import StyleLink, fresh_code
from corymb.studio.studio import Studio
from corymb.views.compose.links import standing_links, style_link_view
from corymb.views.compose.links_list import links_view
from corymb.views.links import LinkLook, StyleLinkView
from tests.views.making import catalogue_of, demo

SUMMER = "2027-07-10"  # before the coral zinnia and the tall verbena


def link(*show: str, day: str = "2026-09-19", **more: Any) -> StyleLink:
    last = date.fromisoformat(day) + timedelta(days=21)
    told = {"title": "For you", "for": "QUILLFEATHER", "code": fresh_code(), "date": day}
    return StyleLink.model_validate(
        {**told, "expires": last.isoformat(), "show": list(show), "note": "One.\n\nTwo.", **more}
    )


def page(*show: str, **more: Any) -> StyleLinkView:
    return style_link_view(catalogue_of(demo()), link(*show, **more), {})


def texts_in(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, tuple):
        for each in value:
            yield from texts_in(each)
    elif hasattr(value, "__dict__"):
        for each in vars(value).values():
            yield from texts_in(each)


def only(view: StyleLinkView) -> LinkLook:
    (look,) = view.looks
    return look


def test_it_says_what_day_it_is_for_and_until_when_it_stands() -> None:
    view = page("hedgerow-jar, later")
    assert view.day == "Saturday 19 September 2026"
    assert view.last_day == "10 October 2026"
    assert view.expires == "2026-10-10"
    assert view.note == ("One.", "Two.")


def test_the_clients_private_name_is_nowhere_on_it() -> None:
    where = {"place": "the old barn", "setting": "indoors", "light": "candle"}
    view = page("hedgerow-jar, later", "rooks-wing-hand-tie", where=where)
    said = list(texts_in(view))
    assert len(said) > 100
    assert not any("QUILLFEATHER" in text for text in said)


def test_a_look_that_can_be_made_is_shown_as_pictured_with_price_and_how_long_it_lasts() -> None:
    look = only(page("hedgerow-jar, later"))
    assert look.can
    assert look.state == "On that day: as pictured"
    assert (look.name, look.variant) == ("Hedgerow jar", "Later in the year")
    facts = {fact.label: fact.value for fact in look.facts}
    assert facts["stems"] == str(sum(line.count for line in look.lines))
    assert facts["price guide"] == "from €28"
    assert facts["until the first fades"].endswith(" days")
    assert not look.swaps
    assert not any(line.in_place_of for line in look.lines)


def test_silence_on_what_can_hurt_is_never_taken_for_safety() -> None:
    studio = demo()
    bare = {
        known_as: stem.model_copy(update={"hazards": [], "caution": ""})
        for known_as, stem in studio.stems.items()
    }
    for stems, begins in ((studio.stems, "Of the rest it is"), (bare, "Whether it can harm a pet")):
        catalogue = catalogue_of(replace(studio, stems=stems))
        view = style_link_view(catalogue, link("rooks-wing-hand-tie"), {})
        assert bool(view.cautions) == (stems is not bare)
        assert view.not_known.startswith(begins)


def test_what_is_carried_stands_in_no_water() -> None:
    labels = [fact.label for fact in only(page("rooks-wing-hand-tie")).facts]
    assert "until the first fades" not in labels


def test_swaps_are_shown_in_words_and_in_the_lines_and_no_photo_of_it_without_them() -> None:
    look = only(page("hedgerow-jar, later", day=SUMMER))
    assert look.can
    assert look.state == "On that day: with swaps"
    instead = [line for line in look.lines if line.in_place_of]
    assert len(instead) == len(look.swaps) > 0
    assert "in place of" in look.swaps[0].words
    assert not any(character.isdigit() for character in look.swaps[0].words)
    assert all(image.photo is None for image in look.images)


def test_what_does_not_surely_stand_is_named_and_its_word_explained() -> None:
    view = page("hedgerow-jar, later", day=SUMMER)
    assert "in that week: " in only(view).doubts
    assert [fact.value for fact in view.sure_means] == ["Touch and go"]


def test_what_cannot_be_made_says_so_kindly_and_when_it_can_be() -> None:
    view = page("gleaners-trough", day="2027-01-16")
    look = only(view)
    assert not look.can
    assert look.state == "Not on that day"
    assert "It can be made until week" in look.why_not
    assert view.can == ()
    assert not view.cautions
    assert not view.not_known


def test_another_look_of_its_recipe_stands_in_for_one_that_cannot_be_made() -> None:
    look = only(page("may-bough-hand-tie, blush", day="2027-05-29"))
    assert look.can
    assert look.variant == ""
    assert look.state.startswith("In place of ‘May-bough hand-tie: ")


def test_a_look_that_the_link_shows_already_does_not_stand_in_for_another() -> None:
    known = ("may-bough-hand-tie", "may-bough-hand-tie, first-boughs")
    view = page(*known, "may-bough-hand-tie, blush", day="2027-05-29")
    assert [look.can for look in view.looks] == [True, True, False]


def test_a_size_has_its_own_counts_and_a_price_in_proportion() -> None:
    regular, small = page("hedgerow-jar, later", "hedgerow-jar, later, small").looks
    stems = [sum(line.count for line in look.lines) for look in (regular, small)]
    prices = [look.facts[-2].value for look in (regular, small)]
    assert stems[1] < stems[0]
    assert small.size == "small"
    assert small.chosen_words == "Hedgerow jar: Later in the year, small"
    assert all(price.startswith("from €") for price in prices)
    assert float(prices[1][6:]) < float(prices[0][6:])


@pytest.mark.parametrize(
    ("more", "light", "labels"),
    [
        ({}, (), ["Drawn"]),
        (
            {
                "hours": "17:30-23:00",
                "where": {"place": "the barn", "setting": "indoors", "light": "candle"},
            },
            ("17:30 to 23:00: by candlelight",),
            ["Daylight", "Candlelight"],
        ),
        (
            {
                "hours": "12:00-14:00",
                "where": {"place": "here", "setting": "outdoors", "light": "daylight"},
            },
            ("12:00 to 14:00: in full daylight",),
            ["Drawn"],
        ),
    ],
    ids=["nothing said", "by candle", "at noon"],
)
def test_the_light_of_its_hours_is_told_and_shown(
    more: dict[str, Any], light: tuple[str, ...], labels: list[str]
) -> None:
    view = page("hedgerow-jar, later", **more)
    assert view.light == light
    assert [image.label for image in only(view).images] == labels
    assert bool(view.indicative) == (len(labels) > 1)


def test_the_mail_without_script_names_every_look_that_can_be_made() -> None:
    view = page("hedgerow-jar, later", "may-cup, after-the-tulips")
    asked = parse_qs(urlsplit(view.answer.href).query)
    assert asked["subject"] == ["For you, Saturday 19 September 2026"]
    listed = [line for line in asked["body"][0].split("\r\n") if line.startswith("- ")]
    assert listed == [f"- {look.chosen_words}" for look in view.can]
    assert len(listed) < len(view.looks)


def with_links(**links: StyleLink) -> Studio:
    return replace(demo(), links=links)


@pytest.mark.parametrize(
    ("today", "stands"),
    [("2026-09-16", True), ("2026-10-10", True), ("2026-10-11", False), ("2027-09-19", False)],
)
def test_a_link_stands_through_its_last_day(today: str, stands: bool) -> None:
    studio = with_links(one=link("hedgerow-jar, later"))
    catalogue = catalogue_of(studio, day=date.fromisoformat(today))
    assert bool(standing_links(catalogue)) == stands


def test_staff_see_whom_a_link_is_for_and_what_its_page_cannot_show() -> None:
    studio = with_links(
        one=link("hedgerow-jar, later", "gleaners-trough", day="2027-01-16"),
        gone=link("hedgerow-jar, later", day="2025-09-20"),
    )
    view = links_view(catalogue_of(studio, "staff"), "https://studio.example/")
    (standing,), (over,) = view.standing, view.over
    assert standing.client == "QUILLFEATHER"
    assert standing.address == f"https://studio.example/links/{studio.links['one'].code}.html"
    assert [look.warns for look in standing.looks] == [True, True]
    assert over.day == "Saturday 20 September 2025"
    first = next(each.id for each in catalogue_of(studio, "staff").recipes() if not each.draft)
    assert (view.sample, view.sample_day) == (first, "2026-10-07")

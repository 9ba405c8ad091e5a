"""What the papers of an order say: all as it will be, and nothing that isn't for their reader."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import asdict
from functools import cache
from typing import Any

import pytest

from corymb.trade.orders.as_cut import as_cut
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import given
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.bench_sheets import bench_sheets_view
from corymb.views.compose.orders.cut_share import share_view
from corymb.views.compose.orders.cuts import cut_for, has_papers, packed_for, with_papers
from corymb.views.compose.orders.labels import ON_A_SHEET, labels_view
from corymb.views.compose.orders.load_sheet import UNWEIGHED, load_sheet_view
from corymb.views.compose.orders.numbered import bucket_numbers, ranges
from corymb.views.compose.orders.packing import papers_of
from corymb.views.compose.orders.sheet_stems import share
from corymb.views.compose.orders.shown import shown_dues
from tests.views.making import catalogue_of, demo


@cache
def staff() -> Catalogue:
    return catalogue_of(demo(), "staff")


def due(known_as: str) -> Due:
    return next(each for each in with_papers(staff()) if each.id == known_as)


SUPPER, WEDDING, LUNCH = "barn-supper", "register-office-wedding", "christening-lunch"
VISIT, OLD = "lantern-house--2026-09-22", "september-wedding"
EACH = pytest.mark.parametrize("known_as", [SUPPER, WEDDING, LUNCH, VISIT, OLD])


def words_in(view: Any) -> str:
    """All that a view says, one text a line."""
    found: list[str] = []

    def walk(value: Any) -> None:
        if isinstance(value, str):
            found.append(value)
        elif isinstance(value, dict):
            for each in value.values():
                walk(each)
        elif isinstance(value, (list, tuple)):
            for each in value:
                walk(each)

    walk(asdict(view))
    return "\n".join(found)


def test_every_one_off_order_has_papers_and_no_visit_whose_cut_is_not_planned() -> None:
    assert {each.id for each in with_papers(staff())} >= set(staff().studio.orders)
    far = [each for each in shown_dues(staff()) if not has_papers(staff(), each)]
    assert far
    assert all(papers_of(staff(), each) == () for each in far)


def test_clients_have_no_papers() -> None:
    assert with_papers(catalogue_of(demo(), "clients")) == ()


# Bench sheets


@EACH
def test_there_is_a_bench_sheet_for_every_line(known_as: str) -> None:
    view = bench_sheets_view(staff(), due(known_as))
    assert [sheet.number for sheet in view.sheets] == [line.number for line in due(known_as).lines]


@EACH
def test_the_sheets_of_an_order_and_the_rest_of_its_spare_come_to_its_cut(known_as: str) -> None:
    of = due(known_as)
    day = cut_for(staff(), of)
    on_sheets = sum(sheet.stems_all for sheet in bench_sheets_view(staff(), of).sheets)
    spare = sum(fill.count for each in day.of(of) for fill in each.spare)
    into_the_mix = sum(sum(mix.spare.values()) for mix in day.mixed if mix.order == of.id)
    assert on_sheets + spare - into_the_mix == sum(given(day, of.id).values())


@EACH
def test_the_roles_of_a_sheet_add_up(known_as: str) -> None:
    for sheet in bench_sheets_view(staff(), due(known_as)).sheets:
        assert sum(part.all for part in sheet.roles) == sheet.stems_all
        for part in sheet.roles:
            assert sum(stem.all for stem in part.stems) == part.all
            assert {stem.role for stem in part.stems} == {part.role}


SHARES = [(60, 12, "5"), (9, 2, "4 or 5"), (5, 10, "0 or 1"), (7, 1, "7"), (0, 3, "0")]


@pytest.mark.parametrize(("count", "pieces", "words"), SHARES)
def test_what_does_not_come_out_even_is_shared_as_evenly_as_it_can_be(
    count: int, pieces: int, words: str
) -> None:
    assert share(count, pieces) == words


def swapped() -> list[tuple[Due, int, str, str]]:
    """Every stand-in of the demo: order, place of the line, what comes, what goes."""
    return [
        (of, place, staff().stem(fill.stem).name, staff().stem(met.line.stem).name)
        for of in with_papers(staff())
        for place, line in enumerate(of.lines)
        for met in as_cut(of, line, cut_for(staff(), of))
        for fill in met.stand_ins
    ]


def test_a_sheet_holds_what_stands_in_and_says_for_what_and_why() -> None:
    assert swapped()
    for of, place, coming, going in swapped():
        sheet = bench_sheets_view(staff(), of).sheets[place]
        notes = [each.note for part in sheet.roles for each in part.stems if each.name == coming]
        assert any(re.fullmatch(f"in place of .+ {going}", note) for note in notes)
        told = f"[0-9]+ {coming} in place of [0-9]+ {going}: .+ stands? then[.] [A-Z].+[.]"
        assert any(re.fullmatch(told, sentence) for sentence in sheet.swaps)


def test_a_sheet_from_the_mix_says_what_the_mix_lacks() -> None:
    sheet = bench_sheets_view(staff(), due(SUPPER)).sheets[-1]
    assert sheet.leaves == "from the mix"
    assert any("cut them too" in sentence.lower() for sentence in sheet.short)
    (mix,) = [each for each in cut_for(staff(), due(SUPPER)).mixed if each.order == SUPPER]
    lacking = sum(mix.missing.values())
    assert sheet.stems_all == sum(mix.wanted.values()) - lacking


def test_what_leaves_in_buckets_has_counts_and_no_steps() -> None:
    sheet = bench_sheets_view(staff(), due(SUPPER)).sheets[2]
    assert sheet.leaves.endswith("in buckets")
    assert sheet.stems_all and sheet.conditioning
    assert not (sheet.steps or sheet.looks_right or sheet.fetch)
    assert [fact.label for fact in sheet.facts] == ["across, high"]


def test_many_take_less_than_so_many_times_one_and_a_helper_longer() -> None:
    sheet = bench_sheets_view(staff(), due(SUPPER)).sheets[0]
    assert [fact.label for fact in sheet.facts] == [
        "across, high",
        "for one",
        "all 12, practised",
        "all 12, helper",
    ]
    one, practised, helper = (minutes(fact.value) for fact in sheet.facts[1:])
    assert one < practised < 12 * one
    assert practised < helper


def minutes(text: str) -> int:
    hours = re.search(r"(\d+) h", text)
    rest = re.search(r"(\d+) min", text)
    return 60 * int(hours[1] if hours else 0) + int(rest[1] if rest else 0)


# Bucket labels


@EACH
def test_there_is_a_label_for_every_bucket_and_its_counts_are_those_of_the_bucket(
    known_as: str,
) -> None:
    buckets = packed_for(staff(), due(known_as)).buckets.all
    labels = [each for sheet in labels_view(staff(), due(known_as), "").sheets for each in sheet]
    assert [each.number for each in labels] == list(range(1, len(buckets) + 1))
    assert {each.of for each in labels} == {len(buckets)}
    for label, bucket in zip(labels, buckets, strict=True):
        assert [part.count for part in label.parts] == [part.count for part in bucket.parts]
        assert label.stems == sum(part.count for part in label.parts)


@EACH
def test_labels_together_hold_all_stems_of_the_order(known_as: str) -> None:
    of = due(known_as)
    held: Counter[str] = Counter()
    for sheet in labels_view(staff(), of, "").sheets:
        assert len(sheet) <= ON_A_SHEET
        for label in sheet:
            held.update({part.name: part.count for part in label.parts})
    day = cut_for(staff(), of)
    wanted = Counter(day.stems[of.id])
    for mix in day.mixed:
        if mix.order == of.id:
            wanted.update(mix.left_over)
    assert held == {staff().stem(stem).name: count for stem, count in wanted.items() if count}


def test_the_code_leads_to_the_bench_sheets_and_the_page_says_where() -> None:
    view = labels_view(staff(), due(SUPPER), "https://bench.example/")
    leads_to = "https://bench.example/orders/barn-supper-bench.html"
    assert view.code and view.code.leads_to == leads_to
    assert leads_to in view.told


def test_there_is_no_code_that_leads_nowhere_and_the_page_says_what_it_takes() -> None:
    view = labels_view(staff(), due(SUPPER), "")
    assert view.code is None
    assert "staff_url" in view.told


@EACH
def test_a_label_says_how_long_its_stems_drink_and_in_how_much(known_as: str) -> None:
    buckets = packed_for(staff(), due(known_as)).buckets.all
    labels = [each for sheet in labels_view(staff(), due(known_as), "").sheets for each in sheet]
    for bucket, label in zip(buckets, labels, strict=True):
        drinks = [staff().stem(part.lot.stem).conditioning.hours for part in bucket.parts]
        assert label.hours == max(drinks)
        assert label.water == ("" if bucket.dry else f"{bucket.kind.water_litres:g} L")


def test_a_label_says_which_bucket_goes_as_it_stands() -> None:
    goes = [each.goes for sheet in labels_view(staff(), due(SUPPER), "").sheets for each in sheet]
    assert goes.count("Goes as it stands") == len(packed_for(staff(), due(SUPPER)).buckets.going)
    assert set(goes) == {"To the bench", "Goes as it stands"}


# Load sheet


@EACH
def test_everything_that_travels_is_drawn_once_and_listed_once(known_as: str) -> None:
    pack = packed_for(staff(), due(known_as))
    trips = load_sheet_view(staff(), due(known_as)).trips
    assert sum(len(trip.placed) for trip in trips) == len(pack.items)
    assert sum(group.count for trip in trips for group in trip.groups) == len(pack.items)
    for trip in trips:
        assert [one.number for one in trip.placed] == list(range(1, len(trip.placed) + 1))


@EACH
def test_nothing_is_drawn_over_the_edge_of_the_floor_or_over_another(known_as: str) -> None:
    view = load_sheet_view(staff(), due(known_as))
    assert view.floor
    for trip in view.trips:
        for one in trip.placed:
            assert one.radius - 0.01 <= one.x <= view.floor.long - one.radius + 0.01
            assert one.radius - 0.01 <= one.y <= view.floor.wide - one.radius + 0.01
            for other in trip.placed:
                apart = ((one.x - other.x) ** 2 + (one.y - other.y) ** 2) ** 0.5
                assert one is other or apart >= one.radius + other.radius - 0.01


def test_what_goes_in_first_stands_nearest_to_the_seats() -> None:
    for trip in load_sheet_view(staff(), due(SUPPER)).trips:
        along = [round(one.x) for one in trip.placed]
        assert along == sorted(along)


READ = [([1, 2, *range(28, 94)], "1, 2, 28 to 93"), ([5, 6], "5, 6"), ([], "")]


@pytest.mark.parametrize(("numbers", "words"), READ)
def test_three_buckets_that_follow_each_other_are_read_as_a_span(
    numbers: list[int], words: str
) -> None:
    assert bucket_numbers(numbers) == words


@EACH
def test_a_bucket_has_one_number_on_its_label_the_load_sheet_and_the_bench_sheets(
    known_as: str,
) -> None:
    of = due(known_as)
    labels = [each for sheet in labels_view(staff(), of, "").sheets for each in sheet]
    going = {f"{n.kind.capitalize()} {n.number}" for n in labels if n.goes != "To the bench"}
    told = {
        group.what.partition(":")[0]
        for trip in load_sheet_view(staff(), of).trips
        for group in trip.groups
    }
    assert going <= told
    known = {f"{n.kind} {n.number}" for n in labels}
    for sheet in bench_sheets_view(staff(), of).sheets:
        for stem in (stem for part in sheet.roles for stem in part.stems):
            assert all(
                any(stands.startswith(kind.rpartition(" ")[0]) for kind in known)
                for stands in filter(None, stem.stands.split("; "))
            )
            assert stem.stands or sheet.leaves == "from the mix"


BRIEFED = {
    "bench": lambda of: bench_sheets_view(staff(), of).brief,
    "load": lambda of: load_sheet_view(staff(), of).brief,
    "cut": lambda of: share_view(staff(), cut_for(staff(), of), of).brief,
}


@EACH
@pytest.mark.parametrize("paper", BRIEFED)
def test_whoever_works_from_a_paper_reads_the_notes_the_hours_and_whom_to_ring(
    known_as: str, paper: str
) -> None:
    of = due(known_as)
    told = {fact.label: fact.value for fact in BRIEFED[paper](of)}
    assert told.get("Notes", "") == of.order.notes
    assert told.get("Call", "") == of.order.client.phone
    assert ("In use" in told) is bool(of.order.hours)
    assert {"Fetched from", "Leave, and set out by"} & set(told)


def test_a_bench_sheet_says_what_is_not_made_at_the_bench() -> None:
    (sheet,) = bench_sheets_view(staff(), due(VISIT)).sheets
    assert sheet.leaves == "made up where it will stand"
    assert not any("where it" in s.leaves for s in bench_sheets_view(staff(), due(SUPPER)).sheets)


def test_what_is_made_where_it_will_stand_takes_its_sundries_and_water_along() -> None:
    take = load_sheet_view(staff(), due(VISIT)).take
    recipe = due(VISIT).lines[0].piece.recipe
    assert all(any(sundry.name in each for each in take) for sundry in recipe.sundries)
    assert recipe.vessel.water and any("of water" in each for each in take)
    assert load_sheet_view(staff(), due(LUNCH)).take == ()


NUMBERS = [([1, 2, 3, 4, 7], "1–4, 7"), ([2], "2"), ([1, 3, 5], "1, 3, 5"), ([4, 5], "4–5")]


@pytest.mark.parametrize(("numbers", "words"), NUMBERS)
def test_numbers_that_follow_each_other_are_told_as_a_span(numbers: list[int], words: str) -> None:
    assert ranges(numbers) == words


def test_what_is_too_high_for_the_van_is_made_up_there_and_said_so() -> None:
    words = words_in(load_sheet_view(staff(), due(VISIT)))
    assert "too high for the small van once made up" in words
    assert "its vessel, empty" in words


@EACH
def test_a_load_sheet_says_what_to_think_of_before_lifting(known_as: str) -> None:
    assert "follow your local rules" in load_sheet_view(staff(), due(known_as)).lifting


@EACH
def test_only_buckets_are_held_to_the_filter_for_lifting(known_as: str) -> None:
    items = packed_for(staff(), due(known_as)).items
    lifting = load_sheet_view(staff(), due(known_as)).lifting
    assert ("guideline filter" in lifting) is any(
        item.how in ("bucket", "hand-tie") for item in items
    )
    unweighed = any(item.how in ("piece", "empty vessel") for item in items)
    assert (UNWEIGHED in lifting) is unweighed


def test_the_floor_is_the_vehicles_and_there_is_room_beside_it_on_a4() -> None:
    view = load_sheet_view(staff(), due(SUPPER))
    assert view.vehicle == "small van" and view.floor
    assert (view.floor.long, view.floor.wide) == (170, 120)
    assert 10 * view.floor.long / view.floor.scale <= 120  # mm on paper

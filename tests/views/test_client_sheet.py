"""What the client's own sheet says: what comes, when, how it is kept and made, nothing of ours."""

from __future__ import annotations

import re

import pytest

from corymb.views.compose.orders.collection import LOOSE, collection_view
from corymb.views.compose.orders.cuts import with_papers
from corymb.views.compose.orders.labels import labels_view
from tests.views.test_papers import EACH, LUNCH, SUPPER, VISIT, WEDDING, due, staff, words_in


@EACH
def test_the_clients_sheet_holds_no_cost_no_note_and_no_address(known_as: str) -> None:
    of = due(known_as)
    words = words_in(collection_view(staff(), of))
    client = of.order.client
    private = [client.email or "", client.phone, of.order.learnt]
    private += [part for part in re.split(r"(?<=[.!?])\s+", of.order.notes) if part]
    assert not [text for text in private if text and text in words]
    assert "€" not in words and "margin" not in words


@EACH
def test_the_clients_sheet_names_no_other_order(known_as: str) -> None:
    words = words_in(collection_view(staff(), due(known_as)))
    mine = due(known_as).name
    names = {each.name for each in with_papers(staff())} - {mine}
    assert not [name for name in names if name in words and name not in mine]


HANDED = {
    LUNCH: ("Fetch", "to fetch from", "Bring an estate car"),
    SUPPER: ("", "with you", ""),
}


@pytest.mark.parametrize(("known_as", "telling"), HANDED.items(), ids=HANDED)
def test_the_clients_sheet_says_when_and_how_they_come(
    known_as: str, telling: tuple[str, str, str]
) -> None:
    view = collection_view(staff(), due(known_as))
    assert view.collects is bool(telling[0])
    assert telling[1] in view.when[0].label
    assert telling[2] in view.words and bool(telling[2]) is bool(view.words)


@EACH
@pytest.mark.parametrize(
    "words", [" trip", "empty vessel", "small van", "from the mix", "on a seat"]
)
def test_a_client_who_gets_flowers_brought_reads_nothing_of_how_we_load(
    known_as: str, words: str
) -> None:
    if due(known_as).order.handover == "delivery":
        assert words not in words_in(collection_view(staff(), due(known_as)))


STOOD = [(SUPPER, "17:30 to 23:00", "in use"), (VISIT, "Tuesday 29 September", "we come again")]


@pytest.mark.parametrize(("known_as", "value", "label"), STOOD)
def test_a_client_reads_until_when_it_stands(known_as: str, value: str, label: str) -> None:
    last = collection_view(staff(), due(known_as)).when[-1]
    assert (last.value, last.label) == (value, label)


@EACH
def test_only_a_client_who_arranges_reads_what_to_do_with_loose_stems(known_as: str) -> None:
    arranges = any(line.piece.in_buckets for line in due(known_as).lines)
    view = collection_view(staff(), due(known_as))
    assert (LOOSE in view.until_use) is arranges
    assert bool(view.arrange) is bool(view.loose) is arranges


def test_a_client_who_arranges_gets_counts_a_method_a_picture_and_what_is_in_each_bucket() -> None:
    view = collection_view(staff(), due(SUPPER))
    (jars,) = view.arrange
    assert jars.quantity == 6 and jars.steps and jars.image.picture.href
    assert all(re.match(r"\d+ (or \d+ )?[A-Z]", stem) for stem in jars.stems)
    labels = [each for sheet in labels_view(staff(), due(SUPPER), "").sheets for each in sheet]
    going = [each for each in labels if each.goes == "Goes as it stands"]
    assert [words.partition(":")[0] for words in view.loose] == [
        f"Bucket {each.number}" for each in going
    ]


CARE = {
    "Frost button: Camellia": "A camellia lasts the day",
    "Windfall posy: Still November": "Top up every day. What is dried",
}


@pytest.mark.parametrize("what", CARE)
def test_the_care_of_a_variant_is_its_own(what: str) -> None:
    kept = {each.what: each.care for each in collection_view(staff(), due(WEDDING)).keeping}
    assert kept[what].startswith(CARE[what])


def test_the_clients_sheet_warns_whoever_keeps_a_pet() -> None:
    assert any("pets" in caution for caution in collection_view(staff(), due(SUPPER)).cautions)

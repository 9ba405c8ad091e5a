"""A step that names a plant which isn't in a variant says so, and no other step does."""

from __future__ import annotations

import pytest

from corymb.trade.step_notes import Gone, is_all_gone, step_note, without_gone

CROCOSMIA = Gone("Crocosmia", ("Zinnia",))
MARJORAM = Gone("Marjoram")
HERE = ("Cosmos", "Scabious", "Apple mint", "Zinnia")

NOTES = {
    "a plant that another stands in for": (
        "Put in the two crocosmia last.",
        [CROCOSMIA],
        HERE,
        "Zinnia in place of Crocosmia.",
    ),
    "a plant left out": ("Drop the marjoram between.", [MARJORAM], HERE, "No Marjoram here."),
    "two plants in one step": (
        "Crocosmia, then marjoram.",
        [CROCOSMIA, MARJORAM],
        HERE,
        "Zinnia in place of Crocosmia. No Marjoram here.",
    ),
    "two that stand in for one": (
        "Both scabious low.",
        [Gone("Scabious", ("Cornflower", "Love-in-a-mist"))],
        ("Cornflower",),
        "Cornflower and Love-in-a-mist in place of Scabious.",
    ),
    "a step that names none": ("Fill the jar.", [CROCOSMIA, MARJORAM], HERE, ""),
    "a plant that is there": ("Set the mint first.", [CROCOSMIA], HERE, ""),
    "a word that only begins alike": ("Mintcakes after.", [Gone("Mint")], (), ""),
    "many of it": ("Peonies next.", [Gone("Peony")], (), "No Peony here."),
    "one of it": ("The rose hip.", [Gone("Rose hips")], (), "No Rose hips here."),
    "a name that ends in s anyway": ("Each iris.", [Gone("Iris")], (), "No Iris here."),
    "a name in the middle of a hyphen": ("A well-rose-d jug.", [Gone("Rose")], (), ""),
    "a curly apostrophe": (
        "The hare’s tails.",
        [Gone("Hare's tail")],
        (),
        "No Hare's tail here.",
    ),
    "by its last word": ("The mint first.", [Gone("Apple mint")], (), "No Apple mint here."),
    "by its last word, which another still goes by": (
        "The roses at three heights.",
        [Gone("Garden rose")],
        ("Rambler rose",),
        "",
    ),
    "by its whole name beside another of the kind": (
        "The garden roses.",
        [Gone("Garden rose")],
        ("Rambler rose",),
        "No Garden rose here.",
    ),
    "inside the name of one that is there": (
        "The sea holly.",
        [Gone("Holly")],
        ("Sea holly",),
        "",
    ),
    "without the part that is cut": (
        "Bend the dogwood.",
        [Gone("Dogwood stems")],
        (),
        "No Dogwood stems here.",
    ),
    "the part alone is no plant": ("Cut the stems.", [Gone("Dogwood stems")], (), ""),
    "a last word that means another thing": ("Box it.", [Gone("Sweet box")], (), ""),
}


@pytest.mark.parametrize(("step", "gone", "here", "note"), NOTES.values(), ids=NOTES)
def test_a_step_says_which_of_its_plants_are_not_there(
    step: str, gone: list[Gone], here: tuple[str, ...], note: str
) -> None:
    assert step_note(step, gone, here) == note


@pytest.mark.parametrize(
    ("text", "all_gone"),
    [
        pytest.param("Marjoram upsets pets.", True, id="of a plant gone"),
        pytest.param("Mint and marjoram upset pets.", False, id="of one that is there as well"),
        pytest.param("Marjoram upsets pets. Wear gloves.", False, id="of something else as well"),
        pytest.param("Wear gloves.", False, id="of no plant"),
    ],
)
def test_a_caution_goes_only_when_it_is_of_nothing_that_is_there(text: str, all_gone: bool) -> None:
    assert is_all_gone(text, [MARJORAM], HERE) is all_gone


LEFT = [
    ("Top up every day. Marjoram drops on the third.", "Top up every day."),
    ("Marjoram drops on the third.", ""),
    ("Top up every day.", "Top up every day."),
]


@pytest.mark.parametrize(("text", "left"), LEFT)
def test_words_of_plants_that_are_not_there_alone_are_left_out(text: str, left: str) -> None:
    assert without_gone(text, [MARJORAM], HERE) == left

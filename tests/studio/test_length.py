"""Lengths, ranges, floors and heights are read from what a florist writes."""

import pytest

from corymb.studio.values.length import (
    Floor,
    Height,
    Length,
    LengthRange,
    parse_floor,
    parse_height,
    parse_length,
    parse_length_range,
)


@pytest.mark.parametrize(
    ("text", "cm", "printed"),
    [
        ("9 cm", 9, "9 cm"),
        ("9cm", 9, "9 cm"),
        (" 9  CM ", 9, "9 cm"),
        ("90 mm", 9, "9 cm"),
        ("1.2 m", 120, "120 cm"),
        ("1.1 m", 110, "110 cm"),
        ("24 in", 60.96, "60.96 cm"),
        ("24 inches", 60.96, "60.96 cm"),
        ('24"', 60.96, "60.96 cm"),
        ("2 ft", 60.96, "60.96 cm"),
        ("0.5 metres", 50, "50 cm"),
        (".5 m", 50, "50 cm"),
        ("0.1 mm", 0.01, "0.01 cm"),
    ],
)
def test_a_length_is_read_in_centimetres(text: str, cm: float, printed: str) -> None:
    assert parse_length(text) == Length(cm)
    assert str(Length(cm)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("9", "‘9’ has no unit: write for instance ‘9 cm’. The units are mm, cm, m, in or ft."),
        (
            "9 cmm",
            "‘cmm’ in ‘9 cmm’ is not a unit here. Did you mean ‘cm’ or ‘mm’? "
            "The units are mm, cm, m, in or ft.",
        ),
        ("9 g", "‘g’ in ‘9 g’ is not a unit here. The units are mm, cm, m, in or ft."),
        ("9,5 cm", "‘9,5’ has a comma in it: write 9.5."),
        ("1,200 mm", "‘1,200’ has a comma in it: write 1200 or 1.200."),
        ("nine cm", "‘nine cm’ is not a length: write it like ‘9 cm’."),
        ("", "‘’ is not a length: write it like ‘9 cm’."),
        ("0 cm", "‘0 cm’ is no length at all: write it like ‘9 cm’."),
        ("-4 cm", "‘-4 cm’ is no length at all: write it like ‘9 cm’."),
        ("0.00001 mm", "‘0.00001 mm’ is no length at all: write it like ‘9 cm’."),
        ("2000 m", "‘2000 m’ is longer than a kilometre: is the unit right?"),
        ("60-90 cm", "‘60-90 cm’ is a range; one length is wanted here, like ‘75 cm’."),
        ("1234567890123 cm", "‘1234567890123’ is too long a number for a length."),
    ],
)
def test_a_wrong_length_is_told_with_what_would_be_right(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_length(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "shortest", "longest", "printed"),
    [
        ("60-90 cm", 60, 90, "60-90 cm"),
        ("60 - 90 cm", 60, 90, "60-90 cm"),
        ("60–90 cm", 60, 90, "60-90 cm"),
        ("60 — 90 cm", 60, 90, "60-90 cm"),
        ("60 to 90 cm", 60, 90, "60-90 cm"),
        ("60 cm - 90 cm", 60, 90, "60-90 cm"),
        ("60 cm to 1.2 m", 60, 120, "60-120 cm"),
        ("0.6-0.9 m", 60, 90, "60-90 cm"),
        ("24-36 in", 60.96, 91.44, "60.96-91.44 cm"),
        ('24-36"', 60.96, 91.44, "60.96-91.44 cm"),
        ("75 cm", 75, 75, "75 cm"),
        ("75-75 cm", 75, 75, "75 cm"),
    ],
)
def test_a_range_of_lengths_is_read(
    text: str, shortest: float, longest: float, printed: str
) -> None:
    assert parse_length_range(text) == LengthRange(shortest, longest)
    assert str(LengthRange(shortest, longest)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("90-60 cm", "‘90-60 cm’ runs backwards: put the shorter length first."),
        (
            "60-90",
            "‘90’ has no unit: write for instance ‘90 cm’. The units are mm, cm, m, in or ft.",
        ),
        ("60-70-80 cm", "‘60-70-80 cm’ should have two ends, one dash between them."),
        ("60- cm", "‘cm’ is not a length: write it like ‘60-90 cm’."),
        ("- 60 cm", "‘- 60 cm’ is not a length: write it like ‘60-90 cm’."),
        ("60 cm -", "‘60 cm -’ should have two ends, one dash between them."),
        ("tall", "‘tall’ is not a length: write it like ‘60-90 cm’."),
    ],
)
def test_a_wrong_range_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_length_range(text)
    assert str(wrong.value) == message


def test_a_range_holds_its_ends_and_what_lies_between() -> None:
    held = [cm for cm in (59.9, 60, 75, 90, 90.1) if LengthRange(60, 90).has(Length(cm))]
    assert held == [60, 75, 90]


@pytest.mark.parametrize(
    ("text", "long", "wide"),
    [
        ("170 x 120 cm", 170, 120),
        ("170 × 120 cm", 170, 120),
        ("170x120cm", 170, 120),
        ("120 by 170 cm", 170, 120),
        ("1.7 m x 1.2 m", 170, 120),
        ("1.7 m by 120 cm", 170, 120),
        ("100 x 100 cm", 100, 100),
    ],
)
def test_a_floor_is_read_with_its_longer_side_first(text: str, long: float, wide: float) -> None:
    assert parse_floor(text) == Floor(long, wide)


def test_a_floor_prints_both_sides() -> None:
    assert str(Floor(170, 120.5)) == "170 x 120.5 cm"


@pytest.mark.parametrize("text", ["170 cm", "", "170 x 120 x 90 cm"])
def test_a_floor_needs_two_sides(text: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_floor(text)
    assert str(wrong.value) == f"‘{text}’ is not a floor: write its two sides, like ‘170 x 120 cm’."


@pytest.mark.parametrize(
    ("text", "metres"), [("60 m", 60), ("0 m", 0), ("-3 m", -3), ("−3 m", -3), ("200 ft", 60.96)]
)
def test_a_height_above_the_sea_may_be_below_it(text: str, metres: float) -> None:
    assert parse_height(text) == Height(metres)


@pytest.mark.parametrize("text", ["9000 m", "-600 m"])
def test_a_height_where_nothing_grows_is_refused(text: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_height(text)
    assert str(wrong.value) == f"‘{text}’ can't be right: flowers grow between -500 m and 6000 m."

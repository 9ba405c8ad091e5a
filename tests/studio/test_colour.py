"""Colours are read with their names and shares, and a slip in the number is pointed out."""

from decimal import Decimal

import pytest

from corymb.studio.values.colour import (
    ColourPart,
    NamedColour,
    parse_colour_part,
    parse_hex,
    parse_named_colour,
)


@pytest.mark.parametrize(
    ("text", "name", "hex_", "share", "printed"),
    [
        ("shell e8c2b4 80 %", "shell", "#e8c2b4", "0.8", "shell e8c2b4 80 %"),
        ("shell #E8C2B4 80%", "shell", "#e8c2b4", "0.8", "shell e8c2b4 80 %"),
        ("apricot heart c98472 12.5 %", "apricot heart", "#c98472", "0.125",
         "apricot heart c98472 12.5 %"),
        ("shell e8c2b4", "shell", "#e8c2b4", None, "shell e8c2b4"),
        ("e8c2b4 80 %", "", "#e8c2b4", "0.8", "e8c2b4 80 %"),
        ("123456", "", "#123456", None, "123456"),
        ("facade decade", "facade", "#decade", None, "facade decade"),
        ("rook's-wing black 1d1a22", "rook's-wing black", "#1d1a22", None,
         "rook's-wing black 1d1a22"),
    ],
)  # fmt: skip
def test_a_colour_of_a_stem_is_read(
    text: str, name: str, hex_: str, share: str | None, printed: str
) -> None:
    part = ColourPart(name, hex_, None if share is None else Decimal(share))
    assert parse_colour_part(text) == part
    assert str(part) == printed


def test_a_named_colour_is_read() -> None:
    colour = parse_named_colour("white  linen F4EFE6")
    assert colour == NamedColour("white linen", "#f4efe6")
    assert str(colour) == "white linen f4efe6"


def test_a_colour_can_be_given_its_share() -> None:
    part = parse_colour_part("shell e8c2b4").with_share(Decimal("0.2"))
    assert str(part) == "shell e8c2b4 20 %"


NO_NUMBER = (
    "{} has no colour number: write six of 0-9 and a-f after the name, "
    "as a colour picker gives them, like ‘shell e8c2b4’."
)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("shell", NO_NUMBER.format("‘shell’")),
        ("shell 80 %", NO_NUMBER.format("‘shell’")),
        ("", NO_NUMBER.format("The colour")),
        ("shell ecb 80 %", "‘ecb’ is a colour in short: write all six, ‘eeccbb’."),
        ("shell #ECB", "‘#ECB’ is a colour in short: write all six, ‘eeccbb’."),
        ("shell e8c2b4ff", "‘e8c2b4ff’ has two signs too many: write ‘e8c2b4’."),
        ("shell e8c2bg", "‘e8c2bg’ is not a colour: ‘g’ can't be in it. "
         "A colour is six of 0-9 and a-f, like ‘e8c2b4’."),
        ("shell e8c2b", "‘e8c2b’ has 5 signs; a colour has six, like ‘e8c2b4’."),
        ("shell e8c2b4 120 %", "‘120 %’ is not a share: it lies between 0 % and 100 %."),
        ("shell 80 % e8c2b4", "‘shell 80 % e8c2b4’ is out of order: first the name, then the "
         "colour's number, then the share, like ‘shell e8c2b4 80 %’."),
        ("e8c2b4 shell", NO_NUMBER.format("‘e8c2b4 shell’")),
    ],
)  # fmt: skip
def test_a_wrong_colour_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_colour_part(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize("text", ["5d7350", "#5D7350", " 5d7350 "])
def test_a_colour_number_is_read_with_and_without_its_sign(text: str) -> None:
    assert parse_hex(text) == "#5d7350"


@pytest.mark.parametrize("text", ["##5d735", "5d7350 x", "green"])
def test_a_wrong_colour_number_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="colour"):
        parse_hex(text)

"""Texts, names to refer by, switches, numbers and addresses are read with their traps caught."""

from decimal import Decimal

import pytest

from corymb.studio.values.text import (
    id_from,
    parse_count,
    parse_decimal,
    parse_email,
    parse_id,
    parse_number,
    parse_text,
    parse_whole,
    parse_yes_no,
    slug,
)
from corymb.studio.written import Written


def message_of(text: str, parse: object) -> str:
    """What is said of a wrong text."""
    assert callable(parse)
    with pytest.raises(ValueError) as wrong:
        parse(text)
    return str(wrong.value)


@pytest.mark.parametrize("word", ["no", "Yes", "ON", "off", "true", "False", "null", "~"])
def test_a_bare_switch_is_not_taken_for_text(word: str) -> None:
    message = f'A bare ‘{word}’ would be read as a switch, not as text: put it in quotes, "{word}".'
    assert message_of(Written(word), parse_text) == message
    assert parse_text(Written(word, quoted=True)) == word


@pytest.mark.parametrize("text", ["Dahlia", " Dahlia ", "12:30", "007", "Nobody", "none"])
def test_any_other_text_is_taken_without_the_space_around_it(text: str) -> None:
    read = parse_text(Written(text))
    assert read == text.strip()
    assert type(read) is str


@pytest.mark.parametrize("hidden", ["\0", "\x0b", "\x1b", "\x85", "\u2028", "\u202e", "\ufffe"])
def test_a_character_that_nobody_can_see_is_no_part_of_a_text(hidden: str) -> None:
    assert message_of(Written(f"a{hidden}b", quoted=True), parse_text) == (
        f"A character that can't be seen is written here (U+{ord(hidden):04X}): take it out."
    )


@pytest.mark.parametrize("text", ["", "  ", "\n"])
def test_an_empty_text_is_told(text: str) -> None:
    assert (
        message_of(Written(text, quoted=True), parse_text)
        == "There is nothing here: write some text, or take the line out."
    )


@pytest.mark.parametrize(
    ("text", "value"),
    [("yes", True), ("No", False), ("true", True), ("off", False), (" yes ", True)],
)
def test_yes_and_no_are_read(text: str, value: bool) -> None:
    assert parse_yes_no(text) is value


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("maybe", "‘maybe’ is neither yes nor no. Write yes or no."),
        ("yess", "‘yess’ is neither yes nor no. Did you mean ‘yes’? Write yes or no."),
        ("1", "‘1’ is neither yes nor no. Write yes or no."),
    ],
)
def test_what_is_neither_yes_nor_no_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_yes_no) == message


@pytest.mark.parametrize("text", ["dahlia-shell", "a", "cosmos-white-2", "2026-barn", "7-up"])
def test_an_id_is_small_letters_joined_by_hyphens(text: str) -> None:
    assert parse_id(text) == text


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("Dahlia Shell", "dahlia-shell"),
        ("dahlia_shell", "dahlia-shell"),
        ("dahlia--shell", "dahlia-shell"),
        ("-dahlia", "dahlia"),
        ("Rook’s wing", "rooks-wing"),
        ("Rosé", "rose"),
        ("Weiße Dahlie", "weisse-dahlie"),
        ("dahlia.shell", "dahlia-shell"),
    ],
)
def test_a_wrong_id_is_given_back_right(text: str, right: str) -> None:
    assert message_of(text, parse_id) == (
        f"‘{text}’ can't be referred to: use small letters and figures, "
        f"words joined by one hyphen. Write ‘{right}’."
    )
    assert slug(text) == right


@pytest.mark.parametrize("text", ["花", "!", "007"])
def test_where_no_id_can_be_made_of_it_none_is_proposed(text: str) -> None:
    assert message_of(text, parse_id).endswith(
        ("joined by one hyphen.", "joined by one hyphen. Letters are a to z here.")
    )


@pytest.mark.parametrize(
    ("name", "known_as"),
    [
        ("Barn supper", "barn-supper"),
        ("../../Evil", "evil"),
        ("n" * 300, "n" * 40),
        *((name, "link") for name in ("薔薇", "2027", "CON", "")),
    ],
)
def test_a_name_gives_an_id_that_a_file_can_have(name: str, known_as: str) -> None:
    assert id_from(name, "link") == known_as


def test_an_id_has_an_end() -> None:
    assert message_of("a" * 81, parse_id).endswith("is too long: use at most 80 letters.")
    assert "nothing here" in message_of("", parse_id)


@pytest.mark.parametrize(
    ("text", "value"), [("7", 7), ("0", 0), ("120", 120), (" 7 ", 7), ("7.0", 7)]
)
def test_a_whole_number_is_read(text: str, value: int) -> None:
    assert parse_whole(text) == value


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("007", "‘007’ starts with a nought: write 7."),
        ("7.5", "‘7.5’ is not whole: write 7 or 8."),
        ("seven", "Write ‘seven’ in figures: 7."),
        ("a dozen", "Write ‘a dozen’ in figures: 12."),
        ("-7", "‘-7’ is below nothing: write 0 or more."),
        ("7 stems", "‘7 stems’ is not a whole number: write it like ‘7’."),
        ("1,000", "‘1,000’ has a comma in it: write 1000 or 1.000."),
        ("1_000", "‘1_000’ is not a whole number: write it like ‘7’."),
        ("0x1f", "‘0x1f’ is not a whole number: write it like ‘7’."),
        ("1e3", "‘1e3’ is not a whole number: write it like ‘7’."),
        ("\u0667", "‘\u0667’ is not a whole number: write it like ‘7’."),
        ("9" * 5000, f"‘{'9' * 57}…’ is too long a number for a whole number."),
        ("", "‘’ is not a whole number: write it like ‘7’."),
    ],
)
def test_what_is_not_a_whole_number_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_whole) == message


def test_a_count_is_one_or_more() -> None:
    assert parse_count("1") == 1
    assert (
        message_of("0", parse_count)
        == "A count of 0 needs no line: write 1 or more, or take it out."
    )


@pytest.mark.parametrize(
    ("text", "value"), [("2.6", 2.6), ("-7.1", -7.1), ("−7.1", -7.1), ("12", 12.0), (".5", 0.5)]
)
def test_a_number_is_read(text: str, value: float) -> None:
    assert parse_number(text) == value
    assert parse_decimal(text) == Decimal(str(value))


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("2,6", "‘2,6’ has a comma in it: write 2.6."),
        ("nan", "‘nan’ is not a number: write it like ‘2.6’."),
        ("inf", "‘inf’ is not a number: write it like ‘2.6’."),
        ("½", "Write ‘½’ in figures: 0.5."),
    ],
)
def test_what_is_not_a_number_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_number) == message


@pytest.mark.parametrize("name", ["con", "nul", "aux", "prn", "com1", "lpt9"])
def test_what_no_file_can_be_called_on_windows_is_no_id(name: str) -> None:
    assert message_of(name, parse_id) == (
        f"‘{name}’ can't be referred to: no file can have this name on Windows. "
        f"Say more, like ‘{name}-1’."
    )
    assert parse_id(f"{name}-1") == f"{name}-1"


@pytest.mark.parametrize(
    "text", ["flowers@teaselandrook.example", "a.b+c@x.example", "ü@bücher.example"]
)
def test_an_email_address_is_taken(text: str) -> None:
    assert parse_email(text) == text


@pytest.mark.parametrize(
    "text",
    [
        *("flowers", "a@b", "a b@c.example", "a@@b.example", "<a@b.example>"),
        *("a?cc=b@c.example", "a@b.example?bcc=c", "a%0d%0aBcc@b.example", "a#b@c.example"),
    ],
)
def test_what_is_not_an_email_address_is_told(text: str) -> None:
    assert message_of(text, parse_email) == (
        f"‘{text}’ is not an e-mail address: write it like ‘name@garden.example’."
    )

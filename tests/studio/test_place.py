"""Places, time zones, currencies and languages are read, and their slips answered."""

import pytest

from corymb.studio.values.place import (
    parse_currency,
    parse_language,
    parse_latitude,
    parse_longitude,
    parse_time_zone,
)


def message_of(text: str, parse: object) -> str:
    """What is said of a wrong text."""
    assert callable(parse)
    with pytest.raises(ValueError) as wrong:
        parse(text)
    return str(wrong.value)


@pytest.mark.parametrize(("text", "degrees"), [("52.3", 52.3), ("-33", -33.0), ("90", 90.0)])
def test_a_latitude_is_read(text: str, degrees: float) -> None:
    assert parse_latitude(text) == degrees


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("91", "‘91’ is not a latitude: it lies between -90 and 90."),
        ("52.3 N", "‘52.3 N’: write the latitude as a bare number, ‘52.3’; "
         "north is above 0, south below."),
        ("33 S", "‘33 S’: write the latitude as a bare number, ‘-33’; "
         "north is above 0, south below."),
        ("52.3°", "‘52.3°’: write the latitude as a bare number, ‘52.3’; "
         "north is above 0, south below."),
        ("52,3", "‘52,3’ has a comma in it: write 52.3."),
        ("north", "‘north’ is not a latitude in degrees: write it like ‘52.3’."),
    ],
)  # fmt: skip
def test_a_wrong_latitude_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_latitude) == message


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("181", "‘181’ is not a longitude: it lies between -180 and 180."),
        ("7.1 W", "‘7.1 W’: write the longitude as a bare number, ‘-7.1’; "
         "east is above 0, west below."),
    ],
)  # fmt: skip
def test_a_wrong_longitude_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_longitude) == message


@pytest.mark.parametrize("zone", ["Europe/Dublin", "UTC", "America/Argentina/Buenos_Aires"])
def test_a_time_zone_is_read(zone: str) -> None:
    assert parse_time_zone(zone) == zone


@pytest.mark.parametrize(
    ("text", "guess"),
    [
        ("Dublin", " Did you mean ‘Europe/Dublin’?"),
        ("Europe/Dubiln", " Did you mean ‘Europe/Dublin’?"),
        ("Europe/Dunmallow", ""),
        ("GMT+1:00", ""),
    ],
)
def test_a_wrong_time_zone_is_told(text: str, guess: str) -> None:
    told = f"‘{text}’ is not a time zone: write continent and city, like ‘Europe/Dublin’.{guess}"
    assert message_of(text, parse_time_zone) == told


@pytest.mark.parametrize(("text", "code"), [("EUR", "EUR"), ("gbp", "GBP"), (" USD ", "USD")])
def test_a_currency_is_read(text: str, code: str) -> None:
    assert parse_currency(text) == code


@pytest.mark.parametrize(
    ("text", "guess"),
    [("€", " Did you mean ‘EUR’?"), ("euros", " Did you mean ‘EUR’?"), ("XQQ", "")],
)
def test_a_wrong_currency_is_told(text: str, guess: str) -> None:
    told = f"‘{text}’ is not a currency: write its three letters, like ‘EUR’ or ‘GBP’.{guess}"
    assert message_of(text, parse_currency) == told


@pytest.mark.parametrize(("text", "tag"), [("en-IE", "en-IE"), ("en_ie", "en-IE"), ("fr", "fr")])
def test_a_language_is_read(text: str, tag: str) -> None:
    assert parse_language(text) == tag


@pytest.mark.parametrize("text", ["English", "xx-YY", "", "en-IE-x-y-z"])
def test_a_wrong_language_is_told(text: str) -> None:
    assert message_of(text, parse_language).startswith(
        f"‘{text}’ is not a language: write it like ‘en-IE’."
    )

"""Shares, scales and money are exact, and a forgotten sign is asked for."""

from decimal import Decimal

import pytest

from corymb.studio.values.money import PriceGuide, parse_money, parse_price_guide, print_money
from corymb.studio.values.share import Scale, Share, parse_scale, parse_share


@pytest.mark.parametrize(
    ("text", "fraction", "printed"),
    [
        ("85 %", "0.85", "85 %"),
        ("85%", "0.85", "85 %"),
        ("13.5 percent", "0.135", "13.5 %"),
        ("8 per cent", "0.08", "8 %"),
        ("0.85", "0.85", "85 %"),
        ("0", "0", "0 %"),
        ("100 %", "1", "100 %"),
        ("0.1 %", "0.001", "0.1 %"),
    ],
)
def test_a_share_is_read_exactly(text: str, fraction: str, printed: str) -> None:
    assert parse_share(text) == Share(Decimal(fraction))
    assert str(Share(Decimal(fraction))) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("85", "‘85’ has no sign of percent: write ‘85 %’."),
        ("1", "‘1’ has no sign of percent: write ‘1 %’ or ‘100 %’."),
        ("120 %", "‘120 %’ is not a share: it lies between 0 % and 100 %."),
        ("-5 %", "‘-5 %’ is not a share: it lies between 0 % and 100 %."),
        ("13,5 %", "‘13,5’ has a comma in it: write 13.5."),
        ("half", "Write ‘half’ in figures: 0.5."),
        ("most", "‘most’ is not a share: write it like ‘85 %’."),
        ("%", "‘’ is not the number of a share: write it like ‘85’."),
    ],
)
def test_a_wrong_share_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_share(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "factor", "printed"),
    [
        ("120 %", "1.2", "120 %"),
        ("1.2", "1.2", "120 %"),
        ("2", "2", "200 %"),
        ("0.6", "0.6", "60 %"),
        ("20", "20", "2000 %"),
    ],
)
def test_a_scale_is_read_exactly(text: str, factor: str, printed: str) -> None:
    assert parse_scale(text) == Scale(Decimal(factor))
    assert str(Scale(Decimal(factor))) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("120", "‘120’ is more than 20 times as much: write ‘120 %’."),
        ("3000 %", "‘3000 %’ is more than 20 times as much."),
        ("0 %", "‘0 %’ would leave nothing: a scale is above 0, like ‘120 %’."),
        ("-1", "‘-1’ would leave nothing: a scale is above 0, like ‘120 %’."),
        ("double", "‘double’ is not a scale: write it like ‘120 %’."),
    ],
)
def test_a_wrong_scale_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_scale(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "amount", "printed"),
    [
        ("1.20", "1.20", "1.20"),
        ("1.2", "1.2", "1.20"),
        ("0.125", "0.125", "0.125"),
        ("28", "28", "28"),
        ("0", "0", "0"),
        ("100", "100", "100"),
        ("€1.20", "1.20", "1.20"),
        ("€ 1.20", "1.20", "1.20"),
        ("1.20 €", "1.20", "1.20"),
        ("£1.20", "1.20", "1.20"),
        ("1.20 EUR", "1.20", "1.20"),
        ("EUR 1.20", "1.20", "1.20"),
    ],
)
def test_money_is_read_exactly(text: str, amount: str, printed: str) -> None:
    assert parse_money(text) == Decimal(amount)
    assert print_money(Decimal(amount)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("1,20", "‘1,20’ has a comma in it: write 1.20."),
        ("€1,20", "‘€1,20’ has a comma in it: write 1.20."),
        ("1,200", "‘1,200’ has a comma in it: write 1200 or 1.200."),
        ("-1.20", "‘-1.20’ is below nothing: money here is never negative."),
        ("−1.20", "‘−1.20’ is below nothing: money here is never negative."),
        ("cheap", "‘cheap’ is not an amount of money: write it like ‘1.20’."),
        ("1.23456", "‘1.23456’ is not an amount of money: write it like ‘1.20’."),
        ("", "‘’ is not an amount of money: write it like ‘1.20’."),
        ("€", "‘€’ is not an amount of money: write it like ‘1.20’."),
        ("nan", "‘nan’ is not an amount of money: write it like ‘1.20’."),
    ],
)
def test_wrong_money_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_money(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "amount", "from_", "printed"),
    [
        ("28", "28", False, "28"),
        ("from 165", "165", True, "from 165"),
        ("From €28.50", "28.50", True, "from 28.50"),
    ],
)
def test_a_price_guide_may_say_from(text: str, amount: str, from_: bool, printed: str) -> None:
    assert parse_price_guide(text) == PriceGuide(Decimal(amount), from_)
    assert str(PriceGuide(Decimal(amount), from_)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("28-35", "‘28-35’ is a range: write where it starts, like ‘from 28’."),
        ("28 to 35", "‘28 to 35’ is a range: write where it starts, like ‘from 28’."),
        ("from", "‘’ is not an amount of money: write it like ‘1.20’."),
        ("about 28", "‘about 28’ is not an amount of money: write it like ‘1.20’."),
    ],
)
def test_a_wrong_price_guide_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_price_guide(text)
    assert str(wrong.value) == message

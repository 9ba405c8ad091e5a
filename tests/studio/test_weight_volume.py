"""Weights and amounts of water are read with their units."""

import pytest

from corymb.studio.values.volume import Volume, parse_volume
from corymb.studio.values.weight import Weight, parse_weight


@pytest.mark.parametrize(
    ("text", "grams", "printed"),
    [
        ("25 g", 25, "25 g"),
        ("25g", 25, "25 g"),
        ("0.9 kg", 900, "900 g"),
        ("1.5 kilos", 1500, "1.5 kg"),
        ("1 kg", 1000, "1 kg"),
        ("2 oz", 56.699, "56.699 g"),
        ("1 lb", 453.5924, "453.5924 g"),
        ("2 pounds", 907.1847, "907.1847 g"),
    ],
)
def test_a_weight_is_read_in_grams(text: str, grams: float, printed: str) -> None:
    assert parse_weight(text) == Weight(grams)
    assert str(Weight(grams)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("25", "‘25’ has no unit: write for instance ‘25 g’. The units are g, kg, oz or lb."),
        ("25 cm", "‘cm’ in ‘25 cm’ is not a unit here. The units are g, kg, oz or lb."),
        ("heavy", "‘heavy’ is not a weight: write it like ‘25 g’."),
        ("0 g", "‘0 g’ is no weight at all: write it like ‘25 g’."),
        ("2000 kg", "‘2000 kg’ is more than a tonne: is the unit right?"),
    ],
)
def test_a_wrong_weight_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_weight(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "litres", "printed"),
    [
        ("5 L", 5, "5 L"),
        ("5 l", 5, "5 L"),
        ("0.5 L", 0.5, "500 ml"),
        ("500 ml", 0.5, "500 ml"),
        ("75 cl", 0.75, "750 ml"),
        ("1.5 litres", 1.5, "1.5 L"),
    ],
)
def test_water_is_read_in_litres(text: str, litres: float, printed: str) -> None:
    assert parse_volume(text) == Volume(litres)
    assert str(Volume(litres)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("5", "‘5’ has no unit: write for instance ‘5 L’. The units are ml, cl or L."),
        ("1 pint", "‘pint’ in ‘1 pint’ is not a unit here. The units are ml, cl or L."),
        ("0 L", "‘0 L’ is no water at all: write it like ‘5 L’."),
        ("20000 L", "‘20000 L’ is more than ten thousand litres: is the unit right?"),
    ],
)
def test_a_wrong_amount_of_water_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_volume(text)
    assert str(wrong.value) == message

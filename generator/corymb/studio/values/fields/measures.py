"""How long, how heavy, how much water, how much time?"""

from typing import Annotated

from corymb.studio.values import length
from corymb.studio.values import time as times
from corymb.studio.values import volume as volumes
from corymb.studio.values import weight as weights
from corymb.studio.values.friendly import Friendly

_NUMBER = r"[0-9]+(\.[0-9]+)?"
_UNIT = r" ?[A-Za-z\"]+\.?"

LengthField = Annotated[
    length.Length,
    Friendly(
        length.parse_length,
        (length.Length,),
        "A length with its unit: mm, cm, m, in or ft.",
        ("9 cm", "90 mm", "1.2 m", "24 in"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
PieceLengthField = Annotated[
    length.Length,
    Friendly(
        length.parse_piece_length,
        (length.Length,),
        "How wide or high a piece is, with its unit: mm, cm, m, in or ft.",
        ("22 cm", "1.2 m", "9 in"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
LengthRangeField = Annotated[
    length.LengthRange,
    Friendly(
        length.parse_length_range,
        (length.LengthRange,),
        "A length, or the shortest and the longest with a dash between.",
        ("60-90 cm", "75 cm"),
        pattern=rf"^\s*{_NUMBER}({_UNIT})?(\s*[-–—]\s*{_NUMBER}{_UNIT}| to {_NUMBER}{_UNIT})?\s*$",
    ),
]
FloorField = Annotated[
    length.Floor,
    Friendly(
        length.parse_floor,
        (length.Floor,),
        "A load floor: its two sides with x between.",
        ("170 x 120 cm",),
    ),
]
HeightField = Annotated[
    length.Height,
    Friendly(
        length.parse_height,
        (length.Height,),
        "How high a place lies above the sea.",
        ("60 m", "200 ft"),
    ),
]
WeightField = Annotated[
    weights.Weight,
    Friendly(
        weights.parse_weight,
        (weights.Weight,),
        "A weight with its unit: g, kg, oz or lb.",
        ("25 g", "0.9 kg"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
VolumeField = Annotated[
    volumes.Volume,
    Friendly(
        volumes.parse_volume,
        (volumes.Volume,),
        "An amount of water: ml, cl or L.",
        ("5 L", "500 ml"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
DurationField = Annotated[
    times.Duration,
    Friendly(
        times.parse_duration,
        (times.Duration,),
        "A length of time in minutes and hours.",
        ("45 min", "1 h 30 min", "1.5 hours"),
    ),
]
DayRangeField = Annotated[
    times.DayRange,
    Friendly(
        times.parse_day_range,
        (times.DayRange,),
        "Days or weeks: one number, or the fewest and the most.",
        ("5-7 days", "1 week"),
    ),
]

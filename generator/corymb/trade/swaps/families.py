"""What is a stem in an arrangement: flower, grass or leaf, bare wood, fruit, or what hangs?

None does the work of another: a grass has no face, a trail holds no line, a seed head is no
bloom, and wood stays where grass bends. Common practice, no source.
"""

from __future__ import annotations

from corymb.language import pgettext
from corymb.studio.models import Stem

FLOWERS, GRASSES_AND_LEAVES, BARE_WOOD = "flowers", "grasses and leaves", "bare wood"
FRUIT, HANGING = "fruit", "hanging"

FAMILIES: dict[str, tuple[str, ...]] = {
    FLOWERS: (
        "rosette",
        "cup",
        "iris",
        "trumpet",
        "daisy",
        "umbel",
        "globe",
        "spike",
        "cluster",
        "bell",
    ),
    GRASSES_AND_LEAVES: ("plume", "blade", "leaf-spray", "needle-spray"),
    BARE_WOOD: ("twig",),
    FRUIT: ("berry", "pod"),
    HANGING: ("tassel", "trail"),
}
"""The forms of each."""

DRINKS_HOURS = 4
"""A plume that stands in water so long before it is used is a flower, not a grass."""

_OF_FORM = {form: family for family, forms in FAMILIES.items() for form in forms}


def family_name(family: str) -> str:
    """What a family is called, to stand in a sentence."""
    names = {
        FLOWERS: pgettext("family", "flowers"),
        GRASSES_AND_LEAVES: pgettext("family", "grasses and leaves"),
        BARE_WOOD: pgettext("family", "bare wood"),
        FRUIT: pgettext("family", "fruit"),
        HANGING: pgettext("family", "hanging"),
    }
    return names[family]


def family_of(stem: Stem) -> str:
    """By its form; and a plume that is no grass, as lilac or lady's mantle, is a flower.

    No grass is ever the focal, nor has to drink for long before it is used.
    """
    if stem.form == "plume" and (stem.use == "focal" or stem.conditioning.hours >= DRINKS_HOURS):
        return FLOWERS
    return _OF_FORM[stem.form]

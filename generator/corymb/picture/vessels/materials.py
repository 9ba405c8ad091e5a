"""What is a vessel made of? Read from the name the recipe gives it: a *copper trough*."""

from corymb.picture.colour import lightness, shade

# Tones of the house for materials a name may mention; common practice, no source.
MATERIALS = {
    "brass": "#b89a56",
    "black": "#3b3836",
    "blue": "#6f8794",
    "china": "#ebe6dc",
    "clay": "#a9745a",
    "copper": "#b0704a",
    "cotton": "#e6dcc8",
    "cream": "#e6dcc6",
    "earthenware": "#a9714f",
    "elm": "#8f7253",
    "enamel": "#dfe0d8",
    "glass": "#c3d2cc",
    "gold": "#b89a56",
    "green": "#7d8f78",
    "grey": "#8d918f",
    "iron": "#4d4c4a",
    "lead": "#7d8486",
    "linen": "#cdbfa4",
    "moss": "#6f7a48",
    "oak": "#8f7350",
    "pewter": "#8a9091",
    "silk": "#e3d0b8",
    "silver": "#b8bcbc",
    "slate": "#5c6468",
    "stone": "#b3aa9a",
    "stoneware": "#a39480",
    "teacup": "#ebe6dc",
    "terracotta": "#b9775a",
    "ticking": "#d6d2c6",
    "velvet": "#6d4450",
    "white": "#e9e3d8",
    "willow": "#8b6f4f",
    "wood": "#8a6a4c",
    "wool": "#a79c89",
    "zinc": "#98a0a0",
}
APART = 0.06  # the least difference of lightness from the wall behind
STEP = 0.08


def named(name: str) -> set[str]:
    """The words of a vessel's name."""
    return set(name.lower().replace("-", " ").split())


def material(name: str, usual: str, background: str) -> str:
    """The tone named in the vessel's name, else the usual one; never lost against the wall."""
    words = name.lower().replace("-", " ").split()
    tone = next((MATERIALS[word] for word in words if word in MATERIALS), usual)
    if abs(lightness(tone) - lightness(background)) >= APART:
        return tone
    return shade(tone, -STEP if lightness(background) > 0.4 else STEP)

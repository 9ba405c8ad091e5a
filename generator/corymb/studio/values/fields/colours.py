"""Which colour?"""

from typing import Annotated

from corymb.studio.values import colour
from corymb.studio.values.friendly import Friendly

ColourPartField = Annotated[
    colour.ColourPart,
    Friendly(
        colour.parse_colour_part,
        (colour.ColourPart,),
        "A colour of a stem: name, six-figure number, share. Shares add up to 100 %.",
        ("shell e8c2b4 80 %", "apricot heart c98472"),
    ),
]
NamedColourField = Annotated[
    colour.NamedColour,
    Friendly(
        colour.parse_named_colour,
        (colour.NamedColour,),
        "A colour: name and six-figure number.",
        ("white linen f4efe6",),
    ),
]
HexField = Annotated[
    str,
    Friendly(
        colour.parse_hex,
        (str,),
        "A colour's six-figure number.",
        ("5d7350",),
        ("string", "number"),
        pattern="^#?[0-9a-fA-F]{6}$",
    ),
]

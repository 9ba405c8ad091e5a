"""Words, names to refer by, yes and no, an address."""

from typing import Annotated

from corymb.studio.values import text as texts
from corymb.studio.values.friendly import Friendly

TextField = Annotated[
    str,
    Friendly(
        texts.parse_text, (str,), "Text.", ("Words",), ("string", "number"), longest=1_000_000
    ),
]
IdField = Annotated[
    str,
    Friendly(
        texts.parse_id,
        (str,),
        "A name to refer by: small letters and figures, words joined by hyphens.",
        ("dahlia-shell",),
        pattern="^[a-z0-9]+(-[a-z0-9]+)*$",
    ),
]
YesNoField = Annotated[
    bool,
    Friendly(
        texts.parse_yes_no,
        (bool,),
        "yes or no.",
        ("yes", "no"),
        ("boolean", "string"),
        write=texts.print_yes_no,
        limits={"enum": ["yes", "no", True, False]},
    ),
]
EmailField = Annotated[
    str,
    Friendly(texts.parse_email, (str,), "An e-mail address.", ("flowers@garden.example",)),
]

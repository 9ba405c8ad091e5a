"""What does a client's mail about an arrangement begin with?

The page it is about, and room for what the studio has to know before it can answer.
"""

from __future__ import annotations

from decimal import Decimal
from urllib.parse import quote

from corymb.studio.models import Recipe, StudioFile, Variant
from corymb.studio.saying import or_list
from corymb.trade.order_lines import REGULAR

NEW_LINE = "\r\n"  # RFC 6068, section 5: line breaks in a body are %0D%0A


def asking(house: StudioFile, recipe: Recipe, variant: Variant | None, on_the_web: str) -> str:
    """A mailto: address with the subject and the first lines of the mail filled in."""
    name = f"{recipe.name}, {variant.name}" if variant else recipe.name
    lines = [name, *filter(None, [on_the_web]), "", "Date:", _size(recipe), "How many:", "", ""]
    subject, body = quote(f"About {name}", safe=""), quote(NEW_LINE.join(lines), safe="")
    return f"mailto:{house.contact.email}?subject={subject}&body={body}"


def _size(recipe: Recipe) -> str:
    """The question after the size, with those there are."""
    factors = {REGULAR: Decimal(1), **{name: size.factor for name, size in recipe.sizes.items()}}
    names = [name.replace("-", " ") for name in sorted(factors, key=factors.__getitem__)]
    return f"Size ({or_list(names)}):" if len(names) > 1 else "Size:"

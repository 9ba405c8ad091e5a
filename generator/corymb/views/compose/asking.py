"""What does a client's mail about an arrangement begin with?

The page it is about, and room for what the studio has to know before it can answer.
"""

from __future__ import annotations

from decimal import Decimal
from urllib.parse import quote

from corymb.language import gettext as _
from corymb.language.locales import or_list
from corymb.studio.models import Recipe, StudioFile, Variant
from corymb.trade.order_lines import REGULAR
from corymb.views.compose.trade_words import size_words

NEW_LINE = "\r\n"  # RFC 6068, section 5: line breaks in a body are %0D%0A


def asking(house: StudioFile, recipe: Recipe, variant: Variant | None, on_the_web: str) -> str:
    """A mailto: address with the subject and the first lines of the mail filled in."""
    name = f"{recipe.name}, {variant.name}" if variant else recipe.name
    asked = (_("Date:"), _size(recipe), _("How many:"))
    lines = [name, *filter(None, [on_the_web]), "", *asked, "", ""]
    about = _("About {name}").format(name=name)
    subject, body = quote(on_one_line(about), safe=""), quote(NEW_LINE.join(lines), safe="")
    return f"mailto:{house.contact.email}?subject={subject}&body={body}"


def on_one_line(text: str) -> str:
    """Words for a mail's subject: with a line end in it some programs would begin another head."""
    return " ".join(text.split())


def _size(recipe: Recipe) -> str:
    """The question after the size, with those there are."""
    factors = {REGULAR: Decimal(1), **{name: size.factor for name, size in recipe.sizes.items()}}
    names = [size_words(name) for name in sorted(factors, key=factors.__getitem__)]
    if len(names) == 1:
        return _("Size:")
    return _("Size ({sizes}):").format(sizes=or_list(names))

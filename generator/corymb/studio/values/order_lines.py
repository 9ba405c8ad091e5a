"""How are an order's lines and a style link's looks written short?"""

from dataclasses import dataclass

from corymb.studio.suggest import did_you_mean, quoted
from corymb.studio.values.pieces import comma, count_and_id, pieces, variant_and_size
from corymb.studio.values.text import parse_id
from corymb.studio.words import FROM_THE_MIX, MAKINGS


@dataclass(frozen=True)
class OrderLineText:
    """`6 hedgerow-jar, later, small, in buckets`: so many of a recipe.

    `words` are its variant and its size, in the order written: which is which depends on the
    recipe, which is not known here.
    """

    quantity: int
    recipe: str
    words: tuple[str, ...] = ()
    in_buckets: bool = False
    from_the_mix: bool = False

    def __str__(self) -> str:
        buckets = MAKINGS[1] if self.in_buckets else None
        mix = FROM_THE_MIX if self.from_the_mix else None
        return comma(f"{self.quantity} {self.recipe}", *self.words, buckets, mix)


@dataclass(frozen=True)
class LinkItemText:
    """`hedgerow-jar, later, small`: a look to show; `words` as in an order line."""

    recipe: str
    words: tuple[str, ...] = ()

    def __str__(self) -> str:
        return comma(self.recipe, *self.words)


def parse_order_line(text: str) -> OrderLineText:
    """Reads `6 hedgerow-jar, later, small, in buckets, from the mix`. Raises ValueError."""
    head, *words = pieces(text)
    quantity, recipe = count_and_id(head, "6 hedgerow-jar")
    flags = [w.casefold() for w in words if w.casefold() in (*MAKINGS, FROM_THE_MIX)]
    if all(making in flags for making in MAKINGS):
        raise ValueError(f"{quoted(text)} is both made up and in buckets: write it as two lines.")
    for word in words:
        meant = did_you_mean(word, (*MAKINGS, FROM_THE_MIX))
        if " " in word and word.casefold() not in flags and meant:
            raise ValueError(f"{quoted(word)} is not known here.{meant}")
    rest = variant_and_size([w for w in words if w.casefold() not in flags], text)
    return OrderLineText(quantity, recipe, rest, MAKINGS[1] in flags, FROM_THE_MIX in flags)


def parse_link_item(text: str) -> LinkItemText:
    """Reads `hedgerow-jar, later, small`. Raises ValueError."""
    head, *words = pieces(text)
    return LinkItemText(parse_id(head), variant_and_size(words, text))

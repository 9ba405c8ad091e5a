"""How many stems of one kind go into a piece, and how many heads are on a stem?"""

from corymb.studio.values.text import parse_count

MOST_STEMS = 500
"""More of one kind is several pieces, or a slip of the hand. House value, no source."""

MOST_HEADS = 200
"""More small heads than this are one head: a plume, an umbel. House value, no source."""


def parse_stems(text: str) -> int:
    """Reads how many of a stem go into a piece, 1 to 500. Raises ValueError."""
    return few_stems(parse_count(text))


def few_stems(stems: int) -> int:
    """The same number, where one piece can hold it. Raises ValueError."""
    if stems > MOST_STEMS:
        raise ValueError(
            f"A count of {stems} is more than this can be: at most {MOST_STEMS} of one stem go "
            "into a piece. Is a figure doubled, or are these several pieces?"
        )
    return stems


def parse_heads(text: str) -> int:
    """Reads how many heads one cut stem bears, 1 to 200. Raises ValueError."""
    return few_heads(parse_count(text))


def few_heads(heads: int) -> int:
    """The same number, where a stem can bear it. Raises ValueError."""
    if heads > MOST_HEADS:
        raise ValueError(
            f"A count of {heads} is more than this can be: at most {MOST_HEADS} heads are told "
            "apart on a stem. Write 1 where they make one plume or umbel."
        )
    return heads

"""From what to what? The ways people write a range: `60-90`, `60 – 90`, `60 to 90`."""

import re

_DASHES = r"\-\u2010-\u2015\u2212"
"""The hyphen of the keyboard, the printers' hyphens and dashes, and the minus sign."""

_BETWEEN = re.compile(rf"\s*[{_DASHES}]+\s*|\s+(?:to|until|till|through)\s+", re.IGNORECASE)


def split_range(text: str) -> tuple[str, str] | None:
    """The two ends of a range, or None when the text has no dash and no `to` in it.

    A dash at the very start is a minus sign. Raises ValueError: more than two ends, or one missing.
    """
    flat = " ".join(text.split())
    head, body = (flat[:1], flat[1:]) if re.match(f"[{_DASHES}]", flat) else ("", flat)
    ends = [end.strip() for end in _BETWEEN.split(body)]
    if len(ends) == 1:
        return None
    if len(ends) > 2 or not all(ends):
        raise ValueError(f"‘{flat}’ should have two ends, one dash between them.")
    return head + ends[0], ends[1]

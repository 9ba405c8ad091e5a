"""What does a new style link's file look like, and what is it called?"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from textwrap import wrap

from corymb.studio.scalars import as_scalar
from corymb.studio.values.text import id_from

STANDS = timedelta(weeks=3)
"""How long a page stays after its day, unless someone says otherwise: our own choice."""
WIDTH = 92


@dataclass(frozen=True)
class NewLink:
    """The answers that a style link is written from."""

    title: str
    client: str
    code: str
    day: date
    expires: date
    show: Sequence[str]
    note: str = ""


def link_text(new: NewLink, modeline: str) -> str:
    """A link's file."""
    client = f"for: {as_scalar(new.client)}            # private\n" if new.client else ""
    show = "".join(f"  - {line}\n" for line in new.show)
    return f"""{modeline}title: {as_scalar(new.title)}
{client}# The page's address ends in this. Whoever has it can open the page.
code: {new.code}
date: {new.day.isoformat()}
expires: {new.expires.isoformat()}           # the last day on which the page stands
# The light they are seen in, where you know it:
# hours: 17:30-23:00
# where: {{place: the old barn, setting: indoors, light: candle}}
show:                         # RECIPE, VARIANT, SIZE
{show}{_note(new.note)}"""


def _note(note: str) -> str:
    paragraphs = [" ".join(part.split()) for part in note.split("\n\n") if part.strip()]
    if not paragraphs:
        return "# note: Words for the client, above the looks.\n"
    if len(paragraphs) == 1 and len(paragraphs[0]) <= WIDTH - len("note: "):
        return f"note: {as_scalar(paragraphs[0])}\n"
    # Folded: lines of a paragraph become one, and an empty line between two stays.
    lines = [wrap(part, WIDTH, break_long_words=False) for part in paragraphs]
    body = "\n\n".join("\n".join(f"  {line}" for line in part) for part in lines)
    return f"note: >-\n{body}\n"


def free_id(name: str, taken: Collection[str]) -> str:
    """An id after a name that nothing else has: `barn-supper`, or `barn-supper-2`."""
    known_as = id_from(name, "link")
    if known_as not in taken:
        return known_as
    number = 2
    while f"{known_as}-{number}" in taken:
        number += 1
    return f"{known_as}-{number}"

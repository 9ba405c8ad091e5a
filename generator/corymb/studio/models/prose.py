"""Pages and lessons written in Markdown: what stands between the two lines of dashes on top."""

from __future__ import annotations

from corymb.studio.models.base import NamedModel
from corymb.studio.values.fields import DifficultyField, IdField, ReaderField, TextField, WholeField


class Page(NamedModel):
    """The heading of a page."""

    title: TextField
    """The page's heading."""
    summary: TextField
    """One sentence, for lists and search engines."""
    menu: TextField = ""
    """A short word for the menu; left out, the page isn't in it."""
    order: WholeField = 100
    """The place in the menu, lowest first."""
    for_: ReaderField = "everyone"
    """Whom it is for; what is for staff isn't in the client site at all."""


class Technique(NamedModel):
    """The heading of a lesson."""

    title: TextField
    """The lesson's heading."""
    summary: TextField
    """One sentence: what one can do after it."""
    minutes: WholeField
    """How long the lesson takes."""
    level: DifficultyField
    """How much practice it asks for."""
    needs: list[IdField] = []
    """Lessons to have had before, by id."""
    careful: list[TextField] = []
    """What can hurt, and how not to be hurt."""
    order: WholeField = 100
    """The place among lessons that could follow one another either way."""
    for_: ReaderField = "staff"
    """Whom it is for; lessons are for staff unless you say `everyone`."""

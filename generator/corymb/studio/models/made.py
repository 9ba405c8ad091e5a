"""A record of something made: which recipe, when, its photos, and who may see them."""

from __future__ import annotations

from pydantic import Field

from corymb.studio.models.base import NamedModel
from corymb.studio.models.photo import Photo
from corymb.studio.values.fields import DateField, IdField, TextField


class MadeWork(NamedModel):
    """One piece of made work. Client and notes are private."""

    title: TextField
    """What it was: shown above its photos."""
    recipe: IdField
    """The recipe it was made from, by id."""
    variant: IdField | None = None
    """The recipe's variant, where it was one."""
    date: DateField
    """The day it was made for."""
    about: TextField = ""
    """What was made, for everyone who may see it."""
    photos: list[Photo] = Field(min_length=1)
    """Its photos. A piece with no photo that clients may see isn't in the client site."""
    client: TextField = ""
    """Private: for whom it was made."""
    notes: TextField = ""
    """Private: what you want to remember."""

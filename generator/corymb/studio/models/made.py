"""A record of something made: which recipe, when, its photos, and who may see them."""

from __future__ import annotations

from pydantic import Field

from corymb.studio.models.base import FileModel, NamedModel
from corymb.studio.models.photo import Photo
from corymb.studio.values.fields import DateField, IdField, TextField


class MadeWork(NamedModel):
    """One piece of made work. Client and notes are private."""

    title: TextField
    recipe: IdField
    variant: IdField | None = None
    date: DateField
    about: TextField = ""
    photos: list[Photo] = Field(min_length=1)
    client: TextField = ""
    notes: TextField = ""

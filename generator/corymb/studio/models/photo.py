"""A photo that the studio shows: its file, what it shows, who made it, and who may see it."""

from __future__ import annotations

from corymb.studio.models.base import FileModel
from corymb.studio.models.choices import ConsentField
from corymb.studio.values.fields import TextField


class Photo(FileModel):
    """A photo by its path inside the studio's folder. Alt text and credit are demanded."""

    file: TextField
    alt: TextField
    credit: TextField
    may_be_shown_to: ConsentField

"""A photo that the studio shows: its file, what it shows, who made it, and who may see it."""

from __future__ import annotations

from corymb.studio.models.base import FileModel
from corymb.studio.values.fields import ConsentField, TextField


class Photo(FileModel):
    """A photo by its path inside the studio's folder. Alt text and credit are demanded."""

    file: TextField
    """The photo's path inside the studio's folder: `photos/hedgerow-jar.jpg`. Any size, straight
    from the camera."""
    alt: TextField
    """What the photo shows, for those who can't see it."""
    credit: TextField
    """Who made the photo."""
    may_be_shown_to: ConsentField
    """Who may see it: the consent you were given."""

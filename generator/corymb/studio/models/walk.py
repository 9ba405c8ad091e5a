"""The weekly count of what stands in the beds. The week is the file's name: `2026-W38.yml`."""

from __future__ import annotations

from corymb.studio.models.base import FileModel
from corymb.studio.values.fields import IdField, TextField, WholeField


class Walk(FileModel):
    """Stems standing and fit to cut, by stem."""

    counts: dict[IdField, WholeField]
    """Stems fit to cut this week, by stem id."""
    notes: TextField = ""
    """Private: what you saw on the walk."""

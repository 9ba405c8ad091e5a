"""First and last cut dates of a year. The year is the file's name: `2025.yml`."""

from __future__ import annotations

from corymb.studio.models.base import FileModel
from corymb.studio.values.fields import IdField, SeasonField, TextField


class CutLog(FileModel):
    """From the first cut to the last, by stem; two flushes are set apart by a comma."""

    cuts: dict[IdField, SeasonField]
    """From the first cut to the last, by stem id."""
    notes: TextField = ""
    """Private: what the year was like."""

"""Pages and lessons written in Markdown: what stands between the two lines of dashes on top."""

from __future__ import annotations

from corymb.studio.models.base import FileModel, NamedModel
from corymb.studio.models.choices import DifficultyField, ReaderField
from corymb.studio.values.fields import IdField, TextField, WholeField


class Page(NamedModel):
    """The heading of a page."""

    title: TextField
    summary: TextField
    menu: TextField = ""  # not in the menu
    order: WholeField = 100
    for_: ReaderField = "everyone"


class Technique(NamedModel):
    """The heading of a lesson."""

    title: TextField
    summary: TextField
    minutes: WholeField
    level: DifficultyField
    needs: list[IdField] = []
    careful: list[TextField] = []
    order: WholeField = 100
    for_: ReaderField = "staff"

"""What every model of a studio's file has in common.

A key in YAML is the field's name with spaces (`in season` is `in_season`); a field that would
be a Python word ends in an underscore (`from_` is `from`). Unknown keys are errors.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Self

from pydantic import BaseModel, ConfigDict, PrivateAttr

from corymb.studio.keys import key_of

LONGEST_SHORT_FORM = 2_000
"""Letters of a thing written in one line: many times what any takes."""


class FileModel(BaseModel):
    """A part of a studio's file."""

    model_config = ConfigDict(
        extra="forbid",
        frozen=True,
        alias_generator=key_of,
        arbitrary_types_allowed=True,
    )


class KeysDisagree(ValueError):  # noqa: N818 (a sentence for the writer, not a fault of ours)
    """Keys of one thing that don't go together; `keys` are as written, the one to blame first."""

    def __init__(self, message: str, *keys: str) -> None:
        super().__init__(message)
        self.keys = keys


class NamedModel(FileModel):
    """A part of a studio's file with an id: its file's name, or the key it stands under."""

    _id: str = PrivateAttr(default="")

    @property
    def id(self) -> str:
        """The id by which other files name it."""
        return self._kept_beside("_id")

    def with_id(self, known_as: str) -> Self:
        """The same, knowing its id."""
        if self.id != known_as:
            self._id = known_as
        return self

    def _kept_beside(self, name: str) -> str:
        """What is no key of the file; asked for so often that pydantic's own way is too slow."""
        beside = self.__pydantic_private__
        return str(beside[name]) if beside else ""


def short_form(read: Callable[[str], dict[str, Any]]) -> Callable[[Any], Any]:
    """A validator that lets a model be written as one line of text, read by `read`."""

    def widen(written: Any) -> Any:
        if isinstance(written, str) and len(written) > LONGEST_SHORT_FORM:
            raise ValueError("This is far too long for one line: is a comma or a dash missing?")
        return read(written) if isinstance(written, str) else written

    return widen

"""One thing that a model refused: where in the file, and what stands there."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from pydantic_core import ErrorDetails

from corymb.studio.mending import as_far_as_written, value_at
from corymb.studio.models.base import KeysDisagree
from corymb.studio.shape import Steps


@dataclass(frozen=True)
class Slip:
    """What pydantic reports, in the file's terms."""

    kind: str
    """pydantic's name for what is wrong."""
    path: Steps
    """The way to it by the models' keys."""
    written: Steps
    """The same, cut where the file goes on as one line of text (`3 dahlia-shell, light`)."""
    found: Any
    """What stands at the end of `written`; None where nothing does."""
    error: object = None
    """What a reader of ours said, if it was one."""
    in_key: bool = False
    """Whether it is the key that is wrong, not its value."""

    @classmethod
    def of(cls, detail: ErrorDetails, data: Any) -> Slip:
        """The slip that `detail` reports of `data`."""
        path = tuple(step for step in detail["loc"] if step != "[key]")
        written = as_far_as_written(data, path)
        return cls(
            detail["type"],
            path,
            written,
            value_at(data, written),
            detail.get("ctx", {}).get("error"),
            "[key]" in detail["loc"],
        )

    @property
    def is_missing(self) -> bool:
        """Whether a key isn't there."""
        return self.kind == "missing"

    @property
    def is_unknown(self) -> bool:
        """Whether a key is there that nobody reads."""
        return self.kind == "extra_forbidden"

    @property
    def keys(self) -> tuple[str, ...]:
        """The keys that don't go together; none where one alone is wrong."""
        return self.error.keys if isinstance(self.error, KeysDisagree) else ()

    @property
    def places(self) -> tuple[Steps, ...]:
        """Where the file would have to change."""
        if not self.keys:
            return (self.written,)
        there = [key for key in self.keys if isinstance(self.found, dict) and key in self.found]
        return tuple((*self.path, key) for key in there or self.keys[:1])

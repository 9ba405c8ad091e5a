"""How does the command line read what a florist writes? As the studio's files do."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import click


class Value(click.ParamType[str]):
    """An option or an answer read by a friendly value's `parse`; it is kept as canonical text."""

    def __init__(
        self, parse: Callable[[str], Any], name: str, write: Callable[[Any], str] = str
    ) -> None:
        self.parse = parse
        self.name = name
        self.write = write

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> str:
        """The text as the studio's files would hold it; a sentence when it can't be read."""
        try:
            return self.write(self.parse(str(value)))
        except ValueError as error:
            self.fail(str(error), param, ctx)

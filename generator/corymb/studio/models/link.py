"""A style link: a page for one client, showing some looks for one date."""

from __future__ import annotations

import secrets
from typing import Annotated, Self

from pydantic import AfterValidator, BeforeValidator, Field, model_validator

from corymb.studio.models.base import FileModel, KeysDisagree, NamedModel, short_form
from corymb.studio.models.order import Where
from corymb.studio.values import lines
from corymb.studio.values.fields import ClockSpanField, DateField, IdField, TextField

SIGNS = "abcdefghijklmnopqrstuvwxyz234567"
SHORTEST_CODE = 26  # letters and digits: 26 of 32 signs are 130 bits


def fresh_code() -> str:
    """A code that nobody has had before."""
    return "".join(secrets.choice(SIGNS) for _ in range(SHORTEST_CODE))


def _unguessable(code: str) -> str:
    if len(code) < SHORTEST_CODE or not code.isalnum() or not code.isascii():
        raise ValueError(
            f"The page's address could be guessed: a code is {SHORTEST_CODE} or more letters and "
            f"digits that mean nothing, like ‘{fresh_code()}’."
        )
    return code


class LinkItem(FileModel):
    """A look to show. Short: `hedgerow-jar, later, small`."""

    recipe: IdField
    """The recipe, by id."""
    variant: IdField | None = None
    """One of its variants."""
    size: IdField | None = None
    """One of its sizes."""


LinkItemField = Annotated[LinkItem, BeforeValidator(short_form(lines.link_item))]


class StyleLink(NamedModel):
    """A page for one client, at an address that nobody finds. Who it is for is private."""

    title: TextField
    """The heading of the page."""
    for_: TextField = ""
    """Private: which client it is for."""
    code: Annotated[TextField, AfterValidator(_unguessable)]
    """The secret part of the page's address: 26 or more random letters and digits."""
    date: DateField
    """The day the flowers are for."""
    expires: DateField
    """The last day on which the page stands."""
    hours: ClockSpanField | None = None
    """From when to when the flowers are looked at: the page shows them in that light too."""
    where: Where | None = None
    """Where they will stand, and in what light, as in an order."""
    show: list[LinkItemField] = Field(min_length=1)
    """The looks to show, one a line."""
    note: TextField = ""
    """Words for the client, above the looks."""

    @model_validator(mode="after")
    def _outlives_its_date(self) -> Self:
        if self.expires < self.date:
            raise KeysDisagree(
                f"The link expires before {self.date}, the day it is for: write that day or a "
                "later one.",
                "expires",
                "date",
            )
        return self

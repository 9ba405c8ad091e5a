"""Whose site is meant: the clients', the staff's, or both?"""

from __future__ import annotations

import click

from corymb.views.pieces import Audience

EVERYONE: tuple[Audience, ...] = ("clients", "staff")

audience_option = click.option(
    "--for",
    "audience",
    type=click.Choice(EVERYONE),
    help="One site alone. Without it: both.",
)


def audiences(chosen: Audience | None) -> tuple[Audience, ...]:
    """The one chosen, or both."""
    return (chosen,) if chosen else EVERYONE

"""Whose site is meant: the clients', the staff's, or both?"""

from __future__ import annotations

import click

from corymb.views.pieces import AUDIENCES, Audience

audience_option = click.option(
    "--for",
    "audience",
    type=click.Choice(AUDIENCES),
    help="One site alone. Without it: both.",
)


def audiences(chosen: Audience | None) -> tuple[Audience, ...]:
    """The one chosen, or both."""
    return (chosen,) if chosen else AUDIENCES

"""In which language does a command tell what the pages tell? In the studio's own."""

from __future__ import annotations

import click

from corymb.language import in_language
from corymb.studio.studio import Studio


def speak_as(studio: Studio) -> None:
    """Speak the studio's language until the command is over; its errors and help stay English."""
    click.get_current_context().with_resource(in_language(studio.house.language))

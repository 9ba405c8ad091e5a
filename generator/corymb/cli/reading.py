"""The studio for a command that leans on all of it: whatever is wrong with it comes first."""

from __future__ import annotations

from pathlib import Path

import click

from corymb.checks import read_and_check
from corymb.cli.telling import sum_of, tell_problems
from corymb.studio.studio import Studio


def whole_studio(folder: Path) -> Studio:
    """The studio in a folder. Raises ClickException where a file of it holds an error."""
    studio, problems = read_and_check(folder)
    errors = [problem for problem in problems if not problem.advice]
    if studio is None or errors:
        tell_problems(errors)
        raise click.ClickException(f"{sum_of(errors)}; put them right first. Nothing was written.")
    return studio

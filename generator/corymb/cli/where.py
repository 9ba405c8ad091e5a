"""Which studio does a command mean? The one named, or the one in the current folder."""

from __future__ import annotations

from functools import partial
from pathlib import Path

import click

from corymb.site.settings import SettingsError, SiteSettings, read_settings

CONFIG = "mkdocs.yml"
STUDIO = "studio.yml"


def _there_is_a_studio(
    context: click.Context, parameter: click.Parameter, given: Path | None
) -> Path | None:
    """Runs before any question is asked: nobody answers nine of them for nothing."""
    if not context.resilient_parsing:
        studio_folder(given)
    return given


_config = partial(
    click.option,
    "-f",
    "--file",
    "config",
    type=click.Path(path_type=Path),
    metavar="MKDOCS_YML",
    help="The mkdocs.yml to go by, or its folder. Without it: the one in the current folder.",
)

config_option = _config()
studio_first_option = _config(is_eager=True, callback=_there_is_a_studio)
"""The same option for a command that asks questions."""


def site_settings(given: Path | None) -> SiteSettings:
    """The settings of the mkdocs.yml that is named, or of the one here."""
    file = _config_in(given) if given else Path(CONFIG)
    if given is None and not file.is_file():
        raise click.ClickException(
            f"There is no {CONFIG} in this folder. Go into your studio's folder, or name the "
            f"file: -f my-studio/{CONFIG}. To begin a studio: corymb new studio my-studio"
        )
    try:
        return read_settings(file)
    except SettingsError as error:
        raise click.ClickException(str(error)) from error


def settings_here(given: Path | None) -> SiteSettings | None:
    """The same, or nothing where a studio's folder alone is named or there is no mkdocs.yml."""
    if (given or Path()).joinpath(STUDIO).is_file() or not _config_in(given or Path()).is_file():
        return None
    return site_settings(given)


def studio_folder(given: Path | None) -> Path:
    """The folder of studio.yml: named as it is, by its mkdocs.yml, or the one here."""
    named = given or Path()
    if (named / STUDIO).is_file():
        return named
    if _config_in(named).is_file():
        return site_settings(named).studio_folder
    if given is not None:
        raise click.ClickException(
            f"There is no studio in {given}: a studio's folder holds a {STUDIO}. "
            "To begin one: corymb new studio my-studio"
        )
    raise click.ClickException(
        f"There is no studio here: neither a {CONFIG} nor a {STUDIO}. Go into your studio's "
        "folder, or name it. To begin one: corymb new studio my-studio"
    )


def _config_in(given: Path) -> Path:
    return given / CONFIG if given.is_dir() else given

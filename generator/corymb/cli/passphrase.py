"""Which passphrase locks the staff's site? Asked for, or read from where no one else looks.

It is never taken from the command line, which other programs see and shells remember, nor from a
file that belongs to the studio; and it is never printed.
"""

from __future__ import annotations

import os
import re
import stat
import sys
from pathlib import Path

import click

from corymb.site.locked.keys import VARIABLE, Passphrase
from corymb.site.locked.lock import is_locked, standing_lock
from corymb.site.locked.strength import LEAST, fault, made_by_chance
from corymb.site.settings import SiteSettings

QUESTION = "Passphrase for the staff's site"
NAME = re.compile(r"^ *name: *(.+)$", re.MULTILINE)

NOBODY_TO_ASK = (
    "The staff's site is to be locked, and there is nobody here to ask for the passphrase. Put it "
    f"into the variable {VARIABLE}, or name a file that holds it with --passphrase-file."
)
HOW = (
    f"Choose {LEAST} characters or more that nobody guesses, such as five words that have nothing "
    "to do with each other; or take this one, made just now by chance: {made}\n"
    "Whoever loses it has to lock the site anew; it is kept nowhere."
)
ANOTHER = "The passphrase is another than before: all is locked anew, and phones will ask for it."
FOR_OTHERS = "Others on this machine can read {file}: make it yours alone (chmod 600)."
READ_BY_OTHERS = stat.S_IRGRP | stat.S_IROTH

passphrase_option = click.option(
    "--passphrase-file",
    type=click.Path(path_type=Path),
    metavar="FILE",
    help="A file with the passphrase in it, outside the studio's folder. Without it: the variable "
    f"{VARIABLE}, or a question.",
)


def passphrase_for(settings: SiteSettings, file: Path | None) -> Passphrase:
    """The passphrase to lock with. Raises ClickException where it is weak, or can't be had."""
    folder = settings.output("staff")
    kept = os.environ.pop(VARIABLE, "")  # what helps with a build need not inherit it
    given = _in_file(file, settings) if file else kept
    if not given and not can_ask():
        raise click.ClickException(NOBODY_TO_ASK)
    passphrase = Passphrase(given or _asked(folder))
    if (wrong := fault(passphrase.text, _names(settings))) is not None:
        raise click.ClickException(wrong)
    if is_locked(folder) and standing_lock(passphrase, folder) is None:
        if not given:
            _once_more(passphrase)
        click.echo(ANOTHER)
    return passphrase


def can_ask() -> bool:
    """Whether someone sits at the other end."""
    return sys.stdin.isatty()


def _asked(folder: Path) -> str:
    """A new one twice; one that should be known once."""
    if is_locked(folder):
        return str(click.prompt(QUESTION, hide_input=True))
    click.echo(HOW.format(made=made_by_chance()))
    again = "The same once more"
    return str(click.prompt(QUESTION, hide_input=True, confirmation_prompt=again))


def _once_more(passphrase: Passphrase) -> None:
    question = "The site is locked with another one. To change it, type this once more"
    if click.prompt(question, hide_input=True) != passphrase.text:
        raise click.ClickException("These were two different ones; nothing was built.")


def _in_file(file: Path, settings: SiteSettings) -> str:
    """What stands in the file. Raises ClickException."""
    of_the_studio = (settings.config_file.parent, settings.studio_folder)
    if any(file.resolve().is_relative_to(folder.resolve()) for folder in of_the_studio):
        raise click.ClickException(
            f"{file} lies with the studio's own files, which others get to see; keep the "
            "passphrase in a file outside that folder."
        )
    try:
        text = file.read_text("utf-8-sig").strip()  # some editors begin every file with a mark
    except (OSError, UnicodeDecodeError) as error:
        raise click.ClickException(f"{file} can't be read: {_why(error)}.") from error
    if not text:
        raise click.ClickException(f"{file} is empty, and should hold the passphrase.")
    if os.name == "posix" and file.stat().st_mode & READ_BY_OTHERS:
        click.echo(FOR_OTHERS.format(file=file), err=True)
    return text


def _why(error: OSError | UnicodeDecodeError) -> str:
    return (error.strerror or str(error)) if isinstance(error, OSError) else "it is not plain text"


def _names(settings: SiteSettings) -> list[str]:
    """What anyone knows of the studio: the names that stand in its own file."""
    try:
        return NAME.findall((settings.studio_folder / "studio.yml").read_text("utf-8"))
    except (OSError, UnicodeDecodeError):
        return []  # the build says what is wrong with it

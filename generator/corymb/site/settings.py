"""Where is the studio, and where do its sites go? Read from a MkDocs configuration file.

The settings of Corymb are declared once, in `CorymbSettings`: MkDocs checks them, the command
takes them from here, and a test holds the README's table to them.
"""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from mkdocs.config import config_options as options
from mkdocs.config import load_config
from mkdocs.config.base import BaseConfigOption, Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import Abort, ConfigurationError

from corymb.site.locked.places import DOOR
from corymb.studio.saying import and_list
from corymb.studio.suggest import did_you_mean
from corymb.views.pieces import AUDIENCES, Audience


class CorymbSettings(Config):  # type: ignore[no-untyped-call]
    """What stands under `plugins: - corymb:` in mkdocs.yml."""

    studio = options.Type(str, default="content")
    """The studio's folder, from the folder of `mkdocs.yml`."""

    audience = options.Choice(AUDIENCES, default="clients")
    """Whose site a plain `mkdocs build` makes; `corymb build` makes both."""

    cache = options.Type(str, default=".cache/corymb")
    """Where finished photos and pictures are kept between builds."""

    staff_url = options.Type(str, default="")
    """Where your people open the staff's site, for the codes on bucket labels to lead there."""

    lock_staff = options.Type(bool, default=False)
    """Whether `corymb build` locks the staff's site with a passphrase; `mkdocs build` can't."""


class SettingsError(Exception):
    """mkdocs.yml can't be used; the text says why."""


@dataclass(frozen=True)
class SiteSettings:
    """Everything a build needs to know beside the studio itself."""

    config_file: Path
    studio_folder: Path
    cache_folder: Path
    site_url: str = ""
    staff_url: str = ""
    lock_staff: bool = False
    markdown_extensions: tuple[str, ...] = ()
    markdown_configs: dict[str, Any] = field(default_factory=dict)

    def base_path(self, audience: Audience) -> str:
        """Where the site begins on its host: `/`, or a folder of it such as `/flowers/`.

        Where the staff's site stands is said for its codes, or else it has a host of its own.
        """
        address = self.site_url if audience == "clients" else self.staff_url
        return urlsplit(address).path or "/"

    @property
    def codes_lead_to(self) -> str:
        """What stands before a page's address in a code: of a locked site, the way in."""
        return f"{self.staff_url}{DOOR}#" if self.lock_staff and self.staff_url else self.staff_url

    def output(self, audience: Audience) -> Path:
        """The folder that an audience's site is built in, beside mkdocs.yml."""
        return self.config_file.parent / audience


def read_settings(config_file: Path) -> SiteSettings:
    """The settings in a MkDocs configuration file. Raises SettingsError with a sentence."""
    if not config_file.is_file():
        raise SettingsError(
            f"There is no {config_file}: name your mkdocs.yml with -f, or make a studio with "
            "`corymb new studio DIR`."
        )
    faults: list[str] = []
    with _kept(faults):
        try:
            config = load_config(str(config_file))
        except (ConfigurationError, Abort) as error:
            told = "; ".join(dict.fromkeys(filter(None, [*faults, _plain(error)])))
            raise SettingsError(f"{config_file}: {told}") from error
        except Exception as error:  # a date that doesn't exist: MkDocs lets through what YAML says
            told = f"This file can't be read: {error}. Put the value that is meant in quotes."
            raise SettingsError(f"{config_file}: {told}") from error
    return settings_of(config)


def settings_of(config: MkDocsConfig) -> SiteSettings:
    """The settings in a configuration that MkDocs has read. Raises SettingsError."""
    config_file = Path(config.config_file_path or "mkdocs.yml").resolve()
    plugin = config.plugins.get("corymb")
    if plugin is None:
        raise SettingsError(
            f"{config_file}: The plugin is missing. Add these two lines:\nplugins:\n  - corymb"
        )
    own: CorymbSettings = plugin.config
    _no_strangers(own, config_file)
    here = config_file.parent
    return SiteSettings(
        config_file=config_file,
        studio_folder=(here / own.studio).resolve(),
        cache_folder=(here / own.cache).resolve(),
        site_url=str(config.site_url or ""),
        staff_url=_whole_address(own.staff_url, config_file),
        lock_staff=own.lock_staff,
        markdown_extensions=tuple(config.markdown_extensions),
        markdown_configs=dict(config.mdx_configs),
    )


def own_options() -> dict[str, BaseConfigOption[Any]]:
    """The settings declared in CorymbSettings, by name, in their order."""
    return {
        name: option
        for name, option in vars(CorymbSettings).items()
        if isinstance(option, BaseConfigOption)
    }


def _no_strangers(own: CorymbSettings, config_file: Path) -> None:
    """MkDocs only warns of an option that isn't known; a misspelt folder deserves an error."""
    known = own_options()
    for option in own:
        if option not in known:
            raise SettingsError(
                f"{config_file}: ‘{option}’ is not an option of the plugin."
                f"{did_you_mean(option, known)} It has {and_list(known)}."
            )


def _whole_address(address: str, config_file: Path) -> str:
    """The address with a slash at its end; empty where there is none. Raises SettingsError."""
    if address and not address.startswith(("https://", "http://")):
        raise SettingsError(
            f"{config_file}: ‘{address}’ is no whole address for `staff_url`. "
            "Write it as in https://bench.example/."
        )
    return address if not address or address.endswith("/") else f"{address}/"


def _plain(error: Exception) -> str:
    return str(error) if not isinstance(error, Abort) else ""


@contextmanager
def _kept(faults: list[str]) -> Iterator[None]:
    """Keep what MkDocs logs while it reads, in place of printing it in its own format."""

    class Keeper(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            if record.levelno >= logging.ERROR:
                faults.append(record.getMessage())

    log, keeper = logging.getLogger("mkdocs"), Keeper()
    was = log.propagate
    log.addHandler(keeper)
    log.propagate = False
    try:
        yield
    finally:
        log.removeHandler(keeper)
        log.propagate = was

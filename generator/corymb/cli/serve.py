"""`corymb serve`: the sites in a browser, rebuilt and refreshed with every save."""

from __future__ import annotations

import time
from collections.abc import Sequence
from datetime import datetime
from functools import lru_cache
from pathlib import Path
from threading import Event

import click

from corymb.cli.audience import audience_option, audiences
from corymb.cli.build import tell_built
from corymb.cli.telling import Progress, seen_from_here, sum_of, tell_problems
from corymb.cli.where import config_option, site_settings
from corymb.site.build import BuildReport
from corymb.site.live.building import LiveBuilding
from corymb.site.live.live_site import LiveSite
from corymb.site.live.server import LiveServer, PortBusyError
from corymb.site.live.watch import Watched, changes
from corymb.site.settings import SettingsError, SiteSettings, read_settings
from corymb.studio.problems import Problem
from corymb.views.pieces import Audience


@click.command()
@audience_option
@config_option
@click.option(
    "--port",
    default=8000,
    show_default=True,
    type=click.IntRange(0, 65535),
    help="The last part of the address; another one where this is in use.",
)
def serve(audience: Audience | None, config: Path | None, port: int) -> None:
    """Serve the sites on this computer; pages refresh as you save. Ctrl+C ends it.

    While a file holds an error the last good site stays up, with the error shown over it.

    \b
    Examples:
      corymb serve
      corymb serve --for staff --port 8001
    """
    settings = site_settings(config)
    who = audiences(audience)
    live = LiveSite({name: settings.output(name) for name in who})
    building = LiveBuilding(live, who, _finished, seen_from_here)
    try:
        server = LiveServer(live, port)
    except PortBusyError as error:
        raise click.ClickException(_busy(port)) from error
    server.start()
    try:
        watched = Watched.of(settings, who)
        before = watched.state()
        _begin(building, settings)
        for name in who:
            click.echo(f"{name:<8} {server.address}{name}/")
        click.echo("Watching your files. Ctrl+C ends it.")
        for _ in changes(watched, before, Event()):
            _keep_up(building, settings.config_file)
    except KeyboardInterrupt:
        click.echo("\nEnded.")
    finally:
        building.end()
        server.stop()


def _busy(port: int) -> str:
    return (
        f"Port {port} is in use, perhaps by another `corymb serve`. End that one, or take "
        f"another port: corymb serve --port {port + 1 if port < 65535 else 8000}"
    )


def _begin(building: LiveBuilding, settings: SiteSettings) -> None:
    progress, start = Progress(), time.perf_counter()
    report = building.begin(settings, progress)
    progress.end()
    if report.errors:
        _refused(report.errors)
        return
    building.live.published()
    tell_built(report, settings, time.perf_counter() - start)
    if settings.lock_staff and "staff" in building.audiences:
        click.echo(
            "The staff's site is served here as it is, to this computer alone; the locked one in "
            "its folder is made by `corymb build`."
        )


def _keep_up(building: LiveBuilding, config_file: Path) -> None:
    start = time.perf_counter()
    settings = _read_again(building.live, config_file)
    if settings is None:
        return
    report = building.keep_up(settings)
    if report.errors:
        _refused(report.errors)
    else:
        seconds = time.perf_counter() - start
        click.echo(f"{datetime.now():%H:%M:%S}  open pages rebuilt in {seconds:.2f} s")


def _finished(report: BuildReport) -> None:
    """Told by the building each time that both sites are whole."""
    if report.errors:
        _refused(report.errors)


def _refused(errors: Sequence[Problem]) -> None:
    tell_problems(errors)
    click.echo(f"{sum_of(errors)}; the last good site stays up.", err=True)


@lru_cache(maxsize=1)
def _settings_in(config_file: Path, changed_ns: int) -> SiteSettings:
    """MkDocs takes its time to read them, and most saves are of other files."""
    return read_settings(config_file)


def _read_again(live: LiveSite, config_file: Path) -> SiteSettings | None:
    """The settings as they are now; none while mkdocs.yml can't be used."""
    try:
        there = config_file.is_file()
        return _settings_in(config_file, config_file.stat().st_mtime_ns if there else 0)
    except SettingsError as error:
        click.echo(str(error), err=True)
        live.refused([Problem(config_file, 1, 1, str(error))])
        return None

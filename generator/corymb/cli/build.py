"""`corymb build`: both sites, whole or not at all."""

from __future__ import annotations

import time
from dataclasses import replace
from pathlib import Path

import click

from corymb.checks import read_and_check
from corymb.cli.audience import audience_option, audiences
from corymb.cli.passphrase import passphrase_for, passphrase_option
from corymb.cli.telling import Progress, path_from_here, sum_of, tell_problems
from corymb.cli.values import Value
from corymb.cli.where import config_option, site_settings
from corymb.site.build import BuildReport, build_sites
from corymb.site.settings import SiteSettings
from corymb.studio.saying import counted
from corymb.studio.values.dates import parse_date
from corymb.views.pieces import Audience


@click.command()
@audience_option
@config_option
@click.option(
    "--on",
    "day",
    type=Value(parse_date, "date"),
    metavar="DATE",
    help="Build as on this day, 2026-09-19, for what is in season now. Without it: today, at the "
    "studio.",
)
@click.option("--strict", is_flag=True, help="Take advice for errors.")
@click.option(
    "--lock-staff",
    is_flag=True,
    help="Lock the staff's site with a passphrase, for a host that anyone can reach; it is asked "
    "for. `lock_staff: true` in mkdocs.yml does so at every build.",
)
@passphrase_option
def build(
    audience: Audience | None,
    config: Path | None,
    day: str | None,
    strict: bool,
    lock_staff: bool,
    passphrase_file: Path | None,
) -> None:
    """Build the sites into clients/ and staff/ beside mkdocs.yml.

    When a file holds an error, it is shown with its line, nothing is built, and the sites that
    stand stay as they are. Advice stops nothing: it is counted, and each hazard that a style
    leaves out is named, and each photo that hardly shows the colours of its recipe.

    \b
    Examples:
      corymb build
      corymb build --for clients -f my-studio/mkdocs.yml
      corymb build --on 2026-09-19
      corymb build --lock-staff
    """
    settings = site_settings(config)
    settings = replace(settings, lock_staff=settings.lock_staff or lock_staff)
    today = parse_date(day) if day else None
    if strict:
        _stop_at_advice(settings)
    wanted = audiences(audience)
    locks = settings.lock_staff and "staff" in wanted
    passphrase = passphrase_for(settings, passphrase_file) if locks else None
    progress, start = Progress(), time.perf_counter()
    report = build_sites(settings, wanted, today, progress, strict, progress.waiting, passphrase)
    progress.end()
    if report.errors:
        tell_problems(report.errors)
        raise click.ClickException(f"{sum_of(report.errors)}; nothing was built.")
    if strict and report.of_photos:
        tell_problems(report.of_photos)
        raise click.ClickException(f"{sum_of(report.of_photos)}; nothing was built.")
    tell_built(report, settings, time.perf_counter() - start)


def _stop_at_advice(settings: SiteSettings) -> None:
    _, problems = read_and_check(settings.studio_folder)
    if problems:
        tell_problems(problems)
        raise click.ClickException(f"{sum_of(problems)}; nothing was built.")


def tell_built(report: BuildReport, settings: SiteSettings, seconds: float) -> None:
    """What can hurt someone and what photos don't show; then what was built, and where it stands.

    All other advice is counted, for `corymb check` shows it; what photos show it doesn't ask.
    """
    advice = [problem for problem in report.problems if problem.advice]
    told_here = report.of_photos
    tell_problems((p for p in advice if p.hurts or p in told_here), with_lines=False)
    advice = [problem for problem in advice if problem not in told_here]
    for audience, pages in report.pages.items():
        front = path_from_here(settings.output(audience) / "index.html")
        click.echo(f"{audience:<8} {counted(pages, 'page', 'pages'):>10}  {front}")
    photos = counted(report.photos, "photo", "photos")
    click.echo(f"{photos} and {counted(report.pictures, 'picture', 'pictures')}, {seconds:.1f} s.")
    if advice:
        them = "it" if len(advice) == 1 else "them"
        click.echo(f"{sum_of(advice)}: `corymb check` shows {them}.")

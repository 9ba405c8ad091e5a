"""From a studio's folder to its published sites: read, check, make, and only then publish."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

from corymb.checks import read_and_check
from corymb.checks.photo_colours import unlike_their_looks
from corymb.language import in_language
from corymb.photos import PhotoCache, PhotoError, PreparedPhoto, prepare_many
from corymb.site.drawn.pictures import Pictures, draw_all
from corymb.site.lasting import all_lasts
from corymb.site.link_check import Known
from corymb.site.locked.keys import Passphrase
from corymb.site.locked.publishing import as_published, refusal
from corymb.site.publishing import PublishError, Waiting, Wanted, at_work, publish_together
from corymb.site.render import TEMPLATES
from corymb.site.settings import SiteSettings
from corymb.site.site import AddressTakenError, Site, SiteMaker
from corymb.studio.photographs import photo_path, photos_of
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.studio.today import today_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.pieces import Audience

Progress = Callable[[str, int, int], None]


def no_progress(what: str, done: int, total: int) -> None:
    """Tells nobody."""


@dataclass
class BuildReport:
    """What came of a build: what is wrong with the studio, or how much was published where."""

    problems: list[Problem] = field(default_factory=list)
    pages: dict[Audience, int] = field(default_factory=dict)
    photos: int = 0
    pictures: int = 0
    of_photos: list[Problem] = field(default_factory=list)
    """Those of the problems that only a build finds, since it opens the photos: all advice."""

    @property
    def errors(self) -> list[Problem]:
        """The problems that stop a build."""
        return [problem for problem in self.problems if not problem.advice]


@dataclass(frozen=True)
class Images:
    """Finished photos by the path written in the studio's files, and the drawn pictures."""

    photos: Mapping[str, PreparedPhoto]
    pictures: Pictures


def build_sites(
    settings: SiteSettings,
    audiences: Sequence[Audience],
    today: date | None = None,
    progress: Progress = no_progress,
    strict: bool = False,
    waiting: Waiting | None = None,
    passphrase: Passphrase | None = None,
) -> BuildReport:
    """Build and publish the sites; when the report holds errors, nothing was published.

    Nor when it holds advice on the photos, where the build is strict. Without a day, today is what
    it is at the studio. The passphrase locks the staff's site, where the settings want that.
    """
    report = BuildReport()
    if (why := refusal(settings, audiences, passphrase)) is not None:
        report.problems.append(Problem(settings.config_file, 1, 1, why))
        return report
    try:
        # Before anything is read: of two builds, the one that read last is to publish last.
        with all_lasts(), at_work([settings.output(who) for who in audiences], waiting):
            _build(report, settings, audiences, today, progress, strict, passphrase)
    except PublishError as error:
        where = error.folder or settings.config_file.parent
        report.problems.append(Problem(where, 0, 0, str(error)))
    return report


def _build(
    report: BuildReport,
    settings: SiteSettings,
    audiences: Sequence[Audience],
    today: date | None,
    progress: Progress,
    strict: bool,
    passphrase: Passphrase | None,
) -> None:
    studio = read_checked(settings.studio_folder, report)
    if studio is None or report.errors:
        return
    day = today or today_of(studio)
    # The cache stays open until the photos in it are published: another build may tidy it up.
    with _kept_in(settings.cache_folder), PhotoCache(settings.cache_folder / "photos") as cache:
        images = make_images(studio, settings, cache, report, progress)
        if strict and report.of_photos:
            return
        sites = _make_sites(studio, settings, audiences, day, images, report, progress)
        if not report.errors:
            with ExitStack() as kept:
                for audience, site in sites.items():
                    published = as_published(site, audience, settings, studio.house, passphrase)
                    sites[audience] = kept.enter_context(published)
                _publish(sites, settings, report)


@contextmanager
def _kept_in(folder: Path) -> Iterator[None]:
    """Where the disk is full, or someone else's, say so. Raises PublishError."""
    try:
        yield
    except OSError as error:
        raise PublishError(
            f"what is kept between builds can't be written here: {error.strerror or error}. "
            "Make room, or see who may write here, and build again.",
            folder,
        ) from error


def _make_sites(
    studio: Studio,
    settings: SiteSettings,
    audiences: Sequence[Audience],
    today: date,
    images: Images,
    report: BuildReport,
    progress: Progress,
) -> dict[Audience, Site]:
    sites: dict[Audience, Site] = {}
    if report.errors:
        return sites
    for done, audience in enumerate(audiences, 1):
        try:
            sites[audience] = site_of(studio, audience, settings, today, images)
        except AddressTakenError as error:
            report.problems.append(Problem(settings.studio_folder, 1, 1, str(error)))
            return sites
        found = dead_links_of(sites[audience], settings, audience)
        report.problems += [problem for problem in found if problem not in report.problems]
        progress("sites", done, len(audiences))
    return sites


def read_checked(folder: Path, report: BuildReport) -> Studio | None:
    """The studio, with everything that is wrong with it added to the report."""
    studio, problems = read_and_check(folder)
    report.problems = sorted({*report.problems, *problems})
    return studio


def make_images(
    studio: Studio,
    settings: SiteSettings,
    cache: PhotoCache,
    report: BuildReport,
    progress: Progress = no_progress,
) -> Images:
    """Every photo and picture of the studio, made or found in the cache."""
    photos = photos_made(studio, cache, report, progress)
    report.of_photos = unlike_their_looks(studio, photos)
    report.problems += report.of_photos
    cache.evict()
    with in_language(studio.house.language):  # a picture says what it shows
        pictures = draw_all(studio, settings.cache_folder / "pictures", progress)
    report.photos, report.pictures = len(photos), len(pictures.drawn)
    return Images(photos, pictures)


def photos_made(
    studio: Studio, cache: PhotoCache, report: BuildReport, progress: Progress
) -> dict[str, PreparedPhoto]:
    """Every photo that anyone may see, by what is written in the studio's files."""
    named = list(photos_of(studio))
    sources = [photo_path(studio.folder, photo.file) for photo, _, _ in named if _published(photo)]
    made = prepare_many(sources, cache, lambda done, total: progress("photos", done, total))
    photos: dict[str, PreparedPhoto] = {}
    for photo, source, path in named:
        result = made.get(photo_path(studio.folder, photo.file))
        if isinstance(result, PhotoError):
            report.problems.append(source.problem(str(result), *path, "file"))
        elif result is not None:
            photos[photo.file] = result
    return photos


def _published(photo: object) -> bool:
    return getattr(photo, "may_be_shown_to", "nobody") != "nobody"


def site_of(
    studio: Studio, audience: Audience, settings: SiteSettings, today: date, images: Images
) -> Site:
    """One audience's site in the studio's language, not yet published. Raises AddressTakenError."""
    catalogue = Catalogue(
        studio,
        audience,
        today,
        photos=images.photos,
        drawings=images.pictures.drawings,
        heads=images.pictures.heads,
        plans=images.pictures.plans,
        sizes=images.pictures.sizes,
    )
    with in_language(studio.house.language):
        return SiteMaker(catalogue, settings).whole(images.pictures)


def dead_links_of(
    site: Site, settings: SiteSettings, audience: Audience, known: Known | None = None
) -> list[Problem]:
    """Every address on a site's pages that leads nowhere: a fault of the templates."""
    dead = site.dead_links(settings.base_path(audience), known)
    return [Problem(TEMPLATES, 1, 1, str(link)) for link in dead]


def _publish(sites: Mapping[Audience, Site], settings: SiteSettings, report: BuildReport) -> None:
    """All of the sites, or none: a recipe isn't new for clients alone. Raises PublishError."""
    publish_together(
        {settings.output(who): Wanted(site.written, site.copies) for who, site in sites.items()}
    )
    report.pages.update({who: len(site.pages) for who, site in sites.items()})

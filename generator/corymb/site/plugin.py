"""Corymb as a MkDocs plugin: a plain `mkdocs build` makes one audience's site.

The site is made by `corymb.site.build` as ever; here it is handed to MkDocs as files. Pages
that MkDocs makes of Markdown in its `docs_dir` are put into the site's own frame.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from pathlib import Path
from typing import Any

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin, event_priority
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page as MkDocsPage
from mkdocs.utils import CountHandler, clean_directory

from corymb.photos import PhotoCache
from corymb.site.build import BuildReport, make_images, read_checked, site_of
from corymb.site.locked.lock import is_locked
from corymb.site.publishing import PublishError
from corymb.site.publishing.by_mkdocs import StagedByMkDocs
from corymb.site.publishing.rooms import cannot_write
from corymb.site.render import THEME, render
from corymb.site.settings import CorymbSettings, SettingsError, settings_of
from corymb.site.site import AddressTakenError, Site
from corymb.studio.saying import counted
from corymb.studio.today import today_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.site_frame import site_frame
from corymb.views.frame import PageFrame, SiteFrame
from corymb.views.pages import ProseView
from corymb.views.pieces import AUDIENCES, Link

log = logging.getLogger("mkdocs.plugins.corymb")

CANNOT_LOCK = (
    "The staff's site is locked, and MkDocs would put it there open. Build it with `corymb build`, "
    "and look at it with `corymb serve --for staff`."
)


class CorymbPlugin(BasePlugin[CorymbSettings]):  # type: ignore[no-untyped-call]
    """Adds a studio's pages, pictures and photos to a MkDocs site."""

    def __init__(self) -> None:
        self.site = Site()
        self.frame: SiteFrame | None = None
        self.private: tuple[Path, ...] = ()
        self.serves = False
        self.staged: StagedByMkDocs | None = None
        self.cache: PhotoCache | None = None

    def on_startup(self, *, command: str, dirty: bool) -> None:
        """Once, when MkDocs begins: to serve, it has a folder of its own that nobody else sees."""
        self.serves = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """First of all, before MkDocs looks for files: addresses are flat (`x.html`) here."""
        config.use_directory_urls = False
        return config

    def on_pre_build(self, *, config: MkDocsConfig) -> None:
        """Before MkDocs empties the site's folder: make all, and let it have another folder.

        So a mistake, or a kill at any moment, leaves the old site alone. With `--dirty` MkDocs
        doesn't empty the folder; but a style link that is over, or a photo that may no longer be
        shown, has to go: even then it begins with an empty one.
        """
        if self.serves:
            self._make(config)
            clean_directory(config.site_dir)
            return
        try:
            self.staged = StagedByMkDocs(config, log.info)
        except PublishError as error:
            raise PluginError(str(error)) from error
        self._make(config)
        self.staged.begin()

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """When MkDocs has found its own files, and before it reads any: add the studio's."""
        # MkDocs' own, which knows none of the studio's pages, would be written over ours.
        config.theme.static_templates.discard("sitemap.xml")
        for file in list(files):
            if self._is_ours(file):
                files.remove(file)
        for path, content in self.site.written.items():
            self._add(files, File.generated(config, path, content=content))
        for path, source in self.site.copies.items():
            self._add(files, File.generated(config, path, abs_src_path=str(source)))
        return files

    def on_post_page(self, output: str, *, page: MkDocsPage, config: MkDocsConfig) -> str:
        """When MkDocs has made a page of its own Markdown: set its text into the site's frame."""
        if self.frame is None:
            return output
        title = str(page.title or "")
        frame = PageFrame(
            path=page.file.dest_uri,
            template="prose.html",
            section="",
            title=title,
            description=str(page.meta.get("description", "")),
            crumbs=(Link("Home", "index.html"),),
            indexed=False,
        )
        view = ProseView(title, "", str(page.content or ""), ())
        return render(self.frame, frame, view).decode()

    @event_priority(-100)
    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """When all files are written, by other plugins too: the new site takes its place.

        Unless MkDocs, which has yet to count its warnings, will take them for errors.
        """
        self._close_cache()
        if self.staged is not None and not (config.strict and _warned()):
            try:
                self.staged.take_place()
            except OSError as error:
                raise PluginError(cannot_write(error)) from error
        self._leave()

    def on_serve(
        self, server: LiveReloadServer, *, config: MkDocsConfig, builder: Callable[..., None]
    ) -> LiveReloadServer:
        """Once, before `mkdocs serve` begins to watch: it knows of its own pages' folder alone."""
        server.watch(str(settings_of(config).studio_folder))
        return server

    def on_build_error(self, *, error: Exception) -> None:
        """Whenever MkDocs gives up: others may tidy the photos again, and build."""
        self._close_cache()
        self._leave()

    def _leave(self) -> None:
        if self.staged is not None:
            self.staged.end()
            self.staged = None

    def _close_cache(self) -> None:
        if self.cache is not None:
            self.cache.close()
            self.cache = None

    def _is_ours(self, file: File) -> bool:
        """A file that MkDocs found and must leave to us.

        The theme's are published under `assets/theme/`. Of the studio's folder, of the built sites
        and of the cache MkDocs publishes nothing itself, whatever its `docs_dir` is: what may be
        read there is made already, for those who may read it.
        """
        of_theme = file.src_dir is not None and Path(file.src_dir) == THEME
        source = Path(str(file.abs_src_path)).resolve()
        return of_theme or any(source.is_relative_to(folder) for folder in self.private)

    def _make(self, config: MkDocsConfig) -> None:
        try:
            settings = settings_of(config)
        except SettingsError as error:
            raise PluginError(str(error)) from error
        if self.config.audience == "staff" and (
            settings.lock_staff or is_locked(Path(config.site_dir))
        ):
            raise PluginError(CANNOT_LOCK)
        report = BuildReport()
        studio = read_checked(settings.studio_folder, report)
        if studio is None or report.errors:
            raise _refusal(report)
        kept = (settings.studio_folder, *map(settings.output, AUDIENCES), settings.cache_folder)
        self.private = tuple(folder.resolve() for folder in kept)
        audience, today = self.config.audience, today_of(studio)
        # Open until MkDocs has copied the photos in it: another build may tidy it up.
        self.cache = PhotoCache(settings.cache_folder / "photos")
        images = make_images(studio, settings, self.cache, report)
        if report.errors:
            raise _refusal(report)
        for advice in report.problems:
            log.info("%s", advice)
        try:
            self.site = site_of(studio, audience, settings, today, images)
        except AddressTakenError as error:
            raise PluginError(str(error)) from error
        self.frame = site_frame(Catalogue(studio, audience, today), settings.base_path(audience))
        for link in self.site.dead_links(settings.base_path(audience)):
            log.warning("%s", link)

    @staticmethod
    def _add(files: Files, file: Any) -> None:
        if (standing := files.get_file_from_path(file.src_uri)) is not None:
            files.remove(standing)
        files.append(file)


def _warned() -> bool:
    """Whether MkDocs counted a warning so far, as it does where it is strict."""
    handlers = logging.getLogger("mkdocs").handlers
    return any(isinstance(each, CountHandler) and each.get_counts() for each in handlers)


def _refusal(report: BuildReport) -> PluginError:
    """What ends MkDocs' build, once all that is wrong has been shown."""
    for problem in report.problems:
        (log.info if problem.advice else log.error)("%s", problem)
    things = counted(len(report.errors), "thing", "things")
    return PluginError(f"{things} to put right in the studio's files.")

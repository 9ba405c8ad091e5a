"""Which pages does a site have? Each with its frame, its view and its template."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from corymb.site import structured_data
from corymb.site.markdown_text import Writer
from corymb.trade.looks import Look
from corymb.views.compose import addresses, lists
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.made import made_list_view, made_view
from corymb.views.compose.prose import (
    lesson_view,
    lessons_shown,
    lessons_view,
    page_view,
    pages_shown,
)
from corymb.views.compose.recipes import recipe_view
from corymb.views.compose.stems import stem_view
from corymb.views.compose.tint import tint_of
from corymb.views.frame import PageFrame, Tint
from corymb.views.pages import MadeView
from corymb.views.pieces import Link
from corymb.views.recipe import ClientRecipe

HOME = Link("Home", addresses.HOME)
ARRANGEMENTS = Link("Arrangements", addresses.ARRANGEMENTS)
FLOWERS = Link("Flowers", addresses.FLOWERS)
MADE = Link("Made here", addresses.MADE)
LESSONS = Link("Lessons", addresses.LESSONS)


@dataclass(frozen=True)
class Page:
    """A page before it is rendered; `text` is what a search of the site finds it by."""

    frame: PageFrame
    view: object
    kind: str
    text: str


@dataclass(frozen=True)
class Pages:
    """Makes the pages of one audience's site."""

    catalogue: Catalogue
    site_url: str
    writer: Writer

    def all(self) -> Iterator[Page]:
        """Every page, in the order of the menu."""
        yield self._home()
        yield self._arrangements()
        for style in lists.styles_shown(self.catalogue):
            frame = self._frame(
                style.href, "style.html", "arrangements", style.plural, style.about, ARRANGEMENTS
            )
            yield Page(frame, style, "Style", style.about)
        for looks in self.catalogue.looks.values():
            yield from map(self._recipe, looks.values())
        yield from self._flowers()
        yield from self._made()
        yield from self._lessons()
        yield from self._prose()
        yield from self._helpers()

    def _home(self) -> Page:
        house = self.catalogue.studio.house
        view = lists.home_view(self.catalogue)
        data = structured_data.studio(house, self.site_url)
        lead = view.lead
        frame = self._frame(
            addresses.HOME,
            "home.html",
            "home",
            house.name,
            house.about or house.tagline,
            data=[data],
            image=_share_image(lead.image.photo) if lead else ("", ""),
            tint=tint_of(lead.band) if lead else None,
        )
        return Page(frame, view, "Page", house.tagline)

    def _arrangements(self) -> Page:
        house = self.catalogue.studio.house
        frame = self._frame(
            addresses.ARRANGEMENTS,
            "arrangements.html",
            "arrangements",
            "Arrangements",
            f"What {house.name} makes, by style, season and colour.",
            HOME,
        )
        return Page(frame, lists.arrangements_view(self.catalogue), "Page", "")

    def _recipe(self, look: Look) -> Page:
        view = recipe_view(self.catalogue, look)
        path = addresses.of_look(look)
        title = f"{view.name}: {view.variant_name}" if view.variant_name else view.name
        crumbs = [ARRANGEMENTS, view.style, *([view.parent] if view.parent else [])]
        image = _share_image(view.photos[0] if view.photos else None)
        data = structured_data.arrangement(view, self.absolute(image[0]), self.absolute(path))
        frame = self._frame(
            path,
            "recipe.html",
            "arrangements",
            title,
            view.summary,
            *crumbs,
            data=[data],
            image=image,
            tint=tint_of(view.band),
        )
        return Page(frame, view, view.style.label, _recipe_words(view))

    def _flowers(self) -> Iterator[Page]:
        frame = self._frame(
            addresses.FLOWERS,
            "flowers.html",
            "flowers",
            "Flowers",
            "What grows here, and when it can be cut.",
            HOME,
        )
        yield Page(frame, lists.flowers_view(self.catalogue), "Page", "")
        for stem in self.catalogue.studio.stems.values():
            view = stem_view(self.catalogue, stem)
            about = view.about or f"{view.name}: {view.season.sentence}"
            frame = self._frame(
                addresses.of_stem(stem.id), "stem.html", "flowers", view.name, about, FLOWERS
            )
            yield Page(frame, view, "Flower", f"{view.botanical} {view.group} {view.about}")

    def _made(self) -> Iterator[Page]:
        pieces = self.catalogue.made()
        if not pieces:
            return
        about = "Pieces we have made, each with the recipe it was made from."
        frame = self._frame(addresses.MADE, "made_list.html", "made", "Made here", about, HOME)
        yield Page(frame, made_list_view(self.catalogue), "Page", "")
        for made in pieces:
            yield self._piece(addresses.of_made(made.id), made_view(self.catalogue, made))

    def _piece(self, path: str, view: MadeView) -> Page:
        image = _share_image(view.photos[0])
        data = structured_data.made_work(view, self.absolute(image[0]), self.absolute(path))
        frame = self._frame(
            path,
            "made.html",
            "made",
            view.title,
            view.about or view.photos[0].alt,
            MADE,
            data=[data],
            image=image,
            tint=tint_of(view.recipe.band) if view.recipe else None,
        )
        return Page(frame, view, "Made here", f"{view.when} {view.about}")

    def _lessons(self) -> Iterator[Page]:
        lessons = lessons_shown(self.catalogue)
        if not lessons:
            return
        prose = {
            each.id: self.writer.prose(each.markdown, addresses.of_lesson(each.id))
            for each in lessons
        }
        about = "What to learn, in the order to take it."
        frame = self._frame(addresses.LESSONS, "lessons.html", "lessons", "Lessons", about, HOME)
        yield Page(frame, lessons_view(self.catalogue, prose), "Page", "")
        for lesson in lessons:
            view = lesson_view(self.catalogue, lesson, prose[lesson.id])
            frame = self._frame(
                view.href, "lesson.html", "lessons", view.title, view.summary, LESSONS
            )
            yield Page(frame, view, "Lesson", f"{view.summary} {lesson.markdown}")

    def _prose(self) -> Iterator[Page]:
        for page in pages_shown(self.catalogue):
            path = addresses.of_page(page.id)
            view = page_view(page, self.writer.prose(page.markdown, path))
            frame = self._frame(path, "prose.html", page.id, view.title, view.summary, HOME)
            yield Page(frame, view, "Page", f"{view.summary} {page.markdown}")

    def _helpers(self) -> Iterator[Page]:
        """Pages that lead on: nothing of them is to be found by a search."""
        for path, template, title in (
            (addresses.SEARCH, "search.html", "Search"),
            (addresses.NOT_FOUND, "404.html", "This page isn't here"),
        ):
            frame = self._frame(path, template, "", title, "", indexed=False)
            yield Page(frame, lists.not_found_view(), "", "")

    def absolute(self, path: str) -> str:
        """An address on the web; empty where the studio gave no `site_url`, or for no path."""
        return f"{self.site_url}{path}" if self.site_url and path else ""

    def _frame(
        self,
        path: str,
        template: str,
        section: str,
        title: str,
        description: str,
        *crumbs: Link,
        data: list[dict[str, object]] | None = None,
        image: tuple[str, str] = ("", ""),
        tint: Tint | None = None,
        indexed: bool = True,
    ) -> PageFrame:
        whole = [HOME, *(c for c in crumbs if c != HOME)] if crumbs else []
        told = [*(data or []), structured_data.path_back(whole, title, self.site_url)]
        return PageFrame(
            path=path,
            template=template,
            section=section,
            title=title,
            description=" ".join(description.split()),
            crumbs=tuple(whole),
            canonical="" if self.catalogue.staff else self.absolute(_clean(path)),
            share_image="" if self.catalogue.staff else self.absolute(image[0]),
            share_alt=image[1],
            tint=tint,
            structured_data=""
            if self.catalogue.staff or not self.site_url or not indexed
            else structured_data.written(*told),
            indexed=indexed and not self.catalogue.staff,
        )


def _clean(path: str) -> str:
    return "" if path == addresses.HOME else path


def _share_image(photo: object) -> tuple[str, str]:
    card = getattr(photo, "share_card", "")
    return (card, getattr(photo, "alt", "")) if card else ("", "")


def _recipe_words(view: ClientRecipe) -> str:
    stems = " ".join(f"{line.name} {line.botanical}" for line in view.lines)
    return f"{view.summary} {view.style.label} {stems}"

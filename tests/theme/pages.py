"""Every template with the view it is made for, rendered as the sites render it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from corymb.site.render import render
from corymb.views import (
    book,
    care,
    cut,
    frame,
    links,
    orders,
    pages,
    papers,
    prices,
    recipe,
    season,
    stem,
    training,
    week,
    weeks_ahead,
)
from corymb.views.kept import KeptView
from corymb.views.locked import LockedView
from corymb.views.pieces import Audience
from tests.theme.filling import filled

VIEWS: tuple[tuple[str, Audience, Any], ...] = (
    ("home.html", "clients", pages.HomeView),
    ("arrangements.html", "clients", pages.ArrangementsView),
    ("style.html", "clients", pages.StyleView),
    ("recipe.html", "clients", recipe.ClientRecipe),
    ("recipe.html", "staff", recipe.StaffRecipe),
    ("in_season.html", "clients", season.InSeasonView),
    ("your_date.html", "clients", season.YourDateView),
    ("flowers.html", "clients", pages.FlowersView),
    ("stem.html", "clients", stem.ClientStem),
    ("stem.html", "staff", stem.StaffStem),
    ("made_list.html", "clients", pages.MadeListView),
    ("made.html", "clients", pages.MadeView),
    ("made.html", "staff", pages.StaffMade),
    ("kept.html", "clients", KeptView),
    ("locked.html", "staff", LockedView),
    ("weeks_ahead.html", "staff", weeks_ahead.WeeksAheadView),
    ("orders.html", "staff", orders.OrdersView),
    ("order.html", "staff", orders.OrderView),
    ("cut.html", "staff", cut.CutListView),
    ("bench_sheets.html", "staff", papers.BenchSheetsView),
    ("labels.html", "staff", papers.LabelsView),
    ("load_sheet.html", "staff", papers.LoadSheetView),
    ("collection.html", "staff", papers.CollectionView),
    ("care_cards.html", "staff", care.CareCardsView),
    ("prices.html", "staff", prices.PriceListView),
    ("standing.html", "staff", orders.StandingView),
    ("week.html", "staff", week.WeekView),
    ("lessons.html", "staff", pages.LessonsView),
    ("lesson.html", "staff", pages.LessonView),
    ("learning.html", "staff", training.PathView),
    ("practice.html", "staff", training.PracticeView),
    ("questions.html", "staff", training.QuestionsView),
    ("record.html", "staff", training.RecordView),
    ("prose.html", "clients", pages.ProseView),
    ("book.html", "clients", book.BookView),
    ("book.html", "staff", book.BookView),
    ("style_link.html", "clients", links.StyleLinkView),
    ("style_link_file.html", "clients", links.StyleLinkView),
    ("links.html", "staff", links.LinksView),
    ("search.html", "clients", pages.SearchView),
    ("404.html", "clients", pages.NotFoundView),
    ("no_signal.html", "staff", pages.NotFoundView),
)
IDS = [f"{template}-{audience}" for template, audience, _ in VIEWS]


def rendered(
    template: str, audience: Audience, view: Any, text: str, *, empty: bool = False
) -> str:
    """A page whose every text is `text`; with `empty`, whatever may be missing is."""
    return rendered_view(template, audience, filled(view, text, empty=empty), text, empty=empty)


def rendered_view(
    template: str, audience: Audience, view: Any, text: str, *, empty: bool = False
) -> str:
    """A view on its page, in a frame whose every text is `text`."""
    site = replace(filled(frame.SiteFrame, text, empty=empty), audience=audience, language="en-IE")
    path = template if template == "404.html" else "arrangements/here.html"
    page = replace(filled(frame.PageFrame, text, empty=empty), path=path, template=template)
    return render(site, page, view).decode()

"""The pages that lead on to others: home, arrangements, a style, flowers, and the lost page."""

from __future__ import annotations

from decimal import Decimal

from corymb.language import gettext as _
from corymb.language.locales import month_names
from corymb.studio.models import Style
from corymb.trade.colour.words import WORDS
from corymb.trade.money.price_steps import price_steps
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.made import made_cards
from corymb.views.compose.recipes import card_of
from corymb.views.compose.stems import stem_card, stem_groups
from corymb.views.compose.wording import money, sentence, third_of_day
from corymb.views.pages import (
    ArrangementsView,
    FlowersView,
    HomeView,
    NotFoundView,
    PriceLimit,
    SearchView,
    StyleView,
)
from corymb.views.pieces import Link
from corymb.views.recipe import RecipeCard

ON_HOME = 6  # arrangements on the front page
MADE_ON_HOME = 4  # pieces of made work there: large photos, which a phone has to fetch


def style_view(catalogue: Catalogue, style: Style) -> StyleView:
    """A style's page."""
    cards = [card_of(catalogue, r) for r in catalogue.recipes() if r.style == style.id]
    return StyleView(
        id=style.id,
        name=style.name,
        plural=style.plural,
        href=addresses.of_style(style.id),
        about=style.about,
        known_object=style.known_object,
        recipes=tuple(cards),
    )


def styles_shown(catalogue: Catalogue) -> tuple[StyleView, ...]:
    """The styles that this audience has a recipe of, in the order of the menus."""
    views = (style_view(catalogue, style) for style in catalogue.studio.styles.values())
    return tuple(view for view in views if view.recipes)


def arrangements_view(catalogue: Catalogue) -> ArrangementsView:
    """Every arrangement by style, with the words there are to filter by."""
    styles = styles_shown(catalogue)
    cards = [card for style in styles for card in style.recipes]
    found = {word for card in cards for word in card.colour_words}
    colours = tuple(word for word in WORDS if word in found)
    return ArrangementsView(styles, colours, month_names(), _price_limits(catalogue, cards))


def _price_limits(catalogue: Catalogue, cards: list[RecipeCard]) -> tuple[PriceLimit, ...]:
    """The amounts that part these arrangements by their guide prices."""
    amounts = [Decimal(card.price_amount) for card in cards if card.price_amount]
    told = _("up to {price}")
    house = catalogue.studio.house
    return tuple(
        PriceLimit(f"{step:f}", told.format(price=money(step, house)))
        for step in price_steps(amounts)
    )


def flowers_view(catalogue: Catalogue) -> FlowersView:
    """Every flower by group, with the words there are to filter by."""
    groups = stem_groups(catalogue)
    found = {word for group in groups for stem in group.stems for word in stem.colour_words}
    return FlowersView(groups, tuple(word for word in WORDS if word in found), month_names())


def home_view(catalogue: Catalogue) -> HomeView:
    """The front page, in the week it is built."""
    house = catalogue.studio.house
    styles = styles_shown(catalogue)
    cards = [card for style in styles for card in style.recipes]
    now = [card for card in cards if _now(catalogue, card)]
    lead = _lead(now or cards)
    return HomeView(
        about=house.about,
        place=house.place.name,
        lead=lead,
        in_season=_one_of_each_style([card for card in now if card is not lead])[:ON_HOME],
        season_words=sentence(third_of_day(catalogue.today)).rstrip("."),
        styles=styles,
        standing_now=tuple(
            card
            for stem in catalogue.studio.stems.values()
            if (card := stem_card(catalogue, stem)).season.cells[catalogue.week - 1].state
            == "pictured"
        ),
        made=made_cards(catalogue)[:MADE_ON_HOME],
    )


def _now(catalogue: Catalogue, card: RecipeCard) -> bool:
    return card.season.cells[catalogue.week - 1].state == "pictured"


def _lead(cards: list[RecipeCard]) -> RecipeCard | None:
    """The most generous arrangement there is: the one with the most stems."""
    return max(cards, key=lambda card: (card.stems_total, card.name), default=None)


def _one_of_each_style(cards: list[RecipeCard]) -> tuple[RecipeCard, ...]:
    """The same cards, dealt out style by style, so that a short list shows them all."""
    by_style: dict[str, list[RecipeCard]] = {}
    for card in cards:
        by_style.setdefault(card.style, []).append(card)
    rounds = max(map(len, by_style.values()), default=0)
    return tuple(
        each[turn] for turn in range(rounds) for each in by_style.values() if turn < len(each)
    )


def search_view() -> SearchView:
    """The search; it finds everything, so that its lists are the same for everyone."""
    return SearchView(
        (
            Link(_("all arrangements"), addresses.ARRANGEMENTS),
            Link(_("all flowers"), addresses.FLOWERS),
        )
    )


def not_found_view(catalogue: Catalogue) -> NotFoundView:
    """Where to go from an address that leads nowhere."""
    links = [
        Link(_("All arrangements"), addresses.ARRANGEMENTS),
        Link(_("Flowers"), addresses.FLOWERS),
    ]
    if catalogue.made():
        links.append(Link(_("Made here"), addresses.MADE))
    return NotFoundView(tuple(links))


def no_signal_view() -> NotFoundView:
    """Where to go in a field without signal: what is always kept for it."""
    return NotFoundView(
        (
            Link(_("This week"), addresses.THIS_WEEK),
            Link(_("Orders"), addresses.ORDERS),
            Link(_("All arrangements"), addresses.ARRANGEMENTS),
            Link(_("Flowers"), addresses.FLOWERS),
        )
    )

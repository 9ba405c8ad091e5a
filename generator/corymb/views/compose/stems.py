"""A flower's views: its card in a list, and its page for clients and for staff."""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import figures
from corymb.ledger import kept
from corymb.studio.models import Stem
from corymb.trade.colour.words import WORDS, colour_word
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.dates import dates_words
from corymb.views.compose.durations import days_words
from corymb.views.compose.hazards import at_the_bench, take_home
from corymb.views.compose.lengths import length_words, lengths_words
from corymb.views.compose.seasons import season_of_stem, weeks_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.wording import money, sentence
from corymb.views.pieces import Fact, Link, Patch
from corymb.views.stem import ClientStem, CuttingView, StaffStem, StemCard, StemGroup

NOTICED = 0.2  # a smaller share of a flower isn't what it is called by


def stem_card(catalogue: Catalogue, stem: Stem) -> StemCard:
    """A flower in a list."""
    return _card(catalogue, stem.id)


@kept
def _card(catalogue: Catalogue, stem_id: str) -> StemCard:
    stem = catalogue.stem(stem_id)
    shares: dict[str, float] = {}
    for part in stem.colours:
        word = colour_word(part.hex)
        shares[word] = shares.get(word, 0.0) + float(part.share or 0)
    return StemCard(
        name=stem.name,
        botanical=stem.botanical,
        href=addresses.of_stem(stem.id),
        hex=stem.main_colour.hex,
        use=stem.use,
        season=season_of_stem(catalogue, stem.id),
        colour_words=tuple(word for word in WORDS if shares.get(word, 0) >= NOTICED),
        head_svg=catalogue.heads.get(stem.id, ""),
    )


def stem_groups(catalogue: Catalogue) -> tuple[StemGroup, ...]:
    """Every flower by group of plants, in the order of the files."""
    return tuple(
        StemGroup(group, tuple(stem_card(catalogue, catalogue.stem(each)) for each in stem_ids))
        for group, stem_ids in catalogue.studio.groups.items()
    )


def stem_view(catalogue: Catalogue, stem: Stem) -> ClientStem:
    """A flower's page: with how it is cut for staff, without for clients."""
    client = _client_view(catalogue, stem)
    if not catalogue.staff:
        return client
    return StaffStem(**vars(client), cutting=_cutting_view(catalogue, stem))


def _client_view(catalogue: Catalogue, stem: Stem) -> ClientStem:
    at_best, house = catalogue.beds.at_best(stem.id), catalogue.studio.house
    return ClientStem(
        id=stem.id,
        name=stem.name,
        botanical=stem.botanical,
        group=_group_of(catalogue, stem),
        about=stem.about,
        head_svg=catalogue.heads.get(stem.id, ""),
        colours=tuple(
            Patch(part.name, part.hex, round(100 * float(part.share or 0), 2))
            for part in stem.colours
        ),
        season=season_of_stem(catalogue, stem.id),
        at_best=weeks_words(at_best) if at_best else "",
        facts=(
            Fact(length_words(stem.head, house), _("across a head")),
            Fact(lengths_words(stem.length, house), _("as cut")),
            Fact(days_words(stem.vase_life), _("in the vase")),
        ),
        use=stem.use,
        scent=trade_word("scent", stem.scent),
        cautions=take_home([stem]),
        used_in=_used_in(catalogue, stem),
    )


def _group_of(catalogue: Catalogue, stem: Stem) -> str:
    groups = catalogue.studio.groups.items()
    return next(group for group, stem_ids in groups if stem.id in stem_ids)


def _used_in(catalogue: Catalogue, stem: Stem) -> tuple[Link, ...]:
    links = []
    for look in catalogue.with_stem(stem.id):
        links.append(Link(look_name(catalogue, look), addresses.of_look(look)))
    return tuple(links)


def _cutting_view(catalogue: Catalogue, stem: Stem) -> CuttingView:
    house = catalogue.studio.house
    hours, step = stem.conditioning.hours, stem.cutting_step
    steps = ngettext("{number} stem", "{number} stems", step).format(number=step)
    bought = money(stem.bought, house) if stem.bought is not None else _("not to be had")
    facts = [
        *([Fact(_("{hours} h").format(hours=hours), _("to condition"))] if hours else []),
        Fact(str(stem.stems_per_bucket), _("to a bucket")),
        Fact(steps, _("cutting step")),
        Fact(_("{number} g").format(number=figures(stem.weight.grams)), _("a stem")),
        Fact(money(stem.grown, house), _("grown")),
        Fact(bought, _("bought")),
    ]
    return CuttingView(
        cut_when=sentence(stem.cut_when),
        conditioning=sentence(stem.conditioning.do),
        facts=tuple(facts),
        bed=stem.bed,
        dates=dates_words(catalogue, stem),
        source=stem.source,
        notes=stem.notes,
        cautions=at_the_bench([stem]),
    )

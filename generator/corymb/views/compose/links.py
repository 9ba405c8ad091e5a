"""What does a style link's page say to its client? The looks as they will be on the day."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from corymb.language import gettext as _
from corymb.studio.models.link import StyleLink
from corymb.studio.values.dates import IsoWeek
from corymb.trade.light.seen import INDICATIVE
from corymb.trade.light.sun import Site
from corymb.trade.season.sureness import MEANS
from corymb.trade.season.watch import cell_of
from corymb.trade.style_links import ShownLook, light_of, shown_looks, stands
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.durations import days_words
from corymb.views.compose.hazards import not_known, take_home
from corymb.views.compose.images import images_of
from corymb.views.compose.link_light import light_words, other_lights
from corymb.views.compose.link_look import doubtful, link_look
from corymb.views.compose.link_mail import answer_mail
from corymb.views.compose.look_words import Words
from corymb.views.compose.orders.when import day_in_full, hours_words
from corymb.views.compose.week_words import day_words
from corymb.views.compose.wording import sentence
from corymb.views.links import KeptAlike, LinkLook, StyleLinkView
from corymb.views.pieces import Fact, ImagePair


def standing_links(catalogue: Catalogue) -> tuple[StyleLink, ...]:
    """The links whose pages are there on the day of the build."""
    links = catalogue.studio.links.values()
    return tuple(link for link in links if stands(link, catalogue.today))


def style_link_view(
    catalogue: Catalogue, link: StyleLink, drawings: Mapping[str, Drawing]
) -> StyleLinkView:
    """The page of a link; `drawings` are those made for it, by their address."""
    return _Page(catalogue, link, drawings).view()


@dataclass(frozen=True)
class _Page:
    catalogue: Catalogue
    link: StyleLink
    drawings: Mapping[str, Drawing]

    def view(self) -> StyleLinkView:
        catalogue, link = self.catalogue, self.link
        contact, day = catalogue.studio.house.contact, day_in_full(link.date)
        looks = tuple(self._look(shown) for shown in self.shown)
        spells = light_of(link, Site.of(catalogue.studio.house.place))
        cautions = take_home(map(catalogue.stem, dict.fromkeys(self._stems_of(self.can))))
        return StyleLinkView(
            href=addresses.of_link(link.code),
            title=link.title,
            share=self._share(),
            day=day,
            note=tuple(part.strip() for part in link.note.split("\n\n") if part.strip()),
            place=_capital(link.where.place) if link.where else "",
            hours=hours_words(link.hours) if link.hours else "",
            light=light_words(spells),
            indicative=_(INDICATIVE) if other_lights(spells) else "",
            looks=looks,
            sure_means=self._sure_means(),
            keeping=self._keeping(),
            cautions=cautions,
            not_known=not_known(bool(cautions)) if self.can else "",
            answer=answer_mail(
                contact.email, link, day, [look.chosen_words for look in looks if look.can]
            ),
            answer_within=days_words(contact.answer_within) if contact.answer_within else "",
            last_day=day_words(link.expires),
            expires=link.expires.isoformat(),
            asked_day=link.date.isoformat(),
        )

    @cached_property
    def shown(self) -> tuple[ShownLook, ...]:
        """The looks this audience may see."""
        catalogue = self.catalogue
        return shown_looks(self.link, catalogue.studio.recipes, catalogue.looks, catalogue.makeable)

    @property
    def can(self) -> tuple[ShownLook, ...]:
        """Those of them that can be made on the day."""
        return tuple(shown for shown in self.shown if shown.can)

    @cached_property
    def week(self) -> IsoWeek:
        return IsoWeek.of(self.link.date)

    def _share(self) -> ImagePair | None:
        truest = sorted(self.shown, key=lambda each: (not each.can, each.swapped))
        return images_of(self.catalogue, truest[0].best.look) if truest else None

    def _look(self, shown: ShownLook) -> LinkLook:
        spells = light_of(self.link, Site.of(self.catalogue.studio.house.place))
        return link_look(self.catalogue, self.link, shown, other_lights(spells), self.drawings)

    def _sure_means(self) -> tuple[Fact, ...]:
        """What the words mean that are used for what may change."""
        used = {
            word
            for shown in self.can
            for word in doubtful(self.catalogue, shown.piece, cell_of(self.week))
        }
        return tuple(
            Fact(sentence(_(word)).rstrip("."), _(means)) for word, means in MEANS if word in used
        )

    def _keeping(self) -> tuple[KeptAlike, ...]:
        """How they are kept, those together that are kept alike."""
        alike: dict[str, list[str]] = {}
        for shown in self.can:
            words = Words.of(self.catalogue.studio, shown.best.look, shown.best.answer.swaps)
            if care := words.care():
                alike.setdefault(care, []).append(shown.asked.recipe.name)
        if len(alike) == 1:
            return (KeptAlike("", next(iter(alike))),)
        return tuple(
            KeptAlike("; ".join(dict.fromkeys(names)), care) for care, names in alike.items()
        )

    def _stems_of(self, shown: Sequence[ShownLook]) -> list[str]:
        return [line.stem for each in shown for line in each.piece.look.lines]


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]

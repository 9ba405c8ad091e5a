"""How does one look of a style link look on its day: pictures, stems, price, what may change?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.studio.models.link import StyleLink
from corymb.studio.values.dates import IsoWeek
from corymb.trade.looks import Look, sized
from corymb.trade.money.from_order import guide_in_size
from corymb.trade.order_lines import REGULAR
from corymb.trade.orders.pieces import Piece
from corymb.trade.season.sureness import SURE
from corymb.trade.season.watch import cell_of
from corymb.trade.sizes import piece_size
from corymb.trade.style_links import ShownLook
from corymb.views.compose import addresses
from corymb.views.compose.answers import (
    look_name,
    nearest_words,
    never_words,
    state_words,
    why_not,
)
from corymb.views.compose.bands import band_of
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.durations import days_words
from corymb.views.compose.images import describe, images_of
from corymb.views.compose.lengths import length_words
from corymb.views.compose.link_light import OtherLight
from corymb.views.compose.plants import names_of
from corymb.views.compose.sizes import told_cm
from corymb.views.compose.swaps import swap_view
from corymb.views.compose.trade_words import size_words, trade_word
from corymb.views.compose.wording import price_guide, sentence
from corymb.views.links import LinkLine, LinkLook, ShownImage
from corymb.views.pieces import Fact, PhotoView, PictureView

IN_NO_WATER = ("worn", "carried")


def link_look(
    catalogue: Catalogue,
    link: StyleLink,
    shown: ShownLook,
    lights: Sequence[OtherLight],
    drawings: Mapping[str, Drawing],
) -> LinkLook:
    """A look of a link as it will be on the day, or why it can't be."""
    piece, week = shown.piece, IsoWeek.of(link.date)
    variant = piece.recipe.variants.get(piece.look.variant)
    size = "" if piece.size == REGULAR else size_words(piece.size)
    chosen = ", ".join(filter(None, [look_name(catalogue, piece.look), size]))
    images = _Images(catalogue, link, shown, drawings)
    return LinkLook(
        id=f"look-{shown.number}",
        name=piece.recipe.name,
        variant=variant.name if variant else "",
        size=size,
        style=catalogue.style_of(piece.recipe).name,
        summary=variant.about if variant else piece.recipe.summary,
        chosen_words=chosen,
        href=addresses.of_look(piece.look),
        can=shown.can,
        state=_state(catalogue, shown),
        images=images.views(lights),
        facts=tuple(_facts(catalogue, piece)),
        band=band_of(catalogue, piece.look),
        lines=_lines(catalogue, piece),
        swaps=tuple(swap_view(catalogue, swap) for swap in shown.best.answer.swaps),
        doubts=_doubts(catalogue, piece, cell_of(week)) if shown.can else "",
        why_not="" if shown.can else _why_not(catalogue, shown, week),
    )


def _state(catalogue: Catalogue, shown: ShownLook) -> str:
    if not shown.can:
        return _("Not on that day")
    if shown.instead:
        asked = look_name(catalogue, shown.asked.look)
        return _("In place of ‘{asked}’, which can’t be made on that day").format(asked=asked)
    how = state_words(catalogue, shown.best, shown.asked.look)
    return _("On that day: {how}").format(how=_(how))


def _why_not(catalogue: Catalogue, shown: ShownLook, week: IsoWeek) -> str:
    if all(best.state == "none" for best in shown.year):
        return sentence(never_words(catalogue, shown.year))
    lacking = why_not(catalogue, [shown.year[cell_of(week) - 1].answer])
    return f"{sentence(lacking)} {nearest_words(shown.year, week, catalogue.today)}".strip()


def _facts(catalogue: Catalogue, piece: Piece) -> Iterator[Fact]:
    total = sum(sized(piece.look, piece.recipe.sizes.get(piece.size)))
    yield Fact(str(total), ngettext("stem", "stems", total))
    large = piece_size(piece.recipe, piece.recipe.sizes.get(piece.size))
    across = told_cm(large.across_cm, piece.size)
    yield Fact(length_words(across, catalogue.studio.house), _("across"))
    if price := price_words(catalogue, piece):
        yield Fact(price, _("price guide"))
    if catalogue.style_of(piece.recipe).place not in IN_NO_WATER:
        lives = [catalogue.stem(line.stem).vase_life for line in piece.look.lines]
        shortest = min(lives, key=lambda life: (life.fewest, life.most))
        yield Fact(days_words(shortest), _("until the first fades"))


def price_words(catalogue: Catalogue, piece: Piece) -> str:
    """The guide price in the size that is asked for; '' where none is written down."""
    studio = catalogue.studio
    guide = guide_in_size(piece, studio.recipes, studio.stems, studio.house.money)
    return price_guide(guide, studio.house)


def _lines(catalogue: Catalogue, piece: Piece) -> tuple[LinkLine, ...]:
    counts = sized(piece.look, piece.recipe.sizes.get(piece.size))
    before = piece.look.unswapped or piece.look.lines
    views = []
    for line, was, count in zip(piece.look.lines, before, counts, strict=True):
        stem = catalogue.stem(line.stem)
        instead = catalogue.stem(was.stem).name if line.stem != was.stem else ""
        views.append(LinkLine(count, stem.name, stem.main_colour.hex, instead))
    return tuple(views)


def doubtful(catalogue: Catalogue, piece: Piece, week: int) -> dict[str, list[str]]:
    """The stems of a piece that don't surely stand in a week, by how sure they are."""
    found: dict[str, list[str]] = {}
    for stem in dict.fromkeys(line.stem for line in piece.look.lines):
        sure = catalogue.beds.sure(stem, week)
        if sure != SURE:
            found.setdefault(sure, []).append(stem)
    return found


def _doubts(catalogue: Catalogue, piece: Piece, week: int) -> str:
    """`Likely in that week: plum scabious. Touch and go in that week: shell dahlia.`"""
    return " ".join(
        sentence(
            _("{how_sure} in that week: {stems}").format(
                how_sure=trade_word("sureness", sure), stems=names_of(catalogue, stems)
            )
        )
        for sure, stems in doubtful(catalogue, piece, week).items()
    )


class _Images:
    """The ways in which one look is shown."""

    def __init__(
        self,
        catalogue: Catalogue,
        link: StyleLink,
        shown: ShownLook,
        drawings: Mapping[str, Drawing],
    ) -> None:
        self.catalogue, self.link, self.shown, self.drawings = catalogue, link, shown, drawings

    def views(self, lights: Sequence[OtherLight]) -> tuple[ShownImage, ...]:
        """A photo where it will look like that, the drawing, and the drawing in other lights."""
        look = self.shown.best.look
        photo = None if self.shown.swapped else images_of(self.catalogue, look).photo
        lit = lights if self.shown.can else ()
        by_day = _("Daylight") if lit else _("Drawn")
        drawn = _("Drawn from its recipe, to scale")
        return (
            *([ShownImage(_("Photo"), self._credit(photo), None, photo)] if photo else []),
            ShownImage(by_day, drawn, self._picture(look), None),
            *(ShownImage(each.name, drawn, self._picture(look, each), None) for each in lit),
        )

    def _credit(self, photo: PhotoView) -> str:
        if self.shown.asked.size != REGULAR:
            return _("Photo: {name}; of the regular size").format(name=photo.credit)
        return _("Photo: {name}").format(name=photo.credit) if photo.credit else ""

    def _picture(self, look: Look, light: OtherLight | None = None) -> PictureView:
        number = self.shown.number
        own = addresses.of_link_picture(self.link.code, number, light.id if light else "")
        drawing = self.drawings.get(own) or self.catalogue.drawings[look.id]
        alt = describe(self.catalogue, self.shown.to_draw)
        if light:
            seen = _("Seen in this light: {light}.").format(light=light.name)
            alt = f"{alt} {seen}"
        return PictureView(drawing.href, alt, drawing.width, drawing.height)

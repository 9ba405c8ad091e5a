"""How does the whole picture come together? Sheet upon sheet, from the wall to the nearest head."""

from corymb.picture import backdrop, vessels
from corymb.picture.arrangement import Arrangement, colour_hex
from corymb.picture.geometry import Box, moved
from corymb.picture.heads import HeadShop, laid
from corymb.picture.layout import Band, Bloom, Layout
from corymb.picture.leaves import leaf_sheets
from corymb.picture.seed import dice
from corymb.picture.stems import stalk_sheets
from corymb.picture.styles import style_of
from corymb.picture.styles.base import BOUND, tie_half_cm
from corymb.picture.styles.crown import ring_of
from corymb.picture.svg import element, safe_id, text_element
from corymb.picture.words import description, title

PORTRAIT, LANDSCAPE = (1200.0, 1400.0), (1400.0, 1050.0)
MARGIN = 0.075  # of the sheet's shorter side, left free all round
SHADOW, SHADOW_INK = (3.5, 9.0), "#2a1d14"


def draw(arrangement: Arrangement) -> str:
    """The arrangement as an SVG of layered cut paper; the same values give the same bytes."""
    style = style_of(arrangement)
    arrangement = style.as_used(arrangement)
    layout = style.lay(arrangement)
    wide = layout.box.width > layout.box.height * 1.12
    size = LANDSCAPE if wide else PORTRAIT
    cm = _scale(layout.box, size)
    middle = (layout.box.left + layout.box.right) / 2 * cm
    ground = _ground(layout.box, size, cm)
    shop = HeadShop(arrangement, layout.blooms, cm)
    sheet = Box(0, 0, *size)
    background = colour_hex(arrangement.background)
    if style.lying:
        scene = backdrop.wall(sheet, background) + backdrop.mount(sheet, background, arrangement.id)
    else:
        edge = ground - size[1] * 0.055
        scene = backdrop.wall(sheet, background)
        scene += backdrop.table(sheet, edge, background, arrangement.id)
    papers = pieces(arrangement, layout, shop, cm, style.lying)
    held = moved(size[0] / 2 - middle, ground)
    body = element("g", papers, transform=held.written(), color=SHADOW_INK)
    name = safe_id(arrangement.id)
    return element(
        "svg",
        text_element("title", title(arrangement), id=f"{name}-title"),
        text_element("desc", description(arrangement), id=f"{name}-desc"),
        element("defs", *shop.definitions.values()),
        scene,
        body,
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {size[0]:.0f} {size[1]:.0f}",
        role="img",
        aria_labelledby=f"{name}-title {name}-desc",
    )


def _scale(box: Box, size: tuple[float, float]) -> float:
    """Drawing units to a centimetre: as large as the margins allow."""
    margin = MARGIN * min(size)
    return min((size[0] - 2 * margin) / box.width, (size[1] - 2.2 * margin) / box.height)


def _ground(box: Box, size: tuple[float, float], cm: float) -> float:
    """Where on the sheet the ground lies, so that what is drawn stands in the middle."""
    free = size[1] - box.height * cm
    return size[1] - box.bottom * cm - free * 0.5


def pieces(arrangement: Arrangement, layout: Layout, shop: HeadShop, cm: float, lying: bool) -> str:
    """Back heads, stems, leaves, the vessel, then the nearer heads."""
    halves = _vessel(arrangement, cm)
    by_band = {band: [b for b in layout.blooms if b.band is band] for band in Band}
    back = [stalk for stalk in layout.stalks if stalk.band is Band.BACK]
    near = [stalk for stalk in layout.stalks if stalk.band is not Band.BACK]
    leaves = leaf_sheets(layout.leaves, cm)
    shadow = "" if lying else _shadow(arrangement, layout, cm)
    return "".join(
        [
            shadow,
            halves.behind,
            stalk_sheets(back, cm),
            leaves if layout.leaves_first else "",
            _laid(by_band[Band.BACK], shop, cm),
            stalk_sheets(near, cm),
            "" if layout.leaves_first else leaves,
            halves.before,
            _laid(by_band[Band.MIDDLE], shop, cm),
            _laid(by_band[Band.FRONT], shop, cm),
        ]
    )


def _laid(blooms: list[Bloom], shop: HeadShop, cm: float) -> str:
    """Heads of one band, the higher ones first, each over its flat shadow."""
    parts = []
    for bloom in sorted(blooms, key=lambda bloom: (bloom.lift, bloom.at.y)):
        name, place = shop.name_of(bloom), laid(bloom, cm)
        parts.append(
            element(
                "use",
                href=f"#{name}s",
                opacity=".22",
                transform=moved(*SHADOW).then(place).written(),
            )
        )
        parts.append(element("use", href=f"#{name}", transform=place.written()))
    return "".join(parts)


def _vessel(arrangement: Arrangement, cm: float) -> vessels.Halves:
    kind = vessels.kind_of(arrangement)
    half, high = vessels.size_cm(arrangement)
    if arrangement.vessel.kind in BOUND:
        half = tie_half_cm(arrangement)
    if style_of(arrangement).ring:
        kind, ring = vessels.VESSELS["ring"], ring_of(arrangement)
        half, high = ring.half, ring.tall
    background = colour_hex(arrangement.background)
    colour = vessels.material(arrangement.vessel.name, kind.usual, background)
    rng = dice(arrangement.id, "vessel")
    name = arrangement.vessel.name
    return kind.draw(vessels.Body(half * cm, high * cm, colour, background, rng, cm, name))


def _shadow(arrangement: Arrangement, layout: Layout, cm: float) -> str:
    ends = [stalk.end.x for stalk in layout.stalks if stalk.end]
    half, _ = vessels.size_cm(arrangement)
    if arrangement.vessel.kind in BOUND and ends:
        half = max(abs(x) for x in ends)
    half = max(half * 1.15, 1.0) * cm
    return backdrop.ground_shadow(half, max(half * 0.1, 9), colour_hex(arrangement.background))

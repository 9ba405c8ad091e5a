"""How is the plan drawn, so that it can be read on any printer? Outlines, pale papers, numbers.

A kind is told by its number, and its use by the line about it; colour only helps.
"""

from corymb.language import gettext as _
from corymb.language.lengths import CM_IN_AN_INCH, INCHES, length_in
from corymb.picture.arrangement import colour_hex
from corymb.picture.colour import mix
from corymb.picture.geometry import Box, sized
from corymb.picture.paths import written
from corymb.picture.plan.heads import Placed, Plan
from corymb.picture.plan.lettering import Number, numbers_of
from corymb.picture.plan.numbering import in_order
from corymb.picture.svg import Attribute, element, number, safe_id, text_element
from corymb.picture.words import title

WIDE, MARGIN, FOOT = 1000.0, 36.0, 96.0
INK, PAPER, QUIET = "#221d18", "#ffffff", "#8a8178"
PALE = 0.75  # so much white is mixed into a stem's colour, that its number stays legible
BARS_CM = (1.0, 2.0, 5.0, 10.0, 20.0, 50.0)
BARS_INCHES = tuple(length * float(CM_IN_AN_INCH) for length in (1, 2, 4, 6, 12, 24))
DASHES = {"foliage": "3 6", "line": "14 6"}  # focal heads have the heavier line, filler the plain
HEAVY, PLAIN = 4.5, 2.0


def draw_plan(plan: Plan) -> str:
    """The plan as SVG, its front at the foot; the same values give the same bytes."""
    box = plan.ground.box
    cm = (WIDE - 2 * MARGIN) / box.width
    high = box.height * cm + 2 * MARGIN + FOOT
    left, top = MARGIN - box.left * cm, MARGIN - box.top * cm
    name = f"{safe_id(plan.arrangement.id)}-plan"
    outline = written([line.through(sized(cm, cm)) for line in plan.ground.lines()])
    lowest_first = sorted(plan.heads, key=_height)
    return element(
        "svg",
        text_element("title", _seen_from_above(plan), id=f"{name}-title"),
        text_element("desc", description(plan), id=f"{name}-desc"),
        element("rect", width=WIDE, height=high, fill=PAPER),
        element(
            "g",
            element("path", d=outline, fill="none", stroke=QUIET, stroke_width=2),
            *[_disc(head, cm) for head in lowest_first],
            *[_number(number) for number in numbers_of(lowest_first, cm)],
            transform=f"translate({number(left)} {number(top)})",
        ),
        _foot(box, cm, high, plan.arrangement.lengths_in),
        xmlns="http://www.w3.org/2000/svg",
        viewBox=f"0 0 {WIDE:.0f} {high:.0f}",
        role="img",
        aria_labelledby=f"{name}-title {name}-desc",
        font_family="sans-serif",
    )


def _height(head: Placed) -> tuple[bool, float, bool]:
    """Leaf lies lowest, then the widest; of equals a focal head lies uppermost."""
    return head.stem.use != "foliage", -head.radius, head.stem.use == "focal"


def description(plan: Plan) -> str:
    """The order of placing in words."""
    steps = "; ".join(
        f"{n}: {stem.count} {stem.name or stem.id.replace('-', ' ')}"
        for n, stem in enumerate(in_order(plan.arrangement.stems), 1)
    )
    told = _(
        "A plan to make it by, its front at the foot, about {across} across. In order of placing: "
        "{steps}."
    )
    across = length_in(plan.arrangement.lengths_in, plan.arrangement.across_cm)
    return told.format(across=across, steps=steps)


def _seen_from_above(plan: Plan) -> str:
    return _("{name}, seen from above").format(name=title(plan.arrangement))


def _disc(head: Placed, cm: float) -> str:
    line: dict[str, Attribute] = {
        "stroke": INK,
        "stroke_width": HEAVY if head.stem.use == "focal" else PLAIN,
    }
    if head.stem.use in DASHES:
        line["stroke_dasharray"] = DASHES[head.stem.use]
    fill = mix(colour_hex(head.stem.colours[0][0]), PAPER, PALE)
    return element("circle", **_at(head, cm), r=head.radius * cm, fill=fill, **line)


def _at(head: Placed, cm: float) -> dict[str, Attribute]:
    return {"cx": head.at.x * cm, "cy": head.at.y * cm}


def _number(number: Number) -> str:
    """Over all discs, with a light about it, so that no other head's line runs through it."""
    size = number.size
    return text_element(
        "text",
        str(number.head.number),
        x=number.at.x,
        y=number.at.y + size * 0.36,
        font_size=size,
        font_weight="bold" if number.head.stem.use == "focal" else "normal",
        text_anchor="middle",
        fill=INK,
        stroke=PAPER,
        stroke_width=size * 0.16,
        paint_order="stroke",
    )


def _foot(box: Box, cm: float, high: float, unit: str) -> str:
    """The scale at the left, and a mark where the front is."""
    bars = BARS_INCHES if unit == INCHES else BARS_CM
    long = max((bar for bar in bars if bar <= box.width / 4), default=bars[0])
    y, end = high - MARGIN, MARGIN + long * cm
    bar = f"M{number(MARGIN)} {number(y - 9)}v18m0-9H{number(end)}m0-9v18"
    middle, tip = WIDE / 2, high - FOOT + 4
    mark = f"M{number(middle)} {number(tip + 22)}l-14-22h28z"
    words: dict[str, Attribute] = {"font_size": 30, "fill": INK}
    return (
        element("path", d=bar, fill="none", stroke=INK, stroke_width=2.5)
        + text_element("text", length_in(unit, long), x=end + 14, y=y + 9, **words)
        + element("path", d=mark, fill=INK)
        # L10N: below a mark on a plan from above, where the front of the piece is.
        + text_element("text", _("front"), x=middle, y=tip + 52, text_anchor="middle", **words)
    )

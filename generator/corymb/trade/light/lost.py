"""What gets lost of a mix in a light, and which end of it to strengthen?

Two colours that are told apart by day may run into one; dark ones may sink where there is little
light, pale ones run together where there is much. Thresholds are house values: common practice,
no source. Indicative.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import and_list
from corymb.trade.colour.areas import ColourArea
from corymb.trade.colour.ciede2000 import difference, lab_of
from corymb.trade.light.lights import Light
from corymb.trade.light.seen import seen

NOTICED = 0.03
"""A colour with a smaller share isn't missed."""

TOLD_APART = 10.0
"""Colours at least so far apart by day (CIEDE2000) are two to the eye."""

RUN_TOGETHER = 7.0
"""Nearer than this in the light, they are one."""

SINKS_BELOW = 32.0
"""Below this lightness (L*) a colour sinks where the light is dim."""

PALE_ABOVE = 80.0
"""Above this a colour is pale."""

DARK_BELOW = 45.0
"""Below this a stem gives a mix depth."""

MOSTLY = 0.5
"""A mix of which more than this is pale looks bleached under a high sun."""


@dataclass(frozen=True)
class Pair:
    """Two colours that run together."""

    one: str
    other: str
    """Their names."""
    by_day: float
    in_light: float
    """CIEDE2000."""


@dataclass(frozen=True)
class Lost:
    """What a light takes from a mix."""

    light: Light
    pairs: tuple[Pair, ...]
    """The largest colours first."""
    sunk: tuple[str, ...]
    """Dark colours that sink, by name, largest first."""
    strengthen: str
    """`light`, `depth`, or nothing."""
    bearers: tuple[str, ...]
    """Stems of the mix that carry that end already, by id, largest first."""
    words: str
    """A few short sentences; never empty."""


@dataclass(frozen=True)
class _Colour:
    name: str
    hex: str
    share: float
    in_light: str

    @property
    def lightness(self) -> float:
        return lab_of(self.in_light)[0]


def lost_in(
    areas: Iterable[ColourArea], light: Light, called: Mapping[str, str] | None = None
) -> Lost:
    """Of a mix's colours in a light. `called` is how its stems are named in a sentence, by id."""
    whole = list(areas)
    colours = _noticed(whole, light)
    pairs = tuple(_pairs(colours))
    sunk = [c for c in colours if light.dim and c.lightness < SINKS_BELOW]
    end = _end(light, pairs, colours, bool(sunk))
    bearers = tuple(_bearers(whole, end))
    return Lost(
        light,
        pairs,
        tuple(colour.name for colour in sunk),
        end,
        bearers,
        _words(
            pairs,
            [colour.name for colour in sunk],
            _strengthen(end, [called[stem] for stem in bearers[:SAID]] if called else ()),
        ),
    )


def _noticed(areas: Iterable[ColourArea], light: Light) -> list[_Colour]:
    """Each colour once, largest first."""
    shares: dict[str, float] = defaultdict(float)
    names: dict[str, str] = {}
    for area in areas:
        shares[area.hex] += area.share
        names.setdefault(area.hex, area.name or area.hex)
    large = sorted(shares.items(), key=lambda item: (-item[1], item[0]))
    return [
        _Colour(names[hex_], hex_, share, seen(hex_, light))
        for hex_, share in large
        if share >= NOTICED
    ]


def _pairs(colours: Sequence[_Colour]) -> Iterable[Pair]:
    for one, other in combinations(colours, 2):
        by_day, in_light = difference(one.hex, other.hex), difference(one.in_light, other.in_light)
        if by_day >= TOLD_APART and in_light < RUN_TOGETHER:
            yield Pair(one.name, other.name, by_day, in_light)


def _end(light: Light, pairs: Sequence[Pair], colours: Sequence[_Colour], sinks: bool) -> str:
    """Where dark ones go, light ones must carry the piece; where pale ones do, dark ones."""
    if sinks:
        return "light"
    lightness = {colour.name: colour.lightness for colour in colours}
    if any(min(lightness[pair.one], lightness[pair.other]) > PALE_ABOVE for pair in pairs):
        return "depth"
    pale = sum(colour.share for colour in colours if colour.lightness > PALE_ABOVE)
    if light.veil and pale > MOSTLY:
        return "depth"
    return "light" if pairs else ""


def _bearers(areas: Sequence[ColourArea], end: str) -> list[str]:
    """The stems whose largest colour is pale, or dark, by day."""
    shares: dict[str, float] = defaultdict(float)
    largest: dict[str, ColourArea] = {}
    for area in areas:
        shares[area.stem] += area.share
        largest[area.stem] = max(largest.get(area.stem, area), area, key=lambda each: each.share)
    lightness = {stem: lab_of(area.hex)[0] for stem, area in largest.items()}
    bear = {
        "light": [stem for stem in shares if lightness[stem] > PALE_ABOVE],
        "depth": [stem for stem in shares if lightness[stem] < DARK_BELOW],
    }
    return sorted(bear.get(end, ()), key=lambda stem: (-shares[stem], stem))


def _strengthen(end: str, stems: Sequence[str]) -> str:
    """By more of its own stems where it has such, else by what would do it; empty for no end."""
    if not end:
        return ""
    return _(BY_MORE[end]).format(stems=and_list(stems)) if stems else _(STRENGTHEN[end])


def _words(pairs: Sequence[Pair], sunk: Sequence[str], strengthen: str) -> str:
    said = []
    if sunk:
        sinks = ngettext("{colours} sinks.", "{colours} sink.", len(sunk))
        said.append(sinks.format(colours=and_list(sunk)))
    for pair in pairs[:SAID]:
        said.append(_("{one} and {other} run together.").format(one=pair.one, other=pair.other))
    if strengthen:
        said += [strengthen] if said else [_("This light bleaches it."), strengthen]
    return " ".join(f"{told[0].upper()}{told[1:]}" for told in said or [_("Nothing gets lost.")])


SAID = 2
"""So many pairs are named, and so many stems."""

STRENGTHEN = {
    "light": noted("Strengthen the light end: whites, creams and pale tints carry it."),
    "depth": noted("Strengthen the depth: a few dark stems hold its shape."),
}
BY_MORE = {
    "light": noted("Strengthen the light end: more {stems}."),
    "depth": noted("Strengthen the depth: more {stems}."),
}

"""What would mend it: what to add or leave out, of what stands that week?

Every piece of advice is a whole change, tried before it is given: with it taken, what was said of
the mix no longer holds, and nothing else has to be said that wasn't before. The smallest changes
come first. Only stems that the style allows (`swaps.fitting`) and that stand that week are added,
and nothing fresh to what is mostly dried but what it has already; a stem that is essential never
goes altogether.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from corymb.language import gettext as _
from corymb.language import noted, pgettext
from corymb.studio.models import ColourThresholds, Drop, RecipeLine, Stem, Style
from corymb.studio.models.recipe import Changes
from corymb.studio.studio import Studio
from corymb.trade.changes import LookLine, changed
from corymb.trade.colour.findings import BEHIND, Finding, findings
from corymb.trade.colour.likeness import mean_lab, palette_of
from corymb.trade.colour.mending import Mending, Way
from corymb.trade.colour.mixture import backing_of
from corymb.trade.colour.parts import part_played, too_much
from corymb.trade.colour.tally import Backing, Tally, tally_of_stem
from corymb.trade.dried import is_dried
from corymb.trade.room import ALL, Room
from corymb.trade.season.beds import Beds
from corymb.trade.season.weeks import thursday
from corymb.trade.swaps.fitting import fits

WHOLE_CHANGES = {
    (True, False, False): noted("Leave out {drop_count} {drop}."),
    (False, True, False): noted("Add {add_count} {add}, {role}."),
    (False, True, True): noted("Add {add_count} more {add}, {role}."),
    (True, True, False): noted("Leave out {drop_count} {drop}, and add {add_count} {add}, {role}."),
    (True, True, True): noted(
        "Leave out {drop_count} {drop}, and add {add_count} more {add}, {role}."
    ),
}
"""By whether something goes, whether something comes, and whether that is in the piece already."""


@dataclass(frozen=True)
class Advice:
    """One whole change that mends one finding."""

    kind: str
    """The finding it mends."""
    add: str = ""
    """The stem that comes in, by id; nothing where one is only left out."""
    add_count: int = 0
    role: str = ""
    """The role of what is added."""
    drop: str = ""
    drop_count: int = 0
    chance: float = 1.0
    """How likely what is added stands that week."""
    words: str = ""

    def taken(self, lines: Sequence[LookLine]) -> tuple[LookLine, ...]:
        """The lines with the advice taken."""
        changes = Changes(
            add=[RecipeLine(stem=self.add, count=self.add_count, role=self.role)]
            if self.add
            else [],
            drop=[Drop(stem=self.drop, count=self.drop_count)] if self.drop else [],
        )
        return changed(tuple(lines), changes)


@dataclass(frozen=True)
class Advised:
    """A finding with what would mend it; none where nothing that stands would."""

    finding: Finding
    advice: tuple[Advice, ...]


@dataclass(frozen=True)
class Piece:
    """A look to be advised on: its lines, its style, what it is seen against, and when."""

    lines: tuple[LookLine, ...]
    style: Style
    week: int
    against: str | None = None
    behind: str = BEHIND


class Adviser:
    """Advises on the looks of one studio."""

    def __init__(self, stems: Mapping[str, Stem], beds: Beds, limits: ColourThresholds) -> None:
        self.stems = stems
        self.limits = limits
        self._beds = beds
        self._tallies: dict[tuple[str, Backing | None, Room], Tally] = {}

    @classmethod
    def of(cls, studio: Studio, beds: Beds) -> Adviser:
        """For a studio as read, with its beds."""
        return cls(studio.stems, beds, studio.house.colour)

    def on(self, piece: Piece) -> tuple[Advised, ...]:
        """All there is to say of a piece, and what would mend each of it."""
        if not piece.lines:
            return ()
        backing = backing_of(piece.against, self.limits)
        mending = Mending(
            piece.lines,
            lambda stem_id: self.tally(stem_id, backing, piece.lines[0].room),
            lambda: self._standing(piece),
            backing,
            self.limits,
        )
        return tuple(
            Advised(
                told, tuple(self._told(told.kind, way, mending) for way in mending.ways(told.kind))
            )
            for told in findings(mending.measures, self.limits, piece.behind)
        )

    def tally(self, stem_id: str, backing: Backing | None, room: Room = ALL) -> Tally:
        """What one stem adds to a mix."""
        key = (stem_id, backing, room)
        if key not in self._tallies:
            self._tallies[key] = tally_of_stem(self.stems[stem_id], backing, room)
        return self._tallies[key]

    def _standing(self, piece: Piece) -> list[tuple[str, float]]:
        """The stems that may be added in its week, with how likely they stand then."""
        day = thursday(piece.week)
        return [
            (stem_id, self._beds.chance(stem_id, day))
            for stem_id, stem in sorted(self.stems.items())
            if self._beds.season(stem_id).has(day)
            and fits(stem, piece.style)
            and (is_dried(stem) or not self._stands_dry(piece, stem_id))
        ]

    def _stands_dry(self, piece: Piece, stem_id: str) -> bool:
        """Whether a piece is mostly dried, so stands without water, and a stem isn't in it yet."""
        dried = sum(line.count for line in piece.lines if is_dried(self.stems[line.stem]))
        mostly = 2 * dried > sum(line.count for line in piece.lines)
        return mostly and all(line.stem != stem_id for line in piece.lines)

    def _told(self, kind: str, way: Way, mending: Mending) -> Advice:
        role = self._role(way, mending) if way.add else ""
        words = self._words(way, role, mending)
        return Advice(
            kind, way.add, way.add_count, role, way.drop, way.drop_count, way.chance, words
        )

    def _role(self, way: Way, mending: Mending) -> str:
        """Its role in the piece already; else what it does: an accent, or what it is by light.

        What would take more than an accent may is none.
        """
        measures, colours = mending.measures_after(way), palette_of(self.stems[way.add])
        own = [line.role for line in mending.lines if line.stem == way.add]
        share = mending.share_after(way)
        part = own[0] if own else part_played(colours[0][0], share, measures, self.limits)
        if part == "accent" and not too_much(share, self.limits):
            return part
        return "light" if mean_lab(colours)[0] > measures.lightness else "depth"

    def _words(self, way: Way, role: str, mending: Mending) -> str:
        there = any(line.stem == way.add for line in mending.lines)
        return _(WHOLE_CHANGES[bool(way.drop), bool(way.add), there]).format(
            drop_count=way.drop_count,
            drop=self.stems[way.drop].name if way.drop else "",
            add_count=way.add_count,
            add=self.stems[way.add].name if way.add else "",
            role=pgettext("role", role) if role else "",
        )

"""What of an order travels, how does it stand on the load floor, and in how many trips?

What was made up travels in its vessel, with its water, as a round thing as wide as it is. A
hand-tie travels alone in a bucket, so that no head touches another. What is worn lies in shallow
boxes on a seat and takes none of the floor. A piece that is too high or too wide for the vehicle
is made up where it will stand: its stems go in buckets, its vessel goes empty. Spare of what is
made up stays behind. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil, sqrt
from typing import Literal

from corymb.studio.models.studio_file import Vehicle
from corymb.studio.studio import Studio
from corymb.trade.load.buckets import Filled
from corymb.trade.load.kinds import bucket_for
from corymb.trade.load.packing import on_floor
from corymb.trade.load.trips import Load, LoadSpace, Upright, load
from corymb.trade.load.weight import bucket_kg, filled_kg
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.gets import bucket_kinds
from corymb.trade.orders.night_before import Buckets, night_before
from corymb.trade.orders.pieces import Piece

How = Literal["bucket", "hand-tie", "piece", "empty vessel"]

BOX_CM = (60, 40)
"""A shallow box for what is worn. House value, no source."""

AIR_CM = 2
"""Between two things in a box. House value, no source."""


@dataclass(frozen=True)
class Item:
    """One thing on the load floor. `line` is its line in the order, 0 for loose stems."""

    line: int
    how: How
    upright: Upright
    kg: float
    """With water and stems; a vessel's own weight isn't known."""
    bucket: Filled | None = None


@dataclass(frozen=True)
class Boxed:
    """The pieces of a line that lie in boxes."""

    line: int
    pieces: int
    boxes: int


@dataclass(frozen=True)
class Packed:
    """An order, ready to go."""

    buckets: Buckets
    items: tuple[Item, ...]
    boxed: tuple[Boxed, ...]
    there: tuple[int, ...]
    """The lines that are made up where they will stand."""
    load: Load | None
    """None where the studio has written down no vehicle."""

    @property
    def kg(self) -> float:
        """All that stands on the floor, in one trip or several."""
        return sum(item.kg for item in self.items)


def packed(due: Due, day: CutDay, studio: Studio) -> Packed:
    """An order in its own vehicle, or else in the one that takes it best.

    Best is what takes all, as much as can be made up, in the fewest trips, with the least to trim,
    on the least floor.
    """
    own = [each for each in studio.house.vehicles if each.name == due.order.vehicle]
    vehicles = own or studio.house.vehicles
    if not vehicles:
        return _packed(due, day, studio, None)
    tries = [_packed(due, day, studio, space_of(vehicle)) for vehicle in vehicles]
    return min(tries, key=_preferred)


def space_of(vehicle: Vehicle) -> LoadSpace:
    """One of the studio's vehicles, in plain numbers."""
    floor = vehicle.floor
    return LoadSpace(vehicle.name, floor.long_cm, floor.wide_cm, vehicle.height.cm, vehicle.note)


def across_cm(piece: Piece) -> float:
    """How wide a piece is in its size: heads cover a surface, so by the root of its stems."""
    vessel = piece.recipe.vessel.across
    return max(piece.recipe.across.cm * sqrt(piece.scale), vessel.cm if vessel else 0)


def high_cm(piece: Piece) -> float:
    """How high it is in its size; a smaller one is taken to be as high as the regular one."""
    return piece.recipe.high.cm * max(1, sqrt(piece.scale))


def _packed(due: Due, day: CutDay, studio: Studio, space: LoadSpace | None) -> Packed:
    there = _there(due, space) if space else ()
    loose = {line.number for line in due.lines if line.piece.in_buckets} | set(there)
    buckets = night_before(due, day, studio, loose)
    items = [Item(0, "bucket", Upright.of(each), filled_kg(each), each) for each in buckets.going]
    boxed = []
    for line in due.lines:
        if line.number in there:
            items += _empty(line)
        elif line.number not in loose and _is_boxed(line.piece):
            boxed.append(_boxes(line))
        elif line.number not in loose:
            items += _made_up(due, line, day, studio)
    loaded = load([item.upright for item in items], space) if space else None
    return Packed(buckets, tuple(items), tuple(boxed), there, loaded)


def _preferred(one: Packed) -> tuple[bool, int, int, int, float]:
    assert one.load
    space = one.load.space
    floor = space.long_cm * space.wide_cm
    trips, trim = len(one.load.trips), len(one.load.to_trim)
    return not one.load.whole, len(one.there), trips, trim, floor


def _there(due: Due, space: LoadSpace) -> tuple[int, ...]:
    """Where the client collects nobody goes along to make anything up."""
    if due.order.handover == "collection":
        return ()
    return tuple(line.number for line in due.lines if _made_there(line.piece, space))


def _made_there(piece: Piece, space: LoadSpace) -> bool:
    if piece.in_buckets or _is_boxed(piece):
        return False
    narrow = min(space.long_cm, space.wide_cm)
    return high_cm(piece) > space.high_cm or across_cm(piece) > narrow


def _is_boxed(piece: Piece) -> bool:
    """Whether it is wired, and is worn."""
    return piece.recipe.vessel.kind in ("wire", "ring")


def _boxes(line: DueLine) -> Boxed:
    to_a_box = max(1, on_floor(*BOX_CM, across_cm(line.piece) + AIR_CM).count)
    return Boxed(line.number, line.quantity, ceil(line.quantity / to_a_box))


def _empty(line: DueLine) -> Iterator[Item]:
    vessel = line.piece.recipe.vessel
    if vessel.across and vessel.high:
        stands = Upright(vessel.across.cm, vessel.high.cm, vessel.high.cm)
        yield from [Item(line.number, "empty vessel", stands, 0.0)] * line.quantity


def _made_up(due: Due, line: DueLine, day: CutDay, studio: Studio) -> Iterator[Item]:
    stems = stems_of(as_cut(due, line, day))
    grams = sum(count * studio.stems[known_as].weight.grams for known_as, count in stems.items())
    wide, high = across_cm(line.piece), high_cm(line.piece)
    vessel = line.piece.recipe.vessel
    if vessel.kind == "hand":
        kind, _ = bucket_for(high, high, bucket_kinds(studio.house))
        wide, high = max(wide, kind.across_cm), max(high, kind.high_cm)
        kg = bucket_kg(kind.water_litres, grams / line.quantity, kind.empty_kg)
        item = Item(line.number, "hand-tie", Upright(wide, high, high), kg)
    else:
        water = vessel.water.litres if vessel.water else 0.0
        kg = bucket_kg(water, grams / line.quantity, 0.0)
        item = Item(line.number, "piece", Upright(wide, high, high), kg)
    yield from [item] * line.quantity

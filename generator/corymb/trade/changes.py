"""What do a swap, a drop, an addition and a scale make of a recipe's lines?

Changes are made in a fixed order: swaps, drops, additions, then the scale. Without a count a
swap or a drop takes all of a stem, on however many lines it stands; with one it takes that many
from the line with the most. Changing a stem that isn't there is an error with its place, since
it is always a slip of the pen.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from corymb.studio.models import Drop, RecipeLine, Swap
from corymb.studio.models.recipe import Changes, Scales
from corymb.studio.saying import and_list
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.share import Scale
from corymb.trade.counts import Counted, scaled
from corymb.trade.room import ALL, Room


@dataclass(frozen=True)
class LookLine:
    """One line of a look: whole stems of one material, and what they are there for."""

    stem: str
    count: int
    role: str
    use: str | None  # when it plays another part than its own
    essential: bool
    note: str
    room: Room = ALL  # what the piece has for one stem of it


class ChangeError(ValueError):
    """A change that can't be made, with its place below the variant or recipe."""

    def __init__(self, message: str, *path: str | int) -> None:
        super().__init__(message)
        self.path = path


def changed(
    lines: tuple[LookLine, ...], changes: Changes, *path: str | int
) -> tuple[LookLine, ...]:
    """The lines after `changes`; lines that came to nothing are gone."""
    room = lines[0].room if lines else ALL
    for i, swap in enumerate(changes.swap):
        lines = _swapped(lines, swap, (*path, "swap", i))
    for i, drop in enumerate(changes.drop):
        lines = _dropped(lines, drop, (*path, "drop", i))
    for line in changes.add:
        lines = _with(lines, replace(line_of(line), room=room))
    if changes.scale is not None:
        lines = _scaled(lines, changes.scale)
    return tuple(line for line in lines if line.count > 0)


def line_of(line: RecipeLine) -> LookLine:
    return LookLine(line.stem, line.count, line.role, line.use, line.essential, line.note)


def _swapped(
    lines: tuple[LookLine, ...], swap: Swap, path: tuple[str | int, ...]
) -> tuple[LookLine, ...]:
    at = _find(lines, swap.out, swap.out_count, path)
    if swap.out_count is None and swap.in_count is None:
        for out in [line for line in lines if line.stem == swap.out]:
            lines = _swapped_in_line(lines, lines.index(out), swap)
        return lines
    return _swapped_in_line(lines, at, swap)


def _swapped_in_line(lines: tuple[LookLine, ...], at: int, swap: Swap) -> tuple[LookLine, ...]:
    out = lines[at]
    going = out.count if swap.out_count is None else swap.out_count
    coming = LookLine(
        swap.in_,
        going if swap.in_count is None else swap.in_count,
        swap.role or out.role,
        out.use,
        out.essential and going == out.count,
        "",
        out.room,
    )
    kept = (replace(out, count=out.count - going),) if out.count > going else ()
    rest = (*lines[:at], *kept, *lines[at + 1 :])
    return _with(rest, coming, at + len(kept))


def _dropped(
    lines: tuple[LookLine, ...], drop: Drop, path: tuple[str | int, ...]
) -> tuple[LookLine, ...]:
    at = _find(lines, drop.stem, drop.count, path)
    if drop.count is None:
        return tuple(line for line in lines if line.stem != drop.stem)
    left = lines[at].count - drop.count
    return (*lines[:at], replace(lines[at], count=left), *lines[at + 1 :])


def _find(
    lines: tuple[LookLine, ...], stem: str, wanted: int | None, path: tuple[str | int, ...]
) -> int:
    """Where the stem stands; the line with the most of it, should there be two."""
    places = [i for i, line in enumerate(lines) if line.stem == stem and line.count > 0]
    if not places:
        here = list(dict.fromkeys(line.stem for line in lines))
        guess = did_you_mean(stem, here) or f" It has {and_list(here)}." if here else ""
        raise ChangeError(f"‘{stem}’ isn't in what this changes.{guess}", *path)
    at = max(places, key=lambda i: lines[i].count)
    if wanted is not None and wanted > lines[at].count:
        has = lines[at].count
        message = (
            f"Only {has} of ‘{stem}’ {'is' if has == 1 else 'are'} in what this changes: "
            f"write {has}{' or fewer' if has > 1 else ''}, or no number for all of it."
        )
        raise ChangeError(message, *path)
    return at


def _with(
    lines: tuple[LookLine, ...], new: LookLine, at: int | None = None
) -> tuple[LookLine, ...]:
    """The lines with a new one, joined to a line of the same stem and role where there is one."""
    for i, line in enumerate(lines):
        if (line.stem, line.role) == (new.stem, new.role):
            joined = replace(
                line, count=line.count + new.count, essential=line.essential or new.essential
            )
            return (*lines[:i], joined, *lines[i + 1 :])
    at = len(lines) if at is None else at
    return (*lines[:at], new, *lines[at:])


def _scaled(lines: tuple[LookLine, ...], scales: Scales) -> tuple[LookLine, ...]:
    by_role = {"depth": scales.depth, "light": scales.light, "accent": scales.accent}
    for role, own in by_role.items():
        scale = _factor(own) * _factor(scales.all)
        members = [i for i, line in enumerate(lines) if line.role == role]
        counts = scaled([Counted(lines[i].count, role, lines[i].essential) for i in members], scale)
        new = dict(zip(members, counts, strict=True))
        lines = tuple(replace(x, count=new.get(i, x.count)) for i, x in enumerate(lines))
    return lines


def _factor(scale: Scale | None) -> Fraction:
    return Fraction(1) if scale is None else Fraction(scale.factor)

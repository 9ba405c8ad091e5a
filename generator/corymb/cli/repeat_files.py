"""Where does a repeated order go, under which id, and with which text?"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

import click

from corymb.cli.days import long_day
from corymb.cli.telling import path_from_here
from corymb.studio.models import Order, StandingOrder
from corymb.studio.order_line_text import LineChange
from corymb.studio.order_text import (
    Again,
    Learnt,
    order_again,
    standing_again,
    visit_as_order,
    with_modeline,
)
from corymb.studio.studio import Studio
from corymb.studio.values.order_lines import OrderLineText
from corymb.trade.order_lines import REGULAR
from corymb.trade.orders.again import LineAgain
from corymb.trade.orders.next_year import days_of
from corymb.trade.orders.repeated import Repeated
from corymb.trade.swaps.reasons import reasons

_DATED = re.compile(r"-\d{4}(?:-\d\d-\d\d)?$")


@dataclass(frozen=True)
class NewFile:
    """A file that isn't there yet."""

    id: str
    file: Path
    text: str
    notes: Sequence[str] = ()
    """What there is to say of it."""


def order_file(studio: Studio, told: Repeated, known_as: str | None, take_swaps: bool) -> NewFile:
    """A one-off order's file for its new day."""
    assert isinstance(told.old, Order)
    old, day = told.old, told.day
    again = Again(
        day,
        _learnt(old.learnt, f"last time, {long_day(old.date)}"),
        told.standing,
        [change for line in told.lines if (change := _change(studio, line, take_swaps))],
    )
    endings = (str(day),) if told.standing else (str(day.year), str(day))
    new_id = _free(studio, known_as, _bare(old.id), endings)
    dropped = [key for key in ("used", "minutes") if getattr(old, key)]
    notes = [f"What was counted stays in the old file: {', '.join(dropped)}."] if dropped else []
    notes += [*_of_swaps(told, take_swaps), *_to_change(told)]
    if old.visit_of and not told.standing:
        notes.append(f"It is no visit of {old.visit_of} any more: that has none on this day.")
    old_key, kind = ("order", old.id), ("order", str(day.year))
    return _new(studio, old_key, new_id, kind, lambda text: order_again(text, again), notes)


def visit_file(studio: Studio, told: Repeated, known_as: str | None, take_swaps: bool) -> NewFile:
    """A standing order's visit, as an order of its own."""
    old, day = told.old, told.day
    fixed = len(old.lines) if isinstance(old, StandingOrder) else 0
    changes = [_change(studio, line, take_swaps) for line in told.lines[:fixed]]
    rotated = told.lines[fixed:]
    again = Again(
        day,
        _learnt(old.learnt, "so far"),
        told.standing,
        [change for change in changes if change],
        [_line_text(line) for line in rotated],
        [_swaps(studio, line) if take_swaps else () for line in rotated],
    )
    new_id = _free(studio, known_as, _bare(told.standing), (str(day),))
    old_key, kind = ("standing", told.standing), ("order", str(day.year))
    notes = [*_of_swaps(told, take_swaps), *_to_change(told)]
    return _new(studio, old_key, new_id, kind, lambda text: visit_as_order(text, again), notes)


def standing_file(studio: Studio, old: StandingOrder, year: int, known_as: str | None) -> NewFile:
    """A standing order's file for another year."""
    new_id = _free(studio, known_as, _bare(old.id), (str(year),))
    try:
        first, last = days_of(old, year)
    except ValueError as error:
        raise click.ClickException(str(error)) from error
    learnt = _learnt(old.learnt, f"in {old.from_.year}")
    left = [key for key in ("skip", "moved") if getattr(old, key)]
    note = f"The old days under {' and '.join(left)} stand in it as comments: set the new ones."
    return _new(
        studio,
        ("standing", old.id),
        new_id,
        ("standing", "standing"),
        lambda text: standing_again(text, first, last, learnt),
        [note] if left else [],
    )


def _new(
    studio: Studio,
    old_key: tuple[str, str],
    new_id: str,
    kind: tuple[str, str],
    write: Callable[[str], str],
    notes: Sequence[str] = (),
) -> NewFile:
    """The new file, its text made of the old one's; `kind` is that of its schema, and its folder.

    Raises ClickException where it is there already, or the text can't be made.
    """
    source, (schema, folder) = studio.sources[old_key], kind
    file = studio.folder / "orders" / folder / f"{new_id}.yml"
    if file.exists():
        raise click.ClickException(
            f"{path_from_here(file)} is there already; nothing was written. Give an --id."
        )
    try:
        text = write("\n".join(source.lines))
    except ValueError as error:
        raise click.ClickException(f"{path_from_here(source.file)}: {error}.") from error
    return NewFile(new_id, file, with_modeline(text, source.file, file, schema), notes)


def _free(studio: Studio, given: str | None, base: str, endings: Sequence[str]) -> str:
    """The id that was given, or the first with a year or a day behind it that isn't taken."""
    wanted = [given] if given else [f"{base}-{ending}" for ending in endings]
    for known_as in wanted:
        if not _taken(studio, known_as):
            return known_as
    where = path_from_here(_taken(studio, wanted[-1])[0])
    raise click.ClickException(
        f"There is an order called ‘{wanted[-1]}’ already, in {where}; nothing was written. "
        "Give this one an --id of its own."
    )


def _taken(studio: Studio, known_as: str) -> list[Path]:
    """The files of orders, standing ones among them, that have this id."""
    keys = (("order", known_as), ("standing", known_as))
    return [studio.sources[key].file for key in keys if key in studio.sources]


def _bare(known_as: str) -> str:
    """An id without the year or the day behind it."""
    return _DATED.sub("", known_as)


def _learnt(text: str, when: str) -> Learnt | None:
    return Learnt(text, when) if text else None


def _change(studio: Studio, line: LineAgain, take_swaps: bool) -> LineChange | None:
    """What changes in a line of the file; nothing where it stays as it was."""
    remarks = _swaps(studio, line) if take_swaps else ()
    if not line.taken and not remarks:
        return None
    variant = line.piece.look.variant if line.taken else None
    return LineChange(line.number, variant, line.piece.size, remarks)


def _of_swaps(told: Repeated, take_swaps: bool) -> list[str]:
    swaps = any(line.best.answer.swaps for line in told.lines)
    return ["The swaps stand beside their lines, as comments."] if swaps and take_swaps else []


def _to_change(told: Repeated) -> Iterator[str]:
    """The lines that stand in the file as they were and can't be made, with what to do."""
    for line in told.lines:
        if not line.can:
            change = (
                f"put ‘{line.quantity} {line.put.in_a_line}’ in its place."
                if line.put
                else "nothing else of its style can then; leave it out, or ask for another day."
            )
            yield f"Its line ‘{_line_text(line)}’ can't be made then: {change}"


def _swaps(studio: Studio, line: LineAgain) -> list[str]:
    """Each swap as a variant would hold it, for one piece of the regular size, with why."""
    return [
        f"swap: {swap.out_count} {swap.out} -> {swap.in_count} {swap.in_}  "
        f"({'; '.join(reasons(swap, studio.stems))})"
        for swap in line.best.answer.swaps
    ]


def _line_text(line: LineAgain) -> str:
    piece = line.piece
    words = [piece.look.variant, piece.size if piece.size != REGULAR else ""]
    return str(
        OrderLineText(
            line.quantity,
            piece.recipe.id,
            tuple(filter(None, words)),
            piece.in_buckets,
            piece.from_the_mix,
        )
    )

"""Where in the recipes' files does each count and each time of a look stand?

A look's count of a stem mostly comes of one line: of its recipe's `stems`, of its base's, or of a
variant's `swap` or `add`. A line that several looks go by is one place for all of them. Where no
line says a count by itself (some of a stem dropped, more of it added, or all of it scaled) there
is no one place.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from corymb.studio.models import Recipe, Swap, Variant
from corymb.studio.models.recipe import Changes
from corymb.studio.shape import Step
from corymb.trade.changes import LookLine, changed, line_of
from corymb.trade.looks import looks_of
from corymb.trade.reality import Written
from corymb.trade.written_for import Stage, stages_of, written


@dataclass(frozen=True)
class Place:
    """A value in a recipe's file."""

    recipe: str
    path: tuple[Step, ...]

    @property
    def look(self) -> str:
        """The look whose own part of the file it stands in: a variant's, or the recipe's."""
        is_variants = self.path[:1] == ("variants",)
        return f"{self.recipe}--{self.path[1]}" if is_variants else self.recipe

    def within(self, *path: Step) -> Place:
        """A place further in."""
        return replace(self, path=(*self.path, *path))


@dataclass(frozen=True)
class Entry:
    """A count or a time, and where it stands; None where no line says it by itself."""

    written: Written
    place: Place | None


def entries_of(recipes: Mapping[str, Recipe]) -> tuple[Entry, ...]:
    """Every count and every time of all looks, those that looks share once."""
    found: dict[object, Entry] = {}
    for recipe in recipes.values():
        for look in looks_of(recipe, recipes).values():
            stages = stages_of(recipe, look.variant, recipes)
            for entry in (*_counts(look.id, stages), _time(look.id, stages)):
                key = entry.place or (look.id, entry.written.stem)
                first = found.setdefault(key, entry)
                if first is not entry:
                    looks = (*first.written.looks, look.id)
                    found[key] = replace(first, written=replace(first.written, looks=looks))
    return tuple(found.values())


def _time(look: str, stages: tuple[Stage, ...]) -> Entry:
    told, at = written(stages, "time")
    return Entry(Written((look,), None, told.minutes), _place(stages, at).within("time"))


def _counts(look: str, stages: tuple[Stage, ...]) -> Iterator[Entry]:
    origins = _Origins()
    for at, stage in enumerate(stages):
        before = stages[at - 1].lines if at else ()
        if isinstance(stage.of, Recipe) and stage.of.stems:
            before = origins.start(stage.of, _place(stages, at))
        if isinstance(stage.of, Variant) or stage.of.based_on:
            origins.change(stage, before, _place(stages, at))
    for stem in dict.fromkeys(line.stem for line in stages[-1].lines):
        count = _count(stages[-1].lines, stem)
        places = origins.places[stem]
        said = [place for place, number in places.items() if len(places) == 1 and number == count]
        yield Entry(Written((look,), stem, count), said[0] if said else None)


@dataclass
class _Origins:
    """The places that make up the count of each stem, with the number that stands there."""

    places: dict[str, dict[Place, int]] = field(default_factory=dict)

    def start(self, recipe: Recipe, place: Place) -> tuple[LookLine, ...]:
        """A recipe with stems of its own starts afresh."""
        self.places = {}
        for i, line in enumerate(recipe.stems):
            self._add(line.stem, place.within("stems", i), line.count)
        return tuple(line_of(line) for line in recipe.stems)

    def change(self, stage: Stage, before: tuple[LookLine, ...], place: Place) -> None:
        """A variant, or a recipe based on another, changes what is there."""
        for i, swap in enumerate(stage.of.swap):
            after = changed(before, Changes.model_construct(swap=[swap]))
            self._swap(swap, place.within("swap", i), before, after)
            before = after
        for i, drop in enumerate(stage.of.drop):
            if drop.count is None:
                self.places.pop(drop.stem, None)
            else:
                self._add(drop.stem, place.within("drop", i), drop.count)
        here = {line.stem for line in stage.lines}
        self.places = {stem: of for stem, of in self.places.items() if stem in here}
        for i, line in enumerate(stage.of.add):
            self._add(line.stem, place.within("add", i), line.count)

    def _swap(
        self, swap: Swap, place: Place, before: tuple[LookLine, ...], after: tuple[LookLine, ...]
    ) -> None:
        came = _count(after, swap.in_) - _count(before, swap.in_)
        if not _count(after, swap.out):
            self.places.pop(swap.out, None)
        elif swap.out != swap.in_:
            self._add(swap.out, place, 0)
        self._add(swap.in_, place, came)

    def _add(self, stem: str, place: Place, number: int) -> None:
        self.places.setdefault(stem, {})[place] = number


def _count(lines: tuple[LookLine, ...], stem: str) -> int:
    return sum(line.count for line in lines if line.stem == stem)


def _place(stages: tuple[Stage, ...], at: int) -> Place:
    """Where a stage's own part of its recipe's file begins."""
    recipe = next(s.of for s in reversed(stages[: at + 1]) if isinstance(s.of, Recipe))
    of = stages[at].of
    return Place(recipe.id, ("variants", of.id) if isinstance(of, Variant) else ())

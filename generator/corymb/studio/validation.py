"""From a file's tree to its model; and every reason why it can't be, each told once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from pydantic import ValidationError

from corymb.studio import refusals
from corymb.studio.mending import (
    ALL,
    NONE,
    Doubts,
    copy_of,
    has_doubts,
    leave_out,
    mend,
    put_example,
    rename,
    value_at,
)
from corymb.studio.models.base import FileModel
from corymb.studio.problems import Problem
from corymb.studio.shape import Steps, keys_of, model_at
from corymb.studio.slip import Slip
from corymb.studio.studio import Source
from corymb.studio.suggest import nearest

Model = TypeVar("Model", bound=FileModel)

MOST_SLIPS = 100
"""After so many of a file's slips the rest waits until they are mended."""

MOST_ROUNDS = 8
"""How often a file is mended and read again; each round goes one level further in."""


@dataclass(frozen=True)
class Outcome(Generic[Model]):
    """What came of a file. `mended` has examples at the places in `doubts`; else it is the file."""

    mended: Model | None
    doubts: Doubts
    problems: tuple[Problem, ...] = ()

    @property
    def is_whole(self) -> bool:
        """Whether every part of the model is what the writer wrote."""
        return self.mended is not None and not self.problems and not self.doubts


def validate(
    model: type[Model],
    data: dict[str, Any],
    source: Source,
    doubts: Doubts = NONE,
    elsewhere: Doubts = NONE,
) -> Outcome[Model]:
    """The model made of `data`, or every reason why it can't be.

    `doubts` are places that have been told already; `elsewhere` are those that come from another
    file, which answers for them.
    """
    return _Reading(model, data, source, doubts, elsewhere).outcome()


class _Reading(Generic[Model]):
    """One file's data, mended round by round until its model takes it."""

    def __init__(
        self,
        model: type[Model],
        data: dict[str, Any],
        source: Source,
        doubts: Doubts,
        elsewhere: Doubts,
    ) -> None:
        self.model, self.source, self.elsewhere = model, source, elsewhere
        self.data = copy_of(data)
        self.doubts = doubts
        self.problems: list[Problem] = []
        for path in source.tree.left_out:
            self._mend(path)

    def outcome(self) -> Outcome[Model]:
        """Read until the model takes it, or nothing more can be mended."""
        for _ in range(MOST_ROUNDS):
            try:
                made = self.model.model_validate(self.data)
            except ValidationError as error:
                details = error.errors(include_url=False)
                slips = [Slip.of(detail, self.data) for detail in details[: MOST_SLIPS + 1]]
                self._tell([slip for slip in slips if self._is_news(slip)])
                if len(slips) > MOST_SLIPS or not self._mended(slips):
                    break
            else:
                return Outcome(made, self.doubts, tuple(self.problems))
        return Outcome(None, ALL, tuple(self.problems))

    def _is_news(self, slip: Slip) -> bool:
        """Whether a slip is this file's own, and not what an earlier one led to."""
        told = self.doubts | self.elsewhere
        keys = [(*slip.path, key) for key in slip.keys]
        return not any(has_doubts(told, path) for path in keys or [slip.path])

    def _tell(self, slips: Sequence[Slip]) -> None:
        """A problem for each, but none for a missing key that stands there misspelt."""
        missing = {slip.path for slip in slips if slip.is_missing}
        for slip in slips:
            if slip.is_unknown:
                meant = self._meant(slip.path, missing)
                missing.discard((*slip.path[:-1], meant))
                self._doubt_what_is_meant((*slip.path[:-1], meant))
                self._add(refusals.unknown(self.model, slip, meant, self._free(slip.path)), slip)
        for slip in slips:
            if slip.path in missing and slip.is_missing:
                self._add(refusals.missing(self.model, slip), slip)
            elif not slip.is_missing and not slip.is_unknown:
                self._add(refusals.wrong(self.model, slip), slip)

    def _add(self, message: str, slip: Slip) -> None:
        path = slip.places[0]
        if not slip.is_unknown and value_at(self.data, path) is None:  # beside its fellows, then
            path = path[:-1]
        value = value_at(self.data, path)
        at_key = slip.is_unknown or slip.in_key or isinstance(value, dict | list)
        self.problems.append(self.source.problem(message, *path, at_key=at_key))

    def _meant(self, path: Steps, missing: set[Steps]) -> str:
        """The key that was most likely meant, the missing ones first; empty if none is close."""
        around, key = path[:-1], str(path[-1])
        wanted = [str(other[-1]) for other in missing if other[:-1] == around]
        here = model_at(self.model, around)
        close = nearest(key, wanted) or nearest(key, keys_of(here) if here else ())
        return close[0] if close else ""

    def _doubt_what_is_meant(self, path: Steps) -> None:
        if path[-1] and value_at(self.data, path) is None:
            self.doubts |= {path}

    def _free(self, path: Steps) -> list[str]:
        """The keys that could still be written beside this one."""
        here, there = model_at(self.model, path[:-1]), value_at(self.data, path[:-1])
        return [key for key in keys_of(here) if key not in there] if here else []

    def _mended(self, slips: Sequence[Slip]) -> bool:
        """Mend what can be mended; whether anything new was."""
        before = self.doubts
        for slip in slips:
            self._mend_slip(slip)
        return self.doubts != before

    def _mend_slip(self, slip: Slip) -> None:
        if slip.is_unknown:
            leave_out(self.data, slip.path)
            self.doubts |= {slip.path}
        elif slip.in_key:
            self.doubts |= {slip.path, rename(self.data, slip.path)}
        else:
            for path in slip.places:
                self._mend(path, slip.is_missing or bool(slip.keys))

    def _mend(self, path: Steps, needed: bool = False) -> None:
        if path:
            (put_example if needed else mend)(self.model, self.data, path)
            self.doubts |= {path}

"""What is said of how a look is made, whoever it was written for?

Words taken over from the recipe may name a plant that a variant has left out. A step or a sign
then carries a note. So does a caution, and one that is only of plants gone is left out.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from corymb.ledger import AsAsked
from corymb.studio.studio import Studio
from corymb.trade.looks import Look
from corymb.trade.step_notes import is_all_gone, step_note, without_gone
from corymb.trade.swaps.made import swapped_stage
from corymb.trade.swaps.standing_in import StandIn
from corymb.trade.written_for import Stage, gone_since, stages_of, written
from corymb.views.compose.hazards import plant_of
from corymb.views.recipe import StepView


@dataclass(frozen=True)
class Words:
    """The words of a look, by the keys of a recipe."""

    studio: Studio
    stages: tuple[Stage, ...]

    @classmethod
    def of(cls, studio: Studio, look: Look, swaps: Sequence[StandIn] = ()) -> Words:
        """The words of a look and of all that it stands on, and of its swaps once they are made."""
        recipe = studio.recipes[look.recipe]
        stages = stages_of(recipe, look.variant, studio.recipes)
        return cls(studio, (*stages, swapped_stage(look, swaps)) if swaps else stages)

    def told(self, key: str) -> Any:
        """What the look says under a key, its own or taken over."""
        return written(self.stages, key)[0]

    def steps(self, key: str) -> tuple[StepView, ...]:
        """Each line of a list, with a note where it names a plant that has gone."""
        lines, at = written(self.stages, key)
        gone = gone_since(self.stages, at, self._plants)
        return tuple(StepView(line, step_note(line, gone, self._here)) for line in lines)

    def cautions(self) -> tuple[str, ...]:
        """The lines of `careful` that are of something in the look, each with its note."""
        lines, at = written(self.stages, "careful")
        gone = gone_since(self.stages, at, self._plants)
        return tuple(
            f"{line} {step_note(line, gone, self._here)}".strip()
            for line in lines
            if not is_all_gone(line, gone, self._here)
        )

    def care(self) -> str:
        """How it is kept: no plant that isn't in it, a note where words are shared."""
        care, at = written(self.stages, "care")
        gone = gone_since(self.stages, at, self._plants)
        kept = without_gone(str(care), gone, self._here)
        return f"{kept} {step_note(kept, gone, self._here)}".strip()

    @cached_property
    def _plants(self) -> Mapping[str, str]:
        stems = self.studio.stems
        return AsAsked(lambda: stems, stems.__contains__, lambda stem_id: plant_of(stems[stem_id]))

    @cached_property
    def _here(self) -> list[str]:
        return list(dict.fromkeys(self._plants[line.stem] for line in self.stages[-1].lines))

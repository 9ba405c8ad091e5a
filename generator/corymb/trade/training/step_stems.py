"""Which stems does a step of a method speak of?

`The cosmos` is every cosmos of the piece; `shell dahlias`, or `the plum ones` in the same step, are
the dahlias of that colour. A step that names no plant speaks of none that can be told.
"""

from __future__ import annotations

from collections.abc import Mapping

from corymb.trade.step_notes import names, plants_named


def stems_in(step: str, stems: Mapping[str, str]) -> tuple[str, ...]:
    """Those of the stems, by id, that a step names; `stems` has their names (`Dahlia, shell`)."""
    plants = {known_as: name.partition(",")[0] for known_as, name in stems.items()}
    found: list[str] = []
    for plant in plants_named(step, plants.values()):
        of_plant = [known_as for known_as, whose in plants.items() if whose == plant]
        told = [each for each in of_plant if _kind(stems[each]) and names(step, _kind(stems[each]))]
        found += told or of_plant
    return tuple(known_as for known_as in stems if known_as in found)


def _kind(name: str) -> str:
    """What follows the comma, for the most part the colour."""
    return name.partition(",")[2].strip()

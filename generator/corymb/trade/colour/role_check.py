"""Does a stem do what its role says it does?

A stem called light that is darker than the mix, one called depth that is lighter, or an accent
that takes so much that it is no accent any more: advice, never an error.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from corymb.studio.models import ColourThresholds, Stem
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import line_shares
from corymb.trade.colour.likeness import mean_lab, palette_of

PLAINLY = 3.0
"""So much lighter or darker than the mix (L*) before it is said: common practice, no source."""


@dataclass(frozen=True)
class RoleAdvice:
    """A line of a look whose colour does something else than its role says."""

    stem: str
    role: str
    better: str
    """The role it plays."""
    words: str


def role_advice(
    lines: Sequence[LookLine], stems: Mapping[str, Stem], limits: ColourThresholds
) -> tuple[RoleAdvice, ...]:
    """One for each line that does something else, in the lines' order."""
    return tuple(_checked(lines, stems, limits))


def _checked(
    lines: Sequence[LookLine], stems: Mapping[str, Stem], limits: ColourThresholds
) -> Iterator[RoleAdvice]:
    shares = line_shares(lines, stems)
    lights = [mean_lab(palette_of(stems[line.stem]))[0] for line in lines]
    mean = sum(share * light for share, light in zip(shares, lights, strict=True))
    most = float(limits.accent_above.fraction)
    for line, share, light in zip(lines, shares, lights, strict=True):
        name, lighter = stems[line.stem].name, light - mean
        if line.role == "light" and lighter < -PLAINLY:
            words = f"{name} is called light here, and is darker than the mix as a whole."
            yield RoleAdvice(line.stem, line.role, "depth", words)
        elif line.role == "depth" and lighter > PLAINLY:
            words = f"{name} is called depth here, and is lighter than the mix as a whole."
            yield RoleAdvice(line.stem, line.role, "light", words)
        elif line.role == "accent" and share > most:
            words = (
                f"{name} is called accent here, and takes {round(100 * share)} % of what is seen: "
                f"above {round(100 * most)} % it sets the colour of the piece."
            )
            yield RoleAdvice(line.stem, line.role, "light" if lighter > 0 else "depth", words)

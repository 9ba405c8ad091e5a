"""Does a stem do what its role says it does?

A stem called light that is plainly darker than the mix, one called depth that is plainly lighter,
or an accent that takes so much that it is no accent any more: advice, never an error. What is of
the mix's middle, as green leaves mostly are, may be called either.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from corymb.studio.models import ColourThresholds, Stem
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import line_shares
from corymb.trade.colour.likeness import mean_lab, palette_of
from corymb.trade.colour.mixture import mixture

PLAINLY = 3.0
MIDDLE = 0.5
"""So much lighter or darker than the mix (L*), and so many times what its lightness varies by (its
standard deviation), before it is said: common practice, no source. Where half of a mix is dark and
half is pale, all of it lies twice as far from the mean as this middle goes."""


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
    return tuple(_checked(lines, stems, limits)) if lines else ()


def _checked(
    lines: Sequence[LookLine], stems: Mapping[str, Stem], limits: ColourThresholds
) -> Iterator[RoleAdvice]:
    mix = mixture(lines, stems).measures
    middle = max(PLAINLY, MIDDLE * mix.spread)
    most = float(limits.accent_above.fraction)
    for line, share in zip(lines, line_shares(lines, stems), strict=True):
        name = stems[line.stem].name
        lighter = mean_lab(palette_of(stems[line.stem]))[0] - mix.lightness
        better = "light" if lighter > 0 else "depth"
        if line.role == "accent" and share > most:
            words = (
                f"{name} is called accent here, and takes {round(100 * share)} % of what is seen: "
                f"above {round(100 * most)} % it sets the colour of the piece."
            )
            yield RoleAdvice(line.stem, line.role, better, words)
        elif line.role not in ("accent", better) and abs(lighter) > middle:
            than = "lighter" if lighter > 0 else "darker"
            words = f"{name} is called {line.role} here, and is {than} than the mix as a whole."
            yield RoleAdvice(line.stem, line.role, better, words)

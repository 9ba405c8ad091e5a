"""Does a stem do what its role says it does?

A stem called light that is plainly darker than the mix, one called depth that is plainly lighter,
or an accent that takes so much that it is no accent any more (`parts`): advice, never an error.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from corymb.language import gettext as _
from corymb.language import noted
from corymb.studio.models import ColourThresholds, Stem
from corymb.trade.changes import LookLine
from corymb.trade.colour.areas import line_shares
from corymb.trade.colour.likeness import mean_lab, palette_of
from corymb.trade.colour.mixture import mixture
from corymb.trade.colour.parts import part_as_called

OTHERWISE = {
    "light": noted("{stem} is called light here, and is darker than the mix as a whole."),
    "depth": noted("{stem} is called depth here, and is lighter than the mix as a whole."),
}
SETS_THE_COLOUR = noted(
    "{stem} is called accent here, and takes {share} % of what is seen: above {most} % it sets the "
    "colour of the piece."
)


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
    for line, share in zip(lines, line_shares(lines, stems), strict=True):
        lightness = mean_lab(palette_of(stems[line.stem]))[0]
        better = part_as_called(line.role, lightness, share, mix, limits)
        if better != line.role:
            told = _words(line.role).format(
                stem=stems[line.stem].name,
                share=round(100 * share),
                most=round(100 * float(limits.accent_above.fraction)),
            )
            yield RoleAdvice(line.stem, line.role, better, told)


def _words(role: str) -> str:
    told = SETS_THE_COLOUR if role == "accent" else OTHERWISE[role]
    return _(told)

"""What does the picture say to those who cannot see it? Its title and its description."""

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.language.lengths import length_in
from corymb.picture.arrangement import Arrangement, PictureStem


def title(arrangement: Arrangement) -> str:
    return arrangement.name or arrangement.id.replace("-", " ").capitalize()


def description(arrangement: Arrangement) -> str:
    """The recipe's own words if it has any; then what is drawn, and how large."""
    stems = "; ".join(_counted(stem) for stem in arrangement.stems)  # a name may hold a comma
    vessel = arrangement.vessel.name or pgettext("vessel", arrangement.vessel.kind)
    told = _("Drawn as cut paper: {stems}; {vessel}; about {across} across and {high} high.")
    across = length_in(arrangement.lengths_in, arrangement.across_cm)
    high = length_in(arrangement.lengths_in, arrangement.high_cm)
    drawn = told.format(stems=stems, vessel=vessel, across=across, high=high)
    return f"{arrangement.description} {drawn}".strip()


def _counted(stem: PictureStem) -> str:
    return f"{stem.count} {stem.name or stem.id.replace('-', ' ')}"

"""What does the picture say to those who cannot see it? Its title and its description."""

from corymb.picture.arrangement import Arrangement, PictureStem


def title(arrangement: Arrangement) -> str:
    return arrangement.name or arrangement.id.replace("-", " ").capitalize()


def description(arrangement: Arrangement) -> str:
    """The recipe's own words if it has any; then what is drawn, and how large."""
    stems = ", ".join(_counted(stem) for stem in arrangement.stems)
    holder = arrangement.vessel.name or arrangement.vessel.kind
    drawn = (
        f"Drawn as cut paper: {stems}; {holder}; about {arrangement.across_cm:g} cm across "
        f"and {arrangement.high_cm:g} cm high."
    )
    return f"{arrangement.description} {drawn}".strip()


def _counted(stem: PictureStem) -> str:
    return f"{stem.count} {stem.name or stem.id.replace('-', ' ')}"

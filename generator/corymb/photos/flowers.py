"""Which colours do the flowers in a photo have, when nothing else of it is wanted?"""

from pathlib import Path

from corymb.photos.develop import opened
from corymb.photos.finish import Finish
from corymb.photos.palette import flower_palette
from corymb.photos.prepared import PhotoColour

SMALL = Finish(widths=(480,))


def flower_colours(source: Path) -> tuple[PhotoColour, ...]:
    """The largest share first; PhotoError, in words for its owner, when it can't be used."""
    _, _, picture = opened(source, SMALL)
    return flower_palette(picture)

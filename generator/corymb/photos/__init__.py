"""From camera file to web: upright, true in colour, light to send, and saying nothing of its maker.

`inspect` looks at a photo without making anything, for checking a studio's files;
`flower_colours` looks at its colours alone.
`prepare` and `prepare_many` make every size a page needs and keep them in a `PhotoCache`.
"""

from corymb.photos.cache import PhotoCache
from corymb.photos.errors import PhotoError
from corymb.photos.finish import HOUSE_FINISH, Finish
from corymb.photos.flowers import flower_colours
from corymb.photos.inspect import PhotoFacts, inspect
from corymb.photos.prepare import prepare, prepare_many
from corymb.photos.prepared import PhotoColour, PhotoFile, PreparedPhoto

__all__ = [
    "HOUSE_FINISH",
    "Finish",
    "PhotoCache",
    "PhotoColour",
    "PhotoError",
    "PhotoFacts",
    "PhotoFile",
    "PreparedPhoto",
    "flower_colours",
    "inspect",
    "prepare",
    "prepare_many",
]

"""Drawn pictures as pixels: share cards, and whatever takes no drawing."""

from corymb.site.raster.kept_pixels import kept_raster, made_by
from corymb.site.raster.pixels import raster_of
from corymb.site.raster.share_card import share_card
from corymb.site.raster.sheet import NotDrawnError
from corymb.site.raster.small import small_look, small_sizes, small_wide_look

__all__ = [
    "NotDrawnError",
    "kept_raster",
    "made_by",
    "raster_of",
    "share_card",
    "small_look",
    "small_sizes",
    "small_wide_look",
]

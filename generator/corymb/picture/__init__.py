"""What will it look like, before anyone has cut a stem? A recipe drawn as layered cut paper."""

from corymb.picture.arrangement import Arrangement, PictureStem, Vessel
from corymb.picture.scene import draw
from corymb.picture.side_by_side import draw_side_by_side
from corymb.picture.specimen import draw_stem

__all__ = ["Arrangement", "PictureStem", "Vessel", "draw", "draw_side_by_side", "draw_stem"]

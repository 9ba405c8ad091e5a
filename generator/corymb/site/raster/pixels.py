"""How does a drawn picture become pixels, where a message, a letter or a printer takes no drawing?

ThorVG lays the papers down; on our pictures it was measured five times as fast as resvg, and what
they drew couldn't be told apart by eye. The same drawing gives the same bytes.
"""

from __future__ import annotations

import io
from typing import Literal

from PIL import Image
from thorvg_python.base import Result
from thorvg_python.canvas.sw import SwCanvas
from thorvg_python.engine import Engine
from thorvg_python.paint.picture import Picture

from corymb.photos import encode
from corymb.photos.finish import HOUSE_FINISH
from corymb.site.raster.sheet import NotDrawnError, view_box

Kind = Literal["png", "jpeg", "avif"]


def raster_of(svg: str, width_px: int, kind: Kind = "png") -> bytes:
    """A drawn picture so many pixels wide, in its own shape.

    `width_px` is a whole number of 1 or more. Raises NotDrawnError.
    """
    *_, width, height = view_box(svg)
    image = pixels(svg, (width_px, max(1, round(width_px * height / width))))
    if kind == "jpeg":
        return encode.jpeg(image, HOUSE_FINISH.jpeg_quality)
    if kind == "avif":
        return encode.avif(image, HOUSE_FINISH.avif_quality, HOUSE_FINISH.avif_speed)
    output = io.BytesIO()
    image.save(output, "PNG", optimize=True)
    return output.getvalue()


def pixels(svg: str, size: tuple[int, int]) -> Image.Image:
    """A drawn picture filling a sheet of this size; the sheet should have the drawing's shape.

    What stands out of the drawing's view box is cut off. Raises NotDrawnError.
    """
    engine = Engine()
    canvas = SwCanvas(engine)
    try:
        canvas.set_target(*size)
        picture = Picture(engine)
        if picture.load_data(svg.encode(), "svg", None, True) is not Result.SUCCESS:
            raise NotDrawnError("this is not a drawing that can be turned into pixels.")
        picture.set_size(*size)
        canvas.add(picture)
        canvas.draw(True)
        canvas.sync()
        return _over_paper(canvas, size)
    finally:
        canvas.destroy()


def _over_paper(canvas: SwCanvas, size: tuple[int, int]) -> Image.Image:
    """The canvas's pixels, with the paper of the pages where the drawing leaves it bare."""
    assert canvas.buffer_arr is not None
    drawn = Image.frombytes("RGBa", size, bytes(canvas.buffer_arr)).convert("RGBA")
    paper = Image.new("RGB", size, HOUSE_FINISH.paper)
    paper.paste(drawn, mask=drawn.getchannel("A"))
    return paper

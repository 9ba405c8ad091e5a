"""Was this picture turned into pixels before, so large and so filed? For what is asked one by one.

Unlike what a build makes, nobody knows which of these are still wanted: the newest are kept.
"""

from __future__ import annotations

import hashlib
from contextlib import suppress
from functools import cache
from importlib.metadata import version
from pathlib import Path

from corymb.code_digest import code_digest
from corymb.files.unharmed import keep, kept_in
from corymb.files.whole import made_folder
from corymb.photos.finish import HOUSE_FINISH, encoders
from corymb.site.raster.pixels import Kind, raster_of

HERE = Path(__file__).parent
MOST = 200
"""Pictures: more than a book shows. Our own choice."""
KEY_LENGTH = 32


@cache  # the installed packages' own files say it, and are slow to ask
def made_by() -> tuple[object, ...]:
    """Whatever decides how a drawing's pixels look, beside the drawing."""
    return (HOUSE_FINISH, version("thorvg-python"), encoders(), code_digest(HERE))


def kept_raster(folder: Path, svg: str, width_px: int, kind: Kind = "png") -> bytes:
    """As `raster_of`, but found in `folder` if it was made before; each with its own digest.

    Raises NotDrawnError.
    """
    told = f"{made_by()} {width_px} {kind} {svg}"
    name = hashlib.sha256(told.encode()).hexdigest()[:KEY_LENGTH]
    file = folder / f"{name}.{kind}.kept"
    with suppress(OSError, ValueError):
        return kept_in(file)
    data = raster_of(svg, width_px, kind)
    with suppress(OSError):  # a full disk: then it is made again the next time
        made_folder(folder)
        keep(file, data)
        _forget_the_oldest(folder)
    return data


def _forget_the_oldest(folder: Path) -> None:
    files = sorted(folder.glob("*.kept"), key=lambda file: file.stat().st_mtime_ns)
    for file in files[:-MOST]:
        file.unlink(missing_ok=True)

"""Why can't this photo be used, and what should be done about it?"""

from difflib import get_close_matches
from pathlib import Path

# A JPEG is decoded at the scale that is needed; of the other kinds every pixel has to be held.
LARGEST_PIXELS = 200_000_000
LARGEST_WHOLE_PIXELS = 100_000_000
MOST_LAYERS = 64
READABLE = "JPEG, PNG, TIFF, WebP, AVIF or HEIC"


class PhotoError(ValueError):
    """A photo that can't be used; its text is a sentence to show beside the photo's line."""

    def __init__(self, source: Path, trouble: str) -> None:
        super().__init__(source, trouble)
        self.source = source
        self.trouble = trouble

    def __str__(self) -> str:
        return f"{self.source.name} {self.trouble}"


def missing(source: Path) -> PhotoError:
    """The commonest slip is a capital letter, or .jpeg for .jpg: the nearest name is given."""
    here = source.parent == Path()
    where = "this folder" if here else source.parent
    trouble = f"is not in {where}: check the name, or copy the photo {'here' if here else 'there'}."
    near = _nearest_name(source)
    return PhotoError(source, f"{trouble} Did you mean {near}?" if near else trouble)


def _nearest_name(source: Path) -> str | None:
    if not source.parent.is_dir():
        return None
    there = sorted(path for path in source.parent.iterdir() if path.name != source.name)
    names = {path.stem.lower(): path.name for path in there}
    near = get_close_matches(source.stem.lower(), names, n=1, cutoff=0.75)
    return names[near[0]] if near else None


def is_folder(source: Path) -> PhotoError:
    return PhotoError(source, "is a folder, not a photo: name one of the files in it.")


def empty(source: Path) -> PhotoError:
    return PhotoError(source, "is empty: copy it again from the camera or phone.")


def forbidden(source: Path) -> PhotoError:
    return PhotoError(source, "may not be read: change the file's permissions so that you can.")


def not_a_photo(source: Path) -> PhotoError:
    return PhotoError(source, f"is not a photo that can be read here: save it as {READABLE}.")


def raw(source: Path) -> PhotoError:
    return PhotoError(
        source, "is a raw camera file: develop it in your photo program and export a JPEG."
    )


def damaged(source: Path) -> PhotoError:
    return PhotoError(source, "is cut short or damaged: copy it again from the camera or phone.")


def changing(source: Path) -> PhotoError:
    return PhotoError(source, "changed while it was read: wait until it is copied, then try again.")


def too_large(source: Path, width: int, height: int, most: int = LARGEST_PIXELS) -> PhotoError:
    millions = round(width * height / 1_000_000)
    whole = "" if most == LARGEST_PIXELS else " of its kind"
    return PhotoError(
        source,
        f"is too large: {width} x {height} is {millions} megapixels, "
        f"and {most // 1_000_000} is the most that is read{whole}. "
        "Save it smaller; 4000 across is plenty.",
    )


def far_too_large(source: Path) -> PhotoError:
    """So large that not even its size is read."""
    return PhotoError(
        source,
        f"is too large: {LARGEST_PIXELS // 1_000_000} megapixels is the most that is read. "
        "Save it smaller; 4000 across is plenty.",
    )


def too_many_layers(source: Path, layers: int) -> PhotoError:
    return PhotoError(
        source,
        f"is a JPEG in {layers} layers, and {MOST_LAYERS} is the most that is read: "
        "open it in your photo program and save it as a JPEG again.",
    )


def animated(source: Path, pictures: int) -> PhotoError:
    return PhotoError(
        source,
        f"moves: it holds {pictures} pictures in a row. "
        "Save the one to show as a JPEG and name that instead.",
    )


def needs_heic(source: Path) -> PhotoError:
    return PhotoError(
        source,
        'is an HEIC photo, which needs one more piece: run  pip install "corymb[heic]"  '
        "or save the photo as a JPEG.",
    )

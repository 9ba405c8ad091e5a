"""In which widths is a photo published?"""

Size = tuple[int, int]

# A width this close below the largest would be a second file for the same screens.
NEARLY_THE_SAME = 0.85


# Nor is a picture higher than three screens: a strip of paper scanned end to end has more rows
# than an encoder takes. House value.
HIGHEST = 4800


def published_sizes(photo: Size, widths: tuple[int, ...]) -> tuple[Size, ...]:
    """The sizes to make, largest first, in the photo's own shape and never larger than it.

    A photo between two of the widths is published at its own width too: its owner
    took the trouble to send it that large.
    """
    largest = min(photo[0], max(widths), max(1, photo[0] * HIGHEST // photo[1]))
    smaller = {width for width in widths if width < largest * NEARLY_THE_SAME}
    return tuple((width, height_at(photo, width)) for width in sorted({largest, *smaller})[::-1])


def height_at(photo: Size, width: int) -> int:
    """The height that keeps the photo's shape; at least one row, for a very long panorama."""
    return min(HIGHEST, max(1, round(photo[1] * width / photo[0])))

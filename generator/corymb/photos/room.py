"""How many pixels may be in memory at once, however many photos are made side by side?

A camera's JPEG is decoded near the size that is needed and takes little room. What has to be
decoded whole may be a hundred megapixels; one such photo is enough at a time.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from threading import Condition

# Four phones' HEIC photos; four bytes a pixel make 200 MB. House value.
MOST_PIXELS = 50_000_000


class Room:
    """Room for so many pixels; whoever finds too little waits until there is enough."""

    def __init__(self, most: int = MOST_PIXELS) -> None:
        self._most = most
        self._taken = 0
        self._changed = Condition()

    @contextmanager
    def for_pixels(self, pixels: int) -> Iterator[None]:
        """Held while they are in memory. More than there is room for take all of it."""
        needed = min(pixels, self._most)
        with self._changed:
            self._changed.wait_for(lambda: self._taken + needed <= self._most)
            self._taken += needed
        try:
            yield
        finally:
            with self._changed:
                self._taken -= needed
                self._changed.notify_all()

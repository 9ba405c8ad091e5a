"""What a build makes lasts to its end: who looks for what was let go of, and when?

Python looks through all that there is again and again, for things that only hold each other. A
build leaves hardly any behind, and looking takes a tenth of its time: so it isn't done meanwhile.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def all_lasts() -> Iterator[None]:
    """Within this block nothing is looked for."""
    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()


def what_is_here_lasts() -> None:
    """Look no more through what there is now: a large studio's is millions of things."""
    gc.freeze()

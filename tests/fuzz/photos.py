"""Can any file named as a photo bring the program down, keep it busy or fill its memory?

Run `python -m tests.fuzz.photos` for 6,000 harmed photos of all kinds, or say how many, and from
which number on: `python -m tests.fuzz.photos 500 1200`. Each is inspected and developed; what comes
of it has to be a photo or a PhotoError, in a few seconds of work and within bounded memory. The
work is done in a process of its own, so that a decoder that falls over is found as well. A photo
that fails is kept under its number.
"""

# ruff: noqa: T201 - it prints what it finds
from __future__ import annotations

import random
import resource
import subprocess
import sys
import tempfile
import time
import warnings
from collections import Counter
from pathlib import Path

from corymb.photos import Finish, PhotoError, inspect
from corymb.photos.develop import develop
from tests.photos.damage import harmed, whole_photos

TRIES, AT_ONCE = 6000, 500
MOST_SECONDS = 5.0  # of work, not by the clock
# What a photo of a hundred megapixels may take, with Python and its libraries: an address
# space of so much, beyond which a decoder gets no memory and has to say so.
MOST_BYTES = 2_000_000_000
SMALL = Finish(widths=(32,), card_size=(12, 6))


def heic_too(photos: list[tuple[str, bytes]]) -> list[tuple[str, bytes]]:
    """With a HEIC photo, where its extra is installed."""
    try:
        import pillow_heif
    except ImportError:
        return photos
    with tempfile.NamedTemporaryFile(suffix=".heic") as file:
        size = (64, 48)
        pillow_heif.from_bytes("RGB", size, bytes(3 * 64 * 48)).save(file.name)
        return [*photos, ("heic", Path(file.name).read_bytes())]


def outcome(source: Path) -> str:
    """`photo`, `refused`, or what went wrong."""
    start = time.process_time()
    try:
        inspect(source)
        develop(source, SMALL)
        told = "photo"
    except PhotoError as error:
        told = "refused" if str(error).startswith(source.name) else f"nameless: {error}"
    except Exception as error:
        told = f"{type(error).__name__}: {error}"
    taken = time.process_time() - start
    return told if taken < MOST_SECONDS else f"{taken:.1f} s of work: {told}"


def try_from(first: int, count: int, folder: Path) -> None:
    """Print the outcome of each, and leave the photo of any that failed."""
    warnings.simplefilter("ignore")
    resource.setrlimit(resource.RLIMIT_AS, (MOST_BYTES, MOST_BYTES))
    photos = heic_too(list(whole_photos()))
    for number in range(first, first + count):
        chance = random.Random(number)
        kind, whole = photos[number % len(photos)]
        source = folder / f"{number}.{kind}"
        source.write_bytes(harmed(whole, chance))
        told = outcome(source)
        if told in ("photo", "refused"):
            source.unlink()
        print(f"{kind} {told}", flush=True)


def main() -> int:
    """Fail when anything went wrong."""
    if sys.argv[1:2] == ["try"]:
        try_from(int(sys.argv[2]), int(sys.argv[3]), Path(sys.argv[4]))
        return 0
    count = int(sys.argv[1]) if len(sys.argv) > 1 else TRIES
    start = int(sys.argv[2]) if len(sys.argv) > 2 else 0
    folder = Path(tempfile.mkdtemp(prefix="harmed-photos-"))
    outcomes: Counter[str] = Counter()
    for first in range(start, start + count, AT_ONCE):
        some = str(min(AT_ONCE, start + count - first))
        asked = [sys.executable, "-m", "tests.fuzz.photos", "try", str(first), some, str(folder)]
        done = subprocess.run(asked, capture_output=True, text=True)
        outcomes.update(done.stdout.splitlines())
        if done.returncode:
            outcomes[f"the process fell over ({done.returncode}): {done.stderr[-300:]}"] += 1
    for told, times in sorted(outcomes.items()):
        print(f"{times:6} {told}")
    left = sorted(folder.iterdir())
    print(f"{len(left)} failed{', kept in ' + str(folder) if left else ''}")
    return int(bool(left))


if __name__ == "__main__":
    sys.exit(main())

"""How much memory do photos take at most, and does it grow with their number?

Run `python -m tests.bench.photo_memory` for 50 and 200 photos of 12 megapixels, or name the
numbers: `python -m tests.bench.photo_memory 50 200 2000`. Each number is prepared cold by a
process of its own, which tells the most it ever held (Linux's VmHWM, in proc(5)), and then
once more with nothing changed.
"""

from __future__ import annotations

import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from corymb.photos import PhotoCache, PhotoError, prepare_many
from tests.bench.camera_photos import distinct, jpeg, soft_picture

NUMBERS = (50, 200)
PICTURES = 12
STEP = 250
ALLOWED_MB = 400


def most_mb() -> float:
    """The most memory this process ever held."""
    found = re.search(r"VmHWM:\s+(\d+) kB", Path("/proc/self/status").read_text())
    return int(found[1]) / 1024 if found else 0.0


def prepare_all(photos: Path, cache_folder: Path) -> None:
    """Print the seconds taken, the most memory held, and how many photos came of it."""
    sources = sorted(photos.iterdir())
    start = time.perf_counter()
    with PhotoCache(cache_folder) as cache:
        made = prepare_many(sources, cache, tell_now_and_then)
    taken = time.perf_counter() - start
    good = sum(not isinstance(each, PhotoError) for each in made.values())
    print(f"{taken:.2f} {most_mb():.0f} {good}")


def tell_now_and_then(done: int, total: int) -> None:
    if done % STEP == 0:
        print(f"  {done} of {total}: {most_mb():.0f} MB at most so far", file=sys.stderr)


def in_own_process(photos: Path, cache_folder: Path) -> tuple[float, int, int]:
    asked = [sys.executable, "-m", __spec__.name, "prepare", str(photos), str(cache_folder)]
    told = subprocess.run(asked, check=True, stdout=subprocess.PIPE, text=True).stdout.split()
    return float(told[0]), int(told[1]), int(told[2])


def measure(jpegs: list[bytes], number: int) -> int:
    """The megabytes that so many photos took."""
    with tempfile.TemporaryDirectory() as folder:
        photos = Path(folder) / "photos"
        photos.mkdir()
        assert len(list(distinct(jpegs, photos, number))) == number
        cold, most, good = in_own_process(photos, Path(folder) / "cache")
        warm, idle, _ = in_own_process(photos, Path(folder) / "cache")
    print(
        f"{number} photos: {good} made in {cold:.0f} s with {most} MB at most; "
        f"unchanged {warm * 1000:.0f} ms, {idle} MB",
        flush=True,
    )
    return most


def main() -> int:
    """Fail when any number of photos took more than is allowed."""
    if sys.argv[1:2] == ["prepare"]:
        prepare_all(Path(sys.argv[2]), Path(sys.argv[3]))
        return 0
    numbers = [int(each) for each in sys.argv[1:]] or list(NUMBERS)
    jpegs = [jpeg(soft_picture(number)) for number in range(PICTURES)]
    return int(max(measure(jpegs, number) for number in numbers) > ALLOWED_MB)


if __name__ == "__main__":
    sys.exit(main())

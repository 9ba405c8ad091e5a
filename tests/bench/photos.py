"""How much longer than it must does the way from camera file to web take?

Run `python -m tests.bench.photos`. The floor is what nobody can leave out: decode at the scale
that is needed, resize, and encode every file the pipeline makes with the same settings, on all
cores, nothing written. A photo with a colour profile has to be brought to sRGB as well, so
for the phone's photos the floor holds that conversion, at the largest published size. The
pipeline does all it does for a studio: digest, notes, checks, placeholder, palettes, the share
card, every file written to disk. Floor and pipeline take turns; medians are compared. On a
machine that is busy with other things, the processor's seconds are the truer measure: both are
told. `python -m tests.bench.photos 4 3` takes four photos of each kind, three times.
"""

from __future__ import annotations

import io
import os
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from functools import partial
from pathlib import Path

from PIL import Image, ImageCms, ImageOps

from corymb.photos import HOUSE_FINISH, PhotoCache, prepare_many
from corymb.photos.share_card import CENTRE
from corymb.photos.sizes import published_sizes
from tests.bench.camera_photos import DISPLAY_P3, SIZE, jpeg, picture

PHOTOS, ROUNDS = 8, 5
ALLOWED = 1.25
Times = tuple[float, float]
SRGB = ImageCms.createProfile("sRGB")


def encoded(image: Image.Image, kind: str, **settings: int | bool) -> int:
    output = io.BytesIO()
    image.save(output, kind, **settings)
    return len(output.getvalue())


def floor_of(source: Path) -> int:
    """The bytes of one photo's files."""
    finish = HOUSE_FINISH
    sizes = published_sizes(SIZE, finish.widths)
    with Image.open(source) as image:
        image.draft(None, sizes[0])
        picture = image.resize(sizes[0], Image.Resampling.LANCZOS, reducing_gap=3.0)
        icc = image.info.get("icc_profile")
    if icc:
        meant = ImageCms.ImageCmsProfile(io.BytesIO(icc))
        ImageCms.profileToProfile(
            picture, meant, SRGB, ImageCms.Intent.RELATIVE_COLORIMETRIC, inPlace=True
        )
    card = ImageOps.fit(picture, finish.card_size, Image.Resampling.LANCZOS, centering=CENTRE)
    light = {"quality": finish.jpeg_quality, "progressive": True, "optimize": True}
    total = encoded(card, "JPEG", **light)
    for size in sizes:
        picture = picture.resize(size, Image.Resampling.LANCZOS)
        avif = {"quality": finish.avif_quality, "speed": finish.avif_speed, "max_threads": 1}
        total += encoded(picture, "AVIF", **avif) + encoded(picture, "JPEG", **light)
    return total


def floor(sources: list[Path]) -> None:
    with ThreadPoolExecutor(os.cpu_count() or 1) as workers:
        assert all(workers.map(floor_of, sources))


def pipeline(sources: list[Path], empty: Path) -> None:
    """Cold: into a cache that holds nothing."""
    with PhotoCache(empty) as cache:
        made = prepare_many(sources, cache)
    assert all(hasattr(photo, "files") for photo in made.values())


def seconds(work: Callable[[], None]) -> tuple[float, float]:
    """By the clock, and of all processors together."""
    start, worked = time.perf_counter(), time.process_time()
    work()
    return time.perf_counter() - start, time.process_time() - worked


def compare(what: str, sources: list[Path], rounds: int) -> float:
    """The pipeline's time over the floor's."""
    floors, pipelines = [], []
    for _ in range(rounds):
        floors.append(seconds(partial(floor, sources)))
        with tempfile.TemporaryDirectory() as empty:
            pipelines.append(seconds(partial(pipeline, sources, Path(empty))))
    print(f"{what}: {len(sources)} photos, {rounds} rounds")
    by_clock = _told("by the clock", floors, pipelines, 0, len(sources))
    _told("of the processors", floors, pipelines, 1, len(sources))
    return by_clock


def _told(what: str, floors: list[Times], pipelines: list[Times], which: int, count: int) -> float:
    least = statistics.median(each[which] for each in floors)
    whole = statistics.median(each[which] for each in pipelines)
    print(
        f"  {what}: floor {least * 1000 / count:.0f} ms a photo, pipeline "
        f"{whole * 1000 / count:.0f} ms, ratio {whole / least:.3f} (allowed {ALLOWED})",
        flush=True,
    )
    return whole / least


def write(folder: Path, count: int, icc: bytes) -> list[Path]:
    folder.mkdir()
    sources = [folder / f"{number}.jpg" for number in range(count)]
    for number, source in enumerate(sources):
        source.write_bytes(jpeg(picture(number), icc))
    return sources


def main() -> int:
    """Print both ratios; fail when one is over what is allowed."""
    count, rounds = [int(each) for each in sys.argv[1:]] or (PHOTOS, ROUNDS)
    kinds = {"camera, sRGB": b"", "phone, Display P3": DISPLAY_P3}
    with tempfile.TemporaryDirectory() as folder:
        ratios = [
            compare(what, write(Path(folder) / str(number), count, icc), rounds)
            for number, (what, icc) in enumerate(kinds.items())
        ]
    return int(max(ratios) > ALLOWED)


if __name__ == "__main__":
    sys.exit(main())

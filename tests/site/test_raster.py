"""Drawn pictures as pixels: what was drawn is what is seen, in every kind of file."""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from corymb.site.raster import (
    NotDrawnError,
    kept_pixels,
    kept_raster,
    raster_of,
    share_card,
    small_look,
    small_sizes,
    small_wide_look,
)
from corymb.site.raster.pixels import Kind
from corymb.site.raster.sheet import reframed, view_box

ROSE, WALL, TABLE = (200, 80, 100), (244, 239, 230), (90, 70, 60)
HEAD = '<g id="a"><circle r="10" fill="#c85064"/></g>'
PICTURE = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 140" role="img">'
    "<title>Rook &amp; &quot;Teasel&quot; &lt;b&gt;</title>"
    f"<defs>{HEAD}</defs>"
    '<rect x="-100" y="-140" width="300" height="420" fill="#f4efe6"/>'
    '<path d="M-100 120H300V300H-100z" fill="#5a463c"/>'
    '<use href="#a" transform="translate(50 40)"/></svg>'
)


def opened(data: bytes) -> Image.Image:
    return Image.open(io.BytesIO(data)).convert("RGB")


@pytest.mark.parametrize(("kind", "near"), [("png", 0), ("jpeg", 6), ("avif", 6)])
def test_a_picture_has_its_colours_in_their_places(kind: Kind, near: int) -> None:
    image = opened(raster_of(PICTURE, 300, kind))
    assert image.size == (300, 420)
    for place, colour in {(150, 120): ROSE, (20, 20): WALL, (150, 400): TABLE}.items():
        seen = image.getpixel(place)
        assert isinstance(seen, tuple)
        assert all(abs(a - b) <= near for a, b in zip(seen, colour, strict=True)), (place, seen)


@pytest.mark.parametrize("kind", ["png", "jpeg", "avif"])
def test_the_same_picture_gives_the_same_bytes(kind: Kind) -> None:
    assert raster_of(PICTURE, 120, kind) == raster_of(PICTURE, 120, kind)


def test_paper_shows_where_nothing_is_drawn() -> None:
    half = '<path d="M0 0h5v10h-5z"/>'
    bare = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">{half}</svg>'
    image = opened(raster_of(bare, 10))
    assert (image.getpixel((2, 5)), image.getpixel((8, 5))) == ((0, 0, 0), (247, 242, 232))


@pytest.mark.parametrize(
    ("sheet", "shape", "wider"),
    [
        pytest.param("0 0 100 140", (200, 100), (-90, 0, 280, 140), id="a tall one gets sides"),
        pytest.param("0 0 400 100", (200, 100), (0, -50, 400, 200), id="a long one gets sky"),
        pytest.param("0 0 200 100", (200, 100), (0, 0, 200, 100), id="one that fits is left"),
    ],
)
def test_a_sheet_takes_another_shape_about_the_same_middle(
    sheet: str, shape: tuple[int, int], wider: tuple[float, ...]
) -> None:
    assert view_box(reframed(f'<svg viewBox="{sheet}"></svg>', shape)) == wider


def test_a_card_is_filled_to_its_edges_and_loses_nothing() -> None:
    card = opened(share_card(PICTURE))
    assert card.size == (1200, 630)
    for place, colour in {(5, 5): WALL, (1195, 625): TABLE, (600, 180): ROSE}.items():
        seen = card.getpixel(place)
        assert isinstance(seen, tuple)
        assert all(abs(a - b) <= 6 for a, b in zip(seen, colour, strict=True)), (place, seen)


WIDE_PICTURE = PICTURE.replace("0 0 100 140", "0 -10 180 140")


@pytest.mark.parametrize(
    ("small", "svg", "size", "rose"),
    [
        pytest.param(small_look, PICTURE, (480, 576), (240, 165), id="high in a high frame"),
        pytest.param(small_look, WIDE_PICTURE, (480, 576), (133, 235), id="wide in a high frame"),
        pytest.param(small_wide_look, WIDE_PICTURE, (480, 360), (133, 129), id="in a wide frame"),
        pytest.param(small_sizes, WIDE_PICTURE, (720, 560), (200, 200), id="in its own shape"),
    ],
)
def test_a_small_picture_fills_its_frame(
    small: Callable[[str], bytes], svg: str, size: tuple[int, int], rose: tuple[int, int]
) -> None:
    data = small(svg)
    image = opened(data)
    assert image.size == size
    for place, colour in {(2, 2): WALL, (size[0] - 3, size[1] - 3): TABLE, rose: ROSE}.items():
        seen = image.getpixel(place)
        assert isinstance(seen, tuple)
        assert all(abs(a - b) <= 8 for a, b in zip(seen, colour, strict=True)), (place, seen)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("<svg></svg>", "a drawn picture has no viewBox."),
        ('viewBox="0 0 9 9"', "this is not a drawing that can be turned into pixels."),
    ],
)
def test_what_is_no_drawing_is_refused_in_words(text: str, said: str) -> None:
    with pytest.raises(NotDrawnError) as refused:
        raster_of(text, 10)
    assert str(refused.value) == said


@pytest.mark.parametrize("kind", ["png", "jpeg", "avif"])
def test_what_was_made_before_is_found_and_what_is_not_whole_is_made_again(
    kind: Kind, tmp_path: Path
) -> None:
    first = kept_raster(tmp_path, PICTURE, 60, kind)
    assert first == raster_of(PICTURE, 60, kind)
    (file,) = tmp_path.iterdir()
    seen = file.stat().st_mtime_ns
    assert kept_raster(tmp_path, PICTURE, 60, kind) == first
    assert file.stat().st_mtime_ns == seen
    file.write_bytes(file.read_bytes()[:-3])
    assert kept_raster(tmp_path, PICTURE, 60, kind) == first


def test_each_width_kind_and_picture_is_kept_apart_and_the_oldest_go(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(kept_pixels, "MOST", 3)
    (tmp_path / "notes.txt").write_text("mine")
    for width, kind in ((10, "png"), (11, "png"), (11, "jpeg"), (12, "png")):
        kept_raster(tmp_path, PICTURE, width, kind)  # type: ignore[arg-type]
    assert len([*tmp_path.glob("*.kept")]) == 3
    assert (tmp_path / "notes.txt").exists()

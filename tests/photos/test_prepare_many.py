"""Many photos are made side by side; a bad one is named and stops no other."""

from pathlib import Path

import pytest

from corymb.photos import HOUSE_FINISH, Finish, PhotoCache, PhotoError, prepare, prepare_many
from corymb.photos import cache as cache_module
from corymb.photos.develop import Developed

from .camera import petals, save


def studio(photos: Path, count: int) -> list[Path]:
    return [save(petals((320 + n, 240)), photos / f"{n}.jpg") for n in range(count)]


def test_many_photos_come_back_in_the_order_given(photos: Path, cache: PhotoCache) -> None:
    sources = studio(photos, 6)[::-1]
    prepared = prepare_many(sources, cache)
    assert list(prepared) == sources
    assert prepared == {source: prepare(source, cache) for source in sources}


def test_a_photo_that_cannot_be_used_stands_among_the_others(
    photos: Path, cache: PhotoCache
) -> None:
    good = studio(photos, 2)
    bad = [photos / "missing.jpg", photos]
    prepared = prepare_many([good[0], *bad, good[1]], cache)
    refused = [each for each in prepared.values() if isinstance(each, PhotoError)]
    assert [each.source for each in refused] == bad
    assert [str(each).split(":")[0] for each in refused] == [
        f"missing.jpg is not in {photos}",
        "photos is a folder, not a photo",
    ]


def test_a_photo_named_twice_is_made_once(photos: Path, cache: PhotoCache) -> None:
    [source] = studio(photos, 1)
    seen: list[tuple[int, int]] = []
    assert list(prepare_many([source, source], cache, lambda *step: seen.append(step))) == [source]
    assert seen == [(1, 1)]


def test_progress_is_told_after_each(photos: Path, cache: PhotoCache) -> None:
    seen: list[tuple[int, int]] = []
    prepare_many([*studio(photos, 3), photos], cache, lambda *step: seen.append(step))
    assert seen == [(1, 4), (2, 4), (3, 4), (4, 4)]


def test_no_photos_is_no_work(cache: PhotoCache) -> None:
    assert prepare_many([], cache) == {}


def test_a_second_run_reads_no_photo(
    tmp_path: Path, photos: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    sources = studio(photos, 3)
    with PhotoCache(tmp_path / "cache") as cache:
        first = prepare_many(sources, cache)

    def refuse(*_: object) -> None:
        raise AssertionError("a photo was read")

    monkeypatch.setattr("corymb.photos.stat_index._digest_of", refuse)
    with PhotoCache(tmp_path / "cache") as cache:
        assert prepare_many(sources, cache) == first


def test_a_full_disk_ends_the_run(
    photos: Path, cache: PhotoCache, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(source: Path, finish: Finish) -> Developed:
        assert finish == HOUSE_FINISH
        raise OSError(28, "No space left on device", str(source))

    monkeypatch.setattr(cache_module, "develop", full)
    with pytest.raises(OSError, match="No space left"):
        prepare_many(studio(photos, 3), cache)

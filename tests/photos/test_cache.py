"""A finished photo is made once, kept whole, and dropped when nobody uses it."""

import multiprocessing
import os
import shutil
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from time import sleep

import pytest
from PIL import Image

from corymb.photos import HOUSE_FINISH, Finish, PhotoCache, PhotoError, PreparedPhoto, prepare
from corymb.photos import cache as cache_module
from corymb.photos.develop import Developed, develop
from corymb.photos.finish import STEPS, encoders

from .camera import petals, save

Counter = list[Path]


@pytest.fixture
def made(monkeypatch: pytest.MonkeyPatch) -> Counter:
    """Which photos were made, rather than found."""
    developed: Counter = []

    def counting(source: Path, finish: Finish) -> Developed:
        developed.append(source)
        return develop(source, finish)

    monkeypatch.setattr(cache_module, "develop", counting)
    return developed


@pytest.fixture
def jar(photos: Path) -> Path:
    return save(petals((640, 480)), photos / "jar.jpg")


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a photo and a cache that holds it, to be copied and harmed."""
    folder = tmp_path_factory.mktemp("whole")
    run(folder, save(petals((640, 480)), folder / "jar.jpg"))
    return folder


def run(tmp_path: Path, *sources: Path, finish: Finish = HOUSE_FINISH) -> list[PreparedPhoto]:
    """One run of the program, from opening the cache to closing it."""
    with PhotoCache(tmp_path / "cache") as cache:
        return [prepare(source, cache, finish) for source in sources]


def test_a_photo_is_made_once_and_found_ever_after(
    tmp_path: Path, jar: Path, made: Counter
) -> None:
    assert run(tmp_path, jar) * 2 == run(tmp_path, jar, jar)
    assert made == [jar]


def test_an_unchanged_photo_is_not_even_read(
    tmp_path: Path, jar: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = run(tmp_path, jar)

    def refuse(*_: object) -> None:
        raise AssertionError("the photo was read")

    monkeypatch.setattr("corymb.photos.stat_index._digest_of", refuse)
    assert run(tmp_path, jar) == first


def test_a_photo_that_was_moved_or_touched_is_found_by_what_it_holds(
    tmp_path: Path, jar: Path, made: Counter
) -> None:
    first = run(tmp_path, jar)
    moved = jar.rename(jar.with_name("moved.jpg"))
    os.utime(moved, ns=(0, 0))
    assert run(tmp_path, moved) == first
    assert made == [jar]


def test_a_photo_replaced_by_another_is_made_again(tmp_path: Path, jar: Path) -> None:
    [first] = run(tmp_path, jar)
    save(petals((640, 480)).rotate(180), jar)
    [second] = run(tmp_path, jar)
    assert not {file.name for file in first.files} & {file.name for file in second.files}


@pytest.mark.parametrize(
    "finish",
    [
        pytest.param(replace(HOUSE_FINISH, widths=(480, 640)), id="widths"),
        pytest.param(replace(HOUSE_FINISH, avif_quality=50), id="AVIF quality"),
        pytest.param(replace(HOUSE_FINISH, avif_speed=10), id="AVIF speed"),
        pytest.param(replace(HOUSE_FINISH, jpeg_quality=50), id="JPEG quality"),
        pytest.param(replace(HOUSE_FINISH, card_size=(600, 315)), id="card size"),
        pytest.param(replace(HOUSE_FINISH, paper="#ffffff"), id="paper"),
    ],
)
def test_every_setting_changes_the_names(finish: Finish) -> None:
    assert finish.key("digest") != HOUSE_FINISH.key("digest")
    assert finish.key("digest") == replace(finish).key("digest")


def test_another_encoder_changes_the_names(monkeypatch: pytest.MonkeyPatch) -> None:
    before = HOUSE_FINISH.key("digest")
    monkeypatch.setattr("corymb.photos.finish.encoders", lambda: (*encoders()[:-1], "webp 99"))
    assert HOUSE_FINISH.key("digest") != before


def test_another_step_of_ours_changes_the_names(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = HOUSE_FINISH.key("digest")
    steps = shutil.copytree(STEPS, tmp_path / "steps")
    monkeypatch.setattr("corymb.photos.finish.STEPS", steps)
    assert HOUSE_FINISH.key("digest") == before
    monkeypatch.setattr("corymb.photos.finish.STEPS", shutil.copytree(STEPS, tmp_path / "changed"))
    with (tmp_path / "changed" / "upright.py").open("a") as step:
        step.write("# another way up")
    assert HOUSE_FINISH.key("digest") != before


def test_names_say_photo_and_width(tmp_path: Path, jar: Path) -> None:
    [photo] = run(tmp_path, jar)
    key = photo.share_card.name.removesuffix("-card.jpg")
    assert len(key) == 20
    assert [file.name for file in photo.files] == [
        f"{key}-640.avif",
        f"{key}-640.jpg",
        f"{key}-480.avif",
        f"{key}-480.jpg",
    ]


def cut_short(path: Path) -> None:
    path.write_bytes(path.read_bytes()[:-100])


def emptied(path: Path) -> None:
    path.write_bytes(b"")


def overwritten(path: Path) -> None:
    path.write_bytes(bytes(path.stat().st_size))


def removed(path: Path) -> None:
    path.unlink()


def turned(path: Path) -> None:
    data = bytearray(path.read_bytes())
    data[len(data) // 2] ^= 1
    path.write_bytes(data)


def made_a_folder(path: Path) -> None:
    path.unlink()
    (path / "inside").mkdir(parents=True)


@pytest.mark.parametrize("harm", [cut_short, emptied, overwritten, removed, turned, made_a_folder])
@pytest.mark.parametrize("part", ["-640.avif", "-480.jpg", "-card.jpg", ".json"])
def test_a_harmed_entry_is_made_again(
    tmp_path: Path, whole: Path, made: Counter, harm: Callable[[Path], None], part: str
) -> None:
    jar = whole / "jar.jpg"
    shutil.copytree(whole / "cache", tmp_path / "cache")
    [photo] = run(tmp_path, jar)
    assert made == []
    before = {file.name: file.path.read_bytes() for file in photo.files}
    [harmed] = (tmp_path / "cache" / "finished").glob(f"*{part}")
    harm(harmed)
    [again] = run(tmp_path, jar)
    assert made == [jar]
    assert {file.name: file.path.read_bytes() for file in again.files} == before
    run(tmp_path, jar)
    assert made == [jar]


def test_a_photo_that_this_program_found_whole_is_only_looked_at(
    tmp_path: Path, jar: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    [photo] = run(tmp_path, jar) and run(tmp_path, jar)

    def refuse(*_: object) -> None:
        raise AssertionError("a note was read")

    monkeypatch.setattr("corymb.photos.store._read_note", refuse)
    assert run(tmp_path, jar) == [photo]


@pytest.mark.parametrize("part", ["-640.avif", ".json"])
def test_harm_is_seen_by_the_program_that_found_the_photo_whole(
    tmp_path: Path, jar: Path, made: Counter, part: str
) -> None:
    assert run(tmp_path, jar) == run(tmp_path, jar)
    sleep(0.02)  # longer than the ticks of a file system's clock
    [harmed] = (tmp_path / "cache" / "finished").glob(f"*{part}")
    overwritten(harmed)
    run(tmp_path, jar)
    assert made == [jar, jar]


def test_a_photo_cut_short_while_it_is_copied_is_told_to_be_waited_for(
    tmp_path: Path, jar: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def copying(source: Path, finish: Finish) -> Developed:
        source.write_bytes(source.read_bytes()[:900])
        return develop(source, finish)

    monkeypatch.setattr(cache_module, "develop", copying)
    with pytest.raises(PhotoError, match="wait until it is"):
        run(tmp_path, jar)


@pytest.mark.parametrize(
    ("fault", "told"),
    [
        pytest.param(FileNotFoundError(2, "gone"), "check the name", id="taken away"),
        pytest.param(OSError(5, "Input/output error"), "copy it again", id="a breaking card"),
    ],
)
def test_a_photo_that_fails_while_it_is_read_is_told_in_words(
    tmp_path: Path, jar: Path, monkeypatch: pytest.MonkeyPatch, fault: OSError, told: str
) -> None:
    def failing(_: Path) -> str:
        raise fault

    monkeypatch.setattr("corymb.photos.stat_index._digest_of", failing)
    with pytest.raises(PhotoError, match=told):
        run(tmp_path, jar)


def test_a_copied_cache_is_read_through_and_used(tmp_path: Path, jar: Path, made: Counter) -> None:
    [photo] = run(tmp_path, jar)
    for file in photo.files:
        os.utime(file.path, ns=(0, 0))
    assert run(tmp_path, jar) == [photo]
    assert made == [jar]


def test_an_entry_that_may_not_be_read_is_made_again(
    tmp_path: Path, jar: Path, made: Counter, monkeypatch: pytest.MonkeyPatch
) -> None:
    run(tmp_path, jar)
    with monkeypatch.context() as patched:  # whoever runs the tests may read everything, perhaps
        patched.setattr(os, "access", lambda path, mode: not str(path).endswith("-480.jpg"))
        run(tmp_path, jar)
    assert made == [jar, jar]


@pytest.mark.parametrize("nonsense", [b"", b"{", b"[]", b'{"a": 1}', b'{"a": [[1], 2, 3]}'])
def test_a_harmed_index_costs_only_time(
    tmp_path: Path, jar: Path, made: Counter, nonsense: bytes
) -> None:
    first = run(tmp_path, jar)
    (tmp_path / "cache" / "seen.json").write_bytes(nonsense)
    assert run(tmp_path, jar) == first
    assert made == [jar]


def test_a_photo_replaced_while_it_is_made_is_not_filed_under_its_old_name(
    tmp_path: Path, jar: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def replacing(source: Path, finish: Finish) -> Developed:
        save(petals((640, 480)).rotate(180), source)
        return develop(source, finish)

    with monkeypatch.context() as patched, pytest.raises(PhotoError, match="wait until it is"):
        patched.setattr(cache_module, "develop", replacing)
        run(tmp_path, jar)
    [photo] = run(tmp_path, jar)
    with Image.open(photo.files[1].path) as published, Image.open(jar) as source:
        assert published.getpixel((9, 9)) == pytest.approx(source.getpixel((9, 9)), abs=12)


def test_what_the_last_run_did_not_use_is_evicted(tmp_path: Path, jar: Path, made: Counter) -> None:
    bowl = save(petals((640, 400)), jar.with_name("bowl.jpg"))
    run(tmp_path, jar, bowl)
    (tmp_path / "cache" / "finished" / "x-480.avif.1234.unfinished").write_bytes(b"left over")
    with PhotoCache(tmp_path / "cache") as cache:
        kept = prepare(bowl, cache)
        assert cache.evict() == 2
        assert cache.evict() == 0
    left = {path.name for path in (tmp_path / "cache" / "finished").iterdir()}
    key = kept.share_card.name.removesuffix("-card.jpg")
    assert left == {f"{key}.json", kept.share_card.name, *(file.name for file in kept.files)}
    assert run(tmp_path, bowl) == [kept]
    assert made == [jar, bowl]


def test_nothing_is_evicted_under_another_programs_hands(tmp_path: Path, jar: Path) -> None:
    with PhotoCache(tmp_path / "cache") as other:
        photo = prepare(jar, other)
        with PhotoCache(tmp_path / "cache") as cache:
            assert cache.evict() == 0
        assert all(file.path.exists() for file in photo.files)
    with PhotoCache(tmp_path / "cache") as cache:
        assert cache.evict() == 1
        assert not any(file.path.exists() for file in photo.files)


def build(folder: Path, sources: list[Path]) -> list[str]:
    with PhotoCache(folder) as cache:
        photos = [prepare(source, cache) for source in sources]
        cache.evict()
        assert all(file.path.stat().st_size for photo in photos for file in photo.files)
        return [file.name for photo in photos for file in photo.files]


def test_two_programs_at_once_agree(tmp_path: Path, photos: Path) -> None:
    sources = [save(petals((300 + 20 * n, 200)), photos / f"{n}.jpg") for n in range(4)]
    jobs = [(tmp_path / "cache", sources), (tmp_path / "cache", sources[::-1])]
    with multiprocessing.get_context("spawn").Pool(2) as pool:
        one, other = pool.starmap(build, jobs)
    assert sorted(one) == sorted(other)
    assert build(tmp_path / "cache", sources) == one


def test_a_failed_write_leaves_nothing_behind(
    tmp_path: Path, jar: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patched, pytest.raises(OSError, match="No space left"):
        patched.setattr(Path, "replace", full)
        run(tmp_path, jar)
    assert list((tmp_path / "cache" / "finished").iterdir()) == []

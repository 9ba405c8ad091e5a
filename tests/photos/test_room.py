"""However many photos are made side by side, few pixels are in memory at once."""

from concurrent.futures import ThreadPoolExecutor
from threading import Lock
from time import sleep

import pytest

from corymb.photos.room import Room


@pytest.mark.parametrize(
    ("pixels", "together"),
    [
        pytest.param(1, 4, id="small ones all together"),
        pytest.param(5, 2, id="two halves"),
        pytest.param(6, 1, id="more than half alone"),
        pytest.param(99, 1, id="more than there is room for alone"),
    ],
)
def test_as_many_photos_are_in_memory_as_there_is_room_for(pixels: int, together: int) -> None:
    room, lock, inside, most = Room(10), Lock(), 0, 0

    def hold(_: int) -> None:
        nonlocal inside, most
        with room.for_pixels(pixels):
            with lock:
                inside += 1
                most = max(most, inside)
            sleep(0.03)
            with lock:
                inside -= 1

    with ThreadPoolExecutor(4) as workers:
        list(workers.map(hold, range(4)))
    assert most == together


def test_a_photo_that_fails_leaves_its_room() -> None:
    room = Room(10)
    with pytest.raises(ValueError, match="broken"), room.for_pixels(10):
        raise ValueError("broken")
    with room.for_pixels(10):
        pass

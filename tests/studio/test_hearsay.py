"""Which ids are heard of in a stem file that can't be read?"""

from __future__ import annotations

from time import process_time

import pytest

from corymb.studio.hearsay import _ids_in

SECONDS = 0.5
MANY = 30_000  # lines; a file may have more

HEARD = {
    "a key": ("dahlia-shell:\n", {"dahlia-shell"}),
    "below another": ("stems:\n  smoke-bush: {use: foliage}\n", {"stems", "smoke-bush"}),
    "in quotes": ("'smoke-bush' : x\n\"teasel\":\n", {"smoke-bush", "teasel"}),
    "in an item of a list": ("- teasel: x\n", {"teasel"}),
    "in capitals and words": ("Smoke bush:\n", {"smoke-bush"}),
    "not in a comment": ("# teasel: x\n", set()),
    "not over two lines": ("smoke\nbush: x\n", {"bush"}),
    "behind many empty lines": ("\n" * MANY + "teasel:", {"teasel"}),
    "behind many that are no keys": ("smoke\n" * MANY + "teasel:", {"teasel"}),
    "behind many spaces": (f"{' ' * MANY}teasel{' ' * MANY}x\nsmoke:", {"smoke"}),
}


@pytest.mark.parametrize(("text", "ids"), HEARD.values(), ids=HEARD)
def test_whatever_looks_like_an_id_is_heard_of_at_once(text: str, ids: set[str]) -> None:
    start = process_time()
    assert _ids_in(text) == ids
    assert process_time() - start < SECONDS

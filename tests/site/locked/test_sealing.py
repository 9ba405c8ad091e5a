"""Can a sealed file be read with its key and at its address alone?"""

from __future__ import annotations

import os

import pytest

from corymb.site.locked.keys import Keys, Passphrase, keys_from, name_of, stretch
from corymb.site.locked.sealing import NONCE_BYTES, SealBrokenError, seal, unseal

KEY, OTHER = bytes(range(32)), bytes(32)
PATH = "orders/barn-supper.html"
PAGE = b"<h1>Barn supper</h1>\n" * 40


@pytest.mark.parametrize(
    "path", [PATH, "photos/a.avif", "cut/2026.csv", "no-suffix", "\u00e4.html"]
)
@pytest.mark.parametrize("content", [b"", b"\n", PAGE, bytes(range(256))], ids=str)
def test_what_was_sealed_comes_out_as_it_went_in(path: str, content: bytes) -> None:
    assert unseal(KEY, path, seal(KEY, path, content)) == content


@pytest.mark.parametrize("path", [PATH, "assets/photos/a.avif"])
def test_a_change_of_any_byte_is_noticed(path: str) -> None:
    sealed = seal(KEY, path, b"8 kitchen jugs")
    for at in range(len(sealed)):
        changed = sealed[:at] + bytes([sealed[at] ^ 1]) + sealed[at + 1 :]
        with pytest.raises(SealBrokenError):
            unseal(KEY, path, changed)


@pytest.mark.parametrize("length", [0, 1, NONCE_BYTES, NONCE_BYTES + 15])
def test_what_was_cut_off_is_noticed(length: int) -> None:
    with pytest.raises(SealBrokenError):
        unseal(KEY, PATH, seal(KEY, PATH, PAGE)[:length])


def test_a_file_at_anothers_address_is_noticed() -> None:
    with pytest.raises(SealBrokenError):
        unseal(KEY, "orders/market-supper.html", seal(KEY, PATH, PAGE))


def test_another_key_opens_nothing() -> None:
    with pytest.raises(SealBrokenError):
        unseal(OTHER, PATH, seal(KEY, PATH, PAGE))


def test_no_two_sealings_have_a_nonce_in_common() -> None:
    nonces = {seal(KEY, PATH, PAGE)[:NONCE_BYTES] for _ in range(200)}
    assert len(nonces) == 200


def test_a_page_is_packed_before_it_is_sealed_for_afterwards_it_can_t_be() -> None:
    assert len(seal(KEY, PATH, PAGE)) < len(PAGE) / 5
    photo = os.urandom(500)
    assert len(seal(KEY, "a.avif", photo)) < len(photo) + 60


def test_a_name_tells_nothing_and_is_always_the_same() -> None:
    keys = Keys(KEY, OTHER)
    names = [name_of(keys, path) for path in (PATH, PATH, "orders/barn-supper.htm")]
    assert names[0] == names[1] != names[2]
    assert set("".join(names)) <= set("0123456789abcdef") and len(names[0]) == 32
    assert name_of(Keys(KEY, KEY), PATH) != names[0]


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("fünf blaue wörter", "fu\u0308nf blaue wo\u0308rter"),
        ("five words in a row ", "five words in a row"),
        ("ﬁve words in a row", "five words in a row"),
    ],
    ids=["accents put together otherwise", "a space at the end", "a ligature"],
)
def test_however_a_keyboard_writes_a_passphrase_it_is_the_same(typed: str, meant: str) -> None:
    assert stretch(typed, b"salt", 1) == stretch(meant, b"salt", 1)


def test_a_passphrase_and_keys_are_not_printed_by_accident() -> None:
    passphrase = Passphrase("bako-rimu-tesa", 1)
    assert "bako" not in repr(passphrase)
    assert repr(keys_from(passphrase, b"salt")) == "Keys()"

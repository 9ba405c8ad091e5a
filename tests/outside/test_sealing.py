"""Are files sealed, and passphrases stretched, as the published standards have it?"""

from __future__ import annotations

import hmac
from hashlib import sha256

import pytest

from corymb.site.locked.keys import ROUNDS, Passphrase, keys_from, stretch
from corymb.site.locked.sealing import seal_with

# RFC 7914, section 11: PBKDF2-HMAC-SHA-256; the first half of each, for a key has 32 bytes.
STRETCHED = {
    "one round": (
        ("passwd", b"salt", 1),
        "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc",
    ),
    "80,000 rounds": (
        ("Password", b"NaCl", 80_000),
        "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56",
    ),
}

# D. McGrew and J. Viega, The Galois/Counter Mode of Operation, appendix B, with keys of 256 bits;
# the mode that NIST SP 800-38D took over. Key, nonce, text, bound to, and sealed with its tag.
KEY = "feffe9928665731c6d6a8f9467308308" * 2
TEXT = (
    "d9313225f88406e5a55909c5aff5269a86a7a9531534f7da2e4c303d8a318a72"
    "1c3c0c95956809532fcf0e2449a6b525b16aedf5aa0de657ba637b39"
)
SEALED = {
    "case 13": ("00" * 32, "00" * 12, "", "", "530f8afbc74536b9a963b4f1c4cb738b"),
    "case 14": (
        *("00" * 32, "00" * 12, "00" * 16, ""),
        "cea7403d4d606b6e074ec5d3baf39d18d0d1c8a799996bf0265b98b5d48ab919",
    ),
    "case 16": (
        *(KEY, "cafebabefacedbaddecaf888", TEXT, "feedfacedeadbeeffeedfacedeadbeefabaddad2"),
        "522dc1f099567d07f47f37a32a84427d643a8cdcbfe5c0c97598a2bd2555d1aa"
        "8cb08e48590dbb3da7b08b1056828838c5f61e6393ba7a0abcc9f662"
        "76fc6ece0f4e1768cddf8853bb2d551b",
    ),
}

OWASP = 600_000
"""Rounds of PBKDF2-HMAC-SHA-256 that OWASP's Password Storage Cheat Sheet recommends (2026)."""


@pytest.mark.parametrize("row", STRETCHED)
def test_a_passphrase_is_stretched_as_in_rfc_7914(row: str) -> None:
    asked, key = STRETCHED[row]
    assert stretch(*asked).hex() == key


@pytest.mark.parametrize("row", SEALED)
def test_a_text_is_sealed_as_in_the_paper_on_gcm(row: str) -> None:
    key, nonce, text, bound_to, sealed = map(bytes.fromhex, SEALED[row])
    assert seal_with(key, nonce, text, bound_to) == nonce + sealed


def test_keys_are_parted_as_in_rfc_5869() -> None:
    salt = bytes(range(16))
    stretched = stretch("any", salt, 10)
    from_it = hmac.new(bytes(32), stretched, sha256).digest()  # 2.2, without a salt
    keys = keys_from(Passphrase("any", 10), salt)
    for key, what_for in ((keys.files, b"corymb files"), (keys.names, b"corymb names")):
        assert key == hmac.new(from_it, what_for + b"\x01", sha256).digest()  # 2.3


def test_a_guess_costs_what_is_recommended_today_at_least() -> None:
    assert Passphrase("any").rounds == ROUNDS >= OWASP

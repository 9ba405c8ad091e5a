"""How does a passphrase become keys? Slowly, so that whoever guesses has to be patient.

Of the ways that cost a guesser dear, browsers have PBKDF2 built in (W3C Web Cryptography API), and
neither Argon2 nor scrypt. Either would have to be shipped as WebAssembly, which the pages' content
policy would have to let in (`wasm-unsafe-eval`), to win about what one more group of letters in the
passphrase does.

The passphrase is stretched once (PBKDF2 with HMAC-SHA-256, RFC 8018), and what comes of it is
parted into a key for the files and one for their names (HKDF, RFC 5869).
"""

from __future__ import annotations

import hmac
from dataclasses import dataclass, field
from hashlib import sha256
from unicodedata import normalize

from cryptography.hazmat.primitives.hashes import SHA256
from cryptography.hazmat.primitives.kdf.hkdf import HKDF
from cryptography.hazmat.primitives.kdf.pbkdf2 import PBKDF2HMAC

VARIABLE = "CORYMB_PASSPHRASE"
"""Where a build by itself finds the passphrase: no other program is given it."""

ROUNDS = 1_000_000
"""OWASP's Password Storage Cheat Sheet recommends 600,000 or more for PBKDF2-HMAC-SHA-256 (read in
2026). A million takes a phone about a second, once."""

SALT_BYTES = 16  # NIST SP 800-132, 5.1: at least 128 bits, at random
KEY_BYTES = 32
NAME_LETTERS = 32  # of a hexadecimal digest: 128 bits
FILES, NAMES = b"corymb files", b"corymb names"


@dataclass(frozen=True)
class Passphrase:
    """What the staff's site is locked with. It is never printed, by accident neither."""

    text: str = field(repr=False)
    rounds: int = ROUNDS


@dataclass(frozen=True)
class Keys:
    """What locks a site: 32 bytes each."""

    files: bytes = field(repr=False)
    names: bytes = field(repr=False)


def keys_from(passphrase: Passphrase, salt: bytes) -> Keys:
    """The keys of a passphrase with this salt; it takes a good part of a second."""
    stretched = stretch(passphrase.text, salt, passphrase.rounds)
    return Keys(_parted(stretched, FILES), _parted(stretched, NAMES))


def stretch(text: str, salt: bytes, rounds: int) -> bytes:
    """PBKDF2 of a passphrase, however a keyboard puts its letters together.

    NIST SP 800-63B asks for NFKC or NFKD before hashing. Phones like to add a space at the end.
    """
    plain = normalize("NFKC", text).strip().encode()
    return PBKDF2HMAC(SHA256(), KEY_BYTES, salt, rounds).derive(plain)


def name_of(keys: Keys, path: str) -> str:
    """What a file is called where anyone can see it: always the same, and nothing to be read."""
    return hmac.new(keys.names, path.encode(), sha256).hexdigest()[:NAME_LETTERS]


def _parted(stretched: bytes, what_for: bytes) -> bytes:
    return HKDF(SHA256(), KEY_BYTES, None, what_for).derive(stretched)

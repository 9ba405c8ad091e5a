"""One file, sealed so that it can be read with the key alone, and only for what it is.

AES-256-GCM (NIST SP 800-38D) with a nonce of 96 bits, at random for each sealing: with one key a
nonce may hardly ever come twice, and that holds for four thousand million files (8.3 there). A
file is bound to its address (additional data), so that a host can't show one in place of another.

Inside stand a line that says what the file is, and its content, packed where that makes it smaller:
nothing sealed can be packed on its way any more.
"""

from __future__ import annotations

import os
import zlib
from pathlib import PurePosixPath

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM

NONCE_BYTES = 12
PACKED, AS_IT_IS = b"deflate", b"identity"
PACKING = 6

TEXT = {
    ".css": "text/css; charset=utf-8",
    ".csv": "text/csv; charset=utf-8",
    ".html": "text/html; charset=utf-8",
    ".ics": "text/calendar; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".xml": "application/xml",
}
OTHER = {
    ".avif": "image/avif",
    ".jpg": "image/jpeg",
    ".pdf": "application/pdf",
    ".png": "image/png",
    ".woff2": "font/woff2",
}
ANY = "application/octet-stream"


class SealBrokenError(Exception):
    """The file was not sealed with this key, for this address, or was changed since."""


def seal(key: bytes, path: str, content: bytes) -> bytes:
    """The content, sealed for its address."""
    return seal_with(key, os.urandom(NONCE_BYTES), _wrapped(path, content), path.encode())


def unseal(key: bytes, path: str, sealed: bytes) -> bytes:
    """The content again. Raises SealBrokenError."""
    try:
        nonce, rest = sealed[:NONCE_BYTES], sealed[NONCE_BYTES:]
        whole = AESGCM(key).decrypt(nonce, rest, path.encode())
    except (InvalidTag, ValueError) as error:  # the latter of what is too short to be sealed
        raise SealBrokenError(path) from error
    line, _, content = whole.partition(b"\n")
    return zlib.decompress(content) if line.startswith(PACKED) else content


def seal_with(key: bytes, nonce: bytes, plain: bytes, bound_to: bytes) -> bytes:
    """The nonce, and what AES-GCM makes of the text and of what it is bound to."""
    return nonce + AESGCM(key).encrypt(nonce, plain, bound_to)


def _wrapped(path: str, content: bytes) -> bytes:
    suffix = PurePosixPath(path).suffix
    if suffix in TEXT:
        packed = zlib.compress(content, PACKING)
        return b"%s %s\n%s" % (PACKED, TEXT[suffix].encode(), packed)
    return b"%s %s\n%s" % (AS_IT_IS, OTHER.get(suffix, ANY).encode(), content)

"""Is what was kept still what was written, to its last byte?

A kept file ends in a digest of all that stands before it, so that one that was cut off, or in which
a single bit has turned, is known for what it is, and made again. The digest is quick rather than
secret: it holds off accidents, and who may write to a cache may as well write to the site.
"""

from xxhash import xxh3_128_digest

DIGEST_BYTES = 16


def sealed(body: bytes) -> bytes:
    """The body, with its digest at the end."""
    return body + xxh3_128_digest(body)


def unsealed(kept: bytes) -> bytes:
    """The body. Raises ValueError where it isn't what was sealed."""
    body, digest = kept[:-DIGEST_BYTES], kept[-DIGEST_BYTES:]
    if len(kept) < DIGEST_BYTES or xxh3_128_digest(body) != digest:
        raise ValueError("this is not what was written")
    return body

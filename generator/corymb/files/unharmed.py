"""Is what was kept still what was written, to its last byte?

A kept file ends in a digest of all that stands before it, so that one that was cut off, or in which
a single bit has turned, is known for what it is, and made again. The digest is quick rather than
secret: it holds off accidents, and who may write to a cache may as well write to the site.
"""

import shutil
from pathlib import Path

from xxhash import xxh3_128_digest

from corymb.files.whole import write_whole

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


def keep(file: Path, body: bytes) -> None:
    """Keep the body in this file, whatever lies there now."""
    make_way(file)
    write_whole(file, sealed(body))


def kept_in(file: Path) -> bytes:
    """The body that is kept in this file. Raises OSError or ValueError where there is none."""
    return unsealed(file.read_bytes())


def make_way(file: Path) -> None:
    """A folder under the name of a kept file is none of ours, and nobody else's place."""
    if file.is_dir() and not file.is_symlink():
        shutil.rmtree(file)

"""Has the code that made a kept file changed since? Then the file is made again."""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path


@cache
def code_digest(package: Path) -> str:
    """A digest of every Python file in a package's folder and below it."""
    digest = hashlib.sha256()
    for file in sorted(package.rglob("*.py")):
        digest.update(file.relative_to(package).as_posix().encode() + b"\0")
        digest.update(file.read_bytes() + b"\0")
    return digest.hexdigest()

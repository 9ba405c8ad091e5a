"""How does a file appear whole or not at all, whoever else is writing or reading?"""

import uuid
from pathlib import Path

UNFINISHED = ".unfinished"


def write_whole(path: Path, data: bytes) -> None:
    """Written under a name of its own, then moved into place in one step.

    Not by `tempfile`: its files are readable by their owner alone, and these are published.
    """
    unfinished = path.with_name(f"{path.name}.{uuid.uuid4().hex}{UNFINISHED}")
    try:
        unfinished.write_bytes(data)
        unfinished.replace(path)
    except BaseException:
        unfinished.unlink(missing_ok=True)
        raise


def made_folder(folder: Path) -> Path:
    """A folder to keep things in, made where there is none; a file of its name gives way."""
    if folder.is_file():
        folder.unlink()
    folder.mkdir(parents=True, exist_ok=True)
    return folder

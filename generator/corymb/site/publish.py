"""How does a finished site get into its folder? Whole, or not at all.

It is written into a new folder beside the old one, and the two change places at the end, so
that a build that fails leaves the old site as it was. Files that have not changed are linked
to the old ones instead of being written again. What someone else put there goes along.
"""

from __future__ import annotations

import filecmp
import os
import shutil
import tempfile
from collections.abc import Mapping
from pathlib import Path

from corymb.site.keeping import carry, clash, is_marked, is_of_a_host, mark, own_files


class PublishError(Exception):
    """The site can't be put into its folder; the text says why."""


def publish(files: Mapping[str, bytes], copies: Mapping[str, Path], folder: Path) -> None:
    """Make `folder` hold these files, and those that someone else added to the site there.

    `files` are written, `copies` are linked or copied; the paths are within the folder. Raises
    PublishError, and changes nothing, when the folder is none of a site's, or when a file of
    someone else's stands where one of these has to be.
    """
    own = own_files(folder)
    _refuse_strange(folder, own)
    if (taken := clash(folder, own, (*files, *copies))) is not None:
        raise PublishError(
            f"{folder.name}/{taken} was not put there by Corymb, and the site now has something "
            "of its own at this address; move your file away, or give it another name."
        )
    folder.parent.mkdir(parents=True, exist_ok=True)
    stage = Path(tempfile.mkdtemp(prefix=f".{folder.name}-", dir=folder.parent))
    try:
        stage.chmod(0o755)
        _fill(stage, files, copies, folder)
        for path in own:
            carry(path, folder, stage)
        _change_places(stage, folder)
    except BaseException:
        shutil.rmtree(stage, ignore_errors=True)
        raise


def _refuse_strange(folder: Path, own: list[str]) -> None:
    strange = [path for path in own if not is_of_a_host(path)]
    if strange and not is_marked(folder):
        raise PublishError(
            f"{folder.name}/ holds files that Corymb did not put there, such as {strange[0]}; "
            "move them away and build again. What belongs to the site can be put back then, and "
            "will stay."
        )


def _fill(stage: Path, files: Mapping[str, bytes], copies: Mapping[str, Path], old: Path) -> None:
    for made in {(stage / path).parent for path in (*files, *copies)}:
        made.mkdir(parents=True, exist_ok=True)
    for path, content in files.items():
        before = old / path
        if _same(before, content):
            _link(before, stage / path)
        else:
            (stage / path).write_bytes(content)
    for path, source in copies.items():
        before = old / path
        known = before.is_file() and filecmp.cmp(before, source, shallow=False)
        _link(before if known else source, stage / path, may_link=known)
    mark(stage, (*files, *copies))


def _same(file: Path, content: bytes) -> bool:
    try:
        return file.stat().st_size == len(content) and file.read_bytes() == content
    except OSError:
        return False


def _link(source: Path, target: Path, may_link: bool = True) -> None:
    """A hard link where the file system has them; a copy elsewhere, or of another's file."""
    if may_link:
        try:
            os.link(source, target)
            return
        except OSError:
            pass
    shutil.copyfile(source, target)


def _change_places(stage: Path, folder: Path) -> None:
    if not folder.exists():
        stage.rename(folder)
        return
    aside = Path(tempfile.mkdtemp(prefix=f".{folder.name}-old-", dir=folder.parent))
    try:
        folder.rename(aside / "site")
        stage.rename(folder)
    except BaseException:
        if not folder.exists():
            (aside / "site").rename(folder)
        shutil.rmtree(aside, ignore_errors=True)
        raise
    shutil.rmtree(aside, ignore_errors=True)

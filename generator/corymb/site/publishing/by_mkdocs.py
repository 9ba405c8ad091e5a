"""Where does MkDocs put its files, so that the old site stands until the new one is whole?

MkDocs empties a site's folder and then fills it file by file. So it is given the room beside the
folder, and what it made there takes the old site's place when it is done.
"""

from __future__ import annotations

import shutil
from contextlib import ExitStack
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig

from corymb.site.publishing.keeping import carry, mark_all, own_files
from corymb.site.publishing.lasting import make_last
from corymb.site.publishing.placing import take_place
from corymb.site.publishing.rooms import Room, Waiting, at_work


class StagedByMkDocs:
    """A build of MkDocs, from keeping others out of the site's folder until `end`.

    Raises PublishError.
    """

    def __init__(self, config: MkDocsConfig, waiting: Waiting) -> None:
        self.config = config
        self.site_dir = str(config.site_dir)
        self.room = Room.of(Path(self.site_dir))
        self._alone = ExitStack()
        self._alone.enter_context(at_work([self.room.folder], waiting))

    def begin(self) -> None:
        """Have MkDocs build in the room."""
        self.config.site_dir = str(self.room.new)

    def take_place(self) -> None:
        """The new site into its folder, with what is hidden there, which MkDocs leaves alone."""
        new, old = self.room.new, self.room.folder
        mark_all(new)
        for path in own_files(old):
            if path.startswith("."):
                carry(path, old, new)
        files = [file for file in new.rglob("*") if file.is_file() and not file.is_symlink()]
        make_last(new, [str(file.relative_to(new)) for file in files])
        take_place(self.room)

    def end(self) -> None:
        """Let others build, and MkDocs know where the site is."""
        self.config.site_dir = self.site_dir
        shutil.rmtree(self.room.new, ignore_errors=True)
        self._alone.close()

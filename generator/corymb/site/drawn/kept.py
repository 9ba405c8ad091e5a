"""Was this picture made before? Pictures kept between builds, each in a file named by its digest.

Nothing else in the folder is touched, and nothing removed while another build is at it.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

import corymb.language
from corymb.code_digest import code_digest
from corymb.files.sharing import SharedUse
from corymb.files.unharmed import keep, kept_in
from corymb.files.whole import UNFINISHED, made_folder
from corymb.language import spoken
from corymb.language.messages import messages_digest

KEY_LENGTH = 32
KINDS = ("svg", "json", "jpg", "avif")
SPEAKS = Path(str(corymb.language.__file__)).parent
OWN_NAME = re.compile(
    rf"[0-9a-f]{{{KEY_LENGTH}}}\.({'|'.join(KINDS)})(\.[0-9a-f]+{re.escape(UNFINISHED)})?"
)


class NotKeptError(Exception):
    """What was looked for would have to be made."""


class Kept:
    """A folder of finished pictures; `code` is the digest of the code that makes them.

    They say what they show in the language that is spoken where the folder is opened.
    """

    def __init__(self, folder: Path, code: str) -> None:
        made_folder(folder)
        self.folder, self.drawn_by = folder, code
        self.code = f"{code} {code_digest(SPEAKS)} {messages_digest(spoken())}"
        self.used: set[str] = set()
        self.use = SharedUse(folder / "in-use")
        self._looking = False

    @contextmanager
    def only_looking(self) -> Iterator[None]:
        """Within this block nothing is made: NotKeptError is raised instead."""
        self._looking = True
        try:
            yield
        finally:
            self._looking = False

    def or_drawn(self, described: str, drawn: Callable[[], str], kind: str = "svg") -> str:
        """The picture, or the table of its colours, as it was kept; or made now and kept."""
        return self.or_made(described, lambda: drawn().encode(), kind).decode()

    def or_made(self, described: str, made: Callable[[], bytes], kind: str) -> bytes:
        """The same for any kind of file."""
        digest = hashlib.sha256(f"{self.code} {described}".encode()).hexdigest()
        file = self.folder / f"{digest[:KEY_LENGTH]}.{kind}"
        self.used.add(file.name)
        with suppress(OSError, ValueError):
            return kept_in(file)
        if self._looking:
            raise NotKeptError
        data = made()
        with suppress(OSError):  # a full disk: then it is made again the next time
            keep(file, data)
        return data

    def forget_the_rest(self) -> None:
        """Remove the pictures that this run did not use, and what interrupted runs left."""
        if self.use.try_alone():
            for file in self.folder.iterdir():
                if OWN_NAME.fullmatch(file.name) and file.is_file() and file.name not in self.used:
                    file.unlink(missing_ok=True)
        self.use.end()

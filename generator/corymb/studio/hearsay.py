"""Which names may stand in files that can't be read, so that no one is told they aren't there?"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable

from corymb.studio.filing import Filed
from corymb.studio.shelves import Key
from corymb.studio.studio import Studio
from corymb.studio.values.text import slug

_SPACE = r"[^\S\n]*+"
_KEY = re.compile(
    rf"^{_SPACE}(?:- +)?+[\"']?+(?P<key>[^\s\"':#-][^\"':#\n]*+)[\"']?+{_SPACE}:", re.MULTILINE
)
"""Never more than a line, and no letter is looked at twice: the file may hold anything."""


def names_of(keys: Collection[Key]) -> dict[str, frozenset[str]]:
    """The ids by kind: a file's name is known, whatever it says."""
    return {
        kind: frozenset(known_as for other, known_as in keys if other == kind)
        for kind in {kind for kind, _ in keys}
    }


def hear(studio: Studio, lost: Collection[Key], stem_files: Iterable[Filed]) -> None:
    """Let the studio know the names of `lost` files, and whatever looks like an id of a stem."""
    heard = [_ids_in(filed.text) for filed in stem_files]
    studio.heard_of = {**names_of(lost), "stem": frozenset[str]().union(*heard)}
    studio.stems_are_lost = not all(heard)


def _ids_in(text: str) -> frozenset[str]:
    return frozenset(slug(found["key"]) for found in _KEY.finditer(text))

"""How does a file of stems get one more, and keep every comment and line as it was?

The new entry goes to the end of the file, where the stems end; should something else stand
there, nothing is written.
"""

from __future__ import annotations

from pathlib import Path

from corymb.studio.new_files import NewStem, stem_text
from corymb.studio.yaml_tree import read_tree

BY_HAND = "the new stem can't be put at its end: its last key isn't `stems`. Add it by hand:\n"


def with_stem(text: str, new: NewStem, file: Path) -> str:
    """The file's text with the new stem last. Raises ValueError where that can't be done."""
    tree, problems = read_tree(text, file)
    if tree is None or any(not problem.advice for problem in problems):
        raise ValueError("this file holds errors; put them right first: corymb check")
    stems = tree.data.get("stems") if isinstance(tree.data, dict) else None
    if not isinstance(stems, dict) or not stems:
        raise ValueError(BY_HAND + stem_text(new))
    margin = tree.key_place(("stems", next(iter(stems))))[1] - 1
    grown = f"{text.rstrip()}\n\n{stem_text(new, margin)}"
    after, faults = read_tree(grown, file)
    if faults or after is None or not _only_one_more(tree.data, after.data, new.id):
        raise ValueError(BY_HAND + stem_text(new))
    return grown


def _only_one_more(before: object, after: object, new_id: str) -> bool:
    """Whether nothing has changed but that the stem has come."""
    if not isinstance(before, dict) or not isinstance(after, dict):
        return False
    rest = {key: stem for key, stem in after["stems"].items() if key != new_id}
    return new_id in after["stems"] and {**after, "stems": rest} == before

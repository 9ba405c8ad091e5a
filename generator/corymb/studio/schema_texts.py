"""What does each key mean? The text written under its field in the model."""

from __future__ import annotations

import ast
import inspect
import textwrap
from functools import cache
from itertools import pairwise

from corymb.studio.models.base import FileModel


@cache
def key_texts(model: type[FileModel]) -> dict[str, str]:
    """The text of each field that has one, by the field's name; those of its bases included.

    Read from the models' source when schemas are made, since Python keeps no docstrings of
    fields, and only then: nothing else has to wait for it.
    """
    texts: dict[str, str] = {}
    for cls in reversed(model.__mro__):
        if issubclass(cls, FileModel):
            texts |= _own_texts(cls)
    return texts


def _own_texts(model: type[FileModel]) -> dict[str, str]:
    tree = ast.parse(textwrap.dedent(inspect.getsource(model))).body[0]
    assert isinstance(tree, ast.ClassDef)
    return {
        field.target.id: " ".join(inspect.cleandoc(text.value.value).split())
        for field, text in pairwise(tree.body)
        if isinstance(field, ast.AnnAssign)
        and isinstance(field.target, ast.Name)
        and isinstance(text, ast.Expr)
        and isinstance(text.value, ast.Constant)
        and isinstance(text.value.value, str)
    }

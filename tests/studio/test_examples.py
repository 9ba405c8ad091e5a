"""Every key has an example, and the reader takes it: messages never show what would be refused."""

from __future__ import annotations

from typing import Any

import pytest
from pydantic import create_model

from corymb.studio.examples import EXAMPLES, data_of, example_of
from corymb.studio.models.base import FileModel
from corymb.studio.models.stem import StemFile
from corymb.studio.shape import keys_of


def models() -> list[type[FileModel]]:
    """Every model that a file is read by, wherever it is nested."""
    todo, found = [FileModel], []
    while todo:
        below = todo.pop().__subclasses__()
        todo += below
        found += [model for model in below if model.model_fields]
    return sorted(found, key=lambda model: model.__name__)


KEYS = [(model, key) for model in models() for key in keys_of(model)]


@pytest.mark.parametrize(("model", "key"), KEYS, ids=lambda part: getattr(part, "__name__", part))
def test_a_key_has_an_example_that_its_model_reads(model: type[FileModel], key: str) -> None:
    example = example_of(model, key)
    assert example and "\n" not in example
    if (model, key) == (StemFile, "stems"):  # a stem takes twenty lines: the editor's part
        return
    name, field = next((n, f) for n, f in model.model_fields.items() if f.alias == key)
    fields: dict[str, Any] = {name: (field.rebuild_annotation(), ...)}
    one_key = create_model("OneKey", __base__=FileModel, **fields)
    one_key.model_validate({key: data_of(example)})


def test_there_is_no_example_for_a_key_that_no_model_has() -> None:
    known = {(model.__name__, key) for model, key in KEYS}
    assert {(model, key) for model, keys in EXAMPLES.items() for key in keys} <= known

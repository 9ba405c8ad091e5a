"""What can an editor complete and check while someone writes a studio's file?

A JSON Schema (draft 2020-12) for each kind of YAML file, made from the models; pages and lessons
are Markdown and have none. An editor reads YAML before it looks at the schema, so a value is
described as the editor sees it (`7` is a number, `7 cm` a text), where the studio's own reader
goes by the raw text.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from pydantic.json_schema import GenerateJsonSchema, JsonSchemaValue
from pydantic_core import core_schema

import corymb
from corymb.studio.load import MODELS
from corymb.studio.models.base import FileModel
from corymb.studio.schema_rules import RULES, SHORT_FORMS
from corymb.studio.schema_texts import key_texts
from corymb.studio.schema_tidy import tidied

DIALECT = "https://json-schema.org/draft/2020-12/schema"
ADDRESS = "https://corymb.example/schemas/{kind}.schema.json"  # a name, not a place (RFC 2606)
KINDS = ("studio", "stems", "recipe", "made", "order", "standing", "walk", "log", "link")
ANY_TEXT = "Text."
SHIPPED = Path(corymb.__file__).parent / "schemas"


def schema_of(kind: str) -> dict[str, Any]:
    """The schema for one of KINDS."""
    model = MODELS[kind]
    made = tidied(model.model_json_schema(schema_generator=_ForEditors))
    head = {"$schema": DIALECT, "$id": ADDRESS.format(kind=kind), "title": f"A {kind} file"}
    return {**head, **{key: value for key, value in made.items() if key != "title"}}


def schema_text(kind: str) -> str:
    """The same as it is written to its file."""
    return json.dumps(schema_of(kind), indent=2, ensure_ascii=False) + "\n"


def file_name(kind: str) -> str:
    """What a schema's file is called."""
    return f"{kind}.schema.json"


def write_schemas(folder: Path) -> list[Path]:
    """Write every schema into `folder`, which is made if need be; the files."""
    folder.mkdir(parents=True, exist_ok=True)
    files = [folder / file_name(kind) for kind in KINDS]
    for kind, file in zip(KINDS, files, strict=True):
        file.write_text(schema_text(kind), encoding="utf-8", newline="\n")
    return files


class _ForEditors(GenerateJsonSchema):
    """Adds to pydantic's schemas what each key means, short forms, and rules across keys."""

    def model_schema(self, schema: core_schema.ModelSchema) -> JsonSchemaValue:
        made = super().model_schema(schema)
        model = schema["cls"]
        if not issubclass(model, FileModel):
            return made
        texts = key_texts(model)
        for name, field in model.model_fields.items():
            _explain(made["properties"][field.alias], texts.get(name, ""))
        made.update(RULES.get(model.__name__, {}))
        return _or_short(model.__name__, made)


def _explain(entry: dict[str, Any], text: str) -> None:
    """Say what the key means before what its value looks like."""
    told = next((e for e in entry.get("anyOf", ()) if e.get("type") != "null"), entry)
    value = told.pop("description", "")
    if value == ANY_TEXT:  # nothing that an example would make clearer
        value, told["examples"] = "", []
    if text or value:
        entry["description"] = " ".join(part for part in (text, value) if part)


def _or_short(name: str, made: JsonSchemaValue) -> JsonSchemaValue:
    short = SHORT_FORMS.get(name)
    if short is None:
        return made
    text = {"type": list(short.kinds), "pattern": short.pattern, "examples": list(short.examples)}
    return {
        "title": made.pop("title"),
        "description": made.pop("description"),
        "anyOf": [{**text, "description": short.description}, made],
    }

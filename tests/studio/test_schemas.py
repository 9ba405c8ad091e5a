"""The schemas for editors: as the models are, valid, and at one with the studio's own reader."""

import datetime
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import yaml
from jsonschema import Draft202012Validator
from ruamel.yaml import YAML

from corymb.studio.folder import MARKDOWN_KINDS, Found, files_of
from corymb.studio.load import MODELS
from corymb.studio.models.base import FileModel
from corymb.studio.schema import KINDS, SHIPPED, file_name, schema_of, schema_text, write_schemas
from corymb.studio.schema_texts import key_texts

ROOT = Path(__file__).parents[2]
STUDIOS = (ROOT / "content", ROOT / "generator" / "corymb" / "starter" / "content")
FILES = [
    found
    for studio in STUDIOS
    for found in files_of(studio)
    if isinstance(found, Found) and found.kind not in MARKDOWN_KINDS
]


def as_yaml_1_2(text: str) -> Any:
    """As most editors read: `no` is a text."""
    return YAML(typ="safe", pure=True).load(text)


def as_yaml_1_1(text: str) -> Any:
    """As older editors read: `no` is false."""
    return yaml.safe_load(text)


def plain(node: Any) -> Any:
    """What JSON knows: a date is its text."""
    if isinstance(node, dict):
        return {str(plain(key)): plain(value) for key, value in node.items()}
    if isinstance(node, list):
        return [plain(part) for part in node]
    return node.isoformat() if isinstance(node, datetime.date) else node


def complaints(kind: str, data: Any) -> list[str]:
    """What an editor would mark, with the path of keys."""
    found = Draft202012Validator(schema_of(kind)).iter_errors(plain(data))
    return [f"{'/'.join(map(str, e.path))}: {e.message}" for e in found]


@pytest.mark.parametrize("kind", KINDS)
def test_the_shipped_schema_is_as_the_models_are_now(kind: str) -> None:
    shipped = (SHIPPED / file_name(kind)).read_text(encoding="utf-8")
    assert shipped == schema_text(kind), "run `corymb schema --out generator/corymb/schemas`"


@pytest.mark.parametrize("kind", KINDS)
def test_the_schema_is_valid_by_its_own_standard(kind: str) -> None:
    Draft202012Validator.check_schema(schema_of(kind))


def test_every_kind_of_yaml_file_has_a_schema() -> None:
    assert set(KINDS) == set(MODELS) - set(MARKDOWN_KINDS)


@pytest.mark.parametrize("read", [as_yaml_1_2, as_yaml_1_1])
@pytest.mark.parametrize("found", FILES, ids=lambda found: f"{found.kind}-{found.id}")
def test_an_editor_marks_nothing_in_a_file_of_ours(
    found: Found, read: Callable[[str], Any]
) -> None:
    assert complaints(found.kind, read(found.file.read_text(encoding="utf-8"))) == []


def models() -> list[type[FileModel]]:
    """Every model that a file is read by, wherever it is nested."""
    todo, seen = [FileModel], []
    while todo:
        model = todo.pop()
        seen.append(model)
        todo += model.__subclasses__()
    return [m for m in seen if m.__module__.startswith("corymb.") and m.model_fields]


@pytest.mark.parametrize("model", models(), ids=lambda model: model.__name__)
def test_an_editor_can_explain_every_key(model: type[FileModel]) -> None:
    assert set(model.model_fields) - set(key_texts(model)) == set()


JAR = {
    "name": "Jar",
    "summary": "A jar.",
    "difficulty": "easy",
    "time": "20 min",
    "across": "20 cm",
    "high": "26 cm",
    "vessel": {"kind": "jar", "name": "pint jar"},
    "stems": ["7 smoke-bush, depth"],
    "method": ["Fill it."],
}
LINK = {"title": "t", "code": "a" * 26, "date": "2026-09-19", "expires": "2026-10-10"}


@pytest.mark.parametrize(
    ("kind", "base", "key", "value"),
    [
        pytest.param("recipe", JAR, "stems", ["7 smoke-bush, depth"], id="short line"),
        pytest.param("recipe", JAR, "stems", ["7 x a, filler, light, essential"], id="more words"),
        pytest.param(
            "recipe", JAR, "stems", [{"stem": "a", "count": 7, "role": "light"}], id="long"
        ),
        pytest.param("recipe", JAR, "sizes", {"small": 0.6, "large": "150 %"}, id="sizes"),
        pytest.param("recipe", JAR, "price", 28, id="bare price"),
        pytest.param("recipe", JAR, "sundries", ["0.3 m jute twine, 0.05"], id="sundry"),
        pytest.param("recipe", JAR, "swap", ["3 a -> 5 b, accent", "a -> b"], id="swap"),
        pytest.param("recipe", JAR, "drop", ["2 a", "b"], id="drop"),
        pytest.param("recipe", JAR, "scale", "120 %", id="scale"),
        pytest.param("recipe", JAR, "scale", {"light": 1.5}, id="scale of a role"),
        pytest.param("recipe", JAR, "draft", "yes", id="yes in YAML 1.2"),
        pytest.param("recipe", JAR, "draft", True, id="yes in YAML 1.1"),
        pytest.param("recipe", {"name": "Larger jar"}, "based on", "jar", id="based on another"),
        pytest.param("link", LINK, "show", ["jar", "jar, later, small"], id="links"),
        pytest.param("walk", {}, "counts", {"smoke-bush": 40}, id="counts by stem"),
    ],
)
def test_an_editor_accepts(kind: str, base: dict[str, Any], key: str, value: Any) -> None:
    assert complaints(kind, {**base, key: value}) == []


@pytest.mark.parametrize(
    ("kind", "base", "key", "value"),
    [
        pytest.param("recipe", JAR, "colour", "red", id="unknown key"),
        pytest.param("recipe", JAR, "stems", ["smoke-bush"], id="no count"),
        pytest.param("recipe", JAR, "stems", ["7 smoke-bush"], id="no role"),
        pytest.param("recipe", JAR, "stems", ["7 smoke-bush, dark"], id="no such role"),
        pytest.param("recipe", JAR, "stems", [{"stem": "a", "count": 7}], id="long with no role"),
        pytest.param("recipe", JAR, "across", 20, id="no unit"),
        pytest.param("recipe", JAR, "price", None, id="nothing written"),
        pytest.param("recipe", JAR, "method", [], id="no steps"),
        pytest.param("recipe", JAR, "swap", ["a - b"], id="no arrow"),
        pytest.param("recipe", JAR, "variants", {"v": {"name": "V", "about": "a"}}, id="no change"),
        pytest.param("recipe", {}, "name", "Jar", id="most keys missing"),
        pytest.param("walk", {}, "counts", {"Smoke Bush": 40}, id="not an id"),
        pytest.param("walk", {}, "counts", {"smoke-bush": "many"}, id="not a number"),
    ],
)
def test_an_editor_marks(kind: str, base: dict[str, Any], key: str, value: Any) -> None:
    assert complaints(kind, {**base, key: value}) != []


def test_schemas_can_be_written_anywhere(tmp_path: Path) -> None:
    files = write_schemas(tmp_path / "new" / "folder")
    assert [file.name for file in files] == [file_name(kind) for kind in KINDS]
    assert json.loads(files[0].read_text(encoding="utf-8")) == schema_of(KINDS[0])


def test_schemas_end_their_lines_alike_on_every_system(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def as_on_windows(
        self: Path,
        data: str,
        encoding: str | None = None,
        errors: str | None = None,
        newline: str | None = None,
    ) -> int:
        return self.write_bytes(data.replace("\n", newline or "\r\n").encode(encoding or "cp1252"))

    monkeypatch.setattr(Path, "write_text", as_on_windows)
    assert [file.name for file in write_schemas(tmp_path) if b"\r" in file.read_bytes()] == []

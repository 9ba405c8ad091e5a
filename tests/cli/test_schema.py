"""`corymb schema`: where the schemas are, one of them, or all of them in a folder."""

import json
from pathlib import Path

from corymb.studio.schema import KINDS, SHIPPED, file_name, schema_of
from tests.cli.conftest import Run


def test_it_says_where_each_schema_is(run: Run) -> None:
    told = dict(line.split(maxsplit=1) for line in run("schema").output.splitlines())
    assert told == {kind: str(SHIPPED / file_name(kind)) for kind in KINDS}
    assert all(Path(file).is_file() for file in told.values())


def test_it_prints_one(run: Run) -> None:
    assert json.loads(run("schema", "recipe").output) == schema_of("recipe")


def test_it_writes_all_of_them(run: Run, tmp_path: Path) -> None:
    result = run("schema", "--out", str(tmp_path))
    assert len(result.output.splitlines()) == len(KINDS)
    assert json.loads((tmp_path / "walk.schema.json").read_text()) == schema_of("walk")

"""Does anything that a program finds by watching the readers' own branches make them fail?

    python -m tests.fuzz.atheris_readers            for ten minutes
    python -m tests.fuzz.atheris_readers 60         for sixty seconds
    python -m tests.fuzz.atheris_readers 60 values  values alone, which are read much faster

Begins with the demo's own lines. What fails is kept in a file whose name is told, and shown again
by `python -m tests.fuzz.atheris_readers FILE`. Needs the extra `fuzz`.
"""

from __future__ import annotations

import sys
from pathlib import Path
from tempfile import mkdtemp

import atheris

with atheris.instrument_imports(include=["corymb.studio"]):
    from corymb.studio.folder import FOLDERS
    from tests.fuzz.readers import KINDS, READERS, read_file, read_value

CONTENT = Path(__file__).parents[2] / "content"
SECONDS = 600
FILES = 64
"""First bytes below this are those of files."""

LONGEST, LONGEST_VALUE = 4_096, 100
"""Bytes of an input: slips need little room."""


def one_value(raw: bytes) -> None:
    """The first byte says for which reader the text is."""
    if raw:
        read_value(raw[0], raw[1:].decode("utf-8", "surrogateescape"))


def one_input(raw: bytes) -> None:
    """The first byte says whose input it is: a file of some kind, or a value of some kind."""
    if not raw:
        return
    if raw[0] < FILES:
        read_file(raw[0], raw[1:])
    else:
        read_value(raw[0], raw[1:].decode("utf-8", "surrogateescape"))


def seeds(folder: Path, values: bool) -> None:
    """The demo's files and lines, each as an input."""
    for at, file in enumerate(sorted(CONTENT.rglob("*"))):
        if file.suffix not in (".yml", ".md"):
            continue
        raw = file.read_bytes()
        kind = FOLDERS.get(file.relative_to(CONTENT).parts[0], "studio")
        if not values:
            (folder / f"file-{at}").write_bytes(bytes([KINDS.index(kind)]) + raw[:LONGEST])
        for line_at, line in enumerate(raw.split(b"\n")[:40]):
            value = line.partition(b": ")[2] or line.strip(b" -")
            first = FILES + (at + line_at) % len(READERS)
            (folder / f"line-{at}-{line_at}").write_bytes(bytes([first]) + value)


def main() -> None:
    """The command."""
    asked, values = ([*sys.argv[1:], str(SECONDS)][0], "values" in sys.argv[2:])
    if not asked.isdigit():
        one_input(Path(asked).read_bytes())
        return
    folder = Path(mkdtemp())
    seeds(folder, values)
    options = [
        f"-max_total_time={asked}",
        f"-max_len={LONGEST_VALUE if values else LONGEST}",
        "-timeout=20",
        "-rss_limit_mb=2000",
    ]
    found = f"-artifact_prefix={mkdtemp()}/"
    atheris.Setup([sys.argv[0], str(folder), *options, found], one_value if values else one_input)
    atheris.Fuzz()


if __name__ == "__main__":
    main()

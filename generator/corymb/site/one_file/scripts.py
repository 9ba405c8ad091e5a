"""How do the modules that a page runs become one script that can stand in it?

Modules of the theme import names from each other, and export functions and constants. Each is put
into a function of its own that gives what it exports, those that others need first.
"""

from __future__ import annotations

import re

from corymb.site.one_file.tags import Files, path_of

IMPORT = re.compile(
    r'^import (?:\{(?P<names>[^}]+)\}|\* as (?P<all>[\w$]+)) from "(?P<path>\./[^"]+)";\n',
    re.MULTILINE,
)
EXPORT = re.compile(r"^export (?=(?:async )?(?:function|const|let|class) ([\w$]+))", re.MULTILINE)
LISTED = re.compile(r"^export \{([^}]+)\};\n", re.MULTILINE)
RENAMED = re.compile(r"([\w$]+) as ([\w$]+)")
LEFT = re.compile(r"^(?:import|export)\b", re.MULTILINE)


def one_script(paths: list[str], files: Files) -> str:
    """All modules at `paths`, and those they import. Raises ValueError for one we can't read."""
    order: dict[str, str] = {}
    for path in paths:
        _gather(path, files, order, ())
    return f'(() => {{\n"use strict";\n{"".join(order.values())}}})();' if order else ""


def _gather(path: str, files: Files, order: dict[str, str], above: tuple[str, ...]) -> None:
    if path in order:
        return
    if path in above:
        raise ValueError(f"{path} imports itself.")
    source = files[path].decode()
    for imported in IMPORT.finditer(source):
        _gather(path_of(imported["path"], path), files, order, (*above, path))
    order[path] = _module(path, source, order)


def _module(path: str, source: str, order: dict[str, str]) -> str:
    """A module as a function that is run at once, and gives what it exports."""
    names = list(order)

    def known(found: re.Match[str]) -> str:
        taken = found["all"] or "{" + RENAMED.sub(r"\1: \2", found["names"]) + "}"
        return f"const {taken} = module{names.index(path_of(found['path'], path))};\n"

    listed = [RENAMED.sub(r"\2: \1", names.strip()) for names in LISTED.findall(source)]
    exported = [*EXPORT.findall(source), *listed]
    body = LISTED.sub("", EXPORT.sub("", IMPORT.sub(known, source)))
    if LEFT.search(body):
        raise ValueError(f"{path} imports or exports in a way that isn't known here.")
    given = f"return {{ {', '.join(exported)} }};\n" if exported else ""
    return f"const module{len(names)} = (() => {{\n{body}{given}}})();\n"

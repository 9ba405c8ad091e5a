"""What stands in a studio's file, word for word and with its place, or what is wrong with it?

The text is never converted: every value is the raw `Written` text. YAML's own messages never
reach the reader; slips are told in sentences, as many as can be found in one go.
"""

from pathlib import Path

import yaml

from corymb.studio.problems import Problem
from corymb.studio.reading.build import Builder
from corymb.studio.reading.decode import LARGEST, hidden_characters, to_text
from corymb.studio.reading.fault import MOST_FAULTS, Fault
from corymb.studio.reading.indent import diagnose
from corymb.studio.reading.scan import Scan
from corymb.studio.reading.tree import Tree
from corymb.studio.written import Written

__all__ = ["Tree", "Written", "decode", "read_tree"]

MOST_ROUNDS = 12
"""How often a file is mended and read again to find its next slip."""

LARGE = 100_000
"""Letters from which on a file is mended once only, so that reading it stays quick."""


def decode(raw: bytes, file: Path) -> tuple[str | None, list[Problem]]:
    """A file's text: UTF-8 without its mark, line ends made alike; or why there is none."""
    text = to_text(raw)
    if isinstance(text, Fault):
        lines = raw.replace(b"\r\n", b"\n").replace(b"\r", b"\n").split(b"\n")
        source = lines[text.line][:200].decode("utf-8", "replace")
        return None, [Problem(file, text.line + 1, text.column + 1, text.message, source)]
    return text, []


def read_tree(text: str, file: Path) -> tuple[Tree | None, list[Problem]]:
    """The tree of a text and all problems found in it; no tree where the text can't be read.

    A tree may come with problems: then it is what the writer probably meant, good for looking
    for further problems in it, but not for building from.
    """
    if len(text) > LARGEST:
        return None, [Problem(file, 1, 1, "This file has over 2 MB of text. Split it.")]
    written = text.split("\n")
    tree, faults = _read(written)
    told: dict[tuple[int, str], Problem] = {}
    for fault in sorted(faults):
        line = min(fault.line, len(written) - 1)
        column = min(fault.column, len(written[line]))  # a mended line may be longer
        problem = Problem(file, line + 1, column + 1, fault.message, written[line], fault.advice)
        told.setdefault((line, fault.message), problem)
        if len(told) > MOST_FAULTS:
            break
    return tree, list(told.values())


def _read(written: list[str]) -> tuple[Tree | None, list[Fault]]:
    faults = hidden_characters(written)
    if any(fault.mended is None for fault in faults):
        return None, faults
    lines = _mend(written, faults)
    rounds = MOST_ROUNDS if sum(map(len, lines)) < LARGE else 2
    for _ in range(rounds):
        builder = Builder(lines)
        try:
            builder.read()
        except yaml.YAMLError as error:
            found = _slips(lines, error, faults)
            faults += found
            if not found or len(faults) > MOST_FAULTS or any(f.mended is None for f in found):
                return None, faults
            lines = _mend(lines, found)
        else:
            if all(fault.sure for fault in faults):
                return builder.tree, faults + builder.faults
            return None, faults
    return None, faults


def _slips(lines: list[str], error: yaml.YAMLError, known: list[Fault]) -> list[Fault]:
    """What a person did wrong for reading to fail here; nothing when a guess led astray."""
    told = {fault.line for fault in known}
    found = [fault for fault in Scan(lines).run() if fault.line not in told]
    if found:
        return found
    fault = diagnose(lines, error)
    return [fault] if not told or fault.line > max(told) + 1 else []


def _mend(lines: list[str], faults: list[Fault]) -> list[str]:
    """The lines as they were probably meant."""
    mended = list(lines)
    for fault in faults:
        if fault.mended is not None:
            mended[fault.line] = fault.mended
    return mended

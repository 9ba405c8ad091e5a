"""Where a text can't be read and no line looks wrong by itself: is one moved in wrongly?"""

import re

import yaml

from corymb.studio.reading.fault import KEY_LINE, Fault, in_quotes, indent_of, is_blank
from corymb.studio.reading.traps import NO_KEY
from corymb.studio.suggest import quoted

_DASH = re.compile(r" *- ")


def diagnose(lines: list[str], error: yaml.YAMLError) -> Fault:
    """The likeliest slip near the place where reading stopped."""
    stopped = _line_of(lines, getattr(error, "problem_mark", None))
    began = _line_of(lines, getattr(error, "context_mark", None))
    above = _before(lines, stopped)
    for at in dict.fromkeys((stopped, began, above)):
        if at is not None and not is_blank(lines[at]):
            fault = _mixed(lines, at) or _no_colon(lines, at)
            if fault:
                return fault
    return _moved(lines, stopped) or _cannot_say(lines, stopped)


def _line_of(lines: list[str], mark: yaml.Mark | None) -> int:
    """The line of a mark; at the file's end, the last line that holds something."""
    at = min(mark.line if mark is not None else 0, len(lines) - 1)
    while at > 0 and is_blank(lines[at]):
        at -= 1
    return at


def _before(lines: list[str], at: int) -> int | None:
    """The line above that holds something."""
    return next((i for i in range(at - 1, -1, -1) if not is_blank(lines[i])), None)


def _after(lines: list[str], at: int) -> int | None:
    """The line below that holds something."""
    return next((i for i in range(at + 1, len(lines)) if not is_blank(lines[i])), None)


def _no_colon(lines: list[str], at: int) -> Fault | None:
    """`name Dahlia` among keys, or a text that goes on without being moved in."""
    line = lines[at]
    if KEY_LINE.match(line) or _DASH.match(line) or re.match(r"\s*[\"'\[\]{}|>#]", line):
        return None
    words = line.split()
    if words[0].startswith(":"):
        return Fault(at, indent_of(line), NO_KEY, _out(line), sure=False)
    above, below = _before(lines, at), _after(lines, at)
    if below is not None and indent_of(lines[below]) > indent_of(line):
        key = line.strip()
        message = f"This line has no colon after its key: write it like ‘{key}:’."
        return Fault(at, len(line.rstrip()), message, f"{line.rstrip()}:")
    right = f"{words[0]}: {' '.join(words[1:])}" if len(words) > 1 else f"{words[0]}: …"
    message = f"This line has no colon after its key: write it like {quoted(right)}."
    if above is not None and not lines[above].rstrip().endswith(":") and len(words) > 3:
        message = (
            "This line has no key. If it goes on with the text above, move it in by two spaces "
            f"more than the line above; if it is a key, write it like {quoted(right)}."
        )
    return Fault(at, indent_of(line), message, _out(line), sure=False)


def _out(line: str) -> str:
    """The line made a comment, so that what comes after it can be read."""
    return f"{' ' * indent_of(line)}# {line.strip()}"


def _moved(lines: list[str], at: int) -> Fault | None:
    """A line that is moved in too far, or to where nothing else stands."""
    above = _before(lines, at)
    if above is None:
        return None
    line, indent = lines[at], indent_of(lines[at])
    before = KEY_LINE.match(lines[above])
    if indent > indent_of(lines[above]) and before and lines[above][before.end() :].strip():
        return _too_far(lines, at, above, before["key"].strip("'\""))
    if indent > indent_of(lines[above]) and _DASH.match(lines[above]) and not before:
        return _under_text(lines, at, above)
    if _DASH.match(line):
        first = _first_dash_further_in(lines, at)
        if first is not None:
            message = "This dash stands further in than those above it: line them all up."
            return Fault(first, indent_of(lines[first]), message, _out(lines[first]), sure=False)
    levels = _open_levels(lines, at)
    if indent < min(levels):
        return _first_moved(lines)
    if indent not in levels:
        beside = _inside_dash(lines[above]) if not _DASH.match(line) else indent_of(lines[above])
        near = min(levels, key=lambda level: (abs(level - indent), level != beside))
        message = (
            f"This line is moved in by {_spaces(indent)}, and nothing above it stands there: "
            f"line it up with what it belongs to, probably at {_spaces(near)}."
        )
        return Fault(at, indent, message, " " * near + line.lstrip(), sure=False)
    return None


def _first_moved(lines: list[str]) -> Fault:
    """The file's first key doesn't stand at the margin, but others do."""
    first = next(i for i, line in enumerate(lines) if not is_blank(line))
    message = "The first key of the file is moved in: it starts at the margin, like the others."
    return Fault(first, 0, message, lines[first].lstrip(), sure=False)


def _first_dash_further_in(lines: list[str], at: int) -> int | None:
    """Of the dashes just above and this one, the first that is further in than the one before."""
    first = at
    while (above := _before(lines, first)) is not None and _DASH.match(lines[above]):
        if indent_of(lines[above]) < indent_of(lines[first]):
            return first
        first = above
    return None


def _under_text(lines: list[str], at: int, above: int) -> Fault:
    """Keys below a dash that has a text behind it, not a key."""
    text = lines[above].strip().removeprefix("- ")
    message = (
        f"This line is moved in below the dash with {quoted(text)}, which is a text, not a key. "
        "Give the text its key and colon, or move this line out to line up with its fellows."
    )
    return Fault(at, indent_of(lines[at]), message, _out(lines[at]), sure=False)


def _too_far(lines: list[str], at: int, above: int, key: str) -> Fault:
    line, indent = lines[at], indent_of(lines[at])
    if _DASH.match(line):
        message = (
            f"‘{key}’ above already has its value on its own line, so no list can follow: "
            "take one of them out."
        )
    else:
        message = (
            f"This line is moved in further than ‘{key}’ above, which already has its value. "
            "Line the two up; if it goes on with the text above, put the whole text in quotes."
        )
    return Fault(at, indent, message, " " * _inside_dash(lines[above]) + line.lstrip(), sure=False)


def _mixed(lines: list[str], at: int) -> Fault | None:
    """A dash among keys, or a key among dashes."""
    line, indent = lines[at], indent_of(lines[at])
    beside = next(
        (
            lines[i]
            for i in range(at - 1, -1, -1)
            if not is_blank(lines[i]) and indent_of(lines[i]) <= indent
        ),
        None,
    )
    if beside is None or indent_of(beside) != indent:
        return None
    if _DASH.match(line) and KEY_LINE.match(beside) and not _DASH.match(beside):
        message = (
            "This dash stands among keys. A list stands below its key, moved in by two spaces; "
            "if it belongs to the key above, that key's line ends with its colon."
        )
        return Fault(at, indent, message, _out(line), sure=False)
    if _DASH.match(beside) and not _DASH.match(line):
        message = (
            "This line stands among dashes and has none: put a dash before it. If it goes on with "
            "the text above, move it in by two spaces; if it is a key, move it out to its fellows."
        )
        mended = f"{' ' * indent}- {in_quotes(line.strip())}"
        return Fault(at, indent, message, mended, sure=False)
    return None


def _open_levels(lines: list[str], at: int) -> set[int]:
    """How far the lines above stand in, as far as a new line can still belong to them."""
    levels: set[int] = set()
    least = indent_of(lines[at]) + 1_000
    for i in range(at - 1, -1, -1):
        if is_blank(lines[i]) or indent_of(lines[i]) >= least:
            continue
        least = indent_of(lines[i])
        levels |= {least, _inside_dash(lines[i])}
    return levels or {0}


def _inside_dash(line: str) -> int:
    """How far what stands behind a line's dashes is moved in; without dashes, the line itself."""
    dashes = re.match(r" *(?:- +)*", line)
    return dashes.end() if dashes else indent_of(line)


def _cannot_say(lines: list[str], at: int) -> Fault:
    message = (
        "Reading stops here. Look at this line and the one above: is a quote or bracket left open, "
        "a colon without its space, or a line moved in differently from those beside it?"
    )
    return Fault(at, indent_of(lines[at]), message)


def _spaces(count: int) -> str:
    return "no space" if count == 0 else "one space" if count == 1 else f"{count} spaces"

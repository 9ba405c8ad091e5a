"""What does the text say? YAML's events made into a tree, and the traps in them called out."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import yaml

from corymb.studio.reading import traps
from corymb.studio.reading.decode import HIDDEN
from corymb.studio.reading.fault import DEEPEST, MOST_ENTRIES, MOST_FAULTS, MOST_VALUES, Fault
from corymb.studio.reading.tree import Steps, Tree
from corymb.studio.written import Written

_Loader: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)


class StoppedError(Exception):
    """The rest of the file can't be made sense of; the fault says why."""

    def __init__(self, fault: Fault) -> None:
        super().__init__(fault.message)
        self.fault = fault


@dataclass
class _Open:
    """A list or a table that is being read."""

    data: Any
    path: Steps
    flow: bool
    key: str | None = None
    """The key whose value comes next, in a table; None before a key."""
    skipping: bool = False
    """Whether the value that comes next is thrown away, since its key was refused."""
    key_lines: dict[str, int] = field(default_factory=dict)


class Builder:
    """Reads one text. `tree` is None when there is none to give; `faults` has what was found."""

    def __init__(self, lines: list[str]) -> None:
        self.lines = lines
        self.tree: Tree | None = None
        self.faults: list[Fault] = []
        self._open: list[_Open] = []
        self._documents = 0

    def read(self) -> None:
        """Reads all. Raises yaml.YAMLError where the text isn't YAML."""
        try:
            for number, event in enumerate(self._events()):
                self._take(event)
                if len(self.faults) > MOST_FAULTS:
                    raise StoppedError(self._fault(event, traps.MANY))
                if number > MOST_VALUES:
                    raise StoppedError(self._fault(event, traps.TOO_MUCH))
        except StoppedError as stop:
            self.tree = None
            self.faults.append(stop.fault)
            return
        if self._documents == 0:
            self.faults.append(Fault(0, 0, "This file is empty. Fill it in, or delete it."))

    def _events(self) -> Iterator[Any]:
        events: Iterator[Any] = yaml.parse("\n".join(self.lines) + "\n", Loader=_Loader)
        return events

    def _take(self, event: Any) -> None:
        if isinstance(event, yaml.DocumentStartEvent):
            self._document(event)
        elif isinstance(event, yaml.AliasEvent):
            if not (self._open and self._open[-1].skipping):
                self._refuse(event, traps.alias(event.anchor or ""))
            self._value(event, None)
        elif isinstance(event, yaml.ScalarEvent):
            self._marks(event)
            self._scalar(event)
        elif isinstance(event, yaml.MappingStartEvent | yaml.SequenceStartEvent):
            self._marks(event)
            self._start(event)
        elif isinstance(event, yaml.MappingEndEvent | yaml.SequenceEndEvent):
            self._end()

    def _document(self, event: Any) -> None:
        self._documents += 1
        if self._documents > 1:
            raise StoppedError(self._fault(event, traps.SEVERAL))
        if event.version or event.tags:
            self._refuse(event, traps.DIRECTIVE)

    def _marks(self, event: Any) -> None:
        """Anchors and tags are refused; the value they stand before is taken as it is."""
        if event.anchor is not None:
            self._refuse(event, traps.anchor(event.anchor))
        if event.tag is not None:
            self._refuse(event, traps.TAG)

    def _scalar(self, event: Any) -> None:
        plain = event.style is None or event.style == ""
        at = event.start_mark
        text = Written(event.value, not plain, at.line + 1, at.column + 1)
        if not plain and (hidden := HIDDEN.search(event.value)):
            self._refuse(event, traps.unseen(hidden[0]))
        top = self._open[-1] if self._open else None
        if top is not None and isinstance(top.data, dict) and top.key is None and not top.skipping:
            self._key(event, text)
            return
        if plain and not event.value:
            self._empty(event, top)
            return
        if top is None:  # a text alone: a key has lost its colon, which `scan` can tell
            raise yaml.MarkedYAMLError(problem_mark=event.start_mark)
        slips = traps.after_value(self.lines, event)
        if plain:
            slips += traps.in_plain_text(self.lines, event, top.flow)
        self.faults += slips
        self._value(event, text if all(slip.advice for slip in slips) else None)

    def _key(self, event: Any, text: Written) -> None:
        top = self._open[-1]
        key, line = str(text), event.start_mark.line
        if not key:
            self._refuse(event, traps.NO_KEY)
            top.skipping = True
        elif key == "<<" and not text.quoted:
            self._refuse(event, traps.MERGE)
            top.skipping = True
        elif key in top.key_lines:
            self._refuse(event, traps.twice(key, top.key_lines[key] + 1))
            top.skipping = True
        else:
            top.key = key
            top.key_lines[key] = line
            place = (line + 1, event.start_mark.column + 1)
            self._tree.key_places.setdefault((*top.path, key), place)

    def _empty(self, event: Any, top: _Open | None) -> None:
        if top is None:
            raise StoppedError(Fault(0, 0, "This file is empty. Fill it in, or delete it."))
        path = self._next_path(top)
        if not top.skipping:
            line, column = self._tree.key_places.get(path, (0, 0))
            at = (
                (line - 1, column - 1) if line else (event.start_mark.line, event.start_mark.column)
            )
            self.faults.append(traps.empty(self.lines, at, top.key, top.flow))
        self._value(event, None)

    def _start(self, event: Any) -> None:
        if len(self._open) >= DEEPEST:
            raise StoppedError(self._fault(event, traps.TOO_DEEP))
        is_map = isinstance(event, yaml.MappingStartEvent)
        data: Any = {} if is_map else []
        if not self._open:
            if not is_map:
                raise StoppedError(self._fault(event, traps.LIST_ON_TOP))
            self.tree = Tree(data)
            path: Steps = ()
            self._place(event, path)
        else:
            path = self._start_inside(event, data)
        self._open.append(_Open(data, path, bool(event.flow_style)))

    def _start_inside(self, event: Any, data: Any) -> Steps:
        top = self._open[-1]
        path = self._next_path(top)
        if isinstance(top.data, dict) and top.key is None and not top.skipping:
            raise StoppedError(self._fault(event, traps.LIST_AS_KEY))
        self._value(event, data)
        return path

    def _end(self) -> None:
        self._open.pop()

    def _value(self, event: Any, value: Any) -> None:
        """Puts a value where it belongs; None is a hole that has been told of."""
        if not self._open:
            raise StoppedError(self._fault(event, traps.LIST_ON_TOP))
        top = self._open[-1]
        if isinstance(top.data, dict) and top.key is None and not top.skipping:
            raise StoppedError(self._fault(event, traps.LIST_AS_KEY))
        if len(top.data) >= MOST_ENTRIES:
            raise StoppedError(self._fault(event, traps.TOO_LONG))
        path, skipping = self._next_path(top), top.skipping
        top.skipping = False
        if isinstance(top.data, dict):
            key, top.key = top.key, None
            if value is not None and key is not None and not skipping:
                top.data[key] = value
        elif value is not None:
            top.data.append(value)
        if value is None and not skipping:
            self._tree.left_out.add(path if isinstance(top.data, dict) else (*top.path, ""))
        if value is not None and not skipping:
            self._place(event, path)

    def _next_path(self, top: _Open) -> Steps:
        if isinstance(top.data, list):
            return (*top.path, len(top.data))
        return (*top.path, top.key if top.key is not None else "")

    def _place(self, event: Any, path: Steps) -> None:
        mark = event.start_mark
        self._tree.places.setdefault(path, (mark.line + 1, mark.column + 1))

    @property
    def _tree(self) -> Tree:
        assert self.tree is not None
        return self.tree

    def _refuse(self, event: Any, message: str) -> None:
        self.faults.append(self._fault(event, message))

    def _fault(self, event: Any, message: str) -> Fault:
        return Fault(event.start_mark.line, event.start_mark.column, message)

"""A secret for every private value of a studio's files.

What clients may see is listed here, apart from the code that decides it. Everything else is
replaced by a secret of its kind (`secret_values.py`).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from types import UnionType
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from corymb.studio.load import MODELS
from corymb.studio.models import Sundry
from corymb.studio.models.base import FileModel
from corymb.studio.shape import as_model
from corymb.studio.values import text
from corymb.studio.values.friendly import Choice, Friendly
from tests.site.secret_values import HOLDS_NONE, Maker, Secrets, secret_for

PUBLIC = {
    "studio": "name tagline about language lengths_in place.name contact.email contact.phone "
    "contact.answer_within "
    "styles.*.name styles.*.plural styles.*.about styles.*.known_object",
    "stems": "group stems.*.name stems.*.botanical stems.*.use stems.*.form stems.*.colours "
    "stems.*.green stems.*.head stems.*.head_length stems.*.heads_per_stem stems.*.length "
    "stems.*.in_season stems.*.at_best stems.*.vase_life stems.*.hazards stems.*.caution "
    "stems.*.scent stems.*.about",
    "recipe": "name summary time across high vessel.kind vessel.name vessel.across vessel.high "
    "against stems.line stems.stem stems.count stems.role stems.use stems.essential sizes price "
    "care photos variants.*.name variants.*.about variants.*.time variants.*.care "
    "variants.*.swap variants.*.add.line "
    "variants.*.add.stem variants.*.add.count variants.*.add.role variants.*.add.use "
    "variants.*.add.essential variants.*.drop variants.*.scale variants.*.price variants.*.photos "
    "variants.*.builds_on based_on swap add.line drop scale",
    "made": "title recipe variant date about photos",
    "link": "title code date expires hours where show note",
}
"""What clients may see, by kind of file: `*` is any key, `line` an item written as one line of
text, and a name stands for all below it."""


LEFT_ALONE = {"studio": "colour"}
"""Private values that must lie on a scale and agree with one another: no secret can be one."""

SHORT_FORMS: dict[type[FileModel], Maker] = {
    Sundry: lambda secrets, where, was: (
        f"{secrets.number(where)} {secrets.text(where)}, {secrets.number(where, 2)}"
    ),
}
"""Lines of text that hold more than the names of other things."""


@dataclass(frozen=True)
class Planter:
    """Replaces what is private in files of one kind."""

    kind: str
    secrets: Secrets
    public: str = ""

    @classmethod
    def of(cls, kind: str, secrets: Secrets) -> Planter:
        return cls(kind, secrets, PUBLIC.get(kind, ""))

    def planted(self, data: Any) -> Any:
        """A copy of a file's data in which every private value is a secret."""
        return self._at(data, MODELS[self.kind], ())

    def _at(self, written: Any, hint: Any, path: tuple[str, ...]) -> Any:
        model = as_model(hint)
        if isinstance(written, dict) and model:
            hints = hints_of(model)
            whole = {**written, **self._left_out(hints, written, path)}
            return {key: self._at(value, hints[key], (*path, key)) for key, value in whole.items()}
        if isinstance(written, dict):
            of_key, of_value = get_args(bare(hint))
            return {
                self._at(key, of_key, (*path, key)): self._at(value, of_value, (*path, key))
                for key, value in written.items()
            }
        if isinstance(written, list):
            (of_item,) = get_args(bare(hint))
            return [self._at(item, of_item, (*path, "[]")) for item in written]
        kept = f"{self.public} {LEFT_ALONE.get(self.kind, '')}"
        return written if is_public(kept, path) else self._secret(written, hint, path)

    def _left_out(
        self, hints: dict[str, Any], written: dict[str, Any], path: tuple[str, ...]
    ) -> dict[str, str]:
        """Private texts that the demo leaves out; but a vehicle would have to be there."""
        return {
            key: f"{key} of {self.kind} {path}"
            for key, hint in hints.items()
            if key not in (*written, "vehicle")
            and is_text(hint)
            and not is_public(self.public, (*path, key))
        }

    def _secret(self, written: str, hint: Any, path: tuple[str, ...]) -> str:
        where = f"{self.kind}: {' > '.join(path)}"
        model = as_model(hint)
        if model:
            line_of = SHORT_FORMS.get(model)
            return line_of(self.secrets, where, written) if line_of else written
        return secret_for(reader_of(hint), self.secrets, where, written)


def hints_of(model: type[FileModel]) -> dict[str, Any]:
    """The types of a model's keys, with what reads each."""
    hints = get_type_hints(model, include_extras=True)
    return {str(known.alias): hints[name] for name, known in model.model_fields.items()}


def bare(hint: Any) -> Any:
    """The type itself of one that may be left out."""
    if get_origin(hint) in (Union, UnionType):
        return next(part for part in get_args(hint) if part is not type(None))
    return hint


def reader_of(hint: Any) -> Friendly | Choice:
    """What reads a value of this type."""
    marks = get_args(bare(hint))
    return next(mark for mark in marks if isinstance(mark, Friendly | Choice))


def is_text(hint: Any) -> bool:
    """Whether any words will do."""
    kind = bare(hint)
    marks = get_args(kind) if get_origin(kind) is Annotated else ()
    return any(isinstance(mark, Friendly) and mark.parse is text.parse_text for mark in marks)


def readers_in(hint: Any) -> Iterator[Friendly | Choice]:
    """What reads each value in a model, a list or keys, however deep."""
    model = as_model(hint)
    if model:
        for inner in hints_of(model).values():
            yield from readers_in(inner)
    elif get_origin(bare(hint)) is Annotated:
        yield reader_of(hint)
    else:
        for inner in get_args(bare(hint)):
            yield from readers_in(inner)


def private_places(kind: str) -> Iterator[tuple[str, ...]]:
    """Every place of a kind of file that clients may not see and a secret can stand in."""
    kept = f"{PUBLIC.get(kind, '')} {LEFT_ALONE.get(kind, '')}"
    for path, reader in _places(MODELS[kind], ()):
        holds_none = isinstance(reader, Choice) or (reader and reader.parse in HOLDS_NONE)
        if not holds_none and not is_public(kept, path):
            yield path


def _places(hint: Any, path: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], Any]]:
    """Each place that something is written in, with what reads it; `*` for any key."""
    model = as_model(hint)
    if model in SHORT_FORMS:
        yield path, None
    elif model:
        for key, inner in hints_of(model).items():
            yield from _places(inner, (*path, key))
    elif get_origin(bare(hint)) is Annotated:
        yield path, reader_of(hint)
    elif get_origin(bare(hint)) is dict:
        yield from _places(get_args(bare(hint))[1], (*path, "*"))
    else:
        yield from _places(get_args(bare(hint))[0], (*path, "[]"))


def is_public(public: str, path: tuple[str, ...]) -> bool:
    """Whether clients may see the value at a path."""
    steps = [step.replace(" ", "_") for step in path[:-1] if step != "[]"]
    steps.append("line" if path[-1] == "[]" else path[-1].replace(" ", "_"))
    return any(_matches(pattern.split("."), steps) for pattern in public.split())


def _matches(pattern: list[str], steps: list[str]) -> bool:
    return len(steps) >= len(pattern) and all(
        wanted in ("*", step) for wanted, step in zip(pattern, steps, strict=False)
    )

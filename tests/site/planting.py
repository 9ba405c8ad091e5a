"""A secret for every private value of a studio's files, made after the kind of value it is.

What clients may see is listed here, apart from the code that decides it. Everything else is
replaced by something that can be found again: words in texts, and odd numbers wherever a number
goes, whatever its unit. A number that a page rounds is not found.
"""

from __future__ import annotations

import itertools
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta
from pathlib import Path
from types import UnionType
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from corymb.studio.load import MODELS
from corymb.studio.models import Sundry
from corymb.studio.models.base import FileModel
from corymb.studio.models.order import OrderLine
from corymb.studio.shape import as_model
from corymb.studio.values import colour, dates, length, money, place, recurrence, share, text
from corymb.studio.values import season_text as seasons
from corymb.studio.values import time as times
from corymb.studio.values import volume as volumes
from corymb.studio.values import weight as weights
from corymb.studio.values.friendly import Choice, Friendly

PUBLIC = {
    "studio": "name tagline about language place.name contact.email contact.phone styles.*.name "
    "styles.*.plural styles.*.about styles.*.known_object",
    "stems": "group stems.*.name stems.*.botanical stems.*.use stems.*.form stems.*.colours "
    "stems.*.green stems.*.head stems.*.head_length stems.*.heads_per_stem stems.*.length "
    "stems.*.in_season stems.*.at_best stems.*.vase_life stems.*.hazards stems.*.caution "
    "stems.*.scent stems.*.about",
    "recipe": "name summary time across high vessel.kind vessel.name vessel.across vessel.high "
    "against stems.line stems.stem stems.count stems.role stems.use stems.essential sizes price "
    "care photos variants.*.name variants.*.about variants.*.swap variants.*.add.line "
    "variants.*.add.stem variants.*.add.count variants.*.add.role variants.*.add.use "
    "variants.*.add.essential variants.*.drop variants.*.scale variants.*.price variants.*.photos "
    "variants.*.builds_on based_on swap add.line drop scale",
    "made": "title recipe variant date about photos",
}
"""What clients may see, by kind of file: `*` is any key, `line` an item written as one line of
text, and a name stands for all below it."""


@dataclass
class Secrets:
    """Hands out secrets, and remembers them with the place of each."""

    planted: dict[str, str] = field(default_factory=dict)
    _texts: dict[str, str] = field(default_factory=dict)
    _counter: Iterator[int] = field(default_factory=lambda: itertools.count(1))

    def text(self, where: str, instead_of: str = "") -> str:
        """Words; the same for the same text, so that a thing still goes by its name."""
        if instead_of in self._texts:
            return self._texts[instead_of]
        secret = f"zq{next(self._counter):05d}hush"
        if instead_of:
            self._texts[instead_of] = secret
        return self._kept(secret, where)

    def number(self, where: str, places: int = 0, short: bool = False) -> str:
        """Nine figures (eight when `short`), some of them after the point; the last is no 0."""
        number = (41_273_903 if short else 412_739_003) + 13 * next(self._counter)
        number += number % 10 == 0
        figures = self._kept(str(number), where)
        return f"{figures[:-places]}.{figures[-places:]}" if places else figures

    def day(self, where: str) -> str:
        """A day that is not soon; those asked for later come later."""
        day = date(2101, 1, 1) + timedelta(days=next(self._counter))
        self._kept(f"{day.day} {day:%B %Y}", where)
        return self._kept(day.isoformat(), where)

    def minutes(self, where: str) -> str:
        """A length of time, as it will be printed."""
        return self._kept(str(times.Duration(40_000 + next(self._counter))), where)

    def hours_of_day(self, where: str) -> str:
        """From when to when."""
        hour, minute = divmod(next(self._counter) % 600, 60)
        return self._kept(f"{hour:02d}:{minute:02d}-23:59", where)

    def _kept(self, secret: str, where: str) -> str:
        self.planted[secret] = where
        return secret


Maker = Callable[[Secrets, str, str], str]


def numbered(pattern: str, *places: int, short: bool = False) -> Maker:
    """A maker of values with secret numbers in them, `places` figures after each one's point."""

    def make(secrets: Secrets, where: str, _: str) -> str:
        return pattern.format(*(secrets.number(where, each, short) for each in places))

    return make


MAKERS: dict[Callable[[str], Any], Maker] = {
    text.parse_text: lambda secrets, where, was: secrets.text(where, was),
    text.parse_email: lambda secrets, where, was: f"{secrets.text(where, was)}@private.example",
    text.parse_whole: numbered("{}", 0),
    text.parse_count: numbered("{}", 0),
    text.parse_number: numbered("{}", 4),
    text.parse_decimal: numbered("{}", 4),
    money.parse_money: numbered("{}", 2),
    money.parse_price_guide: numbered("from {}", 2),
    length.parse_length: numbered("{} cm", 4),
    length.parse_length_range: numbered("{} cm - {} cm", 4, 4),
    length.parse_floor: numbered("{} cm x {} cm", 4, 4),
    length.parse_height: numbered("{} m", 4, short=True),
    weights.parse_weight: numbered("{} g", 4),
    volumes.parse_volume: numbered("{} L", 5),
    share.parse_share: numbered("{} %", 7),
    share.parse_scale: numbered("{} %", 7),
    place.parse_latitude: numbered("{}", 7),
    place.parse_longitude: numbered("{}", 7),
    dates.parse_date: lambda secrets, where, _: secrets.day(where),
    times.parse_duration: lambda secrets, where, _: secrets.minutes(where),
    times.parse_clock_span: lambda secrets, where, _: secrets.hours_of_day(where),
}
"""How a secret is made, by what reads the value."""

HOLDS_NONE: dict[Callable[[str], Any], str] = {
    text.parse_id: "leads to another thing, and has to lead there still",
    text.parse_yes_no: "one of two words",
    seasons.parse_season: "days of the year, like any other stem's",
    times.parse_day_range: "whole days, two years at most",
    recurrence.parse_recurrence: "a rule of the calendar",
    colour.parse_hex: "six figures, like any other colour's",
    colour.parse_colour_part: "a colour",
    colour.parse_named_colour: "a colour",
    place.parse_time_zone: "one of a list",
    place.parse_currency: "one of a list",
    place.parse_language: "one of a list",
}
"""What no secret can stand in for, and why. A choice of words is left alone, too."""

SHORT_FORMS: dict[type[FileModel], Maker] = {
    Sundry: lambda secrets, where, was: (
        f"{secrets.number(where)} {secrets.text(where)}, {secrets.number(where, 2)}"
    ),
    OrderLine: lambda secrets, where, was: re.sub("^[0-9]+", secrets.number(where), was),
}
"""Lines of text that hold more than the names of other things."""

CODE = ("link", ("code",))


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
        return written if is_public(self.public, path) else self._secret(written, hint, path)

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
        secret = secret_for(reader_of(hint), self.secrets, where, written)
        return secret.ljust(26, "x") if (self.kind, path) == CODE else secret


def secret_for(reader: Friendly | Choice, secrets: Secrets, where: str, written: str) -> str:
    """A secret of a value's kind; the value itself where its kind can hold none."""
    if isinstance(reader, Choice) or reader.parse in HOLDS_NONE:
        return written
    return MAKERS[reader.parse](secrets, where, written)


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


def is_public(public: str, path: tuple[str, ...]) -> bool:
    """Whether clients may see the value at a path."""
    steps = [step.replace(" ", "_") for step in path[:-1] if step != "[]"]
    steps.append("line" if path[-1] == "[]" else path[-1].replace(" ", "_"))
    return any(_matches(pattern.split("."), steps) for pattern in public.split())


def _matches(pattern: list[str], steps: list[str]) -> bool:
    return len(steps) >= len(pattern) and all(
        wanted in ("*", step) for wanted, step in zip(pattern, steps, strict=False)
    )


WORDS = re.compile(rb"zq[0-9]{5}hush")
FIGURES = re.compile(rb"[0-9][0-9.,]{6,}")


def found_in(folder: Path, planted: dict[str, str]) -> set[str]:
    """The secrets that stand in any byte or name of a site.

    Numbers are found wherever the point is by then, and with commas for their thousands.
    """
    others = {s.encode(): s for s in planted if not s.isdigit() and not s.startswith("zq")}
    found: set[str] = set()
    for file in folder.rglob("*"):
        whole = file.name.encode() + b"\n" + (file.read_bytes() if file.is_file() else b"")
        found |= {each.decode() for each in WORDS.findall(whole)}
        found |= {other for sought, other in others.items() if sought in whole}
        for run in FIGURES.findall(whole):
            figures = re.sub(rb"[.,]", b"", run).decode()
            found |= {figures[i : i + n] for n in (8, 9) for i in range(len(figures) - n + 1)}
    return found & set(planted)

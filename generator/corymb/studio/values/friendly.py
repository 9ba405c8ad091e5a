"""How does a friendly value become the type of a model's field, and of a schema's entry?"""

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any, Literal

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, core_schema

from corymb.studio.saying import or_list
from corymb.studio.suggest import did_you_mean, quoted

Kind = Literal["string", "number", "integer", "boolean"]
"""What an editor may see in a file: to it `7` is a number and `7 days` a string."""


@dataclass(frozen=True, eq=False)
class Friendly:
    """A field read from its raw text by `parse` and written back by `write`.

    Stands in `Annotated[Length, Friendly(...)]`. A value that is already of one of the `types`
    is taken as it is, so that models can be made in Python too.
    """

    parse: Callable[[str], Any]
    types: tuple[type, ...]
    description: str
    examples: tuple[str, ...]
    kinds: tuple[Kind, ...] = ("string",)
    pattern: str = ""
    write: Callable[[Any], str] = str
    limits: dict[str, Any] = field(default_factory=dict)
    convert: Callable[[Any], Any] = lambda value: value
    longest: int = 300  # letters; several times what any value takes, and no burden to look at

    def read(self, written: object) -> Any:
        """The value. Raises ValueError with a sentence for the writer."""
        if isinstance(written, str):
            if len(written) > self.longest:
                raise ValueError(f"This is far too long: write it like {quoted(self.examples[0])}.")
            return self.parse(written)
        if isinstance(written, self.types) and not _is_odd_bool(written, self.types):
            return self.convert(written)
        raise ValueError(not_text(written, self.examples[0]))

    def __get_pydantic_core_schema__(
        self, source: Any, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        """A validator and a writer in one, in place of the type's own."""
        return core_schema.no_info_plain_validator_function(
            self.read,
            serialization=core_schema.plain_serializer_function_ser_schema(
                self.write, return_schema=core_schema.str_schema()
            ),
        )

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        """What an editor is told about the field."""
        kinds: Any = self.kinds[0] if len(self.kinds) == 1 else list(self.kinds)
        entry = {"type": kinds, "description": self.description, "examples": list(self.examples)}
        if self.pattern:
            entry["pattern"] = self.pattern
        return {**entry, **self.limits}


@dataclass(frozen=True)
class Choice:
    """A field that is one of a few words, in any case. Stands in `Annotated[str, Choice(...)]`."""

    words: tuple[str, ...]
    noun: str
    description: str = ""

    def read(self, written: object) -> str:
        """The word. Raises ValueError: the nearest word, and all of them."""
        if not isinstance(written, str):
            raise ValueError(not_text(written, self.words[0]))
        word = " ".join(written.split()).casefold()
        if word in self.words:
            return self.words[self.words.index(word)]
        raise ValueError(
            f"{quoted(written)} is not {self.noun}.{did_you_mean(word, self.words)} "
            f"It is one of: {or_list(self.words)}."
        )

    def __get_pydantic_core_schema__(
        self, source: Any, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        """A validator in place of the type's own."""
        return core_schema.no_info_plain_validator_function(
            self.read, serialization=core_schema.to_string_ser_schema()
        )

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        """What an editor is told about the field."""
        entry: JsonSchemaValue = {"type": "string", "enum": list(self.words)}
        return {**entry, "description": self.description} if self.description else entry


def choice(words: tuple[str, ...], noun: str, description: str = "") -> Choice:
    """What makes a field one of the words; the noun carries its article, `a use`."""
    return Choice(words, noun, description)


def not_text(written: object, example: str) -> str:
    """What to say when a list or a table stands where one value should."""
    if isinstance(written, dict) and len(written) == 1:
        key, value = next(iter(written.items()))
        if isinstance(value, str):
            return (
                f"The colon makes this a key and its value. If it is one text, "
                f'put it in quotes: "{key}: {value}".'
            )
    if isinstance(written, dict):
        return f"One value is wanted here, like {quoted(example)}, not several keys."
    if isinstance(written, list | tuple):
        return f"One value is wanted here, like {quoted(example)}, not a list."
    if written is None:
        return f"There is nothing here: write for instance {quoted(example)}."
    return f"{quoted(str(written))} is not what is wanted here: write it like {quoted(example)}."


def _is_odd_bool(written: object, types: tuple[type, ...]) -> bool:
    """Python takes True for a whole number; a studio doesn't."""
    return isinstance(written, bool) and bool not in types

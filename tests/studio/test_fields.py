"""Every field reads its raw text, refuses the rest in a sentence, and tells editors what it is."""

import re
from decimal import Decimal
from typing import Annotated, Any, get_args

import pytest
from pydantic import BaseModel, TypeAdapter, ValidationError

from corymb.studio.values import fields
from corymb.studio.values.friendly import Choice, Friendly, choice
from corymb.studio.values.length import Length
from corymb.studio.written import Written

ALL = {name: kind for name, kind in vars(fields).items() if name.endswith("Field")}


def metadata(kind: Any) -> Friendly | Choice:
    """What reads a field."""
    reader = get_args(kind)[1]
    assert isinstance(reader, Friendly | Choice)
    return reader


READ = {name: kind for name, kind in ALL.items() if isinstance(metadata(kind), Friendly)}
CHOSEN = {name: kind for name, kind in ALL.items() if isinstance(metadata(kind), Choice)}
EXAMPLES = [
    pytest.param(kind, example, id=f"{name} {example}")
    for name, kind in READ.items()
    for example in metadata(kind).examples  # type: ignore[union-attr]
]


def message_of(kind: Any, written: object) -> str:
    """What is said of a wrong value."""
    with pytest.raises(ValidationError) as wrong:
        TypeAdapter(kind).validate_python(written)
    [error] = wrong.value.errors()
    return str(error["ctx"]["error"])


@pytest.mark.parametrize(("kind", "example"), EXAMPLES)
def test_every_example_can_be_read_and_is_printed_as_it_is_read(kind: Any, example: str) -> None:
    adapter = TypeAdapter(kind)
    value = adapter.validate_python(Written(example))
    printed = adapter.dump_python(value)
    assert isinstance(printed, str)
    assert adapter.validate_python(printed) == value
    assert adapter.validate_python(value) == value


@pytest.mark.parametrize(("kind", "example"), EXAMPLES)
def test_every_example_passes_the_pattern_that_editors_check(kind: Any, example: str) -> None:
    schema = TypeAdapter(kind).json_schema()
    assert re.search(schema.get("pattern", ""), example)


@pytest.mark.parametrize(("name", "kind"), READ.items(), ids=READ)
def test_every_field_tells_editors_its_type_what_it_is_and_examples(name: str, kind: Any) -> None:
    schema = TypeAdapter(kind).json_schema()
    assert schema["type"]
    assert schema["description"].endswith(".")
    assert schema["examples"]


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        pytest.param(fields.LengthField, "24 inches", id="length"),
        pytest.param(fields.LengthRangeField, "60 to 90 cm", id="to"),
        pytest.param(fields.LengthRangeField, "60 cm – 1.2 m", id="two units"),
        pytest.param(fields.WeightField, "25g", id="no space"),
        pytest.param(fields.VolumeField, "0.5 litres", id="water"),
        pytest.param(fields.IsoWeekField, "2026w38", id="week"),
        pytest.param(fields.HexField, "#5D7350", id="colour"),
    ],
)
def test_what_can_be_read_is_not_underlined_by_an_editor(kind: Any, text: str) -> None:
    adapter = TypeAdapter(kind)
    adapter.validate_python(text)
    assert re.search(adapter.json_schema()["pattern"], text)


@pytest.mark.parametrize(("name", "kind"), ALL.items(), ids=ALL)
@pytest.mark.parametrize(
    "written", [["a"], {"a": "b", "c": "d"}, None, object()], ids=["list", "table", "none", "thing"]
)
def test_a_list_or_a_table_where_a_value_belongs_is_told(
    name: str, kind: Any, written: object
) -> None:
    assert message_of(kind, written)[-1] in ".?"


@pytest.mark.parametrize(
    ("written", "message"),
    [
        (
            {"Note": "the sap burns"},
            "The colon makes this a key and its value. If it is one text, put it in quotes: "
            '"Note: the sap burns".',
        ),
        ({"a": "b", "c": "d"}, "One value is wanted here, like ‘9 cm’, not several keys."),
        ({"a": ["b"]}, "One value is wanted here, like ‘9 cm’, not several keys."),
        (["9 cm"], "One value is wanted here, like ‘9 cm’, not a list."),
        (None, "There is nothing here: write for instance ‘9 cm’."),
        (9, "‘9’ is not what is wanted here: write it like ‘9 cm’."),
        ("9" * 400 + " cm", "This is far too long: write it like ‘9 cm’."),
    ],
    ids=["colon in text", "table", "nested", "list", "nothing", "number", "too long"],
)
def test_what_is_not_one_value_is_told(written: object, message: str) -> None:
    assert message_of(fields.LengthField, written) == message


@pytest.mark.parametrize(
    ("kind", "given", "value"),
    [
        pytest.param(fields.MoneyField, 3, Decimal(3), id="whole money"),
        pytest.param(fields.NumberField, Decimal("0.3"), 0.3, id="decimal number"),
        pytest.param(fields.WholeField, 7, 7, id="whole number"),
        pytest.param(fields.YesNoField, True, True, id="yes"),
        pytest.param(fields.LengthField, Length(9), Length(9), id="length"),
    ],
)
def test_a_value_made_in_python_is_taken_as_it_is(kind: Any, given: object, value: object) -> None:
    assert TypeAdapter(kind).validate_python(given) == value


@pytest.mark.parametrize("kind", [fields.WholeField, fields.MoneyField, fields.NumberField])
def test_yes_is_not_a_number(kind: Any) -> None:
    assert message_of(kind, True).startswith("‘True’ is not what is wanted here")


def test_a_count_is_at_least_one_where_a_whole_number_may_be_none() -> None:
    assert TypeAdapter(fields.WholeField).validate_python("0") == 0
    assert message_of(fields.CountField, "0").startswith("A count of 0 needs no line")


@pytest.mark.parametrize(("name", "kind"), CHOSEN.items(), ids=CHOSEN)
def test_a_choice_takes_each_of_its_words_and_tells_editors_of_them(name: str, kind: Any) -> None:
    adapter = TypeAdapter(kind)
    words = adapter.json_schema()["enum"]
    assert [adapter.validate_python(word) for word in words] == words
    assert adapter.validate_python(f"  {words[0].upper()} ") == words[0]


@pytest.mark.parametrize(
    ("kind", "written", "message"),
    [
        pytest.param(
            fields.RoleField,
            "ligth",
            "‘ligth’ is not a role. Did you mean ‘light’? It is one of: depth, light or accent.",
            id="a slip",
        ),
        pytest.param(
            fields.HandoverField,
            "pick-up",
            "‘pick-up’ is not a handover. It is one of: collection or delivery.",
            id="a stranger",
        ),
        pytest.param(
            fields.UseField,
            ["focal"],
            "One value is wanted here, like ‘line’, not a list.",
            id="a list",
        ),
    ],
)
def test_a_wrong_choice_is_told_with_the_words_there_are(
    kind: Any, written: object, message: str
) -> None:
    assert message_of(kind, written) == message


def test_fields_work_in_a_model() -> None:
    class Thing(BaseModel):
        length: fields.LengthField
        price: fields.MoneyField | None = None
        mood: Annotated[str, choice(("calm", "bright"), "a mood", "How it feels.")] = "calm"

    thing = Thing.model_validate({"length": "9 cm", "price": "1.2", "mood": "Bright"})
    assert thing == Thing(length=Length(9), price=Decimal("1.2"), mood="bright")
    assert thing.model_dump() == {"length": "9 cm", "price": "1.20", "mood": "bright"}
    assert Thing.model_validate(thing.model_dump()) == thing
    schema = Thing.model_json_schema()["properties"]
    assert schema["mood"]["description"] == "How it feels."
    assert schema["length"]["pattern"]

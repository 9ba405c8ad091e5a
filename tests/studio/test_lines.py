"""The short forms of recipe lines, swaps, orders and sundries are read, and print themselves."""

from decimal import Decimal
from typing import Any

import pytest

from corymb.studio.values import lines
from corymb.studio.values.lines import (
    DropText,
    LinkItemText,
    OrderLineText,
    RecipeLineText,
    SundryText,
    SwapText,
    parse_drop,
    parse_link_item,
    parse_order_line,
    parse_recipe_line,
    parse_sundry,
    parse_swap,
)


def message_of(text: str, parse: object) -> str:
    """What is said of a wrong line."""
    assert callable(parse)
    with pytest.raises(ValueError) as wrong:
        parse(text)
    return str(wrong.value)


@pytest.mark.parametrize(
    ("text", "line", "printed"),
    [
        ("3 dahlia-shell, light, essential", RecipeLineText(3, "dahlia-shell", "light", None, True),
         "3 dahlia-shell, light, essential"),
        ("5 sweet-pea-plum, depth", RecipeLineText(5, "sweet-pea-plum", "depth"),
         "5 sweet-pea-plum, depth"),
        ("4 wild-carrot, filler, light", RecipeLineText(4, "wild-carrot", "light", "filler"),
         "4 wild-carrot, light, filler"),
        ("3 x smoke-bush ,Essential", RecipeLineText(3, "smoke-bush", essential=True),
         "3 smoke-bush, essential"),
        ("12× rose-blush", RecipeLineText(12, "rose-blush"), "12 rose-blush"),
    ],
)  # fmt: skip
def test_a_recipe_line_is_read(text: str, line: RecipeLineText, printed: str) -> None:
    assert parse_recipe_line(text) == line
    assert str(line) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("dahlia-shell, light",
         "‘dahlia-shell’ doesn't say how many: write it like ‘3 dahlia-shell’."),
        ("dahlia-shell 3, light",
         "‘dahlia-shell 3’ is the wrong way round: write ‘3 dahlia-shell’."),
        ("3dahlia-shell", "‘3dahlia-shell’ lacks a space: write ‘3 dahlia-shell’."),
        ("three dahlia-shell",
         "‘three dahlia-shell’ counts in words: write it in figures, ‘3 dahlia-shell’."),
        ("0 dahlia-shell", "A count of 0 needs no line: write 1 or more, or take it out."),
        ("2.5 dahlia-shell", "‘2.5’ is not whole: write 2 or 3."),
        ("3 Dahlia Shell, light", "‘Dahlia Shell’ can't be referred to: use small letters and "
         "figures, words joined by one hyphen. Write ‘dahlia-shell’."),
        ("3 dahlia-shell, ligth", "‘ligth’ is not a word of a recipe line. Did you mean ‘light’? "
         "After the stem go its role (depth, light or accent), a use, or ‘essential’."),
        ("3 dahlia-shell, light, depth",
         "A line plays one role; this one has ‘light’ and ‘depth’."),
        ("3 dahlia-shell, focal, line", "A line plays one part; this one has ‘focal’ and ‘line’."),
        ("3 dahlia-shell, essential, essential", "‘essential’ stands here twice: once will do."),
        ("3 dahlia-shell,", "‘3 dahlia-shell,’ has a comma with nothing beside it: take it out."),
    ],
)  # fmt: skip
def test_a_wrong_recipe_line_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_recipe_line) == message


@pytest.mark.parametrize(
    ("text", "swap", "printed"),
    [
        ("sweet-pea-plum -> scabious-plum", SwapText("sweet-pea-plum", "scabious-plum"),
         "sweet-pea-plum -> scabious-plum"),
        ("3 dahlia-shell -> 5 cosmos-white", SwapText("dahlia-shell", "cosmos-white", 3, 5),
         "3 dahlia-shell -> 5 cosmos-white"),
        ("a->b, Accent", SwapText("a", "b", role="accent"), "a -> b, accent"),
        ("a → 2 b", SwapText("a", "b", None, 2), "a -> 2 b"),
        ("2 a => b", SwapText("a", "b", 2), "2 a -> b"),
        ("3 a -> 2 a", SwapText("a", "a", 3, 2), "3 a -> 2 a"),
    ],
)  # fmt: skip
def test_a_swap_is_read(text: str, swap: SwapText, printed: str) -> None:
    assert parse_swap(text) == swap
    assert str(swap) == printed


NO_SWAP = (
    "‘{}’ is not a swap: write what goes out, an arrow and what comes in, "
    "like ‘3 dahlia-shell -> 5 cosmos-white’."
)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("a for b", NO_SWAP.format("a for b")),
        ("a ->", NO_SWAP.format("a ->")),
        ("a -> b -> c", NO_SWAP.format("a -> b -> c")),
        ("a -> a", "‘a -> a’ swaps a stem for itself: name another after the arrow."),
        ("a -> b, essential", "‘essential’ can't stand in a swap. "
         "After the comma goes a role: depth, light or accent."),
        ("a -> b, accnt", "‘accnt’ can't stand in a swap. Did you mean ‘accent’? "
         "After the comma goes a role: depth, light or accent."),
        ("a -> 0 b", "A count of 0 needs no line: write 1 or more, or take it out."),
    ],
)  # fmt: skip
def test_a_wrong_swap_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_swap) == message


@pytest.mark.parametrize(
    ("text", "drop"),
    [("wild-carrot", DropText("wild-carrot")), ("2 dahlia-shell", DropText("dahlia-shell", 2))],
)
def test_a_drop_is_read(text: str, drop: DropText) -> None:
    assert parse_drop(text) == drop
    assert str(drop) == text


def test_a_drop_names_one_thing() -> None:
    assert message_of("a, b", parse_drop) == (
        "‘a, b’ names more than one thing: put each on its own line."
    )


@pytest.mark.parametrize(
    ("text", "line", "printed"),
    [
        ("12 hedgerow-jar", OrderLineText(12, "hedgerow-jar"), "12 hedgerow-jar"),
        ("6 hedgerow-jar, later, small, in buckets, from the mix",
         OrderLineText(6, "hedgerow-jar", ("later", "small"), True, True),
         "6 hedgerow-jar, later, small, in buckets, from the mix"),
        ("1 rooks-wing-hand-tie, From the mix",
         OrderLineText(1, "rooks-wing-hand-tie", from_the_mix=True),
         "1 rooks-wing-hand-tie, from the mix"),
        ("6 hedgerow-jar, made up, small", OrderLineText(6, "hedgerow-jar", ("small",)),
         "6 hedgerow-jar, small"),
    ],
)  # fmt: skip
def test_an_order_line_is_read(text: str, line: OrderLineText, printed: str) -> None:
    assert parse_order_line(text) == line
    assert str(line) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("hedgerow-jar", "‘hedgerow-jar’ doesn't say how many: write it like ‘6 hedgerow-jar’."),
        ("6 a, made up, in buckets", "‘6 a, made up, in buckets’ is both made up and in buckets: "
         "write it as two lines."),
        ("6 a, b, c, d", "‘6 a, b, c, d’ has too much after the recipe: "
         "at most a variant and a size, like ‘hedgerow-jar, later, small’."),
        ("6 a, In Bucket", "‘In Bucket’ is not known here. Did you mean ‘in buckets’?"),
    ],
)  # fmt: skip
def test_a_wrong_order_line_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_order_line) == message


@pytest.mark.parametrize(
    ("text", "sundry", "printed"),
    [
        ("1 pint jar, 1.20", SundryText(Decimal(1), "pint jar", Decimal("1.20")),
         "1 pint jar, 1.20"),
        ("0.3 m jute twine, 0.05", SundryText(Decimal("0.3"), "jute twine", Decimal("0.05"), "m"),
         "0.3 m jute twine, 0.05"),
        ("2 wire, thin, €0.4", SundryText(Decimal(2), "wire, thin", Decimal("0.4")),
         "2 wire, thin, 0.40"),
        ("1 m, 0.4", SundryText(Decimal(1), "m", Decimal("0.4")), "1 m, 0.40"),
    ],
)  # fmt: skip
def test_a_sundry_is_read(text: str, sundry: SundryText, printed: str) -> None:
    assert parse_sundry(text) == sundry
    assert str(sundry) == printed


NO_SUNDRY = "‘{}’ should be how many, what, and its cost after a comma, like ‘1 pint jar, 1.20’."


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("pint jar, 1.20", NO_SUNDRY.format("pint jar, 1.20")),
        ("1 pint jar", NO_SUNDRY.format("1 pint jar")),
        ("1 pint jar, cheap", "‘cheap’ is not an amount of money: write it like ‘1.20’."),
        ("0 pint jar, 1.20", "‘0 pint jar, 1.20’: none of a thing needs no line; take it out."),
        ("0,3 m twine, 0.05", "‘0,3’ has a comma in it: write 0.3."),
    ],
)
def test_a_wrong_sundry_is_told(text: str, message: str) -> None:
    assert message_of(text, parse_sundry) == message


@pytest.mark.parametrize(
    ("text", "item"),
    [
        ("hedgerow-jar", LinkItemText("hedgerow-jar")),
        ("hedgerow-jar, later", LinkItemText("hedgerow-jar", ("later",))),
        ("hedgerow-jar, later, small", LinkItemText("hedgerow-jar", ("later", "small"))),
    ],
)
def test_a_look_of_a_link_is_read(text: str, item: LinkItemText) -> None:
    assert parse_link_item(text) == item
    assert str(item) == text


@pytest.mark.parametrize(
    ("read", "text", "keys"),
    [
        (lines.recipe_line, "3 a, light, essential",
         {"stem": "a", "count": 3, "role": "light", "essential": True}),
        (lines.swap, "3 a -> 5 b, accent",
         {"out": "a", "out count": 3, "in": "b", "in count": 5, "role": "accent"}),
        (lines.swap, "a -> b", {"out": "a", "in": "b"}),
        (lines.drop, "2 a", {"stem": "a", "count": 2}),
        (lines.sundry, "0.3 m twine, 0.05",
         {"name": "twine", "count": Decimal("0.3"), "unit": "m", "cost": Decimal("0.05")}),
        (lines.order_line, "6 a, later, small, in buckets",
         {"quantity": 6, "recipe": "a", "variant": "later", "size": "small", "in buckets": True,
          "from the mix": False}),
        (lines.link_item, "a, later", {"recipe": "a", "variant": "later"}),
    ],
    ids=["recipe line", "swap", "bare swap", "drop", "sundry", "order line", "link item"],
)  # fmt: skip
def test_a_short_form_gives_the_keys_of_its_long_form(
    read: Any, text: str, keys: dict[str, Any]
) -> None:
    assert read(text) == keys

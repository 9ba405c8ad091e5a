"""Is all money written in the studio's own currency? A sign is read, but nothing is converted."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from corymb.ledger import kept
from corymb.studio.problems import Problem
from corymb.studio.studio import Source, Step, Studio
from corymb.studio.suggest import quoted

KEYS = ("price", "grown", "bought", "sundries", "cost")
SIGNS = {
    "€": ("EUR",),
    "£": ("GBP", "GIP", "FKP", "SHP", "EGP"),
    "$": ("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "BBD", "JMD", "TTD", "MXN", "CLP"),
}
"""Which currencies (ISO 4217) share a sign."""

_SIGN = re.compile(r"[€£$]|\b[A-Z]{3}(?=\s*[0-9])|(?<=[0-9])\s*[A-Z]{3}\b")


def other_currencies(studio: Studio) -> list[Problem]:
    """Each amount with the sign of another currency than the studio's."""
    house = studio.sources.get(("studio", "studio"))
    if house is not None and house.in_doubt("money", "currency"):
        return []
    return [
        problem
        for kind, known_as in studio.sources
        if kind in ("recipe", "stem")
        for problem in _in(studio, kind, known_as)
    ]


@kept
def _in(studio: Studio, kind: str, known_as: str) -> tuple[Problem, ...]:
    source, currency = studio.sources[kind, known_as], studio.house.money.currency
    return tuple(
        source.problem(_told(text, currency), *path)
        for path, text in _amounts(_data_of(source))
        if not source.in_doubt(*path) and _is_other(text, currency)
    )


def _data_of(source: Source) -> Any:
    data: Any = source.tree.data
    for step in source.path:
        data = data.get(step, {}) if isinstance(data, dict) else {}
    return data


def _amounts(data: Any, path: tuple[Step, ...] = (), is_money: bool = False) -> Iterator[Any]:
    """Each text that holds money, and the way to it."""
    if isinstance(data, str):
        if is_money:
            yield path, data
        return
    steps = data.items() if isinstance(data, dict) else enumerate(data or ())
    for step, inner in steps:
        yield from _amounts(
            inner, (*path, step), step in KEYS or (is_money and isinstance(step, int))
        )


def _is_other(text: str, currency: str) -> bool:
    signs = [sign.strip() for sign in _SIGN.findall(text.rpartition(",")[2])]
    return any(currency not in SIGNS.get(sign, (sign,)) for sign in signs)


def _told(text: str, currency: str) -> str:
    return (
        f"{quoted(text)} isn't in {currency}, the studio's currency: write what it is in "
        f"{currency}, without a sign."
    )

"""How is what a function works out kept in a ledger?"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Concatenate, ParamSpec, Protocol, TypeVar

from corymb.ledger.ledger import Ledger

Holder = TypeVar("Holder", bound="HasLedger")
P = ParamSpec("P")
R = TypeVar("R")


class HasLedger(Protocol):
    """Something whose facts are kept in a ledger, under its own name there."""

    @property
    def ledger(self) -> Ledger: ...

    @property
    def known_as(self) -> str: ...


def kept(
    method: Callable[Concatenate[Holder, P], R],
) -> Callable[Concatenate[Holder, P], R]:
    """Work this out once for the same words, and again only when what it read has changed.

    The words it is given are names and numbers, never things that could be out of date.
    """
    name = f"{method.__module__}.{method.__qualname__}"

    @wraps(method)
    def asked(holder: Holder, /, *args: P.args, **kwargs: P.kwargs) -> R:
        key = (name, holder.known_as, *args)
        found: R = holder.ledger.of(key, lambda: method(holder, *args, **kwargs))
        return found

    return asked

"""What is this sentence in the language that is spoken just now?"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

from corymb.language.messages import messages_of

ENGLISH = "en"
_SPOKEN: ContextVar[str] = ContextVar("spoken", default=ENGLISH)


@contextmanager
def in_language(tag: str) -> Iterator[None]:
    """Speak a language, `de-AT`, within this block."""
    before = _SPOKEN.set(tag)
    try:
        yield
    finally:
        _SPOKEN.reset(before)


def spoken() -> str:
    """The tag of the language that is spoken just now."""
    return _SPOKEN.get()


def gettext(message: str) -> str:
    """A sentence. What varies in it stands in named braces, and is put in afterwards."""
    return messages_of(_SPOKEN.get()).gettext(message) if message else message


def ngettext(one: str, many: str, number: int) -> str:
    """A sentence that depends on a number of things, in as many forms as the language has."""
    return messages_of(_SPOKEN.get()).ngettext(one, many, number)


def pgettext(context: str, message: str) -> str:
    """A word that means two things, with a word that says which: `pgettext("role", "light")`."""
    return messages_of(_SPOKEN.get()).pgettext(context, message)


def noted(message: str) -> str:
    """Marks a sentence that stands in a table, for translators to find; `gettext` it when used."""
    return message

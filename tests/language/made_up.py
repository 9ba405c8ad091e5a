"""Languages for a test alone, in the place of those that there are."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from corymb.language import locales, messages


@contextmanager
def made_up(folder: Path, **said: str) -> Iterator[None]:
    """Speak only these languages within the block: `pl=`, as its file has it, written there."""
    for language, text in said.items():
        (folder / f"{language}.po").write_text(text, "utf-8")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(messages, "FOLDER", folder)
        _forget()
        yield
    _forget()


def _forget() -> None:
    messages.messages_of.cache_clear()
    locales._locale_of.cache_clear()

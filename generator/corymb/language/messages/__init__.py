"""Which languages are there, and what does each say for an English sentence?

One file a language, `de.po`, as gettext's tools write and translators' programs read it. It is
made ready in memory when it is asked for: there is no second, compiled file to fall behind.
"""

from __future__ import annotations

from functools import cache
from gettext import GNUTranslations, NullTranslations
from hashlib import sha256
from io import BytesIO
from pathlib import Path

from babel import Locale
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po

FOLDER = Path(__file__).parent
AS_WRITTEN = NullTranslations()
"""English: every sentence as the code has it."""

LANGUAGES = ("en", *sorted(file.stem for file in FOLDER.glob("*.po")))


@cache
def messages_of(tag: str) -> NullTranslations:
    """The sentences of a language, for a tag such as `de-AT`; English where there are none."""
    file = _file_of(tag)
    return _read(file) if file else AS_WRITTEN


def messages_digest(tag: str) -> str:
    """Tells whether what is said in a language has changed, for what was made with it and kept."""
    file = _file_of(tag)
    return f"{tag} {sha256(file.read_bytes()).hexdigest() if file else ''}".strip()


def _file_of(tag: str) -> Path | None:
    locale = Locale.parse(tag, sep="-")
    names = (f"{locale.language}-{locale.territory}", locale.language)
    return next((file for name in names if (file := FOLDER / f"{name}.po").exists()), None)


def _read(file: Path) -> GNUTranslations:
    with file.open("rb") as written:
        catalogue = read_po(written, locale=file.stem.replace("-", "_"))
    ready = BytesIO()
    write_mo(ready, catalogue)
    ready.seek(0)
    return GNUTranslations(ready)

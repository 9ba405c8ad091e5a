"""Which languages are there, and what does each say for an English sentence?

One file a language, `de.po`, as gettext's tools write and translators' programs read it. It is
made ready in memory when it is asked for: there is no second, compiled file to fall behind.
"""

from __future__ import annotations

from functools import cache
from gettext import GNUTranslations, NullTranslations
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
    locale = Locale.parse(tag, sep="-")
    for name in (f"{locale.language}-{locale.territory}", locale.language):
        file = FOLDER / f"{name}.po"
        if file.exists():
            return _read(file)
    return AS_WRITTEN


def _read(file: Path) -> GNUTranslations:
    with file.open("rb") as written:
        catalogue = read_po(written, locale=file.stem.replace("-", "_"))
    ready = BytesIO()
    write_mo(ready, catalogue)
    ready.seek(0)
    return GNUTranslations(ready)

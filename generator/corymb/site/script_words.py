"""What do the theme's scripts say in the site's language?

A module of their own (`messages.js`) gives them those sentences that they use and no more. It is a
file like any other, for the pages' content policy lets no script stand in a page.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from functools import cache
from io import BytesIO

from babel.messages.extract import extract

from corymb.language import gettext, ngettext
from corymb.language.locales import locale_spoken
from corymb.site.render import THEME

SCRIPTS = THEME / "assets" / "js"
MESSAGES = SCRIPTS / "messages.js"
KEYWORDS = {"_": None, "plural": (1, 2)}
MOST = 200
"""Numbers up to it come in each of a language's plural categories that whole numbers have."""

Forms = dict[str, str]


def script_words() -> bytes:
    """The module of the language that is spoken; English has no messages, but a country's dates."""
    language = str(locale_spoken()).replace("_", "-")
    said = {**_sentences(), **_by_number()}
    lines = [
        "// What the scripts say in the site's language.",
        f"export const LANGUAGE = {_written(language)};",
        f"export const MESSAGES = {_written(said)};",
    ]
    return "\n".join([*lines, ""]).encode()


def _sentences() -> dict[str, str]:
    used = [message for message in used_by_scripts() if isinstance(message, str)]
    return {message: gettext(message) for message in used if gettext(message) != message}


def _by_number() -> dict[str, Forms]:
    """Each sentence that depends on a number, by the plural category of Unicode's CLDR."""
    used = [message for message in used_by_scripts() if not isinstance(message, str)]
    forms = {one: _forms(one, many) for one, many in used}
    return {one: forms[one] for one, many in used if not {*forms[one].values()} <= {one, many}}


def _forms(one: str, many: str) -> Forms:
    """A browser names the category of a number, and gettext has a form for it."""
    category = locale_spoken().plural_form
    found: Forms = {}
    for number in range(MOST + 1):
        found.setdefault(category(number), ngettext(one, many, number))
    return found


@cache
def used_by_scripts() -> tuple[str | tuple[str, str], ...]:
    """The sentences in the scripts, in pairs where they depend on a number."""
    return tuple(_used())


def _used() -> Iterator[str | tuple[str, str]]:
    for script in sorted(SCRIPTS.glob("*.js")):
        found = extract("javascript", BytesIO(script.read_bytes()), KEYWORDS)
        for _line, message, _comments, _context in found:
            yield message if isinstance(message, str) else (message[0], message[1])


def _written(value: object) -> str:
    return json.dumps(value, ensure_ascii=False)

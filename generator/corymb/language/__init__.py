"""In which language does the program speak, and how does a sentence get into it?

English is the language that the code is written in. A word that a page, a paper or a report shows
goes through `gettext` where it is put together, `_("Cut on {day}").format(day=...)`, or through
`{% trans %}` and `_()` in a template; `ngettext` chooses by number. Whatever stands around that
says nothing of languages: `in_language` is entered once, by who builds a site or prints a report.

What a studio writes itself stays as it is written. What is said of a mistake in its files stands
beside its own lines and English keys, and is English.
"""

from corymb.language.messages import LANGUAGES
from corymb.language.speaking import gettext, in_language, ngettext, noted, pgettext, spoken

__all__ = ["LANGUAGES", "gettext", "in_language", "ngettext", "noted", "pgettext", "spoken"]

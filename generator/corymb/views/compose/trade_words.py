"""How are the fixed words of the studio's files said to a reader?

In the files, in filters and in the names of styles they stay what they are, `focal`; on a page they
are a word of the reader's language. One that means two things has its kind beside it for the
translator: the role `light`, the scent `light`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.trade.form_words import form_words


def trade_word(kind: str, word: str) -> str:
    """A word of a kind, `trade_word("use", "focal")`; one that isn't fixed as it is written."""
    return KINDS[kind]().get(word, word)


def size_words(name: str) -> str:
    """A size by the name that the studio gave it; `regular` is everyone's."""
    return trade_word("size", name).replace("-", " ")


def _roles() -> Mapping[str, str]:
    return {
        "depth": pgettext("role", "depth"),
        "light": pgettext("role", "light"),
        "accent": pgettext("role", "accent"),
    }


def _uses() -> Mapping[str, str]:
    return {
        "line": pgettext("use", "line"),
        "focal": pgettext("use", "focal"),
        "filler": pgettext("use", "filler"),
        "foliage": pgettext("use", "foliage"),
    }


def _colours() -> Mapping[str, str]:
    return {
        "white": pgettext("colour", "white"),
        "cream": pgettext("colour", "cream"),
        "yellow": pgettext("colour", "yellow"),
        "orange": pgettext("colour", "orange"),
        "red": pgettext("colour", "red"),
        "pink": pgettext("colour", "pink"),
        "plum": pgettext("colour", "plum"),
        "purple": pgettext("colour", "purple"),
        "blue": pgettext("colour", "blue"),
        "green": pgettext("colour", "green"),
        "grey": pgettext("colour", "grey"),
        "brown": pgettext("colour", "brown"),
    }


def _scents() -> Mapping[str, str]:
    return {
        "none": pgettext("scent", "none"),
        "light": pgettext("scent", "light"),
        "strong": pgettext("scent", "strong"),
    }


def _levels() -> Mapping[str, str]:
    return {
        "easy": pgettext("level", "easy"),
        "steady": pgettext("level", "steady"),
        "skilled": pgettext("level", "skilled"),
    }


def _hazards() -> Mapping[str, str]:
    return {
        "poisonous if eaten": _("poisonous if eaten"),
        "irritant sap": _("irritant sap"),
        "irritant hairs": _("irritant hairs"),
        "irritant dust": _("irritant dust"),
        "burns in sun": _("burns in sun"),
        "eye irritant": _("eye irritant"),
        "thorns": _("thorns"),
        "skin allergy": _("skin allergy"),
        "poisonous to pets": _("poisonous to pets"),
        "deadly to cats": _("deadly to cats"),
        "heart poison": _("heart poison"),
        "heavy pollen": _("heavy pollen"),
    }


def _vessels() -> Mapping[str, str]:
    return {
        "hand": pgettext("vessel", "hand"),
        "jar": pgettext("vessel", "jar"),
        "bowl": pgettext("vessel", "bowl"),
        "urn": pgettext("vessel", "urn"),
        "ring": pgettext("vessel", "ring"),
        "wire": pgettext("vessel", "wire"),
        "trough": pgettext("vessel", "trough"),
        "vase": pgettext("vessel", "vase"),
    }


def _settings() -> Mapping[str, str]:
    return {
        "indoors": _("indoors"),
        "outdoors": _("outdoors"),
        "under canvas": _("under canvas"),
    }


def _lights() -> Mapping[str, str]:
    return {
        "daylight": pgettext("light", "daylight"),
        "noon": pgettext("light", "noon"),
        "low sun": pgettext("light", "low sun"),
        "candle": pgettext("light", "candle"),
        "warm lamps": pgettext("light", "warm lamps"),
        "cool lamps": pgettext("light", "cool lamps"),
    }


def _handovers() -> Mapping[str, str]:
    return {"collection": _("collection"), "delivery": _("delivery")}


def _makings() -> Mapping[str, str]:
    return {"made up": _("made up"), "in buckets": _("in buckets")}


def _sizes() -> Mapping[str, str]:
    """The one size that every recipe has; the others are named by the studio."""
    return {"regular": pgettext("size", "regular")}


def _sureness() -> Mapping[str, str]:
    return {
        "sure": pgettext("sureness", "sure"),
        "likely": pgettext("sureness", "likely"),
        "touch and go": pgettext("sureness", "touch and go"),
        "not then": pgettext("sureness", "not then"),
    }


def _changes() -> Mapping[str, str]:
    return {
        "added": pgettext("change", "added"),
        "dropped": pgettext("change", "dropped"),
        "more": pgettext("change", "more"),
        "fewer": pgettext("change", "fewer"),
    }


KINDS: Mapping[str, Callable[[], Mapping[str, str]]] = {
    "role": _roles,
    "use": _uses,
    "colour": _colours,
    "scent": _scents,
    "level": _levels,
    "hazard": _hazards,
    "form": form_words,
    "vessel": _vessels,
    "setting": _settings,
    "light": _lights,
    "handover": _handovers,
    "making": _makings,
    "size": _sizes,
    "sureness": _sureness,
    "change": _changes,
}

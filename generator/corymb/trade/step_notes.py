"""Does a step speak of a plant that isn't in this variant, and what is there instead?

A step is read as a helper reads it: `the mint` is Apple mint, `roses` are Garden rose, `dogwood`
is Dogwood stems, unless another plant that is still there goes by the same word.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from corymb.language import gettext as _
from corymb.language.locales import and_list

PARTS = {"stems", "heads", "pods", "berries", "moons", "catkins", "hips", "blossom"}
"""What is cut of a plant: a name goes without it too."""

VAGUE = {"bell", "box", "bush", "flax", "orange", "seal", "tail", "william"}
"""Words that end a plant's name and mean something else at a bench, or nothing alone."""

Phrase = tuple[str, ...]


@dataclass(frozen=True)
class Gone:
    """A plant that a step was written for and that isn't there, and what came in its place."""

    plant: str
    instead: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        """One short sentence, the same for one plant and for many."""
        if self.instead:
            told = _("{instead} in place of {plant}.")
            return told.format(instead=and_list(self.instead), plant=self.plant)
        return _("No {plant} here.").format(plant=self.plant)


def step_note(step: str, gone: Sequence[Gone], here: Iterable[str]) -> str:
    """What to say below a step about the plants it names; empty when all of them are there."""
    return " ".join(one.words for one in named(step, gone, here))


def is_all_gone(text: str, gone: Sequence[Gone], here: Iterable[str]) -> bool:
    """Whether every sentence of a text speaks of plants that aren't there, and of no other."""
    return bool(text.strip()) and not without_gone(text, gone, here)


def without_gone(text: str, gone: Sequence[Gone], here: Iterable[str]) -> str:
    """A text less its sentences that speak of plants that aren't there, and of no other."""
    here = list(here)
    sentences = [part for part in re.split(r"(?<=[.!?])\s+", text.strip()) if part]
    return " ".join(
        sentence
        for sentence in sentences
        if not named(sentence, gone, here) or _names_any(sentence, here)
    )


def named(step: str, gone: Sequence[Gone], here: Iterable[str]) -> list[Gone]:
    """The plants gone that a step names."""
    here = list(here)
    words = _words(step)
    for plant in here:
        words = _without(words, _words(plant))
    kept = [phrase for plant in here for phrase in short_names(plant)]
    return [one for one in gone if any(_has(words, p) for p in _names(one.plant, kept))]


def plants_named(step: str, here: Iterable[str]) -> tuple[str, ...]:
    """The plants here that a step names, by their whole names or by shorter ones.

    A shorter name that is another plant's whole name is that plant's: roses aren't rose hips.
    """
    here = list(dict.fromkeys(here))
    words, wholes = _words(step), {plant: _words(plant) for plant in here}
    found = set()
    for plant, whole in sorted(wholes.items(), key=lambda item: -len(item[1])):
        if _has(words, whole):
            found.add(plant)
            words = _without(words, whole)
    for plant in here:
        others = [whole for other, whole in wholes.items() if other != plant]
        shorts = [s for s in short_names(plant) if not any(_same(s, whole) for whole in others)]
        if any(_has(words, short) for short in shorts):
            found.add(plant)
    return tuple(plant for plant in here if plant in found)


def names(step: str, phrase: str) -> bool:
    """Whether a phrase stands in a step, its last word in singular or plural."""
    return _has(_words(step), _words(phrase))


@lru_cache(maxsize=4096)
def short_names(plant: str) -> tuple[Phrase, ...]:
    """What else a plant is called: without the part that is cut, and by its last word."""
    whole = _words(plant)
    bare = whole[:-1] if len(whole) > 1 and whole[-1] in PARTS else whole
    return (bare, bare[-1:]) if bare[-1] not in VAGUE else (bare,)


def _names(plant: str, kept: list[Phrase]) -> list[Phrase]:
    """The whole name, and those shorter ones that no plant still there goes by."""
    others = [short for short in short_names(plant) if not any(_same(short, k) for k in kept)]
    return [_words(plant), *others]


def _names_any(sentence: str, plants: Iterable[str]) -> bool:
    words = _words(sentence)
    return any(_has(words, phrase) for plant in plants for phrase in short_names(plant))


@lru_cache(maxsize=4096)
def _words(text: str) -> Phrase:
    return tuple(re.findall(r"[\w'-]+", text.casefold().replace("’", "'")))


def _has(words: Phrase, phrase: Phrase) -> bool:
    return _place(words, phrase) is not None


def _without(words: Phrase, phrase: Phrase) -> Phrase:
    """The words without a phrase; a gap is left, so that what is beside it doesn't join."""
    while (at := _place(words, phrase)) is not None:
        words = (*words[:at], "", *words[at + len(phrase) :])
    return words


def _place(words: Phrase, phrase: Phrase) -> int | None:
    """Where a phrase first stands, by where its last word does."""
    before, by_form = phrase[:-1], _by_form(words)
    ends = [end for form in _forms(phrase[-1]) for end in by_form.get(form, ())]
    size = len(before)
    return min(
        (e - size for e in ends if e >= size and words[e - size : e] == before), default=None
    )


@lru_cache(maxsize=4096)
def _by_form(words: Phrase) -> dict[str, list[int]]:
    """Where each word stands, by all that it may be the plural of."""
    places: dict[str, list[int]] = {}
    for at, word in enumerate(words):
        for form in _forms(word):
            places.setdefault(form, []).append(at)
    return places


def _same(some: Phrase, others: Phrase) -> bool:
    """Whether two phrases are one, their last words in singular or plural."""
    if len(some) != len(others) or some[:-1] != others[:-1]:
        return False
    return some[-1] == others[-1] or not _forms(some[-1]).isdisjoint(_forms(others[-1]))


@lru_cache(maxsize=4096)
def _forms(word: str) -> frozenset[str]:
    """A word and what it may be the plural of."""
    forms = {word}
    if len(word) > 3 and word.endswith("ies"):
        forms.add(f"{word[:-3]}y")
    if len(word) > 4 and word.endswith(("ses", "xes", "zes", "ches", "shes")):
        forms.add(word[:-2])
    if len(word) > 3 and word.endswith("s") and not word.endswith("ss"):
        forms.add(word[:-1])
    return frozenset(forms)

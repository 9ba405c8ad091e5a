"""How many of a stem for so many of a piece?

About: the stem, and how many pieces. Choices: numbers; the wrong ones are slips one makes: a piece
too many or too few, one stem more in each, or added where it should be multiplied.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.trade.questions.question import Known, Question, dealt, in_numbers, put

KIND = "how many"
PIECES = ("6", "8", "9", "12", "15")


def questions(known: Known) -> Iterator[Question]:
    """One for each recipe."""
    for recipe in known.looks:
        seed = f"{KIND} {recipe}"
        pieces = int(dealt(PIECES, seed)[0])
        for stem in dealt({line.stem for line in known.own(recipe).lines}, seed)[:1]:
            each = in_one(known, recipe, stem)
            wrong = dealt(map(str, _slips(each, pieces)), seed)
            about = (stem, str(pieces))
            style = known.recipes[recipe].style
            yield from in_numbers(put(KIND, style, recipe, about, str(each * pieces), wrong))


def in_one(known: Known, recipe: str, stem: str) -> int:
    """How many go into one piece of the regular size, on whatever lines."""
    return sum(line.count for line in known.own(recipe).lines if line.stem == stem)


def _slips(each: int, pieces: int) -> set[int]:
    near = {each * (pieces - 1), each * (pieces + 1), (each + 1) * pieces, each + pieces}
    return near - {each * pieces}

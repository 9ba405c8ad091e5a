"""Which of these would stand in for a stem of this recipe?

About: the stem, and the role it plays. Choices: stems of the same use, of which one may stand in
for it (the best that may) and each of the others breaks a limit of swaps. The season isn't asked.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from corymb.trade.changes import LookLine
from corymb.trade.questions.question import MOST, Known, Question, dealt, put
from corymb.trade.swaps.beside import Pair, facts_of
from corymb.trade.swaps.limits import limits_broken

KIND = "stands in"


def questions(known: Known) -> Iterator[Question]:
    """One for each recipe with a stem that something may stand in for."""
    for recipe in known.looks:
        lines = {str(i): line for i, line in enumerate(known.own(recipe).lines)}
        order = (lines[i] for i in dealt(lines, f"{KIND} {recipe}"))
        asked = (each for line in order for each in _of_line(known, recipe, line))
        yield from islice(asked, 1)


def _of_line(known: Known, recipe: str, line: LookLine) -> Iterator[Question]:
    style_id = known.recipes[recipe].style
    style, lines = known.styles[style_id], known.own(recipe).lines
    ranked = () if line.essential else known.stand_ins.beside(line, lines, style)
    if not ranked:
        return
    right, seed = ranked[0].in_, f"{KIND} {recipe} {line.stem}"
    others = dealt(_of_use(known, line, right), seed)
    far = islice((each for each in others if why_not(known, recipe, line, each)), 2 * MOST)
    wrong = known.apart(right, far)
    yield from put(KIND, style_id, recipe, (line.stem, line.role), right, wrong)


def _of_use(known: Known, line: LookLine, right: str) -> Iterator[str]:
    use = line.use or known.stems[line.stem].use
    for each, stem in known.stems.items():
        if stem.use == use and each not in (line.stem, right):
            yield each


def why_not(known: Known, recipe: str, line: LookLine, stem: str) -> tuple[str, ...]:
    """The limits that keep a stem from standing in, in words of `limits`; none where it may."""
    style = known.styles[known.recipes[recipe].style]
    out, coming = (facts_of(each, known.stems[each]) for each in (line.stem, stem))
    return limits_broken(Pair(out, coming), line, style, known.limits)

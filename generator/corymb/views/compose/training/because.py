"""Why is the right answer right, and what is it with the others?"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list
from corymb.trade.questions import Known, Question, left_out, stands_in
from corymb.trade.questions.how_many import in_one
from corymb.trade.swaps.reasons import reasons
from corymb.trade.training.lessons import all_needed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench
from corymb.views.compose.seasons import weeks_words
from corymb.views.compose.trade_words import trade_word
from corymb.views.compose.training.asked import recipe_name, stem_name, style_name
from corymb.views.compose.wording import sentence

Reasons = Iterator[str]
Give = Callable[[Catalogue, Known, Question], Reasons]


def because(catalogue: Catalogue, known: Known, question: Question) -> tuple[str, ...]:
    """The reasons, a sentence each."""
    return tuple(BECAUSE[question.kind](catalogue, known, question))


def _which_role(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    by_role: dict[str, list[str]] = {}
    for line in known.own(question.recipe).lines:
        if line.stem in question.choices:
            by_role.setdefault(line.role, []).append(catalogue.stem(line.stem).name)
    for role, names in sorted(by_role.items(), key=lambda part: part[0] != question.about[0]):
        # L10N: a colour part and the stems that play it: ‘depth: Scabious, plum; Burnet, wine’.
        told = _("{role}: {stems}.")
        yield sentence(told.format(role=trade_word("role", role), stems="; ".join(names)))


def _how_many(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    each, pieces = in_one(known, question.recipe, question.about[0]), int(question.about[1])
    told = ngettext(
        "{number} goes into one: {number} times {pieces} is {all}.",
        "{number} go into one: {number} times {pieces} is {all}.",
        each,
    )
    yield told.format(number=each, pieces=pieces, all=each * pieces)
    yield _("What is cut to spare comes on top, and the cut list says how much.")


def _to_a_bucket(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    number = catalogue.stem(question.about[0]).stems_per_bucket
    told = ngettext(
        "{stem} has a bucket for each stem.",
        "{stem} stands {number} to a bucket; with more the heads crowd each other.",
        number,
    )
    yield told.format(stem=stem_name(catalogue, question), number=number)


def _out_of_season(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    told = _("{stem} can be cut here {when}, and not now.")
    season = weeks_words(known.beds.season(question.answer))
    yield told.format(stem=catalogue.stem(question.answer).name, when=season)
    yield _("The others stand: {stems}.").format(stems=_names(catalogue, question.wrong))


def _stands_in(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    stem, role = question.about
    lines = known.own(question.recipe).lines
    line = next(each for each in lines if (each.stem, each.role) == (stem, role))
    style = known.styles[question.style]
    best = next(
        each for each in known.stand_ins.beside(line, lines, style) if each.in_ == question.answer
    )
    why = "; ".join(reasons(best, known.stems))
    yield sentence(_said(catalogue.stem(question.answer).name, why))
    for other in question.wrong:
        broken = stands_in.why_not(known, question.recipe, line, other)
        yield sentence(_said(catalogue.stem(other).name, "; ".join(_(each) for each in broken)))


def _lesson_for(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    asked = [each for each in known.recipes[question.recipe].techniques if each in known.lessons]
    told = _("{recipe} asks for {lessons}; the others teach what it doesn’t need.")
    lessons = and_list(known.lessons[each].title for each in asked)
    yield told.format(recipe=recipe_name(catalogue, question), lessons=lessons)


def _lesson_first(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    first = known.lessons[question.answer].title
    direct = [each for each in question.wrong if question.answer in known.lessons[each].needs]
    later = [each for each in question.wrong if each not in direct]
    if direct:
        names = and_list(known.lessons[each].title for each in direct)
        yield _("{lessons} builds on {first}.").format(lessons=names, first=first)
    for each in later:
        between = [
            one
            for one in known.lessons
            if one in all_needed(known.lessons, each)
            and question.answer in all_needed(known.lessons, one)
        ]
        way = and_list(known.lessons[one].title for one in between)
        told = _("{lesson} builds on {between}, and so on {first} in the end.")
        yield told.format(lesson=known.lessons[each].title, between=way, first=first)


def _left_out(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    hazards = left_out.left_out(known, question.style, question.answer)
    stem = catalogue.stem(question.answer)
    yield from at_the_bench([stem])
    told = _("{styles} leave it out for that: {hazards}.")
    words = ", ".join(trade_word("hazard", each) for each in hazards)
    yield told.format(styles=style_name(catalogue, question), hazards=words)
    yield _not_therefore_safe()


def _gloves(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    yield from at_the_bench([catalogue.stem(question.answer)])
    others = [catalogue.stem(each) for each in question.wrong]
    yield from at_the_bench(others)
    yield _("Where you are unsure put gloves on, whatever the sheet says.")


def _not_therefore_safe() -> str:
    return _(
        "The others may go in by the house’s rules. That doesn’t make them safe to eat: nothing "
        "here is."
    )


def _not_known(catalogue: Catalogue, known: Known, question: Question) -> Reasons:
    told = _("Where nothing is written of {stem}, nobody has looked it up, or nobody knows.")
    yield told.format(stem=stem_name(catalogue, question))
    yield _("Not known is never safe. Gloves, clean hands, and a qualified person’s word.")


def _said(name: str, words: str) -> str:
    # L10N: a name and what is said of it.
    return _("{name}: {words}").format(name=name, words=words)


def _names(catalogue: Catalogue, stems: tuple[str, ...]) -> str:
    return "; ".join(catalogue.stem(each).name for each in stems)


BECAUSE: Mapping[str, Give] = {
    "which role": _which_role,
    "how many": _how_many,
    "to a bucket": _to_a_bucket,
    "out of season": _out_of_season,
    "stands in": _stands_in,
    "lesson for": _lesson_for,
    "left out": _left_out,
    "gloves": _gloves,
    "not known": _not_known,
    "lesson first": _lesson_first,
}

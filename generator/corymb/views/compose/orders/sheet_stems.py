"""How are the stems of a bench sheet told: by role, for one piece and all, with what stands in?"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from corymb.language import gettext as _
from corymb.language import noted, pgettext
from corymb.trade.cut import Fill
from corymb.trade.load.buckets import Filled as Bucket
from corymb.trade.orders.as_cut import Met
from corymb.trade.orders.as_made import as_made
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import DueLine
from corymb.trade.written_for import stages_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.look_words import Words
from corymb.views.compose.orders.numbered import bucket_numbers
from corymb.views.compose.wording import number, sentence
from corymb.views.papers import RoleStems, SheetStem

ROLES = ("depth", "light", "accent")
FROM_THE_MIX = noted("Cut them too, or let the other pieces go without.")
ESSENTIAL = noted("Always in it, so buy it in or ring the client.")
LIGHTER = noted("Make it lighter, or buy it in.")


def words_as_made(catalogue: Catalogue, line: DueLine, mets: Sequence[Met]) -> Words:
    """The look's words, with notes where a step names what isn't there."""
    look = line.piece.look
    recipes = catalogue.studio.recipes
    stages = stages_of(recipes[look.recipe], look.variant, recipes)
    return Words(catalogue.studio, (*stages, *as_made(mets)))


def sundry_words(catalogue: Catalogue, line: DueLine) -> Iterator[str]:
    """What goes into all pieces of a line beside stems."""
    for sundry in line.piece.recipe.sundries:
        amount = number(sundry.count * line.quantity, catalogue.studio.house)
        yield f"{amount} {sundry.unit or '×'} {sundry.name}"


def standing_in(stem: str, buckets: Sequence[Bucket]) -> str:
    """The buckets of an order that hold a stem, by label: `tall bucket 1, 28 to 93; crate 9`."""
    numbers: dict[str, list[int]] = {}
    for place, bucket in enumerate(buckets, 1):
        if any(part.lot.stem == stem for part in bucket.parts):
            numbers.setdefault(bucket.kind.name, []).append(place)
    return "; ".join(f"{kind} {bucket_numbers(found)}" for kind, found in numbers.items())


def role_stems(
    catalogue: Catalogue, mets: Sequence[Met], pieces: int, buckets: Sequence[Bucket]
) -> tuple[RoleStems, ...]:
    """The stems of each role, in the order of the recipe."""
    found = []
    for role in ROLES:
        of_role = [met for met in mets if met.line.role == role]
        stems = tuple(
            _stem(catalogue, met, fill, pieces, buckets) for met in of_role for fill in met.fills
        )
        total = sum(stem.all for stem in stems)
        if stems:
            found.append(RoleStems(role, stems, share(total, pieces), total))
    return tuple(found)


def share(count: int, pieces: int) -> str:
    """How many go into one piece: `5`, or `4 or 5` where it doesn't come out even."""
    least, over = divmod(count, pieces)
    if not over:
        return f"{least}"
    return pgettext("stems", "{number} or {more}").format(number=least, more=least + 1)


def swap_words(catalogue: Catalogue, mets: Sequence[Met], day: CutDay) -> Iterator[str]:
    """Each stand-in with why it is there and why this one."""
    standing = {each.stem: each.standing for each in day.problem.standing}
    for met in mets:
        going = catalogue.stem(met.line.stem).name
        for fill in met.stand_ins:
            coming = catalogue.stem(fill.stem).name
            told = _("{number} {stem} in place of {of} {other}: none of it stands then.")
            if standing.get(met.line.stem):
                told = _("{number} {stem} in place of {of} {other}: too few of it stand then.")
            words = told.format(number=fill.count, stem=coming, of=fill.of, other=going)
            yield " ".join([words, *([sentence("; ".join(fill.why))] if fill.why else [])])


def missing_words(catalogue: Catalogue, mets: Sequence[Met], mixed: bool) -> Iterator[str]:
    """What is missing, and what can be done: a sentence for all that is mended alike."""
    short: dict[str, list[str]] = {}
    for met in mets:
        if met.short:
            mends = FROM_THE_MIX if mixed else ESSENTIAL if met.line.essential else LIGHTER
            short.setdefault(mends, []).append(f"{met.short} {catalogue.stem(met.line.stem).name}")
    for mends, names in short.items():
        yield f"{'; '.join(names)}. {_(mends)}"


def _stem(
    catalogue: Catalogue, met: Met, fill: Fill, pieces: int, buckets: Sequence[Bucket]
) -> SheetStem:
    stem, line = catalogue.stem(fill.stem), met.line
    own = fill.stem == line.stem
    instead = _("in place of {number} {stem}").format(
        number=share(fill.of, pieces), stem=catalogue.stem(line.stem).name
    )
    return SheetStem(
        name=stem.name,
        hex=stem.main_colour.hex,
        role=line.role,
        use=line.use or stem.use,
        each=share(fill.count, pieces),
        all=fill.count,
        note=line.note if own else instead,
        key=f"{line.role} {fill.stem} for {line.stem}",
        stands=standing_in(fill.stem, buckets),
    )

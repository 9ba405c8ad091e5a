"""A look made step by step: what to fetch, then step after step, then how it should look."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from corymb.language import gettext as _
from corymb.studio.words import ROLES
from corymb.trade.changes import LookLine
from corymb.trade.load.kinds import bucket_for
from corymb.trade.looks import Look, name_of
from corymb.trade.orders.gets import bucket_kinds
from corymb.trade.questions.gloves import wants_gloves
from corymb.trade.step_notes import plants_named
from corymb.trade.training.step_stems import stems_in
from corymb.views.compose import addresses
from corymb.views.compose.bench import bench_lessons, bench_sundries
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench, plant_of
from corymb.views.compose.images import picture_view
from corymb.views.compose.look_words import Words
from corymb.views.compose.plan import plan_key, plan_view
from corymb.views.compose.training.expected import expected_view
from corymb.views.pieces import Link
from corymb.views.recipe import StepView
from corymb.views.training import PracticeRole, PracticeStem, PracticeStep, PracticeView


def practice_view(catalogue: Catalogue, look: Look) -> PracticeView:
    """The page of a look at the bench, one step at a time."""
    recipe = catalogue.studio.recipes[look.recipe]
    words = Words.of(catalogue.studio, look)
    stems = [catalogue.stem(line.stem) for line in look.lines]
    gloved = filter(wants_gloves, stems)
    return PracticeView(
        id=look.id,
        recipe_id=recipe.id,
        name=name_of(recipe, look.variant),
        look=Link(name_of(recipe, look.variant), addresses.of_look(look)),
        picture=picture_view(catalogue, look),
        plan=plan_view(catalogue, look),
        key=plan_key(catalogue, look),
        vessel=recipe.vessel.name,
        stems_total=look.stems_total,
        roles=_roles(catalogue, look),
        besides=bench_sundries(catalogue, recipe),
        gloves=tuple(dict.fromkeys(plant_of(stem) for stem in gloved)),
        lessons=bench_lessons(catalogue, recipe.techniques),
        careful=tuple(dict.fromkeys([*words.cautions(), *at_the_bench(stems)])),
        steps=tuple(_steps(catalogue, look, words)),
        looks_right=tuple(_one_line(sign) for sign in words.steps("looks_right_when")),
        expected=expected_view(catalogue, look),
    )


def _roles(catalogue: Catalogue, look: Look) -> tuple[PracticeRole, ...]:
    found = []
    for role in ROLES:
        lines = [line for line in look.lines if line.role == role]
        stems = tuple(_stem(catalogue, look, line) for line in lines)
        if stems:
            found.append(PracticeRole(role, sum(line.count for line in lines), stems))
    return tuple(found)


def _stem(catalogue: Catalogue, look: Look, line: LookLine) -> PracticeStem:
    stem = catalogue.stem(line.stem)
    numbers = [str(each.number) for each in plan_key(catalogue, look) if each.name == stem.name]
    return PracticeStem(
        name=stem.name,
        href=addresses.of_stem(line.stem),
        hex=stem.main_colour.hex,
        count=line.count,
        use=line.use or stem.use,
        bucket=_bucket(catalogue, line),
        note=line.note,
        number=", ".join(numbers),
    )


def _bucket(catalogue: Catalogue, line: LookLine) -> str:
    """`tall bucket, 25 to one`; nothing for a studio that has written down no buckets."""
    kinds = bucket_kinds(catalogue.studio.house)
    if not kinds:
        return ""
    stem = catalogue.stem(line.stem)
    kind, _stands = bucket_for(stem.length.shortest_cm, stem.length.longest_cm, kinds)
    # L10N: which bucket a stem stands in, and how many of it one holds: tall bucket, 25 to one.
    told = _("{bucket}, {number} to one")
    return told.format(bucket=kind.name, number=stem.stems_per_bucket)


def _steps(catalogue: Catalogue, look: Look, words: Words) -> Iterator[PracticeStep]:
    names = {line.stem: catalogue.stem(line.stem).name for line in look.lines}
    cautions = words.cautions()
    for number, step in enumerate(words.steps("method"), 1):
        named = stems_in(f"{step.text} {step.note}", names)
        lines = [line for line in look.lines if line.stem in named]
        yield PracticeStep(
            number=number,
            text=step.text,
            note=step.note,
            stems=tuple(_stem(catalogue, look, line) for line in lines),
            careful=_careful(catalogue, named, cautions),
        )


def _careful(
    catalogue: Catalogue, named: Sequence[str], cautions: Sequence[str]
) -> tuple[str, ...]:
    """What is written of a plant that the step names, and what its hazards ask for."""
    stems = [catalogue.stem(each) for each in named]
    plants = [plant_of(stem) for stem in stems]
    own = [caution for caution in cautions if plants_named(caution, plants)]
    return tuple(dict.fromkeys([*own, *at_the_bench(stems)]))


def _one_line(sign: StepView) -> str:
    return f"{sign.text} {sign.note}".strip()

"""What whoever makes it is told: a word about a stem, and what to do the night before."""

from __future__ import annotations

from collections import defaultdict
from datetime import date

from corymb.studio.load import read_studio
from corymb.studio.models import Stem
from corymb.studio.models.stem import Conditioning
from corymb.views.compose.bench import conditioning
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.recipes import recipe_view
from corymb.views.pieces import Audience
from corymb.views.recipe import ClientRecipe, StaffRecipe
from tests import conftest


def stem(name: str, hours: int, do: str) -> Stem:
    treatment = Conditioning.model_construct(hours=hours, do=do)
    return Stem.model_construct(name=name, conditioning=treatment)


def test_stems_that_are_treated_alike_are_told_together() -> None:
    stems = [
        stem("Cosmos, white", 6, "Strip, stand deep."),
        stem("Mint", 8, "Strip, stand deep."),
        stem("Scabious, plum", 6, "Strip, stand deep."),
        stem("Cosmos, white", 6, "Strip, stand deep."),
        stem("Dried wheat", 0, "Keep it dry."),
    ]
    assert conditioning(stems) == (
        "Cosmos, white; Scabious, plum: Strip, stand deep. (6 h)",
        "Mint: Strip, stand deep. (8 h)",
        "Dried wheat: Keep it dry.",
    )


def jar_for(audience: Audience, variant: str = "") -> ClientRecipe:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio
    pictures: dict[str, Drawing] = defaultdict(lambda: Drawing("picture.svg", 1200, 1400))
    catalogue = Catalogue(studio, audience, date(2026, 9, 16), drawings=pictures)
    return recipe_view(catalogue, catalogue.looks["hedgerow-jar"][variant])


def test_a_word_about_a_stem_is_for_whoever_makes_it_and_not_for_clients() -> None:
    bench = jar_for("staff")
    assert isinstance(bench, StaffRecipe)
    notes = {line.name: line.note for line in bench.lines if line.note}
    assert notes == {"Crocosmia, ember": "the two tallest, leaning apart"}
    assert not [line for line in jar_for("clients").lines if "note" in vars(line)]


def test_a_variants_sheet_says_which_plants_its_steps_name_in_vain() -> None:
    later = jar_for("staff", "later")
    assert isinstance(later, StaffRecipe)
    assert [(place, step.note) for place, step in enumerate(later.bench.method) if step.note] == [
        (3, "Tall verbena in place of Marjoram."),
        (4, "Zinnia in place of Crocosmia."),
    ]
    assert later.bench.looks_right[-1].note == "Zinnia in place of Crocosmia."


def test_a_recipes_own_sheet_needs_no_such_note() -> None:
    own = jar_for("staff")
    assert isinstance(own, StaffRecipe)
    assert not [step for step in (*own.bench.method, *own.bench.looks_right) if step.note]

"""What someone is told to be careful of: every hazard, and whose it is."""

from __future__ import annotations

import pytest

from corymb.studio.models import Stem
from corymb.studio.words import HAZARDS
from corymb.views.compose.hazards import AT_HOME, AT_THE_BENCH, at_the_bench, take_home


def stem(name: str, *hazards: str, caution: str = "") -> Stem:
    return Stem.model_construct(name=name, hazards=list(hazards), caution=caution)


MINT = stem("Apple mint", "poisonous to pets")
MARJORAM = stem("Marjoram, mauve", "poisonous to pets", caution="A herb, but not for cats.")
WHITE = stem("Marjoram, white", caution="A herb, but not for cats.")
ROSE = stem("Rose, blush", "thorns")
DAISY = stem("Daisy")
BURNS = "Dry stems burn fast, so no flame near them."
FIR = stem("Silver fir", caution=f"Resin sticks. {BURNS}")
WHEAT = stem("Wheat", caution=f"{BURNS} Gloves on.")
DILL = stem("Dill", caution="The sap burns. Gloves on.")
SPURGE = stem("Spurge", "poisonous if eaten", "poisonous to pets")
FOXGLOVE = stem("Foxglove", "heart poison", "poisonous if eaten", "poisonous to pets")


@pytest.mark.parametrize(
    ("stems", "told"),
    [
        pytest.param([DAISY], (), id="nothing to say"),
        pytest.param([ROSE, DAISY], ("Has thorns: Rose.",), id="one hazard"),
        pytest.param(
            [MINT, MARJORAM, WHITE, DAISY],
            (
                "Can make pets ill if chewed: keep Apple mint and Marjoram out of their reach.",
                "Marjoram: A herb, but not for cats.",
            ),
            id="a sentence of two colours of one plant is said once, and whose it is",
        ),
        pytest.param(
            [FIR, WHEAT, DILL],
            (
                "Silver fir: Resin sticks.",
                f"Silver fir and Wheat: {BURNS}",
                "Wheat: Gloves on.",
                "Dill: The sap burns. Gloves on.",
            ),
            id="a sentence that two plants share is said once, a word or two stay where they are",
        ),
        pytest.param(
            [MINT, SPURGE, FOXGLOVE],
            (
                "Poisonous if eaten: keep Spurge away from food, children and pets.",
                "Poisonous, to the heart: keep Foxglove away from food, children and pets.",
                "Can make pets ill if chewed: keep Apple mint out of their reach.",
            ),
            id="what a graver hazard says already is not said again",
        ),
        pytest.param([FIR], (f"Resin sticks. {BURNS}",), id="alone it stays as it was written"),
        pytest.param([WHITE], ("A herb, but not for cats.",), id="alone there is no doubt whose"),
    ],
)
def test_whoever_takes_flowers_home_is_told(stems: list[Stem], told: tuple[str, ...]) -> None:
    assert take_home(stems) == told


# A plant's name keeps its capitals in the middle of a sentence, and has none put in.
POPPY, NAMED = "Iceland poppy", "Sweet William"
TOLD = {
    "poisonous if eaten": (
        "Poisonous if eaten: keep Iceland poppy and Sweet William away from food, children and "
        "pets.",
        "Iceland poppy and Sweet William: poisonous if eaten. Wash hands; nothing near food or "
        "pets.",
    ),
    "heart poison": (
        "Poisonous, to the heart: keep Iceland poppy and Sweet William away from food, children "
        "and pets.",
        "Iceland poppy and Sweet William: poison to the heart. Gloves; wash hands; nothing near "
        "food or pets.",
    ),
    "poisonous to pets": (
        "Can make pets ill if chewed: keep Iceland poppy and Sweet William out of their reach.",
        "Iceland poppy and Sweet William: keep trimmings away from pets.",
    ),
    "deadly to cats": (
        "Deadly to cats, pollen and vase water too: no Iceland poppy and Sweet William where a "
        "cat lives.",
        "Iceland poppy and Sweet William: deadly to cats. Tell the client; take the pollen out "
        "over paper.",
    ),
    "irritant sap": (
        "The sap can irritate skin: wash hands after handling Iceland poppy and Sweet William.",
        "Iceland poppy and Sweet William: the sap irritates skin. Gloves and long sleeves.",
    ),
    "irritant hairs": (
        "The hairs can irritate skin and eyes: wash hands after handling Iceland poppy and Sweet "
        "William.",
        "Iceland poppy and Sweet William: the hairs irritate. Gloves; don't rub your eyes.",
    ),
    "irritant dust": (
        "Sheds dust that can irritate eyes and nose: don't shake Iceland poppy and Sweet William "
        "indoors.",
        "Iceland poppy and Sweet William: the dust irritates. Work in moving air.",
    ),
    "eye irritant": (
        "Can irritate eyes: wash hands after Iceland poppy and Sweet William, before you touch "
        "your face.",
        "Iceland poppy and Sweet William: keep sap and hands away from your eyes.",
    ),
    "skin allergy": (
        "Can cause a skin allergy: wear gloves for Iceland poppy and Sweet William, or wash hands "
        "after.",
        "Iceland poppy and Sweet William: can set off a skin allergy. Gloves.",
    ),
    "burns in sun": (
        "Sap on skin can blister in sun: cover up, and wash after handling Iceland poppy and "
        "Sweet William.",
        "Iceland poppy and Sweet William: sap on skin burns in sunlight, even a day later. Gloves "
        "and sleeves.",
    ),
    "heavy pollen": (
        "Sheds pollen that stains and can bother hay fever: Iceland poppy and Sweet William.",
        "Iceland poppy and Sweet William: pick the anthers off before the pollen is loose.",
    ),
    "thorns": (
        "Has thorns: Iceland poppy and Sweet William.",
        "Iceland poppy and Sweet William: strip the thorns with gloves on, away from your body.",
    ),
}


def test_no_hazard_is_kept_from_clients_or_makers() -> None:
    assert set(AT_HOME) == set(AT_THE_BENCH) == set(TOLD) == set(HAZARDS)


@pytest.mark.parametrize("hazard", TOLD)
def test_each_hazard_is_told_at_home_and_at_the_bench(hazard: str) -> None:
    stems = [stem(POPPY, hazard), stem(NAMED, hazard)]
    assert (*take_home(stems), *at_the_bench(stems)) == TOLD[hazard]

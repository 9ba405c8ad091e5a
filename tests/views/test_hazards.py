"""What someone is told to be careful of: every hazard, and whose it is."""

from __future__ import annotations

import pytest

from corymb.studio.models import Stem
from corymb.views.compose.hazards import at_the_bench, take_home


def stem(name: str, *hazards: str, caution: str = "") -> Stem:
    return Stem.model_construct(name=name, hazards=list(hazards), caution=caution)


MINT = stem("Apple mint", "poisonous to pets")
MARJORAM = stem("Marjoram, mauve", "poisonous to pets", caution="A herb, but not for cats.")
WHITE = stem("Marjoram, white", caution="A herb, but not for cats.")
ROSE = stem("Rose, blush", "thorns")
DAISY = stem("Daisy")


@pytest.mark.parametrize(
    ("stems", "told"),
    [
        pytest.param([DAISY], (), id="nothing to say"),
        pytest.param([ROSE, DAISY], ("Has thorns: rose.",), id="one hazard"),
        pytest.param(
            [MINT, MARJORAM, WHITE, DAISY],
            (
                "Can make pets ill if chewed: keep apple mint and marjoram out of their reach.",
                "Marjoram: a herb, but not for cats.",
            ),
            id="a sentence of two colours of one plant is said once, and whose it is",
        ),
        pytest.param([WHITE], ("A herb, but not for cats.",), id="alone there is no doubt whose"),
    ],
)
def test_whoever_takes_flowers_home_is_told(stems: list[Stem], told: tuple[str, ...]) -> None:
    assert take_home(stems) == told


def test_the_maker_is_told_what_to_do_with_thorns() -> None:
    assert at_the_bench([ROSE, DAISY]) == (
        "Rose: strip the thorns with gloves on, away from your body.",
    )

"""What the bench sheet says of the night before."""

from __future__ import annotations

from corymb.studio.models import Stem
from corymb.studio.models.stem import Conditioning
from corymb.views.compose.bench import conditioning


def stem(name: str, hours: int, do: str) -> Stem:
    treatment = Conditioning.model_construct(hours=hours, do=do)
    return Stem.model_construct(name=name, conditioning=treatment)


def test_stems_that_are_treated_alike_are_told_together() -> None:
    stems = [
        stem("Cosmos, white", 6, "Strip, stand deep."),
        stem("Mint", 8, "Strip, stand deep."),
        stem("Scabious, plum", 6, "Strip, stand deep."),
        stem("Cosmos, white", 6, "Strip, stand deep."),
    ]
    assert conditioning(stems) == (
        "Cosmos, white; Scabious, plum: Strip, stand deep. (6 h)",
        "Mint: Strip, stand deep. (8 h)",
    )

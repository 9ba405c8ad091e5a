"""Which cautions go with a stem's hazards: for whoever takes it home, and for the maker?

The sentences are the usual ones of the trade (common practice, no source). The theme shows below
them that local rules, the label and qualified people go before, and where to turn when someone
is hurt. Never medical advice. Plants are named as the studio writes them: nobody can tell by
rule that Iceland poppy keeps its capital and honesty has none.
"""

from __future__ import annotations

from collections.abc import Iterable

from corymb.studio.models import Stem
from corymb.studio.saying import and_list
from corymb.views.compose.wording import sentence

AT_HOME = {
    "poisonous if eaten": "Poisonous if eaten: keep {names} away from food, children and pets.",
    "heart poison": "Poisonous, to the heart: keep {names} away from food, children and pets.",
    "poisonous to pets": "Can make pets ill if chewed: keep {names} out of their reach.",
    "deadly to cats": "Deadly to cats, pollen and vase water too: no {names} where a cat lives.",
    "irritant sap": "The sap can irritate skin: wash hands after handling {names}.",
    "irritant hairs": "The hairs can irritate skin and eyes: wash hands after handling {names}.",
    "irritant dust": "Sheds dust that can irritate eyes and nose: don't shake {names} indoors.",
    "eye irritant": "Can irritate eyes: wash hands after {names}, before you touch your face.",
    "skin allergy": "Can cause a skin allergy: wear gloves for {names}, or wash hands after.",
    "burns in sun": "Sap on skin can blister in sun: cover up, and wash after handling {names}.",
    "heavy pollen": "Sheds pollen that stains and can bother hay fever: {names}.",
    "thorns": "Has thorns: {names}.",
}
AT_THE_BENCH = {
    "poisonous if eaten": "{names}: poisonous if eaten. Wash hands before you eat or drink.",
    "heart poison": "{names}: poison to the heart. Gloves; wash hands; nothing near food.",
    "irritant sap": "{names}: the sap irritates skin. Gloves and long sleeves.",
    "irritant hairs": "{names}: the hairs irritate. Gloves; don't rub your eyes.",
    "irritant dust": "{names}: the dust irritates. Work in moving air.",
    "burns in sun": "{names}: sap on skin burns in sunlight, even a day later. Gloves and sleeves.",
    "eye irritant": "{names}: keep sap and hands away from your eyes.",
    "thorns": "{names}: strip the thorns with gloves on, away from your body.",
    "skin allergy": "{names}: can set off a skin allergy. Gloves.",
    "poisonous to pets": "{names}: keep trimmings away from pets.",
    "deadly to cats": "{names}: deadly to cats. Tell the client; take the pollen out over paper.",
    "heavy pollen": "{names}: pick the anthers off before the pollen is loose.",
}


def take_home(stems: Iterable[Stem]) -> tuple[str, ...]:
    """Cautions for whoever lives with the flowers; empty when there is nothing to say."""
    return _sentences(stems, AT_HOME)


def at_the_bench(stems: Iterable[Stem]) -> tuple[str, ...]:
    """Cautions for whoever cuts and makes; empty when there is nothing to say."""
    return _sentences(stems, AT_THE_BENCH)


def _sentences(stems: Iterable[Stem], words: dict[str, str]) -> tuple[str, ...]:
    stems = list(stems)
    told = [
        _said(text, [stem for stem in stems if hazard in stem.hazards])
        for hazard, text in words.items()
        if any(hazard in stem.hazards for stem in stems)
    ]
    return (*told, *_written(stems))


def _written(stems: list[Stem]) -> tuple[str, ...]:
    """The sentences written for single stems; among several, each says whose it is."""
    sentences = dict.fromkeys(stem.caution for stem in stems if stem.caution)
    if len(stems) == 1:
        return tuple(sentences)
    return tuple(
        _said("{names}: {text}", [stem for stem in stems if stem.caution == text], text)
        for text in sentences
    )


def _said(text: str, stems: list[Stem], own: str = "") -> str:
    names = and_list(dict.fromkeys(plant_of(stem) for stem in stems))
    return sentence(text.format(names=names, text=own))


def plant_of(stem: Stem) -> str:
    """What a stem is without its colour: `Dahlia` for `Dahlia, shell`."""
    return stem.name.partition(",")[0]

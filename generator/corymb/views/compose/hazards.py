"""Which cautions go with a stem's hazards: for whoever takes it home, and for the maker?

The sentences are the usual ones of the trade (common practice, no source). The theme shows below
them that local rules, the label and qualified people go before, and where to turn when someone
is hurt. Never medical advice. Plants are named as the studio writes them: nobody can tell by
rule that Iceland poppy keeps its capital and honesty has none.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import and_list
from corymb.studio.models import Stem
from corymb.views.compose.wording import sentence

AT_HOME = {
    "poisonous if eaten": noted(
        "Poisonous if eaten: keep {names} away from food, children and pets."
    ),
    "heart poison": noted(
        "Poisonous, to the heart: keep {names} away from food, children and pets."
    ),
    "poisonous to pets": noted("Can make pets ill if chewed: keep {names} out of their reach."),
    "deadly to cats": noted(
        "Deadly to cats, pollen and vase water too: no {names} where a cat lives."
    ),
    "irritant sap": noted("The sap can irritate skin: wash hands after handling {names}."),
    "irritant hairs": noted(
        "The hairs can irritate skin and eyes: wash hands after handling {names}."
    ),
    "irritant dust": noted(
        "Sheds dust that can irritate eyes and nose: don't shake {names} indoors."
    ),
    "eye irritant": noted(
        "Can irritate eyes: wash hands after {names}, before you touch your face."
    ),
    "skin allergy": noted(
        "Can cause a skin allergy: wear gloves for {names}, or wash hands after."
    ),
    "burns in sun": noted(
        "Sap on skin can blister in sun: cover up, and wash after handling {names}."
    ),
    "heavy pollen": noted("Sheds pollen that stains and can bother hay fever: {names}."),
    "thorns": noted("Has thorns: {names}."),
}
AT_THE_BENCH = {
    "poisonous if eaten": noted(
        "{names}: poisonous if eaten. Wash hands; nothing near food or pets."
    ),
    "heart poison": noted(
        "{names}: poison to the heart. Gloves; wash hands; nothing near food or pets."
    ),
    "irritant sap": noted("{names}: the sap irritates skin. Gloves and long sleeves."),
    "irritant hairs": noted("{names}: the hairs irritate. Gloves; don't rub your eyes."),
    "irritant dust": noted("{names}: the dust irritates. Work in moving air."),
    "burns in sun": noted(
        "{names}: sap on skin burns in sunlight, even a day later. Gloves and sleeves."
    ),
    "eye irritant": noted("{names}: keep sap and hands away from your eyes."),
    "thorns": noted("{names}: strip the thorns with gloves on, away from your body."),
    "skin allergy": noted("{names}: can set off a skin allergy. Gloves."),
    "poisonous to pets": noted("{names}: keep trimmings away from pets."),
    "deadly to cats": noted(
        "{names}: deadly to cats. Tell the client; take the pollen out over paper."
    ),
    "heavy pollen": noted("{names}: pick the anthers off before the pollen is loose."),
}


GRAVER = {
    "poisonous if eaten": ("heart poison",),
    "poisonous to pets": ("poisonous if eaten", "heart poison"),
}
"""Hazards that need no sentence of their own for a stem that has a graver one, which says it."""

FEW_WORDS = 4  # a sentence of so few (`Gloves on.`) stays with what it belongs to


def take_home(stems: Iterable[Stem], *, written: bool = True) -> tuple[str, ...]:
    """Cautions for whoever lives with the flowers; empty when there is nothing to say.

    With `written` also the sentence in the stem's own file, which may speak to the maker.
    """
    return _sentences(stems, AT_HOME, written=written)


def not_known(warned: bool) -> str:
    """That nobody should take silence for safety."""
    if warned:
        return _("Of the rest it is not known: keep all of it out of reach of pets and children.")
    return _(
        "Whether it can harm a pet or a child that chews it is not known: keep it out of reach."
    )


def at_the_bench(stems: Iterable[Stem]) -> tuple[str, ...]:
    """Cautions for whoever cuts and makes; empty when there is nothing to say."""
    return _sentences(stems, AT_THE_BENCH, written=True)


def _sentences(stems: Iterable[Stem], words: dict[str, str], *, written: bool) -> tuple[str, ...]:
    stems = list(stems)
    by_hazard = {
        hazard: [stem for stem in stems if hazard in stem.hazards and not _covered(stem, hazard)]
        for hazard in words
    }
    told = [_said(_(words[hazard]), having) for hazard, having in by_hazard.items() if having]
    return (*told, *(_written(stems) if written else ()))


def _covered(stem: Stem, hazard: str) -> bool:
    return any(graver in stem.hazards for graver in GRAVER.get(hazard, ()))


def _written(stems: list[Stem]) -> tuple[str, ...]:
    """What is written for single stems; among several it is said once, and whose it is."""
    if len(stems) == 1:
        return tuple(filter(None, [stems[0].caution]))
    whose: dict[str, list[Stem]] = {}
    for stem in stems:
        for text in _parts(stem.caution, _shared(stems)):
            whose.setdefault(text, []).append(stem)
    return tuple(_said("{names}: {text}", having, text) for text, having in whose.items())


def _shared(stems: list[Stem]) -> set[str]:
    """The sentences that stand in more than one plant's caution."""
    cautions = {stem.caution for stem in stems}
    counts = Counter(text for caution in cautions for text in set(_split(caution)))
    return {text for text, times in counts.items() if times > 1 and len(text.split()) >= FEW_WORDS}


def _parts(caution: str, shared: set[str]) -> list[str]:
    """A caution in what it alone says, together, and the sentences that it shares."""
    sentences = _split(caution)
    own = " ".join(text for text in sentences if text not in shared)
    return [*filter(None, [own]), *(text for text in sentences if text in shared)]


def _split(caution: str) -> list[str]:
    return [text for text in re.split(r"(?<=[.!?])\s+", caution.strip()) if text]


def _said(text: str, stems: list[Stem], own: str = "") -> str:
    names = and_list(dict.fromkeys(plant_of(stem) for stem in stems))
    return sentence(text.format(names=names, text=own))


def plant_of(stem: Stem) -> str:
    """What a stem is without its colour: `Dahlia` for `Dahlia, shell`."""
    return stem.name.partition(",")[0]

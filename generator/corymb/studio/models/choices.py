"""Fields whose value is one of a few words: use, role, form, hazard and the like."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import BeforeValidator, WithJsonSchema

from corymb.studio import words
from corymb.studio.suggest import did_you_mean, known_words


class OneOf:
    """Accepts one of `known`, in any case; refuses the rest with the nearest word and the list."""

    def __init__(self, known: tuple[str, ...], noun: str) -> None:
        self.known = known
        self.noun = noun

    def __call__(self, written: Any) -> str:
        word = " ".join(str(written).split()).lower()
        if isinstance(written, str) and word in self.known:
            return word
        guess = did_you_mean(word, self.known)
        raise ValueError(f"‘{written}’ is not a {self.noun}.{guess}{known_words(self.known)}")


def _schema(known: tuple[str, ...]) -> WithJsonSchema:
    return WithJsonSchema({"type": "string", "enum": list(known)})


UseField = Annotated[str, BeforeValidator(OneOf(words.USES, "use")), _schema(words.USES)]
RoleField = Annotated[str, BeforeValidator(OneOf(words.ROLES, "role")), _schema(words.ROLES)]
FormField = Annotated[str, BeforeValidator(OneOf(words.FORMS, "form")), _schema(words.FORMS)]
HazardField = Annotated[
    str, BeforeValidator(OneOf(words.HAZARDS, "hazard")), _schema(words.HAZARDS)
]
VesselKindField = Annotated[
    str, BeforeValidator(OneOf(words.VESSELS, "kind of vessel")), _schema(words.VESSELS)
]
DifficultyField = Annotated[
    str, BeforeValidator(OneOf(words.DIFFICULTIES, "difficulty")), _schema(words.DIFFICULTIES)
]
ConsentField = Annotated[
    str, BeforeValidator(OneOf(words.CONSENTS, "consent")), _schema(words.CONSENTS)
]
ReaderField = Annotated[str, BeforeValidator(OneOf(words.AUDIENCES, "reader")), _schema(words.AUDIENCES)]
StylePlaceField = Annotated[
    str, BeforeValidator(OneOf(words.PLACES, "place")), _schema(words.PLACES)
]
EndsWithField = Annotated[
    str, BeforeValidator(OneOf(words.ENDINGS, "ending")), _schema(words.ENDINGS)
]
ScentField = Annotated[str, BeforeValidator(OneOf(words.SCENTS, "scent")), _schema(words.SCENTS)]
SettingField = Annotated[
    str, BeforeValidator(OneOf(words.SETTINGS, "setting")), _schema(words.SETTINGS)
]
LightField = Annotated[str, BeforeValidator(OneOf(words.LIGHTS, "light")), _schema(words.LIGHTS)]
HandoverField = Annotated[
    str, BeforeValidator(OneOf(words.HANDOVERS, "handover")), _schema(words.HANDOVERS)
]

"""Which of the fixed words?"""

from typing import Annotated

from corymb.studio import words
from corymb.studio.values.friendly import choice

UseField = Annotated[str, choice(words.USES, "a use")]
RoleField = Annotated[str, choice(words.ROLES, "a role")]
FormField = Annotated[str, choice(words.FORMS, "a form")]
HazardField = Annotated[str, choice(words.HAZARDS, "a hazard")]
VesselKindField = Annotated[str, choice(words.VESSELS, "a kind of vessel")]
DifficultyField = Annotated[str, choice(words.DIFFICULTIES, "a difficulty")]
StylePlaceField = Annotated[str, choice(words.STYLE_PLACES, "a place for a style")]
EndsWithField = Annotated[str, choice(words.ENDINGS, "an end of a season")]
ScentField = Annotated[str, choice(words.SCENTS, "a scent")]
SettingField = Annotated[str, choice(words.SETTINGS, "a setting")]
LightField = Annotated[str, choice(words.LIGHTS, "a light")]
HandoverField = Annotated[str, choice(words.HANDOVERS, "a handover")]
LengthUnitField = Annotated[str, choice(words.LENGTH_UNITS, "a unit of length")]
ConsentField = Annotated[str, choice(words.CONSENTS, "someone a photo may be shown to")]
ReaderField = Annotated[str, choice(words.READERS, "a reader")]

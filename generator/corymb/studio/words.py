"""Which fixed words may be written in the studio's files?

Each list is the whole choice; the order is the order in which they are shown.
"""

USES = ("line", "focal", "filler", "foliage")
"""The structural part a stem plays."""

ROLES = ("depth", "light", "accent")
"""The colour part a stem plays in a recipe."""

FORMS = (
    "rosette",
    "daisy",
    "umbel",
    "globe",
    "spike",
    "cluster",
    "cup",
    "iris",
    "trumpet",
    "bell",
    "plume",
    "tassel",
    "trail",
    "leaf-spray",
    "needle-spray",
    "blade",
    "twig",
    "berry",
    "pod",
)
"""The shape of a flower head, leaf, fruit or pod, as it is drawn."""

LONG_FORMS = (
    "spike",
    "plume",
    "tassel",
    "trail",
    "leaf-spray",
    "needle-spray",
    "blade",
    "twig",
    "bell",
)
"""The forms that are longer than wide, so that they also need a `head length`."""

HAZARDS = (
    "poisonous if eaten",
    "irritant sap",
    "irritant hairs",
    "irritant dust",
    "burns in sun",
    "eye irritant",
    "thorns",
    "skin allergy",
    "poisonous to pets",
    "deadly to cats",
    "heart poison",
    "heavy pollen",
)
"""How a stem can hurt. A stem with none written is `not known`, never `safe`."""

VESSELS = ("hand", "jar", "bowl", "urn", "ring", "wire", "trough", "vase")
"""What holds the stems together; `hand` is a tied bunch with no vessel."""

DIFFICULTIES = ("easy", "steady", "skilled")
"""How much practice a recipe or a lesson asks for."""

STYLE_PLACES = ("table with food", "worn", "carried", "standing")
"""Where an arrangement of a style is used; it decides which hazards matter."""

ENDINGS = ("frost", "cutting back")
"""What ends a stem's season, when it isn't the plant itself."""

SCENTS = ("none", "light", "strong")
"""How strongly a stem smells."""

SETTINGS = ("indoors", "outdoors", "under canvas")
"""Where an event is held."""

LIGHTS = ("daylight", "candle", "warm lamps", "cool lamps")
"""The light the flowers are seen in."""

HANDOVERS = ("collection", "delivery")
"""How the flowers reach the client."""

LENGTH_UNITS = ("cm", "inches")
"""In what pages show lengths; files may be written in either."""

CONSENTS = ("clients", "staff", "nobody")
"""Who may see a photo."""

READERS = ("everyone", "staff")
"""Whom a page or a lesson is for."""

MAKINGS = ("made up", "in buckets")
"""How the flowers of an order line leave the studio."""

FROM_THE_MIX = "from the mix"
"""An order line drawn from the event's other flowers, so that nothing is cut twice for it."""

ESSENTIAL = "essential"
"""A recipe line that stays in however small the arrangement gets."""

NOUNS = {
    "stems": "group of stems",
    "made": "piece of made work",
    "standing": "standing order",
    "log": "log of cuts",
    "link": "style link",
    "technique": "lesson",
}
"""What a kind of file is called in a sentence, where that isn't its name."""

MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)
"""The months, as they are printed."""

THIRDS = ("early", "mid", "late")
"""The parts of a month: the 1st to the 10th, the 11th to the 20th, the 21st to its end."""

WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
"""The days of the week, as they are printed; ISO 8601 starts on Monday."""

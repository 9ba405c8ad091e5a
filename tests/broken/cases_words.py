"""Fixed words, written wrong."""

from tests.broken.bench import DAHLIAS, HOUSE, JAR, ORDER, at, case

CASES = [
    case(
        "a hazard misspelt",
        DAHLIAS,
        "    hazards: [poisonous to pets]\n    scent",
        "    hazards: [poisonous to pet]\n    scent",
        at(27, 15, "Did you mean ‘poisonous to pets’?"),
    ),
    case(
        "a hazard that is none of those known",
        DAHLIAS,
        "    hazards: [poisonous to pets]\n    scent",
        "    hazards: [stings]\n    scent",
        at(27, 15, "‘stings’ is not a hazard. It is one of: poisonous if eaten, irritant sap,"),
    ),
    case(
        "hazards that are none",
        DAHLIAS,
        "    hazards: [poisonous to pets]\n    scent",
        "    hazards: none\n    scent",
        at(27, 14, "Where you know of nothing, leave it out: that means not known, never safe."),
    ),
    case(
        "hazards that are a list of none",
        DAHLIAS,
        "    hazards: [poisonous to pets]\n    scent",
        "    hazards: [none]\n    scent",
        at(27, 15, "Where you know of nothing, leave it out: that means not known, never safe."),
    ),
    case(
        "a use misspelt",
        DAHLIAS,
        "    use: focal\n    form: rosette",
        "    use: focus\n    form: rosette",
        at(7, 10, "Did you mean ‘focal’? It is one of: line, focal, filler or foliage."),
    ),
    case(
        "a form that isn't drawn",
        DAHLIAS,
        "    form: globe",
        "    form: ruffle",
        at(34, 11, "‘ruffle’ is not a form. It is one of: rosette, daisy, umbel,"),
    ),
    case(
        "a role that is none",
        JAR,
        "    role: depth",
        "    role: dark",
        at(20, 11, "‘dark’ is not a role. It is one of: depth, light or accent."),
    ),
    case(
        "a strange word in a recipe's line",
        JAR,
        "- 5 cosmos-white, light",
        "- 5 cosmos-white, airy",
        at(17, 5, "After the stem go its role (depth, light or accent), a use, or ‘essential’."),
    ),
    case(
        "a difficulty that is none",
        JAR,
        "difficulty: easy",
        "difficulty: hard",
        at(4, 13, "‘hard’ is not a difficulty. It is one of: easy, steady or skilled."),
    ),
    case(
        "a vessel of no known kind",
        JAR,
        "  kind: jar",
        "  kind: jug",
        at(10, 9, "It is one of: hand, jar, bowl, urn, ring, wire, trough or vase."),
    ),
    case(
        "a photo shown to someone unknown",
        JAR,
        "may be shown to: clients",
        "may be shown to: everyone",
        at(39, 22, "‘everyone’ is not someone a photo may be shown to. It is one of: clients,"),
    ),
    case(
        "a setting by another name",
        ORDER,
        "setting: indoors",
        "setting: inside",
        at(5, 39, "It is one of: indoors, outdoors or under canvas."),
    ),
    case(
        "a light misspelt",
        ORDER,
        "light: candle",
        "light: candels",
        at(5, 55, "Did you mean ‘candle’?"),
    ),
    case(
        "neither yes nor no",
        HOUSE,
        "tax in prices: yes",
        "tax in prices: included",
        at(22, 18, "‘included’ is neither yes nor no. Write yes or no."),
    ),
]

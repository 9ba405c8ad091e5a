"""One value where several are wanted, a list where keys are, a text where a list is."""

from tests.broken.bench import (
    DAHLIAS,
    HOUSE,
    JAR,
    LINK,
    STANDING,
    URN,
    WALK,
    at,
    case,
)

CASES = [
    case(
        "a list for one value",
        JAR,
        "time: 20 min",
        "time: [20 min, 30 min]",
        at(6, 1, "`time` takes one value, like `time: 20 min`, not a list."),
    ),
    case(
        "keys for one value",
        JAR,
        "name: Hedgerow jar",
        "name:\n  in English: Hedgerow jar\n  in Irish: Crúsca",
        at(2, 1, "`name` takes one value, like `name: Hedgerow jar`, not keys of its own."),
    ),
    case(
        "a text for a list",
        DAHLIAS,
        "    hazards: [poisonous to pets]\n    scent",
        "    hazards: poisonous to pets\n    scent",
        at(27, 14, "a list, even of one: write `- poisonous to pets` on a line of its own below"),
    ),
    case(
        "a text with commas for a list",
        JAR,
        "techniques: [conditioning, tying]",
        "techniques: conditioning, tying",
        at(5, 13, "each thing goes on a line of its own, after a dash, like `- conditioning`."),
    ),
    case(
        "a date for a list of dates",
        STANDING,
        "skip: [2026-08-04]",
        "skip: 2026-08-04",
        at(6, 7, "write `- 2026-08-04` on a line of its own below it."),
    ),
    case(
        "keys for a list",
        JAR,
        "  - Strip every leaf below the water.\n  - Set the cosmos first.",
        "  first: Strip every leaf.\n  second: Set the cosmos.",
        at(29, 1, "`method` is a list: each thing goes on a line of its own, after a dash, like"),
    ),
    case(
        "a list in a list",
        JAR,
        "  - Set the cosmos first.",
        "  - [Set, the cosmos]",
        at(31, 5, "Each line of `method` takes one value, like `- Strip every leaf"),
    ),
    case(
        "a text for a vessel",
        URN,
        "vessel: {kind: urn, name: stone urn, across: 30 cm, high: 40 cm}",
        "vessel: urn",
        at(8, 9, "‘urn’ isn't enough: `vessel` needs `kind` and `name` on lines below it"),
    ),
    case(
        "a text for a client",
        STANDING,
        "client: {name: The Lantern House}",
        "client: The Lantern House",
        at(2, 9, "`client` needs `name` on lines below it, moved in by two spaces."),
    ),
    case(
        "a list for the contact",
        HOUSE,
        "  email: flowers@teaselandrook.example\n"
        '  phone: "+353 00 000 0000"\n'
        "  answer within: 2 days\n",
        "  - flowers@teaselandrook.example\n",
        at(11, 1, "A list isn't enough: `contact` needs `email` on lines below it"),
    ),
    case(
        "a photo by its name alone",
        JAR,
        "  - file: photos/hedgerow-jar.jpg\n"
        "    alt: A jar of cosmos and dahlias\n"
        "    credit: Teasel & Rook\n"
        "    may be shown to: clients\n",
        "  - photos/hedgerow-jar.jpg\n",
        at(36, 5, "each of `photos` needs `file`, `alt`, `credit` and `may be shown to`."),
    ),
    case(
        "a list for the counts of a walk",
        WALK,
        "  dahlia-shell: 120\n  cosmos-white: 180\n",
        "  - 120 dahlia-shell\n  - 180 cosmos-white\n",
        at(1, 1, "`counts` takes keys on the lines below it, moved in by two spaces, like `dahlia"),
    ),
    case(
        "a text for the sizes",
        JAR,
        "sizes:\n  small: 0.6\n  large: 1.5\n",
        "sizes: small\n",
        at(22, 8, "`sizes` takes keys on the lines below it, moved in by two spaces, like `small:"),
    ),
    case(
        "a list for a scale",
        JAR,
        "    scale: 90 %",
        "    scale: [90 %]",
        at(54, 5, "`scale` takes one value, like `scale: 120 %`, or keys of its own, not a list."),
    ),
    case(
        "one number for three mark-ups",
        HOUSE,
        "mark up: {grown: 2.6, bought: 2.0, sundries: 1.5}",
        "mark up: 2.5",
        at(20, 12, "takes keys on the lines below it, moved in by two spaces, like `grown: 2.6`."),
    ),
    case(
        "a style in a line",
        HOUSE,
        "styles:\n  posy:\n",
        "styles:\n  wreath: round\n  posy:\n",
        at(30, 11, "‘round’ isn't enough: `wreath` needs `name`, `plural`, `about`, `place`,"),
    ),
    case(
        "an empty list",
        LINK,
        "show:\n  - hedgerow-jar\n  - hedgerow-jar, later\n",
        "show: []\n",
        at(6, 1, "`show` is empty: it needs one line at least, like `- hedgerow-jar, later`."),
    ),
]

"""Lengths, weights, amounts and numbers of things, written wrong."""

from tests.broken.bench import ANNUALS, DAHLIAS, HOUSE, JAR, ORDER, at, case

CASES = [
    case(
        "a piece that can't be seen",
        JAR,
        "high: 26 cm",
        "high: 0.01 mm",
        at(8, 7, "`high`: ‘0.01 mm’ is no size for a piece: it lies between 1 cm and 20 m."),
    ),
    case(
        "a piece higher than a barn",
        JAR,
        "high: 26 cm",
        "high: 26 m",
        at(8, 7, "`high`: ‘26 m’ is no size for a piece: it lies between 1 cm and 20 m. Is the"),
    ),
    case(
        "a length with no unit",
        DAHLIAS,
        "    length: 60-90 cm",
        "    length: 60-90",
        at(14, 13, "`length`: ‘90’ has no unit: write for instance ‘90 cm’."),
    ),
    case(
        "lengths the wrong way round",
        DAHLIAS,
        "    length: 60-90 cm",
        "    length: 90-60 cm",
        at(14, 13, "runs backwards: put the shorter length first."),
    ),
    case(
        "a unit that is none",
        DAHLIAS,
        "    head: 9 cm",
        "    head: 9 cn",
        at(13, 11, "‘cn’ in ‘9 cn’ is not a unit here. The units are mm, cm, m, in or ft."),
    ),
    case(
        "a comma in a number",
        DAHLIAS,
        "    weight: 25 g",
        "    weight: 2,5 g",
        at(15, 13, "`weight`: ‘2,5’ has a comma in it: write 2.5."),
    ),
    case(
        "a weight in words",
        DAHLIAS,
        "    weight: 25 g",
        "    weight: heavy",
        at(15, 13, "‘heavy’ is not a weight: write it like ‘25 g’."),
    ),
    case(
        "a unit that differs from country to country",
        JAR,
        "  water: 0.5 L",
        "  water: 1 pint",
        at(13, 10, "‘pint’ in ‘1 pint’ is not a unit here. The units are ml, cl or L."),
    ),
    case(
        "a long form with no length",
        ANNUALS,
        "    head length: 25 cm\n",
        "",
        at(26, 11, "A spike needs `head length` as well"),
    ),
    case(
        "one side of a floor",
        HOUSE,
        "floor: 170 x 120 cm",
        "floor: 170 cm",
        at(28, 30, "‘170 cm’ is not a floor: write its two sides, like ‘170 x 120 cm’."),
    ),
    case(
        "a studio that nobody works in",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nwork: {people: 0}",
        at(45, 16, "`people`: Somebody works at it: write 1 or more, counting yourself."),
    ),
    case(
        "more pieces than anyone makes",
        ORDER,
        "- 12 hedgerow-jar",
        "- 12121 hedgerow-jar",
        at(10, 5, "12121 of one recipe is more than any studio makes: 2000 at most. Is a"),
    ),
    case(
        "a load floor in centimetres taken for metres",
        HOUSE,
        "floor: 170 x 120 cm",
        "floor: 170 x 120 m",
        at(28, 30, "`floor`: ‘170 x 120 m’ is longer than a lorry: is the unit right?"),
    ),
]

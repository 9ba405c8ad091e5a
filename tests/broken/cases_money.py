"""Prices, costs, shares and mark-ups, written wrong."""

from tests.broken.bench import DAHLIAS, HOUSE, JAR, at, case

CASES = [
    case(
        "a comma in a cost",
        DAHLIAS,
        "    grown: 0.38",
        "    grown: 0,38",
        at(24, 12, "`grown`: ‘0,38’ has a comma in it: write 0.38."),
    ),
    case(
        "a price from and to",
        JAR,
        "price: from 28",
        "price: 28-32",
        at(25, 8, "is a range: write where it starts, like ‘from 28’."),
    ),
    case(
        "a share with no sign",
        HOUSE,
        "  overhead: 18 %",
        "  overhead: 18",
        at(18, 13, "`overhead`: ‘18’ has no sign of percent: write ‘18 %’."),
    ),
    case(
        "a price in another currency",
        JAR,
        "price: from 28",
        "price: from £28",
        at(25, 8, "‘from £28’ isn't in EUR, the studio's currency: write what it is in EUR"),
    ),
    case(
        "a cost in another currency, by its letters",
        JAR,
        "  - 1 pint jar, 1.20",
        "  - 1 pint jar, 1.20 GBP",
        at(27, 5, "isn't in EUR, the studio's currency: write what it is in EUR, without a sign."),
    ),
    case(
        "a bought stem in dollars",
        DAHLIAS,
        "    bought: 1.40",
        "    bought: $1.40",
        at(25, 13, "‘$1.40’ isn't in EUR"),
    ),
    case("a price with the studio's own sign", JAR, "price: from 28", "price: from €28"),
    case(
        "a currency by its name",
        HOUSE,
        "currency: EUR",
        "currency: euro",
        at(16, 13, "write its three letters, like ‘EUR’ or ‘GBP’. Did you mean ‘EUR’?"),
    ),
    case(
        "waste that leaves nothing",
        HOUSE,
        "waste: 8 %",
        "waste: 100 %",
        at(19, 10, "`waste`: ‘100 %’ leaves nothing: of what is cut something must reach a piece"),
    ),
    case(
        "waste below nothing",
        HOUSE,
        "waste: 8 %",
        "waste: -8 %",
        at(19, 10, "`waste`: ‘-8 %’ is not a share: it lies between 0 % and 100 %."),
    ),
    case(
        "a mark-up below nothing",
        HOUSE,
        "bought: 2.0",
        "bought: -2.0",
        at(20, 33, "`bought`: ‘-2.0’ is not a mark-up: 1 asks what it cost, 2 twice that;"),
    ),
    case(
        "a mark-up written as a percentage",
        HOUSE,
        "grown: 2.6",
        "grown: 260",
        at(20, 20, "`grown`: ‘260’ is not a mark-up: 1 asks what it cost, 2 twice that;"),
    ),
    case(
        "an hour that costs less than nothing",
        HOUSE,
        "hourly rate: 19.00",
        "hourly rate: -19.00",
        at(17, 16, "`hourly rate`: ‘-19.00’ is below nothing: money here is never negative."),
    ),
    case(
        "prices rounded to less than nothing",
        HOUSE,
        "round prices to: 5",
        "round prices to: -5",
        at(23, 20, "`round prices to`: ‘-5’ is below nothing: money here is never negative."),
    ),
]

"""Colours, and limits of colours and swaps, written wrong."""

from tests.broken.bench import DAHLIAS, HOUSE, JAR, at, case

CASES = [
    case(
        "a colour in short",
        JAR,
        "white linen f4efe6",
        "white linen fff",
        at(14, 10, "‘fff’ is a colour in short: write all six, ‘ffffff’."),
    ),
    case(
        "a letter that no colour has",
        DAHLIAS,
        "- shell e8c2b4 80 %",
        "- shell e8c2g4 80 %",
        at(10, 9, "‘g’ can't be in it. A colour is six of 0-9 and a-f, like ‘e8c2b4’."),
    ),
    case(
        "shares of colours that make more than a whole",
        DAHLIAS,
        "- apricot heart c98472 20 %",
        "- apricot heart c98472 30 %",
        at(9, 5, "The shares add up to 110 %; they should add up to 100 %."),
    ),
    case(
        "a list of colours with none in it",
        DAHLIAS,
        "    colours: [plum 5a2a3c 100 %]",
        "    colours: []",
        at(35, 5, "A stem needs at least one colour, for instance `- shell e8c2b4 100 %`."),
    ),
    case(
        "two colours with no share",
        DAHLIAS,
        "    colours: [plum 5a2a3c 100 %]",
        "    colours: [plum 5a2a3c, rose c98472]",
        at(35, 5, "Only one colour may leave its share out; write the others' shares."),
    ),
    case(
        "swaps of more than the whole piece",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nswaps: {most of a piece: 150 %}",
        at(45, 26, "`most of a piece`: ‘150 %’ is not a share: it lies between 0 % and 100 %."),
    ),
    case(
        "fewer swaps than none",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nswaps: {lines at most: -1}",
        at(45, 24, "`lines at most`: ‘-1’ is below nothing: write 0 or more."),
    ),
    case(
        "a mix that is flat at any lightness",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\ncolour:\n  flat below: 120",
        at(46, 15, "‘120’ is not a lightness: it goes from 0, for black, to 100, for white."),
    ),
    case(
        "hues further apart than round the circle",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\ncolour:\n  alike below: 200",
        at(46, 16, "‘200’ is not a spread of hues: it goes from 0 degrees, for one hue, to 180."),
    ),
    case(
        "a mix that is sombre or washed out whatever it is",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\ncolour:\n  sombre below: 80\n  washed out above: 70",
        at(46, 17, "`sombre below` isn't below `washed out above`, so every mix would be one or"),
    ),
    case(
        "a colour nearer than the same",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nswaps:\n  colour within: -20",
        at(46, 18, "‘-20’ is not a distance of colours: it starts at 0, for the same colour, and"),
    ),
]

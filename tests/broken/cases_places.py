"""Places, languages and addresses, written wrong."""

from tests.broken.bench import HOUSE, ORDER, at, case

CASES = [
    case(
        "an e-mail address with no sign",
        ORDER,
        "email: barn@example.org",
        "email: barn at example.org",
        at(2, 43, "is not an e-mail address: write it like ‘name@garden.example’."),
    ),
    case(
        "a latitude beyond the pole",
        HOUSE,
        "latitude: 52.3",
        "latitude: 152.3",
        at(6, 13, "‘152.3’ is not a latitude: it lies between -90 and 90."),
    ),
    case(
        "a longitude with its letter",
        HOUSE,
        "longitude: -7.1",
        "longitude: 7.1 W",
        at(7, 14, "write the longitude as a bare number, ‘-7.1’; east is above 0, west below."),
    ),
    case(
        "a time zone by its city",
        HOUSE,
        "time zone: Europe/Dublin",
        "time zone: Dublin",
        at(9, 14, "Did you mean ‘Europe/Dublin’?"),
    ),
    case(
        "a language by its name",
        HOUSE,
        "language: en-IE",
        "language: English",
        at(3, 11, "‘English’ is not a language: write it like ‘en-IE’."),
    ),
]

"""Where on earth, in which time zone, with what money and language?"""

import zoneinfo
from functools import cache

from babel import Locale, UnknownLocaleError
from babel.numbers import list_currencies

from corymb.studio.suggest import did_you_mean, nearest, quoted
from corymb.studio.values.number import read_decimal


def parse_latitude(text: str) -> float:
    """Reads degrees north of the equator, `52.3`; south is below nothing. Raises ValueError."""
    return _degrees(text, 90, "latitude", "north", "south")


def parse_longitude(text: str) -> float:
    """Reads degrees east of Greenwich, `-7.1`; west is below nothing. Raises ValueError."""
    return _degrees(text, 180, "longitude", "east", "west")


def _degrees(text: str, most: int, noun: str, plus: str, minus: str) -> float:
    flat = text.strip()
    bare = flat.rstrip("NSEWnsew° ").strip()
    if bare != flat and bare:
        sign = "-" if flat[-1] in "SWsw" else ""
        raise ValueError(
            f"{quoted(flat)}: write the {noun} as a bare number, "
            f"{quoted(sign + bare)}; {plus} is above 0, {minus} below."
        )
    degrees = float(read_decimal(flat, f"a {noun} in degrees", "52.3" if most == 90 else "-7.1"))
    if not -most <= degrees <= most:
        raise ValueError(f"{quoted(flat)} is not a {noun}: it lies between -{most} and {most}.")
    return degrees


def parse_time_zone(text: str) -> str:
    """Reads a zone of the IANA time zone database, `Europe/Dublin`. Raises ValueError."""
    name = text.strip()
    if name in _zones():
        return str(name)
    zones = sorted(zone for zone in _zones() if "/" in zone and not zone.startswith("Etc/"))
    by_city = {zone.rpartition("/")[2]: zone for zone in zones}
    cities = nearest(name.rpartition("/")[2], by_city, limit=1)
    hint = f" Did you mean {quoted(by_city[cities[0]])}?" if cities else ""
    raise ValueError(
        f"{quoted(name)} is not a time zone: write continent and city, like ‘Europe/Dublin’.{hint}"
    )


def parse_currency(text: str) -> str:
    """Reads a currency's three letters (ISO 4217), `EUR`. Raises ValueError."""
    code = text.strip().upper()
    if code in _currencies():
        return code
    sign = {"€": "EUR", "£": "GBP", "EURO": "EUR", "EUROS": "EUR", "POUND": "GBP"}.get(code, "")
    hint = f" Did you mean {quoted(sign)}?" if sign else ""
    raise ValueError(
        f"{quoted(text)} is not a currency: write its three letters, like ‘EUR’ or ‘GBP’.{hint}"
    )


def parse_language(text: str) -> str:
    """Reads a language tag, `en-IE`, that dates and prices are printed in. Raises ValueError."""
    tag = text.strip().replace("_", "-")
    try:
        return str(Locale.parse(tag, sep="-")).replace("_", "-")
    except (ValueError, UnknownLocaleError):
        close = did_you_mean(tag, ("en", "en-IE", "en-GB", "en-US", "fr-FR", "de-DE", "ga-IE"))
        raise ValueError(
            f"{quoted(tag)} is not a language: write it like ‘en-IE’.{close}"
        ) from None


@cache
def _zones() -> frozenset[str]:
    return frozenset(zoneinfo.available_timezones())


@cache
def _currencies() -> frozenset[str]:
    return frozenset(list_currencies())

"""What is said of a load: how many buckets, what vehicle, are its seats down, what to trim?

Where not all of it is buckets, `what` names what it is: `22 pieces and 3 buckets`.
"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import figures
from corymb.trade.load.trips import Load, LoadSpace

BRING = {
    None: noted("Bring {vehicle}, or as much room: {room}."),
    "down": noted("Bring {vehicle}, its rear seats down, or as much room: {room}."),
    "up": noted("Bring {vehicle}, its seats up, or as much room: {room}."),
}


def loaded_words(load: Load, what: str = "") -> str:
    """`On the floor stand 14 buckets: one trip with a small van.` Empty for no bucket."""
    buckets = _buckets(load)
    if not buckets:
        return ""
    what = what or _counted(buckets)
    if not load.whole:
        return _("On the floor stand {what}, {left}.").format(what=what, left=_not_all(load))
    return _("On the floor stand {what}: {trips}.").format(what=what, trips=_trips_with(load))


def collection_words(load: Load, what: str = "") -> str:
    """What a client who collects must bring, with seats and measures. Empty for no bucket."""
    buckets = _buckets(load)
    if not buckets:
        return ""
    what = what or _counted(buckets)
    if not load.whole:
        told = _("Your flowers stand in {what}, {left}: ask us how to come.")
        return told.format(what=what, left=_not_all(load))
    upright = _("Your flowers stand in {what} and have to stay upright.")
    return " ".join((upright.format(what=what), _bring(load.space), _that_is(len(load.trips))))


def trimming_words(load: Load) -> str:
    """What whoever loads cuts shorter, so that nothing touches the roof. Empty for nothing."""
    if not load.to_trim:
        return ""
    number = len(load.to_trim)
    told = ngettext(
        "Cut the stems in {number} bucket to {high} cm, or they touch the roof of the {vehicle}.",
        "Cut the stems in {number} buckets to {high} cm, or they touch the roof of the {vehicle}.",
        number,
    )
    return told.format(number=number, high=figures(load.space.high_cm), vehicle=load.space.name)


def _buckets(load: Load) -> int:
    return sum(len(t.places) for t in load.trips) + len(load.too_tall) + len(load.too_wide)


def _counted(buckets: int) -> str:
    return ngettext("{number} bucket", "{number} buckets", buckets).format(number=buckets)


def _bring(space: LoadSpace) -> str:
    room = _("a flat floor of {long} x {wide} cm, {high} cm high inside").format(
        long=figures(space.long_cm), wide=figures(space.wide_cm), high=figures(space.high_cm)
    )
    return _(BRING[space.seats]).format(vehicle=_a(space), room=room)


def _that_is(trips: int) -> str:
    few = {
        1: _("That is one trip."),
        2: _("That is two trips."),
        3: _("That is three trips."),
        4: _("That is four trips."),
    }
    many = ngettext("That is {number} trip.", "That is {number} trips.", trips)
    return few.get(trips, many.format(number=trips))


def _trips_with(load: Load) -> str:
    trips = len(load.trips)
    few = {
        1: _("one trip with {vehicle}"),
        2: _("two trips with {vehicle}"),
        3: _("three trips with {vehicle}"),
        4: _("four trips with {vehicle}"),
    }
    many = ngettext("{number} trip with {vehicle}", "{number} trips with {vehicle}", trips)
    return few.get(trips, many).format(number=trips, vehicle=_a(load.space))


def _not_all(load: Load) -> str:
    out = len(load.too_tall) + len(load.too_wide)
    told = ngettext(
        "{number} of them too tall or too wide for {vehicle}",
        "{number} of them too tall or too wide for {vehicle}",
        out,
    )
    return told.format(number=out, vehicle=_a(load.space))


def _a(space: LoadSpace) -> str:
    """The vehicle with its article: `a small van`, `an estate car`."""
    # L10N: a vehicle by the studio's own word for it, as it is put into other sentences; English
    # has two articles: an estate car. Where yours hangs on the word, leave it out: {vehicle}
    told = _("a {vehicle}")
    if space.name[:1].casefold() in "aeiou":
        told = _("an {vehicle}")
    return told.format(vehicle=space.name)

"""What is said of a load: how many buckets, what vehicle, are its seats down, what to trim?

Where not all of it is buckets, `what` names what it is: `22 pieces and 3 buckets`.
"""

from __future__ import annotations

from corymb.studio.saying import counted
from corymb.studio.values.number import plain
from corymb.trade.load.trips import Load, LoadSpace

_IN_WORDS = {1: "one trip", 2: "two trips", 3: "three trips", 4: "four trips"}


def delivery_words(load: Load, what: str = "") -> str:
    """`Your flowers come in 14 buckets: one trip with a small van.` Empty for no bucket."""
    buckets = _buckets(load)
    if not buckets:
        return ""
    what = what or _counted(buckets)
    if not load.whole:
        return f"Your flowers come in {what}, {_not_all(load)}."
    return f"Your flowers come in {what}: {_trips(load)} with {_a(load.space)}."


def collection_words(load: Load, what: str = "") -> str:
    """What a client who collects must bring, with seats and measures. Empty for no bucket."""
    buckets = _buckets(load)
    if not buckets:
        return ""
    what = what or _counted(buckets)
    if not load.whole:
        return f"Your flowers stand in {what}, {_not_all(load)}: ask us how to come."
    return (
        f"Your flowers stand in {what} and have to stay upright. "
        f"Bring {_a(load.space)}{_seats(load.space)}, or as much room: a flat floor of "
        f"{plain(load.space.long_cm)} x {plain(load.space.wide_cm)} cm, "
        f"{plain(load.space.high_cm)} cm high inside. That is {_trips(load)}."
    )


def trimming_words(load: Load) -> str:
    """What whoever loads cuts shorter, so that nothing touches the roof. Empty for nothing."""
    if not load.to_trim:
        return ""
    return (
        f"Cut the stems in {_counted(len(load.to_trim))} to {plain(load.space.high_cm)} cm, "
        f"or they touch the roof of the {load.space.name}."
    )


def _buckets(load: Load) -> int:
    return sum(len(t.places) for t in load.trips) + len(load.too_tall) + len(load.too_wide)


def _counted(buckets: int) -> str:
    return counted(buckets, "bucket", "buckets")


def _trips(load: Load) -> str:
    return _IN_WORDS.get(len(load.trips), f"{len(load.trips)} trips")


def _not_all(load: Load) -> str:
    out = len(load.too_tall) + len(load.too_wide)
    return f"{out} of them too tall or too wide for {_a(load.space)}"


def _a(space: LoadSpace) -> str:
    """The vehicle with its article: `a small van`, `an estate car`."""
    return f"{'an' if space.name[:1].casefold() in 'aeiou' else 'a'} {space.name}"


def _seats(space: LoadSpace) -> str:
    return {"down": ", its rear seats down", "up": ", its seats up", None: ""}[space.seats]

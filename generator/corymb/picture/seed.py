"""How can a picture look made by hand and still come out the same every time?"""

from random import Random


def dice(arrangement_id: str, *purpose: str) -> Random:
    """Dice of their own for each purpose, so that one more stem does not reshuffle the rest.

    Seeding with text is the same on every machine and Python version (unlike `hash`).
    """
    recipe, _, _ = arrangement_id.partition("--")
    return Random("/".join((recipe, *purpose)))


def give(rng: Random, amount: float) -> float:
    """A little either way: what a hand adds to a ruler."""
    return rng.uniform(-amount, amount)

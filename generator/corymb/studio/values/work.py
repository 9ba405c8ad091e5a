"""How many pieces, how many people, how long a day, how many days before?"""

from corymb.studio.suggest import quoted
from corymb.studio.values.text import parse_count, parse_number, parse_whole

MOST_PEOPLE = 12
"""More don't fit round the benches of a small studio. House value, no source."""

MOST_PIECES = 2000
"""More of one recipe in one order is a slip of the hand. House value, no source."""

SHORTEST_DAY, LONGEST_DAY = 0.5, 16.0
MOST_DAYS_BEFORE = 3


def parse_people(text: str) -> int:
    """Reads how many work at it, 1 to 12. Raises ValueError."""
    people = parse_whole(text)
    if people < 1:
        raise ValueError("Somebody works at it: write 1 or more, counting yourself.")
    if people > MOST_PEOPLE:
        raise ValueError(
            f"{quoted(text.strip())} people don't fit round the benches: {MOST_PEOPLE} at most."
        )
    return people


def parse_pieces(text: str) -> int:
    """Reads how many of one recipe an order wants, 1 to 2000. Raises ValueError."""
    return few_enough(parse_count(text))


def few_enough(pieces: int) -> int:
    """The same number, where it is one that an order can want. Raises ValueError."""
    if pieces > MOST_PIECES:
        raise ValueError(
            f"{pieces} of one recipe is more than any studio makes: {MOST_PIECES} at most. Is a "
            "figure doubled?"
        )
    return pieces


def parse_hours_of_work(text: str) -> float:
    """Reads how many hours of a day are worked, `7` or `7.5`. Raises ValueError."""
    hours = parse_number(text)
    if not SHORTEST_DAY <= hours <= LONGEST_DAY:
        raise ValueError(
            f"{quoted(text.strip())} hours are no day's work: it is half an hour or more, and 16 "
            "at most."
        )
    return hours


def parse_days_before(text: str) -> int:
    """Reads how many days before handing over, 0 to 3. Raises ValueError."""
    days = parse_whole(text)
    if days > MOST_DAYS_BEFORE:
        raise ValueError(
            f"{quoted(text.strip())} days before handing over is too early: 3 at most, 1 is usual."
        )
    return days

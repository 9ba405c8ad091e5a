"""Who makes what, and how many people are needed."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.hours.learning import EXPERIENCED, HELPER, Hand
from corymb.trade.hours.people import Job, minutes_at_the_bench, people_needed, shared_out

STEADY = Hand("steady", 1, 1)  # at every piece the time of the first, as the practised hand's
JARS = Job("jar", 20, 12)
BOUQUET = Job("bouquet", 90, 1)


# Alone: 20 min x 12 pieces at 95 %, and 90 min. By hand: 20 x sum of n^-0.0740 for 12 is 212.5.
def test_one_person_makes_it_all() -> None:
    (share,) = shared_out([JARS, BOUQUET], [EXPERIENCED])
    assert share.pieces == (("bouquet", 1), ("jar", 12))
    assert share.minutes == 303


def test_the_longest_piece_goes_to_the_practised_hand_and_the_helper_starts_on_the_rest() -> None:
    practised, helper = shared_out([JARS, BOUQUET], [EXPERIENCED, HELPER])
    assert practised.pieces[0] == ("bouquet", 1)
    assert dict(practised.pieces).get("jar", 0) + dict(helper.pieces)["jar"] == 12
    assert abs(practised.minutes - helper.minutes) <= 30


# Alike and not learning: 12 pieces of 20 minutes for 1, 2, 3, 5 people.
@pytest.mark.parametrize(("people", "minutes"), [(1, 240), (2, 120), (3, 80), (5, 60)])
def test_work_is_spread_evenly(people: int, minutes: int) -> None:
    assert minutes_at_the_bench([JARS], [STEADY] * people) == minutes


NEEDED = {
    "one is enough": (240, 1),
    "a minute too few": (239, 2),
    "three pieces each": (60, 4),
    "a piece each": (20, 12),
    "a single piece takes longer": (19, None),
}


@pytest.mark.parametrize(("minutes", "people"), NEEDED.values(), ids=NEEDED)
def test_people_are_as_few_as_get_done_in_time(minutes: int, people: int | None) -> None:
    assert people_needed([JARS], minutes, STEADY, STEADY) == people


def test_helpers_join_a_practised_hand() -> None:
    alone = minutes_at_the_bench([JARS, BOUQUET], [EXPERIENCED])
    together = minutes_at_the_bench([JARS, BOUQUET], [EXPERIENCED, HELPER])
    assert people_needed([JARS, BOUQUET], alone) == 1
    assert people_needed([JARS, BOUQUET], together) == 2
    assert people_needed([], 0) == 1


JOBS = st.lists(
    st.builds(Job, st.sampled_from("abc"), st.integers(1, 120), st.integers(0, 30)),
    max_size=4,
    unique_by=lambda job: job.name,
)
CREW = st.lists(st.sampled_from([EXPERIENCED, HELPER, STEADY]), min_size=1, max_size=4)


@given(JOBS, CREW)
def test_every_piece_is_made_once(jobs: list[Job], crew: list[Hand]) -> None:
    shares = shared_out(jobs, crew)
    assert [share.hand for share in shares] == crew
    for job in jobs:
        assert sum(dict(share.pieces).get(job.name, 0) for share in shares) == job.pieces


@pytest.mark.parametrize(
    ("jobs", "crew", "message"),
    [
        ([JARS], [], "nobody is there"),
        ([Job("jar", -1, 1)], [STEADY], "0 or more"),
        ([Job("jar", 1, -1)], [STEADY], "0 or more"),
    ],
)
def test_work_without_people_or_below_nothing_is_refused(
    jobs: list[Job], crew: list[Hand], message: str
) -> None:
    with pytest.raises(ValueError, match=message):
        shared_out(jobs, crew)

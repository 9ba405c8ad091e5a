"""Advice is true: with it taken, what was said of the mix no longer holds."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from random import Random

import pytest

from corymb.studio.words import ROLES
from corymb.trade.changes import LookLine
from corymb.trade.colour.advice import Advice, Advised, Adviser, Piece
from corymb.trade.colour.findings import KINDS, kinds_of
from corymb.trade.colour.likeness import mean_lab, palette_of
from corymb.trade.colour.mixture import backing_of, mixture
from corymb.trade.colour.role_check import role_advice
from corymb.trade.looks import looks_of
from corymb.trade.season.beds import Beds
from corymb.trade.season.weeks import WEEKS, thursday
from corymb.trade.swaps.fitting import fits
from tests.trade.colour.mixes import HOUSE, bed, demo, piece
from tests.trade.making import stem
from tests.trade.swaps.making import line

PIECES: dict[str, tuple[Piece, set[str]]] = {
    "one grey": (piece("5 mid-grey"), {"flat", "alike"}),
    "dark ones": (piece("5 plum", "4 black-plum", "3 navy", "1 moss"), {"flat", "sombre"}),
    "dark ones that must stay": (piece("9 black-plum!", "5 plum!"), {"flat", "sombre", "alike"}),
    "pale ones": (piece("6 white, light", "4 cream, light"), {"flat", "washed out"}),
    "blues": (piece("5 cornflower", "2 navy"), {"cold", "flat", "alike"}),
    "blues and a little else": (piece("9 cornflower", "3 white", "1 apricot"), {"cold"}),
    "white on white": (piece("9 white, light", "3 plum", against="#ffffff"), {"lost"}),
    "plum on a dark coat": (piece("7 plum", "2 crimson", "3 shell", against="#33202b"), {"lost"}),
    "half of it lost": (piece("11 white", "9 moss", against="#ffffff"), {"lost"}),
}


def adviser() -> Adviser:
    return Adviser(bed(), Beds(bed()), HOUSE)


def kinds_with(adviser: Adviser, piece: Piece, lines: tuple[LookLine, ...]) -> frozenset[str]:
    """What is said of other lines in the same place, worked out anew."""
    backing = backing_of(piece.against, adviser.limits)
    return kinds_of(mixture(lines, adviser.stems, backing).measures, adviser.limits)


def assert_true(adviser: Adviser, piece: Piece, told: Advised) -> None:
    """Every piece of advice mends the finding, and makes nothing else to be said."""
    before = kinds_with(adviser, piece, piece.lines)
    for advice in told.advice:
        after = kinds_with(adviser, piece, advice.taken(piece.lines))
        assert told.finding.kind not in after, advice.words
        assert after <= before, advice.words


def test_every_finding_comes_up_among_the_made_up_pieces() -> None:
    assert set().union(*(kinds for _, kinds in PIECES.values())) == set(KINDS)


@pytest.mark.parametrize(("piece", "kinds"), PIECES.values(), ids=PIECES)
def test_every_finding_of_a_made_up_piece_has_advice_and_all_of_it_is_true(
    piece: Piece, kinds: set[str]
) -> None:
    advised = adviser().on(piece)
    assert {told.finding.kind for told in advised} >= kinds
    for told in advised:
        assert told.advice, told.finding.words
        assert_true(adviser(), piece, told)


def test_all_advice_on_the_demo_s_looks_is_true_in_every_season() -> None:
    studio, year = demo()
    advises, found = Adviser.of(studio, year.beds), 0
    for recipe in studio.recipes.values():
        against = recipe.against.hex if recipe.against else None
        for look in looks_of(recipe, studio.recipes).values():
            for week in (8, 24, 38, 50):
                style = studio.house.styles[recipe.style]
                asked = Piece(look.lines, style, week, against)
                for told in advises.on(asked):
                    assert_true(advises, asked, told)
                    found += len(told.advice)
    assert found > 20


STRICT = HOUSE.model_copy(
    update={
        "flat_below": 24.0,
        "sombre_below": 55.0,
        "washed_out_above": 68.0,
        "cold_above": replace(HOUSE.cold_above, fraction=HOUSE.cold_above.fraction / 2),
        "alike_below": 45.0,
        "lost_above": replace(HOUSE.lost_above, fraction=HOUSE.lost_above.fraction / 2),
    }
)
"""So strict that each finding holds for some look of the demo."""


SOME_WEEKS = (8, 20, 25, 32, 40, 49)


@cache
def strictly_advised() -> tuple[Adviser, list[tuple[Piece, Advised]]]:
    """A look of each recipe, itself or a variant, and weeks by turns."""
    studio, year = demo()
    advises, pieces = Adviser(studio.stems, year.beds, STRICT), []
    for turn, recipe in enumerate(studio.recipes.values()):
        looks = [*looks_of(recipe, studio.recipes).values()]
        against = recipe.against.hex if recipe.against else None
        pieces.append(
            Piece(
                looks[turn % len(looks)].lines,
                studio.house.styles[recipe.style],
                SOME_WEEKS[turn % len(SOME_WEEKS)],
                against,
            )
        )
    return advises, [(asked, told) for asked in pieces for told in advises.on(asked)]


@pytest.mark.parametrize("kind", KINDS)
def test_every_finding_on_a_demo_look_is_mended_in_truth(kind: str) -> None:
    advises, advised = strictly_advised()
    told_of = [(asked, told) for asked, told in advised if told.finding.kind == kind]
    assert any(told.advice for _, told in told_of)
    for asked, told in told_of:
        assert_true(advises, asked, told)


def test_what_is_to_be_added_to_a_demo_look_stands_in_the_week_asked_for() -> None:
    (_, advised), (_, year) = strictly_advised(), demo()
    added = [(asked.week, a.add) for asked, told in advised for a in told.advice if a.add]
    assert {week for week, _ in added} == set(SOME_WEEKS)
    for week, stem_id in added:
        assert year.beds.season(stem_id).has(thursday(week)), (week, stem_id)


def test_six_large_heads_are_advised_before_thirteen_small_ones_of_the_same_colour() -> None:
    heads = {"large": "4 cm", "small": "2.6 cm"}
    stems = {
        name: stem(name, colours=["f6ecd2 100 %"], in_season="all year", head=head)
        for name, head in heads.items()
    }
    stems["plum"] = bed()["plum"]
    advises = Adviser(stems, Beds(stems), HOUSE)
    (sombre,) = [told for told in advises.on(piece("14 plum!")) if told.finding.kind == "sombre"]
    assert [advice.add for advice in sombre.advice] == ["large", "small"]


DRIED = {"conditioning": {"hours": "0", "do": "Hang."}, "vase_life": "200-400 days"}


def test_nothing_fresh_is_advised_for_what_is_mostly_dried_but_what_it_has_already() -> None:
    dried = {
        f"dried-{name}": stem(
            f"dried-{name}", colours=[f"{hex_} 100 %"], in_season="all year", head="4 cm", **DRIED
        )
        for name, hex_ in {"white": "ffffff", "cream": "f6ecd2", "copper": "b5652e"}.items()
    }
    stems = bed() | dried
    advises = Adviser(stems, Beds(stems), HOUSE)
    asked = piece("5 dried-white!", "3 dried-cream!", "1 moss", against="#ffffff")
    added = {a.add for told in advises.on(asked) for a in told.advice if a.add}
    assert "moss" in added and added <= {*dried, "moss"}
    fresh = piece("5 white!", "3 cream!", "1 moss", against="#ffffff")
    assert {a.add for told in advises.on(fresh) for a in told.advice} - {*dried, "moss", ""}


def chance_piece(chance: Random) -> Piece:
    """Any stems of the demo in any number, in any style and week, against anything."""
    studio, _ = demo()
    light = {known_as: mean_lab(palette_of(each))[0] for known_as, each in studio.stems.items()}
    least, most = chance.choice([(0, 42), (0, 100), (75, 100)])
    pool = sorted(known_as for known_as, value in light.items() if least <= value <= most)
    lines = tuple(
        line(chance.randint(1, 9), stem_id, chance.choice(ROLES), essential=chance.random() < 0.3)
        for stem_id in chance.sample(pool, chance.randint(1, 6))
    )
    style = chance.choice(sorted(studio.house.styles.values(), key=lambda each: each.id))
    against = chance.choice([None, "#f4efe6", "#3f3e42", f"#{chance.randrange(1 << 24):06x}"])
    return Piece(lines, style, chance.randint(1, 52), against)


def test_advice_on_any_handful_of_stems_is_true() -> None:
    studio, year = demo()
    advises, chance, given = Adviser.of(studio, year.beds), Random(2026), 0
    for _ in range(120):
        asked = chance_piece(chance)
        for told in advises.on(asked):
            assert_true(advises, asked, told)
            given += len(told.advice)
    assert given > 200


def all_advice(piece: Piece) -> list[Advice]:
    return [advice for told in adviser().on(piece) for advice in told.advice]


@pytest.mark.parametrize("week", [5, 24, 45])
def test_what_is_to_be_added_stands_that_week_and_suits_the_style(week: int) -> None:
    for asked, _ in PIECES.values():
        for advice in all_advice(replace(asked, week=week)):
            if advice.add:
                stem = bed()[advice.add]
                assert fits(stem, asked.style)
                assert Beds(bed()).season(advice.add).has(thursday(week))


def test_a_june_flower_is_advised_in_june_alone() -> None:
    """Of a bed that has nothing else that is warm."""
    cold = {name: bed()[name] for name in ("cornflower", "ice-blue", "white", "june-scarlet")}
    advises = Adviser(cold, Beds(cold), HOUSE)
    asked = piece("9 cornflower!", "3 ice-blue!")
    adds = {
        week: {a.add for told in advises.on(replace(asked, week=week)) for a in told.advice}
        for week in WEEKS
    }
    assert {week for week, added in adds.items() if "june-scarlet" in added} == {23, 24, 25, 26}


def test_an_essential_stem_is_never_left_out_altogether() -> None:
    for advice in all_advice(PIECES["dark ones that must stay"][0]):
        left = {line.stem for line in advice.taken(PIECES["dark ones that must stay"][0].lines)}
        assert {"black-plum", "plum"} <= left


def test_the_last_of_an_essential_stem_stays_even_where_leaving_it_out_would_mend() -> None:
    asked = piece("1 white, light!", "1 cream, light!", "1 plum", against="#ffffff")
    (told,) = adviser().on(asked)
    assert told.finding.kind == "lost" and told.advice
    assert not {advice.drop for advice in told.advice} & {"white", "cream"}


def test_what_is_added_is_given_a_role_that_it_plays() -> None:
    for asked, _ in PIECES.values():
        for advice in all_advice(asked):
            here = {line.stem for line in asked.lines}
            if advice.add and advice.add not in here:
                checked = role_advice(advice.taken(asked.lines), bed(), HOUSE)
                assert advice.add not in {each.stem for each in checked}, advice.words


def test_no_two_pieces_of_advice_for_a_finding_use_the_same_stem() -> None:
    for asked, _ in PIECES.values():
        for told in adviser().on(asked):
            used = [s for advice in told.advice for s in (advice.add, advice.drop) if s]
            assert len(used) == len(set(used))


def test_advice_is_a_whole_change_in_words() -> None:
    said = {advice.words for advice in all_advice(PIECES["half of it lost"][0])}
    assert {"Add 2 more Moss, depth.", "Leave out 2 White."} <= said


def test_a_mix_with_nothing_to_say_of_gets_no_advice() -> None:
    assert adviser().on(piece("3 white, light", "3 plum", "2 apricot", "2 moss")) == ()
    assert adviser().on(piece()) == ()


def test_where_nothing_stands_that_would_mend_it_no_advice_is_made_up() -> None:
    alone = {"white": bed()["white"]}
    told = Adviser(alone, Beds(alone), HOUSE).on(piece("9 white, light!"))
    assert {each.finding.kind for each in told} == {"flat", "washed out", "alike"}
    assert all(not each.advice for each in told)

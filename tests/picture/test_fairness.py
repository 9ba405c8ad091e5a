"""Each stem gets its fair part of the picture: who comes forward, how far leaf stands out."""

import dataclasses
import math

import pytest

from corymb.picture.covering import PAPER, discs, masks
from corymb.picture.dome import Dome, Hold
from corymb.picture.fairness import Sight, shared
from corymb.picture.forms import FORMS
from corymb.picture.geometry import Point
from corymb.picture.layout import Band, Bloom
from corymb.picture.placing import head_length
from tests.picture.samples import BY_FORM, DAHLIA, LARKSPUR, PHLOX


def test_it_is_known_of_every_form_how_much_its_papers_cover() -> None:
    assert PAPER.keys() == FORMS.keys()


@pytest.mark.parametrize("form", sorted(BY_FORM.keys() - {"leaf-spray"}))
def test_the_discs_of_a_head_have_the_area_of_its_papers(form: str) -> None:
    one = BY_FORM[form]
    bloom = Bloom(one, Point(0, 0), 20, Band.BACK, head_length(one))
    paper = PAPER[form] * math.pi / 4 * one.head_cm * head_length(one)
    assert sum(math.pi * r * r for _, _, r in discs(bloom)) == pytest.approx(paper)


FOCAL = dataclasses.replace(DAHLIA, count=1, shows_cm2=60.0)
FILLER = dataclasses.replace(PHLOX, count=1, head_cm=5.0, shows_cm2=20.0)


def test_a_filler_that_is_hidden_comes_forward_until_it_shows_its_share() -> None:
    front = Bloom(FOCAL, Point(0, 0), 0, Band.FRONT, 9)
    behind = Bloom(FILLER, Point(1, 1), 0, Band.MIDDLE, 5)
    sight = Sight([front, behind])
    assert sight.wanted == {FOCAL.id: 0.75, FILLER.id: 0.25}
    assert sight.unfairness() == pytest.approx(0.25)  # nothing is seen of the filler
    found = shared([front, behind])
    assert [bloom.lift for bloom in found.blooms] == [0, 1]
    assert found.unfair < 0.1


def test_what_lifting_a_head_would_bring_is_what_it_brings() -> None:
    places = [(0, 0), (3, 1), (-2, 3), (1, -3)]
    fillers = [Bloom(FILLER, Point(*at), 0, Band.MIDDLE, 5) for at in places]
    sight = Sight([Bloom(FOCAL, Point(0, 0), 0, Band.FRONT, 9), *fillers])
    for index in (3, 1, 4):
        foretold = sight.unfairness_with(index)
        sight.lift(index)
        assert sight.unfairness() == pytest.approx(foretold)


def test_lines_that_are_hidden_are_told_as_leaf_that_is_missing() -> None:
    line = dataclasses.replace(LARKSPUR, count=1, shows_cm2=60.0)
    head = Bloom(FOCAL, Point(0, 0), 0, Band.FRONT, 9)
    hidden, clear = (
        shared([head, Bloom(line, Point(0, y), 0, Band.BACK, 8)]).leaf_missing for y in (4, -4)
    )
    assert hidden == pytest.approx(0.5)
    assert clear < hidden


def test_heads_far_apart_cover_different_cells() -> None:
    one, other = masks([Bloom(FOCAL, Point(x, 0), 0, Band.FRONT, 9) for x in (0, 30)])
    assert one and other and not one & other


def test_the_whole_stays_as_large_where_leaf_stands_further_out() -> None:
    dome = Dome(Point(0, -20), 10, 8, 6, Hold(Point(0, -10), 2, 0, 2), leaf_out=1.2, line_out=1.1)
    out = dome.standing_out(1.25, 1.5)
    assert out.half_cm * out.leaf_out == pytest.approx(dome.half_cm * dome.leaf_out)
    assert out.up_cm * out.line_out == pytest.approx(dome.up_cm * dome.line_out)
    assert out.half_cm < dome.half_cm and out.up_cm < dome.up_cm


def test_of_two_large_heads_the_one_in_the_middle_comes_forward() -> None:
    """Each would show as much; the one at the edge would make the bunch look lopsided."""
    peony = dataclasses.replace(DAHLIA, id="peony", head_cm=13.0, count=2, shows_cm2=130.0)
    small = dataclasses.replace(FOCAL, count=6)
    edge, middle = (Bloom(peony, Point(x, -1), 0, Band.FRONT, 13) for x in (-9, 0))
    before = [Bloom(small, Point(x, 0), 0, Band.FRONT, 9) for x in (-11, -7, -2, 2, 7, 11)]
    lifted = [one for one in shared([edge, middle, *before]).blooms if one.lift]
    assert [one.at.x for one in lifted if one.stem is peony] == [0]

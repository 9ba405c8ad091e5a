"""What is said of a mix, and that its limits are the studio's."""

from __future__ import annotations

import pytest

from corymb.studio.models import ColourThresholds
from corymb.trade.colour.findings import KINDS, findings, kinds_of
from corymb.trade.colour.mixture import backing_of, mixture
from corymb.trade.colour.tally import Measures
from tests.trade.colour.mixes import HOUSE, bed, look

QUIET = Measures(60, 20, 0.3, 0.2, 0.08, 50, 30, 0.2)

LIMITS = {
    "flat": (QUIET._replace(spread=11.9), QUIET._replace(spread=12)),
    "sombre": (QUIET._replace(lightness=37.9), QUIET._replace(lightness=38)),
    "washed out": (QUIET._replace(lightness=78.1), QUIET._replace(lightness=78)),
    "cold": (QUIET._replace(cool=0.601), QUIET._replace(cool=0.6)),
    "alike": (QUIET._replace(hue_spread=17.9), QUIET._replace(hue_spread=18)),
    "lost": (QUIET._replace(lost=0.501), QUIET._replace(lost=0.5)),
}


def test_every_finding_has_its_limits_tried() -> None:
    assert list(LIMITS) == list(KINDS)


@pytest.mark.parametrize(("kind", "mixes"), LIMITS.items(), ids=LIMITS)
def test_a_finding_holds_beyond_its_limit_and_not_on_it(
    kind: str, mixes: tuple[Measures, Measures]
) -> None:
    beyond, on = mixes
    assert kinds_of(beyond, HOUSE) == {kind}
    assert kinds_of(on, HOUSE) == set()


def test_one_hue_is_no_sameness_where_lightness_varies() -> None:
    assert kinds_of(QUIET._replace(hue_spread=5, spread=23.9), HOUSE) == {"alike"}
    assert kinds_of(QUIET._replace(hue_spread=5, spread=24.0), HOUSE) == set()


def test_a_limit_is_the_studio_s_to_set() -> None:
    strict = ColourThresholds.model_validate({"flat below": "25", "cold above": "10 %"})
    assert kinds_of(QUIET, strict) == {"flat", "cold"}


LOOKS = {
    "one grey": (("5 mid-grey",), None, {"flat", "alike"}),
    "dark ones": (("5 plum", "4 black-plum", "3 navy", "1 moss"), None, {"flat", "sombre"}),
    "pale ones": (("6 white", "4 cream", "2 ice-blue"), None, {"flat", "washed out"}),
    "blues": (("5 cornflower", "2 navy"), None, {"cold", "flat", "sombre", "alike"}),
    "reds and pinks": (("5 crimson", "4 shell"), None, {"alike"}),
    "red and white": (("4 crimson", "4 white"), None, set()),
    "white on white": (("5 white", "1 plum", "1 crimson"), "#ffffff", {"washed out", "lost"}),
    "of all sorts": (("3 white", "3 plum", "2 apricot", "2 moss"), "#ffffff", set()),
}


@pytest.mark.parametrize(("lines", "against", "told"), LOOKS.values(), ids=LOOKS)
def test_a_florist_would_say_so_of_these(
    lines: tuple[str, ...], against: str | None, told: set[str]
) -> None:
    mix = mixture(look(*lines), bed(), backing_of(against, HOUSE))
    assert kinds_of(mix.measures, HOUSE) == told


WORDS = {
    "flat": "Flat: it is all about equally light, so nothing stands forward and nothing back.",
    "sombre": "Sombre: it is dark altogether. In a dim room the flowers run into one another.",
    "washed out": "Washed out: it is pale altogether. In strong light its shapes are hard to see.",
    "cold": "Cold: cool colours take 60 % of what is seen, warm ones 30 %.",
    "alike": "All alike: one family of colour, and not far apart in lightness either. It looks "
    "calm, and soon a little dull.",
    "lost": "Lost: 50 % of what is seen is nearly the colour of the white linen. "
    "From a few steps away those flowers are gone.",
}


@pytest.mark.parametrize(("kind", "words"), WORDS.items(), ids=WORDS)
def test_a_finding_is_told_in_plain_sentences(kind: str, words: str) -> None:
    (told,) = findings(LIMITS[kind][0], HOUSE, "white linen")
    assert (told.kind, told.words) == (kind, words)


def test_no_warm_colour_at_all_is_called_nothing() -> None:
    (told,) = findings(QUIET._replace(cool=0.8, warm=0.0), HOUSE)
    assert told.words == "Cold: cool colours take 80 % of what is seen, warm ones nothing."

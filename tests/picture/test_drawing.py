"""What every picture keeps to, whatever is drawn."""

import dataclasses
import gzip
import re
from xml.etree import ElementTree

import pytest

from corymb.picture import Arrangement, Vessel, draw
from corymb.picture.forms import FORMS
from corymb.picture.styles import STYLES, style_of
from corymb.picture.vessels import VESSELS
from tests.picture.samples import ARRANGEMENTS, DAHLIA, LACE, SMOKE_BUSH

SVG = "{http://www.w3.org/2000/svg}"
PLAIN = {"svg", "title", "desc", "defs", "g", "path", "use", "rect"}
every = pytest.mark.parametrize("arrangement", ARRANGEMENTS.values(), ids=ARRANGEMENTS)


def parsed(arrangement: Arrangement) -> ElementTree.Element:
    return ElementTree.fromstring(draw(arrangement))


def test_the_samples_hold_every_style_form_and_vessel() -> None:
    samples = ARRANGEMENTS.values()
    assert {style_of(one).lay for one in samples} == {style.lay for style in STYLES.values()}
    assert {stem.form for one in samples for stem in one.stems} == FORMS.keys()
    assert {one.vessel.kind for one in samples} == VESSELS.keys()


@every
def test_the_same_values_give_the_same_bytes(arrangement: Arrangement) -> None:
    assert draw(arrangement) == draw(dataclasses.replace(arrangement))


@every
def test_a_picture_is_plain_svg_that_a_strict_content_policy_lets_through(
    arrangement: Arrangement,
) -> None:
    for part in parsed(arrangement).iter():
        assert part.tag.removeprefix(SVG) in PLAIN
        for name, value in part.attrib.items():
            assert name != "style" and not name.startswith("on")
            assert "url(" not in value and "://" not in value
            assert name != "href" or value.startswith("#")


@every
def test_a_picture_has_a_role_a_title_and_a_description(arrangement: Arrangement) -> None:
    root = parsed(arrangement)
    assert root.get("role") == "img"
    labels = (root.get("aria-labelledby") or "").split()
    said = {part.get("id"): part.text or "" for part in root if part.tag != f"{SVG}defs"}
    assert all(said[label].strip() for label in labels) and len(labels) == 2
    for stem in arrangement.stems:
        assert f"{stem.count} {stem.id.replace('-', ' ')}" in said[labels[1]]


@every
def test_every_id_belongs_to_its_picture_and_every_reference_is_met(
    arrangement: Arrangement,
) -> None:
    root = parsed(arrangement)
    ids = [part.get("id", "") for part in root.iter() if part.get("id")]
    assert len(ids) == len(set(ids))
    assert all(one.startswith(f"{arrangement.id}-") for one in ids)
    assert {part.get("href", "")[1:] for part in root.iter(f"{SVG}use")} <= set(ids)


@every
def test_numbers_have_one_decimal_outside_matrices(arrangement: Arrangement) -> None:
    for part in parsed(arrangement).iter(f"{SVG}path"):
        assert not re.search(r"\.\d\d", part.get("d", ""))


@every
def test_a_picture_stays_below_sixty_kilobytes_as_it_is_sent(arrangement: Arrangement) -> None:
    assert len(gzip.compress(draw(arrangement).encode())) < 60_000


@pytest.mark.parametrize("kind", VESSELS)
@pytest.mark.parametrize("style", [*STYLES, "the studio's own"])
def test_every_style_can_be_drawn_in_every_vessel(style: str, kind: str) -> None:
    arrangement = Arrangement("any", style, Vessel(kind), 30, 30, (DAHLIA, LACE, SMOKE_BUSH))
    assert len(parsed(arrangement).findall(f".//{SVG}use")) > 10


def test_an_arrangement_without_stems_is_an_empty_vessel() -> None:
    for style in STYLES:
        empty = Arrangement("empty", style, Vessel("vase"), 20, 30, ())
        assert parsed(empty).findall(f".//{SVG}use") == []


HOSTILE = '"><script>alert(1)</script>&<!--]]>\x00\x1b\u202e'


def test_hostile_words_stay_words() -> None:
    stem = dataclasses.replace(DAHLIA, id=HOSTILE, name=HOSTILE)
    arrangement = Arrangement(
        HOSTILE, HOSTILE, Vessel(HOSTILE, HOSTILE), 20, 30, (stem,), "ffffff", HOSTILE, HOSTILE
    )
    root = parsed(arrangement)
    assert root.find(f".//{SVG}script") is None
    assert "<script>alert(1)</script>" in (root.findtext(f"{SVG}title") or "")
    assert all(re.fullmatch(r"[\w-]+", part.get("id", "x")) for part in root.iter())


@pytest.mark.parametrize("colour", ["red", "#fff", 'e8c2b4"/><script>', "", "e8c2b4 ", "12345g"])
def test_a_colour_that_is_none_is_refused(colour: str) -> None:
    with pytest.raises(ValueError, match="is no colour; write six hexadecimal digits"):
        dataclasses.replace(DAHLIA, colours=((colour, 100),))
    with pytest.raises(ValueError, match="is no colour"):
        dataclasses.replace(DAHLIA, green=colour)
    with pytest.raises(ValueError, match="is no colour"):
        Arrangement("x", "posy", Vessel(), 20, 30, (DAHLIA,), colour)


@pytest.mark.parametrize("size", [0.0, -3.0, float("nan")])
def test_a_head_or_an_arrangement_without_size_is_refused(size: float) -> None:
    with pytest.raises(ValueError, match="must have a size"):
        dataclasses.replace(DAHLIA, head_cm=size)
    with pytest.raises(ValueError, match="needs a size"):
        Arrangement("x", "posy", Vessel(), size, 30, (DAHLIA,))

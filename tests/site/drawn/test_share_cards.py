"""Every arrangement has an image for the messages that it is sent in, and no draft has one."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

import corymb
from corymb.site.drawn.pictures import draw_all
from corymb.site.drawn.share_cards import needs_card
from corymb.site.pages.page import Share
from corymb.site.raster import made_by
from corymb.studio.load import read_studio
from corymb.studio.models import Photo
from corymb.studio.studio import Studio
from corymb.trade.looks import look_by_id
from corymb.views.pieces import Audience, ImagePair, PhotoView, PictureView
from tests import conftest
from tests.site.trees import tree_of

STARTER = Path(corymb.__file__).parent / "starter" / "content"
SITE = "https://teaselandrook.example/"
PLAIN = ("index.html", "arrangements.html")


@pytest.fixture(scope="module")
def tags(demo_sites: dict[Audience, Path]) -> dict[str, dict[str, str]]:
    """What each page of a client that shows an arrangement tells messages, by its address."""
    root = demo_sites["clients"]
    files = [*(root / name for name in PLAIN)]
    files += [*(root / "arrangements").glob("*.html"), *(root / "styles").glob("*.html")]
    return {file.relative_to(root).as_posix(): told_by(file) for file in files}


def told_by(file: Path) -> dict[str, str]:
    tags = tree_of(file).xpath("//meta[@property]")
    return {tag.get("property"): tag.get("content") for tag in tags}


def test_no_arrangement_is_without_an_image_of_the_size_it_says(
    tags: dict[str, dict[str, str]], demo_sites: dict[Audience, Path]
) -> None:
    assert len(tags) > 100
    for path, told in tags.items():
        assert told["og:image:alt"], path
        card = demo_sites["clients"] / told["og:image"].removeprefix(SITE)
        with Image.open(card) as image:
            said = int(told["og:image:width"]), int(told["og:image:height"])
            assert (image.size, image.format) == (said, "JPEG"), path
        assert told["og:image:type"] == "image/jpeg"


def test_two_looks_have_two_cards(tags: dict[str, dict[str, str]]) -> None:
    pages = [told for path, told in tags.items() if path.startswith("arrangements/")]
    assert len({told["og:image"] for told in pages}) == len(pages)


def test_a_cards_name_is_of_what_it_shows(demo_sites: dict[Audience, Path]) -> None:
    cards = [*(demo_sites["clients"] / "assets" / "cards").glob("*.jpg")]
    assert len(cards) > 50
    for card in cards:
        drawing = demo_sites["clients"] / "assets" / "pictures" / f"{card.stem[:-9]}.svg"
        made_of = f"{made_by()} {drawing.read_text('utf-8')}"
        assert card.stem[-8:] == hashlib.sha256(made_of.encode()).hexdigest()[:8]


def test_staff_send_no_messages_and_get_no_cards(demo_sites: dict[Audience, Path]) -> None:
    assert not (demo_sites["staff"] / "assets" / "cards").exists()


def for_staff(photos: list[Photo]) -> list[Photo]:
    return [photo.model_copy(update={"may_be_shown_to": "staff"}) for photo in photos]


def hiding(studio: Studio, what: str) -> Studio:
    """The studio with all its recipes as drafts, or all their photos for staff."""
    if not what:
        return studio
    recipes, made = studio.recipes, studio.made
    drafts = {"draft": what == "recipes"}
    return replace(
        studio,
        recipes={
            known_as: recipe.model_copy(update={**drafts, "photos": for_staff(recipe.photos)})
            for known_as, recipe in recipes.items()
        },
        made={
            known_as: piece.model_copy(update={"photos": for_staff(piece.photos)})
            for known_as, piece in made.items()
        },
    )


@pytest.mark.parametrize(
    ("look", "hidden", "needed"),
    [
        pytest.param("hedgerow-jar", "", False, id="a photo of its own is its card"),
        pytest.param("hedgerow-jar", "photos", True, id="a photo for staff alone is none"),
        pytest.param("hedgerow-jar", "recipes", False, id="a draft is sent to nobody"),
        pytest.param("frost-button", "", True, id="no photo at all"),
    ],
)
def test_a_picture_stands_in_where_clients_see_no_photo(
    look: str, hidden: str, needed: bool
) -> None:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio is not None
    shown = look_by_id(look, studio.recipes)
    assert needs_card(hiding(studio, hidden), shown) is needed


def test_a_card_that_was_cut_off_is_made_again(tmp_path: Path) -> None:
    studio, _ = read_studio(STARTER)
    assert studio is not None

    def draw() -> dict[str, bytes]:
        return draw_all(studio, tmp_path, lambda what, done, total: None).cards

    first = draw()
    kept = [*tmp_path.glob("*.jpg")]
    assert first and len(kept) == len(set(first.values()))
    for file in kept:
        file.write_bytes(file.read_bytes()[:400])
    assert draw() == first


def test_a_photo_goes_before_the_picture() -> None:
    picture = PictureView("a.svg", 'drawing of "it"', 12, 14, "a.jpg")
    photo = PhotoView("photo", "", 3, 2, "", (), "b.jpg")
    assert Share.of_image(ImagePair(picture, photo)) == Share("b.jpg", "photo")
    assert Share.of_image(ImagePair(picture, None)) == Share("a.jpg", 'drawing of "it"')

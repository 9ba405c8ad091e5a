"""Bearded iris, winter iris, Dutch iris: three petals stand, three fall, each with its beard."""

from corymb.picture.colour import lightness, shade
from corymb.picture.forms.base import Drawn, Head, Sheet
from corymb.picture.geometry import Point
from corymb.picture.seed import give
from corymb.picture.shapes import lens, petal

HEART = 0.46  # how high the petals part, in widths of the flower
STANDARDS = ((0.0, 0.55), (-21.0, 0.53), (21.0, 0.53))  # lean, length in widths
FALLS = ((-112.0, 0.53, 0.36), (112.0, 0.53, 0.36), (178.0, 0.46, 0.4))  # lean, length, width
TONED = 0.2  # a second colour so near in lightness is the standards', a farther one the throat's


def draw(head: Head) -> Drawn:
    """The standards behind, then the falls at both sides, and the nearest over them."""
    sheet, rng, across = Sheet(), head.rng, head.across
    main, second = head.palette.main, _second(head)
    toned = abs(lightness(second) - lightness(main)) < TONED
    at = Point(0, -across * HEART)
    sheet.cut([lens(across * HEART * 1.1, across * 0.13, 0.6).at(0, 0, 0)], head.green)
    for index, (lean, part) in enumerate(STANDARDS):
        colour = second if index == 0 and toned else main
        cut = petal(across * part, across * 0.36, 0.6, 0.1, 0.03).at(*at, lean + give(rng, 2))
        sheet.layer([cut], shade(colour, 0.03 - 0.01 * index), across * 0.012, rim=across * 0.01)
        fold = lens(across * part * 0.8, across * 0.02).at(*at, lean)
        sheet.cut([fold], shade(colour, -0.03), True)
    for lean, part, wide in FALLS:
        turn = lean + give(rng, 3)
        cut = petal(across * part, across * wide, 0.68).at(*at, turn)
        sheet.layer([cut], shade(main, -0.02), across * 0.014, rim=across * 0.01)
        _beard(sheet, head, at, turn, part, "" if toned else second)
    return sheet.finished()


def _second(head: Head) -> str:
    """The colour between petals and beard."""
    return head.palette.colours[1] if len(head.palette.colours) > 2 else head.palette.main


def _beard(sheet: Sheet, head: Head, at: Point, lean: float, part: float, throat: str) -> None:
    """Down the middle of a fall, on the paler throat that some have."""
    long = head.across * part
    if throat:
        sheet.cut([petal(long * 0.62, head.across * 0.15, 0.6, 0.4).at(*at, lean)], throat, True)
    beard = head.palette.heart if head.palette.heart_share else shade(head.palette.main, 0.08)
    sheet.cut([lens(long * 0.5, head.across * 0.055).at(*at, lean)], beard, True)

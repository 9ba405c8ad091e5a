"""Invented arrangements to draw: all six styles, the four seasons, every form and vessel."""

from corymb.picture import Arrangement, PictureStem, Vessel


def stem(
    id: str,
    count: int,
    form: str,
    use: str,
    colours: str,
    head_cm: float,
    head_length_cm: float | None = None,
    heads: int = 1,
    green: str = "5d7350",
) -> PictureStem:
    """A stem in one line; colours as `e8c2b4 80 c98472 20`."""
    words = colours.split()
    shares = tuple((words[n], float(words[n + 1])) for n in range(0, len(words), 2))
    return PictureStem(id, count, form, use, "light", shares, green, head_cm, head_length_cm, heads)


DAHLIA = stem("dahlia-shell", 5, "rosette", "focal", "e8c2b4 80 c98472 20", 9)
COSMOS = stem("cosmos-white", 5, "daisy", "filler", "f3ecdf 92 d6a531 8", 7, heads=2)
LACE = stem("minoan-lace", 5, "umbel", "filler", "eef0e2 100", 8)
SCABIOUS = stem("scabious-plum", 5, "globe", "filler", "7b3f6d 100", 5)
LARKSPUR = stem("larkspur-dusk", 5, "spike", "line", "6d4c86 100", 4, 24)
PHLOX = stem("phlox-rose", 5, "cluster", "filler", "d9a3b4 90 f3e3c0 10", 7)
TULIP = stem("tulip-apricot", 7, "cup", "focal", "e6a08c 80 f0d0a0 20", 6)
BLUEBELL = stem("bluebell", 5, "bell", "line", "6f7fc4 100", 4, 14)
GRASS = stem("quaking-grass", 5, "plume", "filler", "b7a878 100", 5, 16)
IVY = stem("ivy", 3, "trail", "foliage", "4a6848 70 5d7d55 30", 7, 32)
SMOKE_BUSH = stem("smoke-bush", 7, "leaf-spray", "foliage", "4a2630 70 6b3a3a 30", 9, 24)
FIR = stem("silver-fir", 4, "needle-spray", "foliage", "3f5b46 70 8fa39a 30", 16, 34)
FLAG = stem("flag-leaf", 5, "blade", "line", "6b8a5a 70 84a068 30", 7, 46)
HIPS = stem("rosehip", 7, "berry", "filler", "b03a2a 100", 4)
IRIS = stem("iris-plum", 3, "iris", "line", "3f2147 80 6b4a86 15 d6a13c 5", 11)
LILY = stem("lily-white", 3, "trumpet", "focal", "f7f5ef 90 c5d19a 6 d9a83a 4", 12)
AMARANTH = stem("amaranth-red", 2, "tassel", "foliage", "7b1736 85 a84a62 15", 5, 34)
DOGWOOD = stem("dogwood-red", 5, "twig", "line", "9c2b2e 100", 5, 60)
POPPY_HEAD = stem("poppy-head", 5, "pod", "filler", "b0aa90 100", 3.4)
HONESTY = stem("honesty", 5, "pod", "filler", "e8e2cd 100", 4, heads=11)

BY_FORM = {
    one.form: one
    for one in (
        DAHLIA,
        COSMOS,
        LACE,
        SCABIOUS,
        LARKSPUR,
        PHLOX,
        TULIP,
        BLUEBELL,
        GRASS,
        IVY,
        SMOKE_BUSH,
        FIR,
        FLAG,
        HIPS,
        POPPY_HEAD,
        LILY,
        IRIS,
        AMARANTH,
        DOGWOOD,
    )
}

SMALL_HEAD = stem("ranunculus", 1, "rosette", "focal", "f0d9cf 85 d89a90 15", 3.6)
SMALL_LEAF = stem("myrtle", 3, "leaf-spray", "foliage", "7f9684 100", 2.6, 6)
SMALL_STAR = stem("cornflower", 9, "daisy", "filler", "4a62b8 80 2c2f6a 20", 3.2)

ARRANGEMENTS = {
    one.id: one
    for one in (
        Arrangement(
            "spring-posy", "posy", Vessel("hand"), 18, 28, (TULIP, BLUEBELL, SMALL_LEAF), "dfe6e4"
        ),
        Arrangement(
            "hedgerow-jar", "posy", Vessel("jar", "pint jar", 9, 12), 20, 26,
            (DAHLIA, LACE, COSMOS, GRASS, SMOKE_BUSH), "f4efe6",
        ),
        Arrangement(
            "barn-trough", "table-centre", Vessel("trough", "zinc trough", 36, 9), 62, 24,
            (DAHLIA, LACE, SCABIOUS, SMOKE_BUSH, HIPS, GRASS), "ece2cf",
        ),
        Arrangement(
            "christening-bowl", "table-centre", Vessel("bowl"), 40, 24,
            (TULIP, BLUEBELL, COSMOS, SMOKE_BUSH, IRIS), "e4ebe6",
        ),
        Arrangement(
            "rooks-wing-hand-tie", "bridal-hand-tie", Vessel("hand"), 38, 52,
            (SMOKE_BUSH, GRASS, LARKSPUR, LACE, PHLOX, SCABIOUS, DAHLIA, COSMOS, POPPY_HEAD, FLAG,
             HIPS, IVY), "efe9dd",
        ),
        Arrangement(
            "hotel-summer", "standing-piece", Vessel("urn", "stone urn", 30, 34), 85, 130,
            (LARKSPUR, FLAG, DAHLIA, PHLOX, LACE, SMOKE_BUSH, IVY, LILY, AMARANTH), "e9e4da",
        ),
        Arrangement(
            "hotel-winter", "standing-piece", Vessel("vase", "slate vase"), 75, 120,
            (SMOKE_BUSH, FIR, HIPS, POPPY_HEAD, GRASS, IVY, DOGWOOD), "3a4140",
        ),
        Arrangement(
            "winter-buttonhole", "buttonhole", Vessel("wire"), 6, 11, (SMALL_HEAD, SMALL_LEAF)
        ),
        Arrangement(
            "meadow-crown", "crown", Vessel("ring"), 26, 10, (SMALL_STAR, SMALL_HEAD, SMALL_LEAF)
        ),
        Arrangement("winter-wreath", "door piece", Vessel("ring"), 45, 45, (HIPS, SMOKE_BUSH)),
    )
}  # fmt: skip

"""Which flower forms can be drawn? One file each; a new form is a file and a line in this list."""

from collections.abc import Callable
from dataclasses import dataclass

from corymb.picture.forms import (
    bell,
    berry,
    blade,
    cluster,
    cup,
    daisy,
    globe,
    iris,
    leaf_spray,
    needle_spray,
    plume,
    pod,
    rosette,
    spike,
    tassel,
    trail,
    trumpet,
    twig,
    umbel,
)
from corymb.picture.forms.base import Drawn, Facing, Head


@dataclass(frozen=True)
class Form:
    """How a form is drawn, how it sits on its stem, and its usual length in widths."""

    draw: Callable[[Head], Drawn]
    facing: Facing
    length: float = 1.0  # widths long where the stem's file gives no length
    divisible: bool = False  # whether a sprig of it may stand for the whole, in small pieces
    tip: float = 5.0  # of a longer wand a specimen shows so many widths of the tip, or it is a hair
    strung: bool = False  # whether many heads hang along a branching stem
    cuts: int = 2  # how many different heads are cut, each seen from another side


FORMS: dict[str, Form] = {
    "rosette": Form(rosette.draw, Facing.FRONT),
    "daisy": Form(daisy.draw, Facing.FRONT),
    "umbel": Form(umbel.draw, Facing.FRONT, divisible=True, cuts=3),
    "globe": Form(globe.draw, Facing.FRONT),
    "cluster": Form(cluster.draw, Facing.FRONT, divisible=True, cuts=3),
    "cup": Form(cup.draw, Facing.SIDE),
    "iris": Form(iris.draw, Facing.SIDE),
    "trumpet": Form(trumpet.draw, Facing.FRONT),
    "spike": Form(spike.draw, Facing.SIDE, divisible=True, length=4.0),
    "bell": Form(bell.draw, Facing.SIDE, tip=3.2),
    "plume": Form(plume.draw, Facing.SIDE, divisible=True, length=3.0),
    "leaf-spray": Form(leaf_spray.draw, Facing.SIDE, divisible=True, length=2.5),
    "needle-spray": Form(needle_spray.draw, Facing.SIDE, divisible=True, length=2.0),
    "blade": Form(blade.draw, Facing.SIDE, divisible=True, length=6.0, tip=3.5),
    "berry": Form(berry.draw, Facing.SIDE, divisible=True),
    "pod": Form(pod.draw, Facing.SIDE, strung=True),
    "twig": Form(twig.draw, Facing.SIDE, divisible=True, length=9.0, tip=2.8),
    "tassel": Form(tassel.draw, Facing.HANGING, divisible=True, length=6.0, tip=7.0),
    "trail": Form(trail.draw, Facing.HANGING, divisible=True, length=5.0, tip=3.5),
}

__all__ = ["FORMS", "Drawn", "Facing", "Form", "Head"]

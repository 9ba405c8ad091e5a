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
    leaf_spray,
    plume,
    pod,
    rosette,
    spike,
    trail,
    umbel,
)
from corymb.picture.forms.base import Drawn, Facing, Head


@dataclass(frozen=True)
class Form:
    """How a form is drawn, how it sits on its stem, and its usual length in widths."""

    draw: Callable[[Head], Drawn]
    facing: Facing
    length: float = 1.0  # widths long where the stem's file gives no length
    may_be_cut: bool = False  # a branch is cut to fit; a flower keeps its size


FORMS: dict[str, Form] = {
    "rosette": Form(rosette.draw, Facing.FRONT),
    "daisy": Form(daisy.draw, Facing.FRONT),
    "umbel": Form(umbel.draw, Facing.FRONT),
    "globe": Form(globe.draw, Facing.FRONT),
    "cluster": Form(cluster.draw, Facing.FRONT),
    "cup": Form(cup.draw, Facing.SIDE),
    "spike": Form(spike.draw, Facing.SIDE, length=4.0, may_be_cut=True),
    "bell": Form(bell.draw, Facing.SIDE),
    "plume": Form(plume.draw, Facing.SIDE, length=3.0, may_be_cut=True),
    "leaf-spray": Form(leaf_spray.draw, Facing.SIDE, length=2.5, may_be_cut=True),
    "blade": Form(blade.draw, Facing.SIDE, length=6.0, may_be_cut=True),
    "berry": Form(berry.draw, Facing.SIDE),
    "pod": Form(pod.draw, Facing.SIDE),
    "trail": Form(trail.draw, Facing.HANGING, length=5.0, may_be_cut=True),
}

__all__ = ["FORMS", "Drawn", "Facing", "Form", "Head"]

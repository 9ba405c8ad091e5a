"""The drawn pictures of a studio: every look, and every stem by itself.

A picture depends on its arrangement and on nothing else, so it is kept by a digest of the
arrangement and of the code that draws, and drawn again when either changes.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

import corymb.picture
import corymb.trade.light
from corymb.code_digest import code_digest
from corymb.photos.sharing import SharedUse
from corymb.photos.whole_files import UNFINISHED, write_whole
from corymb.picture import draw, draw_stem
from corymb.site.lit import colours_in_light
from corymb.site.pictured import arrangement_of, picture_stem
from corymb.site.plans import drawn_plan, plan_drawing, plans_shown
from corymb.studio.studio import Studio
from corymb.trade.looks import looks_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing, PlanDrawing
from corymb.views.compose.light_switch import OTHERS

KEY_LENGTH = 32
ENDS = {"svg": "</svg>", "json": "}"}  # what a whole file of each kind ends with
KINDS = "|".join(ENDS)
OWN_NAME = re.compile(rf"[0-9a-f]{{{KEY_LENGTH}}}\.({KINDS})(\.[0-9a-f]+{re.escape(UNFINISHED)})?")
VIEW_BOX = re.compile(r'viewBox="\S+ \S+ (\S+) (\S+)"')
Progress = Callable[[str, int, int], None]
DRAWS = Path(str(corymb.picture.__file__)).parent
LIGHTS = Path(str(corymb.trade.light.__file__)).parent


@dataclass
class Pictures:
    """Drawn pictures (SVG) by address, and where each look's and each stem's is.

    `lit` tells, by address too, what becomes of each look's colours in other lights.
    """

    drawn: dict[str, str] = field(default_factory=dict)
    lit: dict[str, str] = field(default_factory=dict)
    drawings: dict[str, Drawing] = field(default_factory=dict)
    heads: dict[str, str] = field(default_factory=dict)
    plans: dict[str, PlanDrawing] = field(default_factory=dict)

    def files_for(self, catalogue: Catalogue) -> Iterator[tuple[str, bytes]]:
        """The pictures that an audience's site shows, and no others."""
        for looks in catalogue.looks.values():
            for look in looks.values():
                href = addresses.of_drawing(look)
                yield href, self.drawn[href].encode()
                href = addresses.of_colours_in_light(look)
                yield href, self.lit[href].encode()
        for href in (*self.heads.values(), *plans_shown(catalogue)):
            yield href, self.drawn[href].encode()


def draw_all(studio: Studio, folder: Path, progress: Progress) -> Pictures:
    """Every look's and every stem's picture, drawn or found in `folder`."""
    kept = _Kept(folder)
    pictures = Pictures()
    looks = [
        (recipe, look)
        for recipe in studio.recipes.values()
        for look in looks_of(recipe, studio.recipes).values()
    ]
    whole = len(looks) + len(studio.stems)
    for done, (recipe, look) in enumerate(looks, 1):
        arrangement = arrangement_of(recipe, look, studio.stems)
        href = addresses.of_drawing(look)
        svg = kept.or_made(repr(arrangement), lambda a=arrangement: draw(a))  # type: ignore[misc]
        pictures.drawn[href] = svg
        pictures.lit[addresses.of_colours_in_light(look)] = _in_other_lights(kept, svg)
        pictures.drawings[look.id] = Drawing(href, *sheet_size(svg))
        plan = kept.or_made(f"plan {arrangement}", lambda a=arrangement: drawn_plan(a))  # type: ignore[misc]
        pictures.drawn[addresses.of_plan(look)] = plan
        pictures.plans[look.id] = plan_drawing(look, arrangement, sheet_size(plan))
        progress("pictures", done, whole)
    for done, (stem_id, stem) in enumerate(studio.stems.items(), len(looks) + 1):
        alone = picture_stem(stem_id, stem)
        href = addresses.of_head(stem_id)
        pictures.drawn[href] = kept.or_made(repr(alone), lambda a=alone: draw_stem(a))  # type: ignore[misc]
        pictures.heads[stem_id] = href
        progress("pictures", done, whole)
    kept.forget_the_rest()
    return pictures


def _in_other_lights(kept: _Kept, svg: str) -> str:
    """What becomes of a picture's colours in each light that its page can be switched to."""
    told = f"{code_digest(LIGHTS)} {OTHERS} {svg}"
    return kept.or_made(told, lambda: colours_in_light(svg, OTHERS), "json")


def sheet_size(svg: str) -> tuple[float, float]:
    """The width and height of a picture's sheet, from its viewBox."""
    found = VIEW_BOX.search(svg)
    if found is None:
        raise ValueError("a drawn picture has no viewBox")
    return float(found[1]), float(found[2])


class _Kept:
    """Pictures kept between builds, each in a file named by its digest.

    Nothing else in the folder is touched, and nothing removed while another build is at it.
    """

    def __init__(self, folder: Path) -> None:
        folder.mkdir(parents=True, exist_ok=True)
        self.folder = folder
        self.used: set[str] = set()
        self.use = SharedUse(folder / "in-use")

    def or_made(self, described: str, made: Callable[[], str], kind: str = "svg") -> str:
        """The picture, or the table of its colours, as it was kept; or made now and kept."""
        digest = hashlib.sha256(f"{code_digest(DRAWS)} {described}".encode()).hexdigest()
        file = self.folder / f"{digest[:KEY_LENGTH]}.{kind}"
        self.used.add(file.name)
        try:
            text = file.read_text("utf-8")
            if text.rstrip().endswith(ENDS[kind]):
                return text
        except (OSError, UnicodeDecodeError):
            pass
        text = made()
        write_whole(file, text.encode())
        return text

    def forget_the_rest(self) -> None:
        """Remove the pictures that this run did not use, and what interrupted runs left."""
        if self.use.try_alone():
            for file in self.folder.iterdir():
                if OWN_NAME.fullmatch(file.name) and file.is_file() and file.name not in self.used:
                    file.unlink(missing_ok=True)
        self.use.end()

"""What is wrong with a studio that no single file shows? One module a question.

Errors stop a build; advice is for the studio to weigh.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import chain
from pathlib import Path

from corymb.checks.advice import overlooked
from corymb.checks.alike_photos import alike_photos
from corymb.checks.codes import known_codes
from corymb.checks.consents import two_consents
from corymb.checks.currencies import other_currencies
from corymb.checks.links import dead_links
from corymb.checks.looks import broken_changes
from corymb.checks.page_names import taken_names
from corymb.checks.photos import missing_photos
from corymb.checks.references import broken_references
from corymb.checks.shown_texts import shown_otherwise
from corymb.checks.strange_styles import strange_styles
from corymb.checks.style_links import shown_in_vain
from corymb.checks.styles import against_the_style
from corymb.checks.techniques import circular_lessons
from corymb.studio.load import read_folder
from corymb.studio.problems import Problem, in_order
from corymb.studio.studio import Studio

CHECKS: tuple[Callable[[Studio], list[Problem]], ...] = (
    broken_references,
    strange_styles,
    broken_changes,
    missing_photos,
    alike_photos,
    two_consents,
    circular_lessons,
    taken_names,
    dead_links,
    shown_otherwise,
    known_codes,
    other_currencies,
    against_the_style,
    overlooked,
    shown_in_vain,
)


def read_and_check(folder: Path) -> tuple[Studio | None, list[Problem]]:
    """The studio in `folder`, and everything that is wrong with it, in the order of files.

    A slip in one file doesn't hide those in others, nor others in the same file: each is told
    once. There is no studio when `studio.yml` itself can't be read.
    """
    read = read_folder(folder)
    found = all_found(read.mended) if read.mended is not None else ()
    return read.studio, in_order((*read.problems, *found))


def all_found(studio: Studio) -> Iterable[Problem]:
    """What the studio's files get wrong about each other, in any order, some of it twice."""
    return chain.from_iterable(check(studio) for check in CHECKS)

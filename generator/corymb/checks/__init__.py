"""What is wrong with a studio that no single file shows? One module a question.

Errors stop a build; advice is for the studio to weigh.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import chain

from corymb.checks.advice import overlooked
from corymb.checks.looks import broken_changes
from corymb.checks.photos import missing_photos
from corymb.checks.references import broken_references
from corymb.checks.styles import against_the_style
from corymb.checks.techniques import circles
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio

CHECKS: tuple[Callable[[Studio], list[Problem]], ...] = (
    broken_references,
    broken_changes,
    missing_photos,
    circles,
    against_the_style,
    overlooked,
)


def check_studio(studio: Studio) -> list[Problem]:
    """Everything that the studio's files get wrong about each other, in the order of files."""
    return sorted(set(chain.from_iterable(check(studio) for check in CHECKS)))

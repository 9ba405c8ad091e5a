"""Is a stem dried: does it stand without water, and keep for months?"""

from __future__ import annotations

from corymb.studio.models import Stem

DRY_DAYS = 60
"""A stem that may keep so long, and is never stood in water, is a dried one; no fresh one keeps
half as long. House value, no source."""


def is_dried(stem: Stem) -> bool:
    """Whether water is nothing to it; it would only rot there."""
    return not stem.conditioning.hours and stem.vase_life.most >= DRY_DAYS

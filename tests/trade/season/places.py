"""Places to grow at, for the tests of seasons."""

from __future__ import annotations

from corymb.studio.models.studio_file import ReferencePlace


def at(latitude: float, height: float = 0, longitude: float = 0) -> ReferencePlace:
    """A place by degrees and metres."""
    return ReferencePlace.model_validate({
        "name": "somewhere",
        "latitude": f"{latitude}",
        "longitude": f"{longitude}",
        "height": f"{height} m",
    })  # fmt: skip

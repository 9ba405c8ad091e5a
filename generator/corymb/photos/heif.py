"""Can the HEIC files that phones make be read here?

They need a decoder that Pillow doesn't carry, so it is an extra to install: most studios
never meet one, because phones hand over JPEGs when a photo is sent or exported.
"""

import importlib
from pathlib import Path

from corymb.photos import errors


def learn_to_read(source: Path) -> None:
    """Teach Pillow the format, or say which extra is missing."""
    try:
        importlib.import_module("pillow_heif").register_heif_opener()
    except ImportError as absent:
        raise errors.needs_heic(source) from absent

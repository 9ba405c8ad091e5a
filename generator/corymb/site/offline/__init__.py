"""The staff's site on a phone, in a field without signal: what is kept there, and how."""

from corymb.site.offline.files import LIST, WORKER, offline_files
from corymb.site.offline.manifest import MANIFEST

__all__ = ["LIST", "MANIFEST", "WORKER", "offline_files"]

"""Is this photo already made, and is what was made still whole?

Every photo has a note beside its files: what they are, how long, and the digest of each. The
note is written last, so a photo without one was never finished. A note or a file that isn't
what it was is treated as not there, and the photo is made again.
"""

import hashlib
import json
import os
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from corymb.files.unharmed import make_way
from corymb.files.whole import UNFINISHED, made_folder, write_whole
from corymb.photos.develop import Developed, Print
from corymb.photos.joint_notes import JointNotes
from corymb.photos.prepared import PhotoColour, PhotoFile, PreparedPhoto

_SUFFIX = {"avif": "avif", "jpeg": "jpg"}
_NOTE = ".json"


Stamp = tuple[int, int, int] | None


@dataclass(frozen=True)
class _Found:
    """A photo that was found whole, and each of its files (the note first) as it was then."""

    photo: PreparedPhoto
    stamps: tuple[tuple[Path, Stamp], ...]


# A live server builds again and again: what this program has read through once, it only looks at.
_FOUND: dict[str, _Found] = {}


class Store:
    """A flat folder of finished photos, each file's name starting with the photo's key."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        made_folder(folder)
        self._joint = JointNotes(folder.parent / "notes.json")

    def find(self, key: str) -> PreparedPhoto | None:
        known = _FOUND.get(f"{self.folder} {key}")
        if known and all(_stamp(path) == stamp for path, stamp in known.stamps):
            return known.photo
        return self._read(key)

    def _read(self, key: str) -> PreparedPhoto | None:
        note_path = self._note_path(key)
        stamps = [(note_path, _stamp(note_path))]
        try:
            note = self._note(key, note_path, stamps[0][1])
            checked = [self._checked(record) for record in note["files"]]
            photo = _photo(note, [file for file, _ in checked])
        except (OSError, ValueError, KeyError, TypeError):
            return None
        stamps += [(file.path, stamp) for file, stamp in checked]
        _FOUND[f"{self.folder} {key}"] = _Found(photo, tuple(stamps))
        return photo

    def _note(self, key: str, path: Path, stamp: Stamp) -> dict[str, Any]:
        """From the joint notes where its own file stands as it did, and else from that."""
        told = list(stamp or ())
        note = self._joint.of(key, told)
        if note is None:
            note = _read_note(path)
            self._joint.add(key, told, note)
        return note

    def save(self) -> None:
        """Have the notes at hand together for the next run."""
        self._joint.save()

    def keep(self, key: str, developed: Developed) -> PreparedPhoto:
        named = [(f"{key}-{each.size[0]}", each) for each in developed.prints]
        named.append((f"{key}-card", developed.share_card))
        records = [self._write(stem, each) for stem, each in named]
        note = {
            "width": developed.size[0],
            "height": developed.size[1],
            "placeholder": developed.placeholder,
            "average_hex": developed.average_hex,
            "palette": [[colour.hex, colour.share] for colour in developed.palette],
            "flowers": [[colour.hex, colour.share] for colour in developed.flowers],
            "files": records,
        }
        self._put(self._note_path(key), _note_bytes(note))
        return _photo(note, [self._file(record) for record in records])

    def remove_all_but(self, keys: Iterable[str]) -> int:
        """Remove other photos and what interrupted runs left; say how many photos went."""
        wanted, removed = set(keys), set()
        self._joint.keep_only(wanted)
        with os.scandir(self.folder) as entries:
            for entry in entries:
                key = entry.name.split("-")[0].split(".")[0]
                if key in wanted and not entry.name.endswith(UNFINISHED):
                    continue
                if not entry.is_dir():  # a folder is none of ours
                    Path(entry).unlink(missing_ok=True)
                    removed.add(key)
        return len(removed - wanted)

    def _write(self, stem: str, each: Print) -> dict[str, Any]:
        path = self.folder / f"{stem}.{_SUFFIX[each.format]}"
        self._put(path, each.data)
        return {
            "name": path.name,
            "format": each.format,
            "width": each.size[0],
            "height": each.size[1],
            "length": len(each.data),
            "digest": hashlib.sha256(each.data).hexdigest(),
            "changed": path.stat().st_mtime_ns,
        }

    @staticmethod
    def _put(path: Path, data: bytes) -> None:
        make_way(path)
        write_whole(path, data)

    def _checked(self, record: dict[str, Any]) -> tuple[PhotoFile, Stamp]:
        """Length and time of change are enough when both agree; a copied cache is read through."""
        file = self._file(record)
        path = os.fspath(file.path)
        status = os.stat(path)  # noqa: PTH116  # for thousands of files, twice as quick
        if status.st_size != record["length"]:
            raise ValueError(f"{file.name} is not as long as it was")
        if not os.access(path, os.R_OK):
            raise ValueError(f"{file.name} can't be read")
        if status.st_mtime_ns != record["changed"]:
            _check_digest(file.path, record["digest"])
        return file, (status.st_size, status.st_mtime_ns, status.st_mode)

    def _file(self, record: dict[str, Any]) -> PhotoFile:
        return PhotoFile(
            name=record["name"],
            format=record["format"],
            width=record["width"],
            height=record["height"],
            path=self.folder / record["name"],
        )

    def _note_path(self, key: str) -> Path:
        return self.folder / f"{key}{_NOTE}"


def _stamp(path: Path) -> Stamp:
    """Length, time of change and permissions; None for a file that isn't there."""
    try:
        status = path.stat()
    except OSError:
        return None
    return status.st_size, status.st_mtime_ns, status.st_mode


def _photo(note: dict[str, Any], files: list[PhotoFile]) -> PreparedPhoto:
    return PreparedPhoto(
        width=note["width"],
        height=note["height"],
        placeholder=note["placeholder"],
        average_hex=note["average_hex"],
        files=tuple(files[:-1]),
        share_card=files[-1],
        palette=tuple(PhotoColour(hex_, share) for hex_, share in note["palette"]),
        flowers=tuple(PhotoColour(hex_, share) for hex_, share in note["flowers"]),
    )


def _note_bytes(note: dict[str, Any]) -> bytes:
    """The note's own digest goes first, on a line by itself."""
    body = json.dumps(note).encode()
    return hashlib.sha256(body).hexdigest().encode() + b"\n" + body


def _read_note(path: Path) -> dict[str, Any]:
    digest, _, body = path.read_bytes().partition(b"\n")
    if hashlib.sha256(body).hexdigest().encode() != digest:
        raise ValueError(f"{path.name} is not what was written")
    note: dict[str, Any] = json.loads(body)
    return note


def _check_digest(path: Path, digest: str) -> None:
    if hashlib.sha256(path.read_bytes()).hexdigest() != digest:
        raise ValueError(f"{path.name} is not what was written")

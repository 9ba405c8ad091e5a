"""Which lock hangs on a site? The one that hung there before, where the passphrase fits it.

A lock is a salt and the keys that a passphrase makes of it. The salt lies open in the site, so that
nothing has to be kept anywhere else: the next build finds it there. With the same passphrase the
lock stays, and whatever hasn't changed stays as it was sealed, down to the byte; with another one
there is a new lock, and all is sealed anew.
"""

from __future__ import annotations

import json
import os
from dataclasses import dataclass
from pathlib import Path

from corymb.site.locked.keys import SALT_BYTES, Keys, Passphrase, keys_from
from corymb.site.locked.places import LOCK
from corymb.site.locked.sealing import SealBrokenError, seal, unseal

NOWHERE = ""
"""The address of what is sealed to tell a right passphrase by."""


@dataclass(frozen=True)
class Lock:
    """What a site is locked with, and what of it anyone may know."""

    salt: bytes
    rounds: int
    check: bytes
    keys: Keys

    @property
    def told(self) -> dict[str, str | int]:
        """Salt, rounds, and nothing, sealed: whoever can open that has the right passphrase."""
        return {"salt": self.salt.hex(), "rounds": self.rounds, "check": self.check.hex()}

    def file(self) -> bytes:
        """The same as the file that the next build looks for."""
        return (json.dumps(self.told) + "\n").encode()


def lock_for(passphrase: Passphrase, folder: Path) -> Lock:
    """The lock on the site that stands in a folder if the passphrase opens it, or a new one."""
    return standing_lock(passphrase, folder) or _new(passphrase)


def standing_lock(passphrase: Passphrase, folder: Path) -> Lock | None:
    """The lock on the site in a folder: none where there is none, or one of another passphrase.

    One of fewer rounds than are asked for today is none either.
    """
    try:
        told = json.loads((folder / LOCK).read_text("utf-8"))
        salt, check = bytes.fromhex(told["salt"]), bytes.fromhex(told["check"])
        if told["rounds"] != passphrase.rounds or len(salt) != SALT_BYTES:
            return None
        keys = keys_from(passphrase, salt)
        unseal(keys.files, NOWHERE, check)
    except (OSError, ValueError, KeyError, TypeError, SealBrokenError):
        return None
    return Lock(salt, passphrase.rounds, check, keys)


def is_locked(folder: Path) -> bool:
    """Whether a locked site stands there."""
    return (folder / LOCK).exists()


def _new(passphrase: Passphrase) -> Lock:
    salt = os.urandom(SALT_BYTES)
    keys = keys_from(passphrase, salt)
    return Lock(salt, passphrase.rounds, seal(keys.files, NOWHERE, b""), keys)

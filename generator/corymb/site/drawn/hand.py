"""One of the hands that draw side by side: a program that draws what it is asked for.

It ends when nobody asks any more, however that came about, and leaves an interruption from the
keyboard to whoever asks.
"""

from __future__ import annotations

import os
import pickle
import signal
import sys
from contextlib import suppress
from typing import IO

from corymb.language import in_language
from corymb.site.drawn.kept import Kept


def work() -> None:
    """First where to draw, by which code and in which language; then group after group."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    with os.fdopen(os.dup(1), "wb", buffering=0) as answers:
        os.dup2(2, 1)  # whatever else is printed is no answer
        folder, code, language = pickle.load(sys.stdin.buffer)
        with in_language(language), suppress(EOFError, BrokenPipeError):
            _draw_for(Kept(folder, code), sys.stdin.buffer, answers)


def _draw_for(kept: Kept, asking: IO[bytes], answers: IO[bytes]) -> None:
    while True:
        for one in pickle.load(asking):
            with suppress(Exception):  # it is tried again where mistakes are told
                one.drawn(kept)
        answers.write(b".")

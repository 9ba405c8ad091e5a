"""`corymb serve`, run as in a terminal: up, rebuilt with a save, and up still with an error."""

import os
import re
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from urllib.request import urlopen

import pytest

from corymb.site.live.live_site import LiveSite
from corymb.site.live.server import LiveServer
from tests.cli.conftest import Run, change

SECONDS = 90


@pytest.fixture
def served(studio: Path) -> Iterator[tuple[subprocess.Popen[bytes], Path]]:
    """The running command, and the file that its words go to."""
    words = studio / "words.txt"
    with words.open("wb") as told:
        running = subprocess.Popen(
            [sys.executable, "-c", "from corymb.cli import main; main()", "serve", "--port", "0"],
            cwd=studio,
            stdout=told,
            stderr=subprocess.STDOUT,
            env={**os.environ, "PYTHONUTF8": "1"},
        )
        yield running, words
        running.kill()
        running.wait()


def told(words: Path, pattern: str) -> re.Match[str]:
    """Wait until the command says this."""
    end = time.monotonic() + SECONDS
    while time.monotonic() < end:
        found = re.search(pattern, words.read_text(encoding="utf-8"))
        if found:
            return found
        time.sleep(0.05)
    raise AssertionError(f"not said: {pattern}\n{words.read_text(encoding='utf-8')}")


def test_a_save_is_seen_and_an_error_leaves_the_last_good_site_up(
    studio: Path, served: tuple[subprocess.Popen[bytes], Path]
) -> None:
    running, words = served
    address = told(words, r"clients +(http\S+)")[1]
    told(words, "Watching your files")
    house = studio / "content" / "studio.yml"

    def front_page() -> str:
        with urlopen(address) as answer:
            return str(answer.read().decode())

    change(house, "Flowers grown and made by hand", "Said anew")
    told(words, r"rebuilt in \d")
    assert "Said anew" in front_page()
    change(house, "tagline:", "tag line:")
    told(words, "Did you mean `tagline`\\?")
    told(words, "the last good site stays up")
    assert "Said anew" in front_page()
    running.send_signal(signal.SIGINT)
    assert running.wait(SECONDS) == 0
    assert words.read_text(encoding="utf-8").endswith("Ended.\n")


def test_a_port_in_use_is_said_with_one_that_may_be_free(
    studio: Path, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    other = LiveServer(LiveSite({}), 0)
    port = other.server_port
    result = run("serve", "--port", str(port))
    other.server_close()
    assert (result.exit_code, result.output) == (
        1,
        f"Error: Port {port} is in use, perhaps by another `corymb serve`. End that one, or take "
        f"another port: corymb serve --port {port + 1}\n",
    )

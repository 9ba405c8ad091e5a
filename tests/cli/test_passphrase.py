"""Which passphrase does a build lock with, and what is never done with it?"""

from __future__ import annotations

import os
from dataclasses import replace
from functools import partial
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest

from corymb.cli import passphrase as asked
from corymb.site.build import BuildReport
from corymb.site.locked.keys import VARIABLE, Passphrase
from corymb.site.locked.lock import lock_for
from corymb.site.locked.places import LOCK
from corymb.site.locked.publishing import refusal
from corymb.site.settings import SiteSettings
from tests.cli.conftest import Run, change

GOOD, OTHER = "plum lamp oar velvet kite", "mauve ladder, 7 otters"
ROUNDS = 10  # a test has no time for as many as are shipped


class Built:
    """What a build was asked for, in place of building."""

    passphrase: Passphrase | None = None
    lock_staff = False

    def build(self, settings: SiteSettings, *others: Any) -> BuildReport:
        self.passphrase, self.lock_staff = others[-1], settings.lock_staff
        return BuildReport()


@pytest.fixture
def built(studio: Path, monkeypatch: pytest.MonkeyPatch) -> Built:
    built = Built()
    monkeypatch.delenv(VARIABLE, raising=False)
    monkeypatch.setattr(import_module("corymb.cli.build"), "build_sites", built.build)
    monkeypatch.setattr(asked, "Passphrase", partial(Passphrase, rounds=ROUNDS))
    monkeypatch.setattr(asked, "can_ask", lambda: True)
    return built


def lock_with(passphrase: str, staff: Path) -> None:
    (staff / LOCK).parent.mkdir(parents=True)
    (staff / LOCK).write_bytes(lock_for(Passphrase(passphrase, ROUNDS), staff).file())


def test_a_new_passphrase_is_typed_twice_and_never_shown(built: Built, run: Run) -> None:
    result = run("build", "--lock-staff", typed=f"{GOOD}\n{GOOD}\n")
    assert result.exit_code == 0
    assert built.passphrase == Passphrase(GOOD, ROUNDS) and built.lock_staff
    assert "made just now by chance" in result.output
    assert "plum" not in result.output


def test_two_different_ones_are_asked_for_again(built: Built, run: Run) -> None:
    result = run("build", "--lock-staff", typed=f"{GOOD}\n{OTHER}\n{GOOD}\n{GOOD}\n")
    assert "do not match" in result.output
    assert built.passphrase == Passphrase(GOOD, ROUNDS)


def test_the_one_that_the_site_is_locked_with_is_typed_once(
    studio: Path, built: Built, run: Run
) -> None:
    lock_with(GOOD, studio / "staff")
    assert run("build", "--lock-staff", typed=f"{GOOD}\n").output == (
        "Passphrase for the staff's site: \n0 photos and 0 pictures, 0.0 s.\n"
    )
    assert built.passphrase == Passphrase(GOOD, ROUNDS)


def test_another_one_is_typed_once_more_and_its_consequence_told(
    studio: Path, built: Built, run: Run
) -> None:
    lock_with(GOOD, studio / "staff")
    result = run("build", "--lock-staff", typed=f"{OTHER}\n{OTHER}\n")
    assert "The site is locked with another one." in result.output
    assert asked.ANOTHER in result.output
    assert built.passphrase == Passphrase(OTHER, ROUNDS)


def test_a_slip_changes_no_passphrase(studio: Path, built: Built, run: Run) -> None:
    lock_with(GOOD, studio / "staff")
    result = run("build", "--lock-staff", typed=f"{GOOD}s\n{GOOD}\n")
    assert result.exit_code == 1 and built.passphrase is None
    assert "These were two different ones; nothing was built." in result.output


def test_the_setting_locks_every_build(studio: Path, built: Built, run: Run) -> None:
    change(studio / "mkdocs.yml", "- corymb:", "- corymb:\n      lock_staff: true")
    assert run("build", typed=f"{GOOD}\n{GOOD}\n").exit_code == 0
    assert built.passphrase == Passphrase(GOOD, ROUNDS)


def test_the_clients_site_alone_needs_none(built: Built, run: Run) -> None:
    assert run("build", "--for", "clients", "--lock-staff").exit_code == 0
    assert built.passphrase is None


def test_a_build_by_itself_takes_it_from_the_variable(
    built: Built, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(VARIABLE, GOOD)
    result = run("build", "--lock-staff")
    assert built.passphrase == Passphrase(GOOD, ROUNDS)
    assert "plum" not in result.output
    assert VARIABLE not in os.environ  # for the programs that help


def test_or_from_a_file_outside_the_studio(
    studio: Path, built: Built, run: Run, tmp_path: Path
) -> None:
    (tmp_path / "kept").write_text(f"{GOOD}\n")
    assert run("build", "--lock-staff", "--passphrase-file", str(tmp_path / "kept")).exit_code == 0
    assert built.passphrase == Passphrase(GOOD, ROUNDS)


def test_a_file_is_read_as_any_editor_writes_it(
    studio: Path, built: Built, run: Run, tmp_path: Path
) -> None:
    (tmp_path / "kept").write_bytes(f"\ufeff{GOOD}\r\n".encode())
    run("build", "--lock-staff", "--passphrase-file", str(tmp_path / "kept"))
    assert built.passphrase == Passphrase(GOOD, ROUNDS)


@pytest.mark.skipif(os.name != "posix", reason="no such permissions there")
@pytest.mark.parametrize(("mode", "told"), [(0o600, False), (0o640, True), (0o604, True)], ids=oct)
def test_a_file_that_others_can_read_is_told_of(
    studio: Path, built: Built, run: Run, tmp_path: Path, mode: int, told: bool
) -> None:
    kept = tmp_path / "kept"
    kept.write_text(GOOD)
    kept.chmod(mode)
    result = run("build", "--lock-staff", "--passphrase-file", str(kept))
    assert (f"Others on this machine can read {kept}" in result.output) is told


FILES = {
    "in the studio's folder": ("studio/kept", GOOD.encode(), "lies with the studio's own files"),
    "that isn't there": ("nothing", None, "can't be read: No such file"),
    "that is empty": ("kept", b"\n", "is empty, and should hold the passphrase"),
    "that is no text": ("kept", b"\xff\xfe\x00", "can't be read: it is not plain text"),
    "of two lines": ("kept", b"plum lamp oar\nvelvet kite", "what can't be typed"),
    "with a weak one": ("kept", b"plum", "This has 4 characters."),
}


@pytest.mark.parametrize("which", FILES)
def test_a_file_is_refused(which: str, studio: Path, built: Built, run: Run) -> None:
    name, content, said = FILES[which]
    file = studio.parent / name
    if content is not None:
        file.write_bytes(content)
    result = run("build", "--lock-staff", "--passphrase-file", str(file))
    assert result.exit_code == 1 and built.passphrase is None
    assert said in result.output


def test_one_of_the_studios_own_names_is_refused(built: Built, run: Run) -> None:
    result = run("build", "--lock-staff", typed="Hazel Row Dunmallow 2026\n" * 2)
    assert result.exit_code == 1 and built.passphrase is None
    assert "This is among what is guessed first." in result.output


def test_where_nobody_can_be_asked_it_says_what_to_do(
    built: Built, run: Run, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(asked, "can_ask", lambda: False)
    result = run("build", "--lock-staff")
    assert result.exit_code == 1 and built.passphrase is None
    assert asked.NOBODY_TO_ASK in result.output


def test_no_build_publishes_by_mistake_what_was_locked(studio: Path, run: Run) -> None:
    lock_with(GOOD, studio / "staff")
    result = run("build")
    assert result.exit_code == 1
    assert "now it would be published open" in result.output
    assert "take staff/locked/lock.json away first" in result.output
    assert not (studio / "clients").exists()


def test_what_is_to_be_locked_is_not_built_without_a_passphrase(studio: Path) -> None:
    settings = SiteSettings(studio / "mkdocs.yml", studio / "content", studio / ".cache")
    locked = replace(settings, lock_staff=True)
    assert "there is no passphrase" in (refusal(locked, ["clients", "staff"], None) or "")
    assert refusal(locked, ["clients"], None) is None
    assert refusal(locked, ["staff"], Passphrase(GOOD)) is None
    assert refusal(settings, ["staff"], None) is None

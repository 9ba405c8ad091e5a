"""How are problems, sums and progress told in a terminal?"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import Path

import click

from corymb.studio.problems import Problem
from corymb.studio.saying import counted

BAR_CELLS = 24
FEW = 12


def few_of(words: Iterable[str]) -> str:
    """The words, or the first of them where there are many."""
    known = list(words)
    return ", ".join(known[:FEW]) + (", …" if len(known) > FEW else "")


def seen_from_here(problem: Problem) -> Problem:
    """The same with its file as one would type it in the current folder."""
    return replace(problem, file=path_from_here(problem.file))


def path_from_here(file: Path) -> Path:
    """A path as one would type it in the current folder; whole where it lies on another drive."""
    try:
        return Path(os.path.relpath(file))
    except ValueError:
        return file


def tell_problems(problems: Iterable[Problem], with_lines: bool = True) -> None:
    """Each problem, with the line it stands in or on one line alone."""
    for problem in problems:
        seen = seen_from_here(problem)
        click.echo(seen.shown() if with_lines else str(seen), err=with_lines)


def sum_of(problems: Sequence[Problem]) -> str:
    """`2 errors and 1 piece of advice`; empty when there are none."""
    advice = sum(problem.advice for problem in problems)
    errors = len(problems) - advice
    parts = [counted(errors, "error", "errors")] if errors else []
    parts += [counted(advice, "piece of advice", "pieces of advice")] if advice else []
    return " and ".join(parts)


class Progress:
    """A bar that grows while photos and pages are made; nothing where no one is watching."""

    def __init__(self) -> None:
        self.watched = sys.stderr.isatty()

    def __call__(self, what: str, done: int, total: int) -> None:
        if not self.watched or total == 0:
            return
        full = BAR_CELLS * done // total
        bar = "#" * full + "-" * (BAR_CELLS - full)
        click.echo(f"\r{what:<10}[{bar}] {done}/{total} ", nl=False, err=True)

    def waiting(self, why: str) -> None:
        """Say why nothing happens yet, to whoever wonders."""
        self.end()
        click.echo(why, err=True)

    def end(self) -> None:
        """Clear the line for what comes next."""
        if self.watched:
            click.echo("\r" + " " * (BAR_CELLS + 32) + "\r", nl=False, err=True)

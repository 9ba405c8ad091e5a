"""What is to be done on which day, for all orders that have pages?"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from corymb.studio.values.dates import IsoWeek
from corymb.trade.hours.timeline import Step
from corymb.trade.orders.due import Due
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.shown import shown_dues, timed_due

TOLD = ("cut", "make", "hand over", "use")
"""The steps that someone has to be there for; conditioning goes on by itself."""


@dataclass(frozen=True)
class Task:
    """A step of an order's work; `number` counts those of the same name, from 1."""

    due: Due
    step: Step
    number: int

    @property
    def day(self) -> date:
        """The day it begins."""
        return self.step.start.date()


def tasks_of(catalogue: Catalogue) -> tuple[Task, ...]:
    """All tasks of all orders that have pages, by the hour they begin."""
    tasks = [task for due in shown_dues(catalogue) for task in _tasks(catalogue, due)]
    return tuple(sorted(tasks, key=lambda task: (task.step.start, task.due.id, task.step.name)))


def by_week(tasks: Iterable[Task]) -> dict[IsoWeek, list[Task]]:
    """The tasks of each week that has any."""
    found: dict[IsoWeek, list[Task]] = {}
    for task in tasks:
        found.setdefault(IsoWeek.of(task.day), []).append(task)
    return found


def _tasks(catalogue: Catalogue, due: Due) -> Iterable[Task]:
    seen = dict.fromkeys(TOLD, 0)
    for step in timed_due(catalogue, due).timeline.steps:
        if step.name in seen:
            seen[step.name] += 1
            yield Task(due, step, seen[step.name])

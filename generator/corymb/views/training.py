"""What the pages for learning show: the path, a piece step by step, questions, the record."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Link, PictureView
from corymb.views.recipe import PlanKeyLine


@dataclass(frozen=True)
class PathStepView:
    """One lesson to learn or one recipe to make."""

    kind: str  # lesson | recipe
    id: str
    title: str
    href: str
    practice_href: str  # where the recipe is made step by step; '' for a lesson
    level: str
    time: str
    minutes: int
    why: tuple[str, ...]  # why it comes now, a sentence each


@dataclass(frozen=True)
class PathView:
    """All that there is to learn and to make, in order."""

    steps: tuple[PathStepView, ...]
    lessons: int
    recipes: int
    time: str  # of all together
    indicative: str


@dataclass(frozen=True)
class PracticeStem:
    """A stem to fetch, and to find again in the steps."""

    name: str
    href: str
    hex: str
    count: int
    use: str
    bucket: str  # 'tall bucket, 25 to one'
    note: str
    number: str  # on the plan from above; '' where there is none


@dataclass(frozen=True)
class PracticeRole:
    """The stems of one colour part."""

    role: str
    total: int
    stems: tuple[PracticeStem, ...]


@dataclass(frozen=True)
class PracticeStep:
    """One step: what is done, with which stems, and what to be careful of in it."""

    number: int
    text: str
    note: str
    stems: tuple[PracticeStem, ...]
    careful: tuple[str, ...]


@dataclass(frozen=True)
class ExpectedView:
    """How long a piece takes, by how often one has made it."""

    minutes: int  # what the recipe says
    helper: tuple[int, ...]  # a helper's first piece, second, and so on
    words: str
    indicative: str


@dataclass(frozen=True)
class PracticeView:
    """A look made step by step."""

    id: str  # of the look
    recipe_id: str
    name: str
    look: Link
    picture: PictureView
    plan: PictureView | None
    key: tuple[PlanKeyLine, ...]
    vessel: str
    stems_total: int
    roles: tuple[PracticeRole, ...]
    besides: tuple[str, ...]
    gloves: tuple[str, ...]  # the stems that ask for them
    lessons: tuple[Link, ...]
    careful: tuple[str, ...]
    steps: tuple[PracticeStep, ...]
    looks_right: tuple[str, ...]
    expected: ExpectedView


@dataclass(frozen=True)
class QuestionView:
    """One question; where it is of no style, or of no recipe, it is asked of all of them."""

    number: int
    kind: str
    style: str
    recipe_id: str
    ask: str
    choices: tuple[str, ...]
    right: int  # its place among the choices, from 0
    answer: str
    because: tuple[str, ...]


@dataclass(frozen=True)
class QuestionsPart:
    """The questions of one style, or of the lessons."""

    id: str
    name: str
    questions: tuple[QuestionView, ...]


@dataclass(frozen=True)
class QuestionsView:
    """All questions, and the recipes that they may be narrowed to."""

    parts: tuple[QuestionsPart, ...]
    recipes: tuple[Link, ...]  # each by its id


@dataclass(frozen=True)
class RecordView:
    """The record: all that is in it is on the telephone."""

    email: str
    studio: str
    indicative: str

"""The kinds of pages that the sites have, each with one address to look at."""

from __future__ import annotations

from typing import NamedTuple

from corymb.views.pieces import Audience


class Kind(NamedTuple):
    """A page that stands for all of its kind."""

    audience: Audience
    name: str
    path: str

    def __str__(self) -> str:
        return f"{self.audience}-{self.name}"


BOTH = {
    "home": "index.html",
    "arrangements": "arrangements.html",
    "style": "styles/posy.html",
    "recipe": "arrangements/hedgerow-jar.html",
    "variant": "arrangements/hedgerow-jar--later.html",
    "in-season": "in-season.html",
    "your-date": "your-date.html?date=2026-09-19",
    "flowers": "flowers.html",
    "flower": "flowers/dahlia-shell.html",
    "made-list": "made.html",
    "made-piece": "made/barn-long-table.html",
    "prose": "care.html",
    "search": "search.html?q=dahlia",
    "lost": "arrangements/long/gone.html",
}
CLIENTS = {
    "kept": "kept.html#hedgerow-jar,plum-button,rooks-wing-hand-tie",
}
STAFF = {
    "this-week": "weeks/2026-W38.html",
    "orders": "orders.html",
    "order": "orders/barn-supper.html",
    "visit": "orders/lantern-house--2026-09-22.html",
    "bench-sheets": "orders/barn-supper-bench.html",
    "bucket-labels": "orders/barn-supper-labels.html",
    "load-sheet": "orders/barn-supper-load.html",
    "client-sheet": "orders/barn-supper-collection.html",
    "care-cards": "orders/barn-supper-cards.html",
    "price-list": "prices.html",
    "cut-list": "cut/2026-09-17.html",
    "no-signal": "no-signal.html?page=cut/2026-01-01.html",
    "standing-order": "standing/lantern-house.html",
    "style-links": "links.html",
    "weeks-ahead": "weeks-ahead.html",
    "learning": "learning.html",
    "practice": "practice/hedgerow-jar.html",
    "questions": "questions.html",
    "record": "record.html",
    "lessons": "lessons.html",
    "lesson": "lessons/conditioning.html",
    "house-rules": "house-rules.html",
}

KINDS = (
    *(Kind("clients", name, path) for name, path in (BOTH | CLIENTS).items()),
    *(Kind("staff", name, path) for name, path in (BOTH | STAFF).items()),
)


def kinds(*names: str, audience: Audience | None = None) -> tuple[Kind, ...]:
    """The kinds with these names, of one site or of both."""
    chosen = tuple(
        kind for kind in KINDS if kind.name in names and audience in (None, kind.audience)
    )
    assert {kind.name for kind in chosen} == set(names), f"no such kind among {names}"
    return chosen

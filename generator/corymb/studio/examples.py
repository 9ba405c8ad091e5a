"""What does each key look like, filled in? For a message about a key that is missing or wrong.

The text after the colon, as one would write it on one line. A test holds every example to the
reader, and every key of a model to having one.
"""

from __future__ import annotations

from typing import Any

import yaml

from corymb.studio.models.base import FileModel

PHOTO = (
    "{file: photos/hedgerow-jar.jpg, alt: A jar of cosmos on white linen, "
    "credit: Teasel & Rook, may be shown to: nobody}"
)

EXAMPLES: dict[str, dict[str, str]] = {
    "StudioFile": {
        "name": "Teasel & Rook",
        "tagline": "Flowers grown and made in a walled garden",
        "about": "Half an acre of flowers behind an old wall.",
        "language": "en-IE",
        "lengths in": "inches",
        "place": "{name: Dunmallow, latitude: 52.3, longitude: -7.1, height: 60 m, "
        "time zone: Europe/Dublin}",
        "reference place": "{name: the south of England, latitude: 51.2, longitude: -1.0, "
        "height: 80 m}",
        "contact": "{email: flowers@garden.example}",
        "money": "{currency: EUR, hourly rate: 19.00, overhead: 18 %, waste: 8 %, tax: 13.5 %, "
        "tax in prices: yes, round prices to: 5}",
        "cutting": "{spare: 10 %, keep standing: 25 %}",
        "work": "{people: 2, cut at: 06:30, make at: 08:00}",
        "buckets": "[{name: tall bucket, across: 29 cm, high: 38 cm, water: 5 L, "
        "empty weight: 0.9 kg}]",
        "vehicles": "[{name: small van, floor: 170 x 120 cm, height: 110 cm}]",
        "styles": "{posy: {name: Posy, plural: Posies, about: Small and rounded., "
        "place: table with food, stem length: 12-30 cm, heaviest stem: 30 g}}",
        "colour": "{flat below: 12}",
        "swaps": "{colour within: 20, most of a piece: 50 %}",
    },
    "ReferencePlace": {
        "name": "the south of England",
        "latitude": "51.2",
        "longitude": "-1.0",
        "height": "80 m",
    },
    "Place": {"name": "Dunmallow", "time zone": "Europe/Dublin"},
    "Contact": {
        "email": "flowers@garden.example",
        "phone": '"+353 00 000 0000"',
        "answer within": "2 days",
    },
    "MarkUp": {"grown": "2.6", "bought": "2.0", "sundries": "1.5"},
    "Money": {
        "currency": "EUR",
        "hourly rate": "19.00",
        "overhead": "18 %",
        "waste": "8 %",
        "mark up": "{grown: 2.6, bought: 2.0, sundries: 1.5}",
        "tax": "13.5 %",
        "tax in prices": "yes",
        "round prices to": "5",
    },
    "Cutting": {
        "habit step": "50",
        "delicate step": "25",
        "precious step": "1",
        "small step": "10",
        "spare": "10 %",
        "keep standing": "25 %",
    },
    "Work": {
        "people": "2",
        "cut at": "06:30",
        "cut at in heat": "05:00",
        "cut hours": "4",
        "stems an hour": "150",
        "make at": "08:00",
        "hours a day": "7",
        "make days before": "1",
        "before delivery": "2 h",
        "before collection": "4 h",
    },
    "Bucket": {
        "name": "tall bucket",
        "across": "29 cm",
        "high": "38 cm",
        "water": "5 L",
        "empty weight": "0.9 kg",
    },
    "Vehicle": {
        "name": "small van",
        "floor": "170 x 120 cm",
        "height": "110 cm",
        "note": "seats stay up",
    },
    "Style": {
        "name": "Posy",
        "plural": "Posies",
        "about": "Small and rounded, for a bedside.",
        "order": "1",
        "place": "table with food",
        "stem length": "12-30 cm",
        "heaviest stem": "30 g",
        "excludes": "[thorns]",
        "known object": "a half-litre jug, 16 cm high",
    },
    "ColourThresholds": {
        "flat below": "12",
        "sombre below": "38",
        "washed out above": "78",
        "cold above": "60 %",
        "alike below": "18",
        "lost within": "15",
        "lost above": "50 %",
        "accent above": "25 %",
        "photo lacks above": "20 %",
    },
    "Swapping": {"colour within": "20", "most of a piece": "50 %", "lines at most": "3"},
    "StemFile": {"group": "Dahlias", "stems": "{dahlia-shell: {}}"},
    "Stem": {
        "name": "Dahlia, shell",
        "botanical": "Dahlia",
        "use": "focal",
        "form": "rosette",
        "colours": "[shell e8c2b4 100 %]",
        "green": "5d7350",
        "head": "9 cm",
        "head length": "20 cm",
        "heads per stem": "1",
        "length": "60-90 cm",
        "weight": "25 g",
        "in season": "early July - mid October",
        "at best": "early August - mid September",
        "ends with": "frost",
        "vase life": "5-7 days",
        "cut when": "nearly full open, the back petals still firm",
        "conditioning": "{hours: 8, do: Stand deep in cool water overnight.}",
        "stems per bucket": "25",
        "cutting step": "25",
        "grown": "0.38",
        "bought": "1.40",
        "bed": "north wall 2",
        "hazards": "[poisonous to pets]",
        "caution": "Keep it away from the hay.",
        "scent": "light",
        "about": "The shell pink of early autumn.",
        "source": "common practice, no source",
        "notes": "Divide in spring.",
    },
    "Conditioning": {"hours": "8", "do": "Stand deep in cool water overnight."},
    "Recipe": {
        "name": "Hedgerow jar",
        "summary": "A pint jar picked as if along a lane.",
        "based on": "hedgerow-jar",
        "difficulty": "easy",
        "techniques": "[conditioning]",
        "time": "20 min",
        "across": "20 cm",
        "high": "26 cm",
        "vessel": "{kind: jar, name: pint jar}",
        "against": "white linen f4efe6",
        "stems": "['7 smoke-bush, depth']",
        "sizes": "{small: 0.6}",
        "price": "from 28",
        "sundries": "['1 pint jar, 1.20']",
        "method": "[Strip every leaf that would stand below the water.]",
        "looks right when": "[It looks gathered rather than built.]",
        "careful": "[Cut away from yourself.]",
        "care": "Top up every day.",
        "photos": f"[{PHOTO}]",
        "draft": "no",
        "notes": "The one to teach first.",
        "variants": "{later: {name: Later in the year, about: When the dahlias are over., "
        "scale: 120 %}}",
    },
    "RecipeLine": {
        "stem": "smoke-bush",
        "count": "7",
        "role": "depth",
        "use": "filler",
        "essential": "yes",
        "note": "cut short, to the collar of the jar",
    },
    "Swap": {
        "out": "dahlia-shell",
        "in": "cosmos-white",
        "out count": "3",
        "in count": "5",
        "role": "light",
    },
    "Drop": {"stem": "dahlia-shell", "count": "2"},
    "Vessel": {
        "kind": "jar",
        "name": "pint jar",
        "across": "9 cm",
        "high": "12 cm",
        "water": "0.5 L",
    },
    "Sundry": {"name": "jute twine", "count": "0.3", "unit": "m", "cost": "0.05"},
    "Scales": {"all": "120 %", "depth": "90 %", "light": "150 %", "accent": "80 %"},
    "Changes": {
        "swap": "[sweet-pea-plum -> scabious-plum]",
        "add": "['3 crocosmia-ember, accent']",
        "drop": "[2 dahlia-shell]",
        "scale": "120 %",
    },
    "Variant": {
        "name": "Later in the year",
        "about": "When the dahlias are over.",
        "builds on": "later",
        "price": "from 30",
        "time": "25 min",
        "method": "[Put in the zinnia last.]",
        "looks right when": "[You notice the zinnia second.]",
        "careful": "[Cut away from yourself.]",
        "care": "Top up every day.",
        "photos": f"[{PHOTO}]",
        "draft": "no",
    },
    "Photo": {
        "file": "photos/hedgerow-jar.jpg",
        "alt": "A jar of cosmos on white linen",
        "credit": "Teasel & Rook",
        "may be shown to": "nobody",
    },
    "MadeWork": {
        "title": "Long table in the barn",
        "recipe": "hedgerow-jar",
        "variant": "later",
        "date": "2026-09-19",
        "about": "Twelve jars down the middle of a long table.",
        "photos": f"[{PHOTO}]",
        "client": "the barn committee",
        "notes": "The light was good at four.",
    },
    "Client": {
        "name": "the barn committee",
        "email": "barn@example.org",
        "phone": '"+353 00 000 0002"',
    },
    "Where": {"place": "the old barn", "setting": "indoors", "light": "candle"},
    "OrderLine": {
        "quantity": "12",
        "recipe": "hedgerow-jar",
        "variant": "later",
        "size": "small",
        "in buckets": "yes",
        "from the mix": "yes",
    },
    "OrderBase": {
        "name": "Barn supper",
        "client": "{name: the barn committee}",
        "hours": "17:30-23:00",
        "where": "{place: the old barn, setting: indoors, light: candle}",
        "handover": "delivery",
        "vehicle": "small van",
        "spare": "10 %",
        "notes": "Ask for the key at the farm.",
        "learnt": "Two jars more next time.",
    },
    "Order": {
        "lines": "[12 hedgerow-jar]",
        "date": "2026-09-19",
        "visit of": "lantern-house",
        "used": "{dahlia-shell: 40}",
        "minutes": "260",
    },
    "StandingOrder": {
        "lines": "[1 lantern-house-winter]",
        "repeats": "weekly on Tuesday",
        "from": "2026-01-06",
        "until": "2026-12-29",
        "skip": "[2026-08-04]",
        "moved": "{2026-12-22: 2026-12-23}",
        "rotation": "[lantern-house-winter, lantern-house-spring]",
    },
    "Walk": {"counts": "{dahlia-shell: 120}", "notes": "No frost yet."},
    "CutLog": {
        "cuts": "{dahlia-shell: 4 July - 12 October}",
        "notes": "A bright warm spring and an early frost.",
    },
    "StyleLink": {
        "title": "For your barn supper",
        "for": "the barn committee",
        "code": "q3v8m2k7t5x9w4r6n1p0s8d2f7",  # no secret: `checks/codes.py` refuses it
        "date": "2026-09-19",
        "expires": "2026-10-10",
        "hours": "17:30-23:00",
        "where": "{place: the old barn, setting: indoors, light: candle}",
        "show": "['hedgerow-jar, later']",
        "note": "Four jars for each table.",
    },
    "LinkItem": {"recipe": "hedgerow-jar", "variant": "later", "size": "small"},
    "Page": {
        "title": "Caring for your flowers",
        "summary": "How to keep cut flowers fresh at home.",
        "menu": "Care",
        "order": "3",
        "for": "everyone",
    },
    "Technique": {
        "title": "Spiralling a hand-tie",
        "summary": "Stems that turn one way and stand by themselves.",
        "minutes": "30",
        "level": "steady",
        "needs": "[conditioning]",
        "careful": "[Cut away from yourself.]",
        "order": "3",
        "for": "staff",
    },
}
"""By model and key; keys that several models share stand under the model they come from."""


def example_of(model: type[FileModel] | None, key: str) -> str:
    """What may stand after a key's colon; empty where there is none."""
    for read_by in model.__mro__ if model else ():
        if key in EXAMPLES.get(read_by.__name__, {}):
            return EXAMPLES[read_by.__name__][key]
    return ""


def data_of(example: str) -> Any:
    """An example as a file's reader would give it."""
    return yaml.load(example, Loader=yaml.BaseLoader)

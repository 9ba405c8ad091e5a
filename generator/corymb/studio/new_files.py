"""What does a new recipe or stem look like before anyone has edited it?

The texts carry the comments that a first-time writer needs, and nothing that isn't asked for.
Values come in as the friendly texts that the readers take.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from textwrap import indent

from corymb.studio.scalars import as_scalar

MODELINE = re.compile(r"# yaml-language-server: \$schema=(?P<path>\S+)")


@dataclass(frozen=True)
class NewRecipe:
    """The answers that a new recipe is written from."""

    name: str
    summary: str
    difficulty: str
    time: str
    across: str
    high: str
    vessel_kind: str
    vessel_name: str
    stems: Sequence[str]
    price: str = ""


@dataclass(frozen=True)
class NewStem:
    """The answers that a new stem is written from."""

    id: str
    name: str
    botanical: str
    use: str
    form: str
    colours: Sequence[str]
    head: str
    head_length: str
    length: str
    weight: str
    in_season: str
    vase_life: str
    cut_when: str
    hours: str
    do: str
    stems_per_bucket: str
    cutting_step: str
    grown: str
    bought: str
    hazards: Sequence[str]
    source: str


def recipe_text(new: NewRecipe, modeline: str) -> str:
    """A recipe's file."""
    stems = "".join(f"  - {line}\n" for line in new.stems)
    price = f"price: {new.price}\n" if new.price else "# price: from 28\n"
    return f"""{modeline}name: {as_scalar(new.name)}
summary: {as_scalar(new.summary)}
difficulty: {new.difficulty}
time: {new.time}
across: {new.across}
high: {new.high}
vessel: {{kind: {new.vessel_kind}, name: {as_scalar(new.vessel_name, in_flow=True)}}}
# What it is seen against, NAME NUMBER:
# against: white linen f4efe6
stems:                        # COUNT STEM, ROLE; then a use, or `essential`
{stems}# Other sizes, as multiples of this one:
# sizes: {{small: 0.6, large: 1.5}}
# The guide price of this size, shown to clients:
{price}# Everything beside stems, COUNT NAME, COST:
# sundries:
#   - 1 pint jar, 1.20
method:                       # one step a line; a helper follows it alone
  - Strip every leaf that would stand below the water.
# looks right when:
#   - The tallest stem is one and a half times the vessel.
careful:                      # what can hurt, and how not to be hurt
  - Cut away from yourself.
# A named set of changes:
# variants:
#   later:
#     name: Later in the year
#     about: When the first flower stops.
#     swap:
#       - one-stem -> another-stem
draft: yes                    # take this line out to show it to clients
"""


def stem_text(new: NewStem, margin: int = 2) -> str:
    """A stem's entry, set in by `margin` spaces."""
    colours = "".join(f"    - {colour}\n" for colour in new.colours)
    optional = "".join(
        f"  {key}: {value}\n"
        for key, value in (("head length", new.head_length), ("bought", new.bought))
        if value
    )
    hazards = ", ".join(new.hazards)
    text = f"""{new.id}:
  name: {as_scalar(new.name)}
  botanical: {as_scalar(new.botanical)}
  use: {new.use}
  form: {new.form}
  colours:                    # NAME NUMBER SHARE
{colours}  head: {new.head}
{optional}  length: {new.length}
  weight: {new.weight}
  in season: {new.in_season}
  vase life: {new.vase_life}
  cut when: {as_scalar(new.cut_when)}
  conditioning:
    hours: {new.hours}
    do: {as_scalar(new.do)}
  stems per bucket: {new.stems_per_bucket}
  cutting step: {new.cutting_step}
  grown: {new.grown}
  hazards: [{hazards}]{"" if hazards else "                 # none known is not the same as safe"}
  source: {as_scalar(new.source)}
"""
    return indent(text, " " * margin)


def stem_file_text(group: str, entry: str, modeline: str) -> str:
    """A new file of stems with its first entry."""
    return f"{modeline}group: {as_scalar(group)}\nstems:\n{entry}"


def modeline_for(file: Path, kind: str, studio_folder: Path) -> str:
    """The first line that tells an editor the schema, taken after studio.yml's; '' without one."""
    try:
        first = (studio_folder / "studio.yml").read_text(encoding="utf-8").partition("\n")[0]
    except (OSError, UnicodeError):
        return ""
    found = MODELINE.fullmatch(first.strip())
    if found is None or "://" in found["path"]:
        return ""
    deeper = len(file.parent.relative_to(studio_folder).parts)
    schemas = Path(*[".."] * deeper, found["path"]).parent.as_posix()
    return f"# yaml-language-server: $schema={schemas}/{kind}.schema.json\n"

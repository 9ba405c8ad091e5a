"""A little studio around one of the demo's files: whatever that file needs, and little more.

The whole demo takes seconds to build. A little one takes a fraction, and still holds every kind
of file that has to do with the one that is looked at, which stands in it word for word.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cached_property
from io import BytesIO
from pathlib import Path, PurePosixPath

from PIL import Image

SETTINGS = "mkdocs.yml"
WORD = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
LEADS_TO = re.compile(r"\]\(([^)#:]+)")
VARIANTS = "\nvariants:\n"
END = "\n---\n"
PHOTO = re.compile(r"photos/[\w./-]+")
STEM = re.compile(r"(?m)^  (?=[a-z0-9-]+:$)")
VARIANT = re.compile(r"(?m)^  ([a-z0-9-]+):$")

ORDER = """\
name: Harvest supper
client: {{name: the barn committee, email: barn@example.org, phone: "+353 00 000 0000"}}
date: 2026-09-19
hours: 17:30-23:00
where: {{place: the old barn, setting: indoors, light: candle}}
handover: delivery
vehicle: small van
lines:
{lines}notes: Through the side door.
"""
MADE = """\
title: What was made
recipe: {recipe}
date: 2025-09-20
about: As it stood that evening.
photos:
  - {{file: photos/made.jpg, alt: What was made, credit: The studio, may be shown to: clients}}
"""
LINK = """\
title: For your supper
for: the barn committee
code: sr3nxk325gys6fmcgxevs7uvxve7
date: 2026-09-19
expires: 2026-10-10
show:
{lines}"""


class Demo:
    """The demo's files by their paths in its folder, and what each of them names."""

    def __init__(self, studio: Path, settings: Path) -> None:
        texts = [file for file in studio.rglob("*") if file.suffix in (".yml", ".md")]
        self.texts = {file.relative_to(studio).as_posix(): file.read_text() for file in texts}
        self.settings = settings.read_text()

    @cached_property
    def files(self) -> list[str]:
        """Every file that can be broken, the settings of the two sites among them."""
        return [SETTINGS, *sorted(self.texts)]

    @cached_property
    def known(self) -> dict[str, str]:
        """Which file to look into for a recipe, a lesson, a standing order or a stem."""
        known = {stem: file for file in self._in("stems") for stem in self._stems(file)}
        known.update({_id(f): f for f in self._in("recipes", "techniques", "orders/standing")})
        return known

    def _in(self, *folders: str) -> list[str]:
        return [f for f in sorted(self.texts) if f.startswith(tuple(f"{x}/" for x in folders))]

    def _stems(self, file: str) -> dict[str, str]:
        """Each stem of a group with its lines."""
        entries = STEM.split(self.texts[file])[1:]
        return {entry.partition(":")[0]: entry for entry in entries}

    def around(self, file: str) -> dict[str, bytes]:
        """The little studio around one file, all of it by path; the settings beside `content/`."""
        if file == SETTINGS or file == "studio.yml":
            begin = ["recipes/posy/hedgerow-jar.yml"]
        elif file.startswith("stems/"):
            begin = [file, *self._uses(file)]
        elif file.startswith(("walks/", "log/")):
            begin = [file, "recipes/posy/windfall-posy.yml"]
        else:
            begin = [file]
        needed = self._closure([*begin, "pages/care.md"], file)
        texts = {"studio.yml": self.texts["studio.yml"]}
        stems = {known_as for known_as in needed if known_as in self.known} - {*self.texts}
        for group in {self.known[stem] for stem in stems}:
            texts[group] = self._group(group, stems)
        texts.update({path: self._cut(path, file) for path in needed if path in self.texts})
        texts.update(self._made_up(texts))
        files = {path: text.encode() for path, text in texts.items()}
        return {SETTINGS: self.settings.encode(), **files, **dict(_photos(texts))}

    def _cut(self, path: str, looked_at: str) -> str:
        """Where another is looked at, a lesson without its text: that takes long to make.

        So do variants: a recipe is without them when the file that is looked at names none.
        """
        text = self.texts[path]
        if path == looked_at:
            return text
        if path.endswith(".md"):
            return text.partition(END)[0] + END
        recipe, variants, rest = text.partition(VARIANTS)
        words = {*WORD.findall(self.texts.get(looked_at, ""))}
        return text if not variants or words & {*VARIANT.findall(rest)} else recipe + "\n"

    def _closure(self, begin: Iterable[str], looked_at: str) -> set[str]:
        """The files that are needed, and the stems of groups that aren't needed whole."""
        needed: set[str] = set()
        waiting = list(begin)
        while waiting:
            one = waiting.pop()
            if one in needed:
                continue
            needed.add(one)
            waiting += self._named_in(one, looked_at)
        return needed

    def _named_in(self, one: str, looked_at: str) -> Iterator[str]:
        if one.startswith("stems/") or one not in self.texts:
            return
        text = self._cut(one, looked_at)
        if one.endswith(".md"):
            text, page = text.partition("\n---")[::2]
            yield from self._led_to(one, page)
        for word in WORD.findall(text):
            there = self.known.get(word)
            if there:
                yield word if there.startswith("stems/") else there

    def _led_to(self, one: str, page: str) -> Iterator[str]:
        for path in LEADS_TO.findall(page):
            name = PurePosixPath(path).stem
            beside = (PurePosixPath(one).parent / PurePosixPath(path).name).as_posix()
            yield from (f for f in (beside, self.known.get(name, "")) if f in self.texts)

    def _uses(self, group: str) -> list[str]:
        """The recipe that uses most of a group's stems."""
        stems = self._stems(group)
        recipes = self._in("recipes")
        texts = {f: self.texts[f].partition(VARIANTS)[0] for f in recipes}
        uses = {f: len(stems.keys() & {*WORD.findall(text)}) for f, text in texts.items()}
        return sorted(recipes, key=lambda file: -uses[file])[:1]

    def _group(self, group: str, stems: set[str]) -> str:
        head = STEM.split(self.texts[group])[0]
        entries = self._stems(group)
        return head + "".join(f"  {entries[stem]}" for stem in entries if stem in stems)

    def _made_up(self, texts: Mapping[str, str]) -> Iterator[tuple[str, str]]:
        """An order, made work, a style link and a walk, where the demo's own aren't looked at."""
        recipes = sorted(_id(path) for path in texts if path.startswith("recipes/"))
        kinds = {path.split("/")[0] for path in texts}
        if not recipes:
            return
        if "orders" not in kinds:
            lines = "".join(f"  - 2 {known_as}\n" for known_as in recipes)
            buckets = f"  - 3 {recipes[0]}, in buckets\n"
            yield "orders/2026/harvest-supper.yml", ORDER.format(lines=lines + buckets)
        if "made" not in kinds:
            yield "made/2025/as-it-stood.yml", MADE.format(recipe=recipes[0])
        if "links" not in kinds:
            lines = "".join(f"  - {known_as}\n" for known_as in recipes)
            yield "links/harvest-supper.yml", LINK.format(lines=lines)


def _photos(texts: Mapping[str, str]) -> Iterator[tuple[str, bytes]]:
    """A small photo for each that is named."""
    for at, path in enumerate(sorted({p for text in texts.values() for p in PHOTO.findall(text)})):
        taken = BytesIO()
        Image.new("RGB", (48, 32), (232, 194 - at, 180)).save(taken, "JPEG")
        yield path, taken.getvalue()


def _id(path: str) -> str:
    return PurePosixPath(path).stem

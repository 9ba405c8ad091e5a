"""What stands in the files of a site whose every text is an attack? Words, all of them."""

from __future__ import annotations

import csv
import json
import re
from collections.abc import Iterator
from io import StringIO
from pathlib import Path

import pytest
from icalendar import Calendar
from lxml import etree
from lxml.html import HtmlElement, document_fromstring

from corymb.site.book import Asked
from corymb.site.policy import POLICY
from corymb.site.render import THEME
from corymb.studio.folder import Found, files_of
from corymb.studio.load import read_studio
from corymb.views.pieces import AUDIENCES, Audience
from tests.hostile.studio import ATTACK, MAIL
from tests.site.books import made
from tests.site.trees import tree_of

NAME = re.compile("hz[0-9]{4}")
NEVER = {
    "iframe",
    "object",
    "embed",
    "base",
    "style",
    "frame",
    "applet",
    "frameset",
    "foreignObject",
}
LEADS = ("http://", "https://", "mailto:", "tel:", "data:image/")
EVENT = {"UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY", "TRANSP", "DESCRIPTION"}
SCHEME = re.compile("[a-z][a-z0-9+.-]*:", re.IGNORECASE)


def flat(text: str) -> str:
    """Words as a reader sees them: apostrophes, line ends and a capital letter aside."""
    return " ".join(text.replace("’", "'").split()).lower()


WHOLE = flat(ATTACK)


def pages_of(hostile: Path) -> list[Path]:
    return [
        page for site in ("clients", "staff") for page in sorted((hostile / site).rglob("*.html"))
    ]


def tags_of(tree: HtmlElement) -> Iterator[HtmlElement]:
    yield from tree.iter(etree.Element)


def test_every_file_holds_attacks_and_every_page_is_looked_at(hostile: Path) -> None:
    for found in files_of(hostile / "content"):
        assert isinstance(found, Found)
        assert NAME.search(found.file.read_text("utf-8")) or found.kind == "log"
    assert len(pages_of(hostile)) > 70


def test_no_page_holds_a_script_a_style_a_handler_or_a_frame(hostile: Path) -> None:
    for page in pages_of(hostile):
        for tag in tags_of(tree_of(page)):
            own = tag.get("type") == "application/ld+json" or not (tag.text or "").strip()
            assert tag.tag not in NEVER, page
            assert tag.tag != "script" or own, page
            assert not [a for a in tag.attrib if a.startswith("on") or a in ("style", "srcdoc")], (
                page
            )


def test_no_page_leads_to_a_script(hostile: Path) -> None:
    for page in pages_of(hostile):
        for tag in tags_of(tree_of(page)):
            for name in {"href", "src", "action", "formaction"} & set(tag.attrib):
                address = str(tag.get(name)).strip()
                assert address.startswith(LEADS) or not SCHEME.match(address), (page, address)


def test_every_page_says_each_text_whole(hostile: Path) -> None:
    said = 0
    for page in pages_of(hostile):
        tree = tree_of(page)
        texts = [str(text) for text in tree.xpath("//text()[not(parent::script)]")]
        texts = [
            "".join(texts),
            *(str(tree.xpath(f"string({what})")) for what in ("//title", "//h1")),
        ]
        for text in map(flat, texts):
            assert text.count(WHOLE) == len(NAME.findall(text)), page
        said += flat(texts[0]).count(WHOLE)
    assert said > 2000


def test_a_mail_has_one_receiver_and_nothing_that_a_text_slipped_in(hostile: Path) -> None:
    mails = {
        str(address)
        for page in pages_of(hostile)
        for address in tree_of(page).xpath("//a[starts-with(@href, 'mailto:')]/@href")
    }
    assert len(mails) > 10
    for mail in mails:
        receiver, _, asked = mail.removeprefix("mailto:").partition("?")
        assert receiver in (MAIL, "")
        assert {part.partition("=")[0] for part in asked.split("&")} <= {"subject", "body", ""}
        assert not re.search("[\r\n]", mail)
        assert not re.search("%0[ad]", mail.partition("&body=")[0], re.IGNORECASE), mail


def test_every_page_carries_the_policy_and_so_does_what_mkdocs_makes(hostile: Path) -> None:
    meta = "//meta[@http-equiv='Content-Security-Policy']"
    for page in pages_of(hostile):
        (policy,) = tree_of(page).xpath(meta)
        assert policy.get("content") == POLICY
        before = [tag.tag for tag in policy.itersiblings(preceding=True)]
        assert before == ["meta"], "nothing may be asked for before the policy is read"
    assert f'content="{POLICY}"' in (THEME / "main.html").read_text("utf-8")


def test_every_drawing_is_xml_with_nothing_in_it_that_runs(hostile: Path) -> None:
    drawings = [*(hostile / "clients").rglob("*.svg"), *(hostile / "staff").rglob("*.svg")]
    assert len(drawings) > 30
    said = ""
    for drawing in drawings:
        for tag in etree.parse(drawing).iter(etree.Element):
            assert etree.QName(tag).localname not in {"script", "a", "image", *NEVER}, drawing
            assert str(tag.get("href", "#")).startswith("#")
            assert not [name for name in tag.attrib if name.startswith(("on", "style", "{"))]
            said += f" {tag.text or ''}"
    assert flat(said).count(WHOLE) > 20


def test_a_calendar_has_its_own_events_and_no_line_of_a_text_s(hostile: Path) -> None:
    (file, *_) = sorted((hostile / "staff" / "weeks").glob("*.ics"))
    written = file.read_bytes()
    assert not re.search(rb"(?m)^(ATTENDEE|URL|BEGIN:VALARM)", written)
    calendar = Calendar.from_ical(written)
    assert {part.name for part in calendar.walk()} == {"VCALENDAR", "VEVENT"}
    for event in calendar.walk("VEVENT"):
        assert set(event) <= EVENT
        assert WHOLE in flat(str(event["SUMMARY"]))


def test_no_cell_of_a_table_is_a_formula_and_each_says_its_text_whole(hostile: Path) -> None:
    files = [*(hostile / "staff").rglob("*.csv")]
    assert len(files) > 4
    cells = [
        cell
        for file in files
        for row in csv.reader(StringIO(file.read_text("utf-8-sig"), newline=""))
        for cell in row
    ]
    texts = [cell for cell in cells if NAME.search(cell)]
    assert len(texts) > 50
    assert not [cell for cell in texts if cell.lstrip().startswith(("=", "+", "-", "@"))]
    assert not [cell for cell in texts if WHOLE not in flat(cell)]


@pytest.mark.parametrize(
    "path", ["clients/search.json", "staff/search.json", "staff/manifest.json"]
)
def test_what_scripts_read_says_each_name_whole(hostile: Path, path: str) -> None:
    told = json.loads((hostile / path).read_text("utf-8"))
    for entry in told if isinstance(told, list) else [told]:
        words = flat(
            " ".join(entry.get(key, "") for key in ("title", "about", "name", "description"))
        )
        assert words.count(WHOLE) == len(NAME.findall(words))
    assert NAME.search(json.dumps(told))


def test_what_search_engines_are_told_cannot_end_its_script(hostile: Path) -> None:
    told = 0
    for page in sorted((hostile / "clients").rglob("*.html")):
        for script in tree_of(page).xpath("//script[@type='application/ld+json']/text()"):
            assert not re.search("[<>&]", script)
            words = flat(json.dumps(json.loads(script), ensure_ascii=False))
            assert words.count(flat(json.dumps(ATTACK)[1:-1])) == len(NAME.findall(words))
            told += 1
    assert told > 10


@pytest.mark.parametrize("audience", AUDIENCES)
def test_the_book_holds_words_and_a_policy_that_lets_no_script_in(
    hostile: Path, audience: Audience
) -> None:
    studio, _ = read_studio(hostile / "content")
    assert studio
    tree = document_fromstring(made(studio, Asked(audience)).page)
    policy = tree.xpath("string(//meta[@http-equiv]/@content)")
    assert policy.startswith("default-src 'none'; ")
    assert "script-src" not in policy
    for tag in tags_of(tree):
        assert tag.tag not in {"script", *NEVER}
        assert not [name for name in tag.attrib if name.startswith("on") or name == "style"]
    words = flat("".join(tree.xpath("//body//text()")))
    assert words.count(WHOLE) == len(NAME.findall(words)) > 20

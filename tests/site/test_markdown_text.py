"""A studio's Markdown becomes words and links, and nothing that runs."""

from __future__ import annotations

import pytest
from bs4 import BeautifulSoup

from corymb.site.markdown_text import Writer, site_address
from corymb.studio.comments import without_comments
from corymb.studio.leads import leads_of

HOSTILE = {
    "a script element": "<script>alert(1)</script>",
    "a handler": '<img src=x onerror="alert(1)">',
    "a script in a block": "before\n\n<div onclick='alert(1)'>\n\ntext\n\n</div>\n",
    "a script in a link": "[click](javascript:alert(1))",
    "a script in a link, broken by a tab": "[click](java\tscript:alert(1))",
    "a script in a link, in capitals": "[click](JaVaScRiPt:alert(1))",
    "a script in a reference": "[click][x]\n\n[x]: javascript:alert(1)",
    "a script in an image": "![alt](javascript:alert(1))",
    "a data page": "[click](data:text/html,<script>alert(1)</script>)",
    "an automatic link": "<javascript:alert(1)>",
    "an entity in a link": "[click](java&#115;cript:alert(1))",
}


COMMENTS = {
    "on a line of its own": ("One\n\n<!-- call Mary -->\n\ntwo", "One two"),
    "within a line": ("One <!-- call Mary --> two", "One two"),
    "over several paragraphs": ("One\n\n<!-- call\n\nMary -->\n\ntwo", "One two"),
    "in a list": ("- One\n- <!-- call Mary -->two", "One two"),
    "after a stray backtick": ("One <!-- call ` Mary --> two ` three", "One two ` three"),
    "in code, as an example": ("One `<!-- two -->`", "One <!-- two -->"),
}


@pytest.mark.parametrize(("text", "seen"), COMMENTS.values(), ids=COMMENTS)
def test_a_comment_is_the_author_s_own(text: str, seen: str) -> None:
    page = BeautifulSoup(Writer().prose(text, "care.html").html, "html.parser").get_text(" ")
    assert " ".join(page.split()) == seen
    assert "Mary" not in without_comments(text)


def test_a_comment_in_fenced_code_is_an_example() -> None:
    text = "```\n<!-- two -->\n```\n"
    assert "&lt;!-- two --&gt;" in Writer(("fenced_code",)).prose(text, "care.html").html
    assert without_comments(text) == text


def test_a_link_in_a_comment_leads_nowhere() -> None:
    assert not leads_of("<!-- [old](old.md) -->").addresses


@pytest.mark.parametrize("text", HOSTILE.values(), ids=HOSTILE)
def test_nothing_in_a_text_runs(text: str) -> None:
    soup = BeautifulSoup(Writer().prose(text, "care.html").html, "html.parser")
    assert soup.find(["script", "iframe", "div", "style"]) is None
    for tag in soup.find_all(True):
        assert not [name for name in tag.attrs if name.startswith("on")]
        for name in ("href", "src"):
            address = str(tag.get(name, "#")).lower()
            assert address.partition(":")[0] not in ("javascript", "data", "vbscript")


NAMED = {
    "on a heading": '## Pets {: onclick="alert(1)" style="color: red" data-share="x" .calm }',
    "on a link": '[care](care.md){: onmouseover="alert(1)" formaction="x" ping="x" .calm }',
    "on code": '``` { .python .calm onclick="alert(1)" style="color: red" }\nprint()\n```',
}


@pytest.mark.parametrize("text", NAMED.values(), ids=NAMED)
def test_a_tag_keeps_no_attribute_but_those_that_words_need(text: str) -> None:
    writer = Writer(("fenced_code", "attr_list"))
    soup = BeautifulSoup(writer.prose(text, "about.html").html, "html.parser")
    assert {name for tag in soup.find_all(True) for name in tag.attrs} <= {"id", "class", "href"}
    assert soup.find(class_="calm") or soup.find("code")


def test_a_column_is_aligned_by_a_class_since_the_policy_forbids_styles() -> None:
    table = "| Stems | Flower |\n| ---: | :---: |\n| 3 | Dahlia |\n"
    soup = BeautifulSoup(Writer().prose(table, "care.html").html, "html.parser")
    assert [cell.attrs for cell in soup.find_all("td")] == [
        {"class": ["to-right"]},
        {"class": ["to-middle"]},
    ]


ADDRESSES = {
    "a page from a page": ("how-to-order.md", "care.html", "how-to-order.html"),
    "a part of a page": ("care.md#pets", "about.html", "care.html#pets"),
    "a lesson from a page": ("../techniques/buckets.md", "care.html", "lessons/buckets.html"),
    "a lesson from a lesson": ("buckets.md", "lessons/conditioning.html", "buckets.html"),
    "a page from a lesson": ("../pages/care.md", "lessons/conditioning.html", "../care.html"),
    "elsewhere": ("https://example.org/a.md", "care.html", "https://example.org/a.md"),
    "a mail": ("mailto:a@b.example", "care.html", "mailto:a@b.example"),
    "within the page": ("#pets", "care.html", "#pets"),
}  # fmt: skip


@pytest.mark.parametrize(("written", "page", "expected"), ADDRESSES.values(), ids=ADDRESSES)
def test_a_link_in_markdown_leads_to_the_sites_page(written: str, page: str, expected: str) -> None:
    assert site_address(written, page) == expected


def test_headings_can_be_led_to() -> None:
    prose = Writer().prose("## On pets\n\ntext\n\n### Cats\n", "care.html")
    assert (prose.headings[0].label, prose.headings[0].href) == ("On pets", "#on-pets")


@pytest.mark.parametrize("heading", ["On pets", "Für die Katze", "Cats & dogs' beds", "2 days"])
def test_a_heading_has_the_anchor_that_links_are_checked_by(heading: str) -> None:
    text = f"## {heading}\n\n## {heading}\n"
    prose = Writer(("toc",), {"toc": {"separator": "_", "permalink": True}}).prose(text, "a.html")
    anchors = {link.href.removeprefix("#") for link in prose.headings}
    assert anchors == leads_of(text).anchors
    assert len(anchors) == 2

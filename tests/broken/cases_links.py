"""Links in pages and lessons that lead nowhere, or lead clients where they can't go."""

from tests.broken.bench import (
    FIRST_LESSON,
    LESSON,
    PAGE,
    Case,
    Told,
    advice,
    at,
    case,
    new_file,
)

WATER = "Fresh water every day."
TURN = "Turn the bunch as you go."
STAFF_PAGE = "---\ntitle: Keys\nsummary: Where they hang.\nfor: staff\n---\n\n"


def in_page(name: str, link: str, *told: Told) -> Case:
    """A link in a page that is for everyone; the places count from the line's beginning."""
    return case(name, PAGE, WATER, f"Fresh water, {link}", *told)


def in_lesson(name: str, link: str, *told: Told) -> Case:
    """A link in a lesson, which is for staff."""
    return case(name, LESSON, TURN, f"Turn it, {link}.", *told)


CASES = [
    in_page(
        "a link to a page that isn't there",
        "[see](nothing.md)",
        at(8, 20, "no page or lesson ‘nothing.md’. Write it first, or take the link out."),
    ),
    in_lesson(
        "a link to a lesson misspelt",
        "[first](conditionning.md)",
        at(11, 18, "no page or lesson ‘conditionning.md’. Did you mean ‘conditioning.md’?"),
    ),
    in_lesson(
        "a link to a page, misspelt, from a lesson",
        "[first](../pages/cair.md)",
        at(11, 18, "Did you mean ‘../pages/care.md’?"),
    ),
    in_lesson(
        "a link that forgets to leave the folder",
        "[care](care.md)",
        at(11, 17, "no page or lesson ‘care.md’. Did you mean ‘../pages/care.md’?"),
    ),
    in_page(
        "a link written twice, once below its text",
        "[see](nothing.md) and [again][n]\n\n[n]: nothing.md 'Nothing'",
        at(8, 20, "no page or lesson ‘nothing.md’"),
        at(10, 6, "no page or lesson ‘nothing.md’"),
    ),
    in_page(
        "a link to a lesson for staff",
        "[see](../techniques/tying.md)",
        at(
            8,
            20,
            "‘../techniques/tying.md’ is for staff alone, and clients read this too: take the "
            "link out, or write `for: staff` in the heading here.",
        ),
    ),
    in_page(
        "a link to a recipe's page, misspelt",
        "[the jar](arrangements/hedgrow-jar.html)",
        at(8, 24, "Did you mean ‘arrangements/hedgerow-jar.html’?"),
    ),
    in_page(
        "a link to the list of lessons, which are all for staff",
        "[lessons](lessons.html)",
        at(8, 24, "‘lessons.html’ is for staff alone, and clients read this too"),
    ),
    in_lesson(
        "a link to a heading that isn't there",
        "[first](conditioning.md#water)",
        at(11, 18, "‘conditioning.md’ has no heading ‘#water’. Take it out."),
    ),
    case(
        "a link to a heading of the same text, misspelt",
        LESSON,
        TURN,
        "[Below](#the-nott).\n\n## The knot\n\n## The string",
        at(11, 9, "This text has no heading ‘#the-nott’. Did you mean ‘#the-knot’?"),
    ),
    case(
        "a link to a heading that was never written",
        LESSON,
        TURN,
        "[Below](#scissors).\n\n## The knot\n\n## The string",
        at(11, 9, "no heading ‘#scissors’. It has the-knot and the-string."),
    ),
    in_page(
        "a link that begins with a slash",
        "[see](/care.html)",
        at(8, 20, "begins with a slash"),
    ),
    in_page(
        "a photo in a text",
        "![the jar](../photos/hedgerow-jar.jpg)",
        at(8, 25, "‘../photos/hedgerow-jar.jpg’ isn't on the site: a text leads to pages"),
    ),
    in_page("a link to nowhere at all", "[see]()", at(8, 20, "This link is empty")),
    in_page(
        "a link that begins like nothing a browser opens",
        "[see](htps://example.org/)",
        at(8, 20, "an address elsewhere begins with https:, mailto: or tel:."),
    ),
    in_page(
        "an address with a bracket too many",
        "[see](https://[example.org/)",
        at(8, 20, "‘https://[example.org/’ is not an address: copy it anew."),
    ),
    in_page(
        "a link with a letter held by a stroke",
        r"[see](not\_here.md)",
        at(7, 1, "no page or lesson ‘not_here.md’"),
    ),
    in_page("a link elsewhere", "[a](https://example.org/x.md#y) <me@example.org> [b](//c.org/d)"),
    in_page("a link to the same page", "[up](#) [here](care.md) [there](care.html?a=b)"),
    in_page("links to pages of the site", "[a](arrangements/hedgerow-jar--later.html#top)"),
    in_page("a link in code is only shown", "`[see](nothing.md)`\n\n    [see](nothing.md)\n"),
    in_lesson("a lesson leads to lessons and pages", "[a](conditioning.md) [b](../pages/care.md)"),
    new_file(
        "a page for staff leads to lessons, from further down",
        "pages/bench/keys.md",
        f"{STAFF_PAGE}[a](../../techniques/tying.md), [b](../care.md), [c](../../lessons.html)\n",
        at(7, 54, "There is no page ‘../../lessons.html’. Did you mean ‘lessons.html’?"),
    ),
    new_file(
        "a page with the name of one that the site has",
        "pages/flowers.md",
        "---\ntitle: Flowers\nsummary: All of them.\n---\n\nMany.\n",
        at(
            1,
            1,
            "The site has a page of its own at flowers.html: rename this file, for instance to "
            "‘our-flowers.md’.",
        ),
    ),
    case(
        "a lesson whose readers are misspelt",
        FIRST_LESSON,
        "level: easy",
        "level: easy\nfor: everybody",
        at(6, 6, "‘everyone’"),
    ),
    in_page(
        "HTML, of which the first three tags are told",
        '<iframe src="x"></iframe> <b>fresh</b> <script>x</script> <i>',
        advice(8, 14, '‘<iframe src="x">’ will be read as it stands here'),
        advice(8, 40, "‘<b>’ will be read as it stands here, since pages hold no HTML: write"),
        advice(8, 53, "‘<script>’ will be read as it stands here"),
    ),
    in_page("HTML in code, and signs that are none", "`<b>` where 2 <3 and a<b or <a@b.example>"),
    in_lesson(
        "a picture from another site",
        "![a jar](https://elsewhere.example/jar.jpg)",
        at(11, 19, "a picture on another site, and pages show none but your own"),
    ),
]

"""What does a client's answer to a style link begin with?

The looks that were chosen, and room for what the studio has to know. Without script the mail holds
all of them, to strike out what isn't wanted.
"""

from __future__ import annotations

from collections.abc import Iterable
from urllib.parse import quote

from corymb.language import gettext as _
from corymb.studio.models.link import StyleLink
from corymb.views.compose.asking import NEW_LINE, on_one_line
from corymb.views.links import AnswerMail

DASH = "- "


def answer_mail(address: str, link: StyleLink, day: str, looks: Iterable[str]) -> AnswerMail:
    """The mail's parts, and its address with all `looks` that can be chosen."""
    subject = on_one_line(_("{title}, {day}").format(title=link.title, day=day))
    begin, end = _("We would like:"), _("How many of each:")
    lines = [begin, *(f"{DASH}{look}" for look in looks), "", end, "", ""]
    href = (
        f"mailto:{address}?subject={quote(subject, safe='')}"
        f"&body={quote(NEW_LINE.join(lines), safe='')}"
    )
    return AnswerMail(address, subject, begin, end, href)

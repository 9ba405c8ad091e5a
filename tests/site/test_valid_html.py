"""Every kind of page is HTML that an independent reader of the standard has no complaint about.

html5lib follows the parsing rules of the WHATWG's standard and tells each error it meets.
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from urllib.parse import urlsplit

import html5lib
import pytest

from corymb.views.pieces import Audience
from tests.browser.kinds import KINDS, Kind


@pytest.mark.parametrize("kind", KINDS, ids=str)
def test_a_page_is_valid_html(kind: Kind, demo_sites: dict[Audience, Path]) -> None:
    file = demo_sites[kind.audience] / urlsplit(kind.path).path
    written = (file if file.is_file() else demo_sites[kind.audience] / "404.html").read_bytes()
    reader = html5lib.HTMLParser(namespaceHTMLElements=False)
    page = reader.parse(written)
    assert [(place, error) for place, error, _ in reader.errors] == []
    ids = Counter(each.get("id") for each in page.iter() if each.get("id"))
    assert [name for name, times in ids.items() if times > 1] == []

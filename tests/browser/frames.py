"""All pages of a site read by a browser, several side by side, in frames of a phone's width."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from playwright.sync_api import Browser

from tests.browser.shelf import KEEP_NOTHING

SIDE_BY_SIDE = 4
PHONE = (360, 740)

# A frame may be denied its scripts by its sandbox; it is read from outside either way. It is laid
# out as any other, but hidden: to paint what nobody looks at costs as much again.
READ_ALL = """async ([paths, script, width, height, lanes]) => {
  const found = {}, left = [...paths], read = %s;
  const lane = async () => {
    const frame = document.createElement("iframe");
    frame.style = `border: 0; visibility: hidden; width: ${width}px; height: ${height}px`;
    if (!script) frame.sandbox = "allow-same-origin";
    document.body.append(frame);
    for (let path; (path = left.shift()); ) {
      await new Promise((done) => { frame.onload = done; frame.src = path; });
      found[path] = read(frame.contentDocument);
    }
  };
  await Promise.all(Array.from({length: lanes}, lane));
  return found;
}"""


def read_pages(
    browser: Browser, address: str, paths: list[str], read: str, *, script: bool
) -> dict[str, Any]:
    """What `read`, a function in JavaScript that gets a document, says of every page."""
    page = browser.new_page()
    page.add_init_script(KEEP_NOTHING)
    page.goto(address + "robots.txt")  # a page of the same site that shows nothing
    asked = [paths, script, *PHONE, SIDE_BY_SIDE]
    found: dict[str, Any] = page.evaluate(READ_ALL % read, asked)
    page.close()
    assert len(found) == len(paths)
    return found


def pages_in(folder: Path, under: str = "") -> list[str]:
    """The addresses of the pages in a built site."""
    return sorted(str(file.relative_to(folder)) for file in (folder / under).rglob("*.html"))

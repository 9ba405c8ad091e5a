"""Everything a page does that it should not: errors, failed requests, visits to other hosts."""

from __future__ import annotations

from playwright.sync_api import ConsoleMessage, Page, Request, Response

# What the page's own content policy forbids is an event in the page; the console hears of it.
TELL_VIOLATIONS = """addEventListener("securitypolicyviolation", (event) =>
  console.error(`forbidden by policy: ${event.violatedDirective} ${event.blockedURI}`));"""


class Watch:
    """Listens to a page from before its first visit; `faults` are what it has heard of a site."""

    def __init__(self, page: Page, address: str = "") -> None:
        self.begin(address)
        page.add_init_script(TELL_VIOLATIONS)
        page.on("console", self._console)
        page.on("pageerror", lambda error: self.faults.append(f"script: {error}"))
        page.on("request", self._request)
        page.on("requestfailed", self._failed)
        page.on("response", self._response)

    def begin(self, address: str) -> None:
        """Hear from here on, of visits to the site at this address."""
        self.address = address
        self.faults: list[str] = []

    def _console(self, message: ConsoleMessage) -> None:
        # A page that is lost says so itself: its own status is read from the response.
        if message.type in ("error", "warning") and "status of 404" not in message.text:
            self.faults.append(f"console: {message.text}")

    def _request(self, request: Request) -> None:
        if not request.url.startswith((self.address, "data:", "blob:")):
            self.faults.append(f"to another host: {request.url}")

    def _failed(self, request: Request) -> None:
        # Going on to the next page, a browser gives up what it still fetches for the last.
        if request.failure != "net::ERR_ABORTED":
            self.faults.append(f"failed: {request.url} {request.failure}")

    def _response(self, response: Response) -> None:
        if response.status >= 400 and not response.request.is_navigation_request():
            self.faults.append(f"{response.status}: {response.url}")

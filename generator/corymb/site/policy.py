"""What may a page of the sites do? Whatever isn't the site's own file is forbidden.

Every page carries this in its head (W3C, Content Security Policy Level 3), so that it holds on
any host and from the disk. Nothing in a page is an exception: no script or style stands in one,
and no tag has a handler or a style of its own. `object-src`, `frame-src` and all that isn't named
are under `default-src`.

Who may put a page into a frame can't be said in a page, only by a host (section 3.3 there).
"""

from __future__ import annotations

POLICY = (
    "default-src 'none'; img-src 'self' data:; style-src 'self'; script-src 'self'; "
    "font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; "
    "manifest-src 'self'; worker-src 'self'"
)
"""`data:` is for the colours that stand in for a photo until it has come."""

BY_A_HOST = {
    "Content-Security-Policy": f"{POLICY}; frame-ancestors 'self'",
    "Cross-Origin-Resource-Policy": "same-origin",
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
}
"""What a host can add to every answer; the live server does. README.md says it to studios."""

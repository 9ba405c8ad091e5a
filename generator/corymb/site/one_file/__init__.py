"""How does a page become one file that needs nothing else: no host, no signal, no other file?

Its styles, scripts, typefaces and images go into it; what it leads to on the site is led to no
more, and its content policy lets nothing in that isn't in it already. Everything works on a
mapping from path to bytes, as a site is before it is published.
"""

from corymb.site.one_file.made import TooLargeError, one_file
from corymb.site.one_file.tags import Files

__all__ = ["Files", "TooLargeError", "one_file"]

"""What is each form of a flower or a leaf called by whoever reads of it?"""

from __future__ import annotations

from collections.abc import Mapping

from corymb.language import pgettext


def form_words() -> Mapping[str, str]:
    """By the word of the files."""
    return {
        "rosette": pgettext("form", "rosette"),
        "daisy": pgettext("form", "daisy"),
        "umbel": pgettext("form", "umbel"),
        "globe": pgettext("form", "globe"),
        "spike": pgettext("form", "spike"),
        "cluster": pgettext("form", "cluster"),
        "cup": pgettext("form", "cup"),
        "iris": pgettext("form", "iris"),
        "trumpet": pgettext("form", "trumpet"),
        "bell": pgettext("form", "bell"),
        "plume": pgettext("form", "plume"),
        "tassel": pgettext("form", "tassel"),
        "trail": pgettext("form", "trail"),
        "leaf-spray": pgettext("form", "leaf spray"),
        "needle-spray": pgettext("form", "needle spray"),
        "blade": pgettext("form", "blade"),
        "twig": pgettext("form", "twig"),
        "berry": pgettext("form", "berry"),
        "pod": pgettext("form", "pod"),
    }

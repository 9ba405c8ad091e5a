"""How is a text written into a YAML file so that every reader takes it for that text?"""

from __future__ import annotations

import json
import re

from corymb.studio.values.text import EMPTY, NO, YES

_PLAIN = re.compile(r"[^\W\d_](?:[^#:\n\t]|(?<=\S)#|:(?=\S))*")
_SAFE_IN_FLOW = re.compile(r"[\w &'’.()/+-]+")  # older readers stumble over much there


def as_scalar(text: str, in_flow: bool = False) -> str:
    """The text bare where that is safe, else in double quotes; `in_flow` is inside {} or []."""
    flat = " ".join(text.split())
    bare = bool(_PLAIN.fullmatch(flat)) and flat.casefold() not in (*YES, *NO, *EMPTY)
    safe = not in_flow or bool(_SAFE_IN_FLOW.fullmatch(flat))
    if bare and safe and not flat.endswith(":"):
        return flat
    return json.dumps(flat, ensure_ascii=False)

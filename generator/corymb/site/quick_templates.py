"""How is a template made into Python that is quick, for pages that print a thousand values each?

What comes out is what Jinja's own would give. A value is typeset and escaped in one step, and what
was printed before isn't escaped again; the few functions that every page calls a hundred times are
called as they are; a template's file is looked at now and then, not at each `include`.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache
from keyword import iskeyword
from time import monotonic
from typing import Any

from jinja2 import Environment, FileSystemLoader, nodes
from jinja2.compiler import CodeGenerator, Frame
from markupsafe import Markup, escape

APOSTROPHE = re.compile(r"(?<=\w)'(?=\w)(?!\S{0,254}@)|(?<=s)'(?=\s|$)")
"""Not one in an e-mail address, which would be another address; 254 letters are the most that one
has (RFC 3696, erratum 1690), and looking further would take long in a text of nothing else."""

CALLED_OFTEN = frozenset({"url", "_", "gettext", "ngettext", "pgettext", "trade_word"})
"""None of these asks for a template's context, as others may."""

LOOKED_AT_EVERY_SECONDS = 0.2


def typeset(value: object) -> object:
    """A name or a sentence with the apostrophes that print uses; everything else as it is."""
    if type(value) is str and "'" in value:
        return APOSTROPHE.sub("’", value)
    return value


@lru_cache(maxsize=65536)
def _printed_text(text: str) -> str:
    return str(escape(typeset(text)))


def printed(value: object) -> str:
    """A value as it stands on a page: typeset, and escaped unless it is HTML already."""
    if type(value) is str:
        return _printed_text(value)
    return value if type(value) is Markup else str(escape(value))


class _Quick(CodeGenerator):
    """Writes the Python of a template."""

    def _output_child_pre(self, node: nodes.Expr, frame: Frame, finalize: Any) -> None:
        if frame.eval_ctx.volatile or not frame.eval_ctx.autoescape:
            super()._output_child_pre(node, frame, finalize)
        else:
            self.write("environment.printed((")

    def visit_Call(  # noqa: N802
        self, node: nodes.Call, frame: Frame, forward_caller: bool = False
    ) -> None:
        if not _is_plain(node) or forward_caller:
            super().visit_Call(node, frame, forward_caller=forward_caller)
            return
        self.visit(node.node, frame)
        self.write("(")
        for arg in node.args:
            self.visit(arg, frame)
            self.write(", ")
        for named in node.kwargs:
            self.write(f"{named.key}=")
            self.visit(named.value, frame)
            self.write(", ")
        self.write(")")


def _is_plain(node: nodes.Call) -> bool:
    """Whether it calls one of those functions, in no unusual way."""
    return (
        isinstance(node.node, nodes.Name)
        and node.node.name in CALLED_OFTEN
        and not (node.dyn_args or node.dyn_kwargs)
        and not any(iskeyword(named.key) for named in node.kwargs)
    )


class QuickEnvironment(Environment):
    """Jinja's environment, with templates made that way; `finalize` is to be `typeset`."""

    code_generator_class = _Quick
    printed = staticmethod(printed)


class SettledLoader(FileSystemLoader):
    """Notices that a template was edited, though not within the same moment."""

    def get_source(
        self, environment: Environment, template: str
    ) -> tuple[str, str, Callable[[], bool]]:
        text, file, is_same = super().get_source(environment, template)
        return text, file, _now_and_then(is_same)


def _now_and_then(is_same: Callable[[], bool]) -> Callable[[], bool]:
    asked_at = monotonic()

    def still_same() -> bool:
        nonlocal asked_at
        now = monotonic()
        if now - asked_at < LOOKED_AT_EVERY_SECONDS:
            return True
        asked_at = now
        return is_same()

    return still_same

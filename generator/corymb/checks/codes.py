"""Can someone guess a style link's page after all, by a code that others have seen?"""

from __future__ import annotations

from corymb.studio.examples import example_of
from corymb.studio.models.link import StyleLink, fresh_code
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio


def known_codes(studio: Studio) -> list[Problem]:
    """Every code that was copied: from Corymb's own example, or from another link."""
    whose = {example_of(StyleLink, "code"): "Corymb's own example"}
    problems = []
    for known_as, link in sorted(studio.links.items()):
        source = studio.sources["link", known_as]
        if source.in_doubt("code"):  # an example stands in for what is missing or wrong
            continue
        if link.code in whose:
            message = (
                f"This is the code of {whose[link.code]}: a page that nobody else finds needs one "
                f"of its own, like ‘{fresh_code()}’."
            )
            problems.append(source.problem(message, "code"))
        whose.setdefault(link.code, f"the style link ‘{known_as}’")
    return problems
